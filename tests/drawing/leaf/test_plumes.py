"""Leaves divided again and again."""

from __future__ import annotations

import pytest

from helpers.drawings import parts_of, points_of
from helpers.leaves import leaves_told
from sallet.drawing.leaf.division import Division, division
from sallet.drawing.leaf.plumes import plume, thread
from sallet.drawing.svg import ink_svg

PLAIN = {
    "leaflet shape": "ovate", "leaflet margin": "entire", "leaflet tip": "acute",
    "leaflet base": "rounded",
}  # fmt: skip


def form_of(how: str, **words: str) -> Division:
    """Return the form of a much divided leaf."""
    form = division(leaves_told(PLAIN | {"division": how} | words))
    assert form is not None
    return form


def test_more_divisions_mean_more_and_smaller_pieces() -> None:
    drawn = [
        len(points_of(plume(form_of(f"{often} pinnate"), 200)))
        for often in ("twice", "thrice", "four times")
    ]
    assert drawn[0] < drawn[1] < drawn[2]


@pytest.mark.parametrize("how", ["twice pinnate", "thrice pinnate", "ferny", "four times pinnate"])
def test_a_plume_is_as_long_as_asked_for_has_its_branches_and_stays_small(how: str) -> None:
    ink = plume(form_of(how), 200)
    assert parts_of(ink)["branch"] == 13
    assert max(p.imag for p in points_of(ink)) == pytest.approx(200, abs=6)
    assert len(ink_svg(ink, "x")) < 4096


def test_the_outline_of_the_whole_is_that_recorded() -> None:
    def widest(shape: str) -> float:
        points = points_of(plume(form_of("twice pinnate", shape=shape), 200))
        return max(points, key=lambda p: p.real).imag

    low, middle, high = (widest(shape) for shape in ("triangular", "elliptic", "oblanceolate"))
    assert low < middle < high


def test_segments_without_a_shape_are_dotted() -> None:
    form = division(leaves_told({"division": "thrice pinnate"}))
    assert form is not None
    assert parts_of(plume(form, 200))["dotted"] > 50
    assert parts_of(plume(form_of("thrice pinnate"), 200))["dotted"] == 0


def test_threads_are_lines_only() -> None:
    parts = parts_of(thread(form_of("thread-like segments"), 200))
    assert parts["branch"] == 12
    assert parts["leaflet"] == 0
    assert parts["fine"] > 90
