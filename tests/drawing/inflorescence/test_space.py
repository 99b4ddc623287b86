"""Points in the room, seen from a little above."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from sallet.drawing.inflorescence.space import (
    DOWN,
    ORIGIN,
    UP,
    Eye,
    Piece,
    Vec,
    cap,
    direction,
    disc,
    leaning,
    stacked,
)  # fmt: skip
from sallet.drawing.ink import Line, Mark, Path

WAYS = st.builds(direction, st.floats(-180, 180), st.floats(0, 179))


def mark(at: float) -> Mark:
    return Mark(Path(complex(at, 0), (Line(complex(at, 1)),)))


def test_from_level_only_right_and_up_are_seen() -> None:
    assert Eye(0).at(Vec(2, 7, 3)) == pytest.approx(2 + 3j)


def test_from_above_what_is_farther_is_seen_higher() -> None:
    eye = Eye(18)
    assert eye.at(Vec(0, 1, 0)).imag == pytest.approx(math.sin(math.radians(18)))
    assert eye.depth(Vec(0, 1, 0)) > eye.depth(ORIGIN) > eye.depth(Vec(0, -1, 0))


def test_the_nearest_is_laid_down_last() -> None:
    pieces = [Piece(1, (mark(1),)), Piece(-2, (mark(-2),)), Piece(3, (mark(3),))]
    assert stacked(pieces) == (mark(3), mark(1), mark(-2))


@given(WAYS, WAYS)
def test_leaning_keeps_lengths_and_angles_to_the_axis(axis: Vec, way: Vec) -> None:
    leant = leaning(axis, way)
    assert leant.length == pytest.approx(1, abs=1e-6)
    assert leant.dot(axis) == pytest.approx(way.z, abs=1e-6)


def test_leaning_on_an_axis_straight_down_turns_over() -> None:
    assert leaning(DOWN, UP) == Vec(0, 0, -1)


@given(WAYS)
def test_a_direction_is_read_back(way: Vec) -> None:
    again = direction(way.azimuth, way.polar)
    assert (again - way).length == pytest.approx(0, abs=1e-6)


@pytest.mark.parametrize("count", [1, 2, 5, 40])
def test_a_cap_holds_so_many_and_none_beyond_its_edge(count: int) -> None:
    ways = list(cap(count, 50))
    assert len(ways) == count
    assert max(way.polar for way in ways) <= 50


@pytest.mark.parametrize("count", [4, 7, 12, 40])
def test_a_disc_reaches_its_edge(count: int) -> None:
    points = disc(count)
    assert len(points) == count
    assert max(abs(point.x) for point in points) == pytest.approx(1)
    assert {point.z for point in points} == {0}


def test_one_point_of_a_disc_is_its_middle() -> None:
    assert disc(1) == [Vec(0, 0, 0)]
    assert disc(0) == []


def test_nothing_has_the_direction_up() -> None:
    assert ORIGIN.unit == UP
