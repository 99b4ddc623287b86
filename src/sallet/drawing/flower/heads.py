"""Heads of many small flowers that pass for one: daisy, dandelion, thistle."""

from __future__ import annotations

import cmath
import math
from dataclasses import replace
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import GOLDEN, circle, ellipse, smooth, straight
from sallet.drawing.flower.bracts import cup_ink
from sallet.drawing.flower.words import is_many
from sallet.drawing.ink import Copy, Curve, Line, Mark, Path, Place, put, turned

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.flower.form import FlowerForm
    from sallet.drawing.ink import Ink, Pen

DISC: Final[Mapping[str, float]] = {"daisy": 0.3, "tubes": 0.8, "straps": 0.0}
"""How far out the middle of tubes reaches, beside half the head."""
CROWD: Final = 21
"""How many straps stand in one ring where there are more than anyone counts."""
RINGS: Final = (1.0, 0.74, 0.5, 0.3)
"""How far out the rings of straps reach that fill a head to its middle."""
_DOTS: Final = 54


def head_ink(form: FlowerForm, size: float) -> Ink:
    """Return a head `size` units wide seen from above, its middle at the origin.

    Where its bracts are recorded it stands beside it once more, seen from the side.
    """
    face = _face(form, size / 2)
    if form.bracts is None:
        return face
    side = (*cup_ink(form.bracts.value, size * 0.6), *_florets_beside(_kind(form), size))
    return (*face, *put(side, Place(complex(size * 1.02, -size * 0.32))))


def thistle_ink(form: FlowerForm, size: float) -> Ink:
    """Return a thistle head `size` units wide seen from the side, its foot at the origin."""
    rim, top = size * 0.27, size * 0.56
    brush: list[Mark] = []
    count = 23
    for k in range(count):
        share = 2 * (k + 0.5) / count - 1
        begin = complex(share * rim * 0.86, top * 0.9)
        end = complex(share * size * 0.46, top + size * (0.46 - 0.2 * share * share))
        end -= (end - begin) * 0.13 * (k % 3)
        bow = Path(begin, (Curve(begin + 1j * size * 0.2, end - (end - begin) * 0.3, end),))
        brush.append(Mark(bow, "thin"))
        way = (end - begin) / abs(end - begin) * size * 0.04
        brush.append(Mark(straight(end + way * (1 + 0.5j), end, end + way * (1 - 0.5j)), "thin"))
    names = form.bracts.value if form.bracts else ()
    return (*brush, *cup_ink(names, size, swollen=True))


def _kind(form: FlowerForm) -> str:
    if form.shape:
        return form.shape.value
    return form.florets.value if form.florets else "daisy"


def _face(form: FlowerForm, radius: float) -> Ink:
    kind = _kind(form)
    disc = DISC[kind] * radius
    rays = form.rays.value if form.rays else 0
    known = form.florets is not None
    if kind == "straps":
        return _straps(form, radius, 0.06 if known else 0.16)
    if kind == "tubes":
        return (Mark(circle(0j, disc)), *_dots(disc, _DOTS * 4))
    if not rays:
        straps: Ink = (Mark(circle(0j, radius), "dotted"), *_hatch(disc, radius))
    elif is_many(form.rays):
        straps = (*_ring(17, radius, disc, 180 / 17), *_ring(17, radius * 0.96, disc, 0))
    else:
        straps = _ring(rays, radius, disc, 0)
    # A daisy has a round middle; that it is made of tubes is told by its florets.
    return (*straps, Mark(circle(0j, disc)), *(_dots(disc, _DOTS) if known else ()))


def _ring(count: int, radius: float, disc: float, turn: float) -> Ink:
    """Return straps in a ring; of more than fit side by side every other one stands behind."""
    length = radius - disc * 0.8
    half = min(math.tan(math.pi / max(count, 3)) * radius * 0.74, length * 0.15)
    piece = strap(disc * 0.8, length, half, 3)
    order = [*range(0, count, 2), *range(1, count, 2)]
    return tuple(Copy(piece, turned(turn + 360 * k / count), "ray") for k in order)


def _straps(form: FlowerForm, radius: float, middle: float) -> Ink:
    """Return a head of straps; `middle` is where they begin, beside its radius."""
    if form.rays is None:
        return (Mark(circle(0j, radius), "dotted"), *_hatch(radius * middle, radius))
    if is_many(form.rays):
        piece = strap(radius * 0.12, radius * 0.88, radius * 0.105, 5, shut=middle < BLANK)
        ring = tuple(Copy(piece, turned(360 * k / CROWD), "ray") for k in range(CROWD))
        rings = RINGS if middle < BLANK else RINGS[:-1]
        return tuple(Copy(ring, turned(GOLDEN * at, scale=share)) for at, share in enumerate(rings))
    count, ink = form.rays.value, []
    few = count <= ONE_RING
    inner, innermost = (0, 0) if few else (round(count * 0.33), round(count * 0.17))
    parts = ((count - inner - innermost, 1.0), (inner, 0.72), (innermost, 0.46))
    for number, share in parts:
        half = min(
            (0.17 if few else 0.12) * radius,
            radius * share * math.tan(math.pi / max(number, 3)) * 0.7,
        )
        piece = strap(radius * middle, radius * (share - middle), half, 5, shut=middle < BLANK)
        ink += [Copy(piece, turned(360 * k / number + 50 * share), "ray") for k in range(number)]
    return tuple(ink)


BLANK: Final = 0.1
"""From which size on the middle of a head is left blank, beside its radius."""
ONE_RING: Final = 20
"""Up to how many straps without a middle of tubes stand in one ring."""
FINEST: Final = 2.1
"""How wide a tooth must be to be seen, in units."""


def strap(begin: float, length: float, half: float, most: int, *, shut: bool = True) -> Ink:
    """Return a strap floret that stands up the page from `begin`, with teeth at its end.

    Its foot is `shut` or left open.
    """
    top, wide = begin + length, half * 0.9
    teeth = most if 2 * wide / most > FINEST else min(3, most)
    depth = min(half * 0.5, length * 0.06)
    step = 2 * wide / teeth
    edge: list[Line] = []
    for k in range(teeth):
        left = wide - k * step
        sink = depth * 2 * ((k - (teeth - 1) / 2) / teeth) ** 2
        edge += [Line(complex(left - step / 2, top - sink))]
        edge += [Line(complex(left - step, top - depth - sink))]
    side = Curve(
        complex(half * 0.9, begin + length * 0.25), complex(half * 1.06, top - length * 0.34),
        complex(wide, top - depth * 1.3),
    )  # fmt: skip
    back = Curve(
        complex(-half * 1.06, top - length * 0.34), complex(-half * 0.9, begin + length * 0.25),
        complex(-half * 0.5, begin),
    )  # fmt: skip
    path = Path(complex(half * 0.5, begin), (side, *edge, back), closed=True)
    pen: Pen = "line" if half > SLENDER else "thin"
    if shut:
        return (Mark(path, pen),)
    return (Mark(path, "paper"), Mark(replace(path, closed=False), pen))


SLENDER: Final = 7.0
"""Up to which half width a strap is drawn with the thin pen, in units."""


def _dots(radius: float, count: int) -> Ink:
    """Return the tubes of the middle: dots that follow one another by the golden angle."""
    marks = []
    for k in range(count):
        point = cmath.rect(radius * 0.93 * math.sqrt((k + 0.5) / count), math.radians(GOLDEN * k))
        marks.append(Mark(straight(point, point)))
    return tuple(marks)


def _hatch(inner: float, radius: float) -> Ink:
    # Straps of unknown number: fine strokes at the golden angle, not to be counted.
    marks = []
    for k in range(48):
        way = cmath.rect(1, math.radians(GOLDEN * k))
        low = inner + (radius - inner) * (0.1 + 0.5 * (k % 5) / 5)
        marks.append(Mark(straight(way * low, way * (low + (radius - inner) * 0.34)), "fine"))
    return tuple(marks)


def _florets_beside(kind: str, size: float) -> Ink:
    """Return what stands on the cup of bracts of a head seen from the side, plainly."""
    rim, top = size * 0.19, size * 0.336
    if kind == "daisy":
        middle = 1j * (top + size * 0.1)
        lines = (
            straight(
                middle + complex(0.17 * x, 0.05 * y) * size,
                middle + complex(0.46 * x, 0.085 * y) * size,
            )
            for x, y in (
                (math.cos(k * math.tau / 18), math.sin(k * math.tau / 18)) for k in range(18)
            )
        )
        dome = ellipse(middle + 0.02j * size, size * 0.16, size * 0.055)
        return (
            Mark(ellipse(middle, size * 0.48, size * 0.095), "thin"),
            *(Mark(line, "fine") for line in lines),
            Mark(dome, "thin"),
        )
    if kind == "tubes":
        dome = smooth(
            [
                complex(x * rim, top + y * size)
                for x, y in ((-1, 0), (-0.8, 0.1), (0, 0.16), (0.8, 0.1), (1, 0))
            ]
        )
        return (Mark(dome, "thin"),)
    brush: list[Path] = []
    for k in range(15):
        share = 2 * (k + 0.5) / 15 - 1
        begin = complex(share * rim, top)
        end = complex(share * size * 0.44, top + size * (0.36 - 0.24 * share * share))
        handle = end - (end - begin) * 0.3
        brush.append(Path(begin, (Curve(begin + 0.12j * size, handle, end),)))
    return tuple(Mark(line, "thin") for line in brush)
