"""A time of eating that is not within the plant's season.

What is eaten must be there: a lesson that has the leaves die back in June and eats them in
July has a slip in one of two places, and someone who trusts it will pick another plant's
leaves. The time under Edible parts must lie within that part's own line under Season or,
where the part has none, within the line of its organ.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import shown
from sallet.findings import Severity
from sallet.lesson.value import Window
from sallet.lesson.vocabulary import normal

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson, Timing

ID: Final = "edible-outside-season"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = """
## Season
- leaves: late February to mid June
## Edible parts
- leaves: March to May; raw
"""
BAD = """
## Season
- leaves: late February to mid June
## Edible parts
- leaves: March to July; raw
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each time of eating that its season does not hold."""
    for part in lesson.edible_parts:
        timing = part.timing
        rows = _rows(timing, lesson.season)
        if timing.windows and not rows:
            message = f"the edible part {shown(timing.name)} has no line under Season, expected one"
            hint = f"write `- {timing.name}: …` or the organ's name under Season, with its time"
            yield Problem(timing.label_span, message, hint)
        yield from _outside(timing, rows)


def _rows(timing: Timing, season: Sequence[Timing]) -> list[Timing]:
    """Return the part's own lines of Season, or else its organ's, or else those of its pieces."""
    own = [row for row in season if normal(row.name) == normal(timing.name)]
    own += [row for row in season if timing.part and row.part == timing.part and row not in own]
    of_organ = [row for row in season if timing.organ and row.organ == timing.organ]
    return own or [row for row in of_organ if not row.part] or of_organ


def _outside(timing: Timing, rows: Sequence[Timing]) -> Iterator[Problem]:
    grown = {day for row in rows for window in row.windows for day in window.days}
    if not grown:
        return
    for item in timing.items:
        if isinstance(item.value, Window) and not grown.issuperset(item.value.days):
            season = ", ".join(row.text for row in rows)
            message = f"{shown(item.text)} is not within the season of {shown(timing.name)}, {shown(season)}"
            yield Problem(item.span, message, "change the time here, or the one under Season")
