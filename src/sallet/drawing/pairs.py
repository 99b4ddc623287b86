"""Two plants side by side: the same organ at one scale, what differs marked on both."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.kinds import KINDS
from sallet.drawing.spots import spot
from sallet.study.contrast import contrasts

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from sallet.drawing.figures import Figure
    from sallet.drawing.kinds import Kind
    from sallet.drawing.sketch import Sketch
    from sallet.drawing.told import Character
    from sallet.lesson.model import Fact
    from sallet.lesson.vocabulary import Vocabulary

SMALLEST: Final = 0.3
"""At one scale the smaller is drawn no smaller than this share of the larger; otherwise each
has its own scale."""


@dataclass(frozen=True)
class Plant:
    """What is recorded of a plant, and the figures that it allows."""

    facts: tuple[Fact, ...]
    figures: tuple[Figure, ...]


@dataclass(frozen=True)
class Difference:
    """A character that is not the same on both, and where it is to be seen."""

    number: int
    label: str
    this: str
    that: str
    at_this: complex
    at_that: complex
    certain: bool
    """Whether no exception is recorded by which both plants could be the same, and the character
    may be trusted by itself."""


@dataclass(frozen=True)
class Pair:
    """The same organ of two plants."""

    organ: str
    words: str
    this: Sketch
    that: Sketch
    one_scale: bool
    """Whether both are drawn as large as they are to each other in life."""
    differences: tuple[Difference, ...]


def pairs(these: Plant, those: Plant, vocabulary: Vocabulary) -> tuple[Pair, ...]:
    """Return every drawing in which the two plants differ.

    Certain are the differences that no recorded exception takes away. What is drawn may differ
    and the plants still be alike now and then: that is said.
    """
    apart = {
        (contrast.label.subject, contrast.label.name): contrast.is_reliable
        for contrast in contrasts(these.facts, those.facts, vocabulary)
    }
    return tuple(
        pair
        for kind in KINDS
        for this, that in _matched(kind, these.figures, those.figures)
        if (pair := _pair(kind, this, that, apart))
    )


Apart = dict[tuple[str, str], bool]
"""Organ and label of the characters that set two plants apart without exception, and whether
such a character may be trusted by itself."""


def _matched(
    kind: Kind, ours: Iterable[Figure], theirs: Iterable[Figure]
) -> Iterator[tuple[Figure, Figure]]:
    """Yield the figures of one kind that show the same place of the two plants."""
    here = [figure for figure in ours if figure.kind == kind]
    there = [figure for figure in theirs if figure.kind == kind]
    for this in here:
        for that in there:
            general = not this.told.where or not that.told.where
            first = this is here[0] and that is there[0]
            if this.told.where == that.told.where or (general and first):
                yield this, that


def _pair(kind: Kind, this: Figure, that: Figure, apart: Apart) -> Pair | None:
    differing = list(_differing(kind, this, that, apart))
    if not differing:
        return None
    one, other, same = _at_one_scale(kind, this, that)
    return Pair(
        organ=kind.organ,
        words=one.title if one.title == other.title else kind.name,
        this=one,
        that=other,
        one_scale=same,
        differences=tuple(
            Difference(
                number, ours.label, ours.told, their.told,
                spot(one, ours.label), spot(other, ours.label), certain,
            )
            for number, (ours, their, certain) in enumerate(differing, 1)
        ),
    )  # fmt: skip


def _differing(
    kind: Kind, this: Figure, that: Figure, apart: Apart
) -> Iterator[tuple[Character, Character, bool]]:
    """Yield the characters that both drawings show and show otherwise, the certain first."""
    theirs = {c.label: c for c in that.sketch.shows}
    both = [(c, theirs[c.label]) for c in this.sketch.shows if c.label in theirs]
    sure = [pair for pair in both if (kind.organ, pair[0].label) in apart]
    ranked = sorted(sure, key=lambda pair: not apart[kind.organ, pair[0].label])
    yield from ((ours, their, apart[kind.organ, ours.label]) for ours, their in ranked)
    for ours, their in both:
        label = this.told.subject.label(ours.label)
        state = label.state(ours.drawn) if label else None
        if state and their.drawn in state.excludes and (ours, their) not in sure:
            yield ours, their, False


def _at_one_scale(kind: Kind, this: Figure, that: Figure) -> tuple[Sketch, Sketch, bool]:
    ours, theirs = this.sketch.scale, that.sketch.scale
    if ours is None or theirs is None or min(ours, theirs) < SMALLEST * max(ours, theirs):
        return this.sketch, that.sketch, False
    # The plant of which a millimetre takes fewer units is the larger one: it sets the scale.
    scale = min(ours, theirs)
    drawn = [kind.draw(f.told, kind.size * scale / s) for f, s in ((this, ours), (that, theirs))]
    one, other = drawn
    if one is None or other is None:
        return this.sketch, that.sketch, False
    return one, other, True
