"""What the papers have in common."""

from __future__ import annotations

from helpers.courses import site_of
from helpers.workshop import lesson_of
from sallet.publish.paper_parts import (
    emergency_data,
    head_data,
    plant_data,
    unread_words,
)

COURSE = """title: Hedge and beck
teacher: Maren Holloway
language: en-GB
cards: {paper: Letter}
emergency: [Ring 999, Ring 111]
"""
CHECKED = "---\nname: Elder\nwritten by: Ann\nchecked by: Joe, 2027-03-01\n---\n"


def test_the_head_has_title_teacher_language_and_the_papers_size_in_millimetres() -> None:
    assert head_data(site_of({"course.yml": COURSE}, draft=True), "Walk") == {
        "title": "Walk · Hedge and beck",
        "course": "Hedge and beck",
        "author": ["Maren Holloway"],
        "language": "en-GB",
        "paper": {"width": 215.9, "height": 279.4},
        "draft": True,
    }


def test_a_course_of_which_nothing_is_told_has_a_head_all_the_same() -> None:
    """PDF/UA-1 wants a title in every document."""
    assert head_data(site_of({"course.yml": ""}), "Walk") == {
        "title": "Walk",
        "course": "",
        "author": [],
        "language": "en",
        "paper": {"width": 210, "height": 297},
        "draft": False,
    }


def test_the_emergency_lines_are_the_courses_own_and_the_plant_is_kept() -> None:
    assert emergency_data(site_of({"course.yml": COURSE})) == {
        "lines": ["Ring 999", "Ring 111"],
        "keep": "Keep the plant: nobody can name one by telephone.",
    }


def test_a_plant_is_named_with_its_danger_in_shape_and_word() -> None:
    hemlock = lesson_of(
        "---\nname: Hemlock\nscientific name: Conium maculatum L.\n"
        "taught as: look-alike\ndanger: deadly\n---\n"
    )
    assert plant_data(hemlock) == {
        "name": "Hemlock",
        "scientific": "Conium maculatum L.",
        "danger": "deadly",
        "shape": "▲▲",
        "word": "deadly",
    }


def test_only_a_lesson_without_a_second_reader_is_stamped() -> None:
    site = site_of({"course.yml": "", "elder.md": CHECKED, "yew.md": "---\nname: Yew\n---\n"})
    assert {lesson.name: unread_words(lesson) for lesson in site.ordered} == {
        "Elder": "",
        "Yew": "Not yet checked by a second reader",
    }
