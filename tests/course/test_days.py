"""Days as a teacher writes them."""

from __future__ import annotations

import calendar
from datetime import date
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import TypeAdapter, ValidationError

from sallet.course.days import Day, Days, SeenDays
from sallet.course.model import SeenOn

days_of_any_year = st.dates(date(1900, 1, 1), date(2999, 12, 31))


def read(kind: Any, words: str) -> Any:
    """Return a value, or what was expected in its place."""
    try:
        return TypeAdapter(kind).validate_python(words)
    except ValidationError as error:
        return error.errors()[0]["msg"].removeprefix("Value error, ")


@given(days_of_any_year)
def test_a_day_seen_is_read_in_all_its_forms(day: date) -> None:
    name = calendar.month_name[day.month]
    forms = [f"{day.day} {name} {day.year}", f"{name} {day.day} {day.year}", day.isoformat(),
             f"{name} {day.day}, {day.year}", f"{day.day:02} {name[:3].lower()} {day.year}"]  # fmt: skip
    assert {found for form in forms for found in read(SeenDays, form)} == {
        SeenOn(day.month, day.day, day.year)
    }


@given(days_of_any_year)
def test_a_day_seen_needs_no_year(day: date) -> None:
    name = calendar.month_name[day.month]
    found = [*read(SeenDays, f"{day.day} {name}"), *read(SeenDays, f"{name} {day.day}")]
    assert set(found) == {SeenOn(day.month, day.day)}


def test_there_is_a_29_february_in_a_leap_year_and_in_no_told_year() -> None:
    """Source: the Gregorian calendar; 1900 was no leap year, and 2000 was one."""
    assert read(SeenDays, "29 February") == [SeenOn(2, 29)]
    assert read(SeenDays, "29 February 2000") == [SeenOn(2, 29, 2000)]
    refused = "expected a day such as `2 May 2026` or `2 May`"
    assert {read(SeenDays, f"29 February {year}") for year in (1900, 2026, 2100)} == {refused}


@pytest.mark.parametrize(
    "words",
    ["30 February", "31 June 2026", "0 May", "32 May", "2 Mayo", "May", "2026", "2 May 26",
     "2 5 2026", "2 Ma", "soon", "2026-13-01", "2026-02-30", "2 May 1899", "2 May 3000"],
)  # fmt: skip
def test_what_is_no_day_is_refused(words: str) -> None:
    assert read(SeenDays, words) == "expected a day such as `2 May 2026` or `2 May`"


def test_several_days_are_a_list() -> None:
    assert TypeAdapter(SeenDays).validate_python(["2 May", "2026-05-03"]) == [
        SeenOn(5, 2),
        SeenOn(5, 3, 2026),
    ]
    assert read(Days, "2027-03-06") == [date(2027, 3, 6)]


@given(st.dates())
def test_a_date_is_read_if_its_year_is_in_the_calendar_here(day: date) -> None:
    expected = day if 1900 <= day.year <= 2999 else "expected a date from 1900 to 2999"
    assert read(Day, day.isoformat()) == expected


@pytest.mark.parametrize(
    "words", ["2027-02-29", "2027-00-01", "2027-1-1", "٢٠٢٧-03-06", "20270306"]
)
def test_what_is_no_date_is_refused(words: str) -> None:
    assert read(Day, words) == "expected a date such as 2027-03-06"
