"""Promises of a cure, and words that only report one."""

from __future__ import annotations

import time

import pytest

from sallet.lesson.claims import claims_in, is_hedged
from sallet.source import Span, Text


def claims(words: str) -> list[tuple[int, str]]:
    """Return the claims of a passage with their places."""
    found = claims_in(Text(words, Span(0, len(words))))
    return [(claim.span.start, claim.value) for claim in found]


@pytest.mark.parametrize(
    ("words", "found"),
    [("It cures coughs.", [(3, "cures")]),
     ("A remedy\nfor coughs.", [(2, "remedy for")]),
     ("It HEALS burns and relieves pain.", [(3, "HEALS"), (19, "relieves")]),
     ("It treats fever.", [(3, "treats")])],
)  # fmt: skip
def test_a_promise_is_found_at_its_place(words: str, found: list[tuple[int, str]]) -> None:
    assert claims(words) == found


@pytest.mark.parametrize(
    "words",
    ["No: it never heals.", "It does not cure coughs.",
     "No tea of it cures a cold.", "It doesn’t heal.", "Nobody treats it as food."],
)  # fmt: skip
def test_a_denial_is_none(words: str) -> None:
    assert claims(words) == []


def test_a_denial_ends_with_its_sentence() -> None:
    assert claims("It is not food.[^a] It cures coughs.") == [(23, "cures")]


def test_not_only_and_no_doubt_deny_nothing() -> None:
    assert claims("It not only cures coughs.") == [(12, "cures")]
    assert claims("No doubt it cures coughs.") == [(12, "cures")]


@pytest.mark.parametrize("words", ["Self-heal and all-heal.", "cured ham", "as treats", "secure"])
def test_other_words_are_no_promise(words: str) -> None:
    assert claims(words) == []


@pytest.mark.parametrize(
    ("words", "hedged"),
    [("Traditionally a remedy for coughs.", True), ("It is said to heal.", True),
     ("It was used for coughs.", True), ("A trial found no effect.", True),
     ("It cures coughs.", False), ("An untraditional remedy.", False)],
)  # fmt: skip
def test_a_hedge_says_whose_claim_it_is(words: str, hedged: bool) -> None:  # noqa: FBT001
    assert is_hedged(words) is hedged


@pytest.mark.parametrize("piece", ["it cures ", "not only it cures ", "It cures. ", "remedy "])
def test_a_long_passage_takes_no_long_time(piece: str) -> None:
    start = time.monotonic()
    claims(piece * 50_000)
    assert time.monotonic() - start < 5
