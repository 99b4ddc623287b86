"""The page of all that is there on paper: what each file is, and how to print it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.cards.imposing import layout_for
from sallet.cards.sizes import BLEED, CARD_SIZES, PAPERS
from sallet.publish.card_files import SHEETS, SINGLE, card_path
from sallet.publish.paper_questions import ANSWERS, PAPER
from sallet.publish.paper_walks import FOLDER as WALKS
from sallet.season.dates import date_words

if TYPE_CHECKING:
    from collections.abc import Collection, Iterator

    from sallet.publish.site import Site


@dataclass(frozen=True)
class Paper:
    """A file to print."""

    path: str
    name: str


@dataclass(frozen=True)
class Papers:
    """Files of one kind."""

    title: str
    about: tuple[str, ...]
    """Paragraphs."""
    files: tuple[Paper, ...]


POSTERS: Final = "print/season-map-"
"""How the files of the posters begin."""
FULL_SIZE: Final = "Print at full size (100 %), never fitted to the page: the cuts would be wrong."
STACK: Final = (
    "Cut along the marks. Put the pile from the left upper place of the sheets on top and the others "
    "below it, row by row: the cards are then in the order of the season."
)


def papers(site: Site, prints: Collection[str]) -> tuple[Papers, ...]:
    """Return what a course has on paper, kind by kind; a kind without a file is left out."""
    kinds = (
        *(make(site, prints) for make in (_sheets, _shop, _own, _walks)),
        _posters(prints),
        _tests(prints),
    )
    return tuple(kind for kind in kinds if kind.files)


def walk_sheets(site: Site, prints: Collection[str]) -> dict[int, str]:
    """Return the walk sheet of each session, by the session's number."""
    paths = [path for path in prints if path.startswith(WALKS)]
    return {page.meeting.number: path for page, path in zip(site.sessions, paths, strict=False)}


def _starting(prints: Collection[str], path: str) -> list[str]:
    """Return a file and those in which it is continued: `cards.pdf`, `cards-2.pdf`."""
    stem = path.removesuffix(".pdf")
    rests = (name.removeprefix(stem).removesuffix(".pdf") for name in prints)
    return [f"{stem}{rest}.pdf" for rest in rests if not rest or rest.removeprefix("-").isdigit()]


def _numbered(paths: list[str], name: str) -> tuple[Paper, ...]:
    if len(paths) == 1:
        return (Paper(paths[0], name),)
    return tuple(Paper(path, f"{name}, part {n}") for n, path in enumerate(paths, 1))


def _sheets(site: Site, prints: Collection[str]) -> Papers:
    asked = site.course.cards
    layout = layout_for(CARD_SIZES[asked.size].trim, PAPERS[asked.paper])
    cuts = f"{BLEED:g} mm of bleed" if layout.bleed else "shared cuts, without bleed"
    about = (
        (
            f"{layout.up} cards of {asked.size} on a sheet of {asked.paper}, with {cuts}. Print on both "
            f"sides, turned over the {asked.duplex}, on card of 200 to 300 g."
        ),
        FULL_SIZE,
        STACK,
    )
    name = f"All cards on {asked.paper}"
    return Papers("Field cards for your printer", about, _numbered(_starting(prints, SHEETS), name))


def _shop(site: Site, prints: Collection[str]) -> Papers:
    size = CARD_SIZES[site.course.cards.size].trim
    about = (
        (
            f"One card on two pages, front and back, {size.width:g} × {size.height:g} mm when trimmed, with "
            f"{BLEED:g} mm of bleed; the trim and bleed boxes are set. PDF/A-2a and PDF/UA-1."
        ),
    )
    files = _numbered(_starting(prints, SINGLE), "All cards, one a page")
    return Papers("Field cards for a print shop", about, files)


def _own(site: Site, prints: Collection[str]) -> Papers:
    found = [(lesson, card_path(lesson.slug)) for lesson in site.ordered]
    files = [Paper(path, lesson.name) for lesson, path in found if path in prints]
    return Papers("A card by itself", (), tuple(files))


def _walks(site: Site, prints: Collection[str]) -> Papers:
    about = (
        (
            "For whoever leads the walk: the plants to meet, what to look at on that day, the safety "
            "briefing, and a list of names, which is destroyed after the walk."
        ),
    )
    return Papers("Walk sheets", about, tuple(_walk_files(site, prints)))


def _walk_files(site: Site, prints: Collection[str]) -> Iterator[Paper]:
    sheets = walk_sheets(site, prints)
    for page in site.sessions:
        session = page.meeting.session
        if page.meeting.number in sheets:
            title = f": {session.title}" if session.title else ""
            yield Paper(sheets[page.meeting.number], f"{date_words(session.date)}{title}")


def _posters(prints: Collection[str]) -> Papers:
    found = [path for path in prints if path.startswith(POSTERS)]
    files = [Paper(path, f"On {_paper_name(path)}") for path in found]
    return Papers("The year on a sheet", (), tuple(files))


def _paper_name(path: str) -> str:
    name = path.rsplit("-", 1)[-1].removesuffix(".pdf")
    return name.upper() if name.startswith("a") else name.capitalize()


def _tests(prints: Collection[str]) -> Papers:
    about = (
        "The questions of all lessons. The answers are a paper of their own: print them apart.",
    )
    names = {PAPER: "The test paper", ANSWERS: "The answers, for the teacher"}
    files = [Paper(path, name) for path, name in names.items() if path in prints]
    return Papers("Test paper", about, tuple(files))
