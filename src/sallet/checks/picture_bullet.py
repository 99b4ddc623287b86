"""A bullet under Pictures that is not understood.

Each picture has a heading with the name of its file, and below it `shows`, `credit`, `licence`
and pins such as `pin 1: 42% 18%, blade`: the point from the left and from the upper edge, then
the word. Anything else is left out.
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

ID: Final = "picture-bullet"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = {"lesson.md": "## Pictures\n### leaf.jpg\n- pin 1: 42% 18%, blade\n", "leaf.jpg": "800x600"}
BAD = """
## Pictures
### leaf.jpg
- pin 1: top left
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each bullet that was not understood."""
    for fault in lesson.faults_of(ID):
        if fault.detail:
            message = f"{shown(fault.words)} stands under no picture"
            hint = "write `### ` and the name of the picture's file above it"
        else:
            message = f"{shown(fault.words)} is no line of a picture, or its point cannot be read"
            hint = "write `shows`, `credit`, `licence`, or a point as in `pin 1: 42% 18%, blade`"
        yield Problem(fault.span, message, hint)
