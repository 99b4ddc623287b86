"""Flowers along one stem: racemes, spikes, and what is branched of them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import GOLDEN, smooth
from sallet.drawing.inflorescence.cluster import lone_bract
from sallet.drawing.inflorescence.florets import bulbil, put_bulbil
from sallet.drawing.inflorescence.space import (
    DOWN,
    UP,
    Eye,
    Piece,
    Vec,
    direction,
    stacked,
)  # fmt: skip
from sallet.drawing.ink import Mark

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.inflorescence.cluster import Cluster
    from sallet.drawing.inflorescence.florets import Florets
    from sallet.drawing.ink import Ink

_EYE: Final = Eye(10)


@dataclass(frozen=True)
class Spire:
    """How a stem of flowers is drawn, in shares of its length."""

    uncounted: int
    stalk: float
    """Length of the lowest flower's stalk."""
    polar: float = 62.0
    buds: bool = False
    """Whether its definition says that the lowest flowers open first."""
    one_sided: bool = False


SPIRES: Final[Mapping[str, Spire]] = {
    "raceme": Spire(18, 0.21, buds=True),
    "one-sided raceme": Spire(15, 0.2, buds=True, one_sided=True),
    "spike": Spire(40, 0.0),
}
TAPER: Final[Mapping[str, float]] = {"": 0.55, "cone": 0.92, "cylinder": 0.12}
"""By how much the top is narrower than the foot."""
_OPEN: Final = 0.62
"""Which share of the flowers is open, where they open one after another."""
_GOES_ON: Final = 0.13
"""How far a dotted stem goes on where the number of flowers is not recorded."""


@dataclass(frozen=True)
class _Stem:
    """A stem of so many flowers, so high in units."""

    kind: Spire
    florets: Florets
    height: float
    count: int

    @property
    def bow(self) -> float:
        """Return how far its top leans over."""
        return self.height * (0.05 if self.kind.one_sided else 0.0)

    def at(self, share: float) -> Vec:
        """Return a point of the stem."""
        return Vec(self.bow * share * share, 0, self.height * share)


def spire(cluster: Cluster, florets: Florets, size: float) -> Ink:
    """Return a raceme or spike, its foot at the origin."""
    kind = SPIRES[cluster.plan]
    goes_on = 0.0 if cluster.flowers else _GOES_ON
    stem = _Stem(kind, florets, size * (1 - goes_on), cluster.flowers or kind.uncounted)
    top = stem.at(0.97)
    path = smooth([0j, _EYE.at(stem.at(0.5)), _EYE.at(top)])
    pieces = [Piece(0, (Mark(path, "line", "axis"),))]
    for number in range(stem.count):
        pieces += _flower(cluster, stem, number)
    rest: Ink = ()
    if goes_on:
        end = top + Vec(stem.bow * 0.6, 0, size * goes_on)
        rest = (Mark(smooth([_EYE.at(top), _EYE.at(end)]), "dotted"),)
    return (*rest, *stacked(pieces))


def _flower(cluster: Cluster, stem: _Stem, number: int) -> list[Piece]:
    """Return one flower with its stalk, its bract and its bulbil."""
    kind, width = stem.kind, stem.florets.width
    share = number / max(stem.count - 1, 1)
    foot = stem.at(0.03 + 0.93 * share)
    side = 34 if number % 2 else -34
    azimuth = side - 12 if kind.one_sided else number * GOLDEN - 60
    open_ = _openness(cluster.order or ("up" if kind.buds else "all"), share)
    narrow = 1 - TAPER[cluster.outline] * share
    way = direction(azimuth, 80)
    reach = width * 0.42 * narrow
    if kind.stalk:
        way = direction(azimuth, kind.polar - 38 * (1 - open_) * share)
        reach = stem.height * kind.stalk * narrow * (0.55 + 0.45 * open_)
    face = _face(cluster.face, azimuth, way)
    # The stalk of a flower that looks down bends over.
    sunk = reach * 0.12 if face.z < 0 else 0.0
    tip = foot + way * reach + DOWN * sunk
    mark = (
        stem.florets.facing(_EYE, tip, face)
        if open_ == 1
        else stem.florets.closed(_EYE, tip, face, 0.55 + 0.45 * open_)
    )
    pieces = [Piece(_EYE.depth(tip) - 0.01, (mark,))]
    if kind.stalk:
        line = _EYE.line(foot, foot + way * (reach * 0.6) + UP * (sunk * 2), tip)
        depth = _EYE.depth(foot) + 0.001 * _EYE.depth(tip)
        pieces.append(Piece(depth, (Mark(line, "line", "stalk"),)))
    if cluster.bracts and not cluster.bracts.none:
        length = max(stem.height * kind.stalk * 0.62, width * 0.9) * (1 - 0.4 * share)
        pieces.append(lone_bract(_EYE, cluster.bracts, foot + DOWN * 1.5, way, length))
    if cluster.bulbils and number % cluster.bulbils == 0:
        at = foot + direction(azimuth, 50) * (width * 0.25)
        bulb = put_bulbil(bulbil(width * 0.42), _EYE.at(at), 0)
        pieces.append(Piece(_EYE.depth(at) - 0.02, (bulb,)))
    return pieces


def _openness(order: str, share: float) -> float:
    # 1 is open, less is a bud, the smaller the later it opens.
    late = {"up": share, "down": 1 - share, "all": 0.0}[order]
    return 1.0 if late <= _OPEN else 1 - (late - _OPEN) / (1 - _OPEN) * 0.85


def _face(face: str, azimuth: float, way: Vec) -> Vec:
    if face == "one side":
        return direction(-25, 80)
    polar = {"up": 6, "side": 88, "down": 135, "straight down": 178}.get(face)
    return way if polar is None else direction(azimuth, polar)
