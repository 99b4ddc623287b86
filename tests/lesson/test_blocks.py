"""Bullets and parts: the label before the colon, and the text between the bullets."""

from __future__ import annotations

import time

import pytest

from sallet.lesson.blocks import joined, take_apart
from sallet.lesson.model import NO_PROSE, Prose
from sallet.source import Span, Text


def apart(line: str) -> tuple[str | None, bool, str]:
    """Return a line's label, whether it is bold, and its value."""
    label, bold, value = take_apart(Text(line, Span(10, 10 + len(line))))
    return label.value if label else None, bold, value.value


@pytest.mark.parametrize(
    ("line", "expected"),
    [("margin: entire", ("margin", False, "entire")),
     ("margin :  entire", ("margin", False, "entire")),
     ("margin:entire", ("margin", False, "entire")),
     ("margin:", ("margin", False, "")),
     ("**margin**: entire", ("margin", True, "entire")),
     ("**margin:** entire", ("margin", True, "entire")),
     ("__margin__: entire", ("margin", True, "entire")),
     ("**margin** : entire", ("margin", True, "entire")),
     ("**dogs: never feed it**", ("dogs", True, "never feed it")),
     ("dogs: **never**", ("dogs", False, "**never**")),
     ("see: also: this", ("see", False, "also: this")),
     ("flowers in a cluster: 6", ("flowers in a cluster", False, "6"))],
)  # fmt: skip
def test_the_label_is_what_stands_before_the_first_colon(
    line: str, expected: tuple[str, bool, str]
) -> None:
    assert apart(line) == expected


@pytest.mark.parametrize(
    "line",
    ["toothed all round", "see https://example.org/", "[ ] Pick both: the smell settles it",
     ": entire", "", "*margin*: entire", "margin[^a]: entire", "**margin: entire", "**", ":"],
)  # fmt: skip
def test_a_line_without_a_label_is_all_value(line: str) -> None:
    assert apart(line) == (None, False, line)


@pytest.mark.parametrize("line", ["**smell when crushed**:  garlic", " margin : entire"])
def test_label_and_value_know_their_places(line: str) -> None:
    label, _, value = take_apart(Text(line, Span(10, 10 + len(line))))
    for words in (label, value):
        assert words is not None
        assert line[words.span.start - 10 : words.span.end - 10] == words.value


@pytest.mark.parametrize("filling", [" ", "a", "*", "_", "**", ": ", "["])
def test_a_very_long_line_takes_no_very_long_time(filling: str) -> None:
    started = time.monotonic()
    apart("**a" + filling * 100_000 + "[")
    apart("a" + filling * 100_000 + "[")
    assert time.monotonic() - started < 5


def test_pieces_of_text_are_joined_in_the_order_of_their_places() -> None:
    pieces = [Prose("two", Span(8, 11)), NO_PROSE, Prose("one", Span(2, 5))]
    assert joined(pieces) == Prose("one\n\ntwo", Span(2, 11))
    assert joined([]) == NO_PROSE
    assert joined([], 7) == Prose("", Span(7, 7))
