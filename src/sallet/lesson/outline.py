"""Markdown → the parts of a lesson: each heading with its bullets and the text between."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from sallet.lesson.blocks import Bullet, Part, joined, take_apart
from sallet.lesson.citations import citations_in, without_citations
from sallet.lesson.markup import Markup
from sallet.lesson.model import Prose
from sallet.lesson.sections import section_named
from sallet.source import Span, Text

if TYPE_CHECKING:
    from collections.abc import Sequence

    from markdown_it.tree import SyntaxTreeNode

_LISTS: Final = ("bullet_list", "ordered_list")
_QUOTED: Final = re.compile(r"^ {0,3}> ?", re.MULTILINE)
_TOP: Final = 2
"""The rank of a section's heading."""


class Outline(Markup):
    """The parts of a lesson's body, which begins at an offset of its source."""

    def intro(self) -> Prose:
        """Return the text before the first section; a `#` with the plant's name is passed over."""
        title, first = self._title_and_first()
        blocks = self.root.children
        return self._text([*blocks[:title], *blocks[title + 1 : first]])

    def parts(self) -> tuple[Part, ...]:
        """Return the `##` parts with their inner headings (a `#` counts as one)."""
        _, first = self._title_and_first()
        return self._parts(self.root.children[first:], _TOP)

    def _title_and_first(self) -> tuple[int, int]:
        blocks = self.root.children
        headings = [i for i, node in enumerate(blocks) if _level(node)]
        ends = [*headings, len(blocks), len(blocks)]
        title = ends[0]
        if title < len(blocks) and self._is_title(blocks[title]):
            return title, ends[1]
        return title, title

    def _is_title(self, node: SyntaxTreeNode) -> bool:
        return _level(node) == 1 and not section_named(self._heading(node).value)

    # -- parts -----------------------------------------------------------------------------

    def _parts(self, blocks: Sequence[SyntaxTreeNode], top: int = 0) -> tuple[Part, ...]:
        parts: list[Part] = []
        at = 0
        while at < len(blocks):
            level = max(_level(blocks[at]), top)
            end = at + 1
            while end < len(blocks) and not 0 < _level(blocks[end]) <= level:
                end += 1
            parts.append(self._part(_level(blocks[at]), blocks[at:end]))
            at = end
        return tuple(parts)

    def _part(self, level: int, blocks: Sequence[SyntaxTreeNode]) -> Part:
        own = blocks[1:]
        first = next((i for i, node in enumerate(own) if _level(node)), len(own))
        outer = own[:first]
        heading = self._heading(blocks[0])
        steps = [node for node in outer if node.type == "ordered_list"]
        return Part(
            level=level,
            heading=heading,
            texts=self._prose([node for node in outer if node.type not in _LISTS]),
            steps=self._prose(steps),
            bullets=self._bullets([node for node in outer if node.type == "bullet_list"]),
            numbered=self._bullets(steps),
            blocks=self._prose(own),
            inner=self._parts(own[first:]),
        )

    def _heading(self, node: SyntaxTreeNode) -> Text:
        if node.children and node.children[0].content:
            return self.lines(node)[0]
        return Text("", self.span(node))

    # -- bullets ---------------------------------------------------------------------------

    def _bullets(self, lists: Sequence[SyntaxTreeNode]) -> tuple[Bullet, ...]:
        return tuple(self._bullet(item) for node in lists for item in node.children)

    def _bullet(self, item: SyntaxTreeNode) -> Bullet:
        span = self.span(item)
        blocks = item.children
        lines = [Text("", Span(span.start, span.start))]
        if blocks and blocks[0].type == "paragraph":
            lines, blocks = self.lines(blocks[0]), blocks[1:]
        label, bold, value = take_apart(lines[0])
        quotes = [node for node in blocks if node.type == "blockquote"]
        lists = [node for node in blocks if node.type == "bullet_list"]
        others = [node for node in blocks if node not in quotes and node not in lists]
        return Bullet(
            line=lines[0],
            label=label,
            bold=bold,
            value=Text(without_citations(value.value), value.span),
            note=self._note(lines[1:], others),
            inner=self._bullets(lists),
            quote=self._quote(quotes),
            citations=tuple(citations_in(self.source, span)),
            span=span,
            written=self.prose(item).text,
        )

    def _note(self, lines: Sequence[Text], blocks: Sequence[SyntaxTreeNode]) -> Prose:
        if not lines:
            return self._text(blocks)
        words = "\n".join(line.value for line in lines)
        first = Prose(words, Span(lines[0].span.start, lines[-1].span.end))
        return joined((first, *self._prose(blocks)))

    def _quote(self, quotes: Sequence[SyntaxTreeNode]) -> Prose:
        return joined(
            Prose(_QUOTED.sub("", quote.text), quote.span) for quote in self._prose(quotes)
        )

    # -- text ------------------------------------------------------------------------------

    def _prose(self, blocks: Sequence[SyntaxTreeNode]) -> tuple[Prose, ...]:
        kept = (node for node in blocks if node.type != "footnote_reference" and node.map)
        return tuple(self.prose(node) for node in kept)

    def _text(self, blocks: Sequence[SyntaxTreeNode], near: int = 0) -> Prose:
        return joined(self._prose(blocks), near)


def _level(node: SyntaxTreeNode) -> int:
    return int(node.tag[1]) if node.type == "heading" else 0
