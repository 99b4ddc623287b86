"""Seeds: what is recorded is drawn, nothing else."""

from __future__ import annotations

from functools import cache
from itertools import combinations
from typing import TYPE_CHECKING

import pytest
from shapely.geometry import Polygon
from shapely.validation import explain_validity

from sallet.drawing.fruit.seed import APPENDAGES, EXAMPLES, SHAPES, SURFACES, seed
from sallet.drawing.ink import plain
from sallet.drawing.svg import ink_svg
from sallet.drawing.told import specimen
from sallet.lesson.vocabulary_file import load_vocabulary

if TYPE_CHECKING:
    from sallet.drawing.example import Example
    from sallet.drawing.sketch import Sketch
    from sallet.lesson.vocabulary import Vocabulary

SIZE = 150.0


@cache
def vocabulary() -> Vocabulary:
    return load_vocabulary()


def drawn(**values: str) -> Sketch | None:
    return seed(specimen(vocabulary(), "seeds", **values), SIZE)


def states(label: str) -> tuple[str, ...]:
    found = vocabulary().subject("seeds").label(label)
    assert found is not None
    return tuple(state.name for state in found.states)


def cases() -> list[dict[str, str]]:
    extras = {"length": "3 mm", "width": "2.1 mm", "colour": "brown"}
    return [
        {"shape": shape, "surface": surface, "appendage": appendage, **extras}
        for n, shape in enumerate(states("shape"))
        for m, surface in enumerate(states("surface"))
        for appendage in (states("appendage")[(n + m) % len(APPENDAGES)],)
    ]


def test_what_is_said_to_be_drawn_changes_the_drawing_and_nothing_else_does() -> None:
    for values in cases():
        before = drawn(**values)
        assert before is not None
        said = {character.label for character in before.shows}
        for label in values:
            after = drawn(**{k: v for k, v in values.items() if k != label})
            same = after is not None and (after.ink, after.scale) == (before.ink, before.scale)
            assert same is (label not in said), (label, values)


def test_outlines_do_not_cross_themselves_and_figures_are_small() -> None:
    for values in cases():
        sketch = drawn(**values)
        assert sketch is not None
        assert sketch == drawn(**values)
        for mark in plain(sketch.ink):
            if mark.path.closed:
                polygon = Polygon([(p.real, p.imag) for p in mark.path.points()])
                assert explain_validity(polygon) == "Valid Geometry", (values, mark.part)
        assert len(ink_svg(sketch.ink, "x")) <= 8192


@pytest.mark.parametrize("example", EXAMPLES, ids=lambda example: example.label)
def test_states_of_one_label_that_can_be_drawn_differ(example: Example) -> None:
    known = {"shape": SHAPES, "surface": SURFACES, "appendage": APPENDAGES}[example.label]
    inks = {}
    for name in known:
        values = {**example.base, example.label: name}
        sketch = example.draw(specimen(vocabulary(), "seeds", **values), SIZE)
        assert sketch is not None
        assert example.label in {character.label for character in sketch.shows}
        inks[name] = sketch.ink
    assert {(a, b) for a, b in combinations(inks, 2) if inks[a] == inks[b]} == set()
    assert set(known) <= set(states(example.label))


def test_the_scale_is_that_of_the_length_or_else_of_the_width() -> None:
    by_length = drawn(shape="round", length="2 mm")
    by_width = drawn(shape="round", width="3 mm")
    bare = drawn(shape="round")
    assert by_length is not None
    assert by_width is not None
    assert bare is not None
    assert (by_length.scale, by_width.scale, bare.scale) == (SIZE / 2, SIZE / 3, None)


def test_without_a_shape_no_seed_is_drawn() -> None:
    assert drawn(surface="warty", length="1 mm") is None


def test_what_is_still_missing_is_asked_for() -> None:
    sketch = drawn(shape="round", surface="warty")
    assert sketch is not None
    assert sketch.wants == ("length", "width", "appendage")
