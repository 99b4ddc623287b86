"""Roots without a store: a tuft, roots of wood, roots in the water, roots with lumps."""

from __future__ import annotations

import cmath
import math
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import circle, smooth, straight
from sallet.drawing.ink import Copy, Curve, Mark, Path, Place
from sallet.drawing.stem.growth_lines import soil, water
from sallet.drawing.underground.skin import rootlet, stalk_remains

if TYPE_CHECKING:
    from sallet.drawing.ink import Ink
    from sallet.drawing.underground.form import UndergroundForm

_TUFT: Final = 19
_HANGING: Final = 8


def _thread(lean: float, long: float, number: int) -> Path:
    """Return a thin root that leaves the foot of the stem at some angle and then goes down."""
    way = cmath.rect(long, math.radians(-90 + lean))
    out = complex(way.real, way.imag * 0.5)
    wave = 0.04 * long * (1 if number % 2 else -1)
    foot = complex(0.045 * long * math.sin(math.radians(lean)), 0)
    return Path(foot, (Curve(foot + out * 0.45, foot + way * 0.7 + wave, foot + way),))


def _tuft(size: float, wide: float, count: int = _TUFT) -> list[Path]:
    paths = []
    for number in range(count):
        lean = wide * (2 * (number + 0.5) / count - 1) + 3 * math.sin(number * 2.4)
        long = size * (0.86 + 0.14 * math.sin(number * 2.4)) * (1 - 0.22 * abs(lean) / 90)
        paths.append(_thread(lean, long, number))
    return paths


def _shoot(half: float, high: float) -> Ink:
    return tuple(Mark(straight(complex(x, 0), complex(x, high)), "dotted") for x in (-half, half))


def fibrous(form: UndergroundForm, size: float) -> tuple[Ink, float | None]:
    """Return a tuft of thin roots, the longest `size` units long, and its scale."""
    ink: list[Mark | Copy] = []
    for number, path in enumerate(_tuft(size, 58)):
        ink.append(Mark(path, "thin", "root"))
        points = path.points(10)
        for share, side in ((4, 1), (6, -1), (8, 1)):
            at = points[share]
            way = (points[share] - points[share - 1]) * cmath.rect(1.0, side * 0.75)
            way = way / abs(way) * size * 0.075
            if (number + share) % 3:
                ink.append(Mark(straight(at, at + way), "fine"))
    ink.sort(key=lambda one: isinstance(one, Mark) and one.pen == "fine")
    ink += soil(-0.62 * size, 0.62 * size, size)
    if form.scales:
        ink += stalk_remains(0.06 * size, 0.16 * size)
    return (*ink, *_shoot(0.05 * size, 0.13 * size)), _scale(form, size)


def nodules(form: UndergroundForm, size: float) -> tuple[Ink, float | None]:
    """Return thin roots with small round lumps, and their scale."""
    ink: list[Mark | Copy] = []
    lumps: list[Copy] = []
    piece = (Mark(circle(0j, 0.021 * size)),)
    for number, path in enumerate(_tuft(size, 52, 9)):
        ink.append(Mark(path, "thin", "root"))
        points = path.points(12)
        for step in range(3):
            share = 3 + 3 * step + number % 2
            way = points[share] - points[share - 1]
            side = 1 if (number + step) % 2 else -1
            out = way / abs(way) * 1j * side * 0.024 * size
            lumps.append(Copy(piece, Place(points[share] + out), "nodule"))
    ground = soil(-0.62 * size, 0.62 * size, size)
    return (*ink, *lumps, *ground, *_shoot(0.045 * size, 0.13 * size)), _scale(form, size)


def water_roots(form: UndergroundForm, size: float) -> tuple[Ink, float | None]:
    """Return roots that hang in the water, and their scale."""
    ink: list[Mark | Copy] = []
    for number in range(_HANGING):
        x = 0.06 * size * (number - (_HANGING - 1) / 2)
        long = size * (0.82 + 0.18 * math.sin(number * 2.4))
        points = [
            complex(x * (1 + 0.5 * t) + 0.014 * size * math.sin(7 * t + number), -long * t)
            for t in (0.0, 0.25, 0.5, 0.75, 1.0)
        ]
        ink.append(Mark(smooth(points), "thin", "root"))
        hairs = [
            Mark(straight(p, p + complex(side * 0.035, -0.025) * size), "fine")
            for p in smooth(points).points(3)[2:-1]
            for side in (-1, 1)
        ]
        ink += hairs
    ink.sort(key=lambda one: isinstance(one, Mark) and one.pen == "fine")
    surface = water(-0.62 * size, 0.62 * size, size)
    return (*ink, *surface, *_shoot(0.05 * size, 0.13 * size)), _scale(form, size)


def _scale(form: UndergroundForm, size: float) -> float | None:
    return size / form.length.value if form.length else None


def _limb(points: list[complex], thick: float) -> Path:
    """Return a root that tapers along some points."""
    count = len(points) - 1
    left, right = [], []
    for number, p in enumerate(points):
        way = points[min(number + 1, count)] - points[max(number - 1, 0)]
        side = way / abs(way) * 1j * thick * (1 - number / count) ** 0.8
        left.append(p + side)
        right.append(p - side)
    return smooth(left).then(smooth(right[::-1])).shut()


_LIMBS: Final = (
    ((-0.09, 0.0), (-0.26, -0.1), (-0.55, -0.17), (-0.86, -0.3), (-1.1, -0.36)),
    ((0.09, 0.0), (0.28, -0.09), (0.58, -0.19), (0.84, -0.26), (1.12, -0.4)),
    ((-0.06, 0.0), (-0.16, -0.26), (-0.36, -0.5), (-0.5, -0.74), (-0.7, -0.92)),
    ((0.06, 0.0), (0.15, -0.28), (0.3, -0.5), (0.5, -0.7), (0.58, -0.96)),
    ((0.0, 0.0), (-0.02, -0.3), (0.04, -0.6), (0.0, -0.98)),
)


def woody_roots(size: float) -> tuple[Ink, float | None]:
    """Return the roots of a tree or shrub: they divide, taper and carry fine lines of wood."""
    ink: list[Mark | Copy] = []
    for number, limb in enumerate(_LIMBS):
        points = [complex(*p) * size for p in limb]
        for at, side in ((1, 1), (2, -1), (3, 1)):
            if at >= len(points) - 1:
                continue
            way = (points[at + 1] - points[at]) * cmath.rect(0.85, side * 0.62)
            mid = points[at] + way * 0.5 + way * 0.08j * side
            tip = points[at] + way
            ink.append(Mark(_limb([points[at], mid, tip], 0.022 * size), "thin", "branch"))
        ink.append(Mark(_limb(points, (0.075 if number < 4 else 0.07) * size), "line", "root"))  # noqa: PLR2004
    grain = [Mark(smooth([complex(*p) * size * 0.92 for p in limb[:3]]), "fine") for limb in _LIMBS]
    half = 0.15 * size
    trunk = Path(
        complex(-half * 0.75, 0.16 * size),
        (
            Curve(complex(-half * 0.78, 0.05 * size), complex(-half, 0), complex(-half * 1.3, -0.05 * size)),
            Curve(complex(-half * 0.4, -0.16 * size), complex(half * 0.4, -0.16 * size), complex(half * 1.3, -0.05 * size)),
            Curve(complex(half, 0), complex(half * 0.78, 0.05 * size), complex(half * 0.75, 0.16 * size)),
        ),
    )  # fmt: skip
    sides = [
        Mark(Path(trunk.start, trunk.pieces[:1]), "dotted"),
        Mark(Path(trunk.pieces[1].end, trunk.pieces[2:]), "dotted"),
    ]
    ground = soil(-1.15 * size, 1.15 * size, size)
    return (*ink, Mark(trunk.shut(), "paper"), *grain, *ground, *sides), None


def woody_stock(form: UndergroundForm, size: float) -> tuple[Ink, float | None]:
    """Return a hard foot with many heads."""
    heads = (-0.34, -0.19, -0.05, 0.1, 0.23, 0.36)
    top: list[complex] = []
    for number, x in enumerate(heads):
        high = (0.03 + 0.03 * (number % 2)) * size
        middle = complex(x * size, 0)
        half = 0.058 * size
        top += [
            middle - half - 0.04j * size,
            middle - half * 0.7 + 1j * high,
            middle + half * 0.7 + 1j * high,
        ]
    top.append(complex(0.42 * size, -0.05 * size))
    body = [
        complex(0.36 * size, -0.22 * size), complex(0.2 * size, -0.4 * size),
        complex(0.11 * size, -0.62 * size), complex(0.02 * size, -1.0 * size),
        complex(-0.09 * size, -0.62 * size), complex(-0.22 * size, -0.42 * size),
        complex(-0.38 * size, -0.22 * size),
    ]  # fmt: skip
    edge = smooth([*top, *body], closed=True)
    grain = []
    for number, x in enumerate(heads):
        a = complex(x * size, -0.02 * size)
        b = complex(x * size * 0.5, -0.3 * size)
        c = complex(x * size * 0.22, (-0.52 - 0.04 * (number % 3)) * size)
        grain += [
            Mark(smooth([a + d, b + d * 0.6, c]), "fine") for d in (-0.02 * size, 0.018 * size)
        ]
    roots = [
        rootlet(complex(x * size, y * size), cmath.rect(0.34 * size, math.radians(-90 + lean)))
        for x, y, lean in (
            (-0.25, -0.36, -44),
            (0.24, -0.34, 46),
            (-0.12, -0.55, -24),
            (0.13, -0.55, 26),
        )
    ]
    shoots = [
        Mark(
            straight(complex(x * size + d, 0.05 * size), complex(x * size + d, 0.17 * size)),
            "dotted",
        )
        for x in heads
        for d in (-0.018 * size, 0.018 * size)
    ]
    ground = soil(-0.66 * size, 0.66 * size, size)
    remains = stalk_remains(0.3 * size, 0.16 * size) if form.scales else ()
    return (*roots, *ground, *shoots, Mark(edge, "line", "stock"), *grain, *remains), None
