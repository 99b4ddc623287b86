"""A plant's year as rows of bars: names, runs of days, and the words for them."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from helpers.rows import RAMSONS, not_sure_from, row_of, stretch_of
from helpers.years import year_at, year_of
from sallet.lesson.value import Window
from sallet.season.hopkins import Spot
from sallet.season.strip import (
    bars,
    doubts_of,
    runs,
    runs_of,
    split,
    strip_name,
    strip_rows,
    strip_words,
)

DAYS = st.integers(1, 365)
FLOWERS = row_of("flowers", "seen", stretch_of(Window(121, 151)))


def test_what_is_eaten_is_named_so() -> None:
    rows = year_of(RAMSONS).rows
    assert [strip_name(row) for row in rows] == ["eat leaves", "leaves", "flowers", "seeds"]


def test_what_cannot_be_read_is_left_out() -> None:
    rows = strip_rows(year_of(RAMSONS).rows)
    assert [strip_name(row) for row in rows] == ["eat leaves", "leaves", "seeds"]


@pytest.mark.parametrize(
    ("place", "words"),
    [(None, ["eat leaves: March to May", "leaves: late February to mid June",
             "seeds: June, August."]),
     (Spot(57.4, -2.6, 150),
      ["eat leaves: about mid March to mid June", "leaves: about early March to early July",
       "seeds: about mid June to early July, about late July to mid August."])],
)  # fmt: skip
def test_the_bars_are_told_in_words_and_elsewhere_as_an_estimate(
    place: Spot | None, words: list[str]
) -> None:
    assert strip_words(year_at(RAMSONS, place).rows) == "; ".join(words)


def test_days_that_are_not_sure_are_told_whether_or_not_they_are_taken_out() -> None:
    """Taken out they leave no bar, and are the only thing that says so."""
    gathered = not_sure_from(row_of("leaves", "eaten", stretch_of(Window(60, 151))), 60, 105)
    taken_out = not_sure_from(row_of("roots", "eaten"), 335, 365)
    assert strip_words([gathered, FLOWERS]) == (
        "eat leaves: March to May; flowers: May; not yet sure: March to 15 April."
    )
    assert strip_words([taken_out, FLOWERS]) == "flowers: May; not yet sure: December."
    assert strip_words([gathered, taken_out]) == (
        "eat leaves: March to May; not yet sure: March to 15 April and December."
    )


def test_the_days_in_doubt_are_those_of_all_rows() -> None:
    rows = [not_sure_from(row_of("leaves", "eaten"), 1, 2), FLOWERS,
            not_sure_from(row_of("roots", "eaten"), 2, 4)]  # fmt: skip
    assert doubts_of(rows) == {1, 2, 3, 4}
    assert doubts_of([FLOWERS]) == doubts_of([]) == frozenset()


@given(DAYS, DAYS)
def test_runs_are_the_days_of_a_window_and_none_crosses_the_new_year(first: int, last: int) -> None:
    found = runs(Window(first, last))
    assert all(1 <= start <= end <= 365 for start, end in found)
    days = [day for start, end in found for day in range(start, end + 1)]
    assert days == list(Window(first, last).days)


@given(DAYS, DAYS, st.frozensets(DAYS))
def test_a_run_in_parts_is_the_run(first: int, last: int, days: frozenset[int]) -> None:
    run = (min(first, last), max(first, last))
    parts = list(split(run, days))
    found = [(day, within) for (a, b), within in parts for day in range(a, b + 1)]
    assert found == [(day, day in days) for day in range(run[0], run[1] + 1)]


def test_a_bar_tells_what_is_certain_what_is_uncertain_and_what_is_not_sure() -> None:
    row = row_of("leaves", "eaten", stretch_of(Window(350, 20), (2, 3)), stretch_of(None))
    assert list(bars(not_sure_from(row, 1, 10))) == [
        *(((first, last), "soft") for end in row.stretches[0].unsure for first, last in runs(end)),
        ((352, 365), "eaten"), ((1, 10), "doubt"), ((11, 17), "eaten"),
    ]  # fmt: skip


def test_days_are_runs_that_do_not_cross_the_new_year() -> None:
    assert list(runs_of({1, 2, 5, 364, 365})) == [(5, 5), (364, 365), (1, 2)]
