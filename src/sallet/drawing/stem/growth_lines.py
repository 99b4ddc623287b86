"""Lines for how a stem grows: where it goes from the ground, and what it goes over."""

from __future__ import annotations

import cmath
import math
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import bezier, smooth, straight, walk
from sallet.drawing.ink import Mark

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.curves import Walk
    from sallet.drawing.ink import Ink

Points = list[complex]


@dataclass(frozen=True)
class Way:
    """The way a stem goes, in shares of the drawing's height; its foot at the origin."""

    points: tuple[complex, ...]
    mirrored: bool = False
    """A second stem goes the other way."""
    ground: str = "ground"
    """`ground`, `water`, `wall`."""
    support: str = ""
    """`rod` (winds or climbs on it), `face` (clings to it), `heap` (leans on it)."""
    roots: bool = False
    """Roots stand on it wherever it lies."""
    tendrils: bool = False


def _curve(*points: complex) -> tuple[complex, ...]:
    return tuple(smooth(points).points(6))


def _line(a: complex, b: complex, c: complex, d: complex) -> tuple[complex, ...]:
    return tuple(bezier(a, b, c, d, 14))


_UP: Final = Way((0j, 0.25j, 0.5j, 0.75j, 1j))
_LYING: Final = _curve(0j, 0.1 + 0.05j, 0.35 + 0.03j, 0.62 + 0.045j, 0.86 + 0.03j, 1 + 0.08j)
_TWINING: Final = tuple(
    complex(0.075 * math.sin(math.tau * t / 24 * 2.5), t / 24) for t in range(25)
)
WAYS: Final[Mapping[str, Way]] = {
    "erect": _UP,
    "upright": _UP,
    "rising": Way(_line(0j, 0.3 + 0.0j, 0.5 + 0.0j, 0.52 + 0.92j)),
    "arching": Way(_line(0j, 0.08 + 0.95j, 0.6 + 1.1j, 0.98 + 0.28j)),
    "nodding at the tip": Way(_curve(0j, 0.3j, 0.62j, 0.02 + 0.84j, 0.1 + 0.94j, 0.18 + 0.88j, 0.19 + 0.76j)),
    "creeping": Way(_LYING, roots=True),
    "lying": Way(_LYING),
    "lying flat": Way(
        _line(0j, 0.3 + 0.012j, 0.7 + 0.012j, 1 + 0.012j), mirrored=True
    ),
    "sprawling": Way(
        _curve(0j, 0.12 + 0.16j, 0.34 + 0.1j, 0.55 + 0.2j, 0.78 + 0.12j, 1 + 0.24j),
        mirrored=True,
    ),
    "spreading": Way(_line(0j, 0.16 + 0.24j, 0.4 + 0.5j, 0.78 + 0.62j), mirrored=True),
    "scrambling": Way(
        _curve(0j, 0.08 + 0.3j, 0.3 + 0.62j, 0.6 + 0.72j, 0.9 + 0.62j), support="heap"
    ),
    "twining": Way(_TWINING, support="rod"),
    "climbing with tendrils": Way(
        _curve(0j, -0.1 + 0.25j, -0.07 + 0.5j, -0.12 + 0.75j, -0.08 + 0.98j), support="rod", tendrils=True
    ),
    "climbing with roots": Way(
        _curve(0j, 0.02 + 0.25j, 0j, 0.02 + 0.75j, 0.01 + 0.98j), support="face", roots=True
    ),
    "climbing": Way(_curve(0j, -0.09 + 0.2j, 0.07 + 0.45j, -0.07 + 0.7j, 0.04 + 0.95j), support="rod"),
    "hanging": Way(_line(0j, 0.14 + 0.12j, 0.3 + 0.05j, 0.26 - 0.85j), ground="wall"),
    "floating": Way(
        _curve(-0.5 + 0.012j, -0.2 + 0.035j, 0.1 + 0.012j, 0.35 + 0.035j, 0.55 + 0.02j),
        ground="water",
    ),
    "weak": Way(_curve(0j, 0.07 + 0.28j, 0.3 + 0.4j, 0.48 + 0.26j, 0.6 + 0.12j, 0.78 + 0.16j)),
}  # fmt: skip
"""By the states of `posture`, those of stems and those of whole plants."""
_HEAP: Final = ((0.3, 0.56, 5), (0.42, 0.66, -3), (0.55, 0.7, 2), (0.68, 0.66, -5), (0.8, 0.6, 3))
"""Other plants: where they stand, how tall they are, how they lean."""
_THICK: Final = 12
UNTOLD: Final = _UP
"""What stands for a posture that is not recorded: the ground is dotted then."""


def stem_walk(way: Way, size: float, lean: float = 0.0) -> Walk:
    """Return the way of a stem in units, turned about its foot by some degrees."""
    turn = cmath.rect(size, math.radians(lean))
    return walk([p * turn for p in way.points])


def mirrored(line: Walk) -> Walk:
    """Return a way that goes as far to the other side."""
    return walk([-p.conjugate() for p in line.points])


def ground_ink(way: Way, size: float, left: float, right: float) -> Ink:
    """Return what the plant stands on, from left to right in units."""
    if way.ground == "water":
        return water(left, right, size)
    if way.ground == "wall":
        return _wall(size)
    return soil(left, right, size)


def soil(left: float, right: float, size: float) -> Ink:
    """Return the line where the soil begins, hatched below."""
    line = Mark(straight(complex(left, 0), complex(right, 0)), "thin", "ground")
    count = max(3, round((right - left) / (0.13 * size)))
    step = (right - left) / count
    ticks = [
        Mark(straight(complex(x, -0.006 * size), complex(x - 0.03 * size, -0.04 * size)), "fine")
        for x in (left + step * (n + 0.6) for n in range(count))
    ]
    return (line, *ticks)


def water(left: float, right: float, size: float) -> Ink:
    """Return a water line: waves above shorter waves."""
    marks = []
    for row, share in enumerate((1.0, 0.55, 0.25)):
        middle, half = (left + right) / 2, (right - left) / 2 * share
        count = max(3, round(2 * half / (0.07 * size)))
        points = [
            complex(middle - half + 2 * half * n / count, -row * 0.055 * size + (0.012 * size if n % 2 else 0))
            for n in range(count + 1)
        ]  # fmt: skip
        marks.append(Mark(smooth(points), "thin" if not row else "fine", "" if row else "water"))
    return tuple(marks)


def _wall(size: float) -> Ink:
    """Return the edge of a wall or bank: the plant stands on its top and hangs before it."""
    top = straight(
        complex(-0.4 * size, 0), complex(0.14 * size, 0), complex(0.14 * size, -0.95 * size)
    )
    ticks = [
        Mark(
            straight(complex(0.134 * size, -y * size), complex(0.1 * size, -(y + 0.03) * size)),
            "fine",
        )
        for y in (0.12, 0.28, 0.44, 0.6, 0.76, 0.9)
    ]
    return (Mark(top, "thin", "ground"), *ticks)


def support_behind(way: Way, size: float) -> Ink:
    """Return what the stem climbs on, to be laid behind it."""
    if way.support == "rod":
        half = 0.018 * size
        edge = straight(
            complex(-half, -0.01 * size), complex(half, -0.01 * size),
            complex(half, 1.06 * size), complex(-half, 1.06 * size),
        )  # fmt: skip
        return (Mark(edge.shut(), "paper"), Mark(edge.shut(), "fine", "support"))
    if way.support == "face":
        x = 0.075 * size
        bark = [
            Mark(
                straight(
                    complex(x + 0.03 * size, y * size), complex(x + 0.05 * size, (y + 0.07) * size)
                ),
                "fine",
            )
            for y in (0.1, 0.3, 0.5, 0.7, 0.9)
        ]
        return (Mark(straight(complex(x, 0), complex(x, 1.05 * size)), "thin", "support"), *bark)
    if way.support == "heap":
        marks = []
        for x, tall, tilt in _HEAP:
            foot = complex(x * size, 0)
            tip = foot + cmath.rect(tall * size, math.radians(90 + tilt))
            marks.append(Mark(straight(foot, tip), "fine"))
            for share, side in ((0.5, 1), (0.66, -1), (0.82, 1)):
                at = foot + (tip - foot) * share
                twig = (tip - foot) * cmath.rect(0.13, math.radians(38 * side))
                marks.append(Mark(straight(at, at + twig), "fine"))
        return tuple(marks)
    return ()


def roots_along(line: Walk, size: float, *, aside: bool, count: int = 7) -> Ink:
    """Return roots wherever a stem lies on the soil, or clings to a face on its right."""
    marks = []
    for number in range(count):
        at = line.at(line.length * (0.14 + 0.84 * number / count))
        for fork in (-1, 0, 1) if count < _THICK else (0,):
            way = complex(0.06, fork * 0.022) if aside else complex(fork * 0.03, -0.1)
            tip = at + way * size
            bend = (at + tip) / 2 + complex(0.006 * fork, 0.004) * size
            marks.append(
                Mark(smooth([at, bend, tip]), "fine" if fork else "thin", "" if fork else "root")
            )
    return tuple(marks)


def tendrils_along(line: Walk, size: float) -> Ink:
    """Return threads that hold on to a rod at x = 0."""
    marks = []
    for number in range(4):
        at = line.at(line.length * (0.2 + 0.21 * number))
        y = at.imag + 0.05 * size
        loops = [at, complex((at.real - 0.018 * size) / 2, y + 0.02 * size)]
        for turn in range(3):
            low = y + 0.014 * size * turn
            loops += [complex(-0.024 * size, low), complex(0.026 * size, low + 0.009 * size)]
        marks.append(Mark(smooth(loops), "thin", "tendril"))
    return tuple(marks)
