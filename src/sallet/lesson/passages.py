"""A run of a lesson's text, cut into its paragraphs and bullets."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.source import Source, Span, Text

if TYPE_CHECKING:
    from collections.abc import Iterator

_BULLET: Final = re.compile(r"[ \t]*(?:[-*+]|\d{1,9}[.)])[ \t]")
_HEADING: Final = re.compile(r"[ ]{0,3}#{1,6}(?:[ \t]|$)")
_NESTED: Final = 2
"""Spaces of indent from which a line belongs to the bullet above it."""


@dataclass(frozen=True)
class Passage:
    """A paragraph, a bullet or a nested bullet."""

    text: Text
    whole: Span
    """The same, or the outermost bullet that it stands in, to its end."""


@dataclass(frozen=True)
class _Piece:
    start: int
    end: int
    is_outer: bool


def passages(source: Source, span: Span) -> Iterator[Passage]:
    """Yield the passages of a run of the text; headings are none."""
    group: list[_Piece] = []
    for piece in _pieces(source, span):
        if piece.is_outer:
            yield from _together(group, source)
            group = []
        group.append(piece)
    yield from _together(group, source)


def _together(group: list[_Piece], source: Source) -> Iterator[Passage]:
    for piece in group:
        text = Text(source.text[piece.start : piece.end], Span(piece.start, piece.end))
        yield Passage(text, Span(group[0].start, group[-1].end))


def _pieces(source: Source, span: Span) -> Iterator[_Piece]:
    open_piece: _Piece | None = None
    for start, line in _lines(source, span):
        begins = bool(_BULLET.match(line) or _HEADING.match(line))
        if open_piece and (begins or not line.strip()):
            yield open_piece
            open_piece = None
        if not line.strip() or _HEADING.match(line):
            continue
        if open_piece is None:
            indent = len(line) - len(line.lstrip())
            open_piece = _Piece(start, start + len(line), indent < _NESTED)
        else:
            open_piece = _Piece(open_piece.start, start + len(line), open_piece.is_outer)
    if open_piece:
        yield open_piece


def _lines(source: Source, span: Span) -> Iterator[tuple[int, str]]:
    # The span begins behind the first line's indent: take the line whole.
    start = source.text.rfind("\n", 0, span.start) + 1
    for line in source.text[start : span.end].split("\n"):
        yield start, line
        start += len(line) + 1
