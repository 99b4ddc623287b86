"""A picture that does not say what it shows.

Who cannot see it, and who has no signal in the wood, has only the words. Write `- shows: ` and
what the picture lets one see of the plant: the feature, not "photograph of a leaf".
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

ID: Final = "picture-without-text"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = {
    "lesson.md": "## Pictures\n### leaf.jpg\n- shows: one leaf, upper side and underside\n",
    "leaf.jpg": "800x600",
}
BAD = {"lesson.md": "## Pictures\n### leaf.jpg\n- credit: A Teacher\n", "leaf.jpg": "800x600"}


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each picture with no text in its place."""
    for picture in lesson.pictures:
        if not picture.shows:
            message = f"nothing says what the picture {shown(picture.file.value)} shows"
            hint = "write `- shows: ` below it, and what one is to see"
            yield Problem(picture.file.span, message, hint)
