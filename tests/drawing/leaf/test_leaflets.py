"""What all divided blades are made of."""

from __future__ import annotations

from dataclasses import replace

import pytest

from helpers.drawings import points_of
from helpers.leaves import leaves_told
from sallet.drawing.ink import Mark, plain
from sallet.drawing.leaf.division import Division, division
from sallet.drawing.leaf.leaflets import axis, dotted_leaflet, leaflet_ink, on_stalk, stalk_of


def form_of(**words: str) -> Division:
    """Return the form of a leaf of three leaflets."""
    told = leaves_told(
        {"division": "palmate", **{k.replace("_", " "): v for k, v in words.items()}}
    )
    form = division(told)
    assert form is not None
    return form


def test_a_leaflet_is_as_long_as_asked_for_and_dotted_without_a_shape() -> None:
    shaped = form_of(leaflet_shape="ovate", leaflet_margin="entire")
    for form in (shaped, replace(shaped, leaflet=None)):
        points = points_of(leaflet_ink(form, 60))
        assert max(p.imag for p in points) == pytest.approx(60, abs=0.1)
        assert min(p.imag for p in points) == pytest.approx(0, abs=0.1)
    assert [m.pen for m in plain(dotted_leaflet(60))] == ["dotted"]


@pytest.mark.parametrize(
    ("words", "share", "pen"),
    [({}, 0.05, "dotted"), ({"leaflet_stalk": "stalkless"}, 0, None),
     ({"leaflet_stalk": "short-stalked"}, 0.05, "line"), ({"leaflet_stalk": "stalked"}, 0.16, "line")],
)  # fmt: skip
def test_a_leaflet_stands_on_the_stalk_that_is_recorded(
    words: dict[str, str], share: float, pen: str | None
) -> None:
    form = form_of(**words)
    stalk = stalk_of(form, 100)
    assert stalk == pytest.approx(100 * share)
    piece = (Mark(axis(10).path, "fine"),)
    drawn = on_stalk(form, piece, stalk)
    assert [m.pen for m in plain(drawn)] == ([pen, "fine"] if pen else ["fine"])
    assert min(p.imag for p in points_of(drawn[-1:])) == pytest.approx(stalk)


def test_an_axis_is_narrower_upwards() -> None:
    across = [abs(piece.end.real) for piece in axis(100).path.pieces]
    assert across == [0.5, 0.5, 1.4]
    assert axis(100).part == "axis"
