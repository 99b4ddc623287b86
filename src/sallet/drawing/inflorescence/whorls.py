"""Rings of bracts round a stalk or under a little umbel, in the room."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import ellipse
from sallet.drawing.inflorescence.bracts import SHAPES, Kind, Run, bract
from sallet.drawing.inflorescence.space import Eye, Piece, direction, leaning
from sallet.drawing.ink import Mark

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.inflorescence.space import Vec
    from sallet.drawing.ink import Ink, Pen

PLAIN: Final = Kind()
"""A bract of which nothing more is recorded."""
UNCOUNTED: Final = 6
"""Places in a ring whose number is not recorded: every other one is dotted."""
FALLING: Final = 2
_TIPPED: Final = 12.0
SIDE: Final = 62.0
"""How far bracteoles stand round to either side that stand on the outer side only, in degrees."""
POLAR: Final[Mapping[str, tuple[float, float]]] = {
    "": (96, 80),
    "down": (105, 172),
    "level": (86, 94),
    "up": (38, 8),
}
"""How far from upright a bract leaves its foot, and its tip points, in degrees."""


@dataclass(frozen=True)
class Whorl:
    """A ring of bracts, as recorded."""

    kind: Kind = PLAIN
    side: str = ""
    """`outer`: on the side away from the middle only; `all`: all round."""
    joined: bool = False
    falling: bool = False
    none: bool = False


@dataclass(frozen=True)
class Ring:
    """A whorl with its number, where it is put."""

    whorl: Whorl
    count: int | None
    length: float
    part: str
    outward: float = -90.0
    """The azimuth of the outer side, in degrees; -90 is towards the eye."""


def ring(eye: Eye, ring: Ring, foot: Vec, axis: Vec) -> list[Piece]:
    """Return a ring of bracts round an axis, seen from somewhat higher than the rest.

    Seen level, bracts that spread would lie on one another.
    """
    eye = Eye(eye.pitch + _TIPPED)
    whorl = ring.whorl
    count = ring.count or (FALLING if whorl.falling else UNCOUNTED)
    pieces = []
    for number in range(count):
        pen: Pen = "dotted" if ring.count is None and number % 2 else "line"
        azimuth = ring.outward + _around(number, count, whorl.side)
        falls = whorl.falling and number == count - 1
        ink, depth = _one(eye, ring, foot, axis, azimuth, pen, falls=falls)
        pieces.append(Piece(depth, ink))
    if whorl.joined:
        half = ring.length * 0.3
        pieces.append(Piece(eye.depth(foot) - ring.length, (
            Mark(ellipse(eye.at(foot), half, half * 0.45)),
        )))  # fmt: skip
    return pieces


def collar(eye: Eye, foot: Vec, width: float) -> Piece:
    """Return a dotted ring: whether there are bracts here is not recorded."""
    return Piece(eye.depth(foot), (Mark(ellipse(eye.at(foot), width / 2, width / 5), "dotted"),))


def _around(number: int, count: int, side: str) -> float:
    if side == "outer":
        return (number / (count - 1) * 2 - 1) * SIDE if count > 1 else 0.0
    # Half a step off, so that none points straight at the eye and looks short; where they are
    # told to stand all round, one stands on the very outside.
    return (number + (0.0 if side == "all" else 0.5)) * 360 / count


def _one(  # noqa: PLR0913, PLR0917 - a bract's place has as many sides
    eye: Eye, ring: Ring, foot: Vec, axis: Vec, azimuth: float, pen: Pen, *, falls: bool
) -> tuple[Ink, float]:
    kind = ring.whorl.kind
    first, last = POLAR[kind.posture]
    length = ring.length * SHAPES[kind.form].length
    # Bracts that hang follow their weight, whichever way their stalk leans.
    frame = (lambda way: way) if kind.posture == "down" else (lambda way: leaning(axis, way))
    bend = foot + frame(direction(azimuth, first)) * (length * 0.45)
    tip = bend + frame(direction(azimuth, last)) * (length * 0.6)
    run = Run(eye.at(foot), eye.at(bend), eye.at(tip))
    if falls:
        drop = complex(0.35, -0.75) * length
        run = Run(run.foot + drop, run.through + drop, run.tip + drop)
    return bract(kind, run, length, ring.part, pen), eye.depth(tip)
