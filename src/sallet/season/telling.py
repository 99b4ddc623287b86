"""Week by week: whether a plant can be told from those that harm, and by what.

A food plant is gathered with certainty only while two things that tell it from a look-alike can be
seen on the very plant that is picked: two of different kinds, one of them reliable. Whether the
look-alike shows the same organ that day does not matter, for what is in the hand must be known as
the one plant, and what is seen on it rules out the other. Weeks in which that fails are not sure.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property
from itertools import compress
from typing import TYPE_CHECKING, Final

from sallet.lesson.model import GRAVE
from sallet.season.teachable import days_of
from sallet.season.visible import Visible
from sallet.study.contrast import contrasts, reliable_first, tell_apart

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Mapping

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson, LookAlike
    from sallet.season.here import PlantYear
    from sallet.season.visible import Days
    from sallet.study.contrast import Contrast

WEEK: Final = 7
"""Weeks are counted from 1 January; the last one has a single day."""


@dataclass(frozen=True)
class Sign:
    """Something that tells a plant from another, and the days on which it can be looked at."""

    contrast: Contrast
    days: Days


@dataclass(frozen=True)
class Telling:
    """How a plant for the pot is told from one that harms, day by day where the course meets."""

    food: Lesson
    name: str
    """What the other plant is called."""
    danger: str
    other: Lesson | None
    """Its own lesson, where there is one."""
    signs: tuple[Sign, ...]
    """What tells it apart and can be looked for, in the order of the food plant's facts."""
    gathered: Days
    """The days on which the one is gathered and the other may be about."""
    settled_by: str = ""
    """How the teacher makes sure when the plants do not show it; empty where the lesson is silent."""
    named_by: Lesson | None = None
    """The lesson that names the two as look-alikes; None where none does."""
    look: LookAlike | None = None
    """The look-alike under which the food plant's own lesson names it."""

    def on(self, day: int) -> tuple[Contrast, ...]:
        """Return what can be looked at on a day, what is reliable first."""
        seen = [sign.contrast for sign in self.signs if day in sign.days]
        return reliable_first(seen)

    def is_sure(self, day: int) -> bool:
        """Return whether what can be seen on a day suffices to tell the plants apart."""
        return tell_apart(self.on(day))

    def is_sure_all_week(self, day: int) -> bool:
        """Return whether it is sure on a day, and on every day of its week on which it is gathered."""
        return self.is_sure(day) and day not in self.unsure

    def sure_among(self, days: Iterable[int]) -> Days:
        """Return those of some days on which what can be seen suffices."""
        # Few sets of signs are seen in a year: each is weighed once.
        seen = {day: tuple(day in sign.days for sign in self.signs) for day in days}
        sure = {which: self._suffices(which) for which in set(seen.values())}
        return frozenset(day for day, which in seen.items() if sure[which])

    def _suffices(self, which: tuple[bool, ...]) -> bool:
        return tell_apart(sign.contrast for sign in compress(self.signs, which))

    @cached_property
    def unsure(self) -> Days:
        """Return the days for gathering in weeks on any day of which it is not sure."""
        failing = {week_of(day) for day in self.gathered - self.sure_among(self.gathered)}
        return frozenset(day for day in self.gathered if week_of(day) in failing)

    @property
    def withheld(self) -> Days:
        """Return the days on which nothing settles it: nobody may gather then."""
        return frozenset() if self.settled_by else self.unsure


def week_of(day: int) -> int:
    """Return the week, from 0, in which a day of the year (1–365) lies."""
    return (day - 1) // WEEK


def tellings(lesson: Lesson, years: Mapping[str, PlantYear], bank: Bank) -> tuple[Telling, ...]:
    """Return how a food plant is told from each grave plant that it is named a look-alike of.

    `years` are the plants' years at one place, by slug, the food plant's among them. A plant that
    harms is told from even where only its own lesson names the two.
    """
    return tuple(_told(lesson, years, bank)) if lesson.is_food else ()


def _told(lesson: Lesson, years: Mapping[str, PlantYear], bank: Bank) -> Iterator[Telling]:
    named: set[str] = set()
    for look in lesson.look_alikes:
        other, danger = bank.lesson_of(look), bank.danger_of(look)
        if other:
            named.add(other.slug)
        if danger in GRAVE:
            yield _telling(lesson, look, danger, years, bank)
    for other in bank.lessons:
        back = bank.naming(other, lesson)
        if back is not None and other.slug not in named and other.front.danger in GRAVE:
            settled_by = other.look_alikes[back].settled_by
            telling = telling_of(lesson, other, years, bank)
            yield replace(telling, settled_by=settled_by, named_by=other)


def _telling(
    lesson: Lesson, look: LookAlike, danger: str, years: Mapping[str, PlantYear], bank: Bank
) -> Telling:
    other = bank.lesson_of(look)
    found = contrasts(lesson.facts, bank.facts_of(look), bank.vocabulary)
    return Telling(
        food=lesson,
        name=look.name.value,
        danger=danger,
        other=other,
        signs=_signs(found, years[lesson.slug], bank),
        gathered=_gathered(lesson, other, years),
        settled_by=look.settled_by,
        named_by=lesson,
        look=look,
    )


def telling_of(
    lesson: Lesson, other: Lesson, years: Mapping[str, PlantYear], bank: Bank
) -> Telling:
    """Return how a food plant is told from a plant with a lesson of its own that no lesson names."""
    found = contrasts(lesson.facts, other.facts, bank.vocabulary)
    return Telling(
        food=lesson,
        name=other.name,
        danger=other.front.danger or "",
        other=other,
        signs=_signs(found, years[lesson.slug], bank),
        gathered=_gathered(lesson, other, years),
    )


def _signs(found: Iterable[Contrast], year: PlantYear, bank: Bank) -> tuple[Sign, ...]:
    visible = Visible(year, bank.vocabulary)
    return tuple(Sign(c, visible.days_of(c)) for c in found if c.is_test)


def _gathered(lesson: Lesson, other: Lesson | None, years: Mapping[str, PlantYear]) -> Days:
    days = days_of(years[lesson.slug].eaten)
    there = years.get(other.slug) if other else None
    if there is None:
        return days
    return days & there.days_about
