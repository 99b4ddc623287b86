"""A plant's year where the course meets: the lesson's windows, moved or corrected."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from math import ceil
from typing import TYPE_CHECKING, Final, Literal

from sallet.lesson.value import Window, Words
from sallet.lesson.values.times import YEAR
from sallet.season.hopkins import Shift, shift_between, spot_of
from sallet.season.move import Move, between, moved, windows_of
from sallet.season.observed import onset_here, with_observations

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from sallet.lesson.model import Lesson, Timing
    from sallet.lesson.value import Item
    from sallet.season.hopkins import Spot
    from sallet.season.observed import Observed

Kind = Literal["eaten", "seen", "harm"]
"""What a row tells: a part to eat, what can be seen of food, what can be seen of a plant that harms."""

SOFT_AT_LEAST: Final = 5
"""Days by which every end is uncertain: half of `early`, `mid` or `late`, the finest step written."""
SOFT_PER_DAY_MOVED: Final = 0.35
"""Further days for each day moved: so far apart lie the Alps of the 1960s and those of our time
(34 and 22 days for 1000 m; Vitasse and others 2018, PNAS 115: 1004)."""


@dataclass(frozen=True)
class Stretch:
    """One of the times of a row."""

    item: Item
    """As the lesson tells it."""
    here: Window | None = None
    """Where the course meets; None where the lesson's words could not be read."""
    soft: tuple[int, int] = (0, 0)
    """By how many days its first and its last day are uncertain, either way."""
    observed: Observed | None = None
    """What was seen here, where the first day is no estimate but was seen."""

    @property
    def is_unread(self) -> bool:
        """Whether the lesson's words say a time that could not be read."""
        return isinstance(self.item.value, Words)

    @property
    def firm(self) -> Window | None:
        """Return the days that the uncertain ends leave."""
        if self.here is None:
            return None
        first, last = self.soft
        return between(self.here.first + first, self.here.first + len(self.here.days) - 1 - last)

    @property
    def unsure(self) -> tuple[Window, ...]:
        """Return the uncertain days at either end, before and behind the day that is told."""
        if self.here is None:
            return ()
        start, (first, last) = self.here.first, self.soft
        end = start + len(self.here.days) - 1
        before = [between(start - first, start + first - 1)] if first else []
        return (*before, between(end - last + 1, end + last)) if last else tuple(before)


@dataclass(frozen=True)
class Row:
    """A part of the plant through the year."""

    timing: Timing
    kind: Kind
    stretches: tuple[Stretch, ...]
    about: bool = False
    """Whether its days are estimates for another place than the lesson's."""
    not_sure: frozenset[int] = frozenset()
    """The days (1–365) of gathering on which it is not surely told from a plant that harms. Where
    nothing settles it, they are in no window."""

    @property
    def doubts(self) -> tuple[Window, ...]:
        """Return the times of gathering in which it is not surely told from a plant that harms."""
        return windows_of(self.not_sure)

    @property
    def name(self) -> str:
        """Return the part as the lesson names it."""
        return self.timing.name

    @property
    def windows(self) -> tuple[Window, ...]:
        """Return the windows where the course meets."""
        return tuple(stretch.here for stretch in self.stretches if stretch.here)

    def is_on(self, day: int) -> bool:
        """Return whether it can be met on a day of the year (1–365)."""
        return any(day in window for window in self.windows)

    @property
    def unsure(self) -> tuple[Window, ...]:
        """Return the days of which nobody can say whether it can be met.

        What is eaten is told as the lesson has it where the lesson was seen. Of what can be seen
        the ends are always uncertain: a plant that harms may come early anywhere.
        """
        if self.kind == "eaten" and not self.about:
            return ()
        return tuple(end for stretch in self.stretches for end in stretch.unsure)

    def is_unsure_on(self, day: int) -> bool:
        """Return whether a day is one of those of which nobody can say."""
        return any(day in end for end in self.unsure)


@dataclass(frozen=True)
class PlantYear:
    """The year of a plant where the course meets: what is eaten first, then what can be seen."""

    lesson: Lesson
    rows: tuple[Row, ...]
    shift: Shift
    """What the law gives."""
    move: Move
    """What is used: the law's shift, or what was seen here."""
    observed: tuple[Observed, ...] = ()

    @property
    def is_estimate(self) -> bool:
        """Whether its days are not those of the place where they were seen."""
        return is_estimate(self.move, self.shift)

    @property
    def eaten(self) -> tuple[Row, ...]:
        """Return the parts to eat."""
        return tuple(row for row in self.rows if row.kind == "eaten")

    @property
    def seen(self) -> tuple[Row, ...]:
        """Return what can be seen."""
        return tuple(row for row in self.rows if row.kind != "eaten")

    @property
    def not_sure(self) -> frozenset[int]:
        """Return the days on which something gathered is not surely told from a plant that harms."""
        return frozenset[int]().union(*(row.not_sure for row in self.eaten))

    def can_be_seen(self, day: int) -> bool:
        """Return whether any part of it can be seen on a day of the year."""
        return any(row.is_on(day) for row in self.seen)

    def may_be_seen(self, day: int) -> bool:
        """Return whether it can be seen on a day, or nobody can say that it cannot.

        So it is within the days by which a time is uncertain, and wherever none could be read.
        """
        return day in self.days_about

    @cached_property
    def days_about(self) -> frozenset[int]:
        """Return the days of the year (1–365) on which it may be seen."""
        if not self.seen or any(s.is_unread for row in self.seen for s in row.stretches):
            return frozenset(range(1, YEAR + 1))
        windows = (w for row in self.seen for w in (*row.windows, *row.unsure))
        return frozenset(day for window in windows for day in window.days)


def plant_year(lesson: Lesson, here: Spot | None, observed: Sequence[Observed] = ()) -> PlantYear:
    """Return a plant's year at a place; what was seen there takes the estimate's place."""
    shift = shift_between(spot_of(lesson.front.seen_at), here)
    move = with_observations(by_law(shift), observed)
    rows = tuple(_rows(lesson, move, observed, about=is_estimate(move, shift)))
    return PlantYear(lesson, rows, shift, move, tuple(observed))


def is_estimate(move: Move, shift: Shift) -> bool:
    """Return whether days are not those of the place where they were seen."""
    # Where a part of the law is left out, days that stand as written are a guess all the same.
    return not move.is_none or bool({*shift.left_out} - {"no place seen", "no place here"})


def by_law(shift: Shift) -> Move:
    """Return how days move by a shift: spring by as much as it says, autumn the other way."""
    origin, here = shift.origin, shift.here
    return Move(
        spring=shift.days,
        autumn=-shift.days,
        southern_origin=origin is not None and origin.is_southern,
        southern_here=here is not None and here.is_southern,
    )


def _rows(
    lesson: Lesson, move: Move, observed: Sequence[Observed], *, about: bool
) -> Iterator[Row]:
    for part in lesson.edible_parts:
        yield Row(part.timing, "eaten", _stretches(part.timing, move, ()), about)
    kind: Kind = "seen" if lesson.is_food else "harm"
    for timing in lesson.season:
        seen = [one for one in observed if one.timing is timing]
        yield Row(timing, kind, _stretches(timing, move, seen), about)


def _stretches(timing: Timing, move: Move, observed: Sequence[Observed]) -> tuple[Stretch, ...]:
    return tuple(_stretch(item, move, observed) for item in timing.items)


def _stretch(item: Item, move: Move, observed: Sequence[Observed]) -> Stretch:
    if not isinstance(item.value, Window):
        return Stretch(item)
    here = moved(item.value, move)
    if len(here.days) >= YEAR:
        return Stretch(item, here)
    seen = next((o for o in observed if o.window == item.value), None)
    if seen:
        here = onset_here(here, seen.day)
    return Stretch(item, here, _soft(item.value, here, move), seen)


def _soft(window: Window, here: Window, move: Move) -> tuple[int, int]:
    # Between its soft ends a window keeps at least a day that is certain.
    most = (len(here.days) - 1) // 2
    ends = (move.of(window.first), move.of(window.last))
    first, last = (SOFT_AT_LEAST + ceil(SOFT_PER_DAY_MOVED * abs(days)) for days in ends)
    return min(first, most), min(last, most)
