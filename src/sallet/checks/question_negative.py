"""A question that asks for what is not so.

In a hurry one reads past the little word and gives the opposite of what one knows. Ask for
what is so; where it must be negative, write NOT or EXCEPT in capitals (Haladyna, Downing and
Rodriguez, 2002, Applied Measurement in Education 15, 309–334). Only the sentence that asks is
looked at, without clauses such as "when it is not in flower", and never one that asks why.
"""

from __future__ import annotations

import re
from itertools import pairwise
from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.findings import Severity
from sallet.source import Span

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson
    from sallet.source import Text

ID: Final = "question-negative"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = "## Questions\n1. Which leaf do you leave?\n   - [x] This.\n   - [ ] That.\n"
BAD = "## Questions\n1. Which leaf should you not pick?\n   - [x] This.\n   - [ ] That.\n"

NEGATIVE: Final = ("not", "never", "except", "cannot")
ENDING: Final = ("n't", "n’t")
CLAUSE: Final = (
    "if", "when", "whenever", "because", "who", "whose", "that", "while", "although", "though",
    "since", "unless", "until", "so", "but",
)  # fmt: skip
"""Words that begin a clause: what it denies is no question."""
PASSED_OVER: Final = ("or", "and", "but")
"""`whether or not`, `this and not that`: the little word belongs to a pair."""
_SENTENCES: Final = re.compile(r"(?<=[.!?:]) ")
_MARKS: Final = "*_.,;:?!()\"'“”‘"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each question whose asking sentence is negative, in small letters."""
    for question in lesson.questions:
        word = next(filter(None, map(_negative, _asking(question.prompt.value))), "")
        if word:
            message = f"the question asks with a small `{word}`, expected what is so"
            hint = f"ask for what is so, or write `{word.upper()}`"
            yield Problem(_place(word, question.prompt, lesson), message, hint)


def _asking(prompt: str) -> list[str]:
    sentences = _SENTENCES.split(prompt)
    return [sentence for sentence in sentences if sentence.endswith("?")] or sentences[-1:]


def _negative(sentence: str) -> str:
    if sentence.casefold().startswith((*(f"{word} " for word in CLAUSE),)) and "," in sentence:
        sentence = sentence.split(",", 1)[1]
    words = [word.strip(_MARKS) for word in sentence.split()]
    if not words or words[0].casefold() == "why":
        return ""
    for before, word in pairwise(words):
        if word.casefold() in CLAUSE:
            return ""
        if (word in NEGATIVE or word.endswith(ENDING)) and before not in PASSED_OVER:
            return word
    return ""


def _place(word: str, prompt: Text, lesson: Lesson) -> Span:
    at = re.search(rf"\b{re.escape(word)}\b", lesson.source.words(prompt.span))
    start = prompt.span.start + at.start() if at else prompt.span.start
    return Span(start, start + len(word))
