"""A lesson that no second reader has checked.

The writer of a lesson cannot see her own slips, and a slip here may poison somebody. Ask
another person who knows the plant to read it line by line, and write the reader's name and
the day behind `checked by:`. Until then the page and the cards say "not yet checked".
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

ID: Final = "unreviewed"
SEVERITY: Final = Severity.NOTE
LOOKS_AT: Final = "lesson"
GOOD = "---\nwritten by: Ann Wright\nchecked by: Joe Lister, 2027-03-01\n---\n"
BAD = "---\nwritten by: Ann Wright\nchecked by:\n---\n"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield what is missing of a second reading: the reader, the day, another person."""
    front = lesson.front
    reader, at = front.checked_by, front.where("checked by")
    if not reader:
        message = "nobody has checked this lesson yet, expected a second reader and a date"
        yield Problem(at, message, "write `checked by: Joe Lister, 2027-03-01` once it is done")
        return
    if front.checked_on is None:
        message = f"{shown(reader)} has checked this lesson, but no date says when"
        yield Problem(at, message, "write year, month and day behind the name: `2027-03-01`")
    if reader.casefold() == front.written_by.casefold():
        message = (
            f"{shown(reader)} has both written and checked this lesson, expected another reader"
        )
        yield Problem(at, message, "ask somebody else who knows the plant to read it")
