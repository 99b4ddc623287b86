"""The outlines that the words for stems and leaf stalks cut across stand for.

All lengths are in shares of the breadth, which is one; the upper side of a leaf stalk is up.
"""

from __future__ import annotations

import cmath
import math
from itertools import pairwise
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import circle
from sallet.drawing.ink import Curve, Line, Path
from sallet.drawing.stem.section_outline import RIDGES, Outline, one_furrow, ridged

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from sallet.drawing.ink import Piece

_BEND: Final = 0.62
"""How far the handles of a rounded corner reach towards it."""


def polygon(corners: Sequence[complex], cut: float) -> Path:
    """Return straight sides with rounded corners; `cut` is how much of a side each takes."""
    pieces: list[Piece] = []
    count = len(corners)
    start = corners[0] + (corners[1] - corners[0]) * cut
    for number in range(1, count + 1):
        before, at, behind = (corners[(number + n) % count] for n in (-1, 0, 1))
        into, out = at + (before - at) * cut, at + (behind - at) * cut
        pieces.append(Line(into))
        pieces.append(Curve(into + (at - into) * _BEND, out + (at - out) * _BEND, out))
    return Path(start, tuple(pieces), closed=True)


def arc(begin: float, end: float, radius: float, middle: complex = 0j) -> Path:
    """Return an arc from one angle to another, in degrees."""
    count = max(1, math.ceil(abs(end - begin) / 91))
    step = math.radians(end - begin) / count
    handle = 4 / 3 * math.tan(step / 4) * radius
    pieces = []
    for number in range(count):
        a = cmath.rect(1, math.radians(begin) + number * step)
        b = a * cmath.rect(1, step)
        pieces.append(
            Curve(
                middle + a * (radius + 1j * handle),
                middle + b * (radius - 1j * handle),
                middle + b * radius,
            )
        )
    return Path(middle + cmath.rect(radius, math.radians(begin)), tuple(pieces))


def _lens() -> Path:
    top, low = 0.27j, -0.27j
    return Path(
        0.5 + 0j,
        (Curve(0.2 + top, -0.2 + top, -0.5 + 0j), Curve(-0.2 + low, 0.2 + low, 0.5 + 0j)),
        closed=True,
    )


def _slab(half: float) -> Path:
    """Return a strip of breadth one with rounded ends."""
    end, bend = 0.5 - half, half * 0.5523
    up = 1j * half
    return Path(
        end + up,
        (
            Line(-end + up),
            Curve(-end - bend + up, -0.5 + 1j * bend, -0.5 + 0j),
            Curve(-0.5 - 1j * bend, -end - bend - up, -end - up),
            Line(end - up),
            Curve(end + bend - up, 0.5 - 1j * bend, 0.5 + 0j),
            Curve(0.5 + 1j * bend, end + bend + up, end + up),
        ),
        closed=True,
    )


def _half_round() -> Path:
    left, right, soft = -0.5 + 0.2j, 0.5 + 0.2j, 0.05
    return Path(
        right - soft + 0.02j,
        (
            Line(left + soft + 0.02j),
            Curve(left + 0.02j, left, left - 1j * soft),
            Curve(-0.5 - 0.14j, -0.28 - 0.32j, -0.32j),
            Curve(0.28 - 0.32j, 0.5 - 0.14j, right - 1j * soft),
            Curve(right, right + 0.02j, right - soft + 0.02j),
        ),
        closed=True,
    )


def _crescent() -> Path:
    left, right = -0.47 + 0.27j, 0.47 + 0.27j
    return Path(
        right,
        (
            Curve(0.36 + 0.31j, 0.27 - 0.02j, -0.02j),
            Curve(-0.27 - 0.02j, -0.36 + 0.31j, left),
            Curve(-0.58 + 0.2j, -0.46 - 0.36j, -0.36j),
            Curve(0.46 - 0.36j, 0.58 + 0.2j, right),
        ),
        closed=True,
    )


def _wing(degrees: float, radius: float, reach: float, wide: float) -> tuple[Piece, ...]:
    """Return a thin wing, drawn from its left foot over its tip to its right foot."""
    turn = cmath.rect(1, math.radians(degrees))
    tip, side = turn * reach, turn * 1j
    right = turn * cmath.rect(radius, -wide)
    left = turn * cmath.rect(radius, wide)
    return (
        Curve(right + turn * 0.03, tip - side * 0.03 - turn * 0.07, tip - side * 0.012),
        Curve(tip - side * 0.008 + turn * 0.012, tip + side * 0.008 + turn * 0.012, tip + side * 0.012),
        Curve(tip + side * 0.03 - turn * 0.07, left + turn * 0.03, left),
    )  # fmt: skip


def _winged(angles: Sequence[float], radius: float, reach: float) -> Path:
    """Return a round body with wings at some angles, from the first to the last."""
    wide = 0.16
    gap = math.degrees(wide)
    start = cmath.rect(radius, math.radians(angles[0] - gap))
    path = Path(start, _wing(angles[0], radius, reach, wide))
    for before, angle in pairwise(angles):
        path = path.then(arc(before + gap, angle - gap, radius))
        path = path.then(Path(path.end, _wing(angle, radius, reach, wide)))
    return path


def _angled() -> Outline:
    # Two corners are drawn and the rest is left open, so that nobody counts them.
    radius = 0.5
    a, b, c, d = (cmath.rect(radius, math.radians(x)) for x in (-2, 52, 106, 160))
    side = 0.16
    inked = Path(
        a,
        (
            Line(b + (a - b) * side), Curve(b, b, b + (c - b) * side),
            Line(c + (b - c) * side), Curve(c, c, c + (d - c) * side), Line(d),
        ),
    )  # fmt: skip
    rest = arc(160, 358, radius)
    return Outline(
        inked.then(rest).shut(),
        0.43 + 0.43j,
        -0.03 - 0.03j,
        (b, c),
        inked=(inked,),
        dotted=(rest,),
    )


def _winged_stem() -> Outline:
    angles = (30.0, 90.0, 150.0)
    radius, reach = 0.36, 0.57
    wings = _winged(angles, radius, reach)
    first, last = (
        arc(8, 30 - math.degrees(0.16), radius),
        arc(150 + math.degrees(0.16), 172, radius),
    )
    rest = arc(172, 368, radius)
    inked = first.then(wings).then(last)
    tips = tuple(cmath.rect(reach, math.radians(angle)) for angle in angles)
    return Outline(inked.then(rest).shut(), 0.36 + 0.36j, 0j, tips, inked=(inked,), dotted=(rest,))


def _winged_stalk() -> Outline:
    radius, reach = 0.27, 0.5
    wings = _winged((22.0, 158.0), radius, reach)
    edge = wings.then(arc(158 + math.degrees(0.16), 382 - math.degrees(0.16), radius)).shut()
    return Outline(edge, 0.27 + 0.27j)


_FIVE: Final = tuple(
    cmath.rect(0.5 / math.sin(math.radians(72)), math.radians(90 + 72 * n)) for n in range(5)
)
_SQUARE: Final = (0.5 + 0.5j, -0.5 + 0.5j, -0.5 - 0.5j, 0.5 - 0.5j)
_THREE: Final = (0.577j, -0.5 - 0.289j, 0.5 - 0.289j)
_KEELED: Final = tuple(-corner for corner in _THREE)
_ROUND: Final = Outline(circle(0j, 0.5))
PLAIN: Final = _ROUND
"""What stands for an outline that is not recorded."""

STEMS: Final[Mapping[str, Outline]] = {
    "round": _ROUND,
    "square": Outline(polygon(_SQUARE, 0.1), 0.5 + 0.5j, 0j, _SQUARE, sides=4),
    "triangle": Outline(polygon(_THREE, 0.1), 0.285 + 0.285j, 0j, _THREE, sides=3),
    "two edges": Outline(_lens(), 0.36 + 0.19j, 0j, (0.5 + 0j, -0.5 + 0j), sides=2),
    "five": Outline(polygon(_FIVE, 0.12), 0.42 + 0.42j, 0j, _FIVE, sides=5),
    "angles": _angled(),
    "grooves": ridged(_ROUND, RIDGES["grooves"]),
    "wings": _winged_stem(),
    "flat": Outline(_slab(0.15), 0.46 + 0.15j),
    "half": Outline(_half_round(), 0.36 + 0.235j, -0.04j),
}
"""By the vocabulary's hint `section` of stems."""

STALKS: Final[Mapping[str, Outline]] = {
    "round": _ROUND,
    "half": STEMS["half"],
    "triangle": Outline(polygon(_KEELED, 0.1), 0.285 + 0.285j, 0j),
    "groove": Outline(one_furrow(_ROUND.edge, 0.17), 0.36 + 0.33j, -0.1j),
    "crescent": Outline(_crescent(), 0.3 + 0.15j, -0.185j),
    "flat": STEMS["flat"],
    "wings": _winged_stalk(),
    "ridges": ridged(_ROUND, RIDGES["middle"]),
}
"""By the vocabulary's hint `section` of leaf stalks."""
