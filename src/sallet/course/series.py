"""A series of sessions: the days on which a class meets that comes together every so often."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from itertools import islice, takewhile
from typing import TYPE_CHECKING, Final

if TYPE_CHECKING:
    from collections.abc import Iterator

YEARS: Final = range(1900, 3000)
"""A year outside is a slip, and dates are counted some years on from here."""
_LAST: Final = date(YEARS[-1], 12, 31).toordinal()


@dataclass(frozen=True)
class Series:
    """Meetings that lie equally far apart. A skipped one is passed over and not counted."""

    first: date
    every: int
    """Days from one meeting to the next, at least 1."""
    count: int
    """How many meetings are held."""
    skip: tuple[date, ...] = ()
    listed: int = 0
    """Its place in the file's list of sessions."""

    def held(self) -> tuple[date, ...]:
        """Return the days of the meetings; fewer than asked for where the calendar here ends."""
        skipped = frozenset(self.skip)
        return tuple(islice((day for day in self._days() if day not in skipped), self.count))

    def passed(self) -> tuple[date, ...]:
        """Return the days from the first to the last meeting, skipped ones among them."""
        held = self.held()
        return tuple(takewhile(lambda day: day <= held[-1], self._days())) if held else ()

    def _days(self) -> Iterator[date]:
        ordinals = range(self.first.toordinal(), _LAST + 1, self.every)
        return (date.fromordinal(ordinal) for ordinal in ordinals)

    def nearest(self, day: date) -> tuple[date, ...]:
        """Return the last day of the series before a day and the first behind it, if there are."""
        days = self.passed()
        return (*[d for d in days if d < day][-1:], *[d for d in days if d > day][:1])
