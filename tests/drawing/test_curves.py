"""Curves through points."""

from __future__ import annotations

import cmath
import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from sallet.drawing.curves import (
    TOLERANCE,
    bezier,
    circle,
    cornered,
    ellipse,
    fitted,
    mirrored,
    smooth,
    straight,
    walk,
)  # fmt: skip
from sallet.drawing.ink import Line

POINTS = st.complex_numbers(max_magnitude=300, allow_nan=False, allow_infinity=False)
ARC = [100 * cmath.exp(1j * math.radians(n)) for n in range(0, 200, 4)]


def far_from(points: list[complex], polyline: list[complex]) -> float:
    """Return how far the farthest of some points lies from a dense polyline."""
    return max(min(abs(p - q) for q in polyline) for p in points)


def test_a_fitted_curve_runs_near_its_points_in_few_pieces() -> None:
    path = fitted(ARC)
    assert far_from(ARC, path.points(200)) < TOLERANCE + 0.2
    assert len(path.pieces) <= 8


@given(points=st.lists(POINTS, min_size=2, max_size=12))
def test_a_fitted_curve_begins_and_ends_with_its_points_and_makes_no_wide_loops(
    points: list[complex],
) -> None:
    path = fitted(points)
    assert path.start == points[0]
    assert path.end == pytest.approx(points[-1], abs=1e-6)
    reach = max(abs(p - q) for p in points for q in points)
    assert max(abs(p - points[0]) for p in path.points()) <= 3 * reach + 1e-6


def test_the_same_point_twice_is_fitted_too() -> None:
    assert fitted([1j, 1j]).end == 1j


def test_corners_stay_between_runs() -> None:
    path = cornered([[0j, 10 + 0j], [10 + 0j, 10 + 10j]])
    assert path.pieces == (Line(10 + 0j), Line(10 + 10j))


def test_a_smooth_path_goes_through_every_point() -> None:
    points = [0j, 3 + 4j, 8 + 4j, 9 - 2j]
    assert [piece.end for piece in smooth(points).pieces] == points[1:]
    closed = smooth(points, closed=True)
    assert [piece.end for piece in closed.pieces] == [*points[1:], points[0]]
    assert closed.closed


def test_a_bezier_has_its_ends_and_its_middle() -> None:
    assert bezier(0j, 2j, 4 + 2j, 4 + 0j, 2) == [0j, pytest.approx(2 + 1.5j), 4 + 0j]


def test_circles_and_ellipses_keep_their_radii() -> None:
    assert all(abs(abs(p - 5) - 7) < 0.01 for p in circle(5 + 0j, 7).points())
    points = ellipse(1j, 4, 2).points()
    assert max(p.real for p in points) == pytest.approx(4)
    assert max(p.imag for p in points) == pytest.approx(3)


def test_a_walk_measures_and_finds_places() -> None:
    way = walk([0j, 3 + 0j, 3 + 4j])
    assert way.length == 7
    assert [way.at(far) for far in (0, 1.5, 3, 5, 7)] == [0j, 1.5 + 0j, 3 + 0j, 3 + 2j, 3 + 4j]
    assert [way.heading(far) for far in (1, 5)] == [1 + 0j, 1j]
    assert way.between(1, 5) == [1 + 0j, 3 + 0j, 3 + 2j]


def test_points_are_mirrored_at_the_midrib() -> None:
    assert mirrored([1 + 2j, -3j]) == [-1 + 2j, -3j]


def test_straight_lines_may_close() -> None:
    assert straight(0j, 1 + 0j, 1j, closed=True).closed
    assert straight(0j, 1 + 0j).pieces == (Line(1 + 0j),)
