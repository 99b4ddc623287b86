"""The words beside the Latin ones of a scientific name."""

from __future__ import annotations

import pytest

from sallet.lesson.name_words import (
    MISSPELT_RANKS,
    RANKS,
    is_author,
    is_bare_epithet,
    is_shortened,
    is_sign,
    words_of,
)


def test_a_sign_is_a_word_of_its_own() -> None:
    assert [w.value for w in words_of("Salix ×capreola")] == ["Salix", "×", "capreola"]
    assert [w.value for w in words_of("xAgropogon")] == ["x", "Agropogon"]


def test_an_x_inside_a_word_is_no_sign() -> None:
    assert [w.value for w in words_of("Salix xanthina")] == ["Salix", "xanthina"]


def test_the_letter_x_is_let_pass_as_a_sign() -> None:
    assert is_sign("x")
    assert is_sign("×")
    assert not is_sign("X.")


@pytest.mark.parametrize("word", ["L.", "(Poir.)", "DC", "ex", "&", "'Alba'", "d'Urv."])
def test_authors_and_what_stands_between_them(word: str) -> None:
    assert is_author(word)


@pytest.mark.parametrize("word", ["Weihe", "ursinum", "URSINUM"])
def test_what_may_be_an_epithet_is_not_taken_for_an_author(word: str) -> None:
    assert not is_author(word)


@pytest.mark.parametrize(
    ("word", "bare"),
    [("ursinum", True), ("bella-donna", True), ("von", False), ("de", False), ("L.", False),
     ("Weihe", False)],
)  # fmt: skip
def test_a_bare_epithet(word: str, bare: bool) -> None:  # noqa: FBT001
    assert is_bare_epithet(word) is bare


def test_a_genus_by_its_initial() -> None:
    assert is_shortened("A.")
    assert not is_shortened("Al")


def test_every_misspelt_rank_is_offered_a_rank() -> None:
    assert set(MISSPELT_RANKS.values()) <= set(RANKS)
