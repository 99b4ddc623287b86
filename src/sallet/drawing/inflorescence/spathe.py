"""Hoods and sheaths, and the club within: the spadix of arums, the wraps of umbels."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import circle
from sallet.drawing.ink import Copy, Curve, Line, Mark, Path, Place, turned

if TYPE_CHECKING:
    from sallet.drawing.ink import Ink


_TIP: Final = 0.8
"""Where the club begins to narrow."""


def spadix(spathe: str, size: float) -> Ink:
    """Return a club set with tiny flowers, in what spathe is recorded; its foot at the origin."""
    behind, before = wrap(spathe, size)
    club = _club(size * (0.66 if spathe else 1.0), size * (0.055 if spathe else 0.085))
    return (*behind, *club, *before)


def _club(height: float, half: float) -> Ink:
    low, waist = complex(half * 0.55, 0), complex(half * 0.62, height * 0.3)
    broad, tip = complex(half, height * 0.74), 1j * height
    right = (
        Curve(low + 0.1j * height, waist - 0.1j * height, waist),
        Curve(waist + 0.16j * height, broad - 0.16j * height, broad),
        Curve(broad + 0.14j * height, tip + half * 0.7, tip),
    )
    side = Path(low, right)
    left = side.placed(Place(mirrored=True)).reversed()
    outline = side.then(left).then(Path(left.end, (Line(low),))).shut()
    dot: Ink = (Mark(circle(0j, max(0.9, half * 0.14)), "solid"),)
    dots = []
    rows = 26
    for row in range(rows):
        y = height * (0.04 + 0.9 * row / (rows - 1))
        share = y / height
        broad = half * (0.55 + 0.35 * min(1.0, share / 0.72)) * (1 if share < _TIP else 0.75)
        for column in (-0.66, 0.0, 0.66):
            x = (column + (0.33 if row % 2 else 0)) * broad
            if abs(x) < broad * 0.86:
                dots.append(Copy(dot, Place(complex(x, y)), ""))
    return (Mark(outline, "line", "spadix"), *dots)


def wrap(spathe: str, size: float) -> tuple[Ink, Ink]:
    """Return what of a spathe lies behind the flowers and what before them."""
    made = {"hood": _hood, "sheath": _sheath, "fold": _fold, "two": _two}.get(spathe)
    return made(size) if made else ((), ())


def _hood(size: float) -> tuple[Ink, Ink]:
    s = size
    back = Path(
        complex(-0.03 * s, 0),
        (
            Curve(
                complex(-0.17 * s, 0.1 * s),
                complex(-0.15 * s, 0.26 * s),
                complex(-0.11 * s, 0.33 * s),
            ),
            Curve(complex(-0.32 * s, 0.52 * s), complex(-0.24 * s, 0.82 * s), complex(0.06 * s, s)),
            Curve(
                complex(0.2 * s, 0.8 * s), complex(0.3 * s, 0.52 * s), complex(0.12 * s, 0.32 * s)
            ),
            Curve(complex(0.16 * s, 0.24 * s), complex(0.16 * s, 0.1 * s), complex(0.03 * s, 0)),
        ),
        closed=True,
    )
    front = Path(
        complex(-0.03 * s, 0),
        (
            Curve(
                complex(-0.17 * s, 0.1 * s),
                complex(-0.15 * s, 0.26 * s),
                complex(-0.11 * s, 0.33 * s),
            ),
            Curve(
                complex(-0.06 * s, 0.35 * s),
                complex(0.06 * s, 0.29 * s),
                complex(0.1 * s, 0.22 * s),
            ),
            Curve(
                complex(0.125 * s, 0.25 * s),
                complex(0.13 * s, 0.29 * s),
                complex(0.12 * s, 0.32 * s),
            ),
            Curve(complex(0.16 * s, 0.24 * s), complex(0.16 * s, 0.1 * s), complex(0.03 * s, 0)),
        ),
        closed=True,
    )
    roll = Path(complex(0.1 * s, 0.22 * s), (
        Curve(complex(0.09 * s, 0.14 * s), complex(0.05 * s, 0.06 * s), complex(0.015 * s, 0.015 * s)),
    ))  # fmt: skip
    return (Mark(back, "line", "spathe"),), (Mark(front), Mark(roll))


def _sheath(size: float) -> tuple[Ink, Ink]:
    s = size * 0.3
    left = _flap(s, 62, "fine")
    right = _flap(s * 0.82, -58, "fine", mirrored=True)
    return (), (*left, *right)


def _flap(length: float, degrees: float, pen: str, *, mirrored: bool = False) -> Ink:
    half = length * 0.3
    outline = Path(
        0j,
        (
            Curve(complex(half * 1.5, length * 0.2), complex(half, length * 0.75), 1j * length),
            Curve(complex(-half * 0.7, length * 0.8), complex(-half * 1.2, length * 0.3), 0j),
        ),
        closed=True,
    )
    veins = tuple(
        Mark(Path(complex(0, length * 0.1), (
            Curve(complex(half * k, length * 0.35), complex(half * k, length * 0.65), complex(half * k * 0.3, length * 0.88)),
        )), "fine")
        for k in (-0.5, 0.1, 0.75)
    )  # fmt: skip
    place = turned(degrees, scale=1.0, mirrored=mirrored)
    if pen == "fine":
        return (Copy((Mark(outline, "fine"), *veins), place, "spathe"),)
    return (Copy((Mark(outline),), place, "spathe"),)


def _fold(size: float) -> tuple[Ink, Ink]:
    s = size * 0.62
    front = Path(
        0j,
        (
            Curve(complex(0.26 * s, 0.12 * s), complex(0.36 * s, 0.5 * s), complex(0.22 * s, s)),
            Curve(complex(0.08 * s, 0.72 * s), complex(-0.1 * s, 0.34 * s), 0j),
        ),
        closed=True,
    )
    keel = Path(
        0j, (Curve(complex(0.2 * s, 0.2 * s), complex(0.27 * s, 0.55 * s), complex(0.22 * s, s)),)
    )
    return (), (Mark(front, "line", "spathe"), Mark(keel, "fine"))


def _two(size: float) -> tuple[Ink, Ink]:
    s = size * 0.44
    return (), (*_flap(s, 40, "line"), *_flap(s, -40, "line", mirrored=True))
