"""What a cut shows inside: full flesh stippled, pith as round cells, air holes, a hollow."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import circle, straight
from sallet.drawing.ink import Copy, Mark, Place

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Sequence

    from sallet.drawing.ink import Ink

_PLASTIC: Final = 1.32471795724474602596
"""The two-dimensional golden number: its powers spread points evenly (Roberts 2018, from memory)."""
_GOLDEN: Final = (math.sqrt(5) - 1) / 2
_DOT: Final = 0.3


def spread(count: int, breadth: float, height: float) -> Iterator[complex]:
    """Yield points spread evenly, without rows, over a rectangle round the origin."""
    for number in range(1, count + 1):
        across = (0.5 + number / _PLASTIC) % 1
        up = (0.5 + number / (_PLASTIC * _PLASTIC)) % 1
        yield complex((across - 0.5) * breadth, (up - 0.5) * height)


def strewn(count: int, breadth: float, height: float) -> Iterator[complex]:
    """Yield points strewn from the foot of a strip to its top, as leaf scars round a twig."""
    for number in range(count):
        across = (number * _GOLDEN + 0.04 * math.sin(number * 2.4)) % 1
        yield complex((across - 0.5) * breadth, ((number + 0.5) / count - 0.5) * height)


def stippled(
    breadth: float, height: float, spacing: float, inside: Callable[[complex], bool]
) -> tuple[Mark, ...]:
    """Return dots about `spacing` apart, wherever `inside` says so within a rectangle."""
    count = round(breadth * height / (spacing * spacing))
    return tuple(
        Mark(straight(p, p + _DOT), "thin") for p in spread(count, breadth, height) if inside(p)
    )


def cells(
    radius: float, spacing: float, reach: float, inside: Callable[[complex], bool], part: str
) -> Ink:
    """Return round cells or holes in close rows, wherever `inside` says so."""
    piece = (Mark(circle(0j, radius), "fine"),)
    rows = math.ceil(reach / (spacing * 0.866))
    ink = []
    for row in range(-rows, rows + 1):
        shift = 0.5 * (row % 2)
        for column in range(-rows - 1, rows + 2):
            at = complex((column + shift) * spacing, row * spacing * 0.866)
            if inside(at):
                ink.append(Copy(piece, Place(at), part))
    return tuple(ink)


def within(edge: Sequence[complex], point: complex) -> bool:
    """Return whether a point lies within a closed line."""
    found = False
    x, y = point.real, point.imag
    a = edge[-1]
    for b in edge:
        if (a.imag > y) != (b.imag > y) and x < a.real + (b.real - a.real) * (y - a.imag) / (
            b.imag - a.imag
        ):
            found = not found
        a = b
    return found
