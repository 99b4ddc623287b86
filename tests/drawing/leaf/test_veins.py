"""Veins within a blade: as many as recorded, none beyond the edge."""

from __future__ import annotations

import pytest
from shapely import LineString, Polygon

from helpers.drawings import parts_of
from helpers.leaves import WHOLE, form_of, leaves_told
from sallet.drawing.ink import Mark
from sallet.drawing.leaf.blade_tables import SHAPES
from sallet.drawing.leaf.leaf import leaf
from sallet.drawing.leaf.outline import outline
from sallet.drawing.leaf.veins import KINDS, side_veins, veins


def parts(**words: str) -> dict[str, int]:
    """Return how often each part of a whole leaf is drawn."""
    told = leaves_told(WHOLE | {key.replace("_", " "): value for key, value in words.items()})
    sketch = leaf(told, 200)
    assert sketch is not None
    return parts_of(sketch.ink)


@pytest.mark.parametrize("pairs", [1, 2, 5, 7, 12, 20, 30])
@pytest.mark.parametrize("shape", ["elliptic", "lanceolate", "kidney-shaped", "linear", "obovate"])
@pytest.mark.parametrize("venation", ["pinnate", "net-veined", "veins to the teeth"])
def test_as_many_pairs_of_side_veins_as_recorded(pairs: int, shape: str, venation: str) -> None:
    drawn = parts(shape=shape, venation=venation, pairs_of_side_veins=str(pairs))
    assert (drawn["sidevein"], drawn["midrib"]) == (2 * pairs, 1)


@pytest.mark.parametrize("main", [3, 5, 7, 9])
@pytest.mark.parametrize("shape", ["widely ovate", "heart-shaped", "elliptic", "lanceolate"])
@pytest.mark.parametrize("base", ["heart-shaped", "wedge-shaped", "tapering", "rounded"])
def test_as_many_main_veins_as_recorded(main: int, shape: str, base: str) -> None:
    drawn = parts(shape=shape, base=base, venation="palmate", main_veins_from_the_base=str(main))
    assert drawn["mainvein"] + drawn["midrib"] == main


def test_an_even_number_of_main_veins_is_not_said_to_be_drawn() -> None:
    sketch = leaf(
        leaves_told(WHOLE | {"venation": "palmate", "main veins from the base": "4"}), 200
    )
    assert sketch is not None
    assert "main veins from the base" not in {c.label for c in sketch.shows}


@pytest.mark.parametrize(
    ("venation", "lines"),
    [("one-veined", 0), ("three-veined", 2), ("arcuate", 4), ("parallel", 8)],
)
def test_veins_that_run_lengthwise(venation: str, lines: int) -> None:
    drawn = parts(venation=venation)
    assert (drawn["longvein"], drawn["midrib"]) == (lines, 1)


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("shape", [name for name, plan in SHAPES.items() if not plan.sides])
def test_veins_stay_within_the_blade(kind: str, shape: str) -> None:
    drawn = outline(form_of(WHOLE | {"shape": shape}).blank, 200)
    blade = Polygon([(p.real, p.imag) for p in drawn.path.points(16)])
    assert blade.is_valid
    for mark in veins(kind, drawn):
        assert isinstance(mark, Mark)
        line = LineString([(p.real, p.imag) for p in mark.path.points()])
        outside = line.difference(blade.buffer(1.5)).length
        assert outside <= 0.06 * line.length, (outside, line.length)


@pytest.mark.parametrize("tip", ["acute", "bent forward"])
def test_the_midrib_follows_a_blade_that_is_bent_aside(tip: str) -> None:
    drawn = outline(form_of(WHOLE | {"tip": tip}).blank, 200)
    (midrib,) = veins("1", drawn)
    assert isinstance(midrib, Mark)
    assert midrib.path.end.real == pytest.approx(drawn.sway(midrib.path.end.imag), abs=0.1)


def test_veins_in_a_lobe_at_the_base_turn_down() -> None:
    drawn = outline(form_of(WHOLE | {"base": "deeply heart-shaped"}).blank, 200)
    lowest = [path.end.imag for path in side_veins(drawn, 4)[1:3]]
    assert max(lowest) < 20


def test_veins_are_the_same_on_both_sides() -> None:
    drawn = outline(form_of(WHOLE).blank, 200)
    for kind in KINDS:
        ends = sorted(
            (round(abs(m.path.end.real), 6), round(m.path.end.imag, 6))
            for m in veins(kind, drawn)
            if isinstance(m, Mark) and abs(m.path.end.real) > 1
        )
        assert ends[::2] == ends[1::2]
