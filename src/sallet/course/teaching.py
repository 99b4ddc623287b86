"""What a course teaches: its plants as lessons, and where its file names them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from sallet.lesson.vocabulary import normal

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


def ordered_plants(course: Course) -> Iterator[NamedPlant]:
    """Yield the plants that the rules of order name; they are taught only if named elsewhere."""
    rules = course.node.child("after")
    for rule in course.after:
        key = rules.key(rule.plant) if rules else None
        yield NamedPlant(rule.plant, key.span if key else course.where("after", rule.plant))
        for index, name in enumerate(rule.first):
            yield NamedPlant(name, course.where("after", rule.plant, index))


def placed_sessions(course: Course) -> Iterator[tuple[int, Session]]:
    """Yield each session with the place in the file's list of the entry that tells of it."""
    for session in course.sessions:
        yield session.listed, session


def dated_sessions(course: Course) -> Iterator[tuple[int, Session]]:
    """Yield the sessions that have an entry with their date, in the order of the file."""
    series = {one.listed for one in course.series}
    dated = ((place, s) for place, s in placed_sessions(course) if place not in series)
    yield from sorted(dated, key=lambda placed: placed[0])


def taught_lessons(course: Course, bank: Bank) -> tuple[Lesson, ...]:
    """Return the lessons that a course teaches: those it names, or all where it lists none."""
    if course.plants is None:
        return bank.lessons
    found = (bank.find(plant.name) for plant in named_plants(course))
    return tuple({lesson.source.path: lesson for lesson in found if lesson}.values())


def plant_key(name: str, bank: Bank) -> str:
    """Return what tells a plant apart whichever of its names is written."""
    lesson = bank.find(name)
    return lesson.slug if lesson else normal(name)
