"""A part that is eaten and that Preparation does not speak of.

For each part that is food the reader must find what to do with it in the kitchen, or she
will do as with another plant. The part is looked for in Preparation and its recipes by its
own word, one or many, by other words for it and by its organ: `Wash leaf by leaf` speaks of
the young leaves.
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

ID: Final = "edible-not-in-preparation"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = """
## Edible parts
- young leaves: March to May; raw
## Preparation
Wash leaf by leaf.
"""
BAD = """
## Edible parts
- young leaves: March to May; raw
- flowers: May; raw
## Preparation
Wash leaf by leaf.
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:
    """Yield each edible part that Preparation leaves out."""
    text = lesson.text_of("preparation")
    for part in lesson.edible_parts:
        for name in named_parts(part.timing.name, bank.vocabulary):
            if not is_mentioned(words_for(name, bank.vocabulary, organ_too=True), text):
                message = f"Preparation does not speak of the edible part {shown(name)}"
                hint = f"say under Preparation what is done with it: name the {name}"
                yield Problem(part.timing.label_span, message, hint)
