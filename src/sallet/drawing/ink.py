"""Ink on paper: paths, the pens they are drawn with, and copies of one piece in many places.

Points are complex numbers in units of the drawing, y upwards. One unit is about one pixel of a
page, or a quarter of a millimetre on a card of 26 mm.
"""

from __future__ import annotations

import cmath
import math
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final, Literal

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable

Pen = Literal["line", "thin", "fine", "dotted", "solid", "paper"]
"""The outline (closed paths hide what lies behind), outlines of small parts, fine lines such as veins, what the lesson
does not record, areas full of ink, and areas of bare paper that hide what lies behind."""
WIDTHS: Final = {"line": 1.6, "thin": 1.0, "fine": 0.6, "dotted": 1.2, "solid": 0.0, "paper": 0.0}
"""How broad each pen draws, in units."""
_NOTHING: Final = 1e-9
_STEPS: Final = 8
"""Into how many pieces a curve is cut to measure it."""


@dataclass(frozen=True, slots=True)
class Line:
    """A straight piece of a path, to `end`."""

    end: complex


@dataclass(frozen=True, slots=True)
class Curve:
    """A cubic Bézier piece of a path, with its two handles."""

    first: complex
    second: complex
    end: complex


Piece = Line | Curve


@dataclass(frozen=True, slots=True)
class Path:
    """A line from `start` through its pieces; closed or open."""

    start: complex
    pieces: tuple[Piece, ...]
    closed: bool = False

    @property
    def end(self) -> complex:
        """Return the last point."""
        return self.pieces[-1].end if self.pieces else self.start

    def then(self, other: Path) -> Path:
        """Return this path and another behind it; a gap between them is bridged straight."""
        bridge = () if abs(other.start - self.end) < _NOTHING else (Line(other.start),)
        return Path(self.start, (*self.pieces, *bridge, *other.pieces))

    def shut(self) -> Path:
        """Return the path closed."""
        return Path(self.start, self.pieces, closed=True)

    def reversed(self) -> Path:
        """Return the path from its end to its start."""
        points = [self.start, *(piece.end for piece in self.pieces)]
        pieces: list[Piece] = []
        for at in range(len(self.pieces) - 1, -1, -1):
            piece = self.pieces[at]
            if isinstance(piece, Line):
                pieces.append(Line(points[at]))
            else:
                pieces.append(Curve(piece.second, piece.first, points[at]))
        return Path(self.end, tuple(pieces), self.closed)

    def mapped(self, to: Callable[[complex], complex]) -> Path:
        """Return the path with every point and handle moved."""
        return Path(
            to(self.start),
            tuple(
                Line(to(p.end)) if isinstance(p, Line)
                else Curve(to(p.first), to(p.second), to(p.end))
                for p in self.pieces
            ),
            self.closed,
        )  # fmt: skip

    def placed(self, place: Place) -> Path:
        """Return the path turned, scaled, mirrored and moved."""
        return self.mapped(place.put)

    def mirrored(self) -> Path:
        """Return the path mirrored at the y axis."""
        return self.placed(Place(mirrored=True))

    def points(self, steps: int = _STEPS) -> list[complex]:
        """Return the path as a polyline; each curve gives `steps` points."""
        points, at = [self.start], self.start
        for piece in self.pieces:
            if isinstance(piece, Curve):
                for step in range(1, steps):
                    t = step / steps
                    u = 1 - t
                    points.append(
                        u * u * u * at + 3 * u * u * t * piece.first
                        + 3 * u * t * t * piece.second + t * t * t * piece.end
                    )  # fmt: skip
            at = piece.end
            points.append(at)
        return points


@dataclass(frozen=True, slots=True)
class Place:
    """Where and how a piece is put.

    First mirrored at the y axis if asked, then turned and scaled by the complex factor `turn`,
    then moved by `at`.
    """

    at: complex = 0j
    turn: complex = 1 + 0j
    mirrored: bool = False

    def put(self, point: complex) -> complex:
        """Return where a point comes to lie."""
        return self.at + self.turn * (-point.conjugate() if self.mirrored else point)

    def after(self, first: Place) -> Place:
        """Return the place of something put at `first` within what is put here."""
        turn = first.turn.conjugate() if self.mirrored else first.turn
        return Place(self.put(first.at), self.turn * turn, self.mirrored != first.mirrored)


def turned(
    degrees: float, at: complex = 0j, scale: float = 1.0, *, mirrored: bool = False
) -> Place:
    """Return a place turned by some degrees against the clock."""
    return Place(at, cmath.rect(scale, math.radians(degrees)), mirrored)


@dataclass(frozen=True, slots=True)
class Mark:
    """A path drawn with a pen. `part` says what it is: `petal`, `leaflet`, `tooth`."""

    path: Path
    pen: Pen = "line"
    part: str = ""


@dataclass(frozen=True, slots=True)
class Copy:
    """A piece of drawing put in a place; the same piece may be put in many."""

    piece: Ink
    place: Place
    part: str = ""


Ink = tuple["Mark | Copy", ...]
"""A drawing, in the order in which it is laid down: what comes later hides what came before."""


def put(ink: Ink, place: Place) -> Ink:
    """Return a drawing put in a place; copies stay copies."""
    return tuple(
        Mark(one.path.placed(place), one.pen, one.part) if isinstance(one, Mark)
        else Copy(one.piece, place.after(one.place), one.part)
        for one in ink
    )  # fmt: skip


def plain(ink: Ink) -> Iterable[Mark]:
    """Yield every mark where it stands, copies included."""
    for one in ink:
        if isinstance(one, Mark):
            yield one
        else:
            yield from plain(put(one.piece, one.place))


@dataclass(frozen=True, slots=True)
class Box:
    """The room that a drawing takes, in units."""

    left: float
    bottom: float
    right: float
    top: float

    @property
    def width(self) -> float:
        """Return the width."""
        return self.right - self.left

    @property
    def height(self) -> float:
        """Return the height."""
        return self.top - self.bottom


def points(ink: Ink, steps: int = _STEPS) -> list[complex]:
    """Return the points of a drawing where they stand, copies included."""
    return _points(ink, steps, {})


def _points(ink: Ink, steps: int, known: dict[int, list[complex]]) -> list[complex]:
    # A piece that is copied many times is measured once; it lives as long as the drawing does.
    found: list[complex] = []
    for one in ink:
        if isinstance(one, Mark):
            found += one.path.points(steps)
            continue
        if id(one.piece) not in known:
            known[id(one.piece)] = _points(one.piece, steps, known)
        found += map(one.place.put, known[id(one.piece)])
    return found


def box(ink: Ink) -> Box:
    """Return the room that a drawing takes, with half a line's width round it."""
    found = points(ink)
    if not found:
        return Box(0, 0, 0, 0)
    edge = WIDTHS["line"] / 2
    across, up = [p.real for p in found], [p.imag for p in found]
    return Box(min(across) - edge, min(up) - edge, max(across) + edge, max(up) + edge)
