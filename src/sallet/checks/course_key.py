"""A key of course.yml that sallet does not know.

What stands behind it is not used. Mostly a letter has slipped: `emergancy` would leave the
course without its poison centre. The nearest keys are offered.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import did_you_mean, listed, shown
from sallet.course.keys import CourseFields
from sallet.fields import nearest_key
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.course.model import Course
    from sallet.fields import FieldFault
    from sallet.lesson.bank import Bank

ID: Final = "course-key"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "course"
GOOD = {"course.yml": "emergency: ring NHS 111\n"}
BAD = {"course.yml": "emergancy: ring NHS 111\n"}

_MOST_OFFERED: Final = 3


def check(course: Course, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each unknown key."""
    for fault in course.wrong:
        if fault.unknown:
            yield Problem(
                fault.span, f"{shown(fault.words)} is no known key{_where(fault)}", _hint(fault)
            )


def _where(fault: FieldFault) -> str:
    inside = [step for step in fault.path[:-1] if isinstance(step, str)]
    return f" of `{inside[-1]}`" if inside else ""


def _hint(fault: FieldFault) -> str:
    near = nearest_key(fault.words, CourseFields, fault.path)
    # Where nothing is spelt like it, all keys come back.
    if len(near) <= _MOST_OFFERED:
        return did_you_mean(near, "")
    return f"the keys are {listed(near, 'and')}"
