"""Leaves divided like fingers, like a bird's foot, or in threes."""

from __future__ import annotations

import cmath
import math
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import straight
from sallet.drawing.ink import Copy, Mark, turned
from sallet.drawing.leaf.leaflets import axis, dotted_leaflet, leaflet_ink, on_stalk, stalk_of

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.ink import Ink
    from sallet.drawing.leaf.division import Division

_HALVES: Final[Mapping[int, tuple[tuple[float, float], ...]]] = {
    2: ((26, 1.0),),
    3: ((64, 0.86), (0, 1.0)),
    4: ((84, 0.72), (28, 1.0)),
    5: ((96, 0.66), (46, 0.88), (0, 1.0)),
    6: ((108, 0.6), (64, 0.8), (21, 1.0)),
    7: ((114, 0.55), (76, 0.74), (38, 0.92), (0, 1.0)),
    8: ((120, 0.5), (86, 0.68), (52, 0.86), (17, 1.0)),
    9: ((126, 0.46), (95, 0.62), (63, 0.79), (32, 0.94), (0, 1.0)),
}
"""Degrees from the middle and lengths of the leaflets of the right half, by their number."""
_UNKNOWN: Final = 5
"""Leaflets where no number is recorded: all but the middle one are dotted."""


def palm(form: Division, size: float) -> Ink:
    """Return leaflets that spread from one point."""
    number = form.pattern.value.fixed or (form.number.value if form.number else 0)
    stalk = stalk_of(form, size)
    piece = on_stalk(form, leaflet_ink(form, size - stalk), stalk)
    ink: list[Copy] = []
    for angle, share in _HALVES[number or _UNKNOWN]:
        known = bool(number) or not angle
        for sign in (1, -1) if angle else (1,):
            place = turned(sign * angle, 0j, share, mirrored=sign < 0)
            shown = piece if known and not (form.end_only and angle) else dotted_leaflet(size)
            ink.append(Copy(shown, place, "leaflet" if known else "unknown"))
    return tuple(ink)


def foot_like(form: Division, size: float) -> Ink:
    """Return leaflets of which the outer branch from their neighbours."""
    side = form.number.value // 2 if form.number else 3
    piece = leaflet_ink(form, size)
    ink: list[Mark | Copy] = []
    at = [0j]
    for step in range(side):
        at.append(at[-1] + cmath.rect(0.12 * size, math.radians(8 - 22 * step)))
    for sign in (1, -1):
        arm = [p if sign > 0 else -p.conjugate() for p in at]
        ink.append(Mark(straight(*arm)))
        for step in range(side, 0, -1):
            known = bool(form.number) or step == 1
            lean = -sign * (22 + 26 * step)
            place = turned(lean, arm[step], 0.92 - 0.11 * step, mirrored=sign < 0)
            ink.append(
                Copy(piece, place, "leaflet") if known
                else Copy(dotted_leaflet(size), place, "unknown")
            )  # fmt: skip
    ink.append(Copy(piece, turned(0), "leaflet"))
    return tuple(ink)


def threes(form: Division, size: float) -> Ink:
    """Return a leaf divided in three, and each part again."""
    return _three(form, size, form.pattern.value.times)


def _three(form: Division, size: float, times: int) -> Ink:
    if times == 1:
        part, name, spread, share = leaflet_ink(form, 0.62 * size), "leaflet", 68, 0.86
    else:
        part, name, spread, share = _three(form, 0.62 * size, times - 1), "third", 70, 0.92
    low = (0.28 if times == 1 else 0.26) * 1j * size
    return (
        axis(0.36 * size, 1.0 if times == 1 else 1.4),
        *(Copy(part, turned(s * spread, low, share, mirrored=s < 0), name) for s in (1, -1)),
        Copy(part, turned(0, 0.36j * size), name),
    )
