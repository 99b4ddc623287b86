"""Every word for stems, leaf stalks cut across and roots has its figure in the glossary."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

import pytest

from helpers.stems import VOCABULARY, labels_shown, sketch_of, told_of
from sallet.drawing.stem import examples as stem_examples
from sallet.drawing.svg import ink_svg
from sallet.drawing.underground import examples as underground_examples

if TYPE_CHECKING:
    from sallet.drawing.example import Example

EXAMPLES: Final = (*stem_examples.EXAMPLES, *underground_examples.EXAMPLES)
MOST_BYTES: Final = 5_200


def name_of(example: Example) -> str:
    return f"{example.organ}: {example.label}"


def test_no_label_has_two_examples() -> None:
    names = [name_of(example) for example in EXAMPLES]
    assert sorted(set(names)) == sorted(names)


@pytest.mark.parametrize("example", EXAMPLES, ids=name_of)
def test_every_state_with_a_hint_has_a_figure_of_its_own(example: Example) -> None:
    label = VOCABULARY.subject(example.organ).label(example.label)
    assert label is not None
    inks = [
        sketch_of(example.draw, example.organ, {**example.base, label.name: state.name}).ink
        for state in label.states
        if state.draw
    ]
    assert len(set(inks)) == len(inks)


@pytest.mark.parametrize("example", EXAMPLES, ids=name_of)
def test_a_figure_that_does_not_show_its_word_is_that_of_the_bare_specimen(
    example: Example,
) -> None:
    label = VOCABULARY.subject(example.organ).label(example.label)
    assert label is not None
    bare = example.draw(told_of(example.organ, example.base), 100)
    for state in label.states:
        words = {**example.base, label.name: state.name}
        sketch = example.draw(told_of(example.organ, words), 100)
        if label.name not in labels_shown(sketch):
            assert sketch == bare or (bare and sketch and sketch.ink == bare.ink)


@pytest.mark.parametrize("example", EXAMPLES, ids=name_of)
def test_no_figure_is_heavy(example: Example) -> None:
    label = VOCABULARY.subject(example.organ).label(example.label)
    assert label is not None
    for state in label.states:
        words = {**example.base, label.name: state.name}
        sketch = example.draw(told_of(example.organ, words), 100)
        if sketch:
            assert len(ink_svg(sketch.ink, "x")) < MOST_BYTES
