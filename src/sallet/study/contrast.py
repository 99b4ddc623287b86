"""What tells two plants apart: characters whose recorded values cannot be met on both.

A wrong contrast can send a poisonous plant into the kitchen, so every doubt counts against
it. Silence separates nothing; `sometimes` and `rarely` count as possible; `often spotted` and
no more leaves open what the other plants are; words that could not be read may mean
anything; and what is said of the lower leaves is set against what is said of the lower leaves.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import chain
from typing import TYPE_CHECKING, Final

from sallet.study.values import can_both_hold

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping, Sequence

    from sallet.lesson.model import Fact
    from sallet.lesson.value import Item
    from sallet.lesson.vocabulary import Label, Reliability, Vocabulary

Key = tuple[str, str, str]
"""Organ, kind or piece of it, label."""
FEWEST_KINDS: Final = 2
Where = frozenset[str]
"""The qualifiers of a value that say where or when it holds; empty for everywhere."""
Characters = dict[Key, list["Fact"]]
"""What is recorded of a plant, by character."""
Tellings = tuple["Item", ...]
"""What one fact tells of one place."""
NEVER_A_TEST: Final = frozenset({"taste", "harm", "use"})
"""Aspects by which nobody finds out what a plant is."""
_NEARLY_ALL: Final = frozenset({"usually", "mostly"})
_HEDGES: Final = _NEARLY_ALL | {"often", "sometimes", "rarely"}
"""Qualifiers of the vocabulary by which a value is not said of every plant."""


@dataclass(frozen=True)
class Contrast:
    """A character that both plants are known by and that cannot be the same on both."""

    this: Fact
    that: Fact
    label: Label
    places: tuple[Where, ...] = (frozenset(),)
    """Of which places of the first plant it is told: on which of them one can look."""

    @property
    def reliability(self) -> Reliability:
        """Return how far the character may be trusted."""
        return self.label.reliability

    @property
    def is_reliable(self) -> bool:
        """Whether the character may be trusted by itself: no caveat stands beside it."""
        return self.reliability == "firm"

    @property
    def kind(self) -> str:
        """Return what it tells of: two contrasts of one kind are one piece of evidence."""
        return self.label.character_kind

    @property
    def is_test(self) -> bool:
        """Whether one may look for it on a day. Nobody tastes to find out what a plant is."""
        return self.label.aspect not in NEVER_A_TEST and not self.label.watched


def contrasts(
    these: Iterable[Fact], those: Iterable[Fact], vocabulary: Vocabulary
) -> tuple[Contrast, ...]:
    """Return the contrasts between two plants, in the order of the first one's facts."""
    return contrasts_of(characters(these), characters(those), vocabulary)


def contrasts_of(
    ours: Characters, theirs: Characters, vocabulary: Vocabulary
) -> tuple[Contrast, ...]:
    """Return the contrasts between two plants whose characters are gathered already."""
    return tuple(
        Contrast(facts[0], theirs[key][0], label, places)
        for key, facts in ours.items()
        if key in theirs
        and (label := _label(key, vocabulary))
        and (places := places_apart(facts, theirs[key], label))
    )


def tell_apart(found: Iterable[Contrast]) -> bool:
    """Return whether contrasts suffice to stake a life on: two of different kinds, one reliable.

    One mark may be missed, damaged or misread; two that tell of the same thing fail together.
    """
    tests = [contrast for contrast in found if contrast.is_test]
    kinds = {contrast.kind for contrast in tests}
    return len(kinds) >= FEWEST_KINDS and any(contrast.is_reliable for contrast in tests)


def reliable_first(found: Iterable[Contrast]) -> tuple[Contrast, ...]:
    """Return contrasts with those before the others that may be trusted by themselves."""
    return tuple(sorted(found, key=lambda contrast: not contrast.is_reliable))


def one_of_each_kind(found: Iterable[Contrast]) -> tuple[Contrast, ...]:
    """Return the first contrast of each kind: the others tell of the same thing again."""
    first: dict[str, Contrast] = {}
    for contrast in found:
        first.setdefault(contrast.kind, contrast)
    return tuple(first.values())


def places_apart(these: Sequence[Fact], those: Sequence[Fact], label: Label) -> tuple[Where, ...]:
    """Return the places of the first plant whose values the other's exclude; none if any may meet."""
    ours, theirs = told_by_place(these), told_by_place(those)
    compared: dict[Where, None] = {}
    for here, told in ours.items():
        for there, told_there in theirs.items():
            if _both_answered(here, there, ours, theirs):
                continue
            if _may_meet(told, told_there, label):
                return ()
            if _about_the_same(here, there, ours, theirs):
                compared[here] = None
    return tuple(compared)


def characters(facts: Iterable[Fact]) -> Characters:
    """Return what is recorded of a plant, by character."""
    # A character told twice, in place and in the plant's own lesson, is all that either says.
    found: dict[Key, list[Fact]] = {}
    for fact in facts:
        if fact.known and fact.items:
            found.setdefault((fact.subject, fact.part, fact.label), []).append(fact)
    return found


def _label(key: Key, vocabulary: Vocabulary) -> Label | None:
    organ, _, name = key
    if organ not in vocabulary.organ_headings:
        return None
    return vocabulary.label(organ, name)


def told_by_place(facts: Iterable[Fact]) -> dict[Where, list[Tellings]]:
    """Return by place what each fact tells of it: a doubt in one is not settled by another."""
    found: dict[Where, list[Tellings]] = {}
    for fact in facts:
        for where in dict.fromkeys(item.where for item in fact.items):
            told = tuple(item for item in fact.items if item.where == where)
            found.setdefault(where, []).append(told)
    return found


def _may_meet(ours: Sequence[Tellings], theirs: Sequence[Tellings], label: Label) -> bool:
    if not all(tell_all(items) for items in (*ours, *theirs)):
        return True
    return any(
        can_both_hold(one.value, other.value, label)
        for one in chain.from_iterable(ours)
        for other in chain.from_iterable(theirs)
    )


def tell_all(items: Sequence[Item]) -> bool:
    """Return whether values leave no plant out.

    `Sometimes spotted` leaves out most plants, `usually spotted` some. `Usually five,
    sometimes four` leaves out none.
    """
    often = [_frequencies(item) for item in items]
    return any(not words & _HEDGES for words in often) or (
        len(items) > 1 and any(words & _NEARLY_ALL for words in often)
    )


def _frequencies(item: Item) -> frozenset[str]:
    return frozenset(q.name or q.words for q in item.qualifiers if q.kind == "frequency")


def _both_answered(
    here: Where, there: Where, ours: Mapping[Where, object], theirs: Mapping[Where, object]
) -> bool:
    """Return whether two places differ and each plant tells its value for both of them."""
    if here == there or not here or not there:
        return False
    return here in theirs and there in ours


def _about_the_same(
    here: Where, there: Where, ours: Mapping[Where, object], theirs: Mapping[Where, object]
) -> bool:
    """Return whether two places are one, or one value is said of the whole plant and alone."""
    if here == there:
        return True
    return (not here and len(ours) == 1) or (not there and len(theirs) == 1)
