"""From words to the form of a divided leaf."""

from __future__ import annotations

import pytest

from helpers.leaves import LEAVES, leaves_told, values_of
from sallet.drawing.leaf.division import LONGEST, PATTERNS, Division, division
from sallet.drawing.told import characters

PLAIN = {
    "leaflet shape": "ovate", "leaflet margin": "entire", "leaflet tip": "acute",
    "leaflet base": "rounded",
}  # fmt: skip


def form_of(**words: str) -> Division:
    """Return the form of a divided leaf with plain leaflets."""
    form = division(leaves_told(PLAIN | {k.replace("_", " "): v for k, v in words.items()}))
    assert form is not None
    return form


def labels(**words: str) -> set[str]:
    """Return the labels that a divided leaf shows."""
    return {character.label for character in characters(form_of(**words))}


def test_every_word_but_simple_and_divided_has_a_pattern() -> None:
    assert set(values_of("division")) - set(PATTERNS) == {"simple", "divided"}
    assert division(leaves_told(PLAIN | {"division": "simple"})) is None
    assert division(leaves_told(PLAIN)) is None


@pytest.mark.parametrize(
    ("how", "recorded", "number", "end"),
    [
        ("once pinnate", "7", 7, "leaflet"),
        ("once pinnate", "8", 8, "none"),
        ("once pinnate", "5–7", 6, "leaflet"),
        ("once pinnate", "5–8", 6, ""),
        ("once pinnate", "many", 24, ""),
        ("pinnate with an end leaflet", "5–8", 7, "leaflet"),
        ("pinnate with an end leaflet", "6", None, "leaflet"),
        ("pinnate without an end leaflet", "5–8", 6, "none"),
        ("pinnate with a tendril", "7", None, "tendril"),
        ("pinnate with a tendril", "6", 6, "tendril"),
    ],
)
def test_a_number_fits_the_end_of_its_leaf(
    how: str, recorded: str, number: int | None, end: str
) -> None:
    form = form_of(division=how, leaflets=recorded)
    if (how, recorded) == ("once pinnate", "5–7"):
        number = 7 if form.number and form.number.value == 7 else 5
    assert (form.number.value if form.number else None, form.pattern.value.end) == (number, end)


@pytest.mark.parametrize(
    ("how", "number"),
    [("once pinnate", 6), ("pinnate with an end leaflet", 7), ("pinnate with a tendril", 6)],
)
def test_pairs_are_counted_where_leaflets_are_not(how: str, number: int) -> None:
    form = form_of(division=how, pairs_of_leaflets="3")
    assert form.number is not None
    assert form.number.value == number
    assert form.number.character.words == "pairs of leaflets: 3"


@pytest.mark.parametrize(
    ("how", "able", "unable"),
    [("palmate", ["2", "5", "9"], ["12", "many"]), ("foot-like", ["5", "9"], ["25", "many"]),
     ("trifoliate", [], ["3", "5"]), ("twice pinnate", [], ["9"])],
)  # fmt: skip
def test_only_numbers_that_can_be_drawn_are_said(
    how: str, able: list[str], unable: list[str]
) -> None:
    assert all("leaflets" in labels(division=how, leaflets=number) for number in able)
    assert not any("leaflets" in labels(division=how, leaflets=number) for number in unable)


def test_small_segments_show_neither_edges_nor_ends() -> None:
    assert labels(division="thrice pinnate") == {"division", "leaflet shape"}
    assert labels(division="twice pinnate") == {"division", *PLAIN}
    assert labels(division="thrice in threes") == {"division", *PLAIN}
    assert labels(division="thread-like segments") == {"division"}


def test_the_length_of_a_leaflet_is_drawn_against_that_of_the_leaf() -> None:
    form = form_of(division="once pinnate", leaflet_length="3 cm", length="10 cm")
    assert form.share == pytest.approx(0.3)
    long = form_of(division="once pinnate", leaflet_length="8 cm", length="10 cm")
    assert long.share is None
    assert "leaflet length" not in labels(division="once pinnate", leaflet_length="3 cm")
    assert LONGEST < 0.5


def test_length_and_width_of_a_leaflet_give_its_form() -> None:
    form = form_of(division="palmate", leaflet_length="9 cm", leaflet_width="5 cm")
    assert form.ratio == pytest.approx(1.8)
    assert {"leaflet length", "leaflet width"} <= labels(
        division="palmate", leaflet_length="9 cm", leaflet_width="5 cm"
    )
    assert "leaflet width" not in labels(division="palmate", leaflet_width="5 cm")


@pytest.mark.parametrize(
    ("how", "shown"), [("twice pinnate", True), ("once pinnate", False), ("twice in threes", False)]
)
def test_the_outline_of_the_whole_is_drawn_of_plumes_only(how: str, shown: bool) -> None:  # noqa: FBT001
    assert ("shape" in labels(division=how, shape="triangular")) == shown


def test_sizes_and_stalks_are_drawn_where_there_are_rows() -> None:
    once = labels(
        division="once pinnate", leaflet_size="lowest leaflets largest", leaflet_stalk="stalked"
    )
    assert {"leaflet size", "leaflet stalk"} <= once
    assert "leaflet size" not in labels(division="palmate", leaflet_size="end leaflet largest")
    assert "leaflet stalk" not in labels(division="palmate", leaflet_stalk="running together")
    mixed = {
        "division": "large and small leaflets mixed",
        "leaflet_size": "large and small by turns",
    }
    assert "leaflet size" not in labels(**mixed)


def test_every_hint_for_sizes_is_known() -> None:
    label = LEAVES.label("leaflet size")
    assert label is not None
    hints = {s.draw["sizes"] for s in label.states if s.draw}
    assert hints == {"end", "middle", "base", "mixed"}
