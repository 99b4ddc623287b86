"""Which way a stem winds, and buds on a twig."""

from __future__ import annotations

import pytest

from helpers.drawings import parts_of
from helpers.stems import crossing_outlines, faults_of, sketch_of, told_of, values_of
from sallet.drawing.ink import plain
from sallet.drawing.stem.growth import growth
from sallet.drawing.stem.twig import twig
from sallet.drawing.stem.winding import Coil, stem_winding


@pytest.mark.parametrize(("hand", "right"), [("right-handed", True), ("left-handed", False)])
def test_the_near_side_rises_to_the_recorded_side(hand: str, right: bool) -> None:  # noqa: FBT001
    ink = sketch_of(stem_winding, "stem", {"twining direction": hand}, 220).ink
    near = [copy for copy in ink if not hasattr(copy, "pen") and copy.part == "near"]
    assert len(near) == 5
    for mark in plain(tuple(near)):
        if mark.pen == "line":
            low, high = sorted((mark.path.start, mark.path.end), key=lambda p: p.imag)
            assert (high.real > low.real) is right


@pytest.mark.parametrize(("hand", "right"), [("right-handed", True), ("left-handed", False)])
def test_a_twining_stem_crosses_its_support_to_the_recorded_side(
    hand: str,
    right: bool,  # noqa: FBT001
) -> None:
    ink = sketch_of(growth, "stem", {"posture": "twining", "twining direction": hand}, 100).ink
    stems = [mark.path for mark in plain(ink) if mark.part == "stem"]
    assert len(stems) == 5
    assert {path.end.real > path.start.real for path in stems} == {right}


def test_the_far_side_of_a_coil_goes_back_and_goes_on_rising() -> None:
    coil = Coil(1, 10, 30, 0)
    ways = [coil.at(0.2) - coil.at(-0.2), coil.at(0.7) - coil.at(0.3)]
    assert [(way.real > 0, way.imag > 0) for way in ways] == [(True, True), (False, True)]


@pytest.mark.parametrize(("buds", "number"), [("alternate", 4), ("opposite", 8), ("whorled", 16)])
def test_four_joints_carry_the_recorded_buds(buds: str, number: int) -> None:
    sketch = sketch_of(twig, "stem", {"buds on the twig": buds}, 100)
    assert parts_of(sketch.ink)["bud"] == number
    assert crossing_outlines(sketch.ink) == []


def test_alternate_buds_change_sides_from_joint_to_joint() -> None:
    ink = sketch_of(twig, "stem", {"buds on the twig": "alternate"}, 100).ink
    buds = [one.place.at for one in ink if not hasattr(one, "pen") and one.part == "bud"]
    buds.sort(key=lambda at: at.imag)
    assert [at.real > 0 for at in buds] == [False, True, False, True]


def test_what_is_not_recorded_is_not_drawn() -> None:
    told = told_of("stem", {"posture": "twining"})
    assert (stem_winding(told, 100), twig(told, 100)) == (None, None)


def test_both_show_exactly_what_they_say() -> None:
    for draw, label in ((stem_winding, "twining direction"), (twig, "buds on the twig")):
        for value in values_of("stem", label):
            assert faults_of(draw, "stem", {label: value, "posture": "twining"}) == []
