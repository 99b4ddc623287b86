"""A statement on which somebody's safety hangs, without a source.

Which part is food, what is cut away and why, every caution, and what tells a look-alike apart:
each needs a `[^key]` in its own bullet or text that leads to a source. Write `[^memory]` while
you have none; the page then says so at that place, and a second reader knows where to look.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import shown
from sallet.findings import Severity
from sallet.source import Text

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Citation, Lesson, LookAlike

    Claim = tuple[str, Text, Sequence[Citation]]

ID: Final = "unsourced-claim"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = "## Cautions\n- dogs: keep them away[^vet]\n\n[^vet]: A textbook.\n"
BAD = "## Cautions\n- dogs: keep them away\n"

HINT: Final = "write `[^key]` for its source, or `[^memory]` while there is none"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each edible part, part to remove, caution and look-alike that cites nothing."""
    for what, words, citations in (*_kitchen(lesson), *_harm(lesson)):
        if words and not citations:
            yield Problem(words.span, f"the {what} {shown(words.value)} has no source", HINT)


def _kitchen(lesson: Lesson) -> Iterator[Claim]:
    for part in lesson.edible_parts:
        yield "edible part", Text(part.timing.name, part.timing.label_span), part.timing.citations
    for removal in lesson.removals:
        yield "part to remove", removal.name, removal.citations


def _harm(lesson: Lesson) -> Iterator[Claim]:
    for caution in lesson.cautions:
        yield "caution", caution.text, caution.citations
    for look_alike in lesson.look_alikes:
        if look_alike.prose:
            yield "text on", look_alike.name, _citations_of(look_alike, lesson)


def _citations_of(look_alike: LookAlike, lesson: Lesson) -> Sequence[Citation]:
    text = look_alike.prose.span
    return [c for c in lesson.citations if text.start <= c.span.start < text.end]
