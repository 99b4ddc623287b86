"""Season order: the plant that can be taught first in the year comes first."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.lesson.values.times import YEAR
from sallet.season.move import SOUTHWARD

if TYPE_CHECKING:
    from collections.abc import Iterable

    from sallet.lesson.value import Window
    from sallet.season.here import PlantYear

    Rank = tuple[int, int, str]

LAST: Final = YEAR + 1
"""After every day of the year: a plant with no window comes at the end."""


def teaching_windows(year: PlantYear) -> tuple[Window, ...]:
    """Return the windows in which a plant is worth meeting.

    For food these are the windows of its edible parts, for a plant to keep away from all of
    its season.
    """
    eaten = [window for row in year.eaten for window in row.windows]
    return tuple(eaten or [window for row in year.seen for window in row.windows])


def in_season_order(years: Iterable[PlantYear]) -> tuple[PlantYear, ...]:
    """Return plants by the first day on which each is worth meeting, then by name.

    The year opens on 1 January, in the southern half of the earth on 2 July.
    """
    return tuple(sorted(years, key=_rank))


def _rank(year: PlantYear) -> Rank:
    opening = SOUTHWARD - 1 if year.move.southern_here else 0
    runs = [_from(window, opening) for window in teaching_windows(year)]
    # A window that holds the turn of the year opens the year.
    firsts = [1 if first > last else first for first, last in runs]
    ends = [last for _, last in runs]
    return min(firsts, default=LAST), min(ends, default=LAST), year.lesson.name.casefold()


def _from(window: Window, opening: int) -> tuple[int, int]:
    """Return a window's ends as days from the opening of the year."""
    if len(window.days) >= YEAR:
        return 1, YEAR
    return (window.first - opening - 1) % YEAR + 1, (window.last - opening - 1) % YEAR + 1
