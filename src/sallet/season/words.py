"""Windows in words: `11 February – 20 June` as a teacher says it."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.lesson.values.times import LENGTHS, MONTHS, YEAR, month_and_day

if TYPE_CHECKING:
    from sallet.lesson.value import Window

_STARTS: Final = {1: "early", 11: "mid", 21: "late"}
_ENDS: Final = {10: "early", 20: "mid"}


def window_words(window: Window) -> str:
    """Return a window as a lesson writes it: `late February to mid June`, `all year`."""
    if (window.first, window.last) == (1, YEAR):
        return "all year"
    first_month, first_day = month_and_day(window.first)
    last_month, last_day = month_and_day(window.last)
    if first_month == last_month and window.first <= window.last:
        return _within(first_month, first_day, last_day)
    return f"{_start(first_month, first_day)} to {_end(last_month, last_day)}"


def _within(month: int, first: int, last: int) -> str:
    name = MONTHS[month - 1]
    whole = LENGTHS[month - 1]
    thirds = {(1, whole): "", (1, 10): "early ", (11, 20): "mid ", (21, whole): "late "}
    if (first, last) in thirds:
        return f"{thirds[first, last]}{name}"
    return f"{first}–{last} {name}" if first != last else f"{first} {name}"


def _start(month: int, day: int) -> str:
    name = MONTHS[month - 1]
    if day == 1:
        return name
    return f"{_STARTS[day]} {name}" if day in _STARTS else f"{day} {name}"


def _end(month: int, day: int) -> str:
    name = MONTHS[month - 1]
    if day == LENGTHS[month - 1]:
        return name
    return f"{_ENDS[day]} {name}" if day in _ENDS else f"{day} {name}"
