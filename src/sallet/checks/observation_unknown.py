"""A day seen here that cannot be used.

Under `seen here:` each line begins with a plant and then one of the lines of its Season, as in
`ramsons flowers: 2 May 2026`. A plant without a lesson, a part that its Season does not name, or
one that is there all year and so has no first day, would leave the plant's dates as they were
estimated, without anybody noticing.
"""

from __future__ import annotations

from difflib import get_close_matches
from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import did_you_mean, listed, shown
from sallet.findings import Severity
from sallet.season.observed import named_in, observed_of

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.course.model import Course
    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson
    from sallet.source import Span

ID: Final = "observation-unknown"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "course"
_LESSON: Final = """---
name: Ramsons
---
## Season
- flowers: mid April to June
"""
GOOD = {"course.yml": "seen here: {ramsons flowers: 2 May 2026}\n", "ramsons.md": _LESSON}
BAD = {"course.yml": "seen here: {ramsons fruit: 2 May 2026}\n", "ramsons.md": _LESSON}


def check(course: Course, bank: Bank) -> Iterator[Problem]:
    """Yield each observation that changes nothing."""
    for observation in course.seen_here:
        lesson, part = named_in(observation, bank)
        if lesson is None:
            yield _no_plant(course, observation.words, bank)
        elif observed_of(observation, lesson, part) is None:
            yield _no_part(course, observation.words, lesson, part)


def _no_plant(course: Course, words: str, bank: Bank) -> Problem:
    names = [lesson.name for lesson in bank.lessons]
    lower = {name.casefold(): name for name in names}
    starts = {
        lower[near]: None
        for end in range(len(words.split()), 0, -1)
        for near in get_close_matches(" ".join(words.casefold().split()[:end]), lower, n=2)
    }
    hint = did_you_mean(list(starts)[:3], "begin with a plant's name, as in `ramsons flowers`")
    return Problem(_span(course, words), f"{shown(words)} begins with no plant of the course", hint)


def _no_part(course: Course, words: str, lesson: Lesson, part: str) -> Problem:
    rows = [row.name for row in lesson.season]
    named = next((row for row in lesson.season if row.name.casefold() == part.casefold()), None)
    if named is not None:
        message = f"{shown(named.name)} of {lesson.name} has no first day in the lesson"
        hint = "name a part that comes and goes with the year"
        return Problem(_span(course, words), message, hint)
    what = f"{shown(part)} is" if part else "no part is named, and so it is"
    message = f"{what} no line of the Season of {lesson.name}"
    hint = f"name one of its lines: {listed(rows)}" if rows else "write its Season first"
    return Problem(_span(course, words), message, hint)


def _span(course: Course, words: str) -> Span:
    node = course.node.child("seen here")
    key = node.key(words) if node else None
    return key.span if key else course.where("seen here")
