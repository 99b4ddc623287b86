"""Words as they are typeset."""

from __future__ import annotations

from unicodedata import normalize

from hypothesis import given
from hypothesis import strategies as st

from sallet.typesetting.words import TURNING, all_printable, printable


@given(st.text())
def test_printable_words_are_composed_and_hold_nothing_hidden(words: str) -> None:
    found = printable(words)
    assert not TURNING & set(found)
    assert "\x00" not in found
    assert found == printable(found)
    kept = [c for c in normalize("NFC", words) if c.isprintable() and c not in TURNING]
    assert [c for c in found if c.isprintable()] == kept


def test_every_run_of_words_in_some_values_is_made_printable() -> None:
    data = {"a": "o\u202ene", "b": [{"c": "e\u0301"}, ("three", 4, None)], "d": True}
    assert all_printable(data) == {"a": "one", "b": [{"c": "é"}, ["three", 4, None]], "d": True}
