"""Nuts in a prickly cup, shut below or opened by flaps."""

from __future__ import annotations

import cmath
import math
from dataclasses import replace
from typing import TYPE_CHECKING, Final

from sallet.drawing.fruit.body import Body
from sallet.drawing.fruit.husk import SPINES, bare_nut, husked, spine, spined, spines
from sallet.drawing.fruit.whole import Drawn, bodies
from sallet.drawing.ink import Copy, Curve, Mark, Path, turned

if TYPE_CHECKING:
    from sallet.drawing.fruit.form import FruitForm
    from sallet.drawing.ink import Ink, Pen


def cupped(form: FruitForm, size: float) -> Drawn:
    """Return nuts in a prickly cup; how it opens, and its prickles, only where recorded."""
    number = min(form.nuts.value, 12) if form.nuts else 0
    words = form.husk.value if form.husk else ()
    if "scaly cup" in words:
        return husked(form, size)
    one = bodies(form, size * 0.62)[0]
    angular = bool(form.shape and form.shape.value.angles)
    wide = max(1.5, 0.62 * max(number, 1) + 0.6) * one.width * 0.82
    high = 0.66 * one.length
    cup = Body(_BOWL, high, wide)
    name = spined(words)
    nuts = []
    for n in range(max(number, 1)):
        x = (n - (max(number, 1) - 1) / 2) * 0.62 * one.width
        lean = turned(-14 * (n - (max(number, 1) - 1) / 2), complex(x, 0.3 * high))
        pen: Pen = one.pen if number else "dotted"
        own = replace(one, pen=pen)
        nuts.append(Copy(bare_nut(own, angular=angular), lean, "nut"))
    flaps = "four flaps" in words
    behind = (
        *(spines(cup, name) if name else ()),
        *(_flaps(cup, (-0.34, 0.34), back=True) if flaps else ()),
    )
    bowl = (
        *(_flaps(cup, (-1.0, 1.0), back=False) if flaps else ()),
        Mark(_bowl(cup), "line" if name or flaps else "dotted", "husk"),
        *_bowl_spines(cup, name),
    )
    return Drawn((*behind, *nuts, *bowl), one.length, one.width)


_BOWL: Final = Path(
    0j, (Curve(0.7 + 0j, 1 + 0.2j, 1 + 0.7j), Curve(1 + 0.82j, 1 + 0.9j, 0.96 + 1j))
)


def _bowl(cup: Body) -> Path:
    side = cup.side
    left = cup.scaled(cup.outline, -1.0).reversed()
    rim = Path(
        side.end,
        (
            Curve(
                side.end - complex(0.3 * cup.width, 0.16 * cup.length),
                left.start + complex(0.3 * cup.width, -0.16 * cup.length),
                left.start,
            ),
        ),
    )
    return side.then(rim).then(left).shut()


def _bowl_spines(cup: Body, name: str) -> Ink:
    if not name:
        return ()
    _, long, sort = SPINES[name]
    number = {"soft": 20, "needle": 34, "stout": 6}[sort]
    reach = long * cup.width * 0.5
    return tuple(
        Mark(
            spine(p, cmath.rect(reach, math.radians(90 - 80 * (p.real / (cup.width / 2)))), sort),
            "thin",
        )
        for p in cup.scatter(number, 0.84, 0.1, 0.72)
    )


def _flaps(cup: Body, places: tuple[float, ...], *, back: bool) -> Ink:
    """Return flaps of a cup: two behind the nuts, two spread to the sides."""
    marks = []
    for x in places:
        root = complex(x * 0.36 * cup.width, (0.86 if back else 0.62) * cup.length)
        reach = complex(
            (0.34 if back else 0.62) * x * cup.width, (1.15 if back else 0.7) * cup.length
        )
        half = 0.24 * cup.width
        side = half if back else complex(0.6 * half, -0.5 * half * x)
        tip = root + reach
        marks.append(
            Mark(
                Path(
                    root - side,
                    (Curve(root - side * 1.3 + reach * 0.5, tip - side * 0.5, tip),
                     Curve(tip + side * 0.5, root + side * 1.3 + reach * 0.5, root + side)),
                    closed=True,
                ),
                "line", "flap",
            )
        )  # fmt: skip
    return tuple(marks)
