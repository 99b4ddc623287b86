"""The outlines of stems and leaf stalks cut across, their ridges, and where their corners are.

All lengths are in shares of the breadth, which is one; the middle lies at the origin and the
upper side of a leaf stalk is up.
"""

from __future__ import annotations

import cmath
import math
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import straight, walk
from sallet.drawing.ink import Curve, Line, Mark, Path, Place
from sallet.drawing.told import MANY

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from sallet.drawing.curves import Walk
    from sallet.drawing.ink import Ink

_SHOULDER: Final = 0.75
"""How far a cubic curve goes towards handles of equal length."""
_ROOMY: Final = 0.5
_FURROW: Final = 0.1
"""Half the breadth of a single furrow."""


@dataclass(frozen=True)
class Outline:
    """An outline of breadth one."""

    edge: Path
    """Closed, against the clock."""
    half: complex = 0.5 + 0.5j
    """The half axes of the largest ellipse that fits, across and up."""
    middle: complex = 0j
    """Where that ellipse lies."""
    corners: tuple[complex, ...] = ()
    inked: tuple[Path, ...] = ()
    """What is recorded of it, where that is not the whole: the rest is dotted."""
    dotted: tuple[Path, ...] = ()
    sides: int = 1
    """Into how many equal sides the corners cut it: ridges are set to fit."""


@dataclass(frozen=True)
class Ridges:
    """Ridges or furrows round an outline."""

    count: int
    """For the eye only: more than anyone counts, as no number of them is recorded."""
    depth: float
    inward: bool
    """Furrows cut in between round ridges; otherwise sharp ridges stand out between hollows."""


RIDGES: Final[Mapping[str, Ridges]] = {
    "fine": Ridges(2 * MANY, 0.012, inward=False),
    "middle": Ridges(MANY, 0.035, inward=False),
    "grooves": Ridges(MANY, 0.035, inward=True),
    "deep": Ridges(20, 0.085, inward=True),
    "one": Ridges(1, 0.14, inward=True),
}
"""By the vocabulary's hint `ridges`; a stem that is not ridged has none."""


def ridged(outline: Outline, ridges: Ridges) -> Outline:
    """Return an outline with ridges or furrows on it."""
    if ridges.count == 1:
        return _furrowed(outline, ridges.depth)
    count = math.ceil(ridges.count / outline.sides) * outline.sides
    phase = 0.5 if ridges.inward else 0.0
    way = walk([*outline.edge.points(), outline.edge.start])
    step = way.length / count
    feet = [_edge(way, (number + phase) * step) for number in range(count)]
    # Thin outlines have no room for deep furrows.
    depth = ridges.depth * min(1.0, outline.half.imag / _ROOMY)
    sunk = depth if ridges.inward else 0.0
    reach = depth / _SHOULDER * (1 if ridges.inward else -1)
    points = [point - out * sunk for point, out in feet]
    pieces = tuple(
        Curve(points[n] + feet[n][1] * reach, points[m] + feet[m][1] * reach, points[m])
        for n, m in ((n, (n + 1) % count) for n in range(count))
    )
    return _with(outline, Path(points[0], pieces, closed=True), depth)


def of_breadth_one(outline: Outline) -> Outline:
    """Return an outline scaled so that its breadth is one: rounded corners fall short of it."""
    across = [p.real for p in outline.edge.points()]
    grown = 1 / (max(across) - min(across))
    place = Place(turn=complex(grown))
    return Outline(
        edge=outline.edge.placed(place),
        half=outline.half * grown,
        middle=outline.middle * grown,
        corners=tuple(corner * grown for corner in outline.corners),
        inked=tuple(path.placed(place) for path in outline.inked),
        dotted=tuple(path.placed(place) for path in outline.dotted),
        sides=outline.sides,
    )


def ridge_marks(ridges: Ridges) -> Ink:
    """Return ridges or furrows alone, for an outline that is not recorded."""
    if ridges.count == 1:
        shoulder = complex(_FURROW, math.sqrt(0.25 - _FURROW * _FURROW))
        return (Mark(_notch(shoulder, 1j * (0.5 - ridges.depth))),)
    sign, wide = (-1, 0.026) if ridges.inward else (1, 0.016)
    marks = []
    for number in range(ridges.count):
        out = cmath.rect(1, math.tau * number / ridges.count)
        foot, side = out * 0.5, out * 1j * min(wide, 0.5 / ridges.count)
        tip = foot + out * sign * max(ridges.depth, 0.026)
        line = straight(foot - side, tip, foot + side)
        if ridges.count > MANY:
            line = straight(foot, tip)
        marks.append(Mark(line, "thin"))
    return tuple(marks)


def along(outline: Outline) -> Walk:
    """Return the edge as a line to walk, from its start round to it again."""
    return walk([*outline.edge.points(), outline.edge.start])


def outward(way: Walk, far: float) -> complex:
    """Return the direction out of a closed line that runs against the clock."""
    return way.heading(far % way.length) * -1j


def _with(outline: Outline, edge: Path, depth: float) -> Outline:
    half = complex(outline.half.real - depth, outline.half.imag - depth)
    return Outline(edge, half, outline.middle, outline.corners)


def _furrowed(outline: Outline, depth: float) -> Outline:
    # A furrow runs along a side, not a corner: one that points up is turned down.
    up = any(abs(c.real) < _FURROW and c.imag > 0 for c in outline.corners)
    turn = -1 if up else 1
    edge = outline.edge.placed(Place(turn=complex(turn)))
    corners = tuple(turn * c for c in outline.corners)
    middle = outline.middle * turn - 0.35j * depth
    half = complex(outline.half.real - depth * 0.4, outline.half.imag - depth * 0.7)
    return Outline(one_furrow(edge, depth), half, middle, corners)


def _edge(way: Walk, far: float) -> tuple[complex, complex]:
    # The way out is taken over a stretch, so that corners do not throw it about.
    near = way.length / 300
    ahead, back = way.at((far + near) % way.length), way.at((far - near) % way.length)
    out = (ahead - back) * -1j
    return way.at(far % way.length), out / abs(out)


def _notch(shoulder: complex, low: complex) -> Path:
    """Return a furrow from its right shoulder over its bottom to the left one."""
    left = -shoulder.conjugate()
    half = shoulder.real
    return Path(
        shoulder,
        (
            Curve(shoulder - half * 0.7, low + half * 0.5, low),
            Curve(low - half * 0.5, left + half * 0.7, left),
        ),
    )


def one_furrow(edge: Path, depth: float) -> Path:
    """Return an edge with one furrow in the middle of its upper side."""
    points = edge.points(16)
    half = _FURROW
    shoulder = complex(half, _height(points, half))
    kept = [p for p in points if not (abs(p.real) < half * 1.05 and p.imag > shoulder.imag - depth)]
    # From the left of the furrow round to its right.
    first = max(
        range(len(kept)), key=lambda n: (kept[n].real < 0 <= kept[n - 1].real) * (kept[n].imag + 1)
    )
    ring = [-shoulder.conjugate(), *kept[first:], *kept[:first]]
    path = Path(ring[0], tuple(Line(p) for p in ring[1:]))
    return path.then(_notch(shoulder, 1j * (_height(points, 0.0) - depth))).shut()


def _height(points: Sequence[complex], across: float) -> float:
    """Return how high a closed line lies at most, some way across."""
    found = [
        a.imag + (b.imag - a.imag) * (across - a.real) / (b.real - a.real)
        for a, b in zip(points, [*points[1:], points[0]], strict=True)
        if min(a.real, b.real) <= across <= max(a.real, b.real) and a.real != b.real
    ]
    return max(found)
