"""Markdown → a tree of blocks, and the places of its words in the text.

markdown-it-py's tokens carry line ranges only, so the words of a paragraph are found again
in the lines it came from, once, here; whatever reads a lesson asks this module.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from markdown_it import MarkdownIt
from markdown_it.tree import SyntaxTreeNode
from mdit_py_plugins.footnote import footnote_plugin

from sallet.lesson.model import Footnote, Link, Prose
from sallet.source import Source, Span, Text

if TYPE_CHECKING:
    from collections.abc import Iterator

_DEFINITION: Final = re.compile(r"\[\^([^\]\s]+)\]:[ \t]*")


class _Parser(MarkdownIt):
    """Keeps every link as written: a check says which of them lead nowhere."""

    def validateLink(self, url: str) -> bool:  # noqa: ARG002, N802
        return True

    def normalizeLink(self, url: str) -> str:  # noqa: N802
        return url


def _parser() -> MarkdownIt:
    # Raw HTML is parsed here so that it can be reported; pages never pass it through.
    parser = _Parser("commonmark", {"html": True}).enable("table")
    parser.use(footnote_plugin, inline=False)
    parser.core.ruler.disable("footnote_tail")
    return parser


class Markup:
    """A lesson's body, which begins at an offset of its source, as Markdown blocks."""

    def __init__(self, source: Source, start: int) -> None:
        """Parse the body; everything else is looked up."""
        self.source = source
        # Blank lines in place of the front matter keep line numbers true.
        before = source.text.count("\n", 0, start)
        self.root = SyntaxTreeNode(_parser().parse("\n" * before + source.text[start:]))

    # -- places ----------------------------------------------------------------------------

    def offset(self, line: int) -> int:
        """Return where a line, counted from 0, begins."""
        starts = self.source.line_starts
        return starts[line] if line < len(starts) else len(self.source.text)

    def span(self, node: SyntaxTreeNode) -> Span:
        """Return the run of a block, without the blanks round it."""
        start, end = self._lines_of(node)
        text = self.source.text[start:end]
        lead = len(text) - len(text.lstrip())
        return Span(start + lead, start + max(lead, len(text.rstrip())))

    def _lines_of(self, node: SyntaxTreeNode) -> tuple[int, int]:
        begin, end = node.map or (0, 0)
        return self.offset(begin), self.offset(end)

    def lines(self, node: SyntaxTreeNode) -> list[Text]:
        """Return the lines of a paragraph's or heading's words, each with its place."""
        inline = node.children[0]
        begin = (inline.map or (0, 0))[0]
        words = inline.content.split("\n")
        return [self._find(content.strip(), begin + i) for i, content in enumerate(words)]

    def _find(self, content: str, line: int) -> Text:
        start = self.offset(line)
        at = max(self.source.line(line + 1).rfind(content), 0)
        return Text(content, Span(start + at, start + at + len(content)))

    def prose(self, node: SyntaxTreeNode) -> Prose:
        """Return a block as written, without the indent it stands at."""
        start, end = self._lines_of(node)
        lines = self.source.text[start:end].split("\n")
        indent = min((len(x) - len(x.lstrip()) for x in lines if x.strip()), default=0)
        return Prose("\n".join(line[indent:] for line in lines).strip("\n"), self.span(node))

    # -- what may stand anywhere -----------------------------------------------------------

    def footnotes(self) -> Iterator[Footnote]:
        """Yield the footnote definitions, wherever they stand."""
        for node in self.root.walk():
            if node.type == "footnote_reference":
                span = self.span(node)
                found = _DEFINITION.search(self.source.text, span.start, span.end)
                start, begin = found.span() if found else (span.start, span.start)
                words = self.source.text[begin : span.end]
                key = str(node.meta["label"])
                yield Footnote(key, " ".join(words.split()), Span(start, span.end))

    def links(self) -> Iterator[Link]:
        """Yield the links and inline pictures of the prose."""
        for inline in self._inlines():
            at, end = self._lines_of(inline)
            for node in _inside_first(inline):
                target = node.attrs.get("href", node.attrs.get("src"))
                if node.type in {"link", "image"} and isinstance(target, str):
                    written = target or "]("
                    found = self.source.text.find(written, at, end)
                    # A target that stands elsewhere, or with escapes, is shown at its block.
                    start, length = (at, 0) if found < 0 else (found, len(written))
                    at = start + length
                    yield Link(target, Span(start, at), node.type == "image")

    def raw_html(self) -> Iterator[Text]:
        """Yield each run of raw HTML."""
        for node in self.root.walk():
            if node.type == "html_block":
                span = self.span(node)
                yield Text(self.source.words(span), span)
        for inline in self._inlines():
            at, end = self._lines_of(inline)
            for node in inline.walk():
                if node.type == "html_inline":
                    found = self.source.text.find(node.content, at, end)
                    start = max(found, at)
                    at = start + len(node.content) if found >= 0 else at
                    yield Text(node.content, Span(start, at))

    def _inlines(self) -> Iterator[SyntaxTreeNode]:
        for node in self.root.walk():
            if node.type == "inline" and node.map:
                yield node


def _inside_first(node: SyntaxTreeNode) -> Iterator[SyntaxTreeNode]:
    # The target of a link is written behind the picture inside it.
    for child in node.children:
        yield from _inside_first(child)
    yield node
