"""Half the outline of a blade before lobes and teeth."""

from __future__ import annotations

from itertools import pairwise, product

import pytest

from sallet.drawing.leaf.blade_tables import SHAPES
from sallet.drawing.leaf.breadth import breadth
from sallet.drawing.leaf.contour import (
    BASES,
    TIPS,
    Base,
    Contour,
    Tip,
    body_top,
    fullness,
    half,
    widest,
)

PLAIN = Contour(0.5, 2.0, Tip(0.85), Base(0.85))


@pytest.mark.parametrize("shape", SHAPES)
def test_a_half_runs_from_the_stalk_to_the_midrib_and_never_crosses_it(shape: str) -> None:
    plan = SHAPES[shape]
    for tip, base in product(TIPS.values(), BASES.values()):
        runs = half(Contour(plan.widest, plan.tip_p, tip, base, plan.sides), 200, 100)
        points = [p for run in runs for p in run.points]
        assert points[0] == 0j
        assert points[-1].real == pytest.approx(0, abs=1e-9)
        assert min(p.real for p in points) > -1e-9
        for one, other in pairwise(runs):
            assert one.points[-1] == pytest.approx(other.points[0])


@pytest.mark.parametrize("far", [0.3, 0.5, 0.7])
def test_a_blade_is_widest_where_its_shape_says(far: float) -> None:
    contour = Contour(far, 2.0, Tip(0.85), Base(0.85))
    blade = breadth(half(contour, 200, 100))
    assert blade.at(far * 200) == pytest.approx(50)
    assert blade.wide == pytest.approx(50)


def test_fuller_sides_and_blunter_ends_open_sooner() -> None:
    assert fullness(0, 2, 1) == 0
    assert fullness(1, 2, 1) == 1
    assert fullness(0.2, 4, 1) > fullness(0.2, 2, 1) > fullness(0.2, 2, 2)


@pytest.mark.parametrize("base", [name for name, base in BASES.items() if base.lobes])
def test_lobes_at_the_base_reach_below_the_stalk_and_the_blade_is_widest_above_them(
    base: str,
) -> None:
    contour = Contour(0.1, 2.0, TIPS["acute"], BASES[base])
    blade = breadth(half(contour, 200, 100))
    assert blade.low < 0
    assert widest(contour) - BASES[base].depth > 0.05


def test_the_notches_of_base_and_tip_have_no_teeth() -> None:
    runs = half(Contour(0.5, 2.0, TIPS["heart-tipped"], BASES["heart-shaped"]), 200, 100)
    assert [run.toothed for run in runs] == [False, True, False]


@pytest.mark.parametrize(
    ("tip", "top"), [("acute", 200), ("notched", 200), ("tail-like", 155), ("spine-tipped", 180)]
)
def test_the_body_ends_where_a_point_set_on_it_begins(tip: str, top: float) -> None:
    assert body_top(Contour(0.5, 2.0, TIPS[tip], Base()), 200) == pytest.approx(top)


def test_a_waist_draws_a_blade_in() -> None:
    fiddle = SHAPES["fiddle-shaped"]
    assert fiddle.tip is not None
    assert fiddle.base is not None
    shape = Contour(fiddle.widest, fiddle.tip_p, fiddle.tip, fiddle.base, "waist")
    blade = breadth(half(shape, 200, 100))
    waist = min(blade.at(y) for y in range(50, 100))
    assert waist < 0.9 * max(blade.at(y) for y in range(50))
    assert waist < 0.6 * max(blade.at(y) for y in range(100, 200))


def test_a_blade_that_runs_down_its_stalk_begins_as_a_narrow_strip() -> None:
    running = breadth(half(Contour(0.5, 2.0, Tip(0.85), BASES["running down the stalk"]), 200, 100))
    tapering = breadth(half(Contour(0.5, 2.0, Tip(0.85), BASES["tapering"]), 200, 100))
    assert 4 < running.at(10) < 9
    assert running.at(28) < 0.8 * tapering.at(28)
