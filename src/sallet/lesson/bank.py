"""All lessons at hand, by name: what a look-alike's heading or a course's list refers to."""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import cached_property
from typing import TYPE_CHECKING

from sallet.lesson.vocabulary import normal

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

    from sallet.lesson.model import Fact, Lesson, LookAlike
    from sallet.lesson.vocabulary import Vocabulary


@dataclass(frozen=True)
class PictureFile:
    """A picture that lies at hand. Pixels; the width and height as it is to be seen."""

    path: str
    width: int
    height: int


@dataclass(frozen=True, eq=False)
class Bank:
    """The lessons of a folder with the vocabulary they are written in.

    A bank is itself and no other, so that what was worked out from one can be kept.
    """

    lessons: tuple[Lesson, ...]
    vocabulary: Vocabulary
    pictures: Mapping[str, PictureFile] = field(default_factory=dict)
    """The picture files at hand, by the name a lesson gives them."""

    @cached_property
    def _by_name(self) -> dict[str, Lesson]:
        found: dict[str, Lesson] = {}
        for names in (_further_names, _names):
            for lesson in reversed(self.lessons):
                found |= {normal(name): lesson for name in names(lesson) if name}
        return found

    def find(self, name: str) -> Lesson | None:
        """Return the lesson of a plant by common name, file name or scientific name."""
        return self._by_name.get(normal(name))

    def lesson_of(self, look_alike: LookAlike) -> Lesson | None:
        """Return the lesson of a look-alike, where it has one of its own."""
        by_heading = self.find(look_alike.name.value)
        return by_heading or self.find(binomial(look_alike.scientific_name))

    def naming(self, lesson: Lesson, other: Lesson) -> int | None:
        """Return where among its look-alikes, from 0, a lesson names another; None if it does not."""
        named = (self.lesson_of(look) for look in lesson.look_alikes)
        return next((number for number, one in enumerate(named) if one is other), None)

    def facts_of(self, look_alike: LookAlike) -> tuple[Fact, ...]:
        """Return what is recorded of a look-alike, in place and in its own lesson."""
        lesson = self.lesson_of(look_alike)
        return (*look_alike.facts, *(lesson.facts if lesson else ()))

    def danger_of(self, look_alike: LookAlike) -> str | None:
        """Return a look-alike's danger, from its own lesson first; None where not told."""
        lesson = self.lesson_of(look_alike)
        if lesson is None or lesson.front.danger is None:
            return look_alike.danger
        return lesson.front.danger


def binomial(name: str) -> str:
    """Return the genus and epithet of a scientific name, without rank, author or hybrid sign."""
    words = [word for word in name.replace("×", " ").split() if word != "x"]
    return " ".join(words[:2])


def _names(lesson: Lesson) -> Iterator[str]:
    yield lesson.slug
    yield binomial(lesson.front.scientific_name)
    yield lesson.front.name


def _further_names(lesson: Lesson) -> Iterator[str]:
    yield from lesson.front.also_called
