"""A picture in the running text.

Pictures stand in the section Pictures, where their credit, their licence and the text for those
who cannot see them are asked for. One in the text has none of these and is not shown.
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

ID: Final = "picture-in-prose"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = "Compare the underside of the leaf.\n"
BAD = "Compare ![the underside](leaf.jpg).\n"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each inline picture."""
    for link in lesson.links:
        if link.is_picture:
            message = f"the picture {shown(link.target)} stands in the text and is not shown"
            hint = "give it a heading of its own, with its file's name, under `## Pictures`"
            yield Problem(link.span, message, hint)
