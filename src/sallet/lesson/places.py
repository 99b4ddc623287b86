"""The places of a lesson to which a link may lead: its headings, as `#parts-to-remove`."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.model import Lesson


def place_named(heading: str) -> str:
    """Return a heading as the place it is: lower case, words and figures joined by hyphens."""
    return "-".join(re.findall(r"[^\W_]+", heading.casefold().replace("'", "").replace("’", "")))


def places_of(lesson: Lesson) -> frozenset[str]:
    """Return every place of a lesson."""
    return frozenset(place_named(heading) for heading in _headings(lesson)) - {""}


def _headings(lesson: Lesson) -> Iterator[str]:
    for section in lesson.sections:
        yield from (section.name, section.heading.value)
    for fact in lesson.facts:
        yield from (fact.subject, fact.part)
    yield from (look_alike.name.value for look_alike in lesson.look_alikes)
    yield from (recipe.title.value for recipe in lesson.recipes)
