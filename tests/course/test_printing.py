"""The names of sizes and edges in course.yml, as a teacher may write them."""

from __future__ import annotations

from typing import Any, get_args

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import TypeAdapter, ValidationError

from sallet.course.printing import (
    CardField,
    CardName,
    Duplex,
    DuplexField,
    PaperField,
    PaperName,
    card_name,
)

FIELDS = [(CardField, CardName), (PaperField, PaperName), (DuplexField, Duplex)]


def read(kind: Any, words: object) -> Any:
    """Return a value; None where it is refused."""
    try:
        return TypeAdapter(kind).validate_python(words)
    except ValidationError:
        return None


@pytest.mark.parametrize(("kind", "names"), FIELDS)
def test_each_name_is_read_as_it_is_written(kind: Any, names: Any) -> None:
    assert [read(kind, name) for name in get_args(names)] == list(get_args(names))


@pytest.mark.parametrize(
    ("words", "name"),
    [("a6", "A6"), (" A7 ", "A7"), ("4x6 in", "4×6 in"), ("4×6", "4×6 in"), ('4 x 6"', "4×6 in"),
     ("4X6″", "4×6 in"), ("3 × 5 inches", "3×5 in"), ("3x5inch", "3×5 in"), ("3X5 IN", "3×5 in")],
)  # fmt: skip
def test_a_size_is_known_in_other_ways_of_writing_it(words: str, name: CardName) -> None:
    assert read(CardField, words) == name


@pytest.mark.parametrize(
    "words",
    [
        "A5",
        "A 6",
        "6x4 in",
        "4x6 cm",
        "4-6 in",
        "14x6 in",
        "4x6 in card",
        "4 by 6",
        "",
        6,
        ["A6"],
        None,
    ],
)
def test_what_is_no_size_of_a_card_is_refused(words: object) -> None:
    assert read(CardField, words) is None


def test_paper_and_edge_may_be_written_large_or_small() -> None:
    assert [read(PaperField, words) for words in ("a4", "LETTER", " letter ")] == [
        "A4", "Letter", "Letter",
    ]  # fmt: skip
    assert [read(DuplexField, words) for words in ("Long edge", "SHORT  EDGE", " long\nedge ")] == [
        "long edge", "short edge", "long edge",
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("kind", "words"),
    [(PaperField, "Legal"), (PaperField, "A 4"), (PaperField, 4), (DuplexField, "long"),
     (DuplexField, "longedge"), (DuplexField, "long-edge"), (DuplexField, True)],
)  # fmt: skip
def test_what_is_no_paper_and_no_edge_is_refused(kind: Any, words: object) -> None:
    assert read(kind, words) is None


@given(st.text(max_size=12))
def test_a_name_read_once_is_read_the_same_again(words: str) -> None:
    assert card_name(card_name(words)) == card_name(words)
