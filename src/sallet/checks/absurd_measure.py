"""A length that no such part of a plant has.

Sixty metres of stem, a leaf of ten metres, a seed of nought: a unit has slipped (m for mm, ft
for in) or a figure was typed twice. The limits are generous and from memory: they let pass
the tallest trees and the longest fronds that anybody is likely to teach.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import shown
from sallet.findings import Severity
from sallet.lesson.value import Measure

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson
    from sallet.lesson.value import Item

ID: Final = "absurd-measure"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = """
## Identification
### Leaves
- length: 10–25 cm
"""
BAD = """
## Identification
### Leaves
- length: 10–25 m
"""


@dataclass(frozen=True)
class _Limit:
    least: Fraction
    """Millimetres."""
    most: int
    """Metres."""


_FINE: Final = Fraction(1, 100)
"""A hundredth of a millimetre, the thickness of the finest hairs; less needs a microscope."""
_LIMITS: Final = {
    "whole plant": _Limit(Fraction(1), 60),  # a silver fir; duckweed is some millimetres
    "stem": _Limit(_FINE, 60),  # a trunk or a climber; hairs and prickles on it
    "leaves": _Limit(_FINE, 6),  # a palm frond; bracken stays below three metres
    "flowers": _Limit(_FINE, 3),  # the flower spike of a century plant is longer; ours are not
    "fruit": _Limit(_FINE, 1),  # a long bean or a gourd
    "seeds": _Limit(_FINE, 1),  # a palm's; an orchid's is dust
    "roots": _Limit(_FINE, 30),  # runners and tap-roots
    "bark": _Limit(_FINE, 1),  # a cork oak's is a quarter of that
    "buds": _Limit(_FINE, 1),  # a cabbage is one
}


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:
    """Yield each length out of all proportion."""
    headings = {subject.name: subject.heading for subject in bank.vocabulary.subjects}
    facts = (*lesson.facts, *(fact for look in lesson.look_alikes for fact in look.facts))
    for fact in facts:
        limit = _LIMITS.get(fact.subject)
        for item in fact.items:
            if limit and isinstance(item.value, Measure):
                yield from _problem(item, item.value, limit, headings[fact.subject])


def _problem(item: Item, measure: Measure, limit: _Limit, organ: str) -> Iterator[Problem]:
    hint = "look at the figures and at the unit again"
    if measure.largest > limit.most * 1000:
        message = f"{shown(item.text)} is too long for `{organ}`, expected at most {limit.most} m"
        yield Problem(item.span, message, hint)
    elif measure.largest < limit.least:
        message = f"{shown(item.text)} is too small for `{organ}` to be seen"
        yield Problem(item.span, message, hint)
