"""The bodies of fruits: outlines by their shape, lines along them, places on and round them.

A body stands on its foot, where the stalk is, and points up. Where the lesson records no shape
its outline is dotted.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import smooth, walk
from sallet.drawing.ink import Curve, Line, Mark, Path

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.ink import Ink, Pen, Piece

_K: Final = 0.5522847498
"""The handle of a quarter circle of radius one."""
_GOLDEN: Final = (math.sqrt(5) - 1) / 2


def _oval(
    widest: float, foot: float = _K, top: float = _K, low: float = _K, high: float = _K
) -> Path:
    """Return a right side of two curves, from 0 to 1j, at most 1 wide.

    `foot` and `top` say how blunt the ends are, `low` and `high` how straight the side is.
    """
    out, above = complex(1, widest), 1 - widest
    return Path(
        0j,
        (
            Curve(complex(foot, 0), out - 1j * widest * low, out),
            Curve(out + 1j * above * high, complex(top, 1), 1j),
        ),
    )


def _side(*curves: tuple[complex, complex, complex]) -> Path:
    return Path(0j, tuple(Curve(*curve) for curve in curves))


@dataclass(frozen=True, slots=True)
class Outline:
    """A shape: its right side from 0 to 1j, where 1 is half the width, and length by width."""

    side: Path
    ratio: float


OUTLINES: Final[Mapping[str, Outline]] = {
    "round": Outline(_oval(0.5), 1.0),
    "roundish": Outline(_oval(0.47, 0.6, 0.52, 0.55, 0.57), 1.12),
    "egg-shaped": Outline(_oval(0.36, 0.66, 0.36, 0.6, 0.5), 1.4),
    "ellipsoid": Outline(_oval(0.5, 0.5, 0.5), 1.65),
    "pear-shaped": Outline(
        _side(
            (0.42 + 0j, 0.36 + 0.22j, 0.58 + 0.38j), (0.76 + 0.51j, 1 + 0.54j, 1 + 0.72j),
            (1 + 0.88j, 0.6 + 1j, 1j),
        ),
        1.4,
    ),
    "flask-shaped": Outline(
        _side(
            (0.62 + 0j, 1 + 0.12j, 1 + 0.33j), (1 + 0.6j, 0.36 + 0.62j, 0.34 + 0.86j),
            (0.33 + 0.96j, 0.2 + 1.0j, 1j),
        ),
        1.75,
    ),
    "cylindrical": Outline(_oval(0.5, 0.82, 0.82, 0.76, 0.76), 2.1),
    "long and narrow": Outline(
        _side(
            (0.6 + 0j, 0.96 + 0.04j, 1 + 0.16j), (1.03 + 0.44j, 1 + 0.68j, 0.84 + 0.86j),
            (0.74 + 0.94j, 0.4 + 1j, 1j),
        ),
        12.0,
    ),
    "spindle-shaped": Outline(
        _side((0.3 + 0.1j, 1 + 0.22j, 1 + 0.48j), (1 + 0.76j, 0.28 + 0.9j, 1j)), 3.6
    ),
    "heart-shaped": Outline(
        _side(
            (0.34 + 0.12j, 1 + 0.44j, 1 + 0.76j), (1 + 0.98j, 0.62 + 1.04j, 0.42 + 1j),
            (0.24 + 0.97j, 0.08 + 0.92j, 0.84j),
        ),
        1.05,
    ),
    "cone-shaped": Outline(
        _side((0.7 + 0j, 1 + 0.02j, 1 + 0.14j), (0.96 + 0.42j, 0.3 + 1j, 1j)), 1.75
    ),
    "club-shaped": Outline(
        _side(
            (0.3 + 0j, 0.3 + 0.06j, 0.34 + 0.14j), (0.46 + 0.42j, 1 + 0.6j, 1 + 0.82j),
            (1 + 0.94j, 0.6 + 1j, 1j),
        ),
        3.6,
    ),
    "urn": Outline(
        _side(
            (0.5 + 0j, 1 + 0.16j, 1 + 0.46j), (1 + 0.72j, 0.62 + 0.86j, 0.42 + 0.97j),
            (0.36 + 1.0j, 0.2 + 1.0j, 1j),
        ),
        1.35,
    ),
    "apple": Outline(
        _side(
            (0.1 + 0.06j, 0.2 + 0j, 0.42 + 0j), (0.76 + 0j, 1 + 0.22j, 1 + 0.52j),
            (1 + 0.82j, 0.72 + 1j, 0.4 + 1j), (0.24 + 1j, 0.14 + 0.97j, 0.94j),
        ),
        0.98,
    ),
    "achene": Outline(_side((0.3 + 0j, 1 + 0.4j, 1 + 0.7j), (1 + 0.9j, 0.5 + 0.97j, 1j)), 3.0),
    "grain": Outline(_oval(0.46, 0.42, 0.3, 0.62, 0.6), 2.6),
    "nut": Outline(
        _side((0.8 + 0j, 1 + 0.16j, 1 + 0.38j), (1 + 0.74j, 0.42 + 0.93j, 1j)), 1.25
    ),
    "disc": Outline(_oval(0.52), 1.05),
}  # fmt: skip
"""The outlines by the states of `shape`; the last few are those of kinds of fruit."""
LOBES: Final[Mapping[str, int]] = {"two-lobed": 2, "three-lobed": 3}
LOBED_RATIO: Final[Mapping[int, float]] = {2: 0.68, 3: 1.0}


@dataclass(frozen=True, slots=True)
class Body:
    """A body of some length and width, its foot at `at`."""

    outline: Path
    """The right side from 0 to 1j."""
    length: float
    width: float
    pen: Pen = "line"
    at: complex = 0j

    def scaled(self, path: Path, share: float = 1.0) -> Path:
        """Return a path of the outline's measure in units, drawn in by a share of the width."""
        half = self.width / 2 * share

        def put(p: complex) -> complex:
            return self.at + complex(p.real * half, p.imag * self.length)

        return path.mapped(put)

    @property
    def side(self) -> Path:
        """Return the right side from the foot to the top."""
        return self.scaled(self.outline)

    @property
    def path(self) -> Path:
        """Return the whole outline."""
        return self.side.then(self.scaled(self.outline, -1.0).reversed()).shut()

    @property
    def top(self) -> complex:
        """Return the end away from the stalk."""
        return self.side.end

    @property
    def middle(self) -> complex:
        """Return the middle of the axis."""
        return self.at + 0.5j * self.length

    def half(self, share: float) -> float:
        """Return half the width at a share of the length."""
        points = self.outline.points(12)
        widths = [
            a.real + (b.real - a.real) * (share - a.imag) / (b.imag - a.imag)
            for a, b in pairwise(points)
            if min(a.imag, b.imag) <= share <= max(a.imag, b.imag) and a.imag != b.imag
        ]
        return max(widths, default=0.0) * self.width / 2

    def on(self, share: float, across: float) -> complex:
        """Return a point at a share of the length, `across` of the half width off the axis."""
        return self.at + complex(across * self.half(share), share * self.length)

    def meridian(
        self, across: float, begin: float = 0.05, end: float = 0.95, steps: int = 8
    ) -> Path:
        """Return a line along the body, `across` of the half width off the axis everywhere."""
        shares = [begin + (end - begin) * n / steps for n in range(steps + 1)]
        return smooth([self.on(share, across) for share in shares])

    def rim(
        self, count: int, begin: float = 0.0, end: float = 1.0
    ) -> list[tuple[complex, complex]]:
        """Return places on the outline, from the foot round, each with the way out of it.

        `begin` and `end` are shares of either side; half the number stands on each.
        """
        way = walk(self.side.points(12))
        found = []
        each = max(1, count // 2)
        for n in range(each):
            far = way.length * (begin + (end - begin) * (n + 0.5) / each)
            point, out = way.at(far), way.heading(far) * -1j
            found.append((point, out))
        axis = self.at.real
        return found + [
            (complex(2 * axis - p.real, p.imag), complex(-o.real, o.imag))
            for p, o in reversed(found)
        ]

    def scatter(
        self, count: int, inset: float = 0.82, low: float = 0.1, high: float = 0.9
    ) -> list[complex]:
        """Return places spread evenly over the face of the body, in no visible rows."""
        found = []
        for n in range(count):
            share = low + (high - low) * (n + 0.5) / count
            across = 2 * ((n * _GOLDEN + 0.31) % 1) - 1
            found.append(self.on(share, across * inset))
        return found

    def ink(self, part: str = "fruit") -> Ink:
        """Return the outline."""
        return (Mark(self.path, self.pen, part),)


def body(
    name: str, size: float, ratio: float | None = None, pen: Pen = "line", at: complex = 0j
) -> Body:
    """Return a body of an outline whose larger dimension is `size`."""
    shape = OUTLINES[name]
    length, width = measures(size, ratio or shape.ratio)
    return Body(shape.side, length, width, pen, at)


def measures(size: float, ratio: float) -> tuple[float, float]:
    """Return length and width of what has a ratio of them and is `size` the larger way."""
    return (size, size / ratio) if ratio >= 1 else (size * ratio, size)


def lobed(
    count: int, size: float, ratio: float | None = None, pen: Pen = "line"
) -> tuple[Body, ...]:
    """Return two or three rounded lobes side by side, those in front last."""
    length, width = measures(size, ratio or LOBED_RATIO[count])
    two = 2
    if count == two:
        side = _oval(0.52, 0.62, 0.6, 0.66, 0.64)
        off = width * 0.25
        return tuple(Body(side, length, width * 0.502, pen, complex(x, 0)) for x in (-off, off))
    # The side lobes lean to the front one at both ends, as the parts of an orange do.
    outer = _oval(0.46, 0.7, 0.5, 0.62, 0.56)
    off = width * 0.2
    lobes = [
        Body(outer, length * 0.97, width * 0.6, pen, complex(x, 0.008 * length))
        for x in (-off, off)
    ]
    return (*lobes, Body(_oval(0.46, 0.5, 0.3, 0.6, 0.5), length, width * 0.46, pen))


def bowed(path: Path, off: Callable[[float], float]) -> Path:
    """Return a path moved sideways by a smooth function of the height; smooth joints stay smooth."""
    step = 0.01

    def at(p: complex) -> complex:
        return p + off(p.imag)

    def handle(p: complex, joint: complex) -> complex:
        slope = (off(joint.imag + step) - off(joint.imag - step)) / (2 * step)
        return at(joint) + (p - joint) + slope * (p - joint).imag

    pieces: list[Piece] = []
    before = path.start
    for piece in path.pieces:
        if isinstance(piece, Line):
            pieces.append(Line(at(piece.end)))
        else:
            first, second = handle(piece.first, before), handle(piece.second, piece.end)
            pieces.append(Curve(first, second, at(piece.end)))
        before = piece.end
    return Path(at(path.start), tuple(pieces), path.closed)
