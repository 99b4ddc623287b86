"""How leaves come out of the ground."""

from __future__ import annotations

import pytest

from helpers.drawings import parts_of
from helpers.leaves import faults_of, leaves_told, values_of
from sallet.drawing.leaf.rising import WAYS, rising

LABEL = "rises from the ground"


@pytest.mark.parametrize(
    ("way", "leaves", "stalks", "sheaths", "stems"),
    [
        ("each on its own stalk", 3, 3, 0, 0),
        ("in pairs one wrapping the other", 2, 0, 2, 0),
        ("several wrapping one another", 3, 0, 3, 0),
        ("from a stem above ground", 4, 0, 0, 1),
    ],
)
def test_stalks_sheaths_and_stems_are_those_of_the_word(
    way: str, leaves: int, stalks: int, sheaths: int, stems: int
) -> None:
    sketch = rising(leaves_told({LABEL: way}), 150)
    assert sketch is not None
    parts = parts_of(sketch.ink)
    assert (parts["leaf"], parts["stalk"], parts["sheath"], parts["stem"]) == (
        leaves, stalks, sheaths, stems,
    )  # fmt: skip
    assert parts["ground"] == 1
    assert faults_of(rising, {LABEL: way}, 150) == []


def test_every_way_is_drawn_and_differs() -> None:
    figures = {rising(leaves_told({LABEL: way}), 150) for way in values_of(LABEL)}
    assert len({sketch.ink for sketch in figures if sketch}) == len(WAYS) == 4


def test_without_a_word_for_it_nothing_is_drawn() -> None:
    assert rising(leaves_told({"leaves from one stalk": "2"}), 150) is None
