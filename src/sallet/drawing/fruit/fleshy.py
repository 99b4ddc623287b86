"""Beaded fruits, seeds in a fleshy cup, berries on a spike."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from sallet.drawing.curves import circle, ellipse, smooth
from sallet.drawing.fruit.body import Body
from sallet.drawing.fruit.tip import Tip, remains
from sallet.drawing.fruit.whole import Drawn, bodies
from sallet.drawing.ink import Copy, Curve, Line, Mark, Path, Place, put

if TYPE_CHECKING:
    from sallet.drawing.fruit.form import FruitForm
    from sallet.drawing.ink import Ink


def aggregate(form: FruitForm, size: float) -> Drawn:
    """Return a fruit of beads, and beside it where its core stays when it is picked."""
    one = bodies(form, size)[0]
    tip = Tip(one.top, 0j, one.length, one.width, below=True)
    behind, before = remains(form.remains.value, tip) if form.remains else ((), ())
    heap = beads(one)
    picked: tuple[Ink, ...] = ()
    if form.core:
        picked = _picked(one, form.core.value)
    return Drawn((*behind, *heap, *before), one.length, one.width, None, picked)


def beads(one: Body) -> Ink:
    """Return a heap of beads in an outline, those that face the viewer before the others."""
    radius = _radius(one)
    bead = _bead(radius)
    rows = max(3, round(one.length / (1.28 * radius)))
    found = []
    for row in range(rows):
        share = (row + 0.5) / rows
        half = max(0.1 * radius, one.half(share) - 0.8 * radius)
        step = min(2.0, 1.62 * radius / half)
        for k in range(-8, 9):
            angle = (k + 0.5 * (row % 2)) * step
            if abs(angle) <= 0.5 * math.pi + 0.02:
                y = share * (one.length - 1.5 * radius) + 0.75 * radius
                found.append((abs(angle), one.at + complex(half * math.sin(angle), y)))
    found.sort(key=lambda f: (-round(f[0], 3), -f[1].imag))
    return tuple(Copy(bead, Place(p), "bead") for _, p in found)


def _radius(one: Body) -> float:
    return 0.122 * math.sqrt(one.length * one.width)


def _bead(radius: float) -> Ink:
    return (Mark(circle(0j, radius), "thin"),)


def _picked(one: Body, where: str) -> tuple[Ink, ...]:
    """Return the picked fruit cut along, and the core where it stays on the plant."""
    low = Place(-one.middle)
    core = Body(one.outline, 0.8 * one.length, 0.4 * one.width)
    lining = Body(one.outline, 0.84 * one.length, 0.5 * one.width)
    heap = _cut_beads(one)
    if where == "in the fruit":
        inner = Mark(core.path, "line", "core")
        return (put((*heap, inner), low),)
    hollow: Ink = (*heap, Mark(lining.path, "line", "hollow"))
    plug: Ink = (
        *_plug_stalk(core), Mark(core.path, "line", "core"),
        *(Mark(circle(p, 0.9), "solid") for p in core.scatter(12, 0.7)),
    )  # fmt: skip
    return (put(hollow, low), put(plug, Place(-core.middle)))


def _plug_stalk(core: Body) -> Ink:
    path = Path(-0.3j * core.length, (Line(0j),))
    return (Mark(path, "line", "stalk"),)


def _cut_beads(one: Body) -> Ink:
    radius = _radius(one)
    inner = Body(
        one.outline, one.length - 1.2 * radius, one.width - 1.9 * radius, at=0.35j * radius
    )
    around = 2 * sum(
        abs(p - q) for p, q in zip(inner.side.points(), inner.side.points()[1:], strict=False)
    )
    count = 2 * max(6, round(around / (1.72 * radius) / 2))
    bead = _bead(radius)
    places = [p for p, _ in inner.rim(count, 0.0, 1.0)]
    return (
        *(Copy(bead, Place(p), "bead") for p in places),
        Mark(inner.path, "paper"),
    )


def aril(form: FruitForm, size: float) -> Drawn:
    """Return a fleshy cup, open at the top, with the one seed in it."""
    ratio = form.ratio or 1.05
    length, width = (size, size / ratio) if ratio >= 1 else (size * ratio, size)

    def at(x: float, y: float) -> complex:
        return complex(x * width / 2, y * length)

    right = (
        Curve(at(0.6, 0), at(1, 0.16), at(1, 0.46)), Curve(at(1, 0.74), at(0.9, 0.84), at(0.74, 0.9)),
    )  # fmt: skip
    side = Path(0j, right)
    cup = side.then(Path(at(0.74, 0.9), (Curve(at(0.6, 0.74), at(-0.6, 0.74), at(-0.74, 0.9)),)))
    left = [(-0.9, 0.84), (-1, 0.74), (-1, 0.46), (-1, 0.16), (-0.6, 0), (0, 0)]
    a, b, c, d, e, f = (at(*p) for p in left)
    front = Path(0j, (*cup.pieces, Curve(a, b, c), Curve(d, e, f)), closed=True)
    mouth = ellipse(at(0, 0.9), 0.37 * width, 0.1 * length)
    seed = smooth(
        [at(0, 1.02), at(0.22, 0.98), at(0.38, 0.86), at(0.4, 0.66), at(-0.4, 0.66), at(-0.38, 0.86), at(-0.22, 0.98)],
        closed=True,
    )  # fmt: skip
    return Drawn(
        (Mark(mouth, "line", "mouth"), Mark(seed, "line", "seed"), Mark(front, "line", "cup")),
        length, width,
    )  # fmt: skip


def berry_spike(_: FruitForm, size: float) -> Drawn:
    """Return a spike of berries, crowded; neither their number nor their shape is recorded."""
    width = 0.4 * size
    radius = 0.25 * width
    low, high = 0.24 * size, size - 0.8 * radius
    rows = round((high - low) / (1.2 * radius))
    berry: Ink = (Mark(circle(0j, radius), "line"),)
    found: list[tuple[float, complex]] = []
    for row in range(rows + 1):
        share = row / rows
        half = (0.5 * width - radius) * (1 - 0.5 * share**2)
        step = 1.5 * radius / half
        for k in range(-3, 4):
            angle = (k + 0.5 * (row % 2)) * step
            if abs(angle) <= 0.5 * math.pi + 0.1:
                found.append(
                    (abs(angle), complex(half * math.sin(angle), low + (high - low) * share))
                )
    found.sort(key=lambda f: (-round(f[0], 3), -f[1].imag))
    axis = 0.022 * size
    stalk = tuple(
        Mark(Path(complex(x, 0), (Line(complex(x, 0.3 * size)),)), "line", "axis")
        for x in (-axis, axis)
    )
    return Drawn((*stalk, *(Copy(berry, Place(p), "berry") for _, p in found)), size, width)
