"""Spelling of Latin words, after Article 60.7 of the Shenzhen Code (2018)."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from sallet.lesson.latin import letters_only, mended, without_marks


@pytest.mark.parametrize(
    ("marked", "plain"),
    [("ä", "ae"), ("ö", "oe"), ("ü", "ue"), ("é", "e"), ("è", "e"), ("ê", "e"), ("ñ", "n"),
     ("ø", "oe"), ("å", "ao"), ("æ", "ae"), ("œ", "oe")],
)  # fmt: skip
def test_the_letters_that_article_60_7_names(marked: str, plain: str) -> None:
    assert without_marks(f"m{marked}lla") == f"m{plain}lla"


@pytest.mark.parametrize("word", ["Cephaëlis", "Isoëtes"])
def test_a_diaeresis_may_stay(word: str) -> None:
    """Article 60.7: its use is optional; both names are the Code's own examples."""
    assert without_marks(word) == word


def test_two_dots_behind_a_consonant_are_no_diaeresis() -> None:
    assert without_marks("muelleri") == "muelleri"
    assert without_marks("mülleri") == "muelleri"


def test_marks_that_the_code_does_not_name_are_dropped() -> None:
    """From memory: common practice, as `ç` in names after French places."""
    assert without_marks("françoisii") == "francoisii"


def test_a_letter_and_its_combining_mark_are_one_letter() -> None:
    assert without_marks("mu\u0308lleri") == "muelleri"


def test_a_capital_stays_one() -> None:
    assert without_marks("Ørstedia") == "Oerstedia"


def test_mended_is_in_lower_case_and_plain() -> None:
    assert mended("Mülleri") == "muelleri"


@pytest.mark.parametrize(
    ("word", "held"),
    [("bella-donna", True), ("ursinum", True), ("ursinum*", False), ("9bis", False),
     ("capillus-", False), ("o'brienii", False)],
)  # fmt: skip
def test_letters_only(word: str, held: bool) -> None:  # noqa: FBT001
    assert letters_only(word) is held


@given(st.from_regex(r"[a-zäöüéèñøåæœë-]{1,12}", fullmatch=True))
def test_what_was_mended_once_needs_no_mending_again(word: str) -> None:
    assert mended(mended(word)) == mended(word)
