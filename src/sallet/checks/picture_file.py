"""A picture whose file is not at hand.

The page would show a hole where the plant should be. The file lies beside the lesson or in the
course's folder `pictures`, and the heading gives its name with capitals and ending just as the
file has them. It is not at hand either when no program can open it.
"""

from __future__ import annotations

from difflib import get_close_matches
from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import did_you_mean, shown
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "picture-file"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = {"lesson.md": "## Pictures\n### leaf.jpg\n- shows: a leaf\n", "leaf.jpg": "800x600"}
BAD = {"lesson.md": "## Pictures\n### leaf.jpg\n- shows: a leaf\n"}


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:
    """Yield each picture that is not among the files."""
    for picture in lesson.pictures:
        name = picture.file.value
        if name not in bank.pictures:
            near = get_close_matches(name, list(bank.pictures), n=3, cutoff=0.6)
            message = f"there is no picture {shown(name)} beside the lesson or in `pictures`"
            hint = did_you_mean(near, "put the file there, or correct its name")
            yield Problem(picture.file.span, message, hint)
