"""Catkins: tails of overlapping scales, hanging or upright."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import GOLDEN
from sallet.drawing.ink import Copy, Curve, Mark, Path, Place

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.inflorescence.cluster import Cluster
    from sallet.drawing.ink import Ink

BREADTHS: Final[Mapping[str, tuple[float, float]]] = {
    "": (0.07, 0.5),
    "cylinder": (0.07, 0.05),
    "cone": (0.16, 0.95),
}
"""Half the breadth in shares of the length, and by how much the tip is narrower."""
SCALES: Final = 88


def catkin(cluster: Cluster, size: float) -> Ink:
    """Return a tail of scales that hangs from the origin, or stands on it."""
    upright = cluster.face == "up"
    half, taper = BREADTHS[cluster.outline]
    scale = _scale(size * 0.095, size * 0.042)
    found = []
    for number in range(SCALES):
        share = (number + 0.5) / SCALES
        angle = math.radians(number * GOLDEN)
        if math.cos(angle) < -0.1:  # noqa: PLR2004 - behind
            continue
        # Narrow where it hangs, and rounded at the free end.
        broad = size * half * (1 - taper * share) * min(1.0, 0.45 + share * 7, (1.02 - share) * 9)
        x = broad * math.sin(angle)
        y = size * (0.02 + 0.91 * share)
        place = Place(complex(x, y if upright else -y), _turn(x / broad * 0.55, upright=upright))
        found.append((share, math.cos(angle), Copy(scale, place, "scale")))
    # Tiles: those nearer the free end lie under those before them.
    found.sort(key=lambda one: (-one[0], one[1]))
    return tuple(copy for _, _, copy in found)


def _turn(lean: float, *, upright: bool) -> complex:
    angle = -lean if upright else math.pi + lean
    return complex(math.cos(angle), math.sin(angle))


def _scale(length: float, half: float) -> Ink:
    """Return one scale, its foot at the origin, its free end a blunt point."""
    foot, side, tip = complex(half * 0.5, 0), complex(half * 1.3, length * 0.35), 1j * length
    shoulder = complex(half * 0.75, length * 0.85)
    left = Curve(_across(side), _across(shoulder), tip)
    right = Curve(shoulder, side, foot)
    return (Mark(Path(_across(foot), (left, right), closed=True), "thin"),)


def _across(point: complex) -> complex:
    return -point.conjugate()
