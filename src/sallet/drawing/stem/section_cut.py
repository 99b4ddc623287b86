"""What stands beside a stem cut across: a piece cut lengthwise, a stem pulled apart."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import smooth, straight
from sallet.drawing.ink import Mark
from sallet.drawing.stem.section_fill import stippled

if TYPE_CHECKING:
    from sallet.drawing.ink import Ink, Pen

PULLED: Final = {"stretchy thread": True, "no thread": False}
_HEIGHT: Final = 1.24
"""Height of the piece in shares of its breadth."""
_NODES: Final = (-0.3, 0.3)
"""Where its two cross walls stand, in shares of its height."""
_WALL: Final = 0.035
_RUNGS: Final = 15
_SPACING: Final = 0.075
_ZIGZAG: Final = (0.0, 0.05, -0.02, 0.06, 0.0, 0.045, -0.01)
"""How a broken end goes up and down, in shares of the breadth."""


def lengthwise(kind: str, core: float, size: float, *, dotted: bool) -> Ink:
    """Return a piece of stem cut lengthwise, upright, `size` broad, its middle at the origin.

    `kind` is `walls` (hollow, closed at the joints) or `ladder` (a core of many thin walls);
    `core` is how much of the breadth the core takes.
    """
    half, up, inner = size / 2, size * _HEIGHT / 2, size * core / 2
    side: Pen = "dotted" if dotted else "line"
    ink = [Mark(straight(complex(x, -up), complex(x, up)), side, "side") for x in (-half, half)]
    for y in (-up, up):
        points = [complex(half * x, y + size * 0.018 * bow) for x, bow in _break()]
        ink.append(Mark(smooth(points), "fine"))
    levels = [y * 2 * up for y in _NODES]
    wall = _WALL * size

    def full(point: complex) -> bool:
        x, y = abs(point.real), point.imag
        in_wall = kind == "walls" and any(abs(y - level) < wall * 0.6 for level in levels)
        return inner + size * 0.03 < x < half - size * 0.03 or (in_wall and x <= inner)

    ink += stippled(size, 2 * up - size * 0.08, _SPACING * size, full)
    if kind == "ladder":
        return (*ink, *_ladder(inner, up))
    return (*ink, *_rooms(inner, up, levels, wall))


def _break() -> tuple[tuple[float, float], ...]:
    return ((-1, 0), (-0.6, 1), (-0.15, -0.6), (0.3, 0.9), (0.7, -0.7), (1, 0))


def _ladder(inner: float, up: float) -> Ink:
    rails = [Mark(straight(complex(x, -up), complex(x, up)), "thin") for x in (-inner, inner)]
    rungs = []
    for number in range(_RUNGS):
        y = up * (2 * (number + 0.5) / _RUNGS - 1)
        rungs.append(Mark(straight(complex(-inner, y), complex(inner, y)), "thin"))
    return (*rails, *rungs)


def _rooms(inner: float, up: float, levels: list[float], wall: float) -> Ink:
    """Return the hollows between the cross walls."""
    ink = []
    edges = [-up, *(y for level in levels for y in (level - wall, level + wall)), up]
    soft = wall * 1.4
    for low, top in zip(edges[::2], edges[1::2], strict=True):
        points = []
        if low > -up:
            points += [complex(-inner + soft, low), complex(inner - soft, low)]
        for x in (inner, -inner):
            ends = (max(low, -up) + (soft if low > -up else 0), top - (soft if top < up else 0))
            near, far = ends if x > 0 else ends[::-1]
            points += [complex(x, near), complex(x, far)]
            if x > 0 and top < up:
                points += [complex(inner - soft, top), complex(-inner + soft, top)]
        if low > -up:
            points.append(points[0])
        if (low > -up and top < up) or low <= -up:
            ink.append(Mark(straight(*points), "thin", "room"))
        else:
            ink.append(Mark(straight(*points[3:], *points[1:4]), "thin", "room"))
    return tuple(ink)


def pulled_apart(size: float, *, thread: bool) -> Ink:
    """Return a stem pulled apart, upright, its middle at the origin: with a thread or without."""
    half, up, gap = 0.13 * size, 0.62 * size, 0.17 * size
    ink: list[Mark] = []
    for sign in (1, -1):
        count = len(_ZIGZAG) - 1
        torn = [
            complex(half * (2 * n / count - 1), sign * (gap + rise * size))
            for n, rise in enumerate(_ZIGZAG)
        ]
        far = sign * up
        ink.append(Mark(straight(complex(-half, far), *torn, complex(half, far)), "line", "half"))
        points = [complex(half * x, far + size * 0.012 * bow) for x, bow in _break()]
        ink.append(Mark(smooth(points), "fine"))
    if thread:
        line = [
            complex(0.01 * size * x, y * gap)
            for x, y in ((0, 1.25), (1, 0.5), (-1, -0.4), (0, -1.25))
        ]
        ink.append(Mark(smooth(line), "line", "thread"))
    return tuple(ink)
