"""Builds plants' years and plans from texts."""

from __future__ import annotations

from typing import TYPE_CHECKING

from helpers.workshop import bank_of, lesson_of
from sallet.course.reading import read_course
from sallet.course.teaching import taught_lessons
from sallet.season.here import plant_year
from sallet.season.move import windows_of
from sallet.season.planning import make_plan
from sallet.source import Source

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from sallet.season.here import PlantYear
    from sallet.season.hopkins import Spot
    from sallet.season.plan import Plan


def year_of(text: str) -> PlantYear:
    """Return the year of a lesson where it was seen."""
    return year_at(text, None)


def year_at(text: str, here: Spot | None) -> PlantYear:
    """Return the year of a lesson at a place."""
    return plant_year(lesson_of(text), here)


def plan_of(files: Mapping[str, str]) -> Plan:
    """Return the plan of a course.yml and its lessons."""
    bank = bank_of(files)
    course = read_course(Source("course.yml", files.get("course.yml", "")))
    return make_plan(course, bank, taught_lessons(course, bank))


def runs_of(days: Iterable[int]) -> tuple[tuple[int, int], ...]:
    """Return days of the year as runs, from and to."""
    return tuple((window.first, window.last) for window in windows_of(days))
