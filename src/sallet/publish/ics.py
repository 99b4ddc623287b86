"""Events as an iCalendar text, to be imported into any calendar. Sections are those of RFC 5545.

The text has its own line ends, CR LF (3.1): it is written as bytes, or they are doubled somewhere.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from typing import TYPE_CHECKING, Final
from unicodedata import category

from sallet.publish.timezones import basic, zone_lines

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

_PRODUCT: Final = "-//sallet//course//EN"
_LINE: Final = 75
"""Octets a line may have, its end not counted (3.1)."""
_LINE_ENDS: Final = re.compile("\r\n|[\r\v\f\x85\u2028\u2029]")
_ESCAPES: Final = str.maketrans({"\\": r"\\", ";": r"\;", ",": r"\,", "\n": r"\n"})
"""A colon and a quotation mark stay as they are (3.3.11)."""


@dataclass(frozen=True)
class Event:
    """Something on a day, over some days, or at a time of day."""

    uid: str
    """Stays the same when the event is moved, so that it replaces the older one."""
    summary: str
    first: date
    last: date | None = None
    """The last day of an event without a time, itself counted; None for the first day."""
    starts: time | None = None
    """None for whole days."""
    minutes: int | None = None
    """How long an event with a time lasts; None where nobody said."""
    place: str = ""
    description: str = ""
    """May have several lines."""
    busy: bool = True
    """Whether the days or hours are taken, for those who look for a free one."""


def calendar_text(
    name: str, events: Sequence[Event], stamp: datetime, zone: str = "", language: str = "en"
) -> str:
    """Return a whole calendar. Without a zone, times are those of whoever reads it.

    The stamp says when the calendar was made. A calendar has one event at least (3.6).
    """
    lines = (
        "BEGIN:VCALENDAR",
        "VERSION:2.0",
        f"PRODID:{_PRODUCT}",
        "CALSCALE:GREGORIAN",
        f"NAME:{_text(name)}",  # RFC 7986, 5.1
        *_zone(zone, events),
        *(line for event in events for line in _event(event, stamp, zone, language)),
        "END:VCALENDAR",
    )
    return "".join(f"{_folded(line)}\r\n" for line in lines)


def _zone(zone: str, events: Sequence[Event]) -> Iterator[str]:
    years = [event.first.year for event in events if event.starts is not None]
    if zone and years:
        yield from zone_lines(zone, min(years), max(years))


def _event(event: Event, stamp: datetime, zone: str, language: str) -> Iterator[str]:
    yield "BEGIN:VEVENT"
    yield f"UID:{_text(event.uid)}"
    yield f"DTSTAMP:{basic(stamp.astimezone(UTC))}Z"
    yield from _days(event) if event.starts is None else _hours(event, event.starts, zone)
    yield f"SUMMARY;LANGUAGE={language}:{_text(event.summary)}"
    if event.place:
        yield f"LOCATION:{_text(event.place)}"
    if event.description:
        yield f"DESCRIPTION:{_text(event.description)}"
    if not event.busy:
        yield "TRANSP:TRANSPARENT"
    yield "END:VEVENT"


def _days(event: Event) -> Iterator[str]:
    yield f"DTSTART;VALUE=DATE:{basic(event.first)}"
    last = event.last or event.first
    # The end is the first day that is free again (3.6.1); behind the last date of all is none.
    if last < date.max:
        yield f"DTEND;VALUE=DATE:{basic(last + timedelta(days=1))}"


def _hours(event: Event, starts: time, zone: str) -> Iterator[str]:
    within = f";TZID={zone}" if zone else ""
    yield f"DTSTART{within}:{basic(datetime.combine(event.first, starts))}"
    # A length is true over midnight and over a change of the clock. The hour at which such an
    # event ends may come twice, and then an end could only name the first of the two (3.3.5).
    if event.minutes:
        yield f"DURATION:PT{event.minutes}M"


def _text(words: str) -> str:
    """Return words as a TEXT value: line ends made one kind, what has no place in it left out."""
    lines = _LINE_ENDS.sub("\n", words)
    kept = (char for char in lines if char in "\t\n" or category(char) not in {"Cc", "Cs"})
    return "".join(kept).translate(_ESCAPES)


def _folded(line: str) -> str:
    """Break a line that is too long between two characters; the space before the rest counts."""
    rows, room = [""], _LINE
    for char in line:
        size = len(char.encode())
        if size > room:
            rows.append(" ")
            room = _LINE - 1
        rows[-1] += char
        room -= size
    return "\r\n".join(rows)
