"""A source to which nothing in the lesson refers.

Either a statement has lost its reference or the source is no longer needed. A list of books
that were not used makes a lesson look better founded than it is.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "unused-footnote"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = "The leaves taste of garlic.[^flora]\n\n[^flora]: A flora.\n"
BAD = "The leaves taste of garlic.\n\n[^flora]: A flora.\n"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each source that is never cited."""
    cited = {citation.key for citation in lesson.citations}
    for note in lesson.footnotes:
        if note.key not in cited:
            message = f"nothing refers to the source `[^{note.key}]`"
            hint = "write the reference behind what the source says, or take the source out"
            yield Problem(note.span, message, hint)
