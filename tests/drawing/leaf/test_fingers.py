"""Leaves divided like fingers, like a bird's foot, or in threes."""

from __future__ import annotations

import cmath
import itertools
import math

import pytest

from helpers.leaves import leaves_told
from sallet.drawing.ink import Copy, Ink
from sallet.drawing.leaf.division import Division, division
from sallet.drawing.leaf.fingers import foot_like, palm, threes

PLAIN = {
    "leaflet shape": "ovate", "leaflet margin": "entire", "leaflet tip": "acute",
    "leaflet base": "rounded",
}  # fmt: skip


def form_of(how: str, number: str = "") -> Division:
    """Return the form of a divided leaf."""
    more = {"leaflets": number} if number else {}
    form = division(leaves_told(PLAIN | {"division": how} | more))
    assert form is not None
    return form


def angles(ink: Ink) -> list[int]:
    """Return the degrees to which leaflets are turned from upright, from right to left."""
    leaves = [one for one in ink if isinstance(one, Copy)]
    return sorted(round(math.degrees(cmath.phase(one.place.turn))) for one in leaves)


@pytest.mark.parametrize("number", range(2, 10))
def test_fingers_spread_evenly_on_both_sides(number: int) -> None:
    found = angles(palm(form_of("palmate", str(number)), 200))
    assert len(found) == number
    assert found == [-angle for angle in reversed(found)]
    gaps = [b - a for a, b in itertools.pairwise(found)]
    assert min(gaps) > 24


def test_the_middle_leaflet_is_the_longest_and_lies_on_top() -> None:
    leaves = [one for one in palm(form_of("palmate", "7"), 200) if isinstance(one, Copy)]
    sizes = [abs(one.place.turn) for one in leaves]
    assert sizes == sorted(sizes)
    assert leaves[-1].place.turn == 1


def test_the_outer_leaflets_of_a_foot_branch_from_their_neighbours() -> None:
    leaves = [one for one in foot_like(form_of("foot-like", "7"), 200) if isinstance(one, Copy)]
    feet = {round(abs(one.place.at), 3) for one in leaves}
    assert len(leaves) == 7
    assert len(feet) == 4


@pytest.mark.parametrize(("how", "thirds"), [("twice in threes", 3), ("thrice in threes", 3)])
def test_threes_are_three_parts_on_an_axis(how: str, thirds: int) -> None:
    ink = threes(form_of(how), 200)
    assert [one.part for one in ink if isinstance(one, Copy)] == ["third"] * thirds
