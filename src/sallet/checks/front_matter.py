"""The head of the file, between its two lines of `---`, cannot be read.

The head carries the plant's names, its danger and the place where its season was seen. A
line of it that cannot be read is missing from the lesson; the lines round it are read all
the same. Write each detail as `key: value`, and put a value that holds a colon, a `#` or a
bracket in quotation marks.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import shown
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Fault, Lesson

ID: Final = "front-matter"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = """
---
name: Ramsons
---
"""
BAD = """
---
name: Ramsons
seen at: {latitude: 540}
---
"""

MISSING: Final = (
    "the file does not begin with `---`, expected the plant's names between two such lines",
    "write `---`, then lines such as `name: Ramsons`, then `---` again, at the top of the file",
)
UNCLOSED: Final = (
    "no second `---` closes the head of the file",
    "write `---` on a line of its own below the last detail",
)


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each fault of the head."""
    for fault in lesson.faults_of(ID):
        yield _problem(fault)


def _problem(fault: Fault) -> Problem:
    if fault.detail == "missing":
        return Problem(fault.span, *MISSING)
    if fault.detail == "unclosed":
        return Problem(fault.span, *UNCLOSED)
    if fault.detail == "yaml":
        return Problem(fault.span, fault.words, fault.nearest[0])
    expected, key = fault.nearest
    if fault.detail == "missing value":
        return Problem(fault.span, f"`{key}` is missing here", f"write `{key}: ` and its value")
    words = shown(fault.words) if fault.words else "what stands here"
    message = f"{words} does not fit `{key}`, expected {expected}"
    return Problem(fault.span, message, f"write {expected} behind `{key}:`, or leave it empty")
