"""A look-alike whose own lesson does not name this plant in return.

A confusion works both ways: who may take saffron for ramsons may take ramsons for saffron.
A student who opens the other lesson should find the way back. Add a `###` with this plant's
name under Look-alikes there, unless the confusion really runs one way only.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "look-alike-one-sided"
SEVERITY: Final = Severity.NOTE
LOOKS_AT: Final = "lesson"
GOOD = {
    "ramsons.md": "---\nname: Ramsons\n---\n## Look-alikes\n### Meadow saffron\n",
    "meadow-saffron.md": "---\nname: Meadow saffron\n---\n## Look-alikes\n### Ramsons\n",
}
BAD = {
    "ramsons.md": "---\nname: Ramsons\n---\n## Look-alikes\n### Meadow saffron\n",
    "meadow-saffron.md": "---\nname: Meadow saffron\n---\n",
}


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:
    """Yield each look-alike whose lesson leaves this plant out."""
    for look in lesson.look_alikes:
        other = bank.lesson_of(look)
        if other is None or other is lesson:
            continue
        if bank.naming(other, lesson) is None:
            message = f"the lesson of `{look.name.value}` does not name `{lesson.name}` in return"
            hint = f"write `### {lesson.name}` under Look-alikes in `{other.source.path}`"
            yield Problem(look.name.span, message, hint)
