"""A label that is recorded twice for the same organ.

Of two bullets `- colour: white` and `- colour: pink` under Flowers a reader cannot tell which
holds, nor can sallet, which then takes both as possible. Put the values into one bullet
(`white or pink`), or say in parentheses where or when each holds (`white (young)`).
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Fact, Lesson

ID: Final = "repeated-fact"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = """
## Identification
### Flowers
- colour: white (young)
- colour: pink (old)
"""
BAD = """
## Identification
### Flowers
- colour: white
- colour: pink
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:
    """Yield each label that was already recorded for the organ."""
    organs = bank.vocabulary.organ_headings
    for facts in (lesson.facts, *(look.facts for look in lesson.look_alikes)):
        for fact, first in _repeated(fact for fact in facts if fact.subject in organs):
            line = lesson.source.position(first.label_span.start).line
            where = fact.part or organs[fact.subject]
            message = f"`{fact.label}` of `{where}` stands in line {line} already"
            hint = "put both into one bullet, or say in parentheses where or when each holds"
            yield Problem(fact.label_span, message, hint)


def _repeated(facts: Iterable[Fact]) -> Iterator[tuple[Fact, Fact]]:
    """Yield each fact with the first of the same label, where neither is told of a place."""
    seen: dict[tuple[str, str, str], Fact] = {}
    for fact in facts:
        if not any(item.where for item in fact.items):
            first = seen.setdefault((fact.subject, fact.part, fact.label), fact)
            if first is not fact:
                yield fact, first
