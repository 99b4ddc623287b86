"""The course's plan as frozen values: which plant is taught on which day, and why there."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from sallet.season.teachable import day_of

if TYPE_CHECKING:
    from collections.abc import Mapping
    from datetime import date

    from sallet.course.model import Session
    from sallet.lesson.model import Lesson
    from sallet.season.here import PlantYear
    from sallet.season.teachable import Pair, Teachable
    from sallet.season.telling import Telling


@dataclass(frozen=True)
class Taught:
    """A plant in a session."""

    what: Teachable
    day: int
    """The session's day of the year."""
    pinned: bool
    """Whether course.yml names it in this session."""
    near: tuple[tuple[Lesson, int], ...] = ()
    """Its look-alikes that are taught in this session or one beside it, with the session's number."""
    after: tuple[Lesson, ...] = ()
    """The plants that are taught before it because course.yml wants it so."""
    nearest: date | None = None
    """Where it is not in season on the day: the nearest date on which it is."""

    @property
    def lesson(self) -> Lesson:
        """Return its lesson."""
        return self.what.year.lesson

    @property
    def in_season(self) -> bool:
        """Whether it is in season to teach on the day."""
        return self.what.is_on(self.day)

    @property
    def stages(self) -> tuple[str, ...]:
        """Return what of it can be met on the day."""
        return self.what.stages(self.day)

    @property
    def confused_with(self) -> tuple[Lesson, ...]:
        """Return the plants gathered on the day for which it may be taken."""
        return self.what.confused_with(self.day)


@dataclass(frozen=True)
class Meeting:
    """A session with the plants it teaches."""

    number: int
    session: Session
    taught: tuple[Taught, ...]
    also: tuple[Teachable, ...]
    """Further plants of the course that may be met on the day: food to gather, plants that harm."""

    @property
    def day(self) -> int:
        """Return the day of the year."""
        return day_of(self.session.date)


@dataclass(frozen=True)
class Unplaced:
    """A plant for which no session has room, or none is there."""

    what: Teachable
    nearest: date | None
    """The date nearest to a session on which it is in season."""


@dataclass(frozen=True)
class Plan:
    """The plants of a course in season order, and its sessions in the order of their dates."""

    plants: tuple[Teachable, ...]
    meetings: tuple[Meeting, ...]
    unplaced: tuple[Unplaced, ...]
    pairs: frozenset[Pair]
    """The look-alike pairs among the plants, as slugs."""
    tellings: Mapping[str, tuple[Telling, ...]] = field(default_factory=dict)
    """How each food plant at hand is told from the grave plants it is taken for, by slug."""

    @property
    def years(self) -> tuple[PlantYear, ...]:
        """Return the plants' years in season order."""
        return tuple(what.year for what in self.plants)

    @property
    def in_season(self) -> frozenset[str]:
        """Return the slugs of the plants that are taught in season."""
        return frozenset(t.lesson.slug for m in self.meetings for t in m.taught if t.in_season)

    @property
    def out_of_season(self) -> tuple[tuple[Meeting, Taught], ...]:
        """Return the plants that are never taught in season, with the sessions that teach them."""
        return tuple(
            (meeting, taught)
            for meeting in self.meetings
            for taught in meeting.taught
            if taught.lesson.slug not in self.in_season
        )

    @property
    def pairs_together(self) -> int:
        """Return how many look-alike pairs are taught in one session or in neighbouring ones."""
        near = {
            frozenset({taught.lesson.slug, other.slug})
            for meeting in self.meetings
            for taught in meeting.taught
            for other, _ in taught.near
        }
        return len(near)
