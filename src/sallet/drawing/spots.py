"""Where on a drawing a character is to be seen: the place that a pin points at."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.drawing.ink import points

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.sketch import Sketch

SHARES: Final[Mapping[str, tuple[float, float]]] = {
    "tip": (0.5, 1.0), "leaflet tip": (0.5, 1.0), "lobing": (0.8, 0.62),
    "margin": (0.95, 0.66), "leaflet margin": (0.6, 0.86), "shape": (0.95, 0.78),
    "leaflet shape": (0.6, 0.9), "base": (0.56, 0.34), "leaflet base": (0.56, 0.5),
    "venation": (0.62, 0.72), "pairs of side veins": (0.62, 0.6), "markings": (0.6, 0.6),
    "attachment": (0.5, 0.16), "stalk length": (0.5, 0.1), "stipules": (0.7, 0.5),
    "sheath": (0.6, 0.3), "arrangement": (0.5, 0.42), "rises from the ground": (0.5, 0.2),
    "division": (0.7, 0.55), "leaflets": (0.9, 0.5), "length": (0.5, 0.9), "width": (0.95, 0.55),
    "interior": (0.5, 0.5), "section": (0.9, 0.8), "ridges": (0.96, 0.6),
    "bracts": (0.5, 0.36), "number of bracts": (0.44, 0.36), "bracteoles": (0.8, 0.62),
    "number of bracteoles": (0.84, 0.62), "rays": (0.62, 0.6), "inflorescence": (0.7, 0.8),
    "petals": (0.8, 0.8), "petal tip": (0.92, 0.72), "stamens": (0.5, 0.56), "styles": (0.5, 0.5),
    "sepals": (0.7, 0.16), "spur": (0.1, 0.4), "ribs": (0.6, 0.6), "stalk": (0.5, 0.04),
    "remains of the flower": (0.5, 0.98), "kind": (0.85, 0.7), "coat": (0.9, 0.5),
    "number of tubers": (0.8, 0.3),
}  # fmt: skip
"""Across and up, in shares of the drawing's box, by label; elsewhere the upper right of it."""
_ELSEWHERE: Final = (0.85, 0.8)


def spot(sketch: Sketch, label: str) -> complex:
    """Return the point of the ink that lies nearest to where a character is to be seen."""
    room = sketch.box
    across, up = SHARES.get(label, _ELSEWHERE)
    wanted = complex(room.left + across * room.width, room.bottom + up * room.height)
    return min(points(sketch.ink, 4), key=lambda point: abs(point - wanted), default=wanted)
