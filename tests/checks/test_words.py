"""How checks put words together."""

from __future__ import annotations

import pytest

from sallet.checks.words import did_you_mean, listed, shown


@pytest.mark.parametrize(
    ("words", "text"),
    [([], ""), (["a"], "`a`"), (["a", "b"], "`a` or `b`"), (["a", "b", "c"], "`a`, `b` or `c`")],
)
def test_words_are_listed_as_one_says_them(words: list[str], text: str) -> None:
    assert listed(words) == text


def test_the_last_two_may_be_joined_by_another_word() -> None:
    assert listed(["a", "b"], "and") == "`a` and `b`"


def test_the_nearest_terms_are_offered_where_there_are_some() -> None:
    assert did_you_mean(["entire", "even"], "look it up") == "did you mean `entire` or `even`?"
    assert did_you_mean([], "look it up") == "look it up"


@pytest.mark.parametrize(
    ("words", "text"),
    [("entyre", "`entyre`"),
     ("two\n  lines", "`two lines`"),
     ("a `word` of code", "`a 'word' of code`"),
     ("x" * 60, f"`{'x' * 60}`"),
     ("x" * 61, f"`{'x' * 60}…`"),
     ("y" * 59 + " and more", f"`{'y' * 59}…`"),
     ("", "``")],
)  # fmt: skip
def test_words_at_fault_are_shown_on_one_line_cut_short(words: str, text: str) -> None:
    assert shown(words) == text
