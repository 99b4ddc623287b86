"""A plant's year where the course meets."""

from __future__ import annotations

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from helpers.workshop import lesson_of
from helpers.years import year_at, year_of
from sallet.lesson.value import Item, Window, Words
from sallet.lesson.values.times import day_of_year
from sallet.season.here import SOFT_AT_LEAST, Stretch, plant_year
from sallet.season.hopkins import Spot
from sallet.season.move import Move
from sallet.source import Span

RAMSONS = """---
name: Ramsons
seen at: {latitude: 54.4, longitude: -2.6, elevation: 150 m}
---
## Season
- leaves: late February to mid June
- flowers: late April to early June
- bulbs: all year
## Edible parts
- leaves: March to May; raw
- flowers: when open, late April to May; raw
"""
NORTH = Spot(57.4, -2.6, 150)
"""12 days by the law: three degrees of latitude."""


def window(first: tuple[int, int], last: tuple[int, int]) -> Window:
    """Return a window between two dates, each as month and day."""
    return Window(day_of_year(*first), day_of_year(*last))


def test_rows_are_what_is_eaten_then_what_can_be_seen() -> None:
    rows = year_of(RAMSONS).rows
    assert [(row.name, row.kind) for row in rows] == [
        ("leaves", "eaten"), ("flowers", "eaten"), ("leaves", "seen"), ("flowers", "seen"),
        ("bulbs", "seen"),
    ]  # fmt: skip


def test_a_plant_that_harms_has_rows_of_its_own_kind() -> None:
    year = year_of("---\ntaught as: look-alike\n---\n## Season\n- leaves: May\n")
    assert [row.kind for row in year.rows] == ["harm"]


def test_where_it_was_seen_the_days_are_the_lessons_own() -> None:
    year = year_at(RAMSONS, Spot(54.4, -2.6, 150))
    assert not year.is_estimate
    assert year.seen[0].windows == (window((2, 21), (6, 20)),)
    assert not any(row.about for row in year.rows)


def test_elsewhere_both_ends_move_by_their_own_rule() -> None:
    year = year_at(RAMSONS, NORTH)
    assert year.is_estimate
    assert year.move == Move(12.0, -12.0)
    leaves, flowers, bulbs = year.seen
    assert leaves.windows == (window((3, 5), (7, 2)),)
    assert flowers.windows == (window((5, 3), (6, 22)),)
    assert bulbs.windows == (Window(1, 365),)
    assert all(row.about for row in year.rows)


def test_what_could_not_be_read_stays_in_its_place_without_a_window() -> None:
    row = year_at(RAMSONS, NORTH).eaten[1]
    assert [s.here for s in row.stretches] == [None, window((5, 3), (6, 12))]
    assert row.windows == (window((5, 3), (6, 12)),)


def test_every_end_is_uncertain_by_five_days_and_a_third_of_the_days_moved() -> None:
    """0.35 of 12 days is 4.2, rounded up; the figure is that of the Alps (34 against 22 days)."""
    assert year_of(RAMSONS).seen[0].stretches[0].soft == (SOFT_AT_LEAST, SOFT_AT_LEAST)
    assert year_at(RAMSONS, NORTH).seen[0].stretches[0].soft == (10, 10)


def test_what_is_there_all_year_has_no_uncertain_end() -> None:
    assert year_at(RAMSONS, NORTH).seen[2].stretches[0].soft == (0, 0)


@given(st.integers(1, 365), st.integers(0, 363), st.floats(-60, 60))
def test_uncertain_ends_leave_a_day_that_is_certain(first: int, length: int, north: float) -> None:
    last = (first + length - 1) % 365 + 1
    words = [f"{on.day} {on:%B}" for on in (date.fromordinal(d) for d in (first, last))]
    text = (
        "---\nseen at: {latitude: 45, longitude: 8, elevation: 0 m}\n---\n"
        f"## Season\n- leaves: {words[0]} to {words[1]}\n"
    )
    for stretch in year_at(text, Spot(45 + north / 4, 8, 0)).seen[0].stretches:
        if stretch.here:
            assert sum(stretch.soft) < len(stretch.here.days)


def test_a_row_is_on_from_its_first_to_its_last_day() -> None:
    leaves = year_of(RAMSONS).eaten[0]
    days = [(2, 28), (3, 1), (5, 31), (6, 1)]
    assert [leaves.is_on(day_of_year(*day)) for day in days] == [False, True, True, False]


def test_without_a_place_the_days_stand() -> None:
    year = year_at(RAMSONS, None)
    assert not year.is_estimate
    assert year.seen[0].windows == (window((2, 21), (6, 20)),)


@pytest.mark.parametrize("here", [Spot(30, 2, 0), Spot(54.4, -105, 150), Spot(54.4, -2.6)])
def test_days_that_stand_because_the_law_cannot_be_used_are_a_guess_all_the_same(
    here: Spot,
) -> None:
    """Too far away, on another continent, or at a height that is not told."""
    year = year_at(RAMSONS, here)
    assert year.is_estimate
    assert all(row.about for row in year.rows)
    assert year.seen[0].windows == (window((2, 21), (6, 20)),)


def test_in_the_south_the_year_is_turned_round() -> None:
    year = year_at(RAMSONS, Spot(-54.4, -2.6, 150))
    assert year.is_estimate
    assert year.eaten[0].windows == (window((8, 31), (11, 30)),)


def test_a_lesson_without_times_has_no_rows() -> None:
    assert plant_year(lesson_of("---\nname: Yew\n---\n"), NORTH).rows == ()


DAYS = st.integers(1, 365)


@given(DAYS, DAYS, st.integers(0, 182), st.integers(0, 182))
def test_what_is_certain_and_what_is_not_are_the_window_and_never_the_same_day(
    first: int, last: int, early: int, late: int
) -> None:
    here = Window(first, last)
    most = (len(here.days) - 1) // 2
    ends = (min(early, most), min(late, most))
    stretch = Stretch(Item(here, "", Span(0, 0)), here, ends)
    assert stretch.firm
    certain = set(stretch.firm.days)
    uncertain = {day for end in stretch.unsure for day in end.days}
    assert certain <= set(here.days) <= certain | uncertain
    assert not certain & uncertain or len(here.days) + sum(ends) > 365


def test_a_time_that_was_not_read_has_no_days() -> None:
    stretch = Stretch(Item(Words("when warm"), "when warm", Span(0, 0)))
    assert (stretch.firm, stretch.unsure) == (None, ())


@pytest.mark.parametrize(
    ("day", "unsure"),
    [((3, 2), False), ((3, 3), True), ((3, 13), True), ((3, 22), True), ((3, 23), False),
     ((6, 2), False), ((6, 3), True), ((6, 22), True), ((6, 23), False)],
)  # fmt: skip
def test_of_an_estimate_both_ends_are_unsure(day: tuple[int, int], *, unsure: bool) -> None:
    """12 days later: from 13 March to 12 June, ten days of doubt on either side of both."""
    leaves = year_at(RAMSONS, NORTH).eaten[0]
    assert leaves.is_unsure_on(day_of_year(*day)) is unsure


def test_where_it_was_seen_what_is_eaten_is_sure_and_what_is_seen_may_come_early() -> None:
    eaten, _, leaves, *_ = year_of(RAMSONS).rows
    assert eaten.unsure == ()
    assert leaves.is_unsure_on(day_of_year(2, 17))
    assert not leaves.is_unsure_on(day_of_year(2, 15))


@pytest.mark.parametrize(
    ("season", "may"),
    [("leaves: May", False), ("leaves: when warm", True), ("leaves: none", False), ("", True)],
)
def test_a_plant_may_be_seen_unless_its_lesson_says_that_it_cannot(
    season: str, *, may: bool
) -> None:
    year = year_of(f"---\ntaught as: look-alike\n---\n## Season\n- {season}\n")
    assert year.may_be_seen(day_of_year(1, 15)) is may
    assert not year.can_be_seen(day_of_year(1, 15))
