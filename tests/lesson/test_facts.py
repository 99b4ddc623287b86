"""Bullets → facts, whole: known and unknown labels, notes, card wordings."""

from __future__ import annotations

from typing import TYPE_CHECKING

from helpers.workshop import lesson_of
from sallet.lesson.value import Words

if TYPE_CHECKING:
    from sallet.lesson.model import Fact, Fault


def read(bullets: str) -> tuple[list[Fact], list[Fault]]:
    """Return the facts of some bullets about the leaves, and their faults."""
    lesson = lesson_of(f"---\nname: x\n---\n## Identification\n### Leaves\n{bullets}")
    return list(lesson.facts), list(lesson.faults)


def test_a_fact_knows_its_label_its_words_and_its_places() -> None:
    ((fact,), faults) = read("- **Edge**: entire[^a], toothed (old leaves)[^b]\n")
    assert faults == []
    assert (fact.subject, fact.part, fact.label) == ("leaves", "", "margin")
    assert (fact.known, fact.key) == (True, True)
    assert fact.text == "entire, toothed (old leaves)"
    assert [item.qualifier_names for item in fact.items] == [frozenset(), {"old"}]
    assert [citation.key for citation in fact.citations] == ["a", "b"]


def test_a_fact_with_an_unknown_label_is_kept_as_words() -> None:
    ((fact,), (fault,)) = read("- zest: lemon, lime\n")
    assert (fact.label, fact.known) == ("zest", False)
    assert [item.value for item in fact.items] == [Words("lemon, lime")]
    assert (fault.kind, fault.words, fault.detail) == ("unknown-label", "zest", "Leaves")


def test_a_fact_without_a_value_is_kept_and_named() -> None:
    ((fact,), (fault,)) = read("- margin: [^a]\n  Not seen.\n")
    assert (fact.items, fact.note.text) == ((), "Not seen.")
    assert (fault.kind, fault.words) == ("empty-value", "margin")


def test_a_bullet_without_a_label_hides_no_other() -> None:
    facts, (first, second) = read("- toothed\n- margin: entire\n-\n- tip: acute\n")
    assert [fact.label for fact in facts] == ["margin", "tip"]
    assert (first.kind, second.kind) == ("bullet-without-label", "empty-value")


def test_the_card_wording_is_no_part_of_the_note_and_other_bullets_are() -> None:
    text = (
        "- margin: entire\n  Run a thumb along it.\n  - On the card: no\n    teeth\n  - at all: x\n"
    )
    ((fact,), (fault,)) = read(text)
    assert fact.on_card == "no teeth"
    assert fact.note.text == "Run a thumb along it.\n\n- at all: x"
    assert (fault.kind, fault.words, fault.nearest) == ("nested-bullet", "at all", ("on the card",))


def test_numbered_facts_are_facts() -> None:
    facts, faults = read("1. margin: entire\n2. tip: acute\n")
    assert ([fact.label for fact in facts], faults) == (["margin", "tip"], [])
