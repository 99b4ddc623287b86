"""Markdown → a tree of blocks that know their offsets.

markdown-it-py's tokens carry line ranges only, so the words of a paragraph are found again
in the lines it came from, once, here; whatever reads a lesson asks this module.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from markdown_it import MarkdownIt
from markdown_it.tree import SyntaxTreeNode
from mdit_py_plugins.footnote import footnote_plugin

from sallet.lesson.model import NO_PROSE, Citation, Footnote, Link, Prose
from sallet.source import Source, Span, Text

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

CITATION: Final = re.compile(r"\[\^([^\]\s]+)\](?!:)")
"""A reference to a footnote."""
_DEFINITION: Final = re.compile(r"\[\^([^\]\s]+)\]:[ \t]*")
_HEADING_MARKS: Final = re.compile(r"^\s{0,3}#{1,6}\s*")
_LABEL: Final = re.compile(
    r"""^(?P<open>\*\*|__)?      # a bold label is a key feature
        (?P<label>[^:*_\[\]]+?)
        (?:(?P=open))?\s*:\s*(?(open)(?:(?P=open))?)  # **label**: or **label:**
        \s*(?P<value>.*)$""",
    re.VERBOSE,
)


@dataclass(frozen=True)
class Bullet:
    """A list item: its first line taken apart at the colon, what follows as its note."""

    label: Text | None
    bold: bool
    value: Text
    """Without citations; they are blanked so that offsets hold."""
    note: Prose
    inner: tuple[Bullet, ...]
    quote: Prose
    citations: tuple[Citation, ...]
    span: Span


@dataclass(frozen=True)
class Part:
    """A heading and what stands below it, up to the next heading of its rank or a higher one."""

    level: int
    heading: Text
    lead: Prose
    bullets: tuple[Bullet, ...]
    numbered: tuple[Bullet, ...]
    rest: Prose
    """All text below the heading and its inner headings."""
    inner: tuple[Part, ...]

    @property
    def span(self) -> Span:
        """Return the run from the heading to the end of the part."""
        return Span(self.heading.span.start, max(self.rest.span.end, self.heading.span.end))


def _parser() -> MarkdownIt:
    # Raw HTML is parsed here so that it can be reported; pages never pass it through.
    parser = MarkdownIt("commonmark", {"html": True}).enable("table")
    parser.use(footnote_plugin, inline=False)
    parser.core.ruler.disable("footnote_tail")
    return parser


class Outline:
    """The blocks of a lesson's body, which begins at an offset of its source."""

    def __init__(self, source: Source, start: int) -> None:
        """Parse the body; everything else is looked up."""
        self._source = source
        # Blank lines in place of the front matter keep line numbers true.
        self._first_line = source.text.count("\n", 0, start)
        body = "\n" * self._first_line + source.text[start:]
        self._root = SyntaxTreeNode(_parser().parse(body))
        self._blocks = self._root.children

    # -- offsets ---------------------------------------------------------------------------

    def _offset(self, line: int) -> int:
        starts = self._source.line_starts
        return starts[line] if line < len(starts) else len(self._source.text)

    def _span(self, node: SyntaxTreeNode) -> Span:
        begin, end = node.map or (0, 0)
        start = self._offset(begin)
        text = self._source.text[start : self._offset(end)]
        lead = len(text) - len(text.lstrip())
        return Span(start + lead, start + len(text.rstrip()))

    def _lines(self, node: SyntaxTreeNode) -> list[Text]:
        """Return the lines of an inline node's content, each with its place."""
        inline = node if node.type == "inline" else node.children[0]
        begin = (inline.map or (0, 0))[0]
        return [
            self._find(content, begin + index)
            for index, content in enumerate(inline.content.split("\n"))
        ]

    def _find(self, content: str, line: int) -> Text:
        start = self._offset(line)
        written = self._source.line(line + 1)
        content = content.strip()
        at = written.rfind(content)
        at = max(at, 0)
        return Text(content, Span(start + at, start + at + len(content)))

    # -- parts -----------------------------------------------------------------------------

    def intro(self) -> Prose:
        """Return the text before the first heading."""
        first = next((i for i, n in enumerate(self._blocks) if n.type == "heading"), None)
        return self._prose(self._blocks[:first])

    def parts(self) -> tuple[Part, ...]:
        """Return the `##` parts with their inner headings (a `#` counts as one)."""
        first = next((i for i, n in enumerate(self._blocks) if n.type == "heading"), None)
        return () if first is None else self._parts(self._blocks[first:])

    def _parts(self, blocks: Sequence[SyntaxTreeNode]) -> tuple[Part, ...]:
        parts: list[Part] = []
        at = 0
        while at < len(blocks):
            level = _level(blocks[at])
            end = at + 1
            while end < len(blocks) and not 0 < _level(blocks[end]) <= level:
                end += 1
            parts.append(self._part(level, blocks[at:end]))
            at = end
        return tuple(parts)

    def _part(self, level: int, blocks: Sequence[SyntaxTreeNode]) -> Part:
        own = list(blocks[1:])
        first = next((i for i, node in enumerate(own) if _level(node)), len(own))
        outer, inner = own[:first], own[first:]
        lists = [node for node in outer if node.type in {"bullet_list", "ordered_list"}]
        before = next((i for i, node in enumerate(outer) if node in lists), len(outer))
        heading = self._heading(blocks[0])
        return Part(
            level=level,
            heading=heading,
            lead=self._prose(outer[:before]),
            bullets=self._bullets([n for n in lists if n.type == "bullet_list"]),
            numbered=self._bullets([n for n in lists if n.type == "ordered_list"]),
            rest=self._prose(own, heading.span.end),
            inner=self._parts(inner) if inner else (),
        )

    def _heading(self, node: SyntaxTreeNode) -> Text:
        if node.children and node.children[0].content:
            return self._lines(node)[0]
        span = self._span(node)
        return Text("", span)

    def _bullets(self, lists: Sequence[SyntaxTreeNode]) -> tuple[Bullet, ...]:
        return tuple(self._bullet(item) for node in lists for item in node.children)

    def _bullet(self, item: SyntaxTreeNode) -> Bullet:
        span = self._span(item)
        blocks = list(item.children)
        if not blocks or blocks[0].type != "paragraph":
            empty = Text("", Span(span.start, span.start))
            note = self._prose(blocks)
            return Bullet(
                None,
                bold=False,
                value=empty,
                note=note,
                inner=(),
                quote=NO_PROSE,
                citations=(),
                span=span,
            )
        first, *rest = self._lines(blocks[0])
        label, bold, value = _take_apart(first)
        lists = [node for node in blocks[1:] if node.type == "bullet_list"]
        quotes = [node for node in blocks[1:] if node.type == "blockquote"]
        others = [node for node in blocks[1:] if node not in lists and node not in quotes]
        return Bullet(
            label=label,
            bold=bold,
            value=Text(_without_citations(value.value), value.span),
            note=self._note(rest, others),
            inner=self._bullets(lists),
            quote=self._quote(quotes),
            citations=tuple(citations_in(self._source, span)),
            span=span,
        )

    def _note(self, lines: Sequence[Text], blocks: Sequence[SyntaxTreeNode]) -> Prose:
        more = self._prose(blocks)
        words = "\n".join(line.value for line in lines)
        text = "\n\n".join(piece for piece in (words, more.text) if piece)
        if not text:
            return NO_PROSE
        start = lines[0].span.start if lines else more.span.start
        return Prose(text, Span(start, more.span.end if more else lines[-1].span.end))

    def _quote(self, quotes: Sequence[SyntaxTreeNode]) -> Prose:
        inside = [
            "\n".join(line.value for line in self._lines(node))
            for quote in quotes
            for node in quote.children
            if node.type == "paragraph"
        ]
        if not inside:
            return NO_PROSE
        return Prose("\n\n".join(inside), self._span(quotes[0]))

    def _prose(self, blocks: Sequence[SyntaxTreeNode], near: int = 0) -> Prose:
        kept = [node for node in blocks if node.type != "footnote_reference" and node.map]
        if not kept:
            return Prose("", Span(near, near))
        pieces = [self._dedented(node) for node in kept]
        span = Span(self._span(kept[0]).start, self._span(kept[-1]).end)
        return Prose("\n\n".join(pieces), span)

    def _dedented(self, node: SyntaxTreeNode) -> str:
        begin, end = node.map or (0, 0)
        lines = self._source.text[self._offset(begin) : self._offset(end)].split("\n")
        indent = min((len(x) - len(x.lstrip()) for x in lines if x.strip()), default=0)
        return "\n".join(line[indent:] for line in lines).strip("\n")

    # -- what may stand anywhere -----------------------------------------------------------

    def footnotes(self) -> Iterator[Footnote]:
        """Yield the footnote definitions, wherever they stand."""
        for node in self._root.walk():
            if node.type == "footnote_reference":
                span = self._span(node)
                written = self._source.words(span)
                text = " ".join(_DEFINITION.sub("", written, count=1).split())
                yield Footnote(str(node.meta["label"]), text, span)

    def links(self) -> Iterator[Link]:
        """Yield the links and inline pictures of the prose."""
        for node in self._root.walk():
            if node.type != "inline" or node.map is None:
                continue
            start, end = self._offset(node.map[0]), self._offset(node.map[1])
            for inner in node.walk():
                target = inner.attrs.get("href") or inner.attrs.get("src")
                if inner.type in {"link", "image"} and isinstance(target, str):
                    at = self._source.text.find(target, start, end)
                    span = Span(at, at + len(target)) if at >= 0 else Span(start, start)
                    yield Link(target, span, inner.type == "image")

    def raw_html(self) -> Iterator[Text]:
        """Yield each run of raw HTML."""
        for node in self._root.walk():
            if node.type == "html_block":
                span = self._span(node)
                yield Text(self._source.words(span), span)
            elif node.type == "inline" and node.map:
                yield from self._inline_html(node, self._offset(node.map[0]))

    def _inline_html(self, inline: SyntaxTreeNode, at: int) -> Iterator[Text]:
        for node in inline.walk():
            if node.type == "html_inline":
                found = self._source.text.find(node.content, at)
                at = max(found, at)
                yield Text(node.content, Span(at, at + len(node.content)))
                at += len(node.content)


def citations_in(source: Source, span: Span) -> Iterator[Citation]:
    """Yield the references to footnotes in a run of the text."""
    for match in CITATION.finditer(source.text, span.start, span.end):
        yield Citation(match[1], Span(match.start(), match.end()))


def _level(node: SyntaxTreeNode) -> int:
    return int(node.tag[1]) if node.type == "heading" else 0


def _take_apart(line: Text) -> tuple[Text | None, bool, Text]:
    match = _LABEL.match(line.value)
    if match is None:
        return None, False, line
    start = line.span.start
    label = Text(
        match["label"].strip(), Span(start + match.start("label"), start + match.end("label"))
    )
    value = match["value"]
    at = start + match.start("value")
    return label, bool(match["open"]), Text(value, Span(at, at + len(value)))


def _without_citations(value: str) -> str:
    return CITATION.sub(lambda match: " " * len(match[0]), value).rstrip()
