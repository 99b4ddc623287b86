"""What the words for blades mean to the pen: every word of the vocabulary has its row."""

from __future__ import annotations

import pytest

from helpers.leaves import LEAVES, values_of
from sallet.drawing.leaf.blade_tables import (
    DEPTHS,
    LEAFLET_MARGINS,
    LEAFLET_SHAPES,
    LEAFLET_TIPS,
    LOBINGS,
    PATTERNS,
    SHAPES,
)  # fmt: skip
from sallet.drawing.leaf.contour import BASES, TIPS
from sallet.drawing.leaf.lobe_veins import LOBED
from sallet.drawing.leaf.margin import MARGINS
from sallet.drawing.leaf.markings import MARKINGS
from sallet.drawing.leaf.veins import KINDS


@pytest.mark.parametrize(
    ("label", "table"),
    [
        ("shape", SHAPES), ("tip", TIPS), ("base", BASES), ("leaflet shape", LEAFLET_SHAPES),
        ("depth of the lobes", DEPTHS),
    ],
)  # fmt: skip
def test_a_table_has_the_words_of_its_label(label: str, table: dict[str, object]) -> None:
    assert set(table) == set(values_of(label))


@pytest.mark.parametrize(
    ("label", "table"), [("leaflet margin", LEAFLET_MARGINS), ("leaflet tip", LEAFLET_TIPS)]
)
def test_leaflets_have_words_of_their_own_beside_those_of_leaves(
    label: str, table: dict[str, object]
) -> None:
    assert set(values_of(label)) <= set(table)


def test_margins_are_toothed_or_carry_something() -> None:
    label = LEAVES.label("margin")
    assert label is not None
    for state in label.states:
        carries = {"fringe", "edge"} & set(state.draw)
        assert (state.name in MARGINS) != bool(carries), state.name


def test_every_word_for_lobes_but_the_plain_ones_has_a_row() -> None:
    assert set(values_of("lobing")) - set(LOBINGS) == {"unlobed", "lobed at the base only"}


def test_every_word_for_marks_has_a_row() -> None:
    assert set(values_of("markings")) - set(MARKINGS) == {"unmarked"}


def test_every_hint_for_veins_is_drawn() -> None:
    label = LEAVES.label("venation")
    assert label is not None
    hints = {state.draw["veins"] for state in label.states if "veins" in state.draw}
    assert hints == set(KINDS)
    assert set(PATTERNS) <= set(LOBED) <= set(KINDS)
