"""A character that cannot be seen, but can hide or reorder words.

Such characters come along when text is copied from a web page or a PDF: blanks without width,
marks that turn the direction of writing, control characters. A word that holds one is not found
by any search or check, and the line may read otherwise than it is stored. Delete it and type
the word afresh.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final
from unicodedata import category, name

from sallet.checks.problem import Problem
from sallet.findings import Severity
from sallet.source import Span

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "hidden-character"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = "No leaf is wrapped round another.\n"
BAD = "No le\u200baf is wrapped round another.\n"

INVISIBLE: Final = ("Cc", "Cf", "Zl", "Zp")
"""The Unicode categories of controls, formats, line and paragraph separators."""
ALLOWED: Final = frozenset("\n\t")
JOINERS: Final = frozenset("\u200c\u200d")
BLANK_LETTERS: Final = frozenset("\u034f\u115f\u1160\u17b4\u17b5\u3164\uffa0")
"""Letters and marks that Unicode does not count as formats, and that show nothing."""
_LATIN: Final = 0x0500
"""Below it no script needs a joiner to be written rightly."""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each run of hidden characters."""
    end = -1
    for at, char in enumerate(lesson.source.text):
        if _is_hidden(char) and not _joins(lesson.source.text, at):
            if at != end:
                message = f"a hidden character stands here: {_name(char)}"
                yield Problem(Span(at, at + 1), message, "delete it and type the word afresh")
            end = at + 1


def _is_hidden(char: str) -> bool:
    if char.isascii():
        return not char.isprintable() and char not in ALLOWED
    return char in BLANK_LETTERS or category(char) in INVISIBLE


def _joins(text: str, at: int) -> bool:
    # Persian, Hindi and composed pictographs are written with joiners.
    return text[at] in JOINERS and at > 0 and ord(text[at - 1]) >= _LATIN


def _name(char: str) -> str:
    return f"{name(char, 'control character').lower()} (U+{ord(char):04X})"
