"""A value is a list of pieces, each with its qualifiers in parentheses; offsets are kept."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.lesson.value import Qualified
from sallet.source import Span, Text

if TYPE_CHECKING:
    from sallet.lesson.vocabulary import Vocabulary

DASH: Final = "[-–—‐‑−]"
"""The hyphens, dashes and minus signs that a keyboard or a word processor makes of one."""
# Each run of blanks is tried from its first blank only, or a long run would take for ever.
_BLANKS: Final = r"(?<!\s)\s+"
COMMAS: Final = re.compile(rf"(?:{_BLANKS})?[,;]\s*")
COMMAS_OR: Final = re.compile(rf"(?:{_BLANKS})?[,;]\s*(?:or\s+)?")
COMMAS_AND_OR: Final = re.compile(rf"(?:{_BLANKS})?[,;]\s*(?:or\s+|and\s+)?|{_BLANKS}(?:or|and)\s+")
_PARENTHESES: Final = re.compile(r"\(([^()]*)\)")

_EXTREMES: Final = re.compile(
    rf"\((\s?{DASH}[\d.½¼¾⅓⅔⅛/ ]{{1,20}}|[\d.½¼¾⅓⅔⅛/ ]{{1,20}}{DASH}\s?)\)"
)
_SHOWN: Final = {2: "(", 3: ")"}


@dataclass(frozen=True)
class Piece:
    """One of several values, without its qualifiers."""

    text: Text
    qualifiers: tuple[Text, ...]

    @property
    def span(self) -> Span:
        """Return the run from the value to its last qualifier."""
        ends = [self.text.span.end, *(q.span.end + 1 for q in self.qualifiers)]
        return Span(self.text.span.start, max(ends))


def split(value: Text, at: re.Pattern[str] = COMMAS_AND_OR) -> tuple[Piece, ...]:
    """Return the pieces of a value, cut at commas (and `or`, `and`) outside parentheses."""
    masked = _PARENTHESES.sub(lambda m: "\1" * len(m[0]), value.value)
    pieces: list[Piece] = []
    start = 0
    for match in [*at.finditer(masked), None]:
        end = match.start() if match else len(masked)
        pieces.append(_piece(value, start, end))
        start = match.end() if match else end
    return tuple(piece for piece in pieces if piece.text.value or piece.qualifiers)


def _piece(value: Text, start: int, end: int) -> Piece:
    inside = value.value[start:end]
    offset = value.span.start + start
    qualifiers = tuple(
        Text(m[1].strip(), Span(offset + m.start(1), offset + m.end(1)))
        for m in _PARENTHESES.finditer(inside)
    )
    bare = _PARENTHESES.sub(lambda m: " " * len(m[0]), inside)
    lead = len(bare) - len(bare.lstrip())
    words = bare.strip()
    span = Span(offset + lead, offset + lead + len(words))
    return Piece(Text(re.sub(r"\s+", " ", words), span), qualifiers)


def split_numbers(value: Text, at: re.Pattern[str]) -> tuple[Piece, ...]:
    """Return the pieces of a value in which a flora's extremes, `(2–)5–7(–9)`, are no qualifiers."""
    hidden = _EXTREMES.sub(lambda m: f"\2{m[1]}\3", value.value)
    return tuple(
        Piece(Text(piece.text.value.translate(_SHOWN), piece.text.span), piece.qualifiers)
        for piece in split(Text(hidden, value.span), at)
    )


def qualified(texts: tuple[Text, ...], vocabulary: Vocabulary) -> tuple[Qualified, ...]:
    """Return qualifiers as the vocabulary knows them; `lower and basal leaves` gives two."""
    found: list[Qualified] = []
    for text in texts:
        for words in _qualifier_words(text.value, vocabulary):
            known = vocabulary.qualifier(words)
            name, kind = (known.name, known.kind) if known else (None, "")
            found.append(Qualified(words, name, kind))
    return tuple(found)


def _qualifier_words(text: str, vocabulary: Vocabulary) -> list[str]:
    if vocabulary.qualifier(text):
        return [text]
    pieces = [p.strip() for p in re.split(r",|;|\band\b|\bor\b", text) if p.strip()]
    # Only a list of known words is a list; anything else is kept whole for the reader.
    return pieces if all(vocabulary.qualifier(piece) for piece in pieces) else [text]


def adverbs(text: Text, vocabulary: Vocabulary) -> tuple[Text, tuple[Qualified, ...]]:
    """Return a value without `usually`, `sometimes` and the like in front, and those words."""
    found: list[Qualified] = []
    while " " in text.value:
        first, rest = text.value.split(" ", 1)
        known = vocabulary.qualifier(first)
        if known is None or known.kind != "frequency":
            break
        found.append(Qualified(first, known.name, known.kind))
        text = Text(rest.lstrip(), Span(text.span.end - len(rest.lstrip()), text.span.end))
    return text, tuple(found)
