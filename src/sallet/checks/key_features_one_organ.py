"""Key features that all belong to one organ.

What is recorded of the leaves alone helps nobody before they open or after they are eaten
off, and a student who looks at nothing but leaves learns to look at nothing but leaves. Set
a label of a second organ in bold: the stem and the roots are there when the flowers are not.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "key-features-one-organ"
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


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:
    """Yield the first key feature where all others are of the same organ."""
    headings = bank.vocabulary.organ_headings
    keys = [fact for fact in lesson.key_facts if fact.subject in headings]
    if len(keys) > 1 and len({fact.subject for fact in keys}) == 1:
        organ = headings[keys[0].subject]
        message = f"all {len(keys)} key features are under `{organ}`, expected two organs or more"
        hint = "set a label of another organ in bold too"
        yield Problem(keys[0].label_span, message, hint)
