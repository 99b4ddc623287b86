"""Rings of bracts."""

from __future__ import annotations

from typing import Final

import pytest

from sallet.drawing.inflorescence.bracts import Kind
from sallet.drawing.inflorescence.space import ORIGIN, UP, Eye, stacked
from sallet.drawing.inflorescence.whorls import UNCOUNTED, Ring, Whorl, collar, ring
from sallet.drawing.ink import Box, Ink, Mark, box

EYE: Final = Eye(10)


def drawn(whorl: Whorl, count: int | None = 6, outward: float = 0) -> Ink:
    return stacked(ring(EYE, Ring(whorl, count, 30, "bract", outward), ORIGIN, UP))


def room(posture: str) -> Box:
    return box(drawn(Whorl(Kind(posture=posture))))


def test_as_many_as_recorded() -> None:
    assert [len(drawn(Whorl(), count)) for count in (1, 4, 13)] == [1, 4, 13]


def test_where_their_number_is_not_recorded_every_other_is_dotted() -> None:
    pens = [mark.pen for mark in drawn(Whorl(), None) if isinstance(mark, Mark)]
    assert len(pens) == UNCOUNTED
    assert pens.count("dotted") == UNCOUNTED / 2


def test_bracts_point_where_they_are_told_to() -> None:
    assert room("down").top < 2
    assert room("down").bottom < -20
    assert room("up").bottom > -12
    assert room("up").top > 20
    assert room("level").width > room("down").width
    assert room("level").width > room("up").width


@pytest.mark.parametrize(("outward", "side"), [(0, 1), (180, -1)])
def test_those_on_the_outer_side_stand_on_that_side_only(outward: float, side: int) -> None:
    seen = box(drawn(Whorl(side="outer"), 5, outward))
    outer, inner = (seen.right, -seen.left) if side > 0 else (-seen.left, seen.right)
    assert outer > 25
    assert inner < 4


def test_those_all_round_stand_on_both_sides() -> None:
    seen = box(drawn(Whorl(side="all"), 5))
    assert min(seen.right, -seen.left) > 20


def test_one_of_those_that_fall_lies_below_the_rest() -> None:
    assert box(drawn(Whorl(falling=True), None)).bottom < box(drawn(Whorl(), None)).bottom - 10


def test_joined_bracts_have_a_ring_more() -> None:
    assert len(drawn(Whorl(joined=True))) == len(drawn(Whorl())) + 1


def test_a_collar_is_dotted() -> None:
    (mark,) = collar(EYE, ORIGIN, 20).ink
    assert isinstance(mark, Mark)
    assert (mark.pen, mark.part) == ("dotted", "")
    assert box((mark,)).width == pytest.approx(21.6)
