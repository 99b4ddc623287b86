"""Capsules of two or three rounded parts."""

from __future__ import annotations

from typing import TYPE_CHECKING

from sallet.drawing.curves import circle, smooth
from sallet.drawing.fruit.body import lobed, measures
from sallet.drawing.fruit.surface import clothed
from sallet.drawing.fruit.whole import Drawn, covering
from sallet.drawing.ink import Copy, Mark, turned

if TYPE_CHECKING:
    from sallet.drawing.fruit.form import FruitForm
    from sallet.drawing.ink import Ink


def three_lobed(form: FruitForm, size: float) -> Drawn:
    """Return a capsule of three rounded parts, and the same cut across."""
    parts = lobed(3, size, form.ratio or 1.1)
    surface, _ = covering(form)
    ink: Ink = ()
    for one in parts:
        ink += clothed(one, surface)
    length, width = measures(size, form.ratio or 1.1)
    if form.opening:
        front = parts[-1]
        ink += (
            Mark(
                smooth(
                    [
                        front.on(0.3, 0),
                        front.on(0.6, 0.13),
                        front.on(0.96, 0),
                        front.on(0.6, -0.13),
                    ],
                    closed=True,
                ),
                "solid",
                "slit",
            ),
        )
    radius = 0.5 * width
    cells: Ink = tuple(
        Copy(
            (
                Mark(circle(0.46j * radius, 0.5 * radius), "line"),
                Mark(circle(0.46j * radius, 0.36 * radius), "fine"),
            ),
            turned(120 * n),
            "cell",
        )
        for n in range(3)
    )
    middle = Mark(circle(0j, 0.16 * radius), "paper")
    return Drawn(ink, length, width, None, ((*cells, middle),))


def hairy_pair(form: FruitForm, size: float) -> Drawn:
    """Return two rounded halves side by side, hairy as their name says."""
    parts = lobed(2, size, form.ratio)
    surface, _ = covering(form)
    ink: Ink = ()
    for one in parts:
        ink += clothed(one, tuple(dict.fromkeys(("hairy", *surface))))
    length, width = measures(size, form.ratio or 0.68)
    return Drawn(ink, length, width)
