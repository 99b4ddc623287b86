"""The days on which a series meets."""

from __future__ import annotations

from datetime import date, timedelta
from itertools import pairwise

from hypothesis import given
from hypothesis import strategies as st

from sallet.course.series import Series

SATURDAYS = Series(date(2027, 4, 3), 14, 4, (date(2027, 5, 1),))

series = st.builds(
    lambda first, every, count, skipped: Series(
        first, every, count, tuple(first + timedelta(every * number) for number in skipped)
    ),
    st.dates(date(1900, 1, 1), date(2500, 1, 1)),
    st.integers(1, 366),
    st.integers(1, 100),
    st.lists(st.integers(0, 120), max_size=9),
)


def days(*words: str) -> tuple[date, ...]:
    """Return some dates of the year 2027, each written as month and day."""
    return tuple(date.fromisoformat(f"2027-{word}") for word in words)


def test_a_skipped_date_is_passed_over_and_not_counted() -> None:
    assert SATURDAYS.held() == days("04-03", "04-17", "05-15", "05-29")
    assert SATURDAYS.passed() == days("04-03", "04-17", "05-01", "05-15", "05-29")


def test_a_skipped_first_date_moves_the_beginning() -> None:
    assert Series(date(2027, 4, 3), 7, 2, days("04-03")).held() == days("04-10", "04-17")


def test_a_date_off_the_series_skips_nothing() -> None:
    assert Series(date(2027, 4, 3), 7, 2, days("04-04")).held() == days("04-03", "04-10")


def test_a_date_is_told_its_neighbours_in_the_series() -> None:
    nearest = [SATURDAYS.nearest(day) for day in days("04-01", "04-04", "05-01", "06-09")]
    assert nearest == [days("04-03"), days("04-03", "04-17"), days("04-17", "05-15"), days("05-29")]


def test_a_series_ends_with_the_calendar() -> None:
    late = Series(date(2999, 12, 20), 7, 400, (date(2999, 12, 20),))
    assert late.held() == (date(2999, 12, 27),)
    never = Series(date(2999, 12, 31), 1, 3, (date(2999, 12, 31),))
    assert (never.held(), never.passed(), never.nearest(date(2999, 1, 1))) == ((), (), ())


@given(series)
def test_as_many_meetings_are_held_as_are_counted_all_on_the_step_and_none_skipped(
    one: Series,
) -> None:
    held = one.held()
    assert len(held) == len(set(held)) == one.count
    assert {(day - one.first).days % one.every for day in held} == {0}
    assert set(held) & set(one.skip) == set()


@given(series)
def test_no_meeting_is_left_out_but_the_skipped_ones(one: Series) -> None:
    passed = one.passed()
    assert {late - early for early, late in pairwise(passed)} <= {timedelta(one.every)}
    assert set(passed) - set(one.held()) <= set(one.skip)
    assert (passed[0], passed[-1]) == (one.first, one.held()[-1])
