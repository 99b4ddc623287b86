"""Windows in words, and back again by the reader of times."""

from __future__ import annotations

from itertools import product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from sallet.lesson.value import Window
from sallet.lesson.values.times import day_of_year, read_times
from sallet.lesson.vocabulary_file import load_vocabulary
from sallet.season.words import window_words
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
