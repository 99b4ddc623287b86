"""A lesson with times of year, but without the place where they were observed.

Spring comes later to the north and to the hills. sallet moves a lesson's times to the place
where the course meets, and for that it must know where they were seen; without it they are
used as they stand, and may be weeks off. Write `seen at:` with latitude, longitude and, if
you know it, elevation.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "no-place-seen"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = """---
seen at: {latitude: 54.4, longitude: -2.6, elevation: 150 m}
---
## Season
- leaves: March to June
"""
BAD = "## Season\n- leaves: March to June\n"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield the missing place."""
    if lesson.season and lesson.front.seen_at is None:
        message = "nothing says where these times of year were seen, expected `seen at`"
        hint = "write `seen at: {latitude: 54.4, longitude: -2.6, elevation: 150 m}` at the head"
        yield Problem(lesson.front.where("seen at"), message, hint)
