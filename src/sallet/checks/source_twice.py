"""A source that is defined twice.

Two texts under one key contradict each other, or say the same thing twice; only the first is
shown. Keep one of them, or give the second a key of its own.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "source-twice"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = "Garlic.[^flora]\n\n[^flora]: A flora.\n"
BAD = "Garlic.[^flora]\n\n[^flora]: A flora.\n\n[^flora]: Another.\n"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each definition after the first of its key."""
    first: dict[str, int] = {}
    for note in lesson.footnotes:
        line = lesson.source.position(note.span.start).line
        if note.key in first:
            message = f"the source `[^{note.key}]` stands in line {first[note.key]} already"
            yield Problem(note.span, message, "keep one of the two, or give this one its own key")
        first.setdefault(note.key, line)
