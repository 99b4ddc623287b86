"""Fewer than three key features.

A label in bold is a key feature: it leads the page, goes on the front of the field card and
is what students learn first. One feature alone has misled people every spring; three that
are looked at together seldom do. Set the labels in bold that settle the plant:
`- **attachment**: stalked`.
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

ID: Final = "few-key-features"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = """
## Identification
### Leaves
- **arrangement**: basal
- **attachment**: stalked
### Flowers
- **petals**: 6
"""
BAD = """
## Identification
### Leaves
- **arrangement**: basal
- **attachment**: stalked
### Flowers
- petals: 6
"""

FEWEST: Final = 3


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:
    """Yield Identification where too few of its labels are bold."""
    organs = bank.vocabulary.organ_headings
    keys = [fact.label for fact in lesson.key_facts if fact.subject in organs]
    if len(keys) < FEWEST:
        told = f"only {listed(keys, 'and')} in bold" if keys else "no label in bold"
        message = f"Identification has {told}, expected three key features or more"
        hint = "set the labels in bold that settle the plant: `- **attachment**: stalked`"
        yield Problem(lesson.where("identification"), message, hint)
