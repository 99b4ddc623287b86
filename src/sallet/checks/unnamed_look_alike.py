"""A deadly or poisonous plant that resembles this one on record, and that nobody names.

The two are of one family, or what is recorded of both is mostly the same; in some weeks of gathering
nothing recorded tells them surely apart; and neither lesson names the other as a look-alike. Ask
yourself whether a beginner could take the one for the other. If so, name it under Look-alikes and
write what tells it apart. If not, record further features of both: then this finding goes, and so
does their common end in the key.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.doubts import unnamed_doubts, what_is_seen
from sallet.checks.problem import Problem
from sallet.findings import Severity
from sallet.season.words import days_words
from sallet.study.resemblance import resemble

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "unnamed-look-alike"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
_PARSLEY: Final = """---
name: Cow parsley
family: Apiaceae
---
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
## Season
- leaves: March to June
"""
GOOD = {"parsley.md": _PARSLEY + "## Look-alikes\n### Hemlock\n", "hemlock.md": _HEMLOCK}
BAD = {"parsley.md": _PARSLEY, "hemlock.md": _HEMLOCK}


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:
    """Yield each grave plant that resembles this one and is named by neither."""
    for telling in unnamed_doubts(lesson, bank):
        other = telling.other
        if other and resemble(lesson, other, bank.vocabulary):
            message = (
                f"`{other.name}` is {telling.danger}, resembles this plant and is not named as its "
                f"look-alike, and at times of gathering ({days_words(telling.unsure)}) "
                f"{what_is_seen(telling, bank)}"
            )
            hint = f"name `{other.name}` under Look-alikes, or record further features of both"
            yield Problem(lesson.front.where("name"), message, hint)
