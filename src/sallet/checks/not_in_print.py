"""A letter that cannot be printed on cards and papers.

The font of the cards has the letters of the Latin, Greek and Cyrillic scripts and the usual signs,
but no pictographs and not every script; and signs that turn the direction of the words behind them
could make a line say something else than it does. Write the word another way. What stands under
Sources is not printed and may hold any letter.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final
from unicodedata import name

from sallet.checks.problem import Problem
from sallet.findings import Severity
from sallet.source import Span
from sallet.typesetting.words import TURNING

if TYPE_CHECKING:
    from collections.abc import Iterator

ID: Final = "not-in-print"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "print"
GOOD = {"course.yml": "title: Walks\n", "ramsons.md": "The leaves smell of garlic.\n"}
BAD = {"course.yml": "title: Walks\n", "ramsons.md": "The leaves smell of garlic ☠.\n"}


def check(text: str, missing: frozenset[str]) -> Iterator[Problem]:
    """Yield the first place of each letter of a text that no font of print has, or that turns words."""
    for letter in sorted(missing | TURNING, key=text.find):
        at = text.find(letter)
        if at >= 0:
            hint = (
                "delete it and type the word afresh"
                if letter in TURNING
                else "write it another way"
            )
            yield Problem(Span(at, at + 1), _message(letter), hint)


def _message(letter: str) -> str:
    called = f"{name(letter, 'a letter without a name').lower()} (U+{ord(letter):04X})"
    if letter in TURNING:
        return f"a hidden sign that turns the direction of words stands here: {called}"
    return f"`{letter}` cannot be printed on cards and papers: {called}"
