"""The pages of the site: a literal table of small builders."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, Final

from sallet.publish.palette import DARK, LIGHT
from sallet.publish.templates import site_templates
from sallet.study.glossary import anchor

if TYPE_CHECKING:
    from sallet.lesson.model import Lesson
    from sallet.publish.site import Site

NAVIGATION: Final = (
    ("index.html", "The course"),
    ("syllabus.html", "Sessions"),
    ("season.html", "Season"),
    ("look-alikes.html", "Look-alikes"),
    ("words.html", "Words"),
    ("sources.html", "Sources"),
    ("safety.html", "Safety"),
)
"""The pages that every page leads to."""
DANGERS: Final = {
    "deadly": ("▲▲", "deadly"),
    "poisonous": ("▲", "poisonous"),
    "harmful": ("△", "harmful"),
    "harmless": ("○", "harmless"),
    "food": ("❧", "food"),
    "unknown": ("▲", "danger not stated"),
}
"""Each danger's shape and word; neither stands without the other."""


@dataclass(frozen=True)
class Page:
    """A file of the site: its path, with `/` between folders, and its text."""

    path: str
    text: str


Builder = Callable[["Site"], Iterator[Page]]


def build_pages(site: Site) -> Iterator[Page]:
    """Yield every page and style sheet of the site."""
    for builder in BUILDERS:
        yield from builder(site)


def _page(site: Site, path: str, template: str, **values: Any) -> Page:
    root = "../" * path.count("/")
    text = site_templates().get_template(template).render(
        site=site, course=site.course, root=root, here=path, navigation=NAVIGATION,
        dangers=DANGERS, anchor=anchor, danger_of=danger_of, **values,
    )  # fmt: skip
    return Page(path, text)


def danger_of(lesson: Lesson) -> str:
    """Return how a plant is marked wherever it is named: its danger, or `food`."""
    return "food" if lesson.is_food else lesson.front.danger or "unknown"


def _home(site: Site) -> Iterator[Page]:
    yield _page(site, "index.html", "home.html")


def _syllabus(site: Site) -> Iterator[Page]:
    yield _page(site, "syllabus.html", "syllabus.html")


def _season(site: Site) -> Iterator[Page]:
    yield _page(site, "season.html", "season.html")


def _plants(site: Site) -> Iterator[Page]:
    for sheet in site.sheets:
        before, after = site.neighbours(sheet)
        path = f"plants/{sheet.lesson.slug}.html"
        yield _page(site, path, "plant.html", sheet=sheet, before=before, after=after)


def _look_alikes(site: Site) -> Iterator[Page]:
    yield _page(site, "look-alikes.html", "look_alikes.html")


def _words(site: Site) -> Iterator[Page]:
    yield _page(site, "words.html", "words.html")


def _sources(site: Site) -> Iterator[Page]:
    yield _page(site, "sources.html", "sources.html")


def _safety(site: Site) -> Iterator[Page]:
    yield _page(site, "safety.html", "safety.html")


def _style(site: Site) -> Iterator[Page]:  # noqa: ARG001
    template = site_templates().get_template("style.css")
    yield Page("style.css", template.render(light=LIGHT, dark=DARK))


BUILDERS: Final[tuple[Builder, ...]] = (
    _home,
    _syllabus,
    _season,
    _plants,
    _look_alikes,
    _words,
    _sources,
    _safety,
    _style,
)
"""Every kind of page."""
