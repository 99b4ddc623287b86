"""Marks on a blade."""

from __future__ import annotations

import pytest
from shapely import Point, Polygon

from helpers.drawings import parts_of, points_of
from helpers.leaves import WHOLE, form_of
from sallet.drawing.leaf.blade_tables import SHAPES
from sallet.drawing.leaf.markings import MARKINGS
from sallet.drawing.leaf.outline import outline

BROAD = [s for s in SHAPES if form_of(WHOLE | {"shape": s}).ratio <= 8]


@pytest.mark.parametrize("kind", MARKINGS)
@pytest.mark.parametrize("shape", BROAD)
def test_marks_lie_on_the_blade(kind: str, shape: str) -> None:
    drawn = outline(form_of(WHOLE | {"shape": shape}).blank, 200)
    area = Polygon([(p.real, p.imag) for p in drawn.path.points(16)]).buffer(4)
    points = points_of(MARKINGS[kind](drawn))
    assert points
    outside = [p for p in points if not area.contains(Point(p.real, p.imag))]
    assert len(outside) <= 0.1 * len(points)


@pytest.mark.parametrize(
    ("kind", "least"),
    [("dark spots", 18), ("clear dots", 26), ("dark dots beneath", 26), ("galls", 8),
     ("silver patches", 7), ("white flecks", 22)],
)  # fmt: skip
def test_there_are_marks_enough_on_narrow_and_on_lobed_blades(kind: str, least: int) -> None:
    lobed = WHOLE | {"lobing": "comb-like"}
    for words in (WHOLE, WHOLE | {"shape": "lanceolate"}, lobed):
        drawn = outline(form_of(words).blank, 200)
        assert parts_of(MARKINGS[kind](drawn))["leafmark"] >= least


def test_no_two_kinds_of_marks_look_the_same() -> None:
    drawn = outline(form_of(WHOLE).blank, 200)
    assert len({MARKINGS[kind](drawn) for kind in MARKINGS}) == len(MARKINGS)
