"""What a course teaches, and where its file names it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from helpers.workshop import bank_of
from sallet.course.reading import read_course
from sallet.course.teaching import (
    dated_sessions,
    named_plants,
    ordered_plants,
    placed_sessions,
    plant_key,
    taught_lessons,
)
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


def test_sessions_come_in_the_order_of_their_dates_with_their_places_in_the_file() -> None:
    course = course_of(
        "sessions:\n"
        "  - {date: 2027-04-10, title: late, plants: [Elder]}\n"
        "  - {first: 2027-04-03, every: week, count: 3}\n"
        "  - {date: 2027-04-03, title: early, plants: [Hazel]}\n"
    )
    assert [place for place, _ in placed_sessions(course)] == [2, 0, 1]
    found = [(p.name, course.source.words(p.span), p.session) for p in named_plants(course)]
    assert found == [("Hazel", "Hazel", 0), ("Elder", "Elder", 1)]


def test_dated_sessions_come_in_the_order_of_the_file_without_those_of_a_series_alone() -> None:
    course = course_of(
        "sessions:\n"
        "  - {date: 2027-04-10, title: late}\n"
        "  - {first: 2027-04-03, every: week, count: 9}\n"
        "  - {date: 2027-04-03, title: early}\n"
    )
    found = [(place, session.title) for place, session in dated_sessions(course)]
    assert found == [(0, "late"), (2, "early")]


def test_the_plants_of_the_rules_of_order_are_named_with_their_places_but_not_taught() -> None:
    text = "plants: [Elder]\nafter:\n  Hazel: [Ramsons, Oak]\n  bourtree: Hazel\n"
    course = course_of(text)
    found = [(p.name, course.source.words(p.span), p.span.start) for p in ordered_plants(course)]
    assert found == [
        (name, name, text.index(written))
        for name, written in [("Hazel", "Hazel: ["), ("Ramsons", "Ramsons"), ("Oak", "Oak"),
                              ("bourtree", "bourtree"), ("Hazel", "Hazel\n")]
    ]  # fmt: skip
    assert taught(text) == ["Elder"]


def test_a_plant_is_told_apart_by_its_lesson_whichever_name_is_written() -> None:
    bank = bank_of(LESSONS)
    assert plant_key("Bourtree", bank) == plant_key("elder", bank) == "elder"
    assert plant_key("Oak", bank) == plant_key("oak", bank) != plant_key("Ash", bank)
