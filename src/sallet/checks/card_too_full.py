"""A field card cannot hold what must stand on it.

Nothing on a card is ever cut or left out: not a caution, not a part to remove, not a look-alike.
Each side is set at 10 points, then smaller by quarter points down to 7, the smallest that can be
read on a label. What does not fit even then stops the course. Write a shorter wording for the
card below what is long (`- on the card: …`), or choose a larger card in course.yml. The whole
words stay on the page. Look with `sallet check --cards`.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.cards.sizes import FLOOR
from sallet.checks.problem import Problem
from sallet.findings import Severity
from sallet.season.words import in_a_row

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.cards.fitting import Fitted, SideFit
    from sallet.cards.model import Line, Side
    from sallet.lesson.bank import Bank

ID: Final = "card-too-full"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "card"
GOOD = {"course.yml": "title: Walks\n", "ramsons.md": "## Cautions\n- law: Ask the owner.\n"}
BAD = {
    "course.yml": "title: Walks\n",
    "ramsons.md": "## Cautions\n" + "- law: Ask the owner, and ask him once more.\n" * 60,
}

NAMED: Final = 3
"""So many lines are named, the longest first."""
LONG: Final = 40
"""Letters of a line that is worth a shorter wording; the longest is always named."""


def check(fitted: Fitted, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield a problem for each side that is too tall at the smallest text."""
    for side in fitted.card.sides:
        fit = fitted.sides[side.name]
        if not fit.fits:
            longest = _longest(side)
            message = (
                f"the {side.name} of the field card does not fit on {fitted.size}: at {FLOOR:g} points "
                f"it is {fit.over:.1f} mm too tall; the longest is {longest[0].what}"
            )
            yield Problem(longest[0].span, message, _hint(longest, side, fit, fitted))


def _longest(side: Side) -> list[Line]:
    """Return the longest lines that the lesson tells, those without a wording for the card first."""
    told = [line for line in side.lines if line.what]
    ordered = sorted(told, key=lambda line: (not line.can_be_worded, -len(line.text)))
    return [*ordered[:1], *(line for line in ordered[1:NAMED] if len(line.text) >= LONG)]


def _hint(longest: list[Line], side: Side, fit: SideFit, fitted: Fitted) -> str:
    too_many = round(side.letters * fit.over / fit.height)
    named = in_a_row([f"{line.what} ({len(line.text)})" for line in longest])
    larger = " or ".join(fitted.larger)
    other = f", or choose a larger card: {larger} would hold it" if larger else ""
    way = "write `- on the card: …` below" if longest[0].can_be_worded else "shorten"
    less = max(10, round(too_many, -1))
    return f"say about {less} letters less: {way} what is long, such as {named}{other}"
