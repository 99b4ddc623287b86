"""Questions with their answers, pictures with their pins."""

from __future__ import annotations

import pytest

from helpers.workshop import lesson_of
from sallet.lesson.model import Pin, Question


def question(text: str) -> Question:
    """Return the one question of a lesson."""
    (found,) = lesson_of(f"## Questions\n{text}").questions
    return found


def test_a_question_may_run_over_several_lines_and_hold_a_colon() -> None:
    found = question(
        "1. Look: what\n   is it?\n\n   Think.\n   - [x] At 10:30.\n   - [ ] No\n     more.\n"
    )
    assert found.prompt.value == "Look: what is it? Think."
    assert [(o.text.value, o.right) for o in found.options] == [
        ("At 10:30.", True),
        ("No more.", False),
    ]


def test_answers_know_their_places_behind_the_box() -> None:
    lesson = lesson_of("## Questions\n1. What?\n   - [x]  Six: all.\n")
    (option,) = lesson.questions[0].options
    assert lesson.source.words(option.text.span) == "Six: all."


def test_all_that_stands_in_the_quotation_is_the_feedback() -> None:
    found = question("1. What?\n   - [x] a\n   > One.\n   >\n   > 1. Two.\n")
    assert found.feedback.text == "One.\n\n1. Two."
    assert not question("1. What?\n").feedback


def test_questions_below_inner_headings_are_questions() -> None:
    lesson = lesson_of("## Questions\n1. a?\n### Late\n1. b?\n")
    assert [q.prompt.value for q in lesson.questions] == ["a?", "b?"]


@pytest.mark.parametrize(
    ("bullet", "pin"),
    [("pin 1: 42% 18%, blade", (1, 42, 18, "blade")), ("Pin 12: 42.5 %, 80 % stalk",
      (12, 42.5, 80, "stalk")), ("pin 1: 0% 100%", (1, 0, 100, "")),
     ("pin 1: 142% 18%, x", (1, 142, 18, "x"))],
)  # fmt: skip
def test_a_pin_has_a_point_and_a_word(bullet: str, pin: tuple[int, float, float, str]) -> None:
    (picture,) = lesson_of(f"## Pictures\n### a.jpg\n- {bullet}\n").pictures
    assert picture.pins == (Pin(*pin, picture.pins[0].span),)


@pytest.mark.parametrize("bullet", ["pin 1: left", "pin 1: 42 18", "pin: 4% 4%", "pin 1: -4% 4%"])
def test_a_pin_that_cannot_be_read_is_named(bullet: str) -> None:
    lesson = lesson_of(f"## Pictures\n### a.jpg\n- {bullet}\n")
    assert lesson.pictures[0].pins == ()
    assert [fault.words for fault in lesson.faults_of("picture-bullet")] == [
        bullet.split(":", maxsplit=1)[0]
    ]


def test_a_picture_keeps_its_lines_and_its_note() -> None:
    text = "### a.jpg\nTaken in May.\n- shows: one\n  leaf\n- credit: x\n- license: y\n"
    (picture,) = lesson_of(f"## Pictures\n{text}").pictures
    assert (picture.file.value, picture.shows) == ("a.jpg", "one leaf")
    assert (picture.credit, picture.licence, picture.note.text) == ("x", "y", "Taken in May.")
