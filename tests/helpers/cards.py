"""Builds field cards from texts given by file name."""

from __future__ import annotations

from typing import TYPE_CHECKING

from helpers.workshop import LESSON, bank_of
from sallet.cards.content import make_card
from sallet.cards.setting import CardSetting, card_setting
from sallet.course.reading import read_course
from sallet.course.teaching import taught_lessons
from sallet.drawing.figures import figures
from sallet.lesson.vocabulary_file import load_vocabulary
from sallet.source import Source

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.cards.model import Card
    from sallet.drawing.figures import Figure
    from sallet.lesson.model import Lesson


def setting_of(files: Mapping[str, str], *, draft: bool = False) -> CardSetting:
    """Return what the cards of a course.yml and its lessons have in common."""
    bank = bank_of(files)
    course = read_course(Source("course.yml", files.get("course.yml", "")))
    return card_setting(course, bank, taught_lessons(course, bank), draft=draft)


def cards_of(files: Mapping[str, str], *, draft: bool = False) -> tuple[Card, ...]:
    """Return the cards of a course in season order."""
    setting = setting_of(files, draft=draft)
    return tuple(make_card(lesson, setting) for lesson in setting.lessons)


def drawn(lesson: Lesson) -> tuple[Figure, ...]:
    """Return the figures of a lesson."""
    return figures(lesson.facts, load_vocabulary())


def card_of(lesson: str, course: str = "title: Walks\n") -> Card:
    """Return the card of a course's only lesson."""
    return cards_of({"course.yml": course, LESSON: lesson})[0]
