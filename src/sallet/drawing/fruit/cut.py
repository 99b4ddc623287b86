"""Fruits cut open, beside the whole one: stones, seeds, chambers, a core, hairs."""

from __future__ import annotations

import cmath
import math
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import GOLDEN, circle, ellipse, smooth, straight
from sallet.drawing.fruit.body import OUTLINES, Body
from sallet.drawing.ink import Copy, Curve, Mark, Path, Place, put
from sallet.drawing.told import MANY

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.fruit.form import FruitForm
    from sallet.drawing.ink import Ink, Pen

_GOLDEN: Final = math.radians(GOLDEN)
_CUT: Final = frozenset({"berry", "drupe", "hip", "haw", "pome", "capsule"})
"""Kinds that are shown cut open."""
_STONED: Final = frozenset({"drupe", "haw"})


def cut(form: FruitForm, width: float, body: Body | None) -> Ink:
    """Return the cut face of a fruit of some width, round 0; empty where nothing is recorded.

    Cut across, but a hip along; `body` is the whole fruit, whose outline a cut along has.
    """
    kind = form.kind.value if form.kind else ""
    pen: Pen = body.pen if body else "line"
    radius = width / 2
    inside = form.inside.value if form.inside else ""
    if kind not in _CUT:
        return ()
    if kind == "hip":
        return _hip(form, body, inside) if body else ()
    fill = _filling(form, kind, inside, radius)
    if not fill:
        return ()
    wall = 0.035 if kind == "capsule" else 0.06
    skin = Mark(circle(0j, radius * (1 - wall)), "fine")
    return (Mark(circle(0j, radius), pen, "section"), skin, *fill)


def _filling(form: FruitForm, kind: str, inside: str, radius: float) -> Ink:
    if form.stones:
        return _stones(form.stones.value, radius)
    if inside in _STONES:
        return _STONES[inside](radius)
    if kind in _STONED:
        return (Mark(circle(0j, radius * 0.46), "dotted"),)
    if kind == "pome":
        return _core(form, radius)
    chambers = form.chambers.value if form.chambers else 0
    seeds = form.seeds.value if form.seeds else MANY if inside == "many small seeds" else 0
    walls = _walls(chambers, radius) if chambers else ()
    return (*walls, *(_seeds(seeds, radius, chambers) if seeds else ()))


def _stone(long: float, wide: float) -> Ink:
    """Return a stone cut through: a thick shell round a seed, pointing up."""
    return (
        Mark(ellipse(0j, wide, long), "line", "stone"),
        Mark(ellipse(0j, wide * 0.66, long * 0.7), "fine"),
    )


def _stones(count: int, radius: float) -> Ink:
    if count == 1:
        return _stone(radius * 0.5, radius * 0.5)
    if count >= MANY:
        return _seeds(count, radius, 0, "stone")
    far = 0.38 + 0.14 * min(1.0, (count - 2) / 5)
    wide = min(0.26, 0.88 * far * math.sin(math.pi / count))
    long = min(0.34, 0.9 - far)
    piece = _stone(radius * long, radius * wide)
    return tuple(
        Copy(piece, Place(cmath.rect(far * radius, a), cmath.rect(1, a - math.pi / 2)))
        for a in _round(count)
    )


def _round(count: int) -> list[float]:
    """Return so many directions, the first up; two stand side by side."""
    first = 0 if count == 2 else math.pi / 2  # noqa: PLR2004
    return [first + 2 * math.pi * n / count for n in range(count)]


def _heap(radius: float) -> Ink:
    """Return a few stones that lie over one another, so that nobody counts them."""
    piece = _stone(radius * 0.25, radius * 0.2)
    return tuple(
        Copy(piece, Place(cmath.rect(radius * 0.36 * math.sqrt((n + 0.4) / 9), n * _GOLDEN), cmath.rect(1, n * _GOLDEN)), "stone")
        for n in range(9)
    )  # fmt: skip


_STONES: Final[Mapping[str, Callable[[float], Ink]]] = {
    "one large stone": lambda radius: _stones(1, radius),
    "several small stones": _heap,
}


def _seed(long: float) -> Ink:
    return (
        Mark(
            Path(
                1j * long,
                (Curve(complex(0.5, 0.5) * long, complex(0.7, -0.9) * long, -0.9j * long),
                 Curve(complex(-0.7, -0.9) * long, complex(-0.5, 0.5) * long, 1j * long)),
                closed=True,
            ),
            "thin",
        ),
    )  # fmt: skip


def _seeds(count: int, radius: float, chambers: int, part: str = "seed") -> Ink:
    """Return seeds in the flesh: a few in a ring, many all over, or in each chamber its share."""
    piece = _seed(radius * min(0.16, 0.62 / math.sqrt(count)))
    if chambers:
        places = _in_chambers(count, chambers)
    elif count == 1:
        places = [0j]
    elif count <= 10:  # noqa: PLR2004 - more than ten do not stand in one ring
        places = [cmath.rect(0.44, a) for a in _round(count)]
    else:
        places = [
            cmath.rect(0.78 * math.sqrt((n + 0.5) / count), n * _GOLDEN) for n in range(count)
        ]
    return tuple(
        Copy(piece, Place(p * radius, -p / abs(p) / 1j if p else 1 + 0j), part) for p in places
    )


def _in_chambers(count: int, chambers: int) -> list[complex]:
    places = []
    for n in range(count):
        here, order = n % chambers, n // chambers
        most = -(-count // chambers)
        middle = math.pi / 2 + 2 * math.pi * (here + 0.5) / chambers
        span = 2 * math.pi / chambers * (0.62 if chambers > 1 else 0.9)
        angle = middle + span * ((order + 0.5) / most - 0.5)
        places.append(cmath.rect(0.5 + (0.13 if order % 2 else -0.06) * (most > 2), angle))  # noqa: PLR2004
    return places


def _walls(count: int, radius: float) -> Ink:
    if count == 1:
        return (Mark(circle(0j, radius * 0.84), "thin", "chamber"),)
    count = min(MANY, count)
    return tuple(
        Mark(_chamber(math.pi / 2 + 2 * math.pi * n / count, 2 * math.pi / count, radius), "thin", "chamber")
        for n in range(count)
    )  # fmt: skip


def _chamber(begin: float, span: float, radius: float) -> Path:
    """Return a cell between two walls: a wedge with rounded corners."""
    middle = begin + span / 2
    gap = 0.05 / max(0.2, math.sin(min(span, math.pi) / 2))
    inner = cmath.rect(gap * radius + 0.02 * radius, middle)
    edge = []
    for k in range(5):
        angle = begin + span * (0.1 + 0.2 * k)
        edge.append(cmath.rect((0.82 if 0 < k < 4 else 0.76) * radius, angle))  # noqa: PLR2004
    return smooth([inner, *edge], closed=True)


def _core(form: FruitForm, radius: float) -> Ink:
    """Return the core of a pome; what is not recorded of it is dotted."""
    chambers = form.chambers.value if form.chambers else 0
    seeds = form.seeds.value if form.seeds else 0
    known = form.inside is not None
    line = Mark(
        circle(0j, radius * 0.6), "thin" if known or chambers or seeds else "dotted", "core"
    )
    cells: Ink = ()
    if chambers:
        cells = put(_walls(chambers, radius * 0.6), Place())
    pips = put(_seeds(seeds, radius * 0.62, chambers), Place()) if seeds else ()
    shown = (Mark(circle(0j, radius * 0.2), "dotted", "pips"),) if known else ()
    return (line, *cells, *pips, *shown)


def _hip(form: FruitForm, body: Body, inside: str) -> Ink:
    """Return a hip cut along: a cup with seeds, and hairs between them."""
    seeds = form.seeds.value if form.seeds else 0
    if not (seeds or inside):
        return ()
    low = Place(-body.middle)
    cavity = Body(
        OUTLINES["egg-shaped"].side,
        body.length * 0.76,
        body.width * 0.7,
        at=body.at + 0.13j * body.length,
    )
    piece = _seed(0.42 * math.sqrt(cavity.length * cavity.width / max(seeds, 5)) * 0.62)
    places = cavity.scatter(seeds, 0.66, 0.14, 0.84) if seeds else []
    grains: Ink = tuple(
        Copy(piece, Place(p, cmath.rect(1, 0.5 * math.sin(2.4 * n))), "seed")
        for n, p in enumerate(places)
    )
    hairs: Ink = ()
    if inside:
        long = 0.16 * body.width
        hairs = tuple(
            Mark(straight(p, p - out * long * (1 + 0.3 * (n % 2))), "fine")
            for n, (p, out) in enumerate(cavity.rim(46, 0.02, 0.98))
        ) + tuple(
            Mark(straight(p, p + cmath.rect(long * 0.7, n * _GOLDEN)), "fine")
            for n, p in enumerate(cavity.scatter(26, 0.7))
        )
    wall = Mark(cavity.path, "thin", "cavity")
    return put((Mark(body.path, body.pen, "section"), wall, *hairs, *grains), low)
