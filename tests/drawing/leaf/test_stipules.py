"""Stipules, counted back."""

from __future__ import annotations

import pytest

from helpers.drawings import parts_of, points_of
from helpers.leaves import LEAVES
from sallet.drawing.leaf.stipules import STIPULES, tube


def test_every_hint_is_drawn() -> None:
    label = LEAVES.label("stipules")
    assert label is not None
    assert set(STIPULES) == {s.draw["stipules"] for s in label.states if s.draw}


@pytest.mark.parametrize("kind", STIPULES)
def test_stipules_stand_in_pairs_but_for_tubes_and_those_between_stalks(kind: str) -> None:
    ink = STIPULES[kind](0j, 100)
    assert parts_of(ink)["stipule"] == (1 if kind in {"tube", "between"} else 2)
    assert all(abs(point) < 30 for point in points_of(ink))


def test_small_ones_are_smaller_than_leafy_ones() -> None:
    reach = {kind: max(map(abs, points_of(STIPULES[kind](0j, 100)))) for kind in STIPULES}
    assert reach["small"] < reach["awl"] < reach["narrow"] < reach["leafy"]


def test_a_tube_stands_round_the_stem_above_the_node() -> None:
    assert sum(p.imag for p in points_of(tube(0j, 100))) > 0
