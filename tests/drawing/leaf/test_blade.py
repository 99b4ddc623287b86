"""One blade in ink: what is not recorded is dotted."""

from __future__ import annotations

import pytest

from helpers.leaves import WHOLE, form_of, leaves_told
from sallet.drawing.ink import Mark, plain
from sallet.drawing.leaf.blade import blade_ink
from sallet.drawing.leaf.blade_form import LEAFLET, blade_form

BARE = {"shape": "elliptic"}
EDGED = BARE | {"margin": "entire"}


def lines(words: dict[str, str], pen: str) -> list[Mark]:
    """Return the marks of a blade drawn with a pen."""
    return [m for m in plain(blade_ink(form_of(words), 200)) if m.pen == pen]


def test_a_blade_of_which_all_is_recorded_has_one_closed_line() -> None:
    (edge,) = lines(WHOLE, "line")
    assert edge.path.closed
    assert edge.part == "blade"
    assert lines(WHOLE, "dotted") == []


def test_an_edge_that_is_not_recorded_is_dotted() -> None:
    (edge,) = lines(BARE, "dotted")
    assert edge.path.closed
    assert lines(BARE, "line") == []


@pytest.mark.parametrize(
    ("known", "low", "high"),
    [({}, 32, 160), ({"tip": "acute"}, 32, 200), ({"base": "rounded"}, 0, 160)],
)
def test_ends_that_are_not_recorded_are_dotted(
    known: dict[str, str], low: float, high: float
) -> None:
    words = EDGED | known
    heights = [p.imag for m in lines(words, "line") for p in m.path.points()]
    assert [min(heights), max(heights)] == pytest.approx([low, high], abs=1)
    assert lines(words, "dotted")
    (blade,) = lines(words, "paper")
    assert blade.path.closed
    assert blade.part == "blade"


def test_a_shape_that_says_its_ends_needs_no_words_for_them() -> None:
    assert lines({"shape": "circular", "margin": "entire"}, "dotted") == []


def test_a_bristle_stands_on_the_tip_and_a_hood_is_a_fold_in_it() -> None:
    words = WHOLE | {"tip": "bristle-tipped"}
    (bristle,) = (mark for mark in lines(words, "line") if mark.part == "bristle")
    (hood,) = lines(WHOLE | {"tip": "hooded"}, "fine")
    assert bristle.path.start == pytest.approx(200j, abs=0.1)
    assert bristle.path.end == pytest.approx(214j, abs=0.1)
    assert hood.part == "hood"
    assert hood.path.start == pytest.approx(200j, abs=0.1)


def test_a_leaflet_is_drawn_with_the_pen_and_the_part_asked_for() -> None:
    told = leaves_told({
        "leaflet shape": "ovate", "leaflet margin": "entire", "leaflet tip": "acute",
        "leaflet base": "rounded",
    })  # fmt: skip
    form = blade_form(told, LEAFLET)
    assert form is not None
    (mark,) = plain(blade_ink(form, 60, "leaflet", "thin"))
    assert (mark.pen, mark.part) == ("thin", "leaflet")
