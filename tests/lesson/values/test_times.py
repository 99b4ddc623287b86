"""Times of year: the format's examples, the days of the year, and what is no time."""

from __future__ import annotations

import time
from datetime import date, timedelta

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
from sallet.lesson.value import Absent, Window, Words
from sallet.lesson.values.times import (
    LENGTHS,
    MONTHS,
    YEAR,
    day_of_year,
    month_and_day,
    read_times,
)

A_COMMON_YEAR = date(2027, 1, 1)


def window(first: str, last: str) -> Window:
    """Return a window from its days as `03-12`, counted by the calendar."""
    days = [date.fromisoformat(f"2027-{day}") for day in (first, last)]
    return Window(*((day - A_COMMON_YEAR).days + 1 for day in days))


def window_of(words: str) -> Window:
    """Return the one window of a value in which nothing is wrong."""
    assert faults_of(read_times, words) == []
    (value,) = values_of(read_times, words)
    assert isinstance(value, Window)
    return value


@pytest.mark.parametrize(
    ("words", "first", "last"),
    [("March to June", "03-01", "06-30"),
     ("late February to mid June", "02-21", "06-20"),
     ("all year", "01-01", "12-31"),
     ("12 March – 5 June", "03-12", "06-05"),
     ("October to March", "10-01", "03-31"),
     ("June", "06-01", "06-30"),
     ("mid April to early June", "04-11", "06-10"),
     ("early May", "05-01", "05-10"),
     ("late May", "05-21", "05-31")],
)  # fmt: skip
def test_the_times_of_the_format_page(words: str, first: str, last: str) -> None:
    assert window_of(words) == window(first, last)


@pytest.mark.parametrize(
    ("words", "first", "last"),
    [("from March to May", "03-01", "05-31"), ("march-may", "03-01", "05-31"),
     ("March–May", "03-01", "05-31"), ("March until May", "03-01", "05-31"),
     ("Mar to Sept", "03-01", "09-30"), ("Mar. to Sept.", "03-01", "09-30"),
     ("mid-March to mid-June", "03-11", "06-20"), ("mid-March–late June", "03-11", "06-30"),
     ("the middle of March", "03-11", "03-20"), ("early to mid June", "06-01", "06-20"),
     ("early–mid June", "06-01", "06-20"), ("3–5 June", "06-03", "06-05"),
     ("3-5 June", "06-03", "06-05"), ("June 3 to July 5", "06-03", "07-05"),
     ("1st May to 2nd June", "05-01", "06-02"), ("29 February", "02-28", "02-28"),
     ("throughout the year", "01-01", "12-31"), ("late December to early January",
      "12-21", "01-10"), ("1 March to 28 February", "03-01", "02-28")],
)  # fmt: skip
def test_other_ways_of_saying_it(words: str, first: str, last: str) -> None:
    assert window_of(words) == window(first, last)


def test_several_windows_and_words_of_frequency() -> None:
    words = "March to May, often September (in mild years)"
    assert values_of(read_times, words) == [window("03-01", "05-31"), window("09-01", "09-30")]
    assert qualifiers_of(read_times, words) == [[], ["often", "in mild years"]]
    assert values_of(read_times, "April and May") == [
        window("04-01", "04-30"), window("05-01", "05-31"),
    ]  # fmt: skip


@pytest.mark.parametrize("words", ["none", "never"])
def test_there_may_be_no_time(words: str) -> None:
    assert values_of(read_times, words) == [Absent()]


@pytest.mark.parametrize(
    ("words", "faults"),
    [("spring", [("unreadable-time", "spring")]),
     ("30 February", [("unreadable-time", "30 February")]),
     ("31 April to May", [("unreadable-time", "31 April to May")]),
     ("0 May", [("unreadable-time", "0 May")]),
     ("mid 5 June", [("unreadable-time", "mid 5 June")]),
     ("March to", [("unreadable-time", "March to")]),
     ("Ma to June", [("unreadable-time", "Ma to June")]),
     ("March to May, when young", [("unreadable-time", "when young")]),
     ("20 June to 5 June", [("range-upside-down", "20 June to 5 June")]),
     ("late June to mid June", [("range-upside-down", "late June to mid June")])],
)  # fmt: skip
def test_each_fault_is_named_at_its_place(words: str, faults: list[tuple[str, str]]) -> None:
    assert faults_of(read_times, words) == faults


def test_a_misspelt_month_is_offered_the_nearest() -> None:
    (fault,) = read_times(text_of("Agust to Septmber"), VOCABULARY)[1]
    assert fault.nearest == ("August", "September")


def test_what_cannot_be_read_is_kept_as_words() -> None:
    assert values_of(read_times, "spring") == [Words("spring", understood=False)]


# ---- the calendar -------------------------------------------------------------------------


def test_the_months_are_those_of_a_common_year() -> None:
    assert sum(LENGTHS) == YEAR == 365
    assert len(MONTHS) == len(LENGTHS) == 12


@given(st.integers(1, 365))
def test_a_day_of_the_year_is_the_calendars(day: int) -> None:
    """Against the standard library's calendar of 2027, a year of 365 days."""
    at = A_COMMON_YEAR + timedelta(days=day - 1)
    assert month_and_day(day) == (at.month, at.day)
    assert day_of_year(at.month, at.day) == day


def test_the_twenty_ninth_of_february_is_the_twenty_eighth() -> None:
    assert day_of_year(2, 29) == day_of_year(2, 28) == 59


# ---- anything at all ----------------------------------------------------------------------

DAYS = st.dates(date(2027, 1, 1), date(2027, 12, 31))


@settings(max_examples=150, deadline=None)
@given(DAYS, DAYS, st.sampled_from([" to ", " – ", "–", " until "]))
def test_days_come_back_as_they_were_written(first: date, last: date, dash: str) -> None:
    words = dash.join(f"{day.day} {MONTHS[day.month - 1]}" for day in (first, last))
    expected = window(f"{first:%m-%d}", f"{last:%m-%d}")
    assert values_of(read_times, words) == [expected]
    backwards = first > last and first.month == last.month
    assert [kind for kind, _ in faults_of(read_times, words)] == (
        ["range-upside-down"] if backwards else []
    )


@settings(max_examples=200, deadline=None)
@given(VALUES)
def test_no_value_raises_or_loses_its_words(words: str) -> None:
    hold_to_the_text(read_times, words)
    for value in values_of(read_times, words):
        if isinstance(value, Window):
            assert 1 <= value.first <= YEAR
            assert 1 <= value.last <= YEAR


@pytest.mark.parametrize("filling", [" ", "mid-", "to ", "5 ", "March "])
def test_a_very_long_value_takes_no_very_long_time(filling: str) -> None:
    started = time.monotonic()
    read_times(text_of("May" + filling * 20_000 + "June"), VOCABULARY)
    assert time.monotonic() - started < 5
