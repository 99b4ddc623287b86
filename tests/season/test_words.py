"""Windows in words, and back again by the reader of times."""

from __future__ import annotations

from itertools import product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from helpers.years import plan_of, year_at, year_of
from sallet.lesson.value import Window
from sallet.lesson.values.times import day_of_year, read_times
from sallet.lesson.vocabulary_file import load_vocabulary
from sallet.season.hopkins import Spot
from sallet.season.words import (
    about_words,
    day_words,
    days_words,
    lesson_words,
    row_words,
    window_words,
)
from sallet.source import Span, Text

VOCABULARY = load_vocabulary()
DAYS = st.integers(1, 365)
TURNS = [day_of_year(month, day) for month in range(1, 13) for day in (1, 10, 11, 20, 21, 31)]
"""The first and last days of early, mid and late in every month."""


def read(words: str) -> list[object]:
    """Return what the reader of times makes of some words."""
    items, _ = read_times(Text(words, Span(0, len(words))), VOCABULARY)
    return [item.value for item in items]


@pytest.mark.parametrize(
    ("first", "last", "words"),
    [((3, 1), (6, 30), "March to June"),
     ((2, 21), (6, 20), "late February to mid June"),
     ((4, 11), (6, 10), "mid April to early June"),
     ((10, 1), (3, 31), "October to March"),
     ((12, 21), (1, 10), "late December to early January"),
     ((3, 12), (6, 5), "12 March to 5 June"),
     ((1, 1), (12, 31), "all year"),
     ((5, 1), (5, 31), "May"),
     ((5, 1), (5, 10), "early May"),
     ((5, 11), (5, 20), "mid May"),
     ((2, 21), (2, 28), "late February"),
     ((5, 3), (5, 17), "3–17 May"),
     ((5, 3), (5, 3), "3 May"),
     ((5, 20), (5, 10), "20 May to early May")],
)  # fmt: skip
def test_a_window_is_said_as_a_teacher_says_it(
    first: tuple[int, int], last: tuple[int, int], words: str
) -> None:
    assert window_words(Window(day_of_year(*first), day_of_year(*last))) == words


@given(DAYS, DAYS)
def test_every_window_is_read_back_as_it_was(first: int, last: int) -> None:
    window = Window(first, last)
    assert read(window_words(window)) == [window]


def test_every_window_of_whole_thirds_of_months_is_read_back_as_it_was() -> None:
    windows = [Window(first, last) for first, last in product(TURNS, TURNS)]
    changed = [w for w in windows if read(window_words(w)) != [w]]
    assert changed == []


@pytest.mark.parametrize(
    ("first", "last", "words"),
    [((3, 24), (6, 9), "about late March to early June"),
     ((3, 1), (6, 30), "about early March to late June"),
     ((5, 11), (5, 20), "about mid May"),
     ((5, 10), (5, 11), "about early May to mid May"),
     ((10, 5), (3, 31), "about early October to late March"),
     ((5, 20), (5, 11), "about mid May to mid May"),
     ((1, 1), (12, 31), "all year")],
)  # fmt: skip
def test_an_estimate_is_no_finer_than_a_third_of_a_month(
    first: tuple[int, int], last: tuple[int, int], words: str
) -> None:
    assert about_words(Window(day_of_year(*first), day_of_year(*last))) == words


@given(DAYS, DAYS)
def test_an_estimate_in_words_covers_every_day_of_it(first: int, last: int) -> None:
    window = Window(first, last)
    words = about_words(window).removeprefix("about ")
    (found,) = read(words)
    assert isinstance(found, Window)
    # Thirds that fold back on themselves are the one case a reader of times would refuse.
    assert set(window.days) <= set(found.days) or first > last


LESSON = """---
name: Elder
seen at: {latitude: 54.4, longitude: -2.6, elevation: 150 m}
---
## Season
- leaves: usually March to November (in sun), when it is mild
- flowers: June
- stem: all year
- bark: none
"""


def test_where_it_was_seen_a_row_is_said_as_the_lesson_has_it() -> None:
    rows = year_of(LESSON).seen
    assert [row_words(row) for row in rows] == [
        "usually March to November (in sun), when it is mild", "June", "all year", "none",
    ]  # fmt: skip
    assert [lesson_words(row) for row in rows] == [row_words(row) for row in rows]


def test_elsewhere_a_row_is_said_as_an_estimate_and_keeps_what_qualifies_it() -> None:
    rows = year_at(LESSON, Spot(57.4, -2.6, 150)).seen
    assert [row_words(row) for row in rows] == [
        "usually about mid March to mid November (in sun), when it is mild",
        "about mid June to early July", "all year", "none",
    ]  # fmt: skip
    assert lesson_words(rows[1]) == "June"


def test_what_was_seen_here_is_said_to_the_day() -> None:
    course = {
        "course.yml": "place: {latitude: 57.4, longitude: -2.6, elevation: 150 m}\n"
        "seen here: {elder flowers: 12 June 2026}\n",
        "elder.md": LESSON,
    }
    rows = plan_of(course).years[0].seen
    assert row_words(rows[1]) == "12 June to about early July"


@pytest.mark.parametrize(("day", "words"), [(1, "1 January"), (122, "2 May"), (365, "31 December")])
def test_a_day_of_the_year_in_words(day: int, words: str) -> None:
    assert day_words(day) == words


@pytest.mark.parametrize(
    ("days", "words"),
    [(range(60, 91), "March"), ([*range(60, 91), 100], "March and 10 April"),
     ([1, 31, 100], "1 January, 31 January and 10 April"), ([], "")],
)  # fmt: skip
def test_days_in_words(days: list[int], words: str) -> None:
    assert days_words(days) == words
