"""Builds sites and pages from texts given by file name, and looks at pages as a browser would."""

from __future__ import annotations

from dataclasses import dataclass, field
from html.parser import HTMLParser
from typing import TYPE_CHECKING

from helpers.workshop import bank_of
from sallet.checks.running import run_checks
from sallet.course.reading import read_course
from sallet.course.teaching import taught_lessons
from sallet.publish.pages import build_pages
from sallet.publish.photographs import Photograph, plan_copies
from sallet.publish.site import Site
from sallet.source import Source

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson


def site_of(files: Mapping[str, str], *, draft: bool = False) -> Site:
    """Return the site of a course.yml and its lessons; a picture is given by its size."""
    bank = bank_of(files)
    course = read_course(Source("course.yml", files.get("course.yml", "")))
    lessons = taught_lessons(course, bank)
    found = tuple(run_checks(bank, lessons, course))
    photographs = {lesson.slug: _photographs(lesson, bank) for lesson in lessons}
    return Site(course, bank, lessons, found, photographs, draft)


def _photographs(lesson: Lesson, bank: Bank) -> tuple[Photograph, ...]:
    at_hand = [(p, bank.pictures.get(p.file.value)) for p in lesson.pictures]
    return tuple(
        Photograph(p, plan_copies(lesson.slug, p.file.value, b"", (file.width, file.height)))
        for p, file in at_hand
        if file
    )


def pages_of(files: Mapping[str, str], *, draft: bool = False) -> dict[str, str]:
    """Return the files that the builders of pages make of a course, by path."""
    return {page.path: page.text for page in build_pages(site_of(files, draft=draft))}


@dataclass(frozen=True)
class Element:
    """An opening tag."""

    tag: str
    attributes: dict[str, str]


@dataclass
class Seen:
    """A page taken apart."""

    elements: list[Element] = field(default_factory=list)
    text: str = ""
    """All text between the tags, with one space between words."""

    def all(self, tag: str) -> list[Element]:
        """Return the elements of one kind."""
        return [element for element in self.elements if element.tag == tag]


class _Parser(HTMLParser):
    def __init__(self) -> None:
        super().__init__()
        self.elements: list[Element] = []
        self.words: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.elements.append(Element(tag, {name: value or "" for name, value in attrs}))

    def handle_data(self, data: str) -> None:
        self.words.append(data)


def seen(html: str) -> Seen:
    """Return a page taken apart."""
    parser = _Parser()
    parser.feed(html)
    parser.close()
    return Seen(parser.elements, " ".join("".join(parser.words).split()))
