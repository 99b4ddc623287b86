"""Capsules, shut or open: by flaps, slits, holes or a lid."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import ellipse, smooth
from sallet.drawing.fruit.body import Body
from sallet.drawing.fruit.surface import RIB_LINES, cover, rib_bristles, ribbed
from sallet.drawing.fruit.tip import tip_of
from sallet.drawing.fruit.whole import Drawn, beside, bodies, covering, tip_remains, whole
from sallet.drawing.ink import Copy, Curve, Mark, Path, put, turned
from sallet.drawing.told import MANY

if TYPE_CHECKING:
    from sallet.drawing.fruit.body import Body
    from sallet.drawing.fruit.form import FruitForm
    from sallet.drawing.ink import Ink, Pen


_CUT: Final = 0.8
"""How high up its length a capsule opens."""


_WIDEST: Final = 0.8
"""Half the angle that one flap takes of the mouth at most."""


_THIN: Final = 0.13
"""Half the breadth of a flap that is seen from its side, in lengths."""
_TIP: Final = 0.27
"""How flat the mouth of an open capsule is drawn."""


def capsule(form: FruitForm, size: float) -> Drawn:
    """Return a capsule, shut or open as it is recorded."""
    way = form.opening.value if form.opening else "by flaps" if form.valves else ""
    if way in {"by flaps", "by a lid"}:
        return _opened(form, size, way)
    drawn = whole(form, size)
    if drawn.body is None or not way:
        return drawn
    more = _slits(drawn.body) if way == "by slits" else _holes(drawn.body)
    return replace(drawn, ink=(*drawn.ink, *more))


def _opened(form: FruitForm, size: float, way: str) -> Drawn:
    """Return a capsule whose top has come off or spread into flaps."""
    one = bodies(form, size)[0]
    surface, ribs = covering(form)
    under, over = cover(one, surface)
    high = _CUT if way == "by flaps" else 0.56
    rx = one.half(high)
    ry = _TIP * rx
    centre = one.at + 1j * high * one.length
    kept = tip_remains(form, tip_of(one), below=True)
    wall = _below(one, high, ry)
    mouth = Mark(ellipse(centre, rx, ry), one.pen, "mouth")
    low = tuple(m for m in under if _height(m) < centre.imag - 1)
    upon = tuple(m for m in over if _height(m) < centre.imag - ry - 1)
    lines = (*ribbed(one, ribs, RIB_LINES), *rib_bristles(one, RIB_LINES, ribs)) if ribs else ()
    shortened = tuple(
        Mark(_until(m.path, high - 0.12, one), m.pen, m.part)
        for m in lines
        if isinstance(m, Mark) and m.path.start.imag < one.at.imag + (high - 0.2) * one.length
    )
    if way == "by a lid":
        lid = _lid(one, high, ry)
        ink: Ink = (
            *kept[0],
            *low,
            mouth,
            Mark(wall, one.pen, "fruit"),
            *shortened,
            *upon,
            *lid,
            *kept[1],
        )
    else:
        back, front = _teeth(form.valves.value if form.valves else 0, centre, rx, ry, one)
        ink = (
            *kept[0],
            *low,
            *back,
            mouth,
            Mark(wall, one.pen, "fruit"),
            *shortened,
            *upon,
            *front,
            *kept[1],
        )
    more = beside(form, one.length, one.width, one)
    return Drawn(ink, one.length, one.width, one, more)


def _height(mark: Mark | Copy) -> float:
    return mark.path.end.imag if isinstance(mark, Mark) else mark.place.at.imag


def _until(path: Path, share: float, one: Body) -> Path:
    points = [p for p in path.points(4) if p.imag < one.at.imag + share * one.length]
    return smooth(points) if len(points) > 1 else path


def _below(one: Body, high: float, ry: float) -> Path:
    """Return the case below its mouth; the front edge of the mouth closes it."""
    shares = [high * (n / 8) ** 1.6 for n in range(9)]
    wall = smooth([one.on(s, -1) for s in reversed(shares)] + [one.on(s, 1) for s in shares[1:]])
    k = 4j / 3 * ry
    rim = Curve(wall.end - k, wall.start - k, wall.start)
    return Path(wall.start, (*wall.pieces, rim), closed=True)


def _teeth(count: int, centre: complex, rx: float, ry: float, one: Body) -> tuple[Ink, Ink]:
    """Return the flaps behind the mouth and those before it; without a number, a dotted edge."""
    long = min(0.3 * one.length, 1.5 * rx)
    pen: Pen = "line"
    if not count:
        count, pen = 7, "dotted"
    crowded = min(count, MANY)
    back: list[tuple[float, Mark]] = []
    front: list[tuple[float, Mark]] = []
    step = 2 * math.pi / crowded
    wide = min(step / 2, _WIDEST)
    for n in range(crowded):
        angle = math.pi / 2 + step * (n + 0.5)
        a = centre + complex(rx * math.cos(angle - wide), ry * math.sin(angle - wide))
        b = centre + complex(rx * math.cos(angle + wide), ry * math.sin(angle + wide))
        out = complex(math.cos(angle), _TIP * math.sin(angle))
        tip = centre + out * (rx + 0.62 * long) + 0.66j * long
        tooth = _flap(a, b, tip)
        part = "valve" if pen == "line" else "valves"
        (back if math.sin(angle) > 0 else front).append((math.sin(angle), Mark(tooth, pen, part)))
    back.sort(key=lambda t: -t[0])
    front.sort(key=lambda t: -t[0])
    return tuple(m for _, m in back), tuple(m for _, m in front)


def _flap(a: complex, b: complex, tip: complex) -> Path:
    """Return a pointed flap on the foot from `a` to `b`."""
    foot, side = (a + b) / 2, (a - b) / 2
    across = (tip - foot) / abs(tip - foot) * 1j
    seen = (side * across.conjugate()).real
    least = _THIN * abs(tip - foot)
    if abs(seen) < least:
        # Seen from its side a flap is a thin blade, not a line.
        side += across * (math.copysign(least, seen) - seen)
    low, high = foot + 0.36 * (tip - foot), foot + 0.76 * (tip - foot)
    return Path(
        a,
        (Curve(low + side, high + 0.36 * side, tip), Curve(high - 0.36 * side, low - side, b)),
        closed=True,
    )


def _lid(one: Body, high: float, ry: float) -> Ink:
    """Return the top come off like a cap, a little above and askew."""
    shares = [1 - (1 - high) * (n / 6) ** 1.6 for n in range(7)]
    top = smooth([one.on(s, 1) for s in reversed(shares)] + [one.on(s, -1) for s in shares[1:]])
    k = 4j / 3 * ry
    cap = Path(top.start, (*top.pieces, Curve(top.end - k, top.start - k, top.start)), closed=True)
    middle = one.at + 1j * high * one.length
    lift = turned(-16)
    place = replace(
        lift, at=middle + complex(0.12 * one.width, 0.26 * one.length) - lift.put(middle)
    )
    return put((Mark(cap, one.pen, "lid"),), place)


def _slits(one: Body) -> Ink:
    """Return long splits down the side, dark within."""
    found = []
    for across in (-0.5, 0.1):
        right = [
            one.on(s, across + w) for s, w in ((0.3, 0), (0.5, 0.08), (0.7, 0.09), (0.92, 0.0))
        ]
        left = [one.on(s, across - w) for s, w in ((0.7, 0.09), (0.5, 0.08))]
        found.append(Mark(smooth([*right, *left], closed=True), "solid", "slit"))
    return tuple(found)


def _holes(one: Body) -> Ink:
    """Return small holes below the top, in a ring seen from the side."""
    wide, high = 0.05 * one.width, 0.034 * one.length
    return tuple(
        Mark(ellipse(one.on(0.84 - 0.04 * (1 - x * x), x), wide * (1 - 0.6 * x * x), high), "solid", "hole")
        for x in (-0.86, -0.56, -0.2, 0.2, 0.56, 0.86)
    )  # fmt: skip


def lidded(form: FruitForm, size: float) -> Drawn:
    """Return a capsule with a lid: its seam, or the lid come off where that is recorded."""
    if form.opening:
        return _opened(form, size, "by a lid")
    drawn = whole(form, size)
    one = drawn.body
    if one is None:
        return drawn
    half, at = one.half(0.56), one.at + 0.56j * one.length
    k = 4 / 3 * _TIP * half
    seam = Path(at - half, (Curve(at - half - 1j * k, at + half - 1j * k, at + half),))
    return replace(drawn, ink=(*drawn.ink, Mark(seam, "line", "seam")))
