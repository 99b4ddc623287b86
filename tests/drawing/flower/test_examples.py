"""Every word for flowers that can be drawn has a figure of its own."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

import pytest

from sallet.drawing.flower.examples import EXAMPLES
from sallet.drawing.told import specimen
from sallet.lesson.vocabulary_file import load_vocabulary

if TYPE_CHECKING:
    from sallet.drawing.example import Example

VOCABULARY: Final = load_vocabulary()
FLOWERS: Final = VOCABULARY.subject("flowers")
DRAWN: Final = (
    "shape", "symmetry", "petals fused or free", "petal shape", "petal tip", "florets",
    "sepals fused or free",
)  # fmt: skip
"""The labels of a single flower whose states tell the vocabulary's drawings something."""


@pytest.mark.parametrize("example", EXAMPLES, ids=lambda example: example.label)
def test_every_state_that_can_be_drawn_has_a_figure_of_its_own(example: Example) -> None:
    label = FLOWERS.label(example.label)
    assert label is not None
    figures = {}
    for state in label.states:
        words = {**example.base, example.label: state.name}
        sketch = example.draw(specimen(VOCABULARY, "flowers", **words), 150)
        assert sketch is not None, state.name
        if state.draw or example.label in {character.label for character in sketch.shows}:
            figures[state.name] = sketch.ink
    assert len(set(figures.values())) == len(figures) > 1
    assert {state.name for state in label.states if state.draw} <= set(figures)


def test_no_label_that_is_drawn_lacks_an_example_and_none_has_two() -> None:
    labels = [example.label for example in EXAMPLES]
    assert set(DRAWN) <= set(labels)
    assert len(set(labels)) == len(labels)
