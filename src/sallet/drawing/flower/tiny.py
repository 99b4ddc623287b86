"""Flowers without petals to see: stamens or stigmas and little else, and those of catkins."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import circle, straight
from sallet.drawing.flower.middle import stamen, stamens_ink, style, styles_ink
from sallet.drawing.flower.petal import Blade, petal, petal_ink
from sallet.drawing.flower.words import is_many, number
from sallet.drawing.ink import Copy, Curve, Mark, Path, turned

if TYPE_CHECKING:
    from sallet.drawing.flower.form import FlowerForm
    from sallet.drawing.ink import Ink

_SEPAL: Final = Blade(1, 0.5, 0.6)
_SPREAD: Final = 130.0
"""Over how wide an angle the parts under a scale stand, in degrees."""


def speck_ink(form: FlowerForm, size: float) -> Ink:
    """Return a tiny flower drawn `size` units wide from above, its middle at the origin."""
    radius = size / 2
    sepals = form.sepals.value if form.sepals else 0
    ring: Ink = (Mark(circle(0j, radius * 0.5), "dotted"),)
    if sepals:
        half = min(math.tan(math.pi / max(sepals, 3)) * radius * 0.32, radius * 0.22)
        piece = petal_ink(petal(_SEPAL, "open", radius * 0.62, half), foot="shut", dotted=True)
        ring = tuple(Copy(piece, turned(360 * k / sepals), "sepal") for k in range(sepals))
    stamens, styles = number(form.stamens), number(form.styles)
    middle: Ink = ()
    if stamens:
        turn = 90 / max(1, sepals)
        crowd = is_many(form.stamens)
        middle = stamens_ink(stamens, radius * 0.92, radius * 0.1, crowd=crowd, turn=turn)
    if styles:
        stigma = form.stigma.value if form.stigma else ""
        middle += styles_ink(styles, radius * 0.4, stigma, crowd=is_many(form.styles))
    if not middle:
        lines = (_ray(radius, 360 * k / 7) for k in range(7))
        middle = tuple(Mark(line, "dotted") for line in lines)
    return (*ring, *middle)


def _ray(radius: float, degrees: float) -> Path:
    return straight(0.14j * radius, 0.86j * radius).placed(turned(degrees))


SCALE: Final = Path(
    -0.16 + 0j,
    (
        Curve(-0.5 + 0.02j, -0.62 + 0.3j, -0.44 + 0.52j),
        Curve(-0.3 + 0.7j, -0.1 + 0.76j, 0.9j),
        Curve(0.1 + 0.76j, 0.3 + 0.7j, 0.44 + 0.52j),
        Curve(0.62 + 0.3j, 0.5 + 0.02j, 0.16 + 0j),
    ),
    closed=True,
)
"""A scale of a catkin seen from its inner side, one unit wide."""


def catkin_ink(form: FlowerForm, size: float) -> Ink:
    """Return the scale of a catkin `size` units wide, its foot at the origin, and what it bears."""
    scale = SCALE.placed(turned(0, scale=size))
    stamens, styles = number(form.stamens), number(form.styles)
    ink: list[Mark | Copy] = [Mark(scale, part="scale")]
    length = size * 0.62
    for count, piece, part in (
        (stamens, stamen(size * 0.1, length), "stamen"),
        (styles, style(length * 1.1, form.stigma.value if form.stigma else ""), "style"),
    ):
        for k in range(count):
            share = (k + 0.5) / count - 0.5
            ink.append(
                Copy(
                    piece, turned(-_SPREAD * share, complex(share * size * 0.3, size * 0.08)), part
                )
            )
    if not stamens and not styles:
        lines = (straight(0.12j * size, 0.6j * size).placed(turned(a)) for a in (-34, 0, 34))
        ink += [Mark(line, "dotted") for line in lines]
    return tuple(ink)
