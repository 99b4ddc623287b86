"""The blocks of a lesson as the readers see them: headings, bullets, and the text between."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.lesson.model import NO_PROSE, Citation, Prose
from sallet.source import Span, Text

if TYPE_CHECKING:
    from collections.abc import Collection, Iterable, Iterator

_LABEL: Final = re.compile(
    r"""^(?P<open>\*\*|__)?                      # a bold label is a key feature
        (?P<label>[^:*_\[\]]+)
        (?:(?P<close>\*\*|__)[ \t]*)?
        :(?!//)                                  # the colon of an address ends no label
        (?(open)(?P<after>\*\*|__)?)[ \t]*
        (?P<value>.*)$""",
    re.VERBOSE,
)


@dataclass(frozen=True)
class Bullet:
    """A list item: its first line taken apart at the colon, what follows as its note."""

    line: Text
    """The first line as written."""
    label: Text | None
    bold: bool
    value: Text
    """Without citations; they are blanked so that offsets hold."""
    note: Prose
    inner: tuple[Bullet, ...]
    quote: Prose
    citations: tuple[Citation, ...]
    span: Span
    written: str
    """The whole item as Markdown, without the indent it stands at."""

    def is_labelled(self, words: Iterable[str]) -> bool:
        """Return whether the label is one of some words in lower case."""
        return self.label is not None and self.label.value.casefold() in words


@dataclass(frozen=True)
class Part:
    """A heading and what stands below it, up to the next heading of its rank or a higher one."""

    level: int
    heading: Text
    texts: tuple[Prose, ...]
    """The blocks before the first inner heading that are no list."""
    steps: tuple[Prose, ...]
    """The numbered lists among them, as text."""
    bullets: tuple[Bullet, ...]
    numbered: tuple[Bullet, ...]
    blocks: tuple[Prose, ...]
    """All blocks below the heading, inner headings and what stands below them too."""
    inner: tuple[Part, ...]

    @property
    def rest(self) -> Prose:
        """Return all text below the heading and its inner headings."""
        return self.rest_without(())

    @property
    def span(self) -> Span:
        """Return the run from the heading to the end of the part."""
        return Span(self.heading.span.start, max(self.rest.span.end, self.heading.span.end))

    @property
    def lead(self) -> Prose:
        """Return the text before the first inner heading, without the bullets."""
        return joined((*self.texts, *self.steps), self.heading.span.end)

    @property
    def listed(self) -> tuple[Bullet, ...]:
        """Return bullets and numbered items in their order: a writer may number her facts."""
        return tuple(sorted((*self.bullets, *self.numbered), key=lambda item: item.span))

    def rest_without(self, left_out: Collection[Bullet]) -> Prose:
        """Return all text below the heading but some of the bullets before an inner heading."""
        kept = [self._without(block, left_out) for block in self.blocks]
        return joined(kept, self.heading.span.end)

    def _without(self, block: Prose, left_out: Collection[Bullet]) -> Prose:
        run = block.span
        inside = [b for b in self.bullets if run.start <= b.span.start < run.end]
        kept = [bullet for bullet in inside if bullet not in left_out]
        if kept == inside:
            return block
        return Prose("\n".join(bullet.written for bullet in kept), run)

    def every_text(self, *, steps: bool) -> Iterator[Prose]:
        """Yield all text that is no bullet; an inner heading where it has such text below."""
        yield from sorted((*self.texts, *self.steps) if steps else self.texts, key=_place)
        for part in self.inner:
            below = tuple(part.every_text(steps=steps))
            if below:
                yield Prose(f"{'#' * part.level} {part.heading}", part.heading.span)
                yield from below


def _place(prose: Prose) -> Span:
    return prose.span


def joined(pieces: Iterable[Prose], near: int = 0) -> Prose:
    """Return pieces of text as one, in the order of their places."""
    kept = sorted((piece for piece in pieces if piece), key=_place)
    if not kept:
        return Prose("", Span(near, near)) if near else NO_PROSE
    text = "\n\n".join(piece.text for piece in kept)
    return Prose(text, Span(kept[0].span.start, kept[-1].span.end))


def take_apart(line: Text) -> tuple[Text | None, bool, Text]:
    """Return the label before a line's colon, whether it is bold, and the value behind it."""
    match = _LABEL.match(line.value)
    value = _value(match) if match else None
    if match is None or value is None or not match["label"].strip():
        return None, False, line
    label = _stripped(match["label"], line.span.start + match.start("label"))
    begin = line.span.start + match.start("value")
    return label, bool(match["open"]), Text(value, Span(begin, begin + len(value)))


def _value(match: re.Match[str]) -> str | None:
    """Return the value without the marks of bold print, or None where they do not pair."""
    mark, value = match["open"], match["value"]
    if mark == (match["close"] or match["after"]):
        return value
    # `**dogs: never feed it**`: the whole line is bold, its label too.
    return value.removesuffix(mark) if mark and value.endswith(mark) else None


def _stripped(words: str, start: int) -> Text:
    at = start + len(words) - len(words.lstrip())
    return Text(words.strip(), Span(at, at + len(words.strip())))
