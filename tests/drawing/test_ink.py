"""Paths, places and the room they take."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from sallet.drawing.curves import circle, straight
from sallet.drawing.ink import Box, Copy, Curve, Line, Mark, Path, Place, box, plain, put, turned

POINTS = st.complex_numbers(max_magnitude=500, allow_nan=False, allow_infinity=False)
PLACES = st.builds(
    turned, st.floats(-360, 360), POINTS, st.floats(0.1, 5.0), mirrored=st.booleans()
)
BENT = Path(1j, (Line(2 + 1j), Curve(3 + 1j, 4 + 2j, 4 + 4j)))


def test_paths_join_with_a_bridge_over_a_gap_only() -> None:
    joined = straight(0j, 1 + 0j).then(straight(1 + 0j, 2 + 0j))
    bridged = straight(0j, 1 + 0j).then(straight(1 + 1j, 2 + 0j))
    assert joined.pieces == (Line(1 + 0j), Line(2 + 0j))
    assert bridged.pieces == (Line(1 + 0j), Line(1 + 1j), Line(2 + 0j))


def test_a_path_reversed_runs_through_the_same_points_backwards() -> None:
    assert BENT.reversed().points() == pytest.approx(BENT.points()[::-1])
    assert BENT.reversed().reversed() == BENT
    assert BENT.shut().reversed().closed


def test_a_path_of_nothing_ends_where_it_starts() -> None:
    assert Path(3j, ()).end == 3j


def test_points_are_those_of_the_curve() -> None:
    assert BENT.points(2) == [1j, 2 + 1j, pytest.approx(3.375 + 1.75j), 4 + 4j]


@pytest.mark.parametrize(
    ("place", "lies"),
    [
        (Place(), 1 + 2j),
        (Place(3 + 1j), 4 + 3j),
        (turned(90), -2 + 1j),
        (turned(0, scale=2.0), 2 + 4j),
        (turned(0, mirrored=True), -1 + 2j),
        (turned(90, 1 + 0j, mirrored=True), -1 - 1j),
    ],
)
def test_a_place_mirrors_then_turns_then_moves(place: Place, lies: complex) -> None:
    assert place.put(1 + 2j) == pytest.approx(lies)


@given(outer=PLACES, inner=PLACES, point=POINTS)
def test_a_place_after_another_puts_points_where_both_do(
    outer: Place, inner: Place, point: complex
) -> None:
    assert outer.after(inner).put(point) == pytest.approx(outer.put(inner.put(point)), abs=1e-6)


@given(place=PLACES)
def test_ink_put_somewhere_is_the_same_with_its_copies_resolved_before_or_after(
    place: Place,
) -> None:
    dot = (Mark(circle(0j, 2), "solid"),)
    ink = (Mark(BENT), Copy(dot, turned(30, 5 + 1j)), Copy(dot, turned(0, 1j, mirrored=True)))
    before = [m.path.points() for m in plain(put(ink, place))]
    after = [[place.put(p) for p in m.path.points()] for m in plain(ink)]
    for one, other in zip(before, after, strict=True):
        assert one == pytest.approx(other, abs=1e-6)


def test_the_room_of_a_drawing_holds_half_a_line_round_it() -> None:
    room = box((Mark(straight(0j, 10 + 20j)), Copy((Mark(straight(0j, 1 + 0j)),), Place(14 + 0j))))
    assert room == Box(-0.8, -0.8, 15.8, 20.8)
    assert room.width == pytest.approx(16.6)
    assert room.height == pytest.approx(21.6)


def test_nothing_takes_no_room() -> None:
    assert box(()) == Box(0, 0, 0, 0)
