"""The places of a plant's page: which id a link to a heading of the lesson leads to."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.lesson.places import place_named

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

    from sallet.lesson.model import Lesson

TOP: Final = "sheet"
"""The id of the whole page: where a heading has no place of its own."""
PROSE_SECTIONS: Final = ("preparation", "uses", "habitat", "range", "harvest", "growing")
"""Sections that are set as their prose with their facts in a table, in the page's order."""
_SET_ANEW: Final = {
    "identification": "organs",
    "season": "year",
    "edible parts": "eaten",
    "parts to remove": "removed",
    "cautions": "cautions",
    "questions": "questions",
    "sources": "sources",
}
"""The ids of the sections that the page sets in its own way."""


def section_idents(lesson: Lesson) -> tuple[str, ...]:
    """Return the id of each section of a lesson, in its order; no two are the same."""
    return tuple(
        _SET_ANEW.get(section.name)
        or (section.name if section.name in PROSE_SECTIONS else f"section-{number}")
        for number, section in enumerate(lesson.sections, 1)
    )


def double_idents(lesson: Lesson) -> tuple[str, ...]:
    """Return the id of each look-alike of a lesson, in its order; no two are the same."""
    found: list[str] = []
    for number, look_alike in enumerate(lesson.look_alikes, 1):
        ident = f"double-{place_named(look_alike.name.value)}"
        found.append(ident if ident not in found else f"{ident}-{number}")
    return tuple(found)


def idents_by_place(lesson: Lesson) -> Mapping[str, str]:
    """Return the ids of a plant's page by the headings of its lesson, written as places."""
    found: dict[str, str] = {}
    for heading, ident in _idents(lesson):
        found.setdefault(place_named(heading), ident)
    return found


def _idents(lesson: Lesson) -> Iterator[tuple[str, str]]:
    there = {*PROSE_SECTIONS, "identification", "season", "cautions", ""}
    there |= {"edible parts", "parts to remove"} if lesson.is_food else set()
    there |= {"questions"} if lesson.questions else set()
    there |= {"sources"} if lesson.footnotes else set()
    for section, ident in zip(lesson.sections, section_idents(lesson), strict=True):
        if section.name in there:
            yield section.name, ident
            yield section.heading.value, ident
    if lesson.look_alikes:
        yield "look-alikes", "apart"
    for look_alike, ident in zip(lesson.look_alikes, double_idents(lesson), strict=True):
        yield look_alike.name.value, ident
    for fact in lesson.facts:
        # Facts of a section such as Habitat stand in it; the others are those of the organs.
        for heading in (fact.subject, fact.part):
            yield heading, "organs"
    for recipe in lesson.recipes:
        yield recipe.title.value, "preparation"
