"""First days that were seen where the course meets, and what they tell of the rest of the year."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from sallet.lesson.values.times import YEAR, day_of_year
from sallet.lesson.vocabulary import normal
from sallet.season.move import Move, between, days_from

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from sallet.course.model import Course, Observation, SeenOn
    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson, Timing
    from sallet.lesson.value import Window


@dataclass(frozen=True)
class Observed:
    """A part of a plant whose first day was seen here."""

    observation: Observation
    lesson: Lesson
    timing: Timing
    window: Window
    """Which of the part's windows, as the lesson has it."""

    @property
    def day(self) -> int:
        """Return the day of the year on which it began here, the middle one of several years."""
        days = sorted(day_of_year(on.month, on.day) for on in self.observation.days)
        # Days around the new year are counted on from the lesson's own first day.
        apart = sorted(days_from(self.window.first, day) for day in days)
        return (self.window.first + apart[(len(apart) - 1) // 2] - 1) % YEAR + 1

    @property
    def seen_on(self) -> tuple[SeenOn, ...]:
        """Return the dates as written in course.yml."""
        return self.observation.days


def named_in(observation: Observation, bank: Bank) -> tuple[Lesson | None, str]:
    """Return the plant that an observation begins with, and the words for its part behind it."""
    words = observation.words.split()
    for end in range(len(words) - 1, 0, -1):
        lesson = bank.find(" ".join(words[:end]))
        if lesson:
            return lesson, " ".join(words[end:])
    return bank.find(observation.words), ""


def observed_here(course: Course, bank: Bank) -> Iterator[Observed]:
    """Yield the observations of a course that name a plant, a part and a window with a first day."""
    for observation in course.seen_here:
        lesson, part = named_in(observation, bank)
        found = observed_of(observation, lesson, part) if lesson else None
        if found:
            yield found


def observed_of(observation: Observation, lesson: Lesson, part: str) -> Observed | None:
    """Return what an observation says of a part; None without a row or a first day."""
    row = next((row for row in lesson.season if normal(row.name) == normal(part)), None)
    windows = [w for w in row.windows if len(w.days) < YEAR] if row else []
    if row is None or not windows or not observation.days:
        return None
    day = day_of_year(observation.days[0].month, observation.days[0].day)
    nearest = min(windows, key=lambda window: abs(days_from(window.first, day)))
    return Observed(observation, lesson, row, nearest)


def with_observations(move: Move, observed: Sequence[Observed]) -> Move:
    """Return the move that observations put in the place of the law's.

    A plant that was late in spring is taken to be early in autumn by as many days, as the law
    has it, unless an autumn event was seen here too.
    """
    spring = [days_late(o, move) for o in observed if move.is_spring(o.window.first)]
    autumn = [days_late(o, move) for o in observed if not move.is_spring(o.window.first)]
    if spring and autumn:
        return replace(move, spring=_mean(spring), autumn=_mean(autumn))
    if spring:
        return replace(move, spring=_mean(spring), autumn=-_mean(spring))
    if autumn:
        return replace(move, spring=-_mean(autumn), autumn=_mean(autumn))
    return move


def days_late(observed: Observed, move: Move) -> int:
    """Return by how many days a part was later here than in the lesson, half a year apart or not."""
    start = (observed.window.first + move.to_other_half - 1) % YEAR + 1
    return days_from(start, observed.day)


def _mean(days: Sequence[int]) -> float:
    return sum(days) / len(days)


def onset_here(here: Window, day: int) -> Window:
    """Return a window that begins on the day that was seen, and ends not before it."""
    last = here.first + len(here.days) - 1
    first = here.first + days_from(here.first, day)
    return between(first, max(first, last))
