"""Weeks in which a plant is gathered, but not surely told from one that is deadly or poisonous.

A feature counts only while it can be seen. In every week in which a part is gathered, two features
of different kinds must be visible on the very plant that is picked, recorded here and of the
look-alike with values that cannot be met on both, and one of them must be reliable, that is `firm`:
`sallet explain` says of each label how far it may be trusted. Size, colour and smell are weak, and nobody tastes to
find out what a plant is. Hairs on the stem and hairs on the leaf are one kind. A look-alike counts
as about whenever its lesson does not say that nothing of it can be seen.

In the weeks named nobody may gather, and they are taken out of every date of the course, unless the
lesson says how it is settled: `- settled by: patches marked while in flower` under the look-alike.
The pages then show those weeks as not yet sure, with that note. Better still is another feature, or
a shorter time for the edible part. Dates are those of the place where this lesson was seen.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.doubts import doubts, home_years, problem
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.checks.problem import Problem
    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "unsure-weeks"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = """
## Identification
### Leaves
- attachment: stalked
- division: simple
## Look-alikes
### Hemlock
- danger: deadly
#### Leaves
- attachment: stalkless
- division: thrice pinnate
## Season
- leaves: March to June
## Edible parts
- leaves: April; raw
"""
BAD = """
## Identification
### Leaves
- attachment: stalked
### Flowers
- petals: 6
## Look-alikes
### Hemlock
- danger: deadly
#### Leaves
- attachment: stalkless
#### Flowers
- petals: 5
## Season
- leaves: March to June
- flowers: mid May to June
## Edible parts
- leaves: April; raw
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:
    """Yield each look-alike for which some weeks of gathering are sure by nothing."""
    for telling in doubts(lesson, home_years(lesson, bank), bank):
        yield problem(telling, lesson, bank)
