"""A sentence that says the plant cures something.

Lessons report what people have used a plant for and what has been studied, never that it
works: a reader who believes it may leave her medicine. In the opening, in Uses and in
Cautions a word such as `cures`, `heals` or `remedy for` needs two things in its own bullet or
paragraph: a word that says whose claim it is (traditionally, is said to, was used for,
studied), and the source. Sentences that deny a cure are let pass.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import shown
from sallet.findings import Severity
from sallet.lesson.claims import claims_in, is_hedged
from sallet.lesson.passages import passages

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson
    from sallet.lesson.passages import Passage
    from sallet.source import Span

ID: Final = "cure-claim"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = """
## Uses
The leaves were traditionally a remedy for coughs.[^grieve]
"""
BAD = """
## Uses
The leaves are a remedy for coughs.[^grieve]
"""

SECTIONS: Final = ("uses", "cautions")


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each claim that has not both a hedge and a source."""
    for span in _spans(lesson):
        for passage in passages(lesson.source, span):
            if not (is_hedged(passage.text.value) and _is_sourced(passage, lesson)):
                yield from _problems(passage)


def _spans(lesson: Lesson) -> Iterator[Span]:
    if lesson.intro:
        yield lesson.intro.span
    for name in SECTIONS:
        section = lesson.section(name)
        if section and section.prose:
            yield section.prose.span


def _is_sourced(passage: Passage, lesson: Lesson) -> bool:
    return any(
        passage.whole.start <= cited.span.start < passage.whole.end and not cited.from_memory
        for cited in lesson.citations
    )


def _problems(passage: Passage) -> Iterator[Problem]:
    for claim in claims_in(passage.text):
        message = (
            f"{shown(claim.value)} promises a cure, expected a report of a use with its source"
        )
        hint = (
            "write whose claim it is (`traditionally`, `is said to`, `was used for`) and cite "
            "the source, or take it out"
        )
        yield Problem(claim.span, message, hint)
