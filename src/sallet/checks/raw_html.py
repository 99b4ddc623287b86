r"""HTML in the text.

No page passes it through, since it could carry anything; readers would see the bare code, and
a comment would be read by all. Use Markdown: `**bold**`, `*italic*`, a table. Write a plain
`<` as `\<`.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import shown
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "raw-html"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = """
Leaves **without** a stalk.
"""
BAD = """
Leaves <b>without</b> a stalk.
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each run of HTML."""
    for fault in lesson.faults_of(ID):
        message = f"{shown(fault.words)} is HTML, which no page passes through"
        yield Problem(fault.span, message, "use Markdown, such as `**bold**`, or take it out")
