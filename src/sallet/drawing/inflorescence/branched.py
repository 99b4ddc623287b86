"""Spires whose stem is branched: panicles, and spikes or tassels on one stalk."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import GOLDEN, smooth, walk
from sallet.drawing.inflorescence.space import (
    DOWN,
    UP,
    Eye,
    Piece,
    Vec,
    direction,
    stacked,
)  # fmt: skip
from sallet.drawing.ink import Copy, Mark, Place

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

    from sallet.drawing.inflorescence.cluster import Cluster
    from sallet.drawing.inflorescence.florets import Florets
    from sallet.drawing.ink import Ink, Path, Pen

_EYE: Final = Eye(8)
UNCOUNTED_BRANCHES: Final = 13
UNCOUNTED_TASSELS: Final = 5
BREADTHS: Final[Mapping[str, tuple[float, float, float]]] = {
    "": (0.34, 0.33, 0.08),
    "cone": (0.42, 0.23, 0.03),
    "cylinder": (0.2, 0.2, 0.19),
    "domed": (0.3, 0.38, 0.2),
    "flat": (0.36, 0.36, 0.36),
}
"""Half the width of a panicle at its foot, its middle and its top, in shares of its length."""


def panicle(cluster: Cluster, florets: Florets, size: float) -> Ink:
    """Return a loose branched cluster, its foot at the origin."""
    count = cluster.branches or UNCOUNTED_BRANCHES
    pen: Pen = "line" if cluster.branches else "dotted"
    pieces = [Piece(0, (Mark(smooth([0j, _EYE.at(Vec(0, 0, size * 0.93))]), "line", "axis"),))]
    for number in range(count):
        share = number / max(count - 1, 1)
        low = 0.04 + 0.74 * share
        reach = _breadth(cluster.outline, share) * size
        rise = (0.22 - 0.1 * share) * size if cluster.outline != "flat" else (0.94 - low) * size
        azimuth = number * GOLDEN - 20
        foot = Vec(0, 0, low * size)
        tip = foot + direction(azimuth, 90) * reach + UP * rise
        pieces += _branch(florets, foot, tip, pen)
    pieces += _sprig(florets, Vec(0, 0, size * 0.93), UP, size * 0.06)
    return stacked(pieces)


def _breadth(outline: str, share: float) -> float:
    low, middle, top = BREADTHS[outline]
    if share < 0.5:  # noqa: PLR2004 - below the middle
        return low + (middle - low) * share * 2
    return middle + (top - middle) * (share * 2 - 1)


def _branch(florets: Florets, foot: Vec, tip: Vec, pen: Pen) -> list[Piece]:
    """Return one branch with its flowers, alternately to either side."""
    out = Vec(tip.x - foot.x, tip.y - foot.y, 0)
    through = foot + out * 0.55 + UP * ((tip.z - foot.z) * 0.25)
    pieces = [
        Piece(_EYE.depth((foot + tip) * 0.5), (Mark(_EYE.line(foot, through, tip), pen, "branch"),))
    ]
    length = (tip - foot).length
    number = max(2, min(7, round(length / (florets.width * 1.15))))
    for at in range(1, number):
        t = 0.3 + 0.62 * at / number
        point = _bent(foot, through, tip, t)
        side = out.unit.cross(UP) * (1 if at % 2 else -1)
        way = (side * 0.9 + UP * 0.75 + out.unit * 0.5).unit
        pieces += _stalked(florets, point, way, florets.width * (0.95 - 0.3 * t))
    pieces += _stalked(florets, tip, (out.unit + UP).unit, 0.0)
    return pieces


def _bent(a: Vec, b: Vec, c: Vec, t: float) -> Vec:
    u = 1 - t
    return a * (u * u) + b * (2 * u * t) + c * (t * t)


def _stalked(florets: Florets, foot: Vec, way: Vec, length: float) -> list[Piece]:
    tip = foot + way * length
    flower = Piece(_EYE.depth(tip) - 0.5, (florets.facing(_EYE, tip, way),))
    if not length:
        return [flower]
    line = Mark(smooth([_EYE.at(foot), _EYE.at(tip)]), "fine")
    return [Piece(_EYE.depth(foot), (line,)), flower]


def _sprig(florets: Florets, foot: Vec, way: Vec, length: float) -> list[Piece]:
    found = _stalked(florets, foot, way, length)
    for azimuth in (10, 130, 250):
        found += _stalked(florets, foot + DOWN * (length * 0.5), direction(azimuth, 55), length)
    return found


def tassels(cluster: Cluster, florets: Florets, size: float) -> Ink:
    """Return several spikes on one stalk, bending over to all sides."""
    count = cluster.branches or UNCOUNTED_TASSELS
    pen: Pen = "line" if cluster.branches else "dotted"
    stem = Vec(0, 0, size * 0.34)
    beads = _beads(florets)
    pieces = [Piece(0, (Mark(smooth([0j, _EYE.at(stem)]), "line", "axis"),))]
    for number in range(count):
        share = (number + 0.5) / count
        azimuth = number * (180 if count == 2 else GOLDEN) + 15  # noqa: PLR2004 - a pair is opposite
        foot = stem * (0.35 + 0.65 * share)
        out = direction(azimuth, 90)
        reach = size * (0.44 - 0.1 * share)
        through = foot + out * (reach * 0.75) + UP * (size * (0.2 + 0.22 * share))
        tip = foot + out * reach + UP * (size * (0.46 * share - 0.2))
        line = _EYE.line(foot, through, tip)
        pieces.append(
            Piece(
                _EYE.depth(tip), (Mark(line, pen, "branch"), *_strung(beads, line, florets.width))
            )
        )
    return stacked(pieces)


def _beads(florets: Florets) -> Ink:
    """Return a bit of a tassel that runs upwards: flowers so close that nobody counts them."""
    spots = [
        Vec(florets.width * side * 0.3, 0, florets.width * 0.55 * number)
        for number, side in enumerate((0.8, -1.0, 0.3, 1.0, -0.7))
    ]
    return tuple(florets.facing(_EYE, spot, Vec(spot.x, -0.5, 0.2)) for spot in spots)


def _strung(beads: Ink, path: Path, width: float) -> Iterator[Copy]:
    """Yield bits of a tassel along its line, from a little way off its foot."""
    line = walk(path.points())
    step = width * 2.5
    number = max(1, round(line.length * 0.82 / step))
    for at in range(number):
        far = line.length - (number - at) * step * 0.97
        if far < 0:
            continue
        heading = line.heading(min(far + step / 2, line.length))
        yield Copy(beads, Place(line.at(far), heading / 1j))
