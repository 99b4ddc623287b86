"""References to sources: `[^key]` wherever it stands, but not where the source is defined."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from sallet.lesson.model import Citation
from sallet.source import Source, Span

if TYPE_CHECKING:
    from collections.abc import Iterator

CITATION: Final = re.compile(r"\[\^([^\]\s]+)\]")
"""A reference to a footnote."""
_BEFORE_A_DEFINITION: Final = frozenset(" \t>-*+.)0123456789")
"""A definition begins a line, or a bullet or quotation on that line."""


def citations_in(source: Source, span: Span) -> Iterator[Citation]:
    """Yield the references to footnotes in a run of the text."""
    for match in CITATION.finditer(source.text, span.start, span.end):
        if not _is_definition(source.text, match):
            yield Citation(match[1], Span(match.start(), match.end()))


def _is_definition(text: str, match: re.Match[str]) -> bool:
    line = text.rfind("\n", 0, match.start()) + 1
    before = text[line : match.start()]
    return text[match.end() : match.end() + 1] == ":" and _BEFORE_A_DEFINITION.issuperset(before)


def without_citations(value: str) -> str:
    """Return words with spaces in place of citations, so that offsets hold."""
    return CITATION.sub(lambda match: " " * len(match[0]), value).rstrip()
