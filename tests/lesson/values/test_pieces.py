"""Values cut into pieces, each with its qualifiers, and every place kept."""

from __future__ import annotations

import time

import pytest
from hypothesis import given, settings

from helpers.values import START, VALUES, VOCABULARY, text_of
from sallet.lesson.values.pieces import (
    COMMAS,
    COMMAS_AND_OR,
    COMMAS_OR,
    adverbs,
    qualified,
    split,
    split_numbers,
)
from sallet.source import Span, Text


def cut(words: str) -> list[tuple[str, list[str]]]:
    """Return each piece's words and its qualifiers."""
    return [(p.text.value, [q.value for q in p.qualifiers]) for p in split(text_of(words))]


@pytest.mark.parametrize(
    ("words", "pieces"),
    [("entire", [("entire", [])]),
     ("raw, cooked", [("raw", []), ("cooked", [])]),
     ("serrate or crenate", [("serrate", []), ("crenate", [])]),
     ("a, b and c; or d", [("a", []), ("b", []), ("c", []), ("d", [])]),
     ("three-lobed (lower leaves), none (upper leaves)",
      [("three-lobed", ["lower leaves"]), ("none", ["upper leaves"])]),
     ("red (in sun, when old) or green", [("red", ["in sun, when old"]), ("green", [])]),
     ("red (in sun) (old)", [("red", ["in sun", "old"])]),
     ("(lower leaves)", [("", ["lower leaves"])]),
     ("sandy", [("sandy", [])]),
     ("oar-shaped", [("oar-shaped", [])]),
     ("  a ,, b  ", [("a", []), ("b", [])]),
     ("pale   green", [("pale green", [])]),
     ("red (in sun", [("red (in sun", [])]),
     ("", [])],
)  # fmt: skip
def test_pieces_are_cut_at_commas_and_or_outside_parentheses(
    words: str, pieces: list[tuple[str, list[str]]]
) -> None:
    assert cut(words) == pieces


def test_each_piece_knows_its_place_with_and_without_its_qualifiers() -> None:
    words = "three-lobed (lower leaves),  none"
    lobed, none = split(text_of(words))
    assert lobed.text.span == Span(START, START + 11)
    assert lobed.qualifiers[0].span == Span(START + 13, START + 25)
    assert lobed.span == Span(START, START + 26)
    assert none.span == Span(START + 29, START + 33)


@pytest.mark.parametrize(
    ("words", "pieces"),
    [("(2–)5–25(–30) mm", [("(2–)5–25(–30) mm", 0)]),
     ("( 2 - ) 5 cm", [("( 2 - ) 5 cm", 0)]),
     ("5 cm (in 2027), 6 cm", [("5 cm", 1), ("6 cm", 0)])],
)  # fmt: skip
def test_a_floras_extremes_are_no_qualifiers(words: str, pieces: list[tuple[str, int]]) -> None:
    found = split_numbers(text_of(words), COMMAS)
    assert [(p.text.value, len(p.qualifiers)) for p in found] == pieces


@pytest.mark.parametrize(
    ("words", "names"),
    [("lower leaves", ["lower"]),
     ("Lower", ["lower"]),
     ("lower and upper leaves", ["lower", "upper"]),
     ("after a wet spring", [None]),
     ("lower leaves of wet years", [None])],
)  # fmt: skip
def test_a_list_of_known_qualifiers_is_one_and_anything_else_is_kept_whole(
    words: str, names: list[str | None]
) -> None:
    assert [q.name for q in qualified((text_of(words),), VOCABULARY)] == names


@pytest.mark.parametrize(
    ("words", "rest", "often"),
    [("usually serrate", "serrate", ["usually"]),
     ("serrate", "serrate", []),
     ("usually", "usually", []),
     ("lower serrate", "lower serrate", [])],
)  # fmt: skip
def test_words_of_frequency_in_front_are_qualifiers(
    words: str, rest: str, often: list[str]
) -> None:
    text, found = adverbs(text_of(words), VOCABULARY)
    assert (text.value, [q.words for q in found]) == (rest, often)
    assert text.span == Span(START + len(words) - len(rest), START + len(words))


@pytest.mark.parametrize("at", [COMMAS, COMMAS_OR, COMMAS_AND_OR])
@pytest.mark.parametrize("filling", [" ", "( ", "(1", "or ", "((", ", "])
def test_a_very_long_value_takes_no_very_long_time(at: object, filling: str) -> None:
    words = "a" + filling * 40_000 + "b"
    started = time.monotonic()
    split_numbers(text_of(words), at)  # type: ignore[arg-type]
    assert time.monotonic() - started < 5


@settings(max_examples=150, deadline=None)
@given(VALUES)
def test_pieces_lie_in_order_inside_the_text_and_hold_its_words(words: str) -> None:
    value = text_of(words)
    ends = [START]
    for piece in split(value):
        assert ends[-1] <= piece.span.start <= piece.span.end <= value.span.end
        ends.append(piece.span.end)
        for qualifier in piece.qualifiers:
            assert _at(value, qualifier.span).strip() == qualifier.value
        if not piece.qualifiers:
            assert " ".join(_at(value, piece.span).split()) == piece.text.value


def _at(value: Text, span: Span) -> str:
    return value.value[span.start - START : span.end - START]
