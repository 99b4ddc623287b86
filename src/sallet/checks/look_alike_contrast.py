"""A dangerous look-alike that too few recorded features tell from the plant.

For a look-alike that is deadly or poisonous, two features of different kinds at the least must
be recorded on both sides whose values cannot be the same: alternate leaves here and opposite
ones there. Hairs on the stem and hairs on the leaf are one kind; taste is none, for nobody tastes
to find out what a plant is. They must stand under the same organ and label, in this lesson and in
the look-alike's own lesson or below its heading. Prose alone does not count: neither the key nor
the weeks in which one can be sure can be made from it. Silence separates nothing; `often spotted`
does not separate from unspotted; and what is said of the lower leaves is compared with the lower
leaves. A lesson on a poisonous plant is held to the same against each food plant that has a
lesson. Whether two features can be seen in every week of gathering is looked at by `unsure-weeks`.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import listed
from sallet.findings import Severity
from sallet.lesson.model import GRAVE
from sallet.study.contrast import FEWEST_KINDS, contrasts, one_of_each_kind

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Fact, Lesson, LookAlike

ID: Final = "look-alike-contrast"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = """
## Identification
### Leaves
- attachment: stalked
- arrangement: alternate
## Look-alikes
### Meadow saffron
- danger: deadly
#### Leaves
- attachment: stalkless
- arrangement: opposite
"""
BAD = """
## Identification
### Leaves
- attachment: stalked
- arrangement: alternate
## Look-alikes
### Meadow saffron
- danger: deadly
#### Leaves
- attachment: stalkless
"""

_MOST_OFFERED: Final = 3


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:
    """Yield each look-alike with too few contrasts, where one is food and the other poison."""
    for look in lesson.look_alikes:
        for poison, danger, food in _mixed(lesson, look, bank):
            yield from _problem(lesson, look, f"`{poison}` is {danger}", food, bank)


def _mixed(lesson: Lesson, look: LookAlike, bank: Bank) -> Iterator[tuple[str, str, str]]:
    """Yield the poisonous one of the two, its danger, and the one that is food."""
    other, name = bank.lesson_of(look), look.name.value
    danger = bank.danger_of(look) if lesson.is_food else lesson.front.danger
    if danger in GRAVE and lesson.is_food:
        yield name, danger, lesson.name
    elif danger in GRAVE and other and other.is_food:
        yield lesson.name, danger, name


def _problem(
    lesson: Lesson, look: LookAlike, poison: str, food: str, bank: Bank
) -> Iterator[Problem]:
    theirs = bank.facts_of(look)
    recorded = contrasts(lesson.facts, theirs, bank.vocabulary)
    found = one_of_each_kind(contrast for contrast in recorded if contrast.is_test)
    if len(found) < FEWEST_KINDS:
        told = (
            f"only `{found[0].label.name}` of the {found[0].this.subject}" if found else "nothing"
        )
        message = (
            f"{poison}, and {told} is recorded that tells it from `{food}`, "
            "expected two features of different kinds"
        )
        hint = "record two features that cannot be the same on both plants, in both"
        yield Problem(look.name.span, message, hint + _offer(lesson, theirs, bank))


def _offer(lesson: Lesson, theirs: Sequence[Fact], bank: Bank) -> str:
    """Return the firmest labels that this lesson records and the other side does not."""
    recorded = {(fact.subject, fact.label) for fact in theirs}
    missing = [
        f"{fact.subject}: {fact.label}"
        for fact in lesson.facts
        if (fact.subject, fact.label) not in recorded and _is_firm(fact, bank)
    ]
    if not missing:
        return ""
    return f"; of `{lesson.name}` alone there is {listed(missing[:_MOST_OFFERED], 'and')}"


def _is_firm(fact: Fact, bank: Bank) -> bool:
    label = bank.vocabulary.label(fact.subject, fact.label)
    organs = bank.vocabulary.organ_headings
    return fact.subject in organs and label is not None and label.reliability == "firm"
