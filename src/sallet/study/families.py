"""The lessons of a course by family, and what the members of each have in common.

What is called common must be recorded of every member, the same of each and without
a doubt: silence shares nothing, nor does `sometimes`, nor a word that could not be read.
States, numbers and `none` are compared. Lengths are not: they hang on soil, light and age,
two plants agree in one by chance, and it says nothing of their kin.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.lesson.family_names import standard_family
from sallet.lesson.value import Absent, Count, StateRange

if TYPE_CHECKING:
    from collections.abc import Hashable, Iterable, Iterator, Mapping, Sequence

    from sallet.lesson.model import Lesson
    from sallet.lesson.value import Item, Qualified, Value
    from sallet.lesson.vocabulary import Vocabulary

Key = tuple[str, str, str]
"""Organ, kind or piece of it, label."""
Telling = tuple["Hashable", frozenset[str]]
"""What a value is, and where it holds."""
_ALWAYS: Final = frozenset({"always"})
_DEGREES: Final = frozenset({"slightly", "strongly"})
"""The words for how often that are none, but say how much."""


@dataclass(frozen=True)
class SharedFeature:
    """A character that is recorded alike of every member of a family."""

    subject: str
    part: str
    label: str
    items: tuple[Item, ...]
    """The values in the words of the first member."""


@dataclass(frozen=True)
class Family:
    """The lessons of one family; `name` is empty where theirs do not tell it."""

    name: str
    lessons: tuple[Lesson, ...]
    shared: tuple[SharedFeature, ...]


def families(lessons: Iterable[Lesson], vocabulary: Vocabulary) -> tuple[Family, ...]:
    """Return the families of lessons by name, last the plants of which none is told."""
    by_name: dict[str, list[Lesson]] = {}
    for lesson in lessons:
        by_name.setdefault(standard_family(lesson.front.family), []).append(lesson)
    order = sorted(by_name, key=lambda name: (not name, name.casefold(), name))
    return tuple(_family(name, by_name[name], vocabulary) for name in order)


def _family(name: str, members: Sequence[Lesson], vocabulary: Vocabulary) -> Family:
    related = bool(name) and len(members) > 1
    shared = _shared(members, vocabulary) if related else ()
    return Family(name, tuple(members), tuple(shared))


def _shared(members: Sequence[Lesson], vocabulary: Vocabulary) -> Iterator[SharedFeature]:
    by_member = [_characters(lesson) for lesson in members]
    for key in _in_order(vocabulary):
        first, *others = (_surely_told(characters.get(key, ())) for characters in by_member)
        if first and all(told.keys() == first.keys() for told in others):
            yield SharedFeature(*key, tuple(first.values()))


def _in_order(vocabulary: Vocabulary) -> Iterator[Key]:
    for organ in vocabulary.organs:
        for part in ("", *(part.name for part in organ.parts)):
            yield from ((organ.name, part, label.name) for label in organ.labels)


def _characters(lesson: Lesson) -> Mapping[Key, list[Item]]:
    # A character told twice is all that either says.
    found: dict[Key, list[Item]] = {}
    for fact in lesson.facts:
        found.setdefault((fact.subject, fact.part, fact.label), []).extend(fact.items)
    return found


def _surely_told(items: Iterable[Item]) -> dict[Telling, Item]:
    """Return values by what they tell; nothing where one of them leaves a doubt."""
    told: dict[Telling, Item] = {}
    for item in items:
        value = _comparable(item.value)
        if value is None or any(map(_leaves_a_doubt, item.qualifiers)):
            return {}
        told.setdefault((value, item.qualifier_names - _ALWAYS), item)
    return told


def _comparable(value: Value) -> Hashable:
    """Return a value without the words it was written in; None for what is not compared."""
    match value:
        case StateRange(names):
            return frozenset(names)
        case Absent() | Count(about=False):
            return value
    return None


def _leaves_a_doubt(qualifier: Qualified) -> bool:
    """Return whether a qualifier may leave out some plants; the writer's own words may."""
    if qualifier.kind == "frequency":
        return qualifier.name not in _ALWAYS | _DEGREES
    return qualifier.name is None
