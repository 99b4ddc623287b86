"""A part said to be eaten in a lesson on a plant that nobody should eat.

A plant that is taught as a look-alike is there to be left alone. A line that calls one of
its parts food could reach a card or a season map, and then a plate. Take the line out, or
teach the plant as food, with all that such a lesson must say.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import shown
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "edible-in-look-alike"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = "---\nname: Ramsons\ntaught as: food\n---\n## Edible parts\n- leaves: March; raw\n"
BAD = "---\nname: Hemlock\ntaught as: look-alike\n---\n## Edible parts\n- leaves: March; raw\n"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each edible part of a look-alike."""
    if not lesson.is_food:
        for part in lesson.edible_parts:
            message = f"{shown(part.timing.name)} is called food, but `{lesson.name}` is taught as a look-alike"
            yield Problem(part.timing.label_span, message, "take the line out")
