"""A word is wider than the field card, even in the smallest letters.

It would run over the card's edge and be cut off. Mostly it is no word but a web address or a chain
of words without a blank. Write it shorter, or write a wording for the card below it
(`- on the card: …`).
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import shown
from sallet.findings import Severity
from sallet.lesson.model import NOWHERE
from sallet.source import Span

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.cards.fitting import Fitted
    from sallet.lesson.bank import Bank

ID: Final = "card-word-too-wide"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "card"
GOOD = {"course.yml": "title: Walks\n", "ramsons.md": "## Cautions\n- law: Ask the owner.\n"}
BAD = {
    "course.yml": "title: Walks\n",
    "ramsons.md": f"## Cautions\n- law: Read {'a-long-address/' * 12}.\n",
}


def check(fitted: Fitted, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield a problem for each such word."""
    for word, width in fitted.wide:
        message = (
            f"{shown(word)} is {width:.0f} mm wide in the smallest letters, "
            f"and does not fit on a card of {fitted.size}"
        )
        hint = "write it shorter, or write a wording for the card below it: `- on the card: …`"
        yield Problem(_place(word, fitted), message, hint)


def _place(word: str, fitted: Fitted) -> Span:
    """Return where the word stands in the lesson; the line it stands in where it was put together."""
    lesson = fitted.card.lesson
    at = lesson.source.text.find(word)
    if at >= 0:
        return Span(at, at + len(word))
    spans = (
        line.span
        for side in fitted.card.sides
        for line in side.lines
        if word in line.text and line.span != NOWHERE
    )
    return next(spans, lesson.front.span)
