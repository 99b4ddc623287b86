"""Teeth along an edge: which way they look, and where they stand."""

from __future__ import annotations

import pytest
from shapely import LineString

from sallet.drawing.curves import circle
from sallet.drawing.ink import Path
from sallet.drawing.leaf.margin import KINDS, MARGINS, edge
from sallet.drawing.leaf.run import Run

EDGE = Run(tuple(complex(0, y) for y in range(0, 201, 5)))
"""A straight edge from the stalk up; out is to the right."""
NAMES = [name for name, teeth in MARGINS.items() if teeth]


def toothed(name: str, run: Run = EDGE, length: float = 200, room: float = 60) -> list[complex]:
    """Return the points of a toothed edge."""
    return Path(run.points[0], tuple(edge(run, MARGINS[name], length, room))).points(16)


def tips_in_intervals(name: str) -> list[float]:
    """Return where the tip of each tooth stands, from the valley below (0) to that above (1)."""
    points = toothed(name)
    inner = range(1, len(points) - 1)
    x = [p.real for p in points]
    tips = [n for n in inner if x[n - 1] < x[n] >= x[n + 1] and x[n] > 0.5]
    valleys = [n for n in inner if x[n - 1] >= x[n] < x[n + 1]]
    found = []
    for tip in tips:
        below = [points[n].imag for n in valleys if points[n].imag <= points[tip].imag]
        above = [points[n].imag for n in valleys if points[n].imag > points[tip].imag]
        if below and above:
            low, high = max(below), min(above)
            found.append((points[tip].imag - low) / (high - low))
    return found


@pytest.mark.parametrize("name", ["toothed", "serrate", "finely serrate", "coarsely serrate"])
def test_saw_teeth_look_to_the_tip_of_the_leaf(name: str) -> None:
    places = tips_in_intervals(name)
    assert len(places) > 4
    assert min(places) > 0.6


@pytest.mark.parametrize("name", ["dentate", "coarsely dentate", "crenate", "faintly scalloped"])
def test_straight_and_rounded_teeth_stand_in_the_middle(name: str) -> None:
    places = tips_in_intervals(name)
    assert len(places) > 4
    assert places == pytest.approx([0.5] * len(places), abs=0.06)


def test_sizes_are_those_of_their_words() -> None:
    count = {name: len(tips_in_intervals(name)) for name in NAMES}
    assert count["finely serrate"] > count["serrate"] > count["coarsely serrate"]
    assert count["dentate"] > count["coarsely dentate"]
    high = {name: max(p.real for p in toothed(name)) for name in NAMES}
    assert high["finely serrate"] < high["serrate"] < high["coarsely serrate"]
    assert high["faintly scalloped"] < high["crenate"]


def test_a_doubly_toothed_edge_has_small_teeth_on_its_large_ones() -> None:
    points = toothed("doubly serrate")
    x = [p.real for p in points]
    tops = [x[n] for n in range(1, len(x) - 1) if x[n - 1] < x[n] >= x[n + 1] and x[n] > 0.3]
    assert len(tops) % 3 == 0
    assert all(
        low < middle < high
        for low, middle, high in zip(*(tops[n::3] for n in range(3)), strict=True)
    )


@pytest.mark.parametrize(
    ("name", "bare"), [("toothed near the tip only", 0.6), ("toothed except at the base", 0.3)]
)
def test_teeth_may_begin_higher_up(name: str, bare: float) -> None:
    assert all(abs(p.real) < 0.2 for p in toothed(name) if p.imag < bare * 200)
    assert max(p.real for p in toothed(name)) > 2


def test_an_even_edge_is_the_run_itself() -> None:
    assert all(abs(p.real) < 0.2 for p in toothed("entire"))
    bare = Run(EDGE.points, toothed=False)
    assert all(abs(p.real) < 0.2 for p in toothed("serrate", bare))


def test_a_run_that_goes_from_the_tip_has_its_teeth_the_other_way_round() -> None:
    back = Run(EDGE.points, forward=False)
    points = toothed("serrate", back)
    assert points[0] == 0j
    assert points[-1] == pytest.approx(200j)
    assert max(p.real for p in points) > 2


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("room", [3, 20, 80])
def test_teeth_never_cross_one_another_on_a_straight_or_round_edge(name: str, room: float) -> None:
    out = [p for p in circle(0j, 80).points(12) if p.real >= 0 and p.imag < 75]
    hollow = Run(tuple(complex(80 - p.real, p.imag) for p in sorted(out, key=lambda p: p.imag)))
    round_ = Run(tuple(sorted(out, key=lambda p: p.imag)))
    for run in (EDGE, hollow, round_):
        points = toothed(name, run, 200, room)
        assert LineString([(p.real, p.imag) for p in points]).is_simple


@pytest.mark.parametrize("name", NAMES)
def test_teeth_are_no_higher_than_there_is_room(name: str) -> None:
    reach = max(p.real for p in toothed(name, room=8))
    assert 0.3 < reach <= 0.62 * 8


def test_every_kind_of_tooth_is_used() -> None:
    assert {teeth.kind for teeth in MARGINS.values() if teeth} == set(KINDS)
