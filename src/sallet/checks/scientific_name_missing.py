"""A lesson without the plant's scientific name.

Common names change from valley to valley: one village's hemlock is another's cow parsley.
Only the scientific name says beyond doubt which plant is taught. Write `scientific name:`
with genus, epithet and author among the lines between `---` at the head of the file.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "scientific-name-missing"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = "---\nname: Ramsons\nscientific name: Allium ursinum L.\n---\n"
BAD = "---\nname: Ramsons\n---\n"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield the missing name."""
    if not lesson.front.scientific_name:
        message = f"`{lesson.name}` has no scientific name, expected genus, epithet and author"
        hint = "write `scientific name: Allium ursinum L.`, for example, between the `---` lines"
        yield Problem(lesson.front.where("scientific name"), message, hint)
