"""From words to the form of a blade: only what can be drawn."""

from __future__ import annotations

import pytest

from helpers.leaves import WHOLE, form_of, leaves_told
from sallet.drawing.leaf.blade_form import LEAF, LEAFLET, BladeForm, blade_form
from sallet.drawing.told import characters


def labels(words: dict[str, str]) -> set[str]:
    """Return the labels that a blade shows."""
    return {character.label for character in characters(form_of(words))}


def test_a_blade_without_a_shape_has_no_form() -> None:
    assert blade_form(leaves_told({"margin": "serrate"})) is None
    assert blade_form(leaves_told({"shape": "ovate"}), LEAFLET) is None


@pytest.mark.parametrize(
    ("words", "ratio"),
    [
        ({"shape": "elliptic"}, 3**0.5),
        ({"shape": "circular"}, 1),
        ({"shape": "linear"}, 14),
        ({"shape": "elliptic", "length": "9 cm", "width": "5 cm"}, 1.8),
        ({"shape": "elliptic", "length": "9 cm"}, 3**0.5),
        ({"shape": "elliptic", "length": "90 cm", "width": "5 cm"}, 2.5),
        ({"shape": "elliptic", "length": "5 cm", "width": "5 cm"}, 1.2),
        ({"shape": "linear", "length": "90 cm", "width": "2 cm"}, 45),
    ],
)
def test_length_by_width_is_the_recorded_within_what_the_shape_allows(
    words: dict[str, str], ratio: float
) -> None:
    assert form_of(words).ratio == pytest.approx(ratio)


@pytest.mark.parametrize(
    ("words", "millimetres"),
    [({}, None), ({"length": "8 cm"}, 80), ({"width": "4 cm"}, 40 * 3**0.5)],
)
def test_the_length_in_life(words: dict[str, str], millimetres: float | None) -> None:
    assert form_of({"shape": "elliptic", **words}).millimetres == (
        pytest.approx(millimetres) if millimetres else None
    )


@pytest.mark.parametrize(
    ("words", "left_out"),
    [
        ({"shape": "thread-like", "margin": "serrate"}, "margin"),
        ({"shape": "needle-like", "venation": "pinnate"}, "venation"),
        ({"shape": "linear", "markings": "dark spots"}, "markings"),
        ({"shape": "linear", "lobing": "pinnately lobed"}, "lobing"),
        ({"lobing": "lobed"}, "lobing"),
        ({"lobing": "pinnately lobed", "lobes": "40"}, "lobes"),
        ({"lobing": "backward-lobed", "depth of the lobes": "a quarter"}, "depth of the lobes"),
        ({"lobing": "cut twice", "margin": "serrate"}, "margin"),
        ({"lobing": "palmately lobed", "tip": "notched"}, "tip"),
        ({"lobing": "palmately lobed", "base": "arrow-shaped"}, "base"),
        ({"lobing": "pointed lobes", "venation": "palmate", "tip": "rounded"}, "tip"),
        ({"lobing": "pinnately lobed", "venation": "parallel"}, "venation"),
        ({"lobing": "pinnately lobed", "venation": "pinnate", "pairs of side veins": "5"},
         "pairs of side veins"),
        ({"venation": "parallel", "pairs of side veins": "5"}, "pairs of side veins"),
        ({"venation": "palmate", "main veins from the base": "1"}, "main veins from the base"),
        ({"venation": "no clear veins"}, "venation"),
        ({"markings": "unmarked"}, "markings"),
    ],
)  # fmt: skip
def test_what_there_is_no_room_for_is_not_said_to_be_drawn(
    words: dict[str, str], left_out: str
) -> None:
    assert left_out not in labels(WHOLE | words)


@pytest.mark.parametrize(
    "words",
    [
        {"margin": "serrate"}, {"lobing": "lobed", "venation": "pinnate", "lobes": "7"},
        {"lobing": "palmately lobed", "tip": "acuminate", "base": "heart-shaped"},
        {"lobing": "cut twice", "margin": "entire"}, {"venation": "palmate", "markings": "galls"},
        {"venation": "pinnate", "pairs of side veins": "5"}, {"lobing": "lobed at the base only"},
    ],
)  # fmt: skip
def test_what_is_drawn_is_said(words: dict[str, str]) -> None:
    words = {**WHOLE, **words}
    del words["division"]
    if words.get("lobing") == "lobed at the base only":
        del words["base"]
    assert labels(words) == set(words)


def test_a_fringe_is_an_even_edge_with_something_on_it() -> None:
    form = form_of({"shape": "ovate", "margin": "hair-fringed"})
    assert form.margin is not None
    assert form.margin.value is None
    assert form.fringe is not None
    assert form.fringe.value == "hairs"
    assert [c.label for c in characters(form)] == ["shape", "margin"]


def test_lobes_without_a_pattern_follow_the_veins() -> None:
    def pattern(venation: str) -> str | None:
        lobing = form_of({"shape": "ovate", "lobing": "lobed", "venation": venation}).lobing
        return lobing.value.pattern if lobing else None

    found = {v: pattern(v) for v in ("pinnate", "net-veined", "palmate", "three-veined", "forked")}
    assert found == {
        "pinnate": "feather", "net-veined": "feather", "palmate": "palm", "three-veined": "palm",
        "forked": None,
    }  # fmt: skip


def test_ends_are_known_by_words_or_by_the_shape() -> None:
    def known(form: BladeForm) -> tuple[bool, bool]:
        return form.tip_known, form.base_known

    assert known(form_of({"shape": "ovate"})) == (False, False)
    assert known(form_of({"shape": "ovate", "tip": "acute"})) == (True, False)
    assert known(form_of({"shape": "heart-shaped"})) == (False, True)
    assert known(form_of({"shape": "circular"})) == (True, True)


def test_only_leaves_have_lobes_veins_and_marks() -> None:
    assert (LEAF.lobed, LEAFLET.lobed) == (True, False)
