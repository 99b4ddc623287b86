"""Windows in words: `11 February – 20 June` as a teacher says it."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.lesson.value import Window
from sallet.lesson.values.times import LENGTHS, MONTHS, YEAR, month_and_day
from sallet.season.move import windows_of

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from sallet.lesson.value import Item
    from sallet.season.here import Row, Stretch
    from sallet.season.telling import Telling

_STARTS: Final = {1: "early", 11: "mid", 21: "late"}
_ENDS: Final = {10: "early", 20: "mid"}
NEVER_SURE: Final = "not gathered: in no week is it surely told from a plant that harms"
"""Said of what is eaten where no week is left in which it may be gathered."""
ABOUT: Final = "about"
"""The word that stands before every estimate."""


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


def about_words(window: Window) -> str:
    """Return an estimated window no finer than lessons write: `late March to early June`."""
    if len(window.days) >= YEAR:
        return "all year"
    first, last = third_of_month(window.first), third_of_month(window.last)
    same = first == last and window.first <= window.last
    return f"{ABOUT} {first}" if same else f"{ABOUT} {first} to {last}"


def third_of_month(day: int) -> str:
    """Return the part of the month in which a day of the year (1–365) lies: `mid May`."""
    month, on = month_and_day(day)
    third = next(word for last, word in ((10, "early"), (20, "mid"), (31, "late")) if on <= last)
    return f"{third} {MONTHS[month - 1]}"


def day_words(day: int) -> str:
    """Return a day of the year as day and month: `2 May`."""
    month, on = month_and_day(day)
    return f"{on} {MONTHS[month - 1]}"


def when_words(window: Window, *, about: bool = False) -> str:
    """Return a window: `March to 22 April`, or about so where its days are estimates."""
    return about_words(window) if about else window_words(window)


def days_words(days: Iterable[int], *, about: bool = False) -> str:
    """Return days of the year (1–365) as runs: `March to 22 April and 4–30 June`; nothing for none."""
    return in_a_row([when_words(window, about=about) for window in windows_of(days)])


def in_a_row(words: Sequence[str]) -> str:
    """Return words as a list inside a sentence: `March, May and July`."""
    return " and ".join(filter(None, [", ".join(words[:-1]), *words[-1:]]))


def doubt_words(telling: Telling, days: Iterable[int]) -> str:
    """Return on which days a plant is not surely told from one that harms, and what settles it."""
    settled = (
        f"Made sure by: {telling.settled_by}" if telling.settled_by else "Pick none of it then"
    )
    told = f"Not yet surely told from {telling.name} ({telling.danger})"
    return f"{told}: {days_words(days)}. {settled}"


def row_words(row: Row) -> str:
    """Return when a part can be met here, with its qualifiers; as written where it is not read."""
    if row.timing.items and not row.stretches:
        return NEVER_SURE
    here = (_with_qualifiers(_when(s, about=row.about), s.item) for s in row.stretches)
    return ", ".join(here) or row.timing.text


def lesson_words(row: Row) -> str:
    """Return when a part can be met where the lesson was seen."""
    there = (_with_qualifiers(_item_words(i), i) for i in row.timing.items)
    return ", ".join(there) or row.timing.text


def seen_words(row: Row) -> str:
    """Return when a part could be met where the lesson was seen; nothing if it is the same here."""
    if row.not_sure and not row.about:
        # It differs here by what was taken out, not by the place.
        return ""
    there = lesson_words(row)
    return "" if there == row_words(row) else there


def _with_qualifiers(words: str, item: Item) -> str:
    where = [q.words for q in item.qualifiers if q.kind != "frequency"]
    # Words that could not be read hold their adverb already.
    often = [
        q.words for q in item.qualifiers if q.kind == "frequency" and q.words not in words.split()
    ]
    tail = f" ({', '.join(where)})" if where else ""
    return " ".join([*often, words]) + tail


def _item_words(item: Item) -> str:
    return window_words(item.value) if isinstance(item.value, Window) else item.text


def _when(stretch: Stretch, *, about: bool) -> str:
    if stretch.here is None:
        return stretch.item.text
    if stretch.observed:
        return f"{day_words(stretch.here.first)} to {ABOUT} {third_of_month(stretch.here.last)}"
    return when_words(stretch.here, about=about)
