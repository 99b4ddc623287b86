"""Sheaths, below their node."""

from __future__ import annotations

import pytest

from helpers.drawings import parts_of, points_of
from helpers.leaves import LEAVES
from sallet.drawing.leaf.sheaths import SHEATHS


def test_every_hint_is_drawn() -> None:
    label = LEAVES.label("sheath")
    assert label is not None
    assert set(SHEATHS) == {s.draw["sheath"] for s in label.states if s.draw}


@pytest.mark.parametrize("kind", SHEATHS)
def test_a_leaf_has_one_sheath_and_nested_ones_two(kind: str) -> None:
    parts = parts_of(SHEATHS[kind](0j, 100))
    assert parts["sheath"] + parts["stipule"] == (2 if kind == "nested" else 1)
    assert parts["ear"] == (2 if kind == "ears" else 0)


def test_an_open_sheath_has_a_seam_and_a_closed_one_has_none() -> None:
    assert len(SHEATHS["open"](0j, 100)) == len(SHEATHS["closed"](0j, 100)) + 1


def test_short_sheaths_are_short_and_inflated_ones_broad() -> None:
    def length(kind: str) -> float:
        return max(abs(p) for p in points_of(SHEATHS[kind](0j, 100)))

    assert length("short") < 0.5 * length("open")
    assert length("bag") > length("open")
