"""What all divided blades are made of: leaflets, their stalks, the axis that carries them."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import ellipse, straight
from sallet.drawing.ink import Mark, put, turned
from sallet.drawing.leaf.blade import blade_ink

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.ink import Ink, Pen
    from sallet.drawing.leaf.division import Division

_STALKS: Final[Mapping[str, float]] = {"": 0.05, "short": 0.05, "long": 0.16}
"""Length of a leaflet's stalk, in its own lengths, by the hint; dotted where none is recorded."""


def leaflet_ink(form: Division, length: float, pen: Pen = "line") -> Ink:
    """Return a leaflet of some length, its base at 0."""
    if form.leaflet is None:
        return dotted_leaflet(length)
    return blade_ink(form.leaflet, length, "", pen)


def dotted_leaflet(length: float) -> Ink:
    """Return a leaflet of which nothing is recorded."""
    return (Mark(ellipse(0.5j * length, 0.24 * length, 0.5 * length), "dotted"),)


def axis(length: float, thick: float = 1.4) -> Mark:
    """Return the axis of a divided leaf, narrower upwards."""
    return Mark(
        straight(
            complex(-thick, 0), complex(-0.5, length), complex(0.5, length), complex(thick, 0)
        ),
        "line",
        "axis",
    )


def stalk_of(form: Division, length: float) -> float:
    """Return the length of a leaflet's own stalk."""
    kind = form.stalks.value if form.stalks else ""
    return _STALKS.get(kind, 0.0) * length


def on_stalk(form: Division, piece: Ink, stalk: float) -> Ink:
    """Return a leaflet on its stalk, dotted where none is recorded."""
    if not stalk:
        return piece
    pen: Pen = "line" if form.stalks else "dotted"
    return (Mark(straight(0j, 1j * stalk), pen), *put(piece, turned(0, 1j * stalk)))
