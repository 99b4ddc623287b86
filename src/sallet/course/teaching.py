"""What a course teaches: its plants as lessons, and where its file names them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.course.model import Course, Session
    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson
    from sallet.source import Span


@dataclass(frozen=True)
class NamedPlant:
    """A plant that course.yml names."""

    name: str
    span: Span
    session: int | None = None
    """The number of the session, counted from 0; None in the course's own list."""


def named_plants(course: Course) -> Iterator[NamedPlant]:
    """Yield the plants that the course's list and its sessions name, in that order."""
    for index, name in enumerate(course.plants or ()):
        yield NamedPlant(name, course.where("plants", index))
    for number, (place, session) in enumerate(placed_sessions(course)):
        for index, name in enumerate(session.plants):
            yield NamedPlant(name, course.where("sessions", place, "plants", index), number)


def placed_sessions(course: Course) -> Iterator[tuple[int, Session]]:
    """Yield each session with its place in the file's list.

    The two differ behind a session that has no date or no good one: it is not among the
    course's sessions, but stands in the list all the same.
    """
    node = course.node.child("sessions")
    listed = len(node.items or ()) if node else 0
    kept = (place for place in range(listed) if not _is_dropped(course, place))
    yield from zip(kept, course.sessions, strict=False)


def _is_dropped(course: Course, place: int) -> bool:
    whole = ("sessions", place)
    return any(
        not fault.unknown and fault.path in {whole, (*whole, "date")} for fault in course.wrong
    )


def taught_lessons(course: Course, bank: Bank) -> tuple[Lesson, ...]:
    """Return the lessons that a course teaches: those it names, or all where it lists none."""
    if course.plants is None:
        return bank.lessons
    found = (bank.find(plant.name) for plant in named_plants(course))
    return tuple({lesson.source.path: lesson for lesson in found if lesson}.values())
