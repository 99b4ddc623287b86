"""Small dry fruits that fly under a tuft of hairs."""

from __future__ import annotations

import cmath
import math
from itertools import pairwise
from typing import TYPE_CHECKING

from sallet.drawing.curves import ellipse, straight
from sallet.drawing.fruit.surface import clothed
from sallet.drawing.fruit.whole import Drawn, beside, bodies, covering
from sallet.drawing.ink import Curve, Mark, Path

if TYPE_CHECKING:
    from sallet.drawing.fruit.form import FruitForm
    from sallet.drawing.ink import Ink


def parachute(form: FruitForm, size: float) -> Drawn:
    """Return an achene under its tuft of hairs."""
    words = form.parachute.value if form.parachute else ()
    surface, ribs = covering(form)
    stalked = "on a stalk" in words
    relative = form.styles.value / form.length.value if form.styles and form.length else None
    beak = relative if relative is not None else 1.7 if stalked else 0.0
    tuft = 1.5
    long = size / (1 + beak + tuft)
    one = bodies(form, max(long, 0.12 * size))[0]
    if form.styles and not form.length and form.width:
        beak = form.styles.value * one.width / form.width.value / one.length
    top = one.top
    seat = top + 1j * beak * one.length
    neck: Ink = ()
    if beak:
        neck = (Mark(straight(top, seat), "line", "beak"),)
    elif "sitting on the fruit" not in words:
        seat = top + 0.16j * one.length
        neck = (Mark(straight(top, seat), "dotted", "beak"),)
    collar = (
        (Mark(ellipse(seat, 0.022 * size, 0.009 * size), "solid", "collar"),) if stalked else ()
    )
    hairs = _tuft(seat, tuft * long, words)
    return Drawn(
        (*hairs, *neck, *collar, *clothed(one, surface, ribs)), one.length, one.width, one,
        beside(form, one.length, one.width, one),
    )  # fmt: skip


def _tuft(seat: complex, long: float, words: tuple[str, ...]) -> Ink:
    """Return the hairs or scales of a parachute; of hairs not further described, dotted."""
    if "scales" in words:
        return tuple(
            Mark(
                _scale(seat, cmath.rect(0.34 * long, math.radians(90 + a)), 0.07 * long),
                "thin",
                "scale",
            )
            for a in (-46, 46, -24, 24, 0)
        )
    feathery, plain = "feathery hairs" in words, "plain hairs" in words
    count = 15 if feathery else 27 if plain else 13
    found = []
    for n in range(count):
        angle = math.radians(90 + 62 * (2 * n / (count - 1) - 1))
        reach = long * (1 - 0.05 * (n % 2))
        end = seat + cmath.rect(reach, angle)
        bend = cmath.rect(0.55 * reach, math.pi / 2 + (angle - math.pi / 2) * 0.72)
        hair = Path(seat, (Curve(seat + bend * 0.5, seat + bend, end),))
        found.append(Mark(hair, "fine" if feathery or plain else "dotted"))
        if feathery:
            found += _barbs(hair, 0.07 * long)
    return tuple(found)


def _barbs(hair: Path, long: float) -> list[Mark]:
    points = hair.points(7)
    sides = (cmath.exp(0.8j), cmath.exp(-0.8j))
    return [
        Mark(straight(a, a + (b - a) / abs(b - a) * side * long), "fine")
        for a, b in pairwise(points[1:])
        for side in sides
    ]


def _scale(root: complex, way: complex, half: float) -> Path:
    side = way / abs(way) * 1j * half
    tip = root + way
    return Path(
        root,
        (Curve(root - side * 1.2 + way * 0.3, tip - side - way * 0.2, tip),
         Curve(tip + side - way * 0.2, root + side * 1.2 + way * 0.3, root)),
        closed=True,
    )  # fmt: skip
