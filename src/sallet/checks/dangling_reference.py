"""A reference to a source that is not in the lesson.

A reader who wants to know where a statement comes from is led nowhere, and a misspelt key hides
that the statement has a source. Define each source once, anywhere in the file, on a line of its
own: `[^key]: author, title, year`.
"""

from __future__ import annotations

from difflib import get_close_matches
from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import did_you_mean
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "dangling-reference"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = "The leaves taste of garlic.[^flora]\n\n[^flora]: A flora.\n"
BAD = "The leaves taste of garlic.[^floar]\n\n[^flora]: A flora.\n"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each reference whose key is not defined."""
    keys = [note.key for note in lesson.footnotes]
    for citation in lesson.citations:
        if citation.key not in keys:
            near = [f"[^{key}]" for key in get_close_matches(citation.key, keys, n=3)]
            message = f"no source is defined for `[^{citation.key}]`"
            otherwise = f"write its source on a line of its own: `[^{citation.key}]: …`"
            yield Problem(citation.span, message, did_you_mean(near, otherwise))
