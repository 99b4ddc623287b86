"""A lesson's Markdown as runs of plain words for paper: citations, links and marks fall away."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache
from itertools import groupby
from typing import TYPE_CHECKING, Final, Literal
from unicodedata import normalize

from markdown_it import MarkdownIt

from sallet.lesson.citations import CITATION

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from markdown_it.rules_inline import StateInline
    from markdown_it.token import Token

Style = Literal["plain", "emphasis", "strong"]
_STYLES: Final[dict[str, Style]] = {"em": "emphasis", "strong": "strong"}
_NUMBER_AND_UNIT: Final = re.compile(
    r"(?<=[0-9½¼¾]) (?=(?:mm|cm|m|km|in|ft|g|kg|ml|l|°C|°F|pt|minutes?|hours?|days?|weeks?)\b)"
)
"""The blank between a number and its unit, at which no line is broken."""
_ENDS: Final = (".", "!", "?", "…", ":", ";")
"""With one of these a sentence has its end."""
_BREAKS: Final = ("softbreak", "hardbreak")
_CODE: Final = ("code_block", "fence")
_BLANKS: Final = re.compile(r"([ \t\n]+)")
"""Not the no-break space: it holds a number to its unit."""
_CLOSING: Final = re.compile(r"[*_]*($|[\s.,;:!?)])|" + CITATION.pattern)
"""What a blank before a citation must not be left in front of."""


@dataclass(frozen=True)
class Run:
    """Words set alike."""

    text: str
    style: Style = "plain"


def paragraphs(markdown: str) -> tuple[tuple[Run, ...], ...]:
    """Return running text as its paragraphs; a bullet, a step and a cell of a table are one each."""
    blocks = (_joined(_block(token)) for token in _parser().parse(markdown))
    return tuple(found for found in blocks if found)


def runs(markdown: str) -> tuple[Run, ...]:
    """Return a text as one run-on paragraph."""
    return joined(paragraphs(markdown), Run(" "))


def joined(parts: Iterable[tuple[Run, ...]], between: Run) -> tuple[Run, ...]:
    """Return runs of words one behind the other, with words between them."""
    found: list[Run] = []
    for part in parts:
        found += [between, *part] if found and part else part
    return _joined(found)


def sentences(*parts: tuple[Run, ...]) -> tuple[Run, ...]:
    """Return runs of words one behind the other, with a full stop where one ends without."""
    found: tuple[Run, ...] = ()
    for part in filter(None, parts):
        stop = " " if found and found[-1].text.endswith(_ENDS) else ". "
        found = joined([found, part], Run(stop))
    return found


def clauses(*parts: tuple[Run, ...]) -> tuple[Run, ...]:
    """Return runs of words in a row, set apart by semicolons; a full stop before one falls away."""
    told = [part for part in parts if part]
    ended = [*map(_without_stop, told[:-1]), *told[-1:]]
    return joined(ended, Run("; "))


def _without_stop(part: tuple[Run, ...]) -> tuple[Run, ...]:
    *others, last = part
    return (*others, Run(last.text.removesuffix("."), last.style))


def plain(words: str, style: Style = "plain") -> tuple[Run, ...]:
    """Return words that are no Markdown."""
    return _joined([Run(words, style)])


def text_of(parts: Iterable[Run]) -> str:
    """Return the bare words of some runs."""
    return "".join(part.text for part in parts)


@cache
def _parser() -> MarkdownIt:
    parser = MarkdownIt("commonmark", {"html": False}).enable("table").disable(["image"])
    parser.inline.ruler.before("link", "citation", _citation)
    return parser


def _citation(state: StateInline, silent: bool) -> bool:  # noqa: FBT001 - the parser's signature
    """Pass over a citation. It is read as on the pages, so that marks round it stay marks."""
    match = CITATION.match(state.src, state.pos, state.posMax)
    if match is None:
        return False
    if not silent and _CLOSING.match(state.src, match.end()):
        state.pending = state.pending.rstrip(" ")
    state.pos = match.end()
    return True


def _block(token: Token) -> Iterable[Run]:
    """Return the words that a block holds itself; most hold other blocks."""
    return [Run(token.content)] if token.type in _CODE else _runs(token.children or ())


def _runs(tokens: Iterable[Token]) -> Iterator[Run]:
    open_styles: list[Style] = ["plain"]
    for token in tokens:
        if token.nesting == 1 and token.tag in _STYLES:
            open_styles.append(_STYLES[token.tag])
        elif token.nesting == -1 and token.tag in _STYLES:
            open_styles.pop()
        elif token.type in _BREAKS:
            yield Run(" ", open_styles[-1])
        elif token.content:
            yield Run(token.content, open_styles[-1])


def _joined(found: Iterable[Run]) -> tuple[Run, ...]:
    """Return runs with single blanks between their words, neighbours of one style together."""
    return tuple(
        Run(_tidy("".join(run.text for run in group)), style)
        for style, group in groupby(_spaced(found), key=lambda run: run.style)
    )


def _tidy(text: str) -> str:
    return _NUMBER_AND_UNIT.sub("\u00a0", normalize("NFC", text))


def _spaced(found: Iterable[Run]) -> Iterator[Run]:
    """Yield the words of runs, and one blank between two for blanks and line ends of any number."""
    begun, blank = False, None
    for run in found:
        for piece in filter(None, _BLANKS.split(run.text)):
            if _BLANKS.match(piece):
                blank = blank or Run(" ", run.style)
                continue
            if begun and blank:
                yield blank
            begun, blank = True, None
            yield Run(piece, run.style)
