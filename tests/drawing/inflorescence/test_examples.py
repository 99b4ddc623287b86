"""Every word for a flower cluster has its figure in the glossary."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

import pytest

from sallet.drawing.inflorescence.examples import EXAMPLES
from sallet.drawing.told import specimen
from sallet.lesson.vocabulary_file import load_vocabulary

if TYPE_CHECKING:
    from sallet.drawing.example import Example

VOCABULARY: Final = load_vocabulary()


def test_no_label_has_two_examples() -> None:
    labels = [example.label for example in EXAMPLES]
    assert sorted(set(labels)) == sorted(labels)


@pytest.mark.parametrize("example", EXAMPLES, ids=lambda e: e.label)
def test_every_state_with_a_hint_has_a_figure_of_its_own_that_shows_it(example: Example) -> None:
    label = VOCABULARY.subject(example.organ).label(example.label)
    assert label is not None
    figures = {}
    for state in label.states:
        if state.draw:
            words = {**example.base, example.label: state.name}
            sketch = example.draw(specimen(VOCABULARY, example.organ, **words), 100)
            assert sketch is not None
            assert example.label in {character.label for character in sketch.shows}
            figures[state.name] = sketch.ink
    assert len(set(figures.values())) == len(figures)
