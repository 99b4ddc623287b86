"""Time zones by their names."""

from __future__ import annotations

from typing import Any
from zoneinfo import ZoneInfo

import pytest
from pydantic import TypeAdapter, ValidationError

from sallet.course.time_zones import TimeZone


def read(kind: Any, words: str) -> Any:
    """Return a value, or what was expected in its place."""
    try:
        return TypeAdapter(kind).validate_python(words)
    except ValidationError as error:
        return error.errors()[0]["msg"].removeprefix("Value error, ")


@pytest.mark.parametrize("name", ["Europe/London", "America/New_York", "Asia/Kolkata", "UTC"])
def test_a_time_zone_is_one_that_the_clock_knows(name: str) -> None:
    assert read(TimeZone, name) == ZoneInfo(name).key


@pytest.mark.parametrize(
    ("words", "near"),
    [("London", "`Europe/London`"), ("europe/london", "`Europe/London`"),
     ("America/New York", "`America/New_York`"), ("Lundon", "`Europe/London`"),
     ("somewhere else", "`Europe/London`"), ("localtime", "`Europe/London`"),
     ("../../etc/passwd", "`Europe/London`")],
)  # fmt: skip
def test_another_word_is_told_the_nearest_time_zone_or_an_example(words: str, near: str) -> None:
    assert read(TimeZone, words) == f"expected a time zone such as {near}"
