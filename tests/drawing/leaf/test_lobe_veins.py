"""Veins of lobed blades: one to each lobe."""

from __future__ import annotations

import pytest
from shapely import LineString, Polygon

from helpers.drawings import parts_of
from helpers.leaves import WHOLE, form_of, leaves_told
from sallet.drawing.leaf.leaf import leaf
from sallet.drawing.leaf.lobe_veins import LOBED
from sallet.drawing.leaf.outline import outline

PALM = WHOLE | {"shape": "widely ovate", "lobing": "palmately lobed"}
FEATHER = WHOLE | {"lobing": "pinnately lobed"}


def parts(words: dict[str, str]) -> dict[str, int]:
    """Return how often each part of a leaf is drawn."""
    sketch = leaf(leaves_told(words), 200)
    assert sketch is not None
    return parts_of(sketch.ink)


@pytest.mark.parametrize("number", [3, 5, 6, 7])
def test_each_lobe_has_its_vein(number: int) -> None:
    feathered = parts(FEATHER | {"lobes": str(number), "venation": "pinnate"})
    fingered = parts(PALM | {"lobes": str(number), "venation": "palmate"})
    assert (feathered["lobevein"], feathered["midrib"]) == (number - 1, 1)
    assert fingered["mainvein"] == number


def test_of_three_veins_three_are_drawn() -> None:
    assert parts(PALM | {"lobes": "5", "venation": "three-veined"})["mainvein"] == 3


def test_feathered_veins_of_finger_like_lobes_leave_the_midrib_one_above_another() -> None:
    drawn = outline(form_of(PALM | {"venation": "pinnate"}).blank, 200)
    starts = [m.path.start.imag for m in LOBED["pinnate"](drawn) if m.part == "lobevein"]
    assert len(set(starts)) == 2
    assert max(starts) > 20


@pytest.mark.parametrize(
    ("kind", "words"),
    [*((kind, PALM) for kind in LOBED), *((k, FEATHER) for k in ("pinnate", "net", "teeth", "1"))],
)
def test_veins_stay_within_the_blade(kind: str, words: dict[str, str]) -> None:
    drawn = outline(form_of(words).blank, 200)
    blade = Polygon([(p.real, p.imag) for p in drawn.path.points(16)]).buffer(1.5)
    for mark in LOBED[kind](drawn):
        line = LineString([(p.real, p.imag) for p in mark.path.points()])
        assert line.difference(blade).length <= 0.1 * line.length


def test_ways_of_veins_differ() -> None:
    drawn = outline(form_of(FEATHER).blank, 200)
    figures = {tuple(LOBED[kind](drawn)) for kind in LOBED}
    assert len(figures) == len(LOBED)


@pytest.mark.parametrize("venation", ["parallel", "palmate", "three-veined", "forked"])
def test_veins_that_no_feathered_blade_has_are_not_said_to_be_drawn(venation: str) -> None:
    sketch = leaf(leaves_told(FEATHER | {"venation": venation}), 200)
    assert sketch is not None
    assert "venation" not in {c.label for c in sketch.shows}
