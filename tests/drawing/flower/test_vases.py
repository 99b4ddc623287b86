"""The bodies of flowers seen from the side."""

from __future__ import annotations

import math

import pytest

from sallet.drawing.flower.vases import VASES, Seen, filled, hull_of


@pytest.mark.parametrize("shape", VASES)
def test_a_flower_is_about_as_long_as_one(shape: str) -> None:
    vase = VASES[shape]
    top = max(vase.reach(1.0)[0], *(height for height, _ in vase.wall))
    assert 0.4 < top < 1.05


def test_a_straight_lobe_reaches_as_far_as_it_is_long() -> None:
    vase = VASES["tube"]
    height, radius = vase.reach(1.0)
    assert math.hypot(height - vase.rim[0], radius - vase.rim[1]) == pytest.approx(0.15, rel=0.02)


def test_the_far_side_of_a_rim_is_seen_above_the_near_side() -> None:
    seen = Seen(VASES["bell"], 100)
    assert seen.at(0, 0.4, 0.7).imag > seen.at(math.pi, 0.4, 0.7).imag
    assert seen.at(math.pi / 2, 0.4, 0.7).real == pytest.approx(40)


def test_a_curved_body_keeps_its_foot_and_bends_to_the_right() -> None:
    straight, bent = Seen(VASES["tube"], 100), Seen(VASES["tube"], 100, math.radians(48))
    assert bent.at(math.pi / 2, 0.1, 0) == pytest.approx(straight.at(math.pi / 2, 0.1, 0))
    assert bent.at(math.pi / 2, 0, 1).real > 20


def test_paper_follows_the_near_rim_where_it_can() -> None:
    left, right = [-1 + 0j, -2 + 9j], [1 + 0j, 2 + 9j]
    assert [p for p in filled(left, right, [2 + 9j, 0 + 8j, -2 + 9j]).points() if p == 8j] == [8j]
    crossing = [2 + 9j, 0 - 3j, -2 + 9j]
    assert filled(left, right, crossing).points() == [-2 + 9j, -1 + 0j, 1 + 0j, 2 + 9j]


def test_a_hull_keeps_the_corners_only() -> None:
    assert set(hull_of([0j, 2 + 0j, 2 + 2j, 2j, 1 + 1j, 1 + 0j])) == {0j, 2 + 0j, 2 + 2j, 2j}
