"""Days and windows moved: spring one way, autumn the other, and no event overtakes another."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from sallet.lesson.value import Window
from sallet.lesson.values.times import day_of_year
from sallet.season.move import Move, between, days_from, moved, windows_of

NORTHWARD = Move(15.6, -15.6)
SOUTHWARD = Move(-15.6, 15.6)


def window(first: tuple[int, int], last: tuple[int, int]) -> Window:
    """Return a window between two dates, each as month and day."""
    return Window(day_of_year(*first), day_of_year(*last))


@pytest.mark.parametrize(
    ("month", "day", "days"),
    [(2, 1, 15.6), (4, 15, 15.6), (6, 21, 15.6), (9, 1, -15.6), (10, 15, -15.6), (11, 30, -15.6)],
)
def test_spring_comes_later_and_autumn_earlier_northward(month: int, day: int, days: float) -> None:
    """The worked figure of the law: +15.6 days in spring, -15.6 in autumn."""
    assert NORTHWARD.of(day_of_year(month, day)) == pytest.approx(days)
    assert SOUTHWARD.of(day_of_year(month, day)) == pytest.approx(-days)


def test_in_the_middle_of_the_turns_nothing_moves() -> None:
    """Between 21 June and 31 August lies 27 July, between 30 November and 31 January the new year."""
    assert NORTHWARD.of(day_of_year(7, 27)) == pytest.approx(0, abs=0.3)
    assert NORTHWARD.of(day_of_year(12, 31)) == pytest.approx(0, abs=0.3)


@pytest.mark.parametrize(
    ("there", "here"),
    [(window((3, 1), (5, 31)), window((3, 17), (6, 16))),  # both ends in spring
     (window((9, 1), (10, 31)), window((8, 16), (10, 15))),  # both ends in autumn
     (window((4, 1), (10, 31)), window((4, 17), (10, 15))),  # a summer that is shorter
     (window((10, 1), (3, 31)), window((9, 15), (4, 16))),  # over the new year: a longer winter
     (Window(1, 365), Window(1, 365))],
)  # fmt: skip
def test_a_window_moves_by_its_ends(there: Window, here: Window) -> None:
    assert moved(there, NORTHWARD) == here


def test_southward_the_summer_is_longer() -> None:
    there = window((4, 1), (10, 31))
    assert moved(there, SOUTHWARD) == window((3, 16), (11, 16))


@pytest.mark.parametrize("there", [Window(1, 365), Window(200, 199), Window(60, 59)])
def test_what_is_there_all_year_stays_so(there: Window) -> None:
    assert moved(there, NORTHWARD) == there


@pytest.mark.parametrize(
    "there", [Window(1, 364), Window(2, 365), Window(2, 1), Window(366 - 10, 350)]
)
def test_what_is_there_nearly_all_year_never_becomes_a_day(there: Window) -> None:
    for move in (NORTHWARD, SOUTHWARD, Move(30, -30), Move(-30, 30)):
        assert len(moved(there, move).days) > 300


def test_in_the_southern_half_the_year_is_half_a_year_on() -> None:
    to_south = Move(southern_here=True)
    assert moved(window((3, 1), (5, 31)), to_south) == window((8, 31), (11, 30))
    to_north = Move(southern_origin=True)
    assert moved(window((8, 31), (11, 30)), to_north) == window((3, 1), (5, 31))


def test_within_the_southern_half_spring_is_in_september() -> None:
    move = Move(15.6, -15.6, southern_origin=True, southern_here=True)
    assert moved(window((9, 1), (11, 30)), move) == window((9, 17), (12, 16))
    assert moved(window((3, 10), (4, 30)), move) == window((2, 22), (4, 14))


def test_spring_and_autumn_may_move_by_different_days() -> None:
    move = Move(spring=10, autumn=3)
    assert (move.of(100), move.of(280)) == (10, 3)


@pytest.mark.parametrize(
    ("month", "day", "spring"),
    [(2, 15, True), (5, 1, True), (6, 28, True), (8, 10, False), (10, 1, False), (12, 20, False)],
)
def test_the_half_of_the_year(month: int, day: int, *, spring: bool) -> None:
    assert Move().is_spring(day_of_year(month, day)) is spring
    south = Move(southern_origin=True)
    assert south.is_spring(day_of_year(month, day)) is not spring


def test_a_move_of_less_than_half_a_day_is_none() -> None:
    assert Move(0.4, -0.4).is_none
    assert not Move(0.6, -0.6).is_none
    assert not Move(southern_here=True).is_none


DAYS = st.integers(1, 365)
SHIFTS = st.floats(-60, 60)


@given(DAYS, st.integers(0, 364), SHIFTS)
def test_no_event_overtakes_another(day: int, later: int, shift: float) -> None:
    """A look-alike that is about while a plant is picked is so wherever the two are moved."""
    move = Move(shift, -shift)
    assert day + move.of(day) <= day + later + move.of(day + later)


@given(DAYS, DAYS, DAYS, SHIFTS)
def test_a_day_inside_a_window_stays_inside(first: int, last: int, day: int, shift: float) -> None:
    there = Window(first, last)
    move = Move(shift, -shift)
    event = moved(Window(day, day), move)
    here = moved(there, move)
    assert day not in there or set(event.days) <= set(here.days)


@given(first=DAYS, last=DAYS, shift=SHIFTS, south=st.booleans(), here=st.booleans())
def test_a_moved_window_is_a_window(
    *, first: int, last: int, shift: float, south: bool, here: bool
) -> None:
    found = moved(Window(first, last), Move(shift, -shift, south, here))
    assert 1 <= found.first <= 365
    assert 1 <= found.last <= 365


@given(DAYS, DAYS)
def test_without_a_shift_nothing_changes(first: int, last: int) -> None:
    there = Window(first, last)
    assert set(moved(there, Move()).days) == set(there.days)


@pytest.mark.parametrize(
    ("first", "last", "found"),
    [(10, 20, Window(10, 20)), (-4, 5, Window(361, 5)), (360, 370, Window(360, 5)),
     (1, 365, Window(1, 365)), (-3, 400, Window(1, 365)), (0, 0, Window(365, 365)),
     (20, 10, Window(20, 20)), (366, 380, Window(1, 15))],
)  # fmt: skip
def test_a_window_between_days_of_any_year(first: int, last: int, found: Window) -> None:
    assert between(first, last) == found


@pytest.mark.parametrize(
    ("one", "other", "days"), [(10, 20, 10), (20, 10, -10), (360, 5, 10), (5, 360, -10), (1, 1, 0)]
)
def test_days_are_counted_the_shorter_way_round_the_year(one: int, other: int, days: int) -> None:
    assert days_from(one, other) == days


@pytest.mark.parametrize(
    ("days", "found"),
    [((), ()), ((5,), (Window(5, 5),)), ((3, 1, 2, 9), (Window(1, 3), Window(9, 9))),
     ((364, 365, 1, 2, 100), (Window(100, 100), Window(364, 2))),
     (tuple(range(1, 366)), (Window(1, 365),))],
)  # fmt: skip
def test_days_as_windows(days: tuple[int, ...], found: tuple[Window, ...]) -> None:
    assert windows_of(days) == found


@given(st.frozensets(DAYS))
def test_windows_hold_the_days_they_were_made_from_and_no_two_touch(days: frozenset[int]) -> None:
    windows = windows_of(days)
    assert sorted(day for window in windows for day in window.days) == sorted(days)
    assert all((window.last % 365) + 1 not in days for window in windows if len(days) < 365)
