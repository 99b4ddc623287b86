"""A figure for every word of the vocabulary that can be drawn."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.drawing.flower.examples import EXAMPLES as FLOWERS
from sallet.drawing.fruit.examples import EXAMPLES as FRUIT
from sallet.drawing.fruit.seed import EXAMPLES as SEEDS
from sallet.drawing.inflorescence.examples import EXAMPLES as INFLORESCENCES
from sallet.drawing.leaf.examples import EXAMPLES as LEAVES
from sallet.drawing.stem.examples import EXAMPLES as STEMS
from sallet.drawing.told import specimen
from sallet.drawing.underground.examples import EXAMPLES as UNDERGROUND

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.example import Example
    from sallet.drawing.sketch import Sketch
    from sallet.lesson.vocabulary import State, Vocabulary

EXAMPLES: Final = (*LEAVES, *FLOWERS, *INFLORESCENCES, *FRUIT, *SEEDS, *STEMS, *UNDERGROUND)
"""The specimens on which words are shown, by organ."""
_BY_LABEL: Final[Mapping[tuple[str, str], Example]] = {(e.organ, e.label): e for e in EXAMPLES}


def word_figure(
    organ: str, label: str, state: State, vocabulary: Vocabulary, size: float
) -> Sketch | None:
    """Return what a state of a label looks like on a neutral specimen, `size` units long.

    None where nothing of the state can be shown.
    """
    example = _BY_LABEL.get((organ, label))
    if example is None:
        return None
    sketch = example.draw(specimen(vocabulary, organ, **{**example.base, label: state.name}), size)
    shows = sketch is not None and any(character.label == label for character in sketch.shows)
    return sketch if shows else None
