"""Texts and their places: what is decoded, what is refused, where an offset stands."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from sallet.source import LARGEST, Position, Source, Span, Text, Unreadable, decode

TEXTS = st.text(st.characters(exclude_categories=["Cs"], exclude_characters="\0"))


@pytest.mark.parametrize(
    ("data", "text"),
    [(b"", ""),
     (b"a\nb", "a\nb"),
     (b"a\r\nb\rc\n", "a\nb\nc\n"),
     (b"\xef\xbb\xbfa", "a"),
     ("Bärlauch – ☘".encode(), "Bärlauch – ☘"),
     (b"a" * LARGEST, "a" * LARGEST)],
    ids=["empty", "plain", "CRLF and CR", "BOM", "beyond ASCII", "a mebibyte"],
)  # fmt: skip
def test_utf_8_is_read_with_plain_line_ends_and_no_bom(data: bytes, text: str) -> None:
    assert decode(data) == text


@pytest.mark.parametrize(
    ("data", "message", "hint", "position"),
    [("a\nbc".encode("utf-16"), "the file is UTF-16; expected UTF-8",
      "save it again with the encoding UTF-8", Position(1, 1)),
     ("a".encode("utf-16-be"), "the file holds a NUL character; expected text",
      "delete the character, or save the file again as plain text", Position(1, 1)),
     (b"a\r\nb\rB\xe4rlauch", "the byte 0xe4 is not UTF-8",
      "save the file again with the encoding UTF-8", Position(3, 2)),
     (b"\xef\xbb\xbfab\n\xff", "the byte 0xff is not UTF-8",
      "save the file again with the encoding UTF-8", Position(2, 1)),
     (b"a\r\n\r\nbc\0", "the file holds a NUL character; expected text",
      "delete the character, or save the file again as plain text", Position(3, 3)),
     (b"a" * (LARGEST + 1), "the file is 1,048,577 bytes; expected at most 1,048,576",
      "keep one plant in a file, and pictures in files of their own", Position(1, 1))],
    ids=["UTF-16", "UTF-16 with no BOM", "Latin-1", "a wrong byte behind a BOM", "NUL", "too long"],
)  # fmt: skip
def test_anything_else_is_refused_with_its_place_and_what_to_do(
    data: bytes, message: str, hint: str, position: Position
) -> None:
    with pytest.raises(Unreadable) as refusal:
        decode(data)
    assert (refusal.value.message, refusal.value.hint) == (message, hint)
    assert refusal.value.position == position


def test_lines_and_columns_count_from_one_and_in_characters() -> None:
    source = Source("a.md", "né\n\n☘x")
    assert [source.position(offset) for offset in (0, 2, 3, 4, 5, 6)] == [
        Position(1, 1), Position(1, 3), Position(2, 1), Position(3, 1), Position(3, 2),
        Position(3, 3),
    ]  # fmt: skip
    assert [source.line(number) for number in (1, 2, 3)] == ["né", "", "☘x"]


def test_words_are_those_at_a_span() -> None:
    assert Source("a.md", "one two").words(Span(4, 7)) == "two"


def test_a_text_reads_as_its_words_and_is_true_where_it_has_any() -> None:
    assert str(Text("leaf", Span(0, 4))) == "leaf"
    assert Text("leaf", Span(0, 4))
    assert not Text("", Span(0, 0))


@given(TEXTS)
def test_every_offset_lies_on_the_line_that_its_position_names(text: str) -> None:
    source = Source("a.md", text.replace("\r", "\n"))
    for offset, char in enumerate(source.text):
        at = source.position(offset)
        line = f"{source.line(at.line)}\n"
        assert line[at.column - 1] == char


@given(st.binary(max_size=200))
def test_bytes_are_read_or_refused_and_nothing_else(data: bytes) -> None:
    try:
        text = decode(data)
    except Unreadable:
        return
    assert "\r" not in text
    assert "\0" not in text
