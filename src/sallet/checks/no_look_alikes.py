"""A lesson that names no plant with which this one could be confused.

Nearly every plant has a double, and the confusions that hurt people are few and well known.
A lesson without them teaches false confidence. Write a `###` for each plant that this one
may be taken for. Where books say that there is none, say so under Look-alikes and cite the
book; what is from memory does not count. Lessons on poisonous plants must say which food
plants they are taken for, so they need the section as well.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson, Section

ID: Final = "no-look-alikes"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = """
## Look-alikes
### Meadow saffron
Its leaves have no stalk.
"""
BAD = """
## Look-alikes
None that I know of.
"""

SECTION: Final = "look-alikes"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield the missing look-alikes."""
    section = lesson.section(SECTION)
    if lesson.look_alikes or (section and _says_none_with_source(section)):
        return
    at = lesson.where(SECTION)
    hint = "write a `###` for each plant that this one is taken for, and how to tell them apart"
    if section and section.prose:
        message = "no look-alike and no source that there is none, expected one or the other"
        yield Problem(at, message, f"{hint}, or cite the book that says that there is none")
    else:
        yield Problem(at, f"`{lesson.name}` has no look-alikes, expected one at the least", hint)


def _says_none_with_source(section: Section) -> bool:
    return bool(section.prose) and any(not cited.from_memory for cited in section.citations)
