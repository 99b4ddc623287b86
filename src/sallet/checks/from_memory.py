"""Statements that rest on the writer's memory.

`[^memory]` is honest and allowed, and the page marks each such place. It is not a source: find
one for each, first of all for cautions, edible parts and look-alikes, and put its key in place
of `memory`.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "from-memory"
SEVERITY: Final = Severity.NOTE
LOOKS_AT: Final = "lesson"
GOOD = "The leaves taste of garlic.[^flora]\n\n[^flora]: A flora.\n"
BAD = "The leaves taste of garlic.[^memory]\n\n[^memory]: From memory.\n"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield one note, at the first statement from memory, with their number."""
    found = [citation for citation in lesson.citations if citation.from_memory]
    if found:
        many = f"{len(found)} statements rest" if len(found) > 1 else "one statement rests"
        message = f"{many} on the writer's memory, the first of them here"
        hint = "find a source for each, and write its key in place of `memory`"
        yield Problem(found[0].span, message, hint)
