"""A pin that lies outside its picture.

It would point at nothing, or at the wrong picture. The two numbers are percent of the width
from the left edge and of the height from the upper edge: each is from 0 to 100.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "pin-outside"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = {"lesson.md": "## Pictures\n### leaf.jpg\n- pin 1: 42% 18%, blade\n", "leaf.jpg": "800x600"}
BAD = {"lesson.md": "## Pictures\n### leaf.jpg\n- pin 1: 142% 18%, blade\n", "leaf.jpg": "800x600"}

WHOLE: Final = 100


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each pin beyond an edge."""
    for picture in lesson.pictures:
        for pin in picture.pins:
            if max(pin.x, pin.y) > WHOLE:
                point = f"{pin.x:g}% {pin.y:g}%"
                message = f"pin {pin.number} lies outside the picture at `{point}`"
                yield Problem(pin.span, message, "give both numbers from 0% to 100%")
