"""Which letters can be printed is asked of the engine."""

from __future__ import annotations

from unicodedata import normalize

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from sallet.typesetting import letters
from sallet.typesetting.engine import typeset
from sallet.typesetting.jobs import Job, Untypeset
from sallet.typesetting.letters import LOST, legible, missing_letters
from sallet.typesetting.words import printable


def test_pictographs_and_far_scripts_are_missing_and_named_one_by_one() -> None:
    assert missing_letters(["a ☠ 漢字 ✓ b", "☠"]) == set("☠漢字✓")


def test_the_letters_of_european_scripts_and_the_signs_of_the_trade_are_there() -> None:
    words = ["äßçøłšžğ ÆŒ", "αβγ Ω", "лес Ж", "× − ½ ¼ ♀ ♂ ° ′ ″ ≤ → ± “” ‘’ – — …", "▲△○❧·"]
    assert missing_letters(words) == frozenset()


def test_a_letter_is_asked_for_as_it_is_set_composed() -> None:
    assert missing_letters([normalize("NFD", "Łódź é ü")]) == frozenset()


@settings(max_examples=6, deadline=None)
@given(st.text(st.characters(blacklist_categories=["Cc", "Cs", "Cn", "Co"]), max_size=30))
def test_what_is_not_missing_can_be_typeset_in_every_style(words: str) -> None:
    missing = missing_letters([words])
    left = sorted({c for c in printable(words) if not c.isascii() and c not in missing})
    assert next(typeset([Job("letters", {"letters": left})])).startswith(b"%PDF-1.7")


def test_another_refusal_is_not_taken_for_a_missing_letter(monkeypatch: pytest.MonkeyPatch) -> None:
    def refuse(jobs: list[Job]) -> None:
        raise Untypeset(jobs[0].template, "no room", "error: no room")

    monkeypatch.setattr(letters, "typeset", refuse)
    with pytest.raises(Untypeset, match="no room"):
        missing_letters(["é"])


def test_in_a_draft_a_sign_stands_for_each_letter_that_is_lost() -> None:
    pictures = {"a.svg": "<text>☠ é</text>".encode(), "b.jpg": "☠".encode()}
    job = Job("letters", {"letters": ["a ☠", "é", "✓"], "n": 1}, pictures)
    assert legible(job, frozenset("☠✓")) == Job(
        "letters",
        {"letters": ["a \ufffd", "é", "\ufffd"], "n": 1},
        {"a.svg": "<text>\ufffd é</text>".encode(), "b.jpg": "☠".encode()},
    )
    assert missing_letters([LOST]) == frozenset()
