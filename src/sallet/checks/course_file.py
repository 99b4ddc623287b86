"""A line of course.yml that cannot be read.

Either the line is not of the form `key: value`, or the value does not fit its key: a date
with no month, a latitude of 540. The rest of the file is read all the same, but what stands
in this line is not in the course: a session, a place, perhaps the poison centre's number.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import shown
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.course.model import Course
    from sallet.fields import FieldFault
    from sallet.lesson.bank import Bank

ID: Final = "course-file"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "course"
GOOD = {"course.yml": "title: Hedge and beck\nplace: {latitude: 54.4}\n"}
BAD = {"course.yml": "title: Hedge and beck\nplace: {latitude: 540}\n"}


def check(course: Course, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each line that is no YAML, and each value that does not fit."""
    for broken in course.broken:
        yield Problem(broken.span, broken.message, broken.hint)
    for fault in course.wrong:
        if not fault.unknown:
            yield _problem(fault)


def _problem(fault: FieldFault) -> Problem:
    if fault.missing:
        message = f"`{fault.key}` is missing here, expected {fault.expected}"
        return Problem(fault.span, message, fault.hint or f"write `{fault.key}: ` and its value")
    words = shown(fault.words) if fault.words else "what stands here"
    message = f"{words} does not fit `{fault.key}`, expected {fault.expected}"
    return Problem(fault.span, message, fault.hint or f"change what stands behind `{fault.key}:`")
