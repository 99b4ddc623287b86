"""Whether two plants resemble each other on record: of one family, or mostly alike in what is told."""

from __future__ import annotations

from fractions import Fraction
from typing import TYPE_CHECKING, Final

from sallet.lesson.family_names import standard_family
from sallet.study.contrast import NEVER_A_TEST, characters

if TYPE_CHECKING:
    from sallet.lesson.model import Lesson
    from sallet.lesson.vocabulary import Label, Vocabulary
    from sallet.study.contrast import Characters, Key

ALIKE: Final = Fraction(3, 5)
"""The share of shared characters that must be alike. No publication has a figure; by this one, elder
and dwarf elder resemble each other, and so do water-dropwort and ground elder."""
FEWEST: Final = 15
"""So many characters must be recorded of both: fewer say little."""


def resemble(one: Lesson, other: Lesson, vocabulary: Vocabulary) -> bool:
    """Return whether two plants are of one family or mostly alike in what is recorded of both."""
    family = standard_family(one.front.family)
    if family and family == standard_family(other.front.family):
        return True
    alike, shared = likeness(one, other, vocabulary)
    return shared >= FEWEST and alike >= ALIKE * shared


def likeness(one: Lesson, other: Lesson, vocabulary: Vocabulary) -> tuple[int, int]:
    """Return in how many characters two plants share a state, and how many are told of both."""
    ours, theirs = characters(one.facts), characters(other.facts)
    shared = [key for key in ours if key in theirs and _counts(key, vocabulary)]
    return sum(bool(_states(ours, key) & _states(theirs, key)) for key in shared), len(shared)


def _counts(key: Key, vocabulary: Vocabulary) -> bool:
    organ, _, name = key
    label: Label | None = vocabulary.label(organ, name)
    if label is None or organ not in vocabulary.organ_headings:
        return False
    return label.kind == "states" and label.aspect not in NEVER_A_TEST and not label.watched


def _states(told: Characters, key: Key) -> frozenset[str]:
    return frozenset[str]().union(*(fact.states for fact in told[key]))
