"""A part to remove that Preparation does not speak of.

The cook reads Preparation with wet hands and nothing else. What must be cut away has to be
said there too, at the moment when it is to be done. The part is looked for by its own word
or another word for it. Its organ alone is not enough: `Wash the leaves` does not say that
the stalks go.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import shown
from sallet.findings import Severity
from sallet.lesson.mentions import is_mentioned, named_parts, words_for

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "removal-not-in-preparation"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = """
## Parts to remove
- leaf stalks: stringy
## Preparation
Pull off the stalks.
"""
BAD = """
## Parts to remove
- leaf stalks: stringy
## Preparation
Wash the leaves.
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:
    """Yield each part to remove that Preparation leaves out."""
    text = lesson.text_of("preparation")
    for removal in lesson.removals:
        for name in named_parts(removal.name.value, bank.vocabulary):
            if name.strip() and not is_mentioned(words_for(name, bank.vocabulary), text):
                message = f"Preparation does not speak of the part to remove {shown(name)}"
                hint = f"say under Preparation when it is taken away: name the {name}"
                yield Problem(removal.name.span, message, hint)
