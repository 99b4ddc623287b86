"""The specimens on which words for leaves are shown."""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from typing import TYPE_CHECKING

import pytest
from shapely import LinearRing

from helpers.leaves import LEAVES, faults_of, leaves_told
from sallet.drawing.ink import plain
from sallet.drawing.leaf.examples import EXAMPLES
from sallet.drawing.svg import ink_svg

if TYPE_CHECKING:
    from sallet.drawing.example import Example
    from sallet.drawing.ink import Ink

MOST = 4096
"""Bytes of a figure."""
SHOWN = [
    pytest.param(example, state.name, id=f"{example.label}: {state.name}")
    for example in EXAMPLES
    for label in [LEAVES.label(example.label)]
    if label is not None
    for state in label.states
    if state.draw
]


def ink_of(example: Example, state: str) -> Ink:
    """Return the figure of a state, 200 units long."""
    sketch = example.draw(leaves_told({**example.base, example.label: state}), 200)
    assert sketch is not None
    assert example.label in {c.label for c in sketch.shows} or state in UNSEEN
    return sketch.ink


UNSEEN = {"no clear veins"}


@pytest.mark.parametrize(("example", "state"), SHOWN)
def test_every_word_that_can_be_drawn_is_drawn_small_and_the_same_twice(
    example: Example, state: str
) -> None:
    text = ink_svg(ink_of(example, state), "x")
    assert len(text.encode()) <= MOST
    assert text == ink_svg(ink_of(example, state), "x")


@pytest.mark.parametrize(("example", "state"), SHOWN)
def test_the_words_of_a_specimen_are_those_that_its_ink_shows(example: Example, state: str) -> None:
    assert faults_of(example.draw, {**example.base, example.label: state}) == []


@pytest.mark.parametrize("example", EXAMPLES, ids=lambda example: example.label)
def test_no_two_states_of_a_label_look_the_same(example: Example) -> None:
    figures: dict[Ink, str] = {}
    for name in (state for other, state in (p.values for p in SHOWN) if other is example):
        ink = ink_of(example, str(name))
        assert ink not in figures, (name, figures.get(ink))
        figures[ink] = str(name)
    assert len(figures) > 1


@pytest.mark.parametrize(("example", "state"), SHOWN)
def test_closed_outlines_of_blades_do_not_cross_themselves(example: Example, state: str) -> None:
    blades = [m for m in plain(ink_of(example, state)) if m.path.closed and m.part == "blade"]
    for mark in blades:
        assert LinearRing([(p.real, p.imag) for p in mark.path.points(16)]).is_simple


@pytest.mark.parametrize(("example", "state"), SHOWN)
def test_two_figures_on_a_page_share_no_name(example: Example, state: str) -> None:
    ink = ink_of(example, state)
    page = f"<svg>{ink_svg(ink, 'a')}{ink_svg(ink, 'b')}</svg>"
    names = [e.get("id") for e in ET.fromstring(page).iter() if e.get("id")]  # noqa: S314
    used = set(re.findall(r'href="#([^"]+)"', page))
    assert len(names) == len(set(names))
    assert used == set(names)


def test_every_label_of_leaves_with_hints_for_a_drawing_is_shown() -> None:
    hinted = {label.name for label in LEAVES.labels if any(state.draw for state in label.states)}
    assert hinted - {example.label for example in EXAMPLES} == {"stalk section", "stalk interior"}
