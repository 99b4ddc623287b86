"""Stipules on a piece of stem."""

from __future__ import annotations

import cmath
import math
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import circle, straight
from sallet.drawing.ink import Copy, Curve, Line, Mark, Path, turned
from sallet.drawing.leaf.stem_piece import LEAN

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.ink import Ink


def _small_blade(long: float, wide: float) -> Path:
    return Path(
        0j,
        (
            Curve(complex(wide, 0.1 * long), complex(wide * 0.9, 0.55 * long), complex(0, long)),
            Curve(complex(-wide * 0.9, 0.55 * long), complex(-wide, 0.1 * long), 0j),
        ),
        closed=True,
    )  # fmt: skip


def _pair_of(long: float, wide: float, angle: float = 52) -> Callable[[complex, float], Ink]:
    """Return two stipules of a length and half a width in lengths of the blade."""

    def drawn(at: complex, length: float) -> Ink:
        piece = (Mark(_small_blade(long * length, wide * length)),)
        return tuple(
            Copy(piece, turned(sign * angle, at, mirrored=sign > 0), "stipule") for sign in (1, -1)
        )

    return drawn


def _toothed(at: complex, length: float) -> Ink:
    blade = _small_blade(0.13 * length, 0.05 * length)
    points = blade.points(8)
    edge = [p * (1 if n % 2 else 0.86) for n, p in enumerate(points)]
    piece = (Mark(straight(*edge, closed=True)),)
    return tuple(
        Copy(piece, turned(sign * 56, at, mirrored=sign > 0), "stipule") for sign in (1, -1)
    )


def _fringed(at: complex, length: float) -> Ink:
    long = 0.13 * length
    blade = _small_blade(long, 0.035 * length)
    dots = tuple(Mark(circle(p, 1.2), "solid") for p in blade.points(5)[1:-1])
    piece = (Mark(blade), *dots)
    return tuple(
        Copy(piece, turned(sign * 52, at, mirrored=sign > 0), "stipule") for sign in (1, -1)
    )


def _on_stalk(at: complex, length: float) -> Ink:
    """Return stipules grown along the stalk with one side, free at their tips."""
    high, wide = 0.15 * length, 0.045 * length
    marks = []
    for sign in (-1, 1):
        path = Path(at, (
            Curve(at + complex(sign * wide, 0), at + complex(sign * wide, 0.7 * high), at + complex(sign * wide * 0.9, 1.25 * high)),
            Line(at + complex(sign * 0.012 * length, high)),
        ), closed=True)  # fmt: skip
        marks.append(Mark(path, "line", "stipule"))
    return tuple(marks)


def tube(at: complex, length: float) -> Ink:
    """Return a thin tube round the stem above the node, torn at the top."""
    side, up = LEAN * 1j * 0.042 * length, LEAN * 0.16 * length
    rim = [
        at + side + up,
        at + 0.5 * side + up * 1.14,
        at + up * 0.94,
        at - 0.5 * side + up * 1.16,
        at - side + up,
    ]
    return (
        Mark(straight(at + side, *rim, at - side, closed=True), "line", "stipule"),
        *(Mark(straight(at + side * k, at + side * k + up * 0.8), "fine") for k in (-0.5, 0, 0.5)),
    )


def _papery(at: complex, length: float) -> Ink:
    """Return thin dry stipules: drawn with the fine pen, their veins showing."""
    long = 0.13 * length
    piece = (
        Mark(_small_blade(long, 0.05 * length), "fine"),
        *(
            Mark(straight(complex(k, 0.1 * long), complex(k, 0.7 * long)), "fine")
            for k in (-2, 0, 2)
        ),
    )
    return tuple(
        Copy(piece, turned(sign * 50, at, mirrored=sign > 0), "stipule") for sign in (1, -1)
    )


def _spines(at: complex, length: float) -> Ink:
    return tuple(
        Mark(straight(at - 2, at + cmath.rect(0.13 * length, math.radians(90 + sign * 62)), at + 2, closed=True), "solid", "stipule")
        for sign in (-1, 1)
    )  # fmt: skip


def _between(at: complex, length: float) -> Ink:
    tip = at + LEAN * 0.08 * length
    side = LEAN * 1j * 0.03 * length
    return (Mark(straight(at + side, tip, at - side, closed=True), "line", "stipule"),)


STIPULES: Final[Mapping[str, Callable[[complex, float], Ink]]] = {
    "leafy": _pair_of(0.2, 0.07, 58),
    "narrow": _pair_of(0.17, 0.022),
    "awl": _pair_of(0.1, 0.012),
    "small": _pair_of(0.05, 0.012),
    "toothed": _toothed,
    "fringed": _fringed,
    "joined": _on_stalk,
    "tube": tube,
    "papery": _papery,
    "spines": _spines,
    "between": _between,
}
"""Stipules by the vocabulary's hint."""
