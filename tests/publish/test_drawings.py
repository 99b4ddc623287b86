"""Drawings as they stand on a page."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

import pytest

from helpers.drawings import SVG, facts_of, parsed
from sallet.drawing.figures import figures
from sallet.lesson.vocabulary_file import load_vocabulary
from sallet.publish.drawings import drawing, in_words, word_drawing

if TYPE_CHECKING:
    from sallet.drawing.figures import Figure

VOCABULARY = load_vocabulary()
LEAF = (
    "### Leaves\n- division: simple\n- shape: elliptic to ovate\n- margin: entire\n- tip: acute\n"
    "- base: rounded\n- attachment: stalked (lower leaves), stalkless (upper leaves)\n"
)
LONG = LEAF + "- length: 4–6 cm\n"


def drawn(identification: str) -> tuple[Figure, ...]:
    """Return the figures of a plant."""
    return figures(facts_of(identification), VOCABULARY)


def test_a_drawing_says_in_words_exactly_what_it_shows() -> None:
    sketch = drawn(LONG)[0].sketch
    assert in_words(sketch) == (
        "Drawn from what is recorded: shape: elliptic (recorded: elliptic to ovate); "
        "length: 5 cm (recorded: 4–6 cm); tip: acute; base: rounded; margin: entire; "
        "division: simple; attachment: stalked (recorded: stalked). The bar is 1\u00a0cm."
    ).replace("attachment: stalked (recorded: stalked)", "attachment: stalked")


def test_without_a_recorded_length_a_drawing_is_not_to_scale_and_has_no_bar() -> None:
    sketch = drawn(LEAF)[0].sketch
    svg = parsed(drawing(sketch, "a", "Ramsons: leaf"))
    assert in_words(sketch).endswith(" Not to scale.")
    assert svg.findall(f"{SVG}text") == []


def test_the_bar_is_as_long_as_it_says() -> None:
    sketch = drawn(LONG)[0].sketch
    svg = parsed(drawing(sketch, "a", "Ramsons: leaf"))
    (bar,) = (e for e in svg.iter(f"{SVG}path") if e.get("class") == "bar")
    (text,) = (e for e in svg.iter(f"{SVG}text") if e.get("class") == "bar")
    units = float(re.findall(r"h([\d.]+)", bar.get("d") or "")[0])
    assert text.text == "1\u00a0cm"
    assert units == pytest.approx(200 / 50 * 10, abs=0.1)


def test_title_and_description_are_named_and_ids_are_its_own() -> None:
    sketch = drawn(LONG)[0].sketch
    svg = parsed(drawing(sketch, "a", "Ramsons & co: leaf"))
    assert svg.get("aria-labelledby") == "a-title a-desc"
    assert [e.text for e in svg.iter(f"{SVG}title")] == ["Ramsons & co: leaf"]
    assert all(e.get("id", "a-").startswith("a-") for e in svg.iter())


def test_words_of_a_lesson_are_set_as_text() -> None:
    facts = facts_of(LEAF.replace("entire", "entire or <b>odd</b>"))
    sketch = figures(facts, VOCABULARY)[0].sketch
    text = str(drawing(sketch, "a", "<b>"))
    assert "<b>" not in text


def test_a_word_that_can_be_drawn_has_its_figure_and_another_has_none() -> None:
    margin = VOCABULARY.label("leaves", "margin")
    gloss = VOCABULARY.label("leaves", "gloss")
    assert margin is not None
    assert gloss is not None
    figure = word_drawing("leaves", "margin", margin.states[2], VOCABULARY, "w")
    assert parsed(figure).get("aria-hidden") == "true"
    assert word_drawing("leaves", "gloss", gloss.states[0], VOCABULARY, "w") == ""
