"""What was measured of a course's cards before anything is printed."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from sallet.cards.content import make_card
from sallet.cards.fitting import fit_cards
from sallet.typesetting.letters import missing_letters

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.cards.fitting import Fitted
    from sallet.cards.setting import CardSetting
    from sallet.lesson.model import Lesson
    from sallet.source import Source
    from sallet.typesetting.engine import Progress


@dataclass(frozen=True)
class Printed:
    """Every card with how it fits, and the letters of the course that no font of print has."""

    fitted: tuple[Fitted, ...]
    missing: frozenset[str]
    texts: tuple[tuple[Source, str], ...]
    """What may come into print, by file: all but the sources, which are blanks here."""


def measure_print(setting: CardSetting, progress: Progress | None = None) -> Printed:
    """Return what was measured of the cards of a course; `progress` is told how many cards are done."""
    course = setting.course
    lessons = setting.lessons if course.cards.wanted else ()
    cards = [make_card(lesson, setting) for lesson in lessons]
    texts = [(lesson.source, printed_text(lesson)) for lesson in setting.lessons]
    texts.append((course.source, course.source.text))
    return Printed(
        fitted=fit_cards(cards, course.cards.size, course.language, progress),
        missing=missing_letters(text for _, text in texts),
        texts=tuple(texts),
    )


def printed_text(lesson: Lesson) -> str:
    """Return a lesson's text with blanks in place of its sources, so that offsets hold."""
    text = list(lesson.source.text)
    for start, end in _unprinted(lesson):
        text[start:end] = " " * (end - start)
    return "".join(text)


def _unprinted(lesson: Lesson) -> Iterator[tuple[int, int]]:
    section = lesson.section("sources")
    if section and section.prose:
        yield section.prose.span.start, section.prose.span.end
    for note in lesson.footnotes:
        yield note.span.start, note.span.end
