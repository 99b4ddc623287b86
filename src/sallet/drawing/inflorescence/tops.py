"""Clusters with a level or domed top: corymbs, cymes, heads standing together; and coils."""

from __future__ import annotations

import cmath
import math
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import GOLDEN, smooth
from sallet.drawing.inflorescence.cluster import lone_bract
from sallet.drawing.inflorescence.space import (
    ORIGIN,
    UP,
    Eye,
    Piece,
    Vec,
    direction,
    disc,
    stacked,
)  # fmt: skip
from sallet.drawing.inflorescence.whorls import Ring, ring
from sallet.drawing.ink import Copy, Mark, Place

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.inflorescence.cluster import Cluster
    from sallet.drawing.inflorescence.florets import Florets
    from sallet.drawing.inflorescence.whorls import Whorl
    from sallet.drawing.ink import Ink, Path, Pen

_EYE: Final = Eye(16)
_LEVEL: Final = Eye(0)
UNCOUNTED: Final = 12
UNCOUNTED_HEADS: Final = 9
UNCOUNTED_ARMS: Final = 4
RISES: Final[Mapping[str, float]] = {"": 0.1, "flat": 0.0, "domed": 0.34, "hollow": -0.3}
"""How much higher the middle of the top stands than its edge, in half widths."""


def corymb(cluster: Cluster, florets: Florets, size: float) -> Ink:
    """Return stalks that start at different heights and end at one, the foot at the origin."""
    heads = cluster.plan == "heads in a cluster"
    given = cluster.heads if heads else cluster.flowers
    count = given or (UNCOUNTED_HEADS if heads else UNCOUNTED)
    pen: Pen = "line" if given else "dotted"
    half, height = size * 0.5 - florets.width * 0.4, size * 0.55
    axis = height * 0.62
    pieces = [Piece(0, (Mark(smooth([0j, _EYE.at(Vec(0, 0, axis))]), "line", "axis"),))]
    for spot in disc(count):
        share = min(1.0, spot.length)
        # The lowest stalks are the longest and reach the edge.
        foot = Vec(0, 0, axis * (1 - share**1.5))
        tip = spot * half + UP * (height + half * RISES[cluster.outline] * (1 - share**2))
        through = foot + spot * (half * 0.72) + UP * ((tip.z - foot.z) * 0.3)
        way = (UP + spot * 0.5).unit
        pieces.append(
            Piece(_EYE.depth(tip * 0.6), (Mark(_EYE.line(foot, through, tip), pen, "stalk"),))
        )
        late = {"in": 1 - share, "out": share}.get(cluster.order, 0.0)
        flower = (
            florets.closed(_EYE, tip, way) if late > 0.5 and count > 1  # noqa: PLR2004
            else florets.facing(_EYE, tip, way)
        )  # fmt: skip
        pieces.append(Piece(_EYE.depth(tip) - size, (flower,)))
    if cluster.bracts and not cluster.bracts.none:
        given_ring = Ring(cluster.bracts, cluster.bract_number, size * 0.14, "bract")
        pieces += ring(_EYE, given_ring, ORIGIN, UP)
    return stacked(pieces)


def flat_cyme(cluster: Cluster, florets: Florets, size: float) -> Ink:
    """Return a flat head of a few main branches, each branched again."""
    count = cluster.branches or UNCOUNTED_ARMS
    pen: Pen = "line" if cluster.branches else "dotted"
    half, height = size / 2, size * 0.42
    spread = half * 0.6
    sprig = _sprig(florets, half - spread, height * 0.52)
    rise = RISES[cluster.outline]
    lines, tops = [], []
    for number in range(count):
        out = _arm(number, count)
        # A domed head is lower at its edge, a hollow one higher.
        node = out * spread + UP * (height * 0.48 - half * rise * 0.35 * out.length)
        line = _EYE.line(ORIGIN, out * (spread * 0.35) + UP * (height * 0.3), node)
        lines.append(Piece(_EYE.depth(node), (Mark(line, pen, "branch"),)))
        turn = cmath.rect(1, -rise * out.x * 0.9)
        arm = Copy(sprig, Place(_EYE.at(node), turn, mirrored=out.x < 0))
        tops.append(Piece(_EYE.depth(node), (arm,)))
    return stacked(lines) + stacked(tops)


def _arm(number: int, count: int) -> Vec:
    """Return the direction of a main branch; one of five or more stands in the middle."""
    middle = count == 1 or count > 4  # noqa: PLR2004 - so many leave room for one
    if middle and number == count - 1:
        return ORIGIN
    around = count - 1 if middle else count
    first = {2: 0.0, 4: 24.0}.get(around, -90.0)
    return direction(number * 360 / around + first, 90)


def _sprig(florets: Florets, half: float, height: float) -> Ink:
    """Return one arm: branches that leave it at three heights, all ending at one level."""
    pieces = []
    for number in range(7):
        share = math.sqrt((number + 0.2) / 7)
        out = direction(number * GOLDEN + 12, 90)
        foot = UP * (height * (0.3 if number % 2 else 0.0))
        tip = out * (half * share * 0.8) + UP * (height * 0.68)
        through = foot + out * (half * share * 0.55) + UP * (height * 0.34)
        pieces.append(Piece(_EYE.depth(tip * 0.5), (Mark(_EYE.line(foot, through, tip), "thin"),)))
        for fork in range(3):
            side = direction(number * GOLDEN + fork * 120, 90)
            end = tip + side * (half * 0.2) + UP * (height * 0.28)
            pieces.append(
                Piece(_EYE.depth(tip * 0.6), (Mark(smooth([_EYE.at(tip), _EYE.at(end)]), "fine"),))
            )
            pieces.append(
                Piece(
                    _EYE.depth(end) - half * 2, (florets.facing(_EYE, end, (UP + side * 0.3).unit),)
                )
            )
    return stacked(pieces)


def cyme(cluster: Cluster, florets: Florets, size: float) -> Ink:
    """Return a forked cluster: each flower ends its branch, and two go on below it."""
    count = cluster.flowers or 7
    levels = math.ceil(math.log2(count + 1))
    shoots = [_Shoot(0j, 90.0, size * (0.5 if levels > 1 else 0.9), 0)]
    for at in range(count):
        shoots += shoots[at].forks()
    lines: list[Mark | Copy] = []
    flowers: list[Mark | Copy] = []
    for shoot in shoots[:count]:
        lines.append(Mark(shoot.line(1.0 if shoot.level + 1 == levels else 0.88), "line", "stalk"))
        # The definition says that the middle one opens first: the youngest are buds.
        young = shoot.level + 1 == levels and levels > 1 and cluster.order != "all"
        flowers.append(shoot.flower(florets, young=young, last=shoot.level + 1 == levels))
        if cluster.bracts and not cluster.bracts.none and shoot.level + 1 < levels:
            flowers[:0] = shoot.bracts(cluster.bracts)
    if cluster.flowers is None:
        lines += [Mark(shoot.line(0.6), "dotted") for shoot in shoots[count : count * 2 + 1]]
    return (*lines, *flowers)


@dataclass(frozen=True)
class _Shoot:
    """One shoot of a cyme: it ends in a flower and forks below it."""

    foot: complex
    heading: float
    """Whither it leaves, in degrees; it bends upright."""
    length: float
    level: int

    @property
    def _end(self) -> float:
        return self.heading + (90 - self.heading) * 0.45

    def at(self, share: float) -> complex:
        """Return a point along it."""
        first = self.foot + cmath.rect(self.length * 0.5, math.radians(self.heading))
        last = first + cmath.rect(self.length * 0.5, math.radians(self._end))
        u = 1 - share
        return u * u * self.foot + 2 * u * share * first + share * share * last

    def line(self, until: float) -> Path:
        """Return it drawn so far."""
        return smooth([self.at(until * step / 3) for step in range(4)])

    def forks(self) -> list[_Shoot]:
        """Return the two shoots that go on below its flower."""
        fork = self.at(0.55)
        wide = 50 - 6 * self.level
        return [
            _Shoot(fork, self._end + side * wide, self.length * 0.72, self.level + 1)
            for side in (1, -1)
        ]

    def flower(self, florets: Florets, *, young: bool, last: bool) -> Copy:
        """Return the flower that ends it."""
        tip, angle = self.at(1.0 if last else 0.88), math.radians(self._end)
        spot, way = Vec(tip.real, 0, tip.imag), Vec(math.cos(angle), -0.55, math.sin(angle))
        return (
            florets.closed(_LEVEL, spot, way, 0.8) if young else florets.facing(_LEVEL, spot, way)
        )

    def bracts(self, whorl: Whorl) -> Ink:
        """Return the pair of bracts at its fork."""
        fork = self.at(0.55)
        spot = Vec(fork.real, 0, fork.imag)
        return tuple(
            mark
            for side in (1, -1)
            for mark in lone_bract(_LEVEL, whorl, spot, Vec(side, 0, 0), self.length * 0.24).ink
        )


def coil(cluster: Cluster, florets: Florets, size: float) -> Ink:
    """Return a cluster rolled in at its tip, its flowers on the outer side."""
    count = cluster.flowers or 11
    points = _rolled(size)
    whole = smooth(points)
    marks: list[Mark | Copy] = []
    if cluster.flowers is None:
        marks += [Mark(smooth(points[:-5]), "line", "axis"), Mark(smooth(points[-6:]), "dotted")]
        points = points[:-4]
    else:
        marks.append(Mark(whole, "line", "axis"))
    for number in range(count):
        share = number / max(count - 1, 1)
        at = (0.26 + 0.72 * share**0.85) * (len(points) - 1)
        low = min(int(at), len(points) - 2)
        point = points[low] + (points[low + 1] - points[low]) * (at - low)
        way = points[low + 1] - points[low]
        out = way / abs(way) * (1j if number % 2 else 0.8j + 0.5)
        scale = 1 - 0.72 * share
        tip = point + out * florets.width * (0.62 * scale + 0.12)
        marks.append(Mark(smooth([point, tip]), "fine"))
        spot, face = Vec(tip.real, 0, tip.imag), Vec(out.real, -0.4, out.imag)
        marks.append(
            florets.facing(_LEVEL, spot, face)
            if share < 0.45 or count == 1  # noqa: PLR2004
            else florets.closed(_LEVEL, spot, face, 1.1 * scale)
        )
    return tuple(marks)


def _rolled(size: float) -> list[complex]:
    """Return the axis: up, over, and inwards in a coil."""
    centre, radius = complex(size * 0.3, size * 0.56), size * 0.3
    points = [0j, complex(-0.02, 0.28) * size]
    for step in range(15):
        angle = math.pi - step * math.radians(42)
        points.append(
            centre + cmath.rect(radius * math.exp(-0.115 * step), angle) + radius * 0.02 * step
        )
    return points
