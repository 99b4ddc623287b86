"""YAML in which every scalar stays a string and every node knows where it stands.

YAML 1.1 reads `No` as false, `1:30` as 90 and `4-9` now and then as a date. A lesson's
writer means the letters she typed, so nothing is resolved here; anchors and aliases are
refused because a few lines of them can expand to gigabytes.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, Final

import yaml

from sallet.source import Span, Text

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

DEEPEST: Final = 12
"""Levels of nesting. A course file has four; past this the parser would recurse for nothing."""
TRIES: Final = 20
"""Broken lines that are set aside, one by one, so that the lines around them are still read."""


_OPENED: Final = ("flow sequence", "flow mapping", "quoted scalar", "flow node", "simple key")
_UNREADABLE: Final = "it is not of the form `key: value`"
_PLAIN: Final = {
    "mapping values are not allowed": "it holds a second colon followed by a space",
    "could not find expected ':'": "there is no colon behind its first word",
    "'\\t'": "it holds a tab; expected spaces",
    "expected ',' or ']'": "its bracket `[` is not closed",
    "expected ',' or '}'": "its bracket `{` is not closed",
    "unexpected end of stream": "its quotation mark is not closed",
    "not allowed": "it holds a character that is no text",
    "cannot start any token": "its value begins with a sign that needs quotation marks",
    "expected <block end>": "its value ends too early, or it is indented unlike its neighbours",
    "block sequence entries": "it begins with `- ` where a word was expected",
    "single document": "it begins a second list of keys",
}
"""What the parser says, in the words of somebody who writes lessons."""


@dataclass(frozen=True)
class Entry:
    """A key of a mapping and its node."""

    key: Text
    node: Node


@dataclass(frozen=True)
class Node:
    """A YAML node: exactly one of `text`, `items` and `entries` is not None."""

    span: Span
    text: str | None = None
    items: tuple[Node, ...] | None = None
    entries: tuple[Entry, ...] | None = None

    def plain(self) -> Any:
        """Return the node as strings, lists and dictionaries; of two equal keys the first."""
        if self.entries is not None:
            plain: dict[str, Any] = {}
            for entry in self.entries:
                plain.setdefault(entry.key.value, entry.node.plain())
            return plain
        if self.items is not None:
            return [item.plain() for item in self.items]
        return self.text

    def child(self, step: str | int) -> Node | None:
        """Return the node one step inside, by key or index."""
        if self.entries is not None:
            return next((e.node for e in self.entries if e.key.value == step), None)
        if self.items is not None and isinstance(step, int) and step < len(self.items):
            return self.items[step]
        return None

    def reach(self, path: Sequence[str | int]) -> Node:
        """Return the node at the end of a path, or the last one that exists on the way."""
        node = self
        for step in path:
            inner = node.child(step)
            if inner is None:
                break
            node = inner
        return node

    def key(self, name: str) -> Text | None:
        """Return a key of this mapping as it stands in the text."""
        return next((e.key for e in self.entries or () if e.key.value == name), None)


@dataclass(frozen=True)
class YamlFault:
    """What is wrong with a YAML text, and where."""

    message: str
    hint: str
    span: Span


class _Refused(Exception):
    def __init__(self, fault: YamlFault) -> None:
        super().__init__(fault.message)
        self.fault = fault


class _Composer(yaml.SafeLoader):
    depth = 0

    def compose_node(self, parent: Any, index: Any) -> Any:
        event: Any = self.peek_event()  # type: ignore[no-untyped-call]
        if getattr(event, "anchor", None):  # an alias event carries its anchor's name too
            raise _Refused(_alias(event))
        self.depth += 1
        if self.depth > DEEPEST:
            raise _Refused(_too_deep(event))
        node = super().compose_node(parent, index)
        self.depth -= 1
        return node


def _alias(event: Any) -> YamlFault:
    span = Span(event.start_mark.index, event.end_mark.index)
    return YamlFault(
        "`&` and `*` at the start of a value are anchors and aliases; expected plain words",
        "put the value in quotation marks, or write it out",
        span,
    )


def _too_deep(event: Any) -> YamlFault:
    span = Span(event.start_mark.index, event.end_mark.index)
    return YamlFault(
        f"nested more than {DEEPEST} levels deep", "write it with fewer brackets or indents", span
    )


def read_yaml(text: str, start: int = 0) -> tuple[Node, tuple[YamlFault, ...]]:
    """Return a YAML mapping and its faults; spans count from `start`.

    Never raises: a line that is no YAML is reported and set aside, and the rest is read.
    """
    faults: list[YamlFault] = []
    lines = text
    for _ in range(TRIES):
        try:
            raw = _compose(lines)
        except _Refused as refused:
            faults.append(_moved(refused.fault, start))
            lines = _blanked(lines, refused.fault.span.start)
        except yaml.YAMLError as error:
            fault = _syntax_fault(lines, error)
            faults.append(_moved(fault, start))
            lines = _blanked(lines, fault.span.start)
        else:
            node = _mapping(raw, len(text), start, faults)
            faults.extend(_repeated_keys(node))
            return node, tuple(faults)
    return _mapping(None, len(text), start, []), tuple(faults)


def _compose(text: str) -> Any:
    loader = _Composer(text)
    try:
        return loader.get_single_node()
    finally:
        loader.dispose()


def _mapping(raw: Any, length: int, start: int, faults: list[YamlFault]) -> Node:
    if raw is None:
        return Node(Span(start, start + length), entries=())
    node = _node(raw, start)
    if node.entries is None:
        message = "expected lines of the form `key: value`"
        faults.append(YamlFault(message, "write a key, a colon, a space and the value", node.span))
        return Node(node.span, entries=())
    return node


def _node(raw: Any, start: int) -> Node:
    span = Span(raw.start_mark.index + start, raw.end_mark.index + start)
    if isinstance(raw, yaml.MappingNode):
        entries = tuple(Entry(_key(k, start), _node(v, start)) for k, v in raw.value)
        return Node(span, entries=entries)
    if isinstance(raw, yaml.SequenceNode):
        return Node(span, items=tuple(_node(item, start) for item in raw.value))
    return Node(span, text=str(raw.value))


def _key(raw: Any, start: int) -> Text:
    span = Span(raw.start_mark.index + start, raw.end_mark.index + start)
    return Text(raw.value if isinstance(raw.value, str) else "?", span)


def _repeated_keys(node: Node) -> Iterator[YamlFault]:
    seen: set[str] = set()
    for entry in node.entries or ():
        if entry.key.value in seen:
            message = f"the key `{entry.key.value}` stands twice"
            yield YamlFault(message, "keep one of the two lines", entry.key.span)
        seen.add(entry.key.value)
        yield from _repeated_keys(entry.node)
    for item in node.items or ():
        yield from _repeated_keys(item)


def _syntax_fault(text: str, error: yaml.YAMLError) -> YamlFault:
    mark = _mark(error)
    at = min(mark.index, max(len(text.rstrip()) - 1, 0)) if mark else getattr(error, "position", 0)
    problem = str(getattr(error, "problem", None) or getattr(error, "reason", ""))
    if "mapping values" in problem and (above := _without_colon_above(text, at)) is not None:
        at, problem = above, "could not find expected ':'"
    plain = next((words for part, words in _PLAIN.items() if part in problem), _UNREADABLE)
    hint = "write `key: value`; put a value that holds `: `, `#` or brackets in quotation marks"
    return YamlFault(f"this line cannot be read: {plain}", hint, Span(at, at + 1))


def _without_colon_above(text: str, at: int) -> int | None:
    """Return where the line above begins, if it is what lacks a colon and runs on into this one."""
    start = text.rfind("\n", 0, at) + 1
    above = text[:start].rstrip()
    begin = above.rfind("\n") + 1
    if ":" in text[start:at] or not above or ":" in above[begin:]:
        return None
    return begin


def _mark(error: yaml.YAMLError) -> Any:
    # An open bracket or quotation mark is noticed lines later: the line that opens it is at fault.
    context = str(getattr(error, "context", None) or "")
    marks = [getattr(error, "problem_mark", None), getattr(error, "context_mark", None)]
    if any(opened in context for opened in _OPENED):
        marks.reverse()
    return marks[0] or marks[1]


def _moved(fault: YamlFault, by: int) -> YamlFault:
    span = Span(fault.span.start + by, fault.span.end + by)
    return YamlFault(fault.message, fault.hint, span)


def _blanked(text: str, offset: int) -> str:
    start = text.rfind("\n", 0, offset) + 1
    end = text.find("\n", offset)
    end = len(text) if end < 0 else end
    return text[:start] + " " * (end - start) + text[end:]
