"""A picture without the name of its maker, or without the licence under which it may be shown.

To publish another's photograph without leave is against the law, and most licences ask that
the maker be named. Your own pictures need both lines too: your students may want to use them.
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

ID: Final = "picture-rights"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = {
    "lesson.md": "## Pictures\n### leaf.jpg\n- credit: A Teacher\n- licence: CC BY 4.0\n",
    "leaf.jpg": "800x600",
}
BAD = {"lesson.md": "## Pictures\n### leaf.jpg\n- credit: A Teacher\n", "leaf.jpg": "800x600"}

WHAT: Final = {
    "credit": "who made the picture",
    "licence": "under which terms it may be shown, such as `CC BY 4.0`",
}


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each picture's missing credit and missing licence, one by one."""
    for picture in lesson.pictures:
        given = {"credit": picture.credit, "licence": picture.licence}
        for name in (name for name, words in given.items() if not words):
            message = f"the picture {shown(picture.file.value)} has no {name}"
            yield Problem(
                picture.file.span, message, f"write `- {name}: ` below it, and {WHAT[name]}"
            )
