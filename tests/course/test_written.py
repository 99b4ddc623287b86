"""Times, lengths, steps and numbers as a teacher writes them."""

from __future__ import annotations

from datetime import time
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import TypeAdapter, ValidationError

from sallet.course.written import Address, Clock, Count, Language, Length, Lines, Room, Step


def read(kind: Any, words: str) -> Any:
    """Return a value, or what was expected in its place."""
    try:
        return TypeAdapter(kind).validate_python(words)
    except ValidationError as error:
        return error.errors()[0]["msg"].removeprefix("Value error, ")


@pytest.mark.parametrize(
    ("words", "minutes"),
    [("2 h 30 min", 150), ("2h30min", 150), ("2 hours and 30 minutes", 150), ("2 h", 120),
     ("1 hour", 60), ("150 min", 150), ("2.5 hours", 150), ("0.5 h", 30), ("1.25 h", 75),
     ("1 minute", 1), ("24 h", 1440), ("1440 min", 1440), ("  3   hrs ", 180)],
)  # fmt: skip
def test_a_length_is_told_in_hours_and_minutes(words: str, minutes: int) -> None:
    assert read(Length, words) == minutes


@pytest.mark.parametrize(
    "words",
    ["0 min", "0 h", "24 h 1 min", "1441 min", "99 h", "2", "2:30", "h", "half an hour", "and 5 min",
     "2.5 h 10 min", "2.33 h", "-2 h", "2,5 h", "30 min 2 h", "2 h and", "two hours", "1e2 min"],
)  # fmt: skip
def test_what_is_no_length_of_a_session_is_refused(words: str) -> None:
    assert read(Length, words) == "expected a length such as `2 h 30 min`, of at most 24 h"


@given(st.integers(1, 24 * 60))
def test_every_length_in_whole_minutes_is_read_both_ways(minutes: int) -> None:
    hours, rest = divmod(minutes, 60)
    written = " ".join([f"{hours} h"] * (hours > 0) + [f"{rest} min"] * (rest > 0))
    assert read(Length, written) == read(Length, f"{minutes} min") == minutes


@pytest.mark.parametrize(
    ("words", "days"),
    [("day", 1), ("week", 7), ("fortnight", 14), ("2 weeks", 14), ("14 days", 14), ("1 week", 7),
     ("1 days", 1), ("2 fortnights", 28), ("366 days", 366), ("52 weeks", 364)],
)  # fmt: skip
def test_a_step_is_told_in_days_or_weeks(words: str, days: int) -> None:
    assert read(Step, words) == days


@pytest.mark.parametrize(
    "words",
    ["0 days", "-1 week", "367 days", "53 weeks", "month", "2", "weeks", "2weeks", "often", "1.5 days"],
)  # fmt: skip
def test_what_is_no_step_of_at_most_a_year_is_refused(words: str) -> None:
    expected = "expected a step such as `week`, `2 weeks` or `10 days`, of at most a year"
    assert read(Step, words) == expected


@pytest.mark.parametrize("words", ["1_0", "2.0", "1e2", "three", "", " 3", "٣"])
def test_a_count_is_a_whole_number_in_plain_digits(words: str) -> None:
    assert read(Count, words) == read(Room, words) == "expected a whole number"


def test_counts_and_rooms_have_bounds() -> None:
    assert [read(Count, words) for words in ("1", "400")] == [1, 400]
    assert [read(Room, words) for words in ("0", "1000")] == [0, 1000]
    assert "400" in read(Count, "401")
    assert "1000" in read(Room, "1001")
    assert "0" in read(Room, "-1")


def test_times_tags_and_lines_are_read() -> None:
    assert [read(Clock, words) for words in ("9:30", "23:59")] == [time(9, 30), time(23, 59)]
    assert read(Clock, "24:00") == "expected a time such as 10:30"
    assert read(Language, "en-GB") == "en-GB"
    assert read(Language, "en_GB") == "expected a language's tag such as `en` or `en-GB`"
    assert read(Lines, "a hand lens") == ["a hand lens"]


@pytest.mark.parametrize(
    "words",
    ["https://example.org", "https://example.org/", "http://example.org:8080/hedge/", "https://a.b-c.de/~m/x",
     "https://192.0.2.1/course", "https://example.org/hedge%20and%20beck/", "https://xn--bcher-kva.example/"],
)  # fmt: skip
def test_an_address_is_one_that_page_names_can_be_put_behind(words: str) -> None:
    assert read(Address, words) == words


@pytest.mark.parametrize(
    "words",
    ["example.org", "www.example.org/course", "ftp://example.org/", "https://", "https:///course",
     "https://example.org/?page=", "https://example.org/#top", "https://example.org/a b",
     "https://bücher.example/", "https://example.org/ü", "https://me@example.org/", "javascript:alert(1)",
     "https://example.org:port/", "https://example.org/\n", "https://example.org/<b>", " https://example.org",
     "HTTPS://example.org", ""],
)  # fmt: skip
def test_what_no_telephone_could_open_is_refused(words: str) -> None:
    """A query or a fragment would swallow the name of the page."""
    assert read(Address, words) == "expected an address such as https://example.org/course/"
