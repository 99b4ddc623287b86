"""Identification that describes fewer than three organs.

A plant is known by several parts together, and at any time of year some of them cannot be
seen: in March there are leaves and no flowers, in October fruit and no leaves. A lesson that
describes one or two organs cannot be relied on in all of its season. The plant as a whole,
under `### Whole plant`, counts as one.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import listed
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "few-organs"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = """
## Identification
### Stem
- section: round
### Leaves
- arrangement: basal
### Flowers
- petals: 6
"""
BAD = """
## Identification
### Leaves
- arrangement: basal
### Flowers
- petals: 6
"""

FEWEST: Final = 3


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:
    """Yield Identification where it holds too few organs."""
    headings = bank.vocabulary.organ_headings
    organs = list(dict.fromkeys(headings[f.subject] for f in lesson.facts if f.subject in headings))
    if len(organs) < FEWEST:
        told = f"only {listed(organs, 'and')}" if organs else "no organ"
        message = f"Identification describes {told}, expected three organs or more"
        hint = "add headings such as `### Stem` or `### Fruit` with what is to be seen there"
        yield Problem(lesson.where("identification"), message, hint)
