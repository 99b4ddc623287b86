"""When a plant is in season to teach.

A plant for the pot is in season while a part of it is gathered. A plant to keep away from is in
season while the mistake is made: a plant it is taken for is being gathered, and the same organ of
its own can be seen, leaf for leaf or berry for berry. Where the two never show the same organ at
once, any part of it will do; where they never meet at all, it is in season whenever it can be seen.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.lesson.values.times import YEAR, day_of_year
from sallet.season.move import days_from

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence
    from datetime import date

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson
    from sallet.season.here import PlantYear, Row

WHOLE: Final = "whole plant"
"""The organ under which a lesson speaks of all of a plant: it holds every other."""
Pair = frozenset[str]
"""The slugs of two lessons that are look-alikes of each other."""


@dataclass(frozen=True)
class Confusion:
    """A food plant for which another may be taken, and the days of the year on which it may."""

    food: Lesson
    days: frozenset[int]


@dataclass(frozen=True)
class Teachable:
    """When a plant is in season to teach, as days of the year (1–365), and what it is taken for."""

    year: PlantYear
    days: frozenset[int]
    taken_for: tuple[Confusion, ...] = ()
    """For a plant to keep away from: the food plants with which it may be confused."""

    def is_on(self, day: int) -> bool:
        """Return whether the plant is in season to teach on a day of the year."""
        return day in self.days

    def is_about(self, day: int) -> bool:
        """Return whether a group may meet the plant on a day and should be told of it.

        Food is spoken of while it is gathered, a plant that harms while any of it can be seen.
        """
        if self.year.lesson.is_food:
            return self.is_on(day)
        return self.year.can_be_seen(day)

    def is_unsure_on(self, day: int) -> bool:
        """Return whether a group may meet a plant on a day though its times say that it cannot."""
        return self.year.may_be_seen(day) and not self.is_about(day)

    def eaten(self, day: int) -> tuple[str, ...]:
        """Return the parts that are gathered to eat on a day.

        Before one whose time is an estimate, and uncertain on the day, stands `perhaps`.
        """
        unsure = {row.name: row.is_unsure_on(day) for row in self.year.eaten if row.is_on(day)}
        return tuple(f"perhaps {name}" if unsure[name] else name for name in unsure)

    def seen(self, day: int) -> tuple[str, ...]:
        """Return what else can be seen on a day."""
        eaten = {row.name for row in self.year.eaten if row.is_on(day)}
        names = dict.fromkeys(row.name for row in self.year.seen if row.is_on(day))
        return tuple(name for name in names if name not in eaten)

    def stages(self, day: int) -> tuple[str, ...]:
        """Return what can be met on a day: parts to eat first, then what can be seen."""
        return (*(f"{name} to eat" for name in self.eaten(day)), *self.seen(day))

    def confused_with(self, day: int) -> tuple[Lesson, ...]:
        """Return the plants for the pot that are gathered on a day and for which it may be taken."""
        return tuple(confusion.food for confusion in self.taken_for if day in confusion.days)

    def days_away(self, day: int) -> int:
        """Return the days from a day of the year to the nearest in season; a year if there is none."""
        return min((abs(days_from(day, on)) for on in self.days), default=YEAR)


def teachable(year: PlantYear, taken_for: Sequence[PlantYear] = ()) -> Teachable:
    """Return when a plant is in season to teach, given the food plants it may be taken for."""
    seen = days_of(year.seen)
    if year.lesson.is_food:
        return Teachable(year, days_of(year.eaten) or seen)
    confusions = tuple(_confusion(year, food) for food in taken_for)
    confused = frozenset(day for confusion in confusions for day in confusion.days)
    return Teachable(year, confused or seen, confusions)


def _confusion(year: PlantYear, food: PlantYear) -> Confusion:
    same = frozenset(
        day
        for eaten in food.eaten
        for seen in year.seen
        if seen.timing.organ in {eaten.timing.organ, WHOLE}
        for day in days_of([eaten]) & days_of([seen])
    )
    return Confusion(food.lesson, same or (days_of(year.seen) & days_of(food.eaten)))


def days_of(rows: Iterable[Row]) -> frozenset[int]:
    """Return the days of the year (1–365) on which any of some rows is on."""
    return frozenset(day for row in rows for window in row.windows for day in window.days)


def look_alike_pairs(lessons: Iterable[Lesson], bank: Bank) -> frozenset[Pair]:
    """Return the pairs of lessons of which one names the other as a look-alike."""
    pairs = (
        frozenset({lesson.slug, other.slug})
        for lesson in lessons
        for look_alike in lesson.look_alikes
        if (other := bank.lesson_of(look_alike)) and other.slug != lesson.slug
    )
    return frozenset(pairs)


def day_of(date: date) -> int:
    """Return the day of a 365-day year for a date; 29 February is the 28th."""
    return day_of_year(date.month, date.day)
