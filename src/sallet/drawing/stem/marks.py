"""Markings of a stem, and what rises from its joint: roots, tendrils."""

from __future__ import annotations

import cmath
import math
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import circle, smooth, straight
from sallet.drawing.ink import Copy, Curve, Mark, Path, Place
from sallet.drawing.stem.body import HALF, JOINT, ring
from sallet.drawing.stem.hairs import pore
from sallet.drawing.stem.section_fill import strewn

if TYPE_CHECKING:
    from sallet.drawing.ink import Ink
    from sallet.drawing.stem.body import Body

_SPOTS: Final = 46
_BLOTCHES: Final = 19
_PORES: Final = 17
_FLUSH: Final = 210
_STRIPES: Final = (-0.78, -0.42, -0.02, 0.4, 0.76)
_RIM: Final = (1.0, 0.7, 1.12, 0.8, 1.05, 0.66, 0.95)
"""How far the edge of a blotch lies from its middle, all round."""


def marking_ink(body: Body, marks: str) -> Ink:
    """Return the markings by the vocabulary's hint `marks`."""
    return _MARKINGS[marks](body)


def _spots(body: Body) -> Ink:
    piece = (Mark(circle(0j, 0.0068 * body.size), "solid"),)
    return tuple(Copy(piece, Place(at), "spot") for at in _over(body, _SPOTS, 0.9))


def _blotches(body: Body) -> Ink:
    ink = []
    for number, at in enumerate(_over(body, _BLOTCHES, 0.86)):
        grown = (0.011 + 0.007 * math.sin(number * 2.4)) * body.size
        rim = [
            complex(0.72, 0) * r * math.cos(a) + 1.35j * r * math.sin(a)
            for r, a in ((_RIM[(n + number) % 7], math.tau * n / 7) for n in range(7))
        ]
        ink.append(Mark(smooth([at + grown * p for p in rim], closed=True), "solid", "blotch"))
    return tuple(ink)


def _stripes(body: Body) -> Ink:
    ink = []
    size, wide = body.size, 0.006 * body.size
    for number, share in enumerate(_STRIPES):
        for low, high in (
            ((0.03, 0.47), (0.53, 0.97)) if number % 2 else ((0.07, 0.44), (0.56, 0.93))
        ):
            x = HALF * size * share
            a, b = complex(x, low * size), complex(x, high * size)
            third = (b - a) / 3
            ink.append(
                Mark(
                    Path(
                        a,
                        (Curve(a + third + wide, b - third + wide, b), Curve(b - third - wide, a + third - wide, a)),
                        closed=True,
                    ),
                    "solid",
                    "stripe",
                )
            )  # fmt: skip
    return tuple(ink)


def _flush(body: Body) -> Ink:
    return tuple(Mark(straight(at, at + 0.3), "fine") for at in _over(body, _FLUSH, 0.94))


def _bands(body: Body) -> Ink:
    low = ring(body, (JOINT - 0.016) * body.size)
    high = ring(body, (JOINT + 0.016) * body.size)
    return (Mark(low.then(high.reversed()).shut(), "solid", "band"),)


def _pores(body: Body) -> Ink:
    piece = pore(0.017 * body.size)
    return tuple(Copy(piece, Place(at), "pore") for at in _over(body, _PORES, 0.84))


def _over(body: Body, count: int, share: float) -> list[complex]:
    size = body.size
    found = strewn(count, 2 * HALF * size * share, 0.95 * size)
    return [p + 0.5j * size for p in found]


_MARKINGS: Final = {
    "spots": _spots, "blotches": _blotches, "stripes": _stripes, "flush": _flush, "rings": _bands,
    "dots": _pores,
}  # fmt: skip
MARKINGS: Final = frozenset(_MARKINGS)
"""The hints `marks` that leave ink: a stem without marks is drawn as one that tells nothing."""


def root_ink(body: Body, roots: str) -> Ink:
    """Return roots on a stem, to be laid behind it: at its joint (`nodes`) or `all` along."""
    size = body.size
    seats = [(JOINT + d, s) for s in (-1, 1) for d in (-0.012, 0.004, 0.016)]
    if roots == "all":
        seats = [(0.05 + 0.9 * n / 11, 1 if n % 2 else -1) for n in range(12)]
    ink = []
    for number, (height, side) in enumerate(seats):
        foot = complex(side * HALF * size * 0.9, height * size)
        long = size * (0.16 + 0.05 * math.sin(number * 2.4))
        down = cmath.rect(long, math.radians(-52 - 14 * math.sin(number * 1.3)))
        way = complex(down.real * side, down.imag)
        bow = way * 1j * side * 0.16
        tip = foot + way
        ink.append(
            Mark(Path(foot, (Curve(foot + way * 0.3 + bow, foot + way * 0.7 - bow, tip),)), "thin", "root")
        )  # fmt: skip
        # A root of the second order, so that nobody takes it for a hair.
        fork = foot + way * 0.55
        ink.append(Mark(straight(fork, fork + way * 0.26 * cmath.rect(1, side * 0.7)), "fine"))
    return tuple(ink)


def tendril_ink(body: Body, whence: str) -> Ink:
    """Return a tendril at the joint, by the state of `tendrils`; the leaf is dotted."""
    size = body.size
    foot = complex(HALF * size, JOINT * size)
    tip = foot + complex(0.2, 0.1) * size
    leaf = complex(0.21, 0.045) * size
    stalk = Path(
        foot, (Curve(foot + complex(0.05, 0.05) * size, tip - complex(0.07, 0.03) * size, tip),)
    )
    side = leaf * 0.34j
    blade = Path(
        tip,
        (
            Curve(tip + side, tip + leaf * 0.6 + side, tip + leaf),
            Curve(tip + leaf * 0.6 - side, tip - side, tip),
        ),
        closed=True,
    )
    start, way = {
        "from the leaf tips": (tip + leaf, complex(0.14, 0.06)),
        "from the leaf axils": (foot + 0.012j * size, complex(0.1, 0.27)),
        "beside the leaf stalks": (foot + complex(0.03, 0.008) * size, complex(0.19, -0.09)),
    }[whence]
    return (
        Mark(stalk, "dotted"),
        Mark(blade, "dotted"),
        Mark(_coil(start, start + way * size, 0.032 * size), "line", "tendril"),
    )


def _coil(foot: complex, end: complex, radius: float) -> Path:
    """Return a thread that ends in a coil."""
    way = (end - foot) / abs(end - foot)
    centre = end + way * 1j * radius
    points = [foot, (foot + end) / 2 - way * 0.35j * radius]
    for step in range(15):
        shrunk = radius * (1 - step / 17)
        points.append(centre - way * 1j * shrunk * cmath.rect(1, math.tau * step / 7))
    return smooth(points)


TENDRILS: Final = {
    state: state
    for state in ("from the leaf tips", "from the leaf axils", "beside the leaf stalks")
}
ROOTS: Final = {"at the nodes": "nodes", "all along": "all"}
