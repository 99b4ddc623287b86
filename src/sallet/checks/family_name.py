"""A family's name that is not its standard one.

Names of plant families end in -aceae and begin with a capital (Article 18.1 of the Code of
nomenclature). Eight old names, such as Umbelliferae, are allowed beside the standard ones
(Article 18.5), and Papilionaceae for the peas alone (18.6, from memory); but books and
lessons agree more easily on one name, so the standard one is offered.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.findings import Severity
from sallet.lesson.family_names import STANDARD, is_family_name
from sallet.lesson.latin import mended
from sallet.source import Span

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "family-name"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = "---\nfamily: Apiaceae\n---\n"
BAD = "---\nfamily: Umbelliferae\n---\n"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield the family's name where it is not the standard one."""
    family = lesson.front.family
    word = family.split()[0] if family else ""
    if not word:
        return
    span = _span(lesson, word)
    plain = mended(word)
    if plain in STANDARD:
        message = f"`{word}` is an older name, expected `{STANDARD[plain]}`"
        yield Problem(span, message, f"write `{STANDARD[plain]}`")
    elif not is_family_name(word):
        message = f"`{word}` is no scientific name of a family, expected one ending in -aceae"
        yield Problem(span, message, "write the family as a flora does, such as `Apiaceae`")
    elif word != word.capitalize():
        message = f"`{word}` is a family, expected a capital first letter and no other"
        yield Problem(span, message, f"write `{plain.capitalize()}`")


def _span(lesson: Lesson, word: str) -> Span:
    at = lesson.front.where("family")
    start = lesson.source.text.find(word, at.start, at.end)
    return Span(start, start + len(word)) if start >= 0 else at
