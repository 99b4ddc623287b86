"""Words of the draft that still wait for your own.

`sallet draft` writes sentences such as `The tempting answer.` to show what belongs where. They
are not for readers: a question with such an answer teaches nothing, and a look-alike with such
a text warns of nobody. Write your own words in their place, or take the lines out.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.findings import Severity
from sallet.source import Span

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "still-to-fill"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = """
## Look-alikes
### Lily of the valley
Two leaves from one shoot, never one leaf on its own stalk.
"""
BAD = """
## Look-alikes
### Its most dangerous double
What tells it apart, in the weeks when people pick.
"""

DRAFTED: Final = (
    "Two sentences: what the plant is, and what people get wrong about it.",
    "What the plant is, and how it comes to be eaten by mistake.",
    "Its most dangerous double",
    "The food it is mistaken for",
    "What tells it apart, in the weeks when people pick.",
    "Something that a beginner would get wrong, with your hand on the plant?",
    "The tempting answer.",
    "The right one.",
    "Another tempting answer.",
    "Why it is right, and what would have happened otherwise.",
)
"""The sentences of a draft; a test holds them against the drafts."""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each sentence of the draft that is still there."""
    text = lesson.source.text
    for words in DRAFTED:
        at = text.find(words)
        if at >= 0:
            message = f"`{words}` stands there from the draft"
            yield Problem(Span(at, at + len(words)), message, "write your own words in its place")
