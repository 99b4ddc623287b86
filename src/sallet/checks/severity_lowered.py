"""A line of `raise:` that would make a check less serious, or that names no check.

A course may take any check more seriously than sallet does, never less: what could poison
somebody stays a reason not to publish. Lines that would lower a check have no effect.
`sallet explain` lists the checks with their severities.
"""

from __future__ import annotations

from difflib import get_close_matches
from typing import TYPE_CHECKING, Final

import sallet.checks
from sallet.checks.problem import Problem
from sallet.checks.words import did_you_mean, shown
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.course.model import Course
    from sallet.lesson.bank import Bank

ID: Final = "severity-lowered"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "course"
GOOD = {"course.yml": "raise:\n  unknown-state: stop\n"}
BAD = {"course.yml": "raise:\n  unknown-lesson: note\n"}


def check(course: Course, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each line of `raise:` that does nothing."""
    # The list of checks holds this one, so it is asked for only now that it is complete.
    usual = {module.ID: module.SEVERITY for module in sallet.checks.CHECKS}
    for name, severity in course.severities.items():
        key = course.node.reach(("raise",)).key(name)
        span = key.span if key else course.where("raise", name)
        if name not in usual:
            near = get_close_matches(name, usual, n=3, cutoff=0.85)
            hint = did_you_mean(near, "write `sallet explain` to see the checks")
            yield Problem(span, f"{shown(name)} is no check", hint)
        elif severity.rank < usual[name].rank:
            message = f"`{name}` is `{usual[name].value}` and cannot become `{severity.value}`"
            hint = "take the line out: checks can be raised, never lowered"
            yield Problem(course.where("raise", name), message, hint)
