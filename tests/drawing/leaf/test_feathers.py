"""Leaves divided once, like a feather."""

from __future__ import annotations

import pytest

from helpers.drawings import points_of
from helpers.leaves import leaves_told
from sallet.drawing.ink import Copy, plain
from sallet.drawing.leaf.division import Division, division
from sallet.drawing.leaf.feathers import feather

PLAIN = {
    "leaflet shape": "ovate", "leaflet margin": "entire", "leaflet tip": "acute",
    "leaflet base": "rounded", "division": "pinnate with an end leaflet", "leaflets": "9",
}  # fmt: skip


def form_of(**words: str) -> Division:
    """Return the form of a feathered leaf."""
    form = division(leaves_told(PLAIN | {k.replace("_", " "): v for k, v in words.items()}))
    assert form is not None
    return form


def scales(form: Division) -> list[float]:
    """Return the sizes of the leaflets of the right side, the lowest first, and of the end."""
    leaves = [c for c in feather(form, 200) if isinstance(c, Copy) and c.part == "leaflet"]
    return [abs(c.place.turn) for c in leaves if not c.place.mirrored]


@pytest.mark.parametrize("number", ["3", "7", "15", "25"])
def test_a_leaf_is_as_long_as_asked_for(number: str) -> None:
    points = points_of(feather(form_of(leaflets=number), 200))
    assert max(p.imag for p in points) == pytest.approx(200, abs=3)
    assert abs(max(p.real for p in points) + min(p.real for p in points)) < 0.1


def test_leaflets_of_a_recorded_length_are_so_long() -> None:
    form = form_of(leaflet_length="2 cm", length="10 cm", leaflet_stalk="stalkless")
    end = feather(form, 200)[-1]
    assert isinstance(end, Copy)
    points = points_of(end.piece)
    assert max(p.imag for p in points) == pytest.approx(40, abs=0.2)


def test_sizes_are_those_of_the_word() -> None:
    alike = scales(form_of())
    base = scales(form_of(leaflet_size="lowest leaflets largest"))
    middle = scales(form_of(leaflet_size="middle leaflets largest"))
    end = scales(form_of(leaflet_size="end leaflet largest"))
    assert alike == [pytest.approx(1)] * 5
    assert base[:4] == sorted(base[:4], reverse=True)
    assert max(middle) == max(middle[1:3])
    assert max(end) == end[-1] > max(end[:-1])


def test_leaflets_that_run_together_have_a_wing_between_them() -> None:
    joined = feather(form_of(leaflet_stalk="running together"), 200)
    assert [getattr(one, "part", "") for one in joined[:2]] == ["axis", "wing"]
    assert [getattr(one, "part", "") for one in feather(form_of(), 200)[:2]] == ["axis", "leaflet"]


def test_a_shape_that_is_recorded_of_the_end_leaflet_alone_leaves_the_others_dotted() -> None:
    ink = feather(form_of(leaflet_shape="ovate (terminal)"), 200)
    leaves = [c for c in ink if isinstance(c, Copy) and c.part == "leaflet"]
    pens = [{mark.pen for mark in plain(c.piece)} for c in leaves]
    assert pens[:-1] == [{"dotted"}] * 8
    assert "line" in pens[-1]
