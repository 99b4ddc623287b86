"""Season order: the plant that can be taught first in the year comes first."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterable

    from sallet.lesson.model import Lesson
    from sallet.lesson.value import Window

    Rank = tuple[int, int, str]

LAST = 366
"""After every day of the year: a plant with no window comes at the end."""


def teaching_windows(lesson: Lesson) -> tuple[Window, ...]:
    """Return the windows in which a plant is worth meeting.

    For food these are the windows of its edible parts, for a plant to keep away from all of
    its season.
    """
    parts = [part.timing for part in lesson.edible_parts]
    windows = [window for timing in parts for window in timing.windows]
    return tuple(windows or [w for timing in lesson.season for w in timing.windows])


def _rank(lesson: Lesson) -> Rank:
    windows = teaching_windows(lesson)
    # A window that holds the turn of the year opens the year.
    firsts = [1 if w.first > w.last else w.first for w in windows]
    ends = [w.last for w in windows]
    return min(firsts, default=LAST), min(ends, default=LAST), lesson.name.casefold()


def in_season_order(lessons: Iterable[Lesson]) -> tuple[Lesson, ...]:
    """Return lessons by the first day on which each is worth meeting, then by name."""
    return tuple(sorted(lessons, key=_rank))


def in_season_on(lessons: Iterable[Lesson], day: int) -> tuple[Lesson, ...]:
    """Return the lessons whose plants are worth meeting on a day of the year (1–365)."""
    return tuple(
        lesson for lesson in lessons if any(day in window for window in teaching_windows(lesson))
    )
