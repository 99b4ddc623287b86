"""What a course teaches, and where its file names it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from helpers.workshop import bank_of
from sallet.course.reading import read_course
from sallet.course.teaching import named_plants, placed_sessions, taught_lessons
from sallet.source import Source

if TYPE_CHECKING:
    from sallet.course.model import Course

LESSONS = {
    "ramsons.md": "---\nname: Ramsons\n---\n",
    "elder.md": "---\nname: Elder\nalso called: [bourtree]\n---\n",
    "hazel.md": "---\nname: Hazel\n---\n",
}


def course_of(text: str) -> Course:
    """Return the course of a text."""
    return read_course(Source("course.yml", text))


def taught(text: str) -> list[str]:
    """Return the names of the lessons that a course teaches."""
    return [lesson.name for lesson in taught_lessons(course_of(text), bank_of(LESSONS))]


def test_without_a_list_every_lesson_is_taught() -> None:
    assert taught("title: all") == ["Ramsons", "Elder", "Hazel"]
    assert taught("plants: all") == ["Ramsons", "Elder", "Hazel"]


def test_a_list_and_the_sessions_together_name_what_is_taught() -> None:
    text = "plants: [Elder]\nsessions:\n  - {date: 2027-03-06, plants: [Hazel, bourtree]}\n"
    assert taught(text) == ["Elder", "Hazel"]


def test_a_name_without_a_lesson_teaches_nothing() -> None:
    assert taught("plants: [Oak]") == []


def test_each_name_knows_its_place_and_its_session() -> None:
    course = course_of("plants: [Elder]\nsessions:\n  - {date: 2027-03-06, plants: [Hazel]}\n")
    found = [(p.name, course.source.words(p.span), p.session is None) for p in named_plants(course)]
    assert found == [("Elder", "Elder", True), ("Hazel", "Hazel", False)]


def test_sessions_keep_their_places_behind_those_that_could_not_be_read() -> None:
    course = course_of(
        "sessions:\n"
        "  - {title: no date}\n"
        "  - {date: 2027-03-06, title: one}\n"
        "  - {date: some day, title: no good date}\n"
        "  - {date: 2027-03-20, title: two, wether: fine}\n"
    )
    assert [(place, session.title) for place, session in placed_sessions(course)] == [
        (1, "one"),
        (3, "two"),
    ]


def test_sessions_that_are_no_list_are_none() -> None:
    assert list(placed_sessions(course_of("sessions: tomorrow"))) == []
