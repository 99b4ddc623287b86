"""A time zone as a calendar carries it: every change of its clock in the years that matter.

A rule for all years to come (RRULE) is not written: it would promise what a parliament may alter,
and not every zone has one. Sections are those of RFC 5545.
"""

from __future__ import annotations

from bisect import bisect_left
from datetime import UTC, date, datetime, timedelta
from typing import TYPE_CHECKING, Final
from zoneinfo import ZoneInfo

if TYPE_CHECKING:
    from collections.abc import Iterator

_SECOND: Final = timedelta(seconds=1)
_DAY: Final = timedelta(days=1)
"""From one look at the clock to the next."""
_FIRST_YEAR: Final = 3
_LAST_YEAR: Final = 9998
"""The years before and behind these are the last whose beginning can be told in UTC everywhere."""


def zone_lines(name: str, first: int, last: int) -> Iterator[str]:
    """Yield the lines of a VTIMEZONE that holds from the first year to the last (3.6.5)."""
    zone = ZoneInfo(name)
    yield "BEGIN:VTIMEZONE"
    yield f"TZID:{name}"
    for moment in _onsets(zone, first, last):
        yield from _observance(zone, moment)
    yield "END:VTIMEZONE"


def basic(moment: date) -> str:
    """Return a date, or a date with its time, without signs between: `20270403T100000`."""
    # Not `strftime`, whose years before 1000 have fewer digits on some systems.
    if isinstance(moment, datetime):
        moment = moment.replace(microsecond=0, tzinfo=None)
    return moment.isoformat().replace("-", "").replace(":", "")


def _onsets(zone: ZoneInfo, first: int, last: int) -> list[datetime]:
    """Return when each needed offset begins; the first of them before the first year does.

    A zone that keeps changing has changed in the year before. Where it has not, that year's
    beginning stands for a change that lies too far back to matter.
    """
    first, last = max(first, _FIRST_YEAR), min(last, _LAST_YEAR)
    early, begin, end = (
        datetime(year, 1, 1, tzinfo=zone).astimezone(UTC) for year in (first - 1, first, last + 1)
    )
    moments = [early, *_changes(zone, early, end)]
    return moments[bisect_left(moments, begin) - 1 :]


def _changes(zone: ZoneInfo, begin: datetime, end: datetime) -> Iterator[datetime]:
    while begin < end:
        then = begin + _DAY
        if _offset(zone, begin) != _offset(zone, then):
            yield _change(zone, begin)
        begin = then


def _change(zone: ZoneInfo, begin: datetime) -> datetime:
    """Return the second of the day at which the clock is changed."""
    old = _offset(zone, begin)

    def changed(second: int) -> bool:
        return _offset(zone, begin + second * _SECOND) != old

    return begin + bisect_left(range(_DAY // _SECOND), x=True, key=changed) * _SECOND


def _offset(zone: ZoneInfo, moment: datetime) -> timedelta | None:
    return moment.astimezone(zone).utcoffset()


def _observance(zone: ZoneInfo, moment: datetime) -> Iterator[str]:
    before, after = (moment - _SECOND).astimezone(zone), moment.astimezone(zone)
    # Compared, because in Ireland and Morocco the data call winter and Ramadan the exception.
    summer = (after.dst() or timedelta()) > (before.dst() or timedelta())
    kind = "DAYLIGHT" if summer else "STANDARD"
    yield f"BEGIN:{kind}"
    # What the clock would have shown had it not been changed: adding in a zone moves its hands.
    yield f"DTSTART:{basic(before + _SECOND)}"
    yield f"TZOFFSETFROM:{before:%z}"
    yield f"TZOFFSETTO:{after:%z}"
    yield f"TZNAME:{after:%Z}"
    yield f"END:{kind}"
