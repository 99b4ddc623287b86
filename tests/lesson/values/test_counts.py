"""Counts: numbers, words for numbers, open ends."""

from __future__ import annotations

import time

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from helpers.values import (
    VALUES,
    VOCABULARY,
    faults_of,
    hold_to_the_text,
    qualifiers_of,
    text_of,
    values_of,
)
from sallet.lesson.value import Absent, Count, Words
from sallet.lesson.values.counts import MANY, read_counts


@pytest.mark.parametrize(
    ("words", "count"),
    [("5", Count(5, 5)), ("4–6", Count(4, 6)), ("many", Count(MANY, None)),
     ("4-6", Count(4, 6)), ("4 to 6", Count(4, 6)), ("4 or 6", Count(4, 6)),
     ("five", Count(5, 5)), ("Five or six", Count(5, 6)), ("single", Count(1, 1)),
     ("12 or more", Count(12, None)), ("5+", Count(5, None)), ("5 to many", Count(5, None)),
     ("none to 2", Count(0, 2)), ("0–3", Count(0, 3)), ("about 40", Count(40, 40, about=True)),
     ("c. 40", Count(40, 40, about=True)), ("numerous", Count(MANY, None)),
     ("(3–)5–7(–9)", Count(3, 9)), ("5(-8)", Count(5, 8)), ("(3–)many", Count(3, None))],
)  # fmt: skip
def test_a_count_is_read(words: str, count: Count) -> None:
    assert values_of(read_counts, words) == [count]
    assert faults_of(read_counts, words) == []


def test_many_is_more_than_ten() -> None:
    """Floras write `many` or ∞ for more than ten parts (common practice, from memory)."""
    assert MANY == 10 + 1


@pytest.mark.parametrize("words", ["none", "no", "None", "0", "zero"])
def test_nothing_is_an_absence(words: str) -> None:
    assert values_of(read_counts, words) == [Absent()]


def test_several_counts_each_with_its_qualifiers() -> None:
    words = "5–7 (usually), 3 (rarely), usually 9 (lower leaves)"
    assert values_of(read_counts, words) == [Count(5, 7), Count(3, 3), Count(9, 9)]
    assert qualifiers_of(read_counts, words) == [
        ["usually"], ["rarely"], ["usually", "lower leaves"],
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("words", "faults"),
    [("a few", [("unreadable-count", "a few")]), ("more", [("unreadable-count", "more")]),
     ("1000000", [("unreadable-count", "1000000")]), ("2.5", [("unreadable-count", "2.5")]),
     ("5, lots", [("unreadable-count", "lots")]), ("six–five", [("range-upside-down", "six–five")]),
     ("6–4", [("range-upside-down", "6–4")]), ("many to 5", [("range-upside-down", "many to 5")])],
)  # fmt: skip
def test_each_fault_is_named_at_its_place(words: str, faults: list[tuple[str, str]]) -> None:
    assert faults_of(read_counts, words) == faults


def test_what_cannot_be_read_is_kept_as_words() -> None:
    assert values_of(read_counts, "a few") == [Words("a few", understood=False)]


def test_a_range_upside_down_is_kept_the_right_way_up() -> None:
    assert values_of(read_counts, "6–4") == [Count(4, 6)]
    assert values_of(read_counts, "many to 5") == [Count(5, None)]


@pytest.mark.parametrize("filling", [" ", "5 ", "(5", "or ", "+"])
def test_a_very_long_value_takes_no_very_long_time(filling: str) -> None:
    started = time.monotonic()
    read_counts(text_of("5" + filling * 20_000 + "5"), VOCABULARY)
    assert time.monotonic() - started < 5


@settings(max_examples=100, deadline=None)
@given(st.integers(1, 999_999), st.integers(1, 999_999), st.sampled_from("–-—"))
def test_numbers_come_back_as_they_were_written(a: int, b: int, dash: str) -> None:
    low, high = sorted((a, b))
    assert values_of(read_counts, f"{low}{dash}{high}") == [Count(low, high)]
    assert values_of(read_counts, f"{low}, {high}") == [Count(low, low), Count(high, high)]


@settings(max_examples=200, deadline=None)
@given(VALUES)
def test_no_value_raises_or_loses_its_words(words: str) -> None:
    hold_to_the_text(read_counts, words)
    for value in values_of(read_counts, words):
        assert not isinstance(value, Count) or value.high is None or value.low <= value.high
