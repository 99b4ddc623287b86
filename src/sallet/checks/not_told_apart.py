"""Plants that harm and that nothing on record tells surely from this one while it is gathered.

They are not named as look-alikes, and perhaps nobody would take the one for the other: a beech is no
ragwort. But the tool knows only what is recorded, and so they end together in the key of the month.
Features of both, under the same organ and label, mend it.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.doubts import unnamed_doubts
from sallet.checks.problem import Problem
from sallet.findings import Severity
from sallet.season.words import days_words
from sallet.study.resemblance import resemble

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson
    from sallet.season.telling import Telling

ID: Final = "not-told-apart"
SEVERITY: Final = Severity.NOTE
LOOKS_AT: Final = "lesson"
_LESSON: Final = """---
name: Ramsons
family: Amaryllidaceae
---
## Identification
### Leaves
- division: simple
- attachment: stalked
## Season
- leaves: March to June
## Edible parts
- leaves: April; raw
"""
_HEMLOCK: Final = """---
name: Hemlock
family: Apiaceae
taught as: look-alike
danger: deadly
---
## Identification
### Leaves
- attachment: stalkless
%s
## Season
- leaves: March to June
"""
GOOD = {"ramsons.md": _LESSON, "hemlock.md": _HEMLOCK % "- division: thrice pinnate"}
BAD = {"ramsons.md": _LESSON, "hemlock.md": _HEMLOCK % ""}

_MOST_NAMED: Final = 3


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:
    """Yield one problem of a plant with all that it is not told from, the longest doubt first."""
    found = [
        telling
        for telling in unnamed_doubts(lesson, bank)
        if telling.other and not resemble(lesson, telling.other, bank.vocabulary)
    ]
    if found:
        found.sort(key=lambda telling: (-len(telling.unsure), telling.name))
        named = "; ".join(map(_named, found[:_MOST_NAMED]))
        more = len(found) - _MOST_NAMED
        rest = f"; and {more} more" if more > 0 else ""
        message = f"not surely told from plants that harm, by what is recorded: {named}{rest}"
        hint = "record further features of both, or name as a look-alike what could be taken for it"
        yield Problem(lesson.front.where("name"), message, hint)


def _named(telling: Telling) -> str:
    return f"`{telling.name}` ({telling.danger}) {days_words(telling.unsure)}"
