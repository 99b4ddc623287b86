"""The outlines of roots and stores: how thick they are from top to bottom."""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import smooth
from sallet.drawing.ink import Path

if TYPE_CHECKING:
    from collections.abc import Mapping

Widths = tuple[tuple[float, float], ...]
"""How thick it is, in shares of the greatest half breadth, by how far down, from 0 to 1."""


def _blunt(share: float) -> Widths:
    """Return an even thickness with ends rounded over some share of the length."""
    ends = [
        (share * (1 - math.cos(a)), math.sin(a)) for a in (math.pi / 2 * n / 4 for n in range(5))
    ]
    # The even stretch is given points near its ends, or the smooth line would shoot past them.
    even = [(t, 1.0) for t in (share * 1.3, share * 2.2, 0.5)]
    half = [*ends, *even]
    return (*half, *((1 - t, w) for t, w in reversed(half[:-1])))


def _spindle() -> Widths:
    """Return a thickness that swells and tapers evenly, thin at both ends."""
    steps = 10
    return tuple(
        (n / steps, 0.05 * (1 - n / steps) + 0.95 * math.sin(math.pi * n / steps) ** 1.7)
        for n in range(steps + 1)
    )


def _oval(lower: float) -> Widths:
    """Return an oval that is broader below by some share."""
    steps = 7
    raw = [
        ((1 - math.cos(a)) / 2, math.sin(a) * (1 - lower * math.cos(a)))
        for a in (math.pi * n / steps for n in range(steps + 1))
    ]
    most = max(w for _, w in raw)
    return tuple((t, max(0.0, w / most)) for t, w in raw)


@dataclass(frozen=True)
class Shape:
    """The shape of a store."""

    right: Widths
    ratio: float
    """Its greatest breadth in shares of its length."""
    left: Widths | None = None
    """Where its left side is not as the right."""
    blunt: bool = True
    """A thin root goes on from a blunt end of a taproot."""
    rounded: bool = False
    """Both ends are round."""


_CONE: Final[Widths] = (
    (0, 0.62), (0.03, 0.9), (0.08, 1.0), (0.3, 0.78), (0.6, 0.4), (0.85, 0.13), (1, 0.0),
)  # fmt: skip
_KNOTS: Final[Widths] = (
    (0, 0.0), (0.03, 0.48), (0.13, 0.84), (0.22, 0.78), (0.4, 1.0), (0.55, 0.8), (0.68, 0.92),
    (0.82, 0.86), (0.94, 0.6), (1, 0.0),
)  # fmt: skip
_KNOTS_LEFT: Final[Widths] = (
    (0, 0.0), (0.03, 0.42), (0.1, 0.66), (0.24, 0.97), (0.36, 0.8), (0.47, 0.86), (0.6, 0.76),
    (0.76, 0.98), (0.93, 0.66), (1, 0.0),
)  # fmt: skip
SHAPES: Final[Mapping[str, Shape]] = {
    "round": Shape(_oval(0.0), 1.0, rounded=True),
    "egg": Shape(_oval(0.22), 0.72, rounded=True),
    "flat": Shape(_oval(0.0), 1.7, rounded=True),
    "spindle": Shape(_spindle(), 0.34, blunt=False),
    "cone": Shape(_CONE, 0.34, blunt=False),
    "rod": Shape(_blunt(0.08), 0.3, rounded=True),
    "fingers": Shape(
        ((0, 0.5), (0.1, 0.86), (0.28, 1.0), (0.6, 0.9), (0.82, 0.72), (0.94, 0.46), (0.99, 0.2), (1, 0.0)),
        0.24,
    ),
    "club": Shape(
        ((0, 0.25), (0.2, 0.36), (0.5, 0.6), (0.74, 0.94), (0.85, 1.0), (0.94, 0.82), (0.99, 0.4), (1, 0.0)),
        0.4,
    ),
    "lumps": Shape(_KNOTS, 0.62, _KNOTS_LEFT, rounded=True),
}  # fmt: skip
"""By the vocabulary's hint `shape`; `forked` is drawn on its own."""


@dataclass(frozen=True)
class Body:
    """A root or store that hangs from the origin, `long` units, `half` units to each side."""

    shape: Shape
    long: float
    half: float
    guessed: bool = False
    """Whether its shape stands for one that is not recorded: its outline is dotted."""

    def at(self, down: float, side: int = 1) -> complex:
        """Return a point of its edge, some share of its length down."""
        return complex(side * self.wide(down, side), -down * self.long)

    def wide(self, down: float, side: int = 1) -> float:
        """Return half its breadth some share of its length down."""
        widths = self.shape.left if side < 0 and self.shape.left else self.shape.right
        for (low, a), (high, b) in pairwise(widths):
            if low <= down <= high:
                return self.half * (a + (b - a) * (down - low) / (high - low))
        return 0.0

    def edge(self, share: float = 1.0) -> Path:
        """Return its closed outline; a smaller share is nested within, about its middle."""
        right, left = self.points(share)
        if self.shape.rounded:
            return smooth([*left, *right[-2:0:-1]], closed=True)
        return smooth(left).then(smooth(right[::-1])).shut()

    def necked(self, neck: float, high: float) -> Path:
        """Return its outline from the left of a neck round to its right, open above."""
        right, left = self.points()
        sides = []
        for side, points in ((-1, left), (1, right)):
            stem = [complex(side * neck * 0.85, high), complex(side * neck * 0.9, high * 0.3)]
            below = [p for p in points if abs(p.real) > neck * 1.25 or p.imag < -0.4 * self.long]
            sides.append([*stem, *below])
        down, up = sides
        if self.shape.rounded:
            return smooth([*down, *up[-2::-1]])
        return smooth(down).then(smooth(up[::-1]))

    def points(self, share: float = 1.0) -> tuple[list[complex], list[complex]]:
        """Return the points of its right and of its left side, both from top to bottom."""
        middle = 0.5
        right, left = (
            [
                complex(side * w * self.half * share, -(middle + (t - middle) * share) * self.long)
                for t, w in widths
            ]
            for side, widths in ((1, self.shape.right), (-1, self.shape.left or self.shape.right))
        )
        return right, left


def bent(path: Path, *, by: float, over: float) -> Path:
    """Return a path bent sideways in a gentle wave, for roots that are not drawn with a ruler."""

    def moved(p: complex) -> complex:
        return p + by * math.sin(-p.imag / over * math.pi * 1.6)

    pieces = tuple(
        type(piece)(*(moved(getattr(piece, name)) for name in piece.__slots__))
        for piece in path.pieces
    )
    return Path(moved(path.start), pieces, path.closed)
