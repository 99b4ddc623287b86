"""A figure for every word that can be drawn."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from sallet.drawing.svg import ink_svg
from sallet.drawing.words import EXAMPLES, word_figure
from sallet.lesson.vocabulary_file import load_vocabulary

if TYPE_CHECKING:
    from sallet.lesson.vocabulary import Label, State

VOCABULARY = load_vocabulary()
HINTED = [
    (subject.name, label, state)
    for subject in VOCABULARY.subjects
    for label in subject.labels
    for state in label.states
    if state.draw
]


@pytest.mark.parametrize(
    ("organ", "label", "state"), HINTED, ids=lambda value: getattr(value, "name", value)
)
def test_what_the_vocabulary_tells_a_drawing_is_drawn(
    organ: str, label: Label, state: State
) -> None:
    sketch = word_figure(organ, label.name, state, VOCABULARY, 84)
    assert sketch is not None
    assert label.name in {character.label for character in sketch.shows}


def test_there_are_hints_at_all() -> None:
    assert len(HINTED) > 350


def test_no_label_has_two_specimens() -> None:
    labels = [(example.organ, example.label) for example in EXAMPLES]
    assert len(labels) == len(set(labels))


def test_a_word_that_nothing_can_be_seen_of_has_no_figure() -> None:
    gloss = VOCABULARY.label("leaves", "gloss")
    lobing = VOCABULARY.label("leaves", "lobing")
    assert gloss is not None
    assert lobing is not None
    unlobed = lobing.state("unlobed")
    assert unlobed is not None
    assert word_figure("leaves", "gloss", gloss.states[0], VOCABULARY, 84) is None
    assert word_figure("leaves", "lobing", unlobed, VOCABULARY, 84) is None


def test_most_states_of_a_drawn_label_look_different() -> None:
    """Two words may look the same in ink: red veins and white ones."""
    for example in EXAMPLES:
        label = VOCABULARY.label(example.organ, example.label)
        assert label is not None
        drawn = [
            ink_svg(sketch.ink, "x")
            for state in label.states
            if (sketch := word_figure(example.organ, label.name, state, VOCABULARY, 84))
        ]
        assert len(drawn) > 0
        assert len(set(drawn)) >= 0.7 * len(drawn)
