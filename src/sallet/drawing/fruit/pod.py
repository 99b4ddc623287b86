"""Pods: of cresses, of peas, and those that split along one edge."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import ellipse, smooth
from sallet.drawing.fruit.body import Body, bowed, measures
from sallet.drawing.fruit.surface import clothed
from sallet.drawing.fruit.whole import Drawn, covering, whole
from sallet.drawing.ink import Copy, Curve, Mark, Path, put, turned
from sallet.drawing.told import MANY

if TYPE_CHECKING:
    from sallet.drawing.fruit.form import FruitForm
    from sallet.drawing.ink import Ink


def cress_pod(form: FruitForm, size: float) -> Drawn:
    """Return a pod of the cress kind, and beside it how its sides lift off from below."""
    drawn = whole(form, size)
    if form.opening is None or drawn.body is None:
        return drawn
    return replace(drawn, beside=(*drawn.beside, _lifting(drawn.body)))


def _lifting(one: Body) -> Ink:
    """Return the two sides lifting off the middle wall from the bottom."""
    wall = Body(one.outline, one.length, one.width * 0.72, one.pen)
    right = Path(
        one.at,
        (*one.side.pieces, Curve(one.at + 0.66j * one.length, one.at + 0.33j * one.length, one.at)),
        closed=True,
    )
    away = turned(min(16.0, 60 * one.width / one.length))
    hinge = one.top + 0.08 * one.width
    place = replace(away, at=hinge - away.put(one.top))
    valve: Ink = (Mark(right.placed(place), one.pen, "valve"),)
    return (
        Mark(wall.path, "thin", "wall"), *valve, *put(valve, turned(0, 2 * one.at.real + 0j, mirrored=True)),
    )  # fmt: skip


def pea_pod(form: FruitForm, size: float) -> Drawn:
    """Return a pod of one piece with a seam on both edges; seeds show as swellings."""
    return _legume(form, size, both=True)


def follicle(form: FruitForm, size: float) -> Drawn:
    """Return a fruit of one piece, split along its inner edge."""
    return _legume(form, size, both=False)


_POD_SIDE: Final = Path(
    0j,
    (
        Curve(0.4 + 0.01j, 1 + 0.08j, 1 + 0.22j), Curve(1 + 0.45j, 1 + 0.6j, 0.96 + 0.76j),
        Curve(0.9 + 0.9j, 0.16 + 0.9j, 1j),
    ),
)  # fmt: skip


_BAG_SIDE: Final = Path(
    0j, (Curve(0.6 + 0.03j, 1 + 0.14j, 1 + 0.36j), Curve(0.98 + 0.68j, 0.3 + 0.86j, 1j))
)


def _legume(form: FruitForm, size: float, *, both: bool) -> Drawn:
    length, width = measures(size, form.ratio or (4.6 if both else 2.8))
    surface, _ = covering(form)
    one = Body(_POD_SIDE if both else _BAG_SIDE, length, width)
    lines: list[Mark] = []
    if both:
        lines = [Mark(one.meridian(x, 0.03, 0.97), "fine", "seam") for x in (-0.82, 0.82)]
    else:
        edge = [one.on(s, x) for s, x in ((0.16, 0.92), (0.4, 0.74), (0.7, 0.7), (0.97, 0.6))]
        rim = [one.on(s, x) for s, x in ((0.97, 0.6), (0.7, 1.0), (0.4, 1.0), (0.16, 0.92))]
        lines = [Mark(smooth(edge).then(smooth(rim)).shut(), "solid", "slit")]
    seeds = _swellings(one, form.seeds.value) if form.seeds and both else ()
    bend = -0.14 if both else 0.2
    ink = tuple(_bent(m, length, bend) for m in (*clothed(one, surface), *lines, *seeds))
    return Drawn(ink, length, width, None)


def _swellings(one: Body, count: int) -> Ink:
    count = min(count, MANY)
    step = 0.74 * one.length / count
    across = min(0.3 * one.width, 0.44 * step) if count < MANY else 0.3 * one.width
    return tuple(
        Mark(
            ellipse(one.at + 1j * (0.15 * one.length + step * (n + 0.5)), 0.3 * one.width, across),
            "thin",
            "seed",
        )
        for n in range(count)
    )


def _bent(mark: Mark | Copy, length: float, bend: float) -> Mark | Copy:
    """Return a mark of an upright pod bowed sideways, the foot and its direction kept."""

    def off(height: float) -> float:
        return bend * length * (height / length) ** 2

    if isinstance(mark, Copy):
        at = mark.place.at
        return replace(mark, place=replace(mark.place, at=at + off(at.imag)))
    return replace(mark, path=bowed(mark.path, off))
