"""The pages of the site: a literal table of small builders."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterator
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, Final

from sallet.lesson.dangers import DANGERS, danger_of
from sallet.publish.briefing import STANDING
from sallet.publish.card_files import card_path
from sallet.publish.palette import DARK, LIGHT
from sallet.publish.papers_page import papers, walk_sheets
from sallet.publish.plates import plate_file
from sallet.publish.templates import site_templates
from sallet.season.reasons import taken_for_words
from sallet.season.words import days_words, row_words, seen_words
from sallet.study.glossary import anchor

if TYPE_CHECKING:
    from sallet.publish.site import Site

NAVIGATION: Final = (
    ("index.html", "The course"),
    ("safety.html", "Safety"),
    ("syllabus.html", "Sessions"),
    ("season.html", "Season"),
    ("look-alikes.html", "Look-alikes"),
    ("key.html", "Key"),
    ("families.html", "Families"),
    ("papers.html", "Papers"),
    ("words.html", "Words"),
    ("sources.html", "Sources"),
)
"""The pages that every page leads to."""


@dataclass(frozen=True)
class Page:
    """A file of the site: its path, with `/` between folders, and its text."""

    path: str
    text: str


Builder = Callable[["Site"], Iterator[Page]]
Leading = Callable[["Site", Collection[str]], Iterator[Page]]


def build_pages(site: Site, prints: Collection[str] = ()) -> Iterator[Page]:
    """Yield every page and style sheet of the site; `prints` are the paths of what is printed."""
    for builder in BUILDERS:
        yield from builder(site)
    for leading in LEADING_TO_PAPER:
        yield from leading(site, prints)


def _page(site: Site, path: str, template: str, **values: Any) -> Page:
    root = "../" * path.count("/")
    text = site_templates().get_template(template).render(
        site=site, course=site.course, root=root, here=path, navigation=NAVIGATION,
        dangers=DANGERS, anchor=anchor, danger_of=danger_of, row_words=row_words,
        seen_words=seen_words, days_words=days_words, **values,
    )  # fmt: skip
    return Page(path, text)


def _home(site: Site) -> Iterator[Page]:
    yield _page(site, "index.html", "home.html")


def _syllabus(site: Site, prints: Collection[str]) -> Iterator[Page]:
    yield _page(site, "syllabus.html", "syllabus.html", standing=STANDING,
                taken_for_words=taken_for_words, walks=walk_sheets(site, prints))  # fmt: skip


def _season(site: Site, prints: Collection[str]) -> Iterator[Page]:
    yield _page(site, "season.html", "season.html", on_paper=bool(prints))


def _poster(site: Site) -> Iterator[Page]:
    yield _page(site, "poster.html", "poster.html")


def _families(site: Site) -> Iterator[Page]:
    yield _page(site, "families.html", "families.html", page=site.families)


def _calendars(site: Site) -> Iterator[Page]:
    yield from (Page(path, text) for path, text in site.calendars.items())


def _plants(site: Site, prints: Collection[str]) -> Iterator[Page]:
    for sheet in site.sheets:
        before, after = site.neighbours(sheet)
        path = f"plants/{sheet.lesson.slug}.html"
        card = card_path(sheet.lesson.slug)
        yield _page(site, path, "plant.html", sheet=sheet, before=before, after=after,
                    card=card if card in prints else "")  # fmt: skip


def _plates(site: Site) -> Iterator[Page]:
    """Yield every plant's plate as a file by itself."""
    for sheet in site.sheets:
        figures = site.setting.drawn[sheet.lesson.slug].figures
        if figures:
            lesson = sheet.lesson
            text = plate_file(lesson.name, lesson.front.scientific_name, figures)
            yield Page(f"plates/{lesson.slug}.svg", text)


def _papers(site: Site, prints: Collection[str]) -> Iterator[Page]:
    yield _page(site, "papers.html", "papers.html", papers=papers(site, prints))


def _look_alikes(site: Site) -> Iterator[Page]:
    yield _page(site, "look-alikes.html", "look_alikes.html")


def _keys(site: Site) -> Iterator[Page]:
    yield _page(site, "key.html", "key.html", key=site.ticking)
    for page in site.keys:
        yield _page(site, page.path, "couplets.html", page=page)


def _pairs(site: Site) -> Iterator[Page]:
    for pair in site.pairs:
        yield _page(site, pair.pair.path, "pair.html", page=pair)


def _words(site: Site) -> Iterator[Page]:
    yield _page(site, "words.html", "words.html")


def _sources(site: Site) -> Iterator[Page]:
    yield _page(site, "sources.html", "sources.html")


def _safety(site: Site) -> Iterator[Page]:
    yield _page(site, "safety.html", "safety.html")


def _style(site: Site) -> Iterator[Page]:  # noqa: ARG001
    template = site_templates().get_template("style.css")
    yield Page("style.css", template.render(light=LIGHT, dark=DARK))


def _scripts(site: Site) -> Iterator[Page]:  # noqa: ARG001
    for name in ("season.js", "key.js", "pairs.js"):
        yield Page(name, site_templates().get_template(name).render())


BUILDERS: Final[tuple[Builder, ...]] = (
    _home,
    _poster,
    _plates,
    _look_alikes,
    _pairs,
    _keys,
    _families,
    _words,
    _sources,
    _safety,
    _calendars,
    _style,
    _scripts,
)
"""Every kind of page that leads to no paper."""
LEADING_TO_PAPER: Final[tuple[Leading, ...]] = (_syllabus, _season, _plants, _papers)
"""The others."""
