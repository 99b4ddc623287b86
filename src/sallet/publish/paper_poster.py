"""The season map for the wall, in two sizes of paper: the larger is the smaller one enlarged."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any, Final

from sallet.cards.sizes import PAPERS, Size
from sallet.lesson.dangers import DANGERS, danger_of
from sallet.publish.paper_map import paper_maps
from sallet.publish.paper_parts import emergency_data, head_data
from sallet.season.dates import short_date
from sallet.season.strip import strip_rows, strip_words
from sallet.season.words import in_a_row
from sallet.typesetting.jobs import Job

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from sallet.course.printing import PaperName
    from sallet.publish.paper_map import PaperMap
    from sallet.publish.site import Site
    from sallet.season.here import PlantYear

SIZES: Final[dict[PaperName, tuple[tuple[str, Size], ...]]] = {
    "A4": (("a4", PAPERS["A4"]), ("a3", Size(297, 420))),
    "Letter": (("letter", PAPERS["Letter"]), ("tabloid", Size(279.4, 431.8))),
}
"""The sheets for each paper of the course, in millimetres, held upright: A3 by ISO 216, tabloid
(11 × 17 in) by ANSI/ASME Y14.1. They are hung lying on their sides."""
MARGIN: Final = 10.0
"""Millimetres round the smaller sheet."""
_ROOM: Final = 600
"""Letters of notes that a sheet has room for; longer ones have a page of their own."""


def poster_papers(site: Site) -> Iterator[tuple[str, Job]]:
    """Yield the season map on each size of paper; nothing for a course without plants."""
    sizes = SIZES[site.course.cards.paper]
    for name, size in sizes if site.years else ():
        yield f"print/season-map-{name}.pdf", poster_job(site, size, size.width / sizes[0][1].width)


def poster_job(site: Site, size: Size, larger: float) -> Job:
    """Return the poster on a size of paper; all on it is so many times larger than on the smallest."""
    sessions = [meeting.session.date for meeting in site.plan.meetings]
    maps = paper_maps(site.years, sessions, size.height / larger - 2 * MARGIN)
    notes = list(site.year_notes)
    data = head_data(site, _title(site)) | {
        "paper": {"width": size.width, "height": size.height},
        "larger": larger,
        "margin": MARGIN,
        "heading": ", ".join(filter(None, [site.course.title, site.course.place.name])),
        "sheets": [_sheet(number, one, site) for number, one in enumerate(maps, 1)],
        "notes": notes,
        "notes_fit": sum(map(len, notes)) < _ROOM,
        "emergency": emergency_data(site),
    }
    return Job("poster", data, pictures=dict(_pictures(maps)), cards=len(maps) * 8)


def _title(site: Site) -> str:
    place = site.course.place.name
    return f"The year on a sheet, {place}" if place else "The year on a sheet"


def _sheet(number: int, one: PaperMap, site: Site) -> dict[str, Any]:
    return {
        "file": _file(number),
        "alt": alt_words(one.years, site),
        "shape": one.shape,
        "least": one.least,
        "key": [[_key_file(number, at), words] for at, (_, words) in enumerate(one.key)],
    }


def _pictures(maps: Sequence[PaperMap]) -> Iterator[tuple[str, bytes]]:
    for number, one in enumerate(maps, 1):
        yield _file(number), one.drawing
        for at, (drawing, _) in enumerate(one.key):
            yield _key_file(number, at), drawing


def _file(number: int) -> str:
    return f"sheet-{number}.svg"


def _key_file(number: int, at: int) -> str:
    return f"key-{number}-{at}.svg"


def alt_words(years: Sequence[PlantYear], site: Site) -> str:
    """Return in words what a sheet shows: the year of each plant, and when the class meets."""
    days = [f"{short_date(m.session.date)} ({m.number})" for m in site.plan.meetings]
    met = [f"The class meets on {in_a_row(days)}."] if days else []
    return " ".join(["The plants of the course through the year.", *map(year_alt, years), *met])


def year_alt(year: PlantYear) -> str:
    """Return a plant's year in words: its name, its danger, and each part with its time."""
    _, word = DANGERS[danger_of(year.lesson)]
    told = strip_words(year.rows) if strip_rows(year.rows) else "times not known."
    return f"{year.lesson.name} ({word}): {told}"
