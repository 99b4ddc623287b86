"""A lesson as a whole: its name, its key features, where its parts stand."""

from __future__ import annotations

from fractions import Fraction

from helpers.workshop import lesson_of

TEXT = """---
name: Ramsons
scientific name: Allium ursinum L.
---
## Identification
### Leaves
- **margin**: entire, serrate (young)
- length: 10–25 cm, 3 mm (young)
### Flowers
- colour: white[^memory]
## Season
- leaves: March, soon
## Habitat
- moisture: damp
"""
LESSON = lesson_of(TEXT, "lessons/Wild Garlic.md")


def test_a_lesson_without_a_name_is_called_after_its_file() -> None:
    assert LESSON.name == "Ramsons"
    assert lesson_of("", "lessons/Wild Garlic.md").name == "wild-garlic"
    assert LESSON.slug == "wild-garlic"


def test_key_features_are_those_in_bold() -> None:
    assert [fact.label for fact in LESSON.key_facts] == ["margin"]


def test_facts_are_found_by_organ_and_section() -> None:
    assert [f.label for f in LESSON.facts_of("leaves")] == ["margin", "length"]
    assert [f.label for f in LESSON.facts_of("habitat")] == ["moisture"]


def test_a_fact_tells_its_states_and_its_lengths_whatever_their_qualifiers() -> None:
    margin, length = LESSON.facts_of("leaves")
    assert margin.states == {"entire", "serrate"}
    assert [m.low for m in length.measures] == [Fraction(100), Fraction(3)]


def test_a_timing_tells_the_windows_that_could_be_read() -> None:
    (leaves,) = LESSON.season
    assert [(w.first, w.last) for w in leaves.windows] == [(60, 90)]


def test_only_the_key_memory_says_that_a_statement_is_from_memory() -> None:
    assert [citation.from_memory for citation in LESSON.citations] == [True]


def test_a_missing_section_stands_at_the_head() -> None:
    words = LESSON.source.words
    assert words(LESSON.where("habitat")) == "Habitat"
    assert LESSON.where("cautions") == LESSON.front.span
    assert words(LESSON.front.where("scientific name")) == "Allium ursinum L."
    assert LESSON.front.where("family") == LESSON.front.span


def test_faults_come_in_the_order_of_the_text() -> None:
    lesson = lesson_of("## Identification\n### Leaves\n- tpi: x\n- bsae: y\n")
    assert [fault.words for fault in lesson.faults_of("unknown-label")] == ["tpi", "bsae"]
