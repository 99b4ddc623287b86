"""An organ of which too little is recorded to draw it.

Leaves, flowers, fruit, stems and what is underground are drawn from what the lesson records of
them, and from nothing else: on the plant's page, and beside the plants it is mistaken for.
Where facts of an organ are recorded but not those that its drawing cannot do without, no
drawing is made. That stops nothing. `sallet explain drawings` says what each drawing needs and
what else it can show.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.drawing.figures import organs_drawn
from sallet.drawing.kinds import KINDS
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "organ-not-drawn"
SEVERITY: Final = Severity.NOTE
LOOKS_AT: Final = "lesson"
GOOD = """
## Identification
### Leaves
- division: simple
- shape: ovate
"""
BAD = """
## Identification
### Leaves
- smell when crushed: garlic
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:
    """Yield each organ of which facts are recorded and nothing can be drawn."""
    drawn = organs_drawn(lesson.facts, bank.vocabulary)
    for kind in (kind for kind in KINDS if kind.main and kind.organ not in drawn):
        first = next((f for f in lesson.facts if f.subject == kind.organ and not f.part), None)
        if first is None:
            continue
        heading = bank.vocabulary.subject(kind.organ).heading
        yield Problem(
            first.label_span,
            f"too little is recorded to draw anything under `{heading}`",
            f"a drawing of the {kind.name} needs {kind.needs}; `sallet explain drawings` tells more",
        )
