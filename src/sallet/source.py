"""A text with its path, and the only place that turns offsets into lines and columns."""

from __future__ import annotations

from bisect import bisect_right
from codecs import BOM_UTF8, BOM_UTF16_BE, BOM_UTF16_LE
from dataclasses import dataclass
from functools import cached_property
from typing import Final

LARGEST: Final = 1024 * 1024
"""Bytes. A plant lesson is some ten thousand; a file past this is not one."""


@dataclass(frozen=True, order=True)
class Span:
    """A half-open run of characters, as offsets into a source's text."""

    start: int
    end: int


@dataclass(frozen=True)
class Text:
    """Some words of a source and where they stand."""

    value: str
    span: Span

    def __str__(self) -> str:
        return self.value

    def __bool__(self) -> bool:
        return bool(self.value)


@dataclass(frozen=True)
class Position:
    """Line and column, both counted from 1; columns count characters, not bytes."""

    line: int
    column: int


class Unreadable(Exception):
    """The bytes of a file are not a text that sallet reads; says where and what to do."""

    def __init__(self, message: str, hint: str, offset: int = 0, before: str = "") -> None:
        super().__init__(message)
        self.message = message
        self.hint = hint
        source = Source("", before)
        self.position = source.position(min(offset, len(before)))


@dataclass(frozen=True)
class Source:
    """A file's path, as shown to its writer, and its text with plain line ends and no BOM."""

    path: str
    text: str

    @cached_property
    def line_starts(self) -> list[int]:
        """Return the offset at which each line begins."""
        return [0, *(i + 1 for i, char in enumerate(self.text) if char == "\n")]

    def position(self, offset: int) -> Position:
        """Return the line and column of an offset."""
        line = bisect_right(self.line_starts, offset)
        return Position(line, offset - self.line_starts[line - 1] + 1)

    def line(self, number: int) -> str:
        """Return a line, counted from 1, without its line end."""
        start = self.line_starts[number - 1]
        end = self.text.find("\n", start)
        return self.text[start : len(self.text) if end < 0 else end]

    def words(self, span: Span) -> str:
        """Return the words at a span."""
        return self.text[span.start : span.end]


def decode(data: bytes) -> str:
    """Return a file's text, without BOM and with plain line ends.

    Raises Unreadable for another encoding than UTF-8, for a NUL and for over a mebibyte.
    """
    if len(data) > LARGEST:
        raise Unreadable(
            f"the file is {len(data):,} bytes; expected at most {LARGEST:,}",
            "keep one plant in a file, and pictures in files of their own",
        )
    if data.startswith((BOM_UTF16_LE, BOM_UTF16_BE)):
        raise Unreadable(
            "the file is UTF-16; expected UTF-8",
            "save it again with the encoding UTF-8",
        )
    data = data.removeprefix(BOM_UTF8)
    try:
        text = _plain_line_ends(data.decode("utf-8"))
    except UnicodeDecodeError as error:
        before = _plain_line_ends(data[: error.start].decode("utf-8"))
        byte = data[error.start]
        raise Unreadable(
            f"the byte {byte:#04x} is not UTF-8",
            "save the file again with the encoding UTF-8",
            len(before),
            before,
        ) from None
    if "\0" in text:
        at = text.index("\0")
        raise Unreadable(
            "the file holds a NUL character; expected text",
            "delete the character, or save the file again as plain text",
            at,
            text[:at],
        )
    return text


def _plain_line_ends(text: str) -> str:
    return text.replace("\r\n", "\n").replace("\r", "\n")
