"""Small dry fruits of one seed: nuts, achenes, nutlets."""

from __future__ import annotations

import cmath
import math
from dataclasses import replace
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import circle
from sallet.drawing.fruit.body import Body
from sallet.drawing.fruit.surface import clothed
from sallet.drawing.fruit.whole import Drawn, bodies, covering, polygon
from sallet.drawing.ink import Copy, Curve, Mark, Path, turned

if TYPE_CHECKING:
    from sallet.drawing.fruit.form import FruitForm
    from sallet.drawing.ink import Ink, Pen


def three_angled(form: FruitForm, size: float) -> Drawn:
    """Return a small nut with three edges, and its cut face."""
    one = bodies(form, size)[0]
    surface, _ = covering(form)
    edge = Mark(one.meridian(0.14, 0.0, 1.0), "line", "edge")
    face: Ink = (Mark(polygon(3, one.width / 2), "line", "section"),)
    return Drawn((*clothed(one, surface), edge), one.length, one.width, one, (face,))


def shelled(form: FruitForm, drawn: Drawn) -> Drawn:
    """Return a nut or an achene with its cut face: one seed in a thick or a thin shell."""
    kind = form.kind.value if form.kind else ""
    thick = 0.74 if kind == "nut" else 0.92
    one = drawn.body
    radius = 0.5 * drawn.width
    pen: Pen = one.pen if one else "line"
    wall: Ink = (
        (Mark(circle(0j, radius * thick), "thin" if kind == "nut" else "fine"),)
        if kind == "nut"
        else ()
    )
    face = (
        Mark(circle(0j, radius), pen, "section"),
        *wall,
        Mark(circle(0j, radius * (thick - 0.1)), "thin", "seed"),
    )
    return replace(drawn, beside=(*drawn.beside, face))


def nutlets(form: FruitForm, size: float) -> Drawn:
    """Return four nutlets seen from above in a calyx whose shape is not recorded."""
    ratio = form.ratio or 1.15
    length = 0.36 * size
    width = length / ratio
    surface, _ = covering(form)
    one = Body(_NUTLET, length, width)
    piece = clothed(one, surface)
    middle = 0.5j * size
    copies = tuple(
        Copy(
            piece,
            turned(45 + 90 * n, middle + cmath.rect(0.05 * size, math.radians(135 + 90 * n))),
            "nutlet",
        )
        for n in range(4)
    )
    cup = Mark(circle(middle, 0.5 * size), "dotted", "calyx")
    return Drawn((cup, *copies), length, width)


_NUTLET: Final = Path(0j, (Curve(0.5 + 0.06j, 1 + 0.3j, 1 + 0.64j), Curve(1 + 0.9j, 0.56 + 1j, 1j)))
