"""Two lessons that answer to one name.

A course's list, a look-alike's heading and a link refer to a plant by its common name, its
scientific name or the name of its file. Where two lessons share one, one of them can never
be reached, and its cautions with it. Give each lesson its own names, or make one of the two.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import listed
from sallet.findings import Severity
from sallet.lesson.bank import binomial
from sallet.lesson.vocabulary import normal

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "two-lessons-one-name"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = {
    "a.md": "---\nname: Hemlock\n---\n",
    "b.md": "---\nname: Hemlock water-dropwort\n---\n",
}
BAD = {"a.md": "---\nname: Hemlock\n---\n", "b.md": "---\nname: hemlock\n---\n"}

_NAMES: Final[tuple[tuple[str, str, Callable[[Lesson], str]], ...]] = (
    ("name", "name", lambda lesson: lesson.front.name),
    ("scientific name", "scientific name", lambda lesson: binomial(lesson.front.scientific_name)),
    ("page name", "", lambda lesson: lesson.slug),
)
"""What the name is called, the key it stands behind, and how it is had."""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:
    """Yield each name that another lesson of the bank has too, and where that one lies."""
    for kind, key, name_of in _NAMES:
        name = name_of(lesson)
        others = [
            other.source.path
            for other in bank.lessons
            if other is not lesson and name and normal(name_of(other)) == normal(name)
        ]
        if others:
            message = f"`{name}` is the {kind} of {listed(sorted(others), 'and')} too"
            yield Problem(
                lesson.front.where(key), message, "change one, or make one lesson of both"
            )
