"""The room in which a flower cluster stands: points in three dimensions, seen from a little above.

x to the right, y away from the eye, z up. What is nearer to the eye is laid down later.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import GOLDEN
from sallet.drawing.ink import Curve, Path

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from sallet.drawing.ink import Ink

_NOTHING: Final = 1e-9
_STRETCH: Final = 1.8


@dataclass(frozen=True, slots=True)
class Vec:
    """A point or a direction in the room."""

    x: float
    y: float
    z: float

    def __add__(self, other: Vec) -> Vec:
        return Vec(self.x + other.x, self.y + other.y, self.z + other.z)

    def __sub__(self, other: Vec) -> Vec:
        return Vec(self.x - other.x, self.y - other.y, self.z - other.z)

    def __mul__(self, by: float) -> Vec:
        return Vec(self.x * by, self.y * by, self.z * by)

    def dot(self, other: Vec) -> float:
        """Return the scalar product."""
        return self.x * other.x + self.y * other.y + self.z * other.z

    def cross(self, other: Vec) -> Vec:
        """Return the vector product."""
        return Vec(
            self.y * other.z - self.z * other.y,
            self.z * other.x - self.x * other.z,
            self.x * other.y - self.y * other.x,
        )

    @property
    def length(self) -> float:
        """Return the length."""
        return math.sqrt(self.dot(self))

    @property
    def unit(self) -> Vec:
        """Return the direction, of length one; straight up where there is none."""
        length = self.length
        return self * (1 / length) if length > _NOTHING else UP

    @property
    def azimuth(self) -> float:
        """Return its direction on the level, in degrees: 0 right, 90 away from the eye."""
        return math.degrees(math.atan2(self.y, self.x))

    @property
    def polar(self) -> float:
        """Return how far from upright it points, in degrees."""
        return math.degrees(math.acos(max(-1.0, min(1.0, self.unit.z))))


ORIGIN: Final = Vec(0, 0, 0)
UP: Final = Vec(0, 0, 1)
DOWN: Final = Vec(0, 0, -1)


@dataclass(frozen=True)
class Eye:
    """Whence the cluster is seen: `pitch` degrees from above; 0 is level."""

    pitch: float = 18.0

    @property
    def toward(self) -> Vec:
        """Return the direction from the cluster to the eye."""
        angle = math.radians(self.pitch)
        return Vec(0, -math.cos(angle), math.sin(angle))

    def at(self, point: Vec) -> complex:
        """Return where a point is seen."""
        angle = math.radians(self.pitch)
        return complex(point.x, point.z * math.cos(angle) + point.y * math.sin(angle))

    def depth(self, point: Vec) -> float:
        """Return how far behind the origin a point lies."""
        return -point.dot(self.toward)

    def line(self, start: Vec, through: Vec, end: Vec) -> Path:
        """Return a bent line that begins towards `through` and ends at `end`."""
        first = start + (through - start) * (2 / 3)
        second = end + (through - end) * (2 / 3)
        return Path(self.at(start), (Curve(self.at(first), self.at(second), self.at(end)),))


@dataclass(frozen=True)
class Piece:
    """Some ink that lies at a depth."""

    depth: float
    ink: Ink


def stacked(pieces: Iterable[Piece]) -> Ink:
    """Return pieces laid down from the farthest to the nearest."""
    return tuple(mark for one in sorted(pieces, key=lambda p: -p.depth) for mark in one.ink)


def direction(azimuth: float, polar: float) -> Vec:
    """Return a direction: `polar` degrees from upright, towards `azimuth` (0 right, 90 away)."""
    a, p = math.radians(azimuth), math.radians(polar)
    return Vec(math.sin(p) * math.cos(a), math.sin(p) * math.sin(a), math.cos(p))


def cap(count: int, polar: float) -> Iterator[Vec]:
    """Yield evenly spread directions round upright, none farther from it than `polar` degrees."""
    low = math.cos(math.radians(polar))
    for number in range(count):
        share = (number + 0.5) / count if count > 1 else 0.0
        height = 1 - share * (1 - low)
        yield direction(number * GOLDEN + 20, math.degrees(math.acos(height)))


def disc(count: int) -> list[Vec]:
    """Return points evenly spread on a level disc of radius one, the widest at its very edge."""
    shares = [math.sqrt((number + 0.5) / count) if count > 1 else 0.0 for number in range(count)]
    points = [direction(number * GOLDEN + 20, 90) * share for number, share in enumerate(shares)]
    wide = max((abs(point.x) for point in points), default=0.0)
    # A few points rarely stand just right and left: the disc is stretched until they reach it.
    by = min(_STRETCH, 1 / wide) if wide > _NOTHING else 1.0
    return [Vec(point.x * by, point.y, 0) for point in points]


def leaning(axis: Vec, way: Vec) -> Vec:
    """Return a direction given from upright, carried over to an axis by the shortest turn."""
    axis = axis.unit
    turn = UP.cross(axis)
    cosine = axis.z
    if cosine < -1 + _NOTHING:
        return Vec(way.x, -way.y, -way.z)
    # Rodrigues' rule with the sine taken into the axis of turning.
    return way * cosine + turn.cross(way) + turn * (turn.dot(way) / (1 + cosine))
