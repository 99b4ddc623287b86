"""A fruit of one body: its outline by shape, ribs, surface, and what the flower left on it."""

from __future__ import annotations

import cmath
import math
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import ellipse
from sallet.drawing.fruit.body import Body, body, lobed
from sallet.drawing.fruit.surface import clothed
from sallet.drawing.fruit.tip import Tip, remains, tip_of
from sallet.drawing.fruit.umbel import pair
from sallet.drawing.ink import Curve, Mark, Path, Place, box, put, turned

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.fruit.form import FruitForm
    from sallet.drawing.ink import Ink, Pen

USUAL: Final[Mapping[str, str]] = {
    "": "egg-shaped", "berry": "round", "drupe": "round", "aggregate": "disc", "hip": "urn",
    "haw": "apple", "pome": "apple", "nut": "nut", "nut in a husk": "nut",
    "nuts in a prickly cup": "nut", "achene": "egg-shaped", "achene with parachute": "achene",
    "three-angled nut": "egg-shaped", "capsule": "egg-shaped", "capsule with a lid": "round",
    "long pod": "long and narrow", "short pod": "disc", "schizocarp": "egg-shaped",
    "cone": "nut", "grain": "grain", "bur": "round",
}  # fmt: skip
"""The outline that is drawn, dotted, where no shape is recorded."""
OWN: Final = frozenset({"long pod", "short pod", "grain"})
"""Kinds whose name says their outline: it is not dotted."""
_SHORT: Final[Mapping[tuple[str, str], float]] = {
    ("schizocarp", "long and narrow"): 6.0,
    ("capsule", "long and narrow"): 7.0,
    ("achene", "long and narrow"): 8.0,
    ("achene with parachute", "long and narrow"): 7.0,
}
"""Length by width where the word alone is told and the fruit is never like a thread."""
_SEAMED: Final = 9.0
"""A pod narrower than so many units has no room for the lines of its middle wall."""
_EDGE: Final[Mapping[int, float]] = {3: 0.16, 4: 0.3}
"""Where the edge that faces the viewer runs."""
_DIMPLED: Final = frozenset({"haw", "pome"})
_EPIGYNOUS: Final = frozenset({"hip", "haw", "pome"})
"""Fruits that carry the sepals at the tip."""


@dataclass(frozen=True)
class Drawn:
    """A fruit upright with its foot at 0, and how long and wide it is in units."""

    ink: Ink
    length: float
    width: float
    body: Body | None = None
    """Its one body, if it has one."""
    beside: tuple[Ink, ...] = ()
    """What stands beside it: cut faces, an edge, the parts it falls into; each round its middle."""


def bodies(form: FruitForm, size: float) -> tuple[Body, ...]:
    """Return the bodies that a fruit's outline is made of."""
    kind = form.kind.value if form.kind else ""
    shape = form.shape.value if form.shape else None
    if shape and shape.lobes:
        return lobed(shape.lobes, size, form.ratio)
    name = shape.outline if shape and shape.outline else USUAL[kind]
    known = bool(shape and shape.outline) or kind in OWN
    pen: Pen = "line" if known else "dotted"
    return (body(name, size, form.ratio or _SHORT.get((kind, name)), pen),)


def whole(form: FruitForm, size: float) -> Drawn:
    """Return a fruit of one body, or of two or three lobes."""
    kind = form.kind.value if form.kind else ""
    parts = bodies(form, size)
    surface, ribs = covering(form)
    cover: Ink = ()
    if kind == "schizocarp" and len(parts) == 1:
        cover = pair(parts[0], surface, ribs)
    else:
        for one in parts:
            cover += clothed(one, surface, ribs)
    tip = group_tip(parts)
    kept = tip_remains(form, tip, below=kind not in _EPIGYNOUS)
    more = _lines(form, parts[0]) if len(parts) == 1 else ()
    only = parts[0] if len(parts) == 1 else None
    return Drawn(
        (*kept[0], *cover, *more, *kept[1]), tip.length, tip.width, only,
        beside(form, tip.length, tip.width, only),
    )  # fmt: skip


def covering(form: FruitForm) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Return the words for the surface and for the ribs."""
    return (form.surface.value if form.surface else (), form.ribs.value if form.ribs else ())


def group_tip(parts: tuple[Body, ...]) -> Tip:
    """Return the tip of a fruit of one or more bodies."""
    if len(parts) == 1:
        return tip_of(parts[0])
    right = max(one.at.real + one.width / 2 for one in parts)
    top = max(one.top.imag for one in parts)
    return Tip(1j * top * 0.9, 0j, top, 2 * right)


def scale_of(form: FruitForm, length: float, width: float) -> float | None:
    """Return units to a millimetre, by the length if it is recorded, or else by the width."""
    if form.length:
        return length / form.length.value
    return width / form.width.value if form.width else None


def tip_remains(form: FruitForm, tip: Tip, *, below: bool) -> tuple[Ink, Ink]:
    """Return what the flower left, behind and before the fruit; a beaked one has its beak."""
    scale = scale_of(form, tip.length, tip.width)
    styles = form.styles.value * scale if form.styles and scale else None
    at = Tip(tip.top, tip.foot, tip.length, tip.width, styles, below)
    behind: Ink = ()
    before: Ink = ()
    if form.shape and form.shape.value.beaked:
        behind, before = remains("a beak", at)
    if form.remains:
        one, two = remains(form.remains.value, at)
        behind, before = (*behind, *one), (*before, *two)
    return behind, before


def _lines(form: FruitForm, one: Body) -> Ink:
    """Return the lines that a kind or an edge draws upon the body."""
    kind = form.kind.value if form.kind else ""
    angles = form.shape.value.angles if form.shape else 0
    lines: list[Mark] = []
    if angles:
        at = one.meridian(_EDGE[angles], 0.02, 0.98, 12)
        lines.append(Mark(at, "line" if one.width > 2 * _SEAMED else "fine", "edge"))
    if kind in _DIMPLED:
        centre = one.top - 0.045j * one.length
        lines.append(Mark(ellipse(centre, 0.16 * one.width, 0.05 * one.length), "thin", "hollow"))
    if kind in {"long pod", "short pod"} and one.width > _SEAMED:
        lines.extend(Mark(one.meridian(x, 0.02, 0.98), "fine", "seam") for x in (-0.12, 0.12))
    if kind == "grain":
        lines.append(Mark(one.meridian(0.06, 0.24, 0.96), "thin", "furrow"))
        germ = one.at + 0.13j * one.length
        lines.append(Mark(ellipse(germ, 0.2 * one.width, 0.09 * one.length), "thin", "germ"))
    return tuple(lines)


def beside(form: FruitForm, length: float, width: float, one: Body | None) -> tuple[Ink, ...]:
    """Return what is drawn beside a fruit for its edges or for being flat."""
    shape = form.shape.value if form.shape else None
    if shape is None:
        return ()
    pen: Pen = one.pen if one else "line"
    found: list[Ink] = []
    if shape.angles:
        found.append((Mark(polygon(shape.angles, width / 2), pen, "section"),))
    if shape.flat:
        thin = body("ellipsoid", length, 1.0)
        edge = Body(thin.outline, length, max(3.0, 0.17 * width), pen)
        found.append(put(edge.ink("edge-view"), turned(0, -0.5j * length)))
    return tuple(found)


def polygon(angles: int, radius: float) -> Path:
    """Return a fruit with edges cut across: three or four corners, sides a little bowed."""
    turn = math.pi / 2 if angles % 2 else math.pi / 4
    corners = [cmath.rect(radius, turn + 2 * math.pi * n / angles) for n in range(angles)]
    pieces = []
    for n, corner in enumerate(corners):
        after = corners[(n + 1) % angles]
        out = (corner + after) / 2 * 0.16
        pieces.append(
            Curve(corner + (after - corner) / 3 + out, after - (after - corner) / 3 + out, after)
        )
    return Path(corners[0], tuple(pieces), closed=True)


def set_out(first: Ink, others: tuple[Ink, ...], gap: float) -> Ink:
    """Return drawings side by side, the others level with the middle of the first."""
    ink = first
    room = box(first)
    right, level = room.right, (room.top + room.bottom) / 2
    for other in others:
        if other:
            own = box(other)
            at = complex(right + gap - own.left, level - (own.top + own.bottom) / 2)
            ink = (*ink, *put(other, Place(at)))
            right += gap + own.width
    return ink
