"""Moves days and windows of the year by a shift.

Spring events move one way and autumn events the other, so between the two lie turns, in which
the shift runs evenly from the one to the other: in high summer from 22 June to 31 August, in
winter from 1 December to 31 January. Hopkins names no dates; these are ours, for the temperate
north, and half a year on in the south. Where the shift is so great that a later event would
overtake an earlier one, the turn is made longer: moving never changes the order of events, so a
look-alike that is about while a plant is picked is about then at every place.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.lesson.value import Window
from sallet.lesson.values.times import YEAR

if TYPE_CHECKING:
    from collections.abc import Iterable

SUMMER_TURN: Final = (172.5, 243.5)
"""From the end of 21 June to the end of 31 August, as days of the year."""
WINTER_TURN: Final = (334.5, 396.5)
"""From the end of 30 November to the end of 31 January of the next year."""
_SLACK: Final = 1.1
"""How much longer than the shift half a turn is at the least, so that nothing is overtaken."""
_LONGEST_HALF: Final = (WINTER_TURN[0] + WINTER_TURN[1] - SUMMER_TURN[0] - SUMMER_TURN[1]) / 4
"""Half a turn at the most: then one turn begins where the other ends."""
SOUTHWARD: Final = 183
"""Half a year, rounded up on the way south and down on the way north: there and back is a year."""


@dataclass(frozen=True)
class Move:
    """By how many days spring and autumn events move, and whether the half of the earth changes."""

    spring: float = 0.0
    autumn: float = 0.0
    southern_origin: bool = False
    southern_here: bool = False

    def of(self, day: float) -> float:
        """Return by how many days an event moves that falls on a day of the year at its origin."""
        at = day + YEAR - SOUTHWARD if self.southern_origin else day
        middle, swing = (self.spring + self.autumn) / 2, (self.spring - self.autumn) / 2
        return middle + swing * _rule(at % YEAR, abs(swing))

    @property
    def to_other_half(self) -> int:
        """Return the days by which the whole year moves because the half of the earth changes."""
        if self.southern_origin == self.southern_here:
            return 0
        return SOUTHWARD if self.southern_here else YEAR - SOUTHWARD

    @property
    def is_none(self) -> bool:
        """Whether every day stays where it is."""
        return not (round(self.spring) or round(self.autumn) or self.to_other_half)

    def is_spring(self, day: float) -> bool:
        """Return whether a day at the origin is in the half of the year that spring events open."""
        at = day + YEAR - SOUTHWARD if self.southern_origin else day
        return (at - sum(WINTER_TURN) / 2) % YEAR < (sum(SUMMER_TURN) - sum(WINTER_TURN)) / 2 % YEAR


def _rule(day: float, swing: float) -> float:
    """Return 1 while the spring rule holds, -1 while the autumn rule does, between them in turns."""
    for sign, turn in ((1.0, SUMMER_TURN), (-1.0, WINTER_TURN)):
        middle, half = _turn(turn, swing)
        into = (day - middle + YEAR / 2) % YEAR - YEAR / 2
        if abs(into) < half:
            return -sign * into / half
    return 1.0 if _turn(WINTER_TURN, swing)[0] - YEAR < day < _turn(SUMMER_TURN, swing)[0] else -1.0


def _turn(turn: tuple[float, float], swing: float) -> tuple[float, float]:
    """Return the middle of a turn and half its length."""
    first, last = turn
    return (first + last) / 2, min(max((last - first) / 2, _SLACK * swing), _LONGEST_HALF)


def moved(window: Window, move: Move) -> Window:
    """Return a window as it is at another place; one of the whole year stays so."""
    if len(window.days) >= YEAR:
        return window
    last = window.last + (YEAR if window.last < window.first else 0)
    first_here = round(window.first + move.of(window.first)) + move.to_other_half
    last_here = round(last + move.of(window.last)) + move.to_other_half
    return between(first_here, last_here)


def between(first: int, last: int) -> Window:
    """Return the window between two days that may lie in other years; a year or more is all of it."""
    if last - first + 1 >= YEAR:
        return Window(1, YEAR)
    return Window((first - 1) % YEAR + 1, (max(first, last) - 1) % YEAR + 1)


def days_from(one: int, other: int) -> int:
    """Return the days from one day of the year to another the shorter way round, -182 to 182."""
    half = YEAR // 2
    return (other - one + half) % YEAR - half


def windows_of(days: Iterable[int]) -> tuple[Window, ...]:
    """Return days of the year (1–365) as windows, in order; one over the new year comes last."""
    runs: list[list[int]] = []
    for day in sorted(days):
        if runs and runs[-1][1] == day - 1:
            runs[-1][1] = day
        else:
            runs.append([day, day])
    if len(runs) > 1 and runs[0][0] == 1 and runs[-1][1] == YEAR:
        runs.append([runs.pop()[0], runs.pop(0)[1]])
    return tuple(Window(first, last) for first, last in runs)
