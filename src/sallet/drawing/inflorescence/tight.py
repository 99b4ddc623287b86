"""Clusters without visible stalks: heads, globes, rings, knots, spikelets; and single flowers."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import smooth
from sallet.drawing.inflorescence.florets import FLOWER, UNCOUNTED, bulbil, put_bulbil
from sallet.drawing.inflorescence.space import (
    ORIGIN,
    UP,
    Eye,
    Piece,
    Vec,
    cap,
    direction,
    stacked,
)  # fmt: skip
from sallet.drawing.inflorescence.spathe import wrap
from sallet.drawing.inflorescence.whorls import Ring, ring
from sallet.drawing.ink import Copy, Curve, Mark, Path, turned

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.inflorescence.cluster import Cluster
    from sallet.drawing.inflorescence.florets import Florets
    from sallet.drawing.ink import Ink

PACKED: Final = 64
"""Flowers of a head whose number is not recorded: packed, so that nobody counts them."""
TALL: Final = 120
"""The same of a cone or a cylinder."""
BALL: Final = 130
"""The same of a ball; those at its back are hidden."""
_BEHIND: Final = -0.2
_HEAD_EYE: Final = Eye(24)
_EYE: Final = Eye(12)
PROFILES: Final[Mapping[str, tuple[float, float]]] = {
    "": (0.42, 90),
    "flat": (0.1, 90),
    "domed": (0.75, 90),
    "hollow": (-0.22, 90),
    "ball": (0.94, 150),
    "cone": (1.7, 90),
    "cylinder": (2.0, 90),
}
"""How high a head stands in half widths, and how far round its flowers go."""


def head(cluster: Cluster, florets: Florets, size: float) -> Ink:
    """Return small flowers packed into one head, its foot at the origin."""
    high, round_ = PROFILES[cluster.outline]
    return _packed(cluster, florets, size, high, round_, _HEAD_EYE)


def globe(cluster: Cluster, florets: Florets, size: float) -> Ink:
    """Return small flowers crowded into a ball, in what spathe is recorded."""
    behind, before = wrap(cluster.spathe, size)
    return (*behind, *_packed(cluster, florets, size, 1.0, 165, _EYE), *before)


def _packed(  # noqa: PLR0913, PLR0917 - a head is given by as many numbers
    cluster: Cluster, florets: Florets, size: float, high: float, round_: float, eye: Eye
) -> Ink:
    half = size / 2 - florets.width / 2
    ball = round_ > 90  # noqa: PLR2004 - its flowers go farther round than the level
    # So high that the edge towards the eye does not hang below the foot.
    lift = half * (abs(high) if ball else 0.42)
    tall = high > 1
    count = cluster.flowers or (BALL if ball else TALL if tall else PACKED)
    pieces = []
    for way in cap(count, round_):
        tip = _spot(cluster.outline, way, high) * half + UP * lift
        face = Vec(way.x, way.y, way.z / max(abs(high), 0.3)).unit
        # Those at the back of a ball are not drawn, where nobody counts them.
        if cluster.flowers or not ball or eye.toward.dot(face) > _BEHIND:
            pieces.append(Piece(eye.depth(tip), (florets.facing(eye, tip, face),)))
    if cluster.bracts and not cluster.bracts.none:
        given = Ring(cluster.bracts, cluster.bract_number, half * 0.6 + size * 0.1, "bract")
        pieces += ring(eye, given, ORIGIN, UP)
    if cluster.bulbils:
        pieces += _bulbils(eye, half, lift, size * 0.07, 10 if cluster.bulbils > 1 else 60)
    return stacked(pieces)


def _spot(outline: str, way: Vec, high: float) -> Vec:
    """Return where on a head of half width one a flower sits."""
    out = math.hypot(way.x, way.y)
    if outline == "cone":
        return Vec(way.x, way.y, (1 - out) * high)
    if outline == "cylinder" and out:
        broad = min(1.5, 1 / out)
        return Vec(way.x * broad, way.y * broad, way.z * high)
    return Vec(way.x, way.y, way.z * high)


def _bulbils(eye: Eye, half: float, lift: float, width: float, count: int) -> list[Piece]:
    piece = bulbil(width)
    found = []
    for way in cap(count, 120):
        tip = way * half + UP * lift
        if eye.toward.dot(way) > _BEHIND:
            mark = put_bulbil(piece, eye.at(tip), -math.degrees(math.atan2(way.x, way.z + 0.3)))
            found.append(Piece(eye.depth(tip) - width * 2, (mark,)))
    return found


def whorls(cluster: Cluster, florets: Florets, size: float) -> Ink:
    """Return three rings of flowers round a stem; how many there are is not said: it goes on."""
    count = cluster.flowers or 15
    half = florets.width * 0.9
    pieces = [
        Piece(
            0,
            (Mark(smooth([complex(side, 0.1 * size), complex(side, 0.9 * size)]), "line", "axis"),),
        )
        for side in (-size * 0.014, size * 0.014)
    ]
    for level in (0.2, 0.5, 0.8):
        for number in range(count):
            azimuth = -90 + (number + 0.5) * 360 / count
            polar = {"up": 20, "down": 130, "straight down": 170}.get(cluster.face, 78)
            tip = Vec(0, 0, level * size) + direction(azimuth, 84) * half
            mark = florets.facing(_EYE, tip, direction(azimuth, polar))
            pieces.append(Piece(_EYE.depth(tip) - level * 0.01, (mark,)))
    ink = stacked(pieces)
    ends = [
        Mark(smooth([complex(side, low * size), complex(side, (low + 0.1) * size)]), "dotted")
        for side in (-size * 0.014, size * 0.014) for low in (0.0, 0.9)
    ]  # fmt: skip
    return (*ends, *ink)


def knot(cluster: Cluster, florets: Florets, size: float) -> Ink:
    """Return a small tight bunch, its foot at the origin."""
    count = cluster.flowers or 22
    half = min((size - florets.width) / 2, florets.width * 0.36 * math.sqrt(count))
    middle = Vec(florets.width * 0.3, 0, half * 0.62 + florets.width * 0.3)
    pieces = []
    for way in cap(count, 125 if count > 3 else 60):  # noqa: PLR2004 - so few stand side by side
        tip = middle + way * half
        pieces.append(Piece(_EYE.depth(tip), (florets.facing(_EYE, tip, way),)))
    return stacked(pieces)


def spikelet(cluster: Cluster, size: float) -> Ink:
    """Return overlapping scales in two rows, two empty ones at the foot."""
    count = cluster.flowers or 6
    step = size * 0.78 / (count + 2)
    length = max(size - step * (count + 1), size * 0.22)
    scale = _scale(length, min(length * 0.3, size * 0.13))
    part = FLOWER if cluster.flowers else UNCOUNTED
    marks: list[Mark | Copy] = []
    for number in range(count + 1, -1, -1):
        side = 1 if number % 2 else -1
        share = number / (count + 2)
        place = turned(
            -side * (13 - 7 * share), complex(0, step * number), 1 - 0.25 * share, mirrored=side < 0
        )
        marks.append(Copy(scale, place, "glume" if number < 2 else part))  # noqa: PLR2004
    if cluster.flowers is None:
        top = step * (count + 1) + length * 0.8
        marks.insert(
            0,
            Mark(smooth([complex(0, top - length * 0.3), complex(0, top + size * 0.12)]), "dotted"),
        )
    return tuple(marks)


def _scale(length: float, half: float) -> Ink:
    tip = 1j * length
    outline = Path(
        0j,
        (
            Curve(complex(half * 1.3, length * 0.08), complex(half * 1.2, length * 0.6), tip),
            Curve(complex(-half * 0.35, length * 0.75), complex(-half * 0.6, length * 0.2), 0j),
        ),
        closed=True,
    )
    keel = Path(complex(half * 0.25, length * 0.12), (
        Curve(complex(half * 0.75, length * 0.35), complex(half * 0.55, length * 0.65), complex(half * 0.12, length * 0.9)),
    ))  # fmt: skip
    return (Mark(outline), Mark(keel, "fine"))


def few(cluster: Cluster, florets: Florets, size: float) -> Ink:
    """Return one flower on its stalk, or two."""
    leans = (0.0,) if cluster.plan == "single" else (24.0, -24.0)
    polar = {"side": 82, "down": 132, "straight down": 176}.get(
        cluster.face, 12.0 if cluster.face == "up" else 50.0
    )
    pieces: list[Piece] = []
    for lean in leans:
        azimuth = -40 if lean <= 0 else 220
        out = direction(-15 if lean <= 0 else 195, 90)
        bend = size * (0.16 if polar > 60 else 0.03)  # noqa: PLR2004 - only a bent neck reaches out
        knee = Vec(0, 0, size * 0.55) + out * (size * 0.22 * bool(lean))
        tip = knee + out * bend + UP * (0.0 if polar > 60 else size * 0.08)  # noqa: PLR2004
        through = Vec(0, 0, size * 0.4) + UP * (size * 0.3 * (polar > 60))  # noqa: PLR2004
        pieces.append(Piece(size, (Mark(_EYE.line(ORIGIN, through, tip), "line", "stalk"),)))
        pieces.append(
            Piece(_EYE.depth(tip) - size, (florets.facing(_EYE, tip, direction(azimuth, polar)),))
        )
    if cluster.bracts and not cluster.bracts.none:
        given = Ring(cluster.bracts, cluster.bract_number, size * 0.2, "bract")
        pieces += ring(_EYE, given, ORIGIN + UP * (size * 0.12), UP)
    return stacked(pieces)
