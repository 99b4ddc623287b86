"""More plants named for a session than it holds.

You know how many plants a class can take in on one walk, and wrote it behind `holds:`. All the
plants named are taught there all the same. Let the session hold more, or name fewer.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.course.teaching import placed_sessions, plant_key
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.course.model import Course, Session
    from sallet.lesson.bank import Bank

ID: Final = "session-overfull"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "course"
GOOD = {"course.yml": "sessions:\n  - {date: 2027-04-03, holds: 2, plants: [Ramsons, Elder]}\n"}
BAD = {"course.yml": "sessions:\n  - {date: 2027-04-03, holds: 1, plants: [Ramsons, Elder]}\n"}


def check(course: Course, bank: Bank) -> Iterator[Problem]:
    """Yield the first plant for which a session has no room."""
    for place, session in placed_sessions(course):
        firsts = _firsts(session, bank)
        if session.holds is not None and len(firsts) > session.holds:
            count = f"{len(firsts)} plants are" if len(firsts) > 1 else "a plant is"
            message = f"{count} named for a session that holds {session.holds or 'none'}"
            span = course.where("sessions", place, "plants", firsts[session.holds])
            yield Problem(span, message, "let it hold more, or name fewer")


def _firsts(session: Session, bank: Bank) -> list[int]:
    """Return where each plant of a session is named first: one plant may have two names."""
    found: dict[str, int] = {}
    for index, name in enumerate(session.plants):
        found.setdefault(plant_key(name, bank), index)
    return list(found.values())
