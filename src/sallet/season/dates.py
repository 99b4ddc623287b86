"""Dates and times of day in words."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import TYPE_CHECKING

from sallet.lesson.values.times import MONTHS

if TYPE_CHECKING:
    from datetime import date, time

    from sallet.course.model import Session

DAYS = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")


def date_words(day: date) -> str:
    """Return a date as `Saturday 3 April 2027`, in English whatever the machine speaks."""
    return f"{DAYS[day.weekday()]} {day.day} {MONTHS[day.month - 1]} {day.year}"


def short_date(day: date) -> str:
    """Return a date without its weekday and year: `3 April`."""
    return f"{day.day} {MONTHS[day.month - 1]}"


def clock_words(session: Session) -> str:
    """Return when a session begins and, if its length is told, ends: `10:00–12:30`."""
    if session.starts is None:
        return "" if session.minutes is None else length_words(session.minutes)
    begins = _clock(session.starts)
    if session.minutes is None:
        return begins
    start = datetime.combine(session.date, session.starts)
    return f"{begins}–{_clock((start + timedelta(minutes=session.minutes)).time())}"


def _clock(at: time) -> str:
    return f"{at.hour:02}:{at.minute:02}"


def length_words(minutes: int) -> str:
    """Return a length as `2 h 30 min`."""
    hours, rest = divmod(minutes, 60)
    parts = [f"{hours} h" if hours else "", f"{rest} min" if rest else ""]
    return " ".join(part for part in parts if part)


def dates_apart(start: date, other: date) -> str:
    """Return how far a date is from another: `9 days later`, `1 day earlier`."""
    days = (other - start).days
    count = "1 day" if abs(days) == 1 else f"{abs(days)} days"
    return f"{count} {'later' if days > 0 else 'earlier'}"
