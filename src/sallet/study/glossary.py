"""The words that some lessons use, with what they mean."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import TYPE_CHECKING

from sallet.lesson.value import StateRange

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from sallet.lesson.model import Fact, Lesson
    from sallet.lesson.vocabulary import Label, State, Subject, Vocabulary


@dataclass(frozen=True)
class UsedLabel:
    """A label that the lessons use, and those of its states that they use."""

    label: Label
    states: tuple[State, ...]


@dataclass(frozen=True)
class UsedSubject:
    """An organ or section with the labels that the lessons use."""

    subject: Subject
    labels: tuple[UsedLabel, ...]


def facts_with_words(lesson: Lesson) -> Iterator[Fact]:
    """Yield every fact of a lesson whose words a reader may want explained."""
    yield from lesson.facts
    for look_alike in lesson.look_alikes:
        yield from look_alike.facts
    for part in lesson.edible_parts:
        yield from part.facts


def glossary(lessons: Iterable[Lesson], vocabulary: Vocabulary) -> tuple[UsedSubject, ...]:
    """Return the words used, by subject, label and state, in the vocabulary's order."""
    used = _used(lessons)
    subjects = (
        UsedSubject(subject, tuple(_labels(subject, used))) for subject in vocabulary.subjects
    )
    return tuple(subject for subject in subjects if subject.labels)


def _used(lessons: Iterable[Lesson]) -> set[tuple[str, str, str]]:
    used: set[tuple[str, str, str]] = set()
    for lesson in lessons:
        for fact in facts_with_words(lesson):
            if fact.known:
                used.add((fact.subject, fact.label, ""))
                used |= {(fact.subject, fact.label, name) for name in _shown_states(fact)}
        ways = (item for part in lesson.edible_parts for item in part.ways)
        for item in ways:
            if isinstance(item.value, StateRange):
                used.add(("edible parts", "preparation", ""))
                used |= {("edible parts", "preparation", end.name) for end in item.value.ends}
    return used


def _shown_states(fact: Fact) -> Iterator[str]:
    for item in fact.items:
        if isinstance(item.value, StateRange):
            yield from item.value.names


def _labels(subject: Subject, used: set[tuple[str, str, str]]) -> Iterator[UsedLabel]:
    for label in subject.labels:
        if (subject.name, label.name, "") in used:
            states = (s for s in label.states if (subject.name, label.name, s.name) in used)
            yield UsedLabel(label, tuple(states))


def anchor(*names: str) -> str:
    """Return the place of a word on the words page: `leaves-margin-entire`."""
    return re.sub(r"[^a-z0-9]+", "-", " ".join(names).casefold()).strip("-")
