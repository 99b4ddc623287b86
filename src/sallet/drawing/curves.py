"""Curves through points: fitted, smoothed, walked along, measured.

Fitting follows Schneider 1990, An Algorithm for Automatically Fitting Digitized Curves, in
Graphics Gems: least squares for the two handles, cut in two where that is not near enough.
"""

from __future__ import annotations

import cmath
import math
from dataclasses import dataclass
from itertools import pairwise
from typing import TYPE_CHECKING, Final

from sallet.drawing.ink import Curve, Line, Path

if TYPE_CHECKING:
    from collections.abc import Sequence

    from sallet.drawing.ink import Piece

TOLERANCE: Final = 0.18
"""How far a fitted curve may lie from its points, in units."""
GOLDEN: Final = 137.50776
"""The golden angle, in degrees: by it no two of a crowd ever stand in line."""
NOTHING: Final = 1e-9
"""Lengths below it are none."""
_LONGEST: Final = 4.0
"""A handle is never longer, in thirds of the distance from end to end."""
_ROUND: Final = 0.5522847498
"""The handle of a quarter circle of radius one."""


def fitted(points: Sequence[complex], tolerance: float = TOLERANCE) -> Path:
    """Return a smooth open path near some points; needs two points at least."""
    apart = [points[0], *(q for p, q in pairwise(points) if abs(q - p) > NOTHING)]
    if len(apart) == 1:
        apart.append(points[-1])
    pieces: list[Piece] = []
    _fit(apart, _ahead(apart), _ahead(apart[::-1]), tolerance, pieces)
    return Path(apart[0], tuple(pieces))


def cornered(runs: Sequence[Sequence[complex]], tolerance: float = TOLERANCE) -> Path:
    """Return smooth runs joined one behind the other, with corners between them."""
    path = fitted(runs[0], tolerance)
    for run in runs[1:]:
        path = path.then(fitted(run, tolerance))
    return path


def smooth(points: Sequence[complex], *, closed: bool = False) -> Path:
    """Return a smooth path through every one of a few points (Catmull and Rom 1974)."""
    count = len(points)
    pieces: list[Piece] = []
    for at in range(count if closed else count - 1):
        a, b = points[at], points[(at + 1) % count]
        before = points[at - 1] if at or closed else a
        behind = points[(at + 2) % count] if closed or at + 2 < count else b
        pieces.append(Curve(a + (b - before) / 6, b - (behind - a) / 6, b))
    return Path(points[0], tuple(pieces), closed)


def bezier(a: complex, b: complex, c: complex, d: complex, steps: int = 10) -> list[complex]:
    """Return points on a cubic curve from `a` to `d` with the handles `b` and `c`."""
    points = []
    for step in range(steps + 1):
        t = step / steps
        u = 1 - t
        points.append(u * u * u * a + 3 * u * u * t * b + 3 * u * t * t * c + t * t * t * d)
    return points


def curved(start: complex, *rest: complex) -> Path:
    """Return an open path of cubic curves: two handles and an end each."""
    threes = zip(rest[::3], rest[1::3], rest[2::3], strict=True)
    return Path(start, tuple(Curve(*three) for three in threes))


def straight(*points: complex, closed: bool = False) -> Path:
    """Return straight lines from point to point."""
    return Path(points[0], tuple(Line(p) for p in points[1:]), closed)


def ellipse(centre: complex, across: float, up: float) -> Path:
    """Return a closed ellipse by its two half axes."""
    h, v = across * _ROUND, up * _ROUND
    right, top, left, low = (centre + d for d in (across, 1j * up, -across, -1j * up))
    return Path(
        right,
        (
            Curve(right + 1j * v, top + h, top), Curve(top - h, left + 1j * v, left),
            Curve(left - 1j * v, low - h, low), Curve(low + h, right - 1j * v, right),
        ),
        closed=True,
    )  # fmt: skip


def circle(centre: complex, radius: float) -> Path:
    """Return a closed circle."""
    return ellipse(centre, radius, radius)


@dataclass(frozen=True)
class Walk:
    """A polyline that can be walked by length."""

    points: tuple[complex, ...]
    lengths: tuple[float, ...]
    """How far along each point lies."""

    @property
    def length(self) -> float:
        """Return the whole length."""
        return self.lengths[-1]

    def at(self, far: float) -> complex:
        """Return the point that lies `far` along."""
        index = self._index(far)
        a, b = self.points[index], self.points[index + 1]
        run = self.lengths[index + 1] - self.lengths[index]
        return a + (b - a) * ((far - self.lengths[index]) / run if run else 0.0)

    def heading(self, far: float) -> complex:
        """Return the direction there, of length one."""
        index = self._index(far)
        step = self.points[index + 1] - self.points[index]
        return step / abs(step) if step else 1 + 0j

    def between(self, begin: float, end: float) -> list[complex]:
        """Return the points from one length to another, both ends included."""
        inner = [p for p, far in zip(self.points, self.lengths, strict=True) if begin < far < end]
        return [self.at(begin), *inner, self.at(end)]

    def _index(self, far: float) -> int:
        low, high = 0, len(self.lengths) - 2
        while low < high:
            middle = (low + high + 1) // 2
            if self.lengths[middle] <= far:
                low = middle
            else:
                high = middle - 1
        return low


def walk(points: Sequence[complex]) -> Walk:
    """Return a polyline with its lengths."""
    lengths = [0.0]
    for a, b in pairwise(points):
        lengths.append(lengths[-1] + abs(b - a))
    return Walk(tuple(points), tuple(lengths))


def mirrored(points: Sequence[complex]) -> list[complex]:
    """Return points mirrored at the y axis."""
    return [-p.conjugate() for p in points]


def _ahead(points: Sequence[complex]) -> complex:
    # The direction at an end, from the first points that lie a little way off.
    far = points[min(2, len(points) - 1)] - points[0]
    near = points[1] - points[0]
    way = (near / abs(near) * 2 - far / abs(far) if abs(far) else near) if abs(near) else far
    return way / abs(way) if abs(way) else 1 + 0j


def _fit(
    points: Sequence[complex], out: complex, back: complex, tolerance: float, pieces: list[Piece]
) -> None:
    if len(points) == 2:  # noqa: PLR2004 - two points are a straight line
        pieces.append(Line(points[1]))
        return
    times = _by_length(points)
    curve = _least_squares(points, times, out, back)
    at, error = _worst(points, times, curve)
    if error <= tolerance:
        pieces.append(curve)
        return
    way = points[at - 1] - points[at + 1]
    way = way / abs(way) if abs(way) else cmath.exp(1j * (cmath.phase(out) + math.pi))
    _fit(points[: at + 1], out, way, tolerance, pieces)
    _fit(points[at:], -way, back, tolerance, pieces)


def _by_length(points: Sequence[complex]) -> list[float]:
    lengths = walk(points).lengths
    return [length / lengths[-1] for length in lengths]


def _least_squares(
    points: Sequence[complex], times: Sequence[float], out: complex, back: complex
) -> Curve:
    first, last = points[0], points[-1]
    c00 = c01 = c11 = x0 = x1 = 0.0
    together = _dot(out, back)
    for p, t in zip(points, times, strict=True):
        u = 1 - t
        b1, b2 = 3 * u * u * t, 3 * u * t * t
        rest = p - first * (u * u * u + b1) - last * (t * t * t + b2)
        c00 += b1 * b1
        c01 += b1 * b2 * together
        c11 += b2 * b2
        x0 += b1 * _dot(out, rest)
        x1 += b2 * _dot(back, rest)
    apart = c00 * c11 - c01 * c01
    third = abs(last - first) / 3
    reach_out = (x0 * c11 - x1 * c01) / apart if apart > NOTHING else third
    reach_back = (c00 * x1 - c01 * x0) / apart if apart > NOTHING else third
    # Handles far longer than the piece would make a loop of it (Schneider's own safeguard, and more).
    if min(reach_out, reach_back) < third / 100 or max(reach_out, reach_back) > _LONGEST * third:
        reach_out = reach_back = third
    return Curve(first + out * reach_out, last + back * reach_back, last)


def _worst(points: Sequence[complex], times: Sequence[float], curve: Curve) -> tuple[int, float]:
    at, worst = len(points) // 2, 0.0
    start = points[0]
    for index in range(1, len(points) - 1):
        t = times[index]
        u = 1 - t
        drawn = (
            u * u * u * start + 3 * u * u * t * curve.first
            + 3 * u * t * t * curve.second + t * t * t * curve.end
        )  # fmt: skip
        error = abs(drawn - points[index])
        if error > worst:
            at, worst = index, error
    return at, worst


def _dot(a: complex, b: complex) -> float:
    return a.real * b.real + a.imag * b.imag
