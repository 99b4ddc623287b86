"""What the cards of a course have in common."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from sallet.season.planning import year_and_tellings

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from sallet.course.model import Course
    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson
    from sallet.season.here import PlantYear
    from sallet.season.telling import Telling


@dataclass(frozen=True)
class CardSetting:
    """The course, the lessons at hand, and the year at the course's place."""

    course: Course
    bank: Bank
    years: Mapping[str, PlantYear]
    """The year of every plant that is taught, by slug, in season order."""
    tellings: Mapping[str, tuple[Telling, ...]]
    """How each food plant is told from the grave plants it is taken for, by slug."""

    draft: bool = False
    """Whether the course has faults that must be mended first."""

    @property
    def lessons(self) -> tuple[Lesson, ...]:
        """Return the lessons in season order: that of the stack of cards."""
        return tuple(year.lesson for year in self.years.values())


def card_setting(
    course: Course, bank: Bank, lessons: Iterable[Lesson], *, draft: bool = False
) -> CardSetting:
    """Return the setting of the cards of some lessons."""
    years, tellings = year_and_tellings(course, bank, lessons)
    return CardSetting(course, bank, {year.lesson.slug: year for year in years}, tellings, draft)
