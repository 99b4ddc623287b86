"""What stands on an even edge."""

from __future__ import annotations

import pytest
from shapely import Point, Polygon

from helpers.drawings import parts_of, points_of
from helpers.leaves import LEAVES, WHOLE, form_of
from sallet.drawing.leaf.fringes import FRINGES, inner_line
from sallet.drawing.leaf.outline import Outline, outline


def blade() -> tuple[Outline, Polygon]:
    """Return a plain blade."""
    drawn = outline(form_of(WHOLE).blank, 200)
    return drawn, Polygon([(p.real, p.imag) for p in drawn.path.points(16)])


def test_every_hint_is_drawn() -> None:
    label = LEAVES.label("margin")
    assert label is not None
    hints = {s.draw[key] for s in label.states for key in ("fringe", "edge") if key in s.draw}
    assert set(FRINGES) == hints


@pytest.mark.parametrize("kind", ["hairs", "silk", "glands"])
def test_hairs_and_glands_stand_outside_the_edge(kind: str) -> None:
    drawn, area = blade()
    points = [Point(p.real, p.imag) for p in points_of(FRINGES[kind](drawn))]
    assert all(area.buffer(0.5).exterior.distance(p) < 14 for p in points)
    assert not any(area.buffer(-1.0).contains(p) for p in points)


@pytest.mark.parametrize("kind", ["pale", "under", "over"])
def test_rims_and_rolled_edges_lie_inside(kind: str) -> None:
    drawn, area = blade()
    assert all(
        area.buffer(0.5).contains(Point(p.real, p.imag)) for p in points_of(FRINGES[kind](drawn))
    )


def test_silk_is_longer_and_denser_than_hairs() -> None:
    drawn, _ = blade()
    assert len(FRINGES["silk"](drawn)) > len(FRINGES["hairs"](drawn)) > 40


def test_glands_are_copies_of_one() -> None:
    drawn, _ = blade()
    assert parts_of(FRINGES["glands"](drawn))["gland"] > 20


def test_a_dense_line_has_bars() -> None:
    drawn, _ = blade()
    assert len(inner_line(0.9, dense=False)(drawn)) == 1
    assert len(inner_line(0.9, dense=True)(drawn)) > 10
