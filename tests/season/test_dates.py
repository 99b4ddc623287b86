"""Dates and times of day in words, in English on every machine."""

from __future__ import annotations

from datetime import date, time

import pytest

from sallet.course.model import Session
from sallet.season.dates import clock_words, date_words, dates_apart, length_words, short_date

DAY = date(2027, 4, 3)


def test_a_date_is_said_with_its_weekday() -> None:
    """3 April 2027 is a Saturday (ISO 8601 calendar)."""
    assert date_words(DAY) == "Saturday 3 April 2027"
    assert short_date(DAY) == "3 April"


@pytest.mark.parametrize(
    ("starts", "minutes", "words"),
    [(None, None, ""), (time(10), None, "10:00"), (time(9, 5), 150, "09:05–11:35"),
     (time(23), 120, "23:00–01:00"), (None, 150, "2 h 30 min")],
)  # fmt: skip
def test_when_a_session_begins_and_ends(
    starts: time | None, minutes: int | None, words: str
) -> None:
    assert clock_words(Session(DAY, starts, minutes=minutes)) == words


@pytest.mark.parametrize(("minutes", "words"), [(45, "45 min"), (120, "2 h"), (61, "1 h 1 min")])
def test_a_length_is_hours_and_minutes(minutes: int, words: str) -> None:
    assert length_words(minutes) == words


@pytest.mark.parametrize(
    ("other", "words"),
    [(date(2027, 4, 4), "1 day later"), (date(2027, 4, 12), "9 days later"),
     (date(2027, 4, 2), "1 day earlier"), (date(2027, 3, 3), "31 days earlier")],
)  # fmt: skip
def test_how_far_two_dates_are_apart(other: date, words: str) -> None:
    assert dates_apart(DAY, other) == words
