"""A whole leaf: what it shows is what its ink says, no more and no less."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from helpers.drawings import parts_of
from helpers.leaves import LEAVES, WHOLE, faults_of, items_of, leaves_told, seen, values_of
from sallet.drawing.leaf.leaf import WANTED, WANTED_DIVIDED, leaf

READ = (
    "shape", "margin", "tip", "base", "lobing", "lobes", "depth of the lobes", "attachment",
    "stalk length", "stalk against blade", "venation", "pairs of side veins",
    "main veins from the base", "length", "width", "markings",
)  # fmt: skip
"""What a leaf of one piece may be drawn from."""
READ_DIVIDED = (
    "leaflets", "pairs of leaflets", "shape", "leaflet shape", "leaflet margin", "leaflet tip",
    "leaflet base", "leaflet stalk", "leaflet size", "leaflet length", "leaflet width",
    "attachment", "stalk length", "stalk against blade", "length",
)  # fmt: skip
"""What a divided leaf may be drawn from."""


def recorded(labels: tuple[str, ...]) -> st.SearchStrategy[dict[str, str]]:
    """Return any choice of values for some of the labels."""
    return st.fixed_dictionaries(
        {}, optional={label: st.sampled_from(values_of(label)) for label in labels}
    )


@settings(max_examples=250, deadline=None)
@given(words=recorded(READ))
def test_a_leaf_of_one_piece_shows_exactly_what_it_says(words: dict[str, str]) -> None:
    assert faults_of(leaf, {"division": "simple", "shape": "ovate", **words}) == []


@settings(max_examples=250, deadline=None)
@given(words=recorded(READ_DIVIDED), division=st.sampled_from(values_of("division")))
def test_a_divided_leaf_shows_exactly_what_it_says(words: dict[str, str], division: str) -> None:
    assert faults_of(leaf, {"division": division, **words}) == []


def test_nothing_else_that_is_recorded_of_leaves_touches_the_drawing() -> None:
    others = {label.name for label in LEAVES.labels} - {*READ, *READ_DIVIDED, "division"}
    for base in (WHOLE, {"division": "palmate", "leaflet shape": "ovate"}):
        told = leaves_told(base)
        whole = leaf(told, 150)
        for label in sorted(others):
            kind = LEAVES.label(label)
            assert kind is not None
            if kind.kind in {"states", "count", "measure"}:
                more = told.with_(label, items_of(label, values_of(label)[0]))
                assert leaf(more, 150) == whole, label


@pytest.mark.parametrize("label", ["margin", "tip", "base", "venation", "markings", "attachment"])
def test_two_words_for_one_thing_never_look_the_same(label: str) -> None:
    figures: dict[object, str] = {}
    for value in values_of(label):
        sketch = leaf(leaves_told(WHOLE | {"attachment": "stalked", label: value}), 200)
        assert sketch is not None
        if label in {character.label for character in sketch.shows}:
            assert sketch.ink not in figures, (value, figures.get(sketch.ink))
            figures[sketch.ink] = value
    assert len(figures) > 5


@pytest.mark.parametrize("margin", ["serrate", "dentate", "crenate", "doubly serrate", "torn"])
@pytest.mark.parametrize("lobing", ["backward-lobed", "lyre-shaped", "comb-like", "round-lobed"])
def test_a_lobed_blade_said_to_be_toothed_has_teeth(margin: str, lobing: str) -> None:
    words = WHOLE | {"lobing": lobing, "venation": "pinnate"}
    toothed = leaf(leaves_told(words | {"margin": margin}), 200)
    assert toothed is not None
    assert "margin" in {character.label for character in toothed.shows}
    assert seen(toothed) != seen(leaf(leaves_told(words), 200))


@pytest.mark.parametrize("size", [30, 80, 200])
def test_small_leaves_have_their_teeth_too(size: float) -> None:
    toothed = leaf(leaves_told(WHOLE | {"margin": "serrate"}), size)
    assert seen(toothed) != seen(leaf(leaves_told(WHOLE), size))


@pytest.mark.parametrize("missing", ["division", "shape"])
def test_without_its_shape_or_whether_it_is_divided_no_leaf_is_drawn(missing: str) -> None:
    assert leaf(leaves_told(WHOLE).without(missing), 200) is None


def test_a_leaf_called_divided_and_no_more_is_not_drawn() -> None:
    assert leaf(leaves_told(WHOLE | {"division": "divided"}), 200) is None


def test_a_leaf_lists_what_would_let_more_be_drawn() -> None:
    whole = leaf(leaves_told(WHOLE), 200)
    palmate = leaf(leaves_told({"division": "palmate"}), 200)
    assert whole is not None
    assert palmate is not None
    assert whole.wants == ("attachment", "venation", "length", "width")
    assert set(whole.wants) < set(WANTED)
    assert palmate.wants == WANTED_DIVIDED[1:]


@pytest.mark.parametrize(
    ("words", "scale"),
    [
        ({}, None),
        ({"length": "10 cm"}, 2.0),
        ({"length": "8–12 cm"}, 2.0),
        ({"length": "at most 50 cm"}, None),
        ({"length": "10 cm", "width": "5 cm"}, 2.0),
        ({"width": "50 mm", "shape": "circular"}, 4.0),
    ],
)
def test_a_leaf_is_to_scale_where_its_length_or_width_is_recorded(
    words: dict[str, str], scale: float | None
) -> None:
    sketch = leaf(leaves_told(WHOLE | words), 200)
    assert sketch is not None
    assert sketch.scale == scale


def test_a_word_for_the_stalk_that_speaks_of_the_base_draws_it() -> None:
    words = {key: value for key, value in WHOLE.items() if key != "base"}
    sketch = leaf(leaves_told(words | {"attachment": "tapering into a stalk"}), 200)
    assert sketch is not None
    assert [c.label for c in sketch.shows if c.drawn == "tapering into a stalk"] == ["attachment"]
    assert "dotted" not in parts_of(sketch.ink)


def test_the_same_words_give_the_same_leaf() -> None:
    words = WHOLE | {"margin": "torn", "venation": "net-veined", "markings": "galls"}
    assert leaf(leaves_told(words), 200) == leaf(leaves_told(words), 200)
