"""Taproots, bulbs, corms, tubers: one body under the soil, and beside it what a cut shows."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import smooth, straight
from sallet.drawing.ink import Copy, Curve, Line, Mark, Path, Place, put, turned
from sallet.drawing.stem.growth_lines import soil
from sallet.drawing.underground.coat import coat
from sallet.drawing.underground.cut import NECK, bulb_cut, corm_cut, cut_ink
from sallet.drawing.underground.shape import SHAPES, Body, Shape, bent
from sallet.drawing.underground.skin import (
    across,
    rootlets_all_over,
    rootlets_from_base,
    skin,
    stalk_remains,
)  # fmt: skip

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.ink import Ink, Pen
    from sallet.drawing.underground.form import UndergroundForm

RATIOS: Final[Mapping[str, float]] = {
    "taproot": 0.17, "slender taproot": 0.075, "stout taproot": 0.36,
}  # fmt: skip
"""Breadth of a taproot in shares of its length, where its breadth is not recorded."""
_PLAIN: Final[Mapping[str, str]] = {"bulb": "egg", "corm": "round", "tuber": "egg"}
"""Shapes that are dotted, as they are not recorded."""
_NECK: Final = 0.2
"""How deep a store lies where its depth is not recorded, in shares of the drawing's height."""
_ROUND: Final = frozenset({"round", "egg", "flat", "lumps"})
_WAVE: Final = 0.1


def shape_of(form: UndergroundForm, plain: str) -> tuple[Shape, float]:
    """Return the shape of a body, and its breadth in shares of its length."""
    name = form.shape.value if form.shape and form.shape.value != "forked" else plain
    shape = SHAPES[name]
    ratio = form.ratio
    if ratio is None:
        own = RATIOS.get(form.kind.value)
        ratio = own if own and name not in _ROUND else shape.ratio
    return shape, ratio


def taproot(form: UndergroundForm, size: float) -> tuple[Ink, float | None]:
    """Return one main root from the soil down, `size` units long, and its scale."""
    shape, ratio = shape_of(form, "cone")
    share = 0.72 if shape.blunt else 1.0
    if ratio > 1:
        share = 0.72 / ratio
    body = Body(shape, size * share, size * share * ratio / 2)
    forks = form.shape is not None and form.shape.value == "forked"
    ink: list[Mark | Copy] = []
    if form.rootlets:
        ink += rootlets_all_over(body, 3 if form.rootlets.value == "few" else 13)
    ink += _forked(body) if forks else _root_edge(body, size)
    if form.surface:
        ink += skin(body, form.surface.value)
    lean = form.course.value if form.course else 0.0
    # A root that leans keeps its upper edge below the soil.
    turn = turned(lean, complex(0, -1.3 * body.half * math.sin(math.radians(lean))))
    ink = [*put(tuple(ink), turn)]
    wide = max(body.half, 0.03 * size)
    ink += soil(-wide - 0.28 * size, wide + 0.32 * size, size)
    ink += shoot(wide * 0.5, 0.13 * size)
    if form.scales:
        ink += stalk_remains(body.half, 0.14 * size)
    ink += _beside(form, body, size, "line")
    return tuple(ink), scale_of(form, body)


def _root_edge(body: Body, size: float) -> Ink:
    edge = body.edge()
    tail: list[Mark] = []
    if body.shape.blunt:
        low = -0.99j * body.long
        path = smooth([low, low - 0.5j * (size - body.long), -1j * size])
        tail.append(Mark(path, "line", "tail"))
        return (*tail, Mark(edge, "line", "root"))
    return (Mark(bent(edge, by=_WAVE * body.half, over=body.long), "line", "root"),)


_FORKS: Final = ((-0.3, 0.93), (0.04, 1.0), (0.33, 0.86))
"""Where the tips of a root that divides lie: aside and down, in shares of its length."""


def _forked(body: Body) -> Ink:
    """Return a root that divides into several below its neck, in one line."""
    half, long = body.half, body.long
    crown = [body.at(t) for t in (0.0, 0.03, 0.08, 0.2, 0.32)]
    left = [complex(-p.real, p.imag) for p in crown]
    tips = [complex(x * long * 0.55, -y * long) for x, y in _FORKS]
    crotches = [complex(-0.2 * half, -0.45 * long), complex(0.32 * half, -0.4 * long)]
    tops = [left[-1], *crotches, crown[-1]]
    path = smooth(left)
    for number, tip in enumerate(tips):
        a, b = tops[number], tops[number + 1]
        down = (tip - a) * 0.45
        back = (tip - b) * 0.4
        pieces = (
            Curve(a - 0.16j * long, a + down - 0.1j * long, tip),
            Curve(b + back - 0.06j * long, b - 0.1j * long, b),
        )
        path = path.then(Path(a, pieces))
    return (Mark(path.then(smooth(crown[::-1])).shut(), "line", "root"),)


def store(form: UndergroundForm, size: float) -> tuple[Ink, float | None]:
    """Return a bulb, corm or tuber under the soil, all `size` units high, and its scale."""
    kind = form.kind.value
    shape, ratio = shape_of(form, _PLAIN[kind])
    share = 1 - _NECK
    if form.depth and form.length:
        share = form.length.value / (form.length.value + form.depth.value)
    long = size * min(share, share if form.depth else (0.85 / ratio if ratio > 0.85 else share))  # noqa: PLR2004
    body = Body(shape, long, long * ratio / 2, guessed=form.shape is None)
    pen: Pen = "line" if form.shape else "dotted"
    down = (1 - share) * size if form.depth else max(_NECK * size, 0.1 * size)
    whole = _store_ink(form, body, pen)
    ink: list[Mark | Copy] = [*put(whole, Place(-1j * down))]
    left, right = -body.half - 0.2 * size, body.half + 0.2 * size
    if form.depth:
        ink += soil(left, right, size)
    else:
        ink.append(Mark(straight(complex(left, 0), complex(right, 0)), "dotted", "ground"))
    high = NECK * body.long if kind == "bulb" else 0.12 * body.long if kind == "corm" else 0.0
    ink += shoot(_neck(body) * 0.8, 0.12 * size, max(0.0, down - high))
    return (*ink, *_store_beside(form, body, pen, down)), scale_of(form, body)


def _neck(body: Body) -> float:
    return min(0.26 * body.half, 0.12 * body.long) + 1


def _store_ink(form: UndergroundForm, body: Body, pen: Pen) -> Ink:
    kind, neck = form.kind.value, _neck(body)
    behind, before = coat(body, form.coat.value, neck) if form.coat else ((), ())
    roots: Ink = ()
    if form.rootlets:
        where = form.rootlets.value
        roots = (
            rootlets_from_base(body)
            if where == "from the base"
            else rootlets_all_over(body, 3 if where == "few" else 11)
        )
    ink: list[Mark | Copy] = [*roots, *behind]
    loose = form.coat is not None and form.coat.value == "loose scales"
    if kind == "bulb" and not loose:
        edge = body.necked(neck, NECK * body.long)
        ink += (Mark(edge.shut(), "paper"), Mark(edge, pen, kind), *_leaf_edges(body, neck))
    else:
        ink.append(Mark(body.edge(), "dotted" if loose else pen, kind))
    if kind == "corm":
        ink += _corm_rings(body, neck)
    ink += before
    if form.surface:
        ink += skin(body, form.surface.value)
    if form.scales:
        ink += stalk_remains(neck * 1.2, 0.22 * body.long)
    return tuple(ink)


def _leaf_edges(body: Body, neck: float) -> Ink:
    """Return the edges of thick leaves that wrap one another, and the short stem below."""
    low = -0.955 * body.long
    marks = []
    for share, begin in ((-0.62, 0.03), (0.5, 0.05), (-0.12, 0.2)):
        points = [complex(neck * share * 0.9, (0.12 - begin) * body.long)]
        points += [
            complex(body.wide(t) * share * (1.05 - 0.2 * abs(t - 0.5)), -t * body.long)
            for t in (0.25, 0.45, 0.62, 0.8)
            if t > begin + 0.1
        ]
        points.append(complex(0.26 * body.half * share, low))
        marks.append(Mark(smooth(points), "thin", "leaf"))
    plate = Path(
        complex(-0.26 * body.half, low),
        (
            Curve(complex(-0.2 * body.half, low - 0.075 * body.long), complex(0.2 * body.half, low - 0.075 * body.long), complex(0.26 * body.half, low)),
        ),
        closed=True,
    )  # fmt: skip
    return (*marks, Mark(plate, "thin", "plate"))


def _corm_rings(body: Body, neck: float) -> Ink:
    """Return the rings that dry skins leave round a corm, and the foot of its shoot."""
    rings = [Mark(across(body, down, 0.2), "thin", "ring") for down in (0.3, 0.52, 0.74)]
    shoot = Path(
        complex(-neck, -0.07 * body.long),
        (
            Curve(complex(-neck, 0.03 * body.long), complex(-neck * 0.7, 0.08 * body.long), complex(-neck * 0.7, 0.12 * body.long)),
            Line(complex(neck * 0.7, 0.12 * body.long)),
            Curve(complex(neck * 0.7, 0.08 * body.long), complex(neck, 0.03 * body.long), complex(neck, -0.07 * body.long)),
        ),
    )  # fmt: skip
    return (*rings, Mark(shoot, "thin"))


def _store_beside(form: UndergroundForm, body: Body, pen: Pen, down: float) -> Ink:
    """Return a store cut lengthwise; of bulbs and corms always, as their kind says what it shows."""
    kind, inside = form.kind.value, form.interior.value if form.interior else ""
    place = Place(complex(body.half * 2 + 0.22 * body.long, -down))
    if kind == "bulb":
        return put(bulb_cut(body, inside, pen, _neck(body)), place)
    if kind == "corm":
        return put(corm_cut(body, inside, pen, _neck(body)), place)
    return put(cut_ink(body, inside, pen), place) if inside else ()


def _beside(form: UndergroundForm, body: Body, size: float, pen: Pen) -> Ink:
    if form.interior is None:
        return ()
    away = body.half * 2 + 0.42 * size
    return put(cut_ink(body, form.interior.value, pen), Place(complex(away, 0)))


def shoot(half: float, high: float, down: float = 0.0) -> Ink:
    """Return the foot of what grows above, dotted: it is no part of what is under the soil."""
    return tuple(
        Mark(straight(complex(x, -down), complex(x, high)), "dotted") for x in (-half, half)
    )


def scale_of(form: UndergroundForm, body: Body) -> float | None:
    """Return units to a millimetre of a body that was told its length or its breadth."""
    if form.length:
        return body.long / form.length.value
    return 2 * body.half / form.width.value if form.width else None
