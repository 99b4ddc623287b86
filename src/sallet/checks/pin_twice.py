"""Two pins of one picture with the same number.

The list below the picture could not say which of the two points is meant. Number the pins
from 1 upwards.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import shown
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson, Picture

ID: Final = "pin-twice"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = {
    "lesson.md": "## Pictures\n### leaf.jpg\n- pin 1: 42% 18%, blade\n- pin 2: 47% 80%, stalk\n",
    "leaf.jpg": "800x600",
}
BAD = {
    "lesson.md": "## Pictures\n### leaf.jpg\n- pin 1: 42% 18%, blade\n- pin 1: 47% 80%, stalk\n",
    "leaf.jpg": "800x600",
}


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each pin whose number was given before."""
    for picture in lesson.pictures:
        seen: set[int] = set()
        for pin in picture.pins:
            if pin.number in seen:
                message = (
                    f"pin {pin.number} stands twice in the picture {shown(picture.file.value)}"
                )
                yield Problem(
                    pin.span, message, f"give it another number, such as {_free(picture)}"
                )
            seen.add(pin.number)


def _free(picture: Picture) -> int:
    return max(pin.number for pin in picture.pins) + 1
