"""Umbels: stalks that spring from one point, each with a flower or a smaller umbel."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import straight
from sallet.drawing.inflorescence.florets import bulbil, put_bulbil
from sallet.drawing.inflorescence.rays import UNCOUNTED_RAYS, half_of_little
from sallet.drawing.inflorescence.space import (
    ORIGIN,
    UP,
    Eye,
    Piece,
    Vec,
    cap,
    direction,
    disc,
    leaning,
    stacked,
)  # fmt: skip
from sallet.drawing.inflorescence.spathe import wrap
from sallet.drawing.inflorescence.whorls import Ring, Whorl, collar, ring
from sallet.drawing.ink import Copy, Mark, Place

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.inflorescence.cluster import Cluster
    from sallet.drawing.inflorescence.florets import Florets
    from sallet.drawing.ink import Ink, Pen

_EYE: Final = Eye(9)
_LATE: Final = 0.5
UNCOUNTED_FLOWERS: Final = 10
AGAIN: Final = 10
"""Flowers of a little umbel, crowded: their number is not recorded."""
FINE: Final = 15
"""From so many rays on they are drawn fine."""


@dataclass(frozen=True)
class Top:
    """The outline of an umbel: how high its middle and its edge stand, in half widths."""

    middle: float
    edge: float
    polar: float = 0.0
    """A ball: how far from upright its lowest flower stands, in degrees."""


TOPS: Final[Mapping[str, Top]] = {
    "": Top(0.98, 0.72),
    "flat": Top(0.86, 0.86),
    "domed": Top(1.15, 0.5),
    "hollow": Top(0.62, 1.05),
    "ball": Top(1, 1, 150),
}


def ends(count: int, top: Top, half: float) -> list[Vec]:
    """Return where the rays end."""
    if top.polar:
        return [way * half for way in cap(count, top.polar)]
    found = []
    for out in disc(count):
        height = top.middle + (top.edge - top.middle) * (out.x**2 + out.y**2)
        found.append((out + UP * height) * half)
    return found


def _top(cluster: Cluster, size: float, half: float) -> Top:
    """Return the outline of the top, as high as the length of the rays makes it."""
    top = TOPS[cluster.outline]
    if cluster.steep is None or top.polar:
        return top
    edge = math.sqrt(max((cluster.steep * size / half) ** 2 - 1, 0.0))
    return Top(max(edge + top.middle - top.edge, 0.3), edge)


def rays(eye: Eye, tips: list[Vec], pen: Pen, part: str = "ray", bow: float = 0.1) -> list[Piece]:
    """Return the rays from the origin, slightly bowed outwards."""
    found = []
    for tip in tips:
        through = tip * 0.5 + Vec(0, 0, tip.length * bow)
        found.append(Piece(eye.depth(tip), (Mark(eye.line(ORIGIN, through, tip), pen, part),)))
    return found


@dataclass(frozen=True)
class Little:
    """The little umbels of a compound umbel: one seen from each of eight sides, and upright."""

    florets: Florets
    half: float
    whorl: Whorl | None
    count: int | None

    def seen(self, eye: Eye, azimuth: float, polar: float) -> Ink:
        """Return one whose axis leans some way."""
        axis = direction(azimuth, polar)
        stalks: list[Mark] = []
        flowers: list[Piece] = []
        for way in cap(AGAIN, 47):
            leant = leaning(axis, way)
            tip = leant * self.half
            mark = self.florets.facing(eye, tip, (leant + axis).unit)
            flowers.append(Piece(eye.depth(tip) - self.half, (mark,)))
            stalks.append(Mark(straight(0j, eye.at(tip)), "fine"))
        under = self._under(eye, axis, azimuth)
        behind = [piece for piece in under if piece.depth > 0]
        before = [piece for piece in under if piece.depth <= 0]
        return (*stacked(behind), *stalks, *stacked([*before, *flowers]))

    def _under(self, eye: Eye, axis: Vec, azimuth: float) -> list[Piece]:
        if self.whorl is None:
            return [collar(eye, axis * (self.half * 0.12), self.half * 0.9)]
        if self.whorl.none:
            return []
        length = self.half * (1.75 if self.whorl.kind.posture == "down" else 1.05)
        given = Ring(self.whorl, self.count, length, "bracteole", azimuth)
        return ring(eye, given, ORIGIN, axis)


def umbel(cluster: Cluster, florets: Florets, size: float) -> Ink:
    """Return an umbel of single flowers, its foot at the origin."""
    given = cluster.rays or cluster.flowers
    count = given or UNCOUNTED_FLOWERS
    half = size / 2 - florets.width * 0.42
    tips = ends(count, _top(cluster, size, half), half)
    pieces = rays(_EYE, tips, "line" if given else "dotted")
    flowers = []
    for number, tip in enumerate(tips):
        share = math.sqrt((number + 0.5) / count)
        late = {"in": 1 - share, "out": share}.get(cluster.order, 0.0)
        way = (tip.unit + UP * 0.15).unit
        mark = (
            florets.closed(_EYE, tip, way) if late > _LATE and count > 1
            else florets.facing(_EYE, tip, way)
        )  # fmt: skip
        flowers.append(Piece(_EYE.depth(tip), (mark,)))
    if cluster.bracts and not cluster.bracts.none:
        given_ring = Ring(cluster.bracts, cluster.bract_number, size * 0.2, "bract")
        pieces += ring(_EYE, given_ring, ORIGIN, UP)
    if cluster.bulbils:
        pieces += _bulbils(cluster.bulbils, size)
    behind, before = wrap(cluster.spathe, size)
    return (*behind, *stacked(pieces), *before, *stacked(flowers))


def _bulbils(step: int, size: float) -> list[Piece]:
    # They sit close on the point from which the stalks spring, in a knob where they are many.
    many = step == 1
    piece = bulbil(size * 0.05)
    found = []
    for way in cap(16 if many else 5, 100):
        tip = way * (size * (0.085 if many else 0.05)) + UP * (size * 0.04)
        mark = put_bulbil(piece, _EYE.at(tip), -math.degrees(math.atan2(way.x, way.z + 0.5)))
        found.append(Piece(_EYE.depth(tip) - size, (mark,)))
    return found


def compound(cluster: Cluster, florets: Florets, size: float) -> Ink:
    """Return a compound umbel, its foot at the origin."""
    count = cluster.rays or UNCOUNTED_RAYS
    little = size * half_of_little(count)
    half = size / 2 - little
    tips = ends(count, _top(cluster, size, half), half)
    pen: Pen = "dotted" if cluster.rays is None else "line" if count < FINE else "thin"
    many = Little(florets, little, cluster.bracteoles, cluster.bracteole_number)
    pieces = rays(_EYE, tips, pen)
    if cluster.bracts is None:
        pieces.append(collar(_EYE, ORIGIN, size * 0.1))
    elif not cluster.bracts.none:
        given = Ring(cluster.bracts, cluster.bract_number, size * 0.19, "bract")
        pieces += ring(_EYE, given, ORIGIN, UP)
    return stacked(pieces) + stacked(_little_umbels(many, tips))


def _little_umbels(little: Little, tips: list[Vec]) -> list[Piece]:
    views: dict[tuple[int, float], Ink] = {}
    found = []
    for tip in tips:
        # They hold themselves more upright than their rays.
        way = (tip.unit + UP * 0.6).unit
        step = (round((way.azimuth + 30) / 60) * 60 - 30) % 360
        step, lean = (step, 27.0) if way.polar > 12 else (0, 0.0)  # noqa: PLR2004 - upright
        # Those on the left are those on the right in a mirror.
        left = 90 < step < 270  # noqa: PLR2004
        key = ((180 - step) % 360 if left else step, lean)
        if key not in views:
            views[key] = little.seen(_EYE, *key)
        copy = Copy(views[key], Place(_EYE.at(tip), mirrored=left), "umbel")
        found.append(Piece(_EYE.depth(tip), (copy,)))
    return found
