"""How a stem divides, as lines on the way it goes."""

from __future__ import annotations

import cmath
import math
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import walk

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Mapping

    from sallet.drawing.curves import Walk

Points = list[complex]
_ANGLE: Final = 44.0
"""Degrees between a branch and the stem at its foot."""
_STEPS: Final = 7


def branch(line: Walk, share: float, side: int, long: float) -> Points:
    """Return a branch that leaves a stem some share of the way up and bends towards its tip."""
    at, way = line.at(line.length * share), line.heading(line.length * share)
    points, turn = [at], _ANGLE * side
    for step in range(_STEPS):
        points.append(points[-1] + way * cmath.rect(long / _STEPS, math.radians(turn)))
        turn -= side * (2.6 if step else 0)
    return points


def branches(kind: str, line: Walk, size: float) -> list[Points]:
    """Return the branches of a stem by the hint `branches`."""
    return list(_KINDS[kind](line, size))


def _side(number: int) -> int:
    return 1 if number % 2 else -1


def _base(line: Walk, size: float) -> Iterator[Points]:
    for share, side, long in ((0.02, 1, 0.72), (0.05, -1, 0.74), (0.1, 1, 0.56), (0.13, -1, 0.52)):
        yield branch(line, share, side, long * size)


def _top(line: Walk, size: float) -> Iterator[Points]:
    for number in range(6):
        share = 0.6 + 0.06 * number
        yield branch(line, share, _side(number), (0.36 - 0.045 * number) * size)


def _all(line: Walk, size: float) -> Iterator[Points]:
    for number in range(11):
        share = 0.08 + 0.08 * number
        main = branch(line, share, _side(number), (0.5 - 0.036 * number) * size)
        yield main
        if number < 8:  # noqa: PLR2004 - the topmost are too short to divide
            side = walk(main)
            for where, turn in ((0.42, 1), (0.62, -1)):
                yield branch(side, where, turn, side.length * 0.38)


def _few(line: Walk, size: float) -> Iterator[Points]:
    for share, side, long in ((0.36, -1, 0.36), (0.62, 1, 0.26)):
        yield branch(line, share, side, long * size)


def _pairs(line: Walk, size: float) -> Iterator[Points]:
    for number in range(4):
        for side in (-1, 1):
            yield branch(line, 0.2 + 0.18 * number, side, (0.4 - 0.06 * number) * size)


def _single(line: Walk, size: float) -> Iterator[Points]:
    for number in range(6):
        side = 1 if number % 2 else -1
        yield branch(line, 0.16 + 0.12 * number, side, (0.42 - 0.045 * number) * size)


_KINDS: Final[Mapping[str, Callable[[Walk, float], Iterator[Points]]]] = {
    "base": _base, "top": _top, "all": _all, "few": _few, "pairs": _pairs, "single": _single,
}  # fmt: skip
BRANCHES: Final = frozenset({*_KINDS, "fork", "none"})
"""The hints `branches` that can be drawn."""


def forked(line: Walk, size: float) -> list[Points]:
    """Return a stem that divides in two again and again, from its lower part onwards."""
    stem = line.between(0, line.length * 0.34)
    found: list[Points] = [stem]
    way = line.heading(line.length * 0.34)
    ends = [(stem[-1], way)]
    long, spread = 0.3 * size, 26.0
    for _ in range(3):
        grown = []
        for at, heading in ends:
            for side in (-1, 1):
                out = heading * cmath.rect(1, math.radians(spread * side))
                tip = at + out * long
                found.append([at, (at + tip) / 2 + heading * long * 0.02, tip])
                grown.append((tip, heading * cmath.rect(1, math.radians(spread * 0.8 * side))))
        ends, long, spread = grown, long * 0.7, spread * 0.8
    return found
