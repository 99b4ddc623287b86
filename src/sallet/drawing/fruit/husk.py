"""Nuts in their husks: leafy, torn, prickly, or a cup of scales."""

from __future__ import annotations

import cmath
import math
from dataclasses import replace
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import smooth, straight
from sallet.drawing.fruit.body import Body
from sallet.drawing.fruit.whole import Drawn, bodies
from sallet.drawing.ink import Copy, Curve, Mark, Path, turned

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.fruit.form import FruitForm
    from sallet.drawing.ink import Ink, Pen


HEIGHTS: Final[Mapping[str, float]] = {
    "shorter than the nut": 0.62, "as long as the nut": 1.0, "longer than the nut": 1.5,
    "scaly cup": 0.4,
}  # fmt: skip
"""How high a husk reaches, in lengths of its nut."""


_UNKNOWN: Final = 0.78


SPINES: Final[Mapping[str, tuple[int, float, str]]] = {
    "soft prickles": (30, 0.13, "soft"),
    "sharp spines": (64, 0.2, "needle"),
    "a few stout spines": (12, 0.14, "stout"),
}
"""Spines of a husk: how many stand round it, how long in widths, of which sort."""


def husked(form: FruitForm, size: float) -> Drawn:
    """Return nuts in their husks, side by side on one stalk; without a number there is one."""
    number = min(form.nuts.value, 12) if form.nuts else 1
    words = form.husk.value if form.husk else ()
    share = 1.0 if number == 1 else 0.74
    one = bodies(form, size * share)[0]
    angular = bool(form.shape and form.shape.value.angles)
    piece = (*_husk_behind(one, words), *bare_nut(one, angular=angular), *_husk(one, words))
    spread = min(46.0, 150.0 / number) if number > 1 else 0.0
    off = 0.34 * one.width
    copies = []
    order = sorted(range(number), key=lambda n: -abs(n - (number - 1) / 2))
    for n in order:
        angle = (n - (number - 1) / 2) * -spread
        lean = turned(angle)
        copies.append(
            Copy(piece, replace(lean, at=off * lean.turn * 1j if number > 1 else 0j), "nut")
        )
    return Drawn(tuple(copies), one.length, one.width)


def bare_nut(one: Body, *, angular: bool) -> Ink:
    """Return a nut, with its front edge if it has edges."""
    edge = (Mark(one.meridian(0.14, 0.0, 1.0), "line"),) if angular else ()
    return (*one.ink("shell"), *edge)


def _high(words: tuple[str, ...]) -> tuple[float, bool]:
    """Return how high a husk reaches, and whether that is recorded."""
    for word in words:
        if word in HEIGHTS:
            return HEIGHTS[word], True
    return _UNKNOWN, False


def spined(words: tuple[str, ...]) -> str:
    """Return the sort of spines that a husk has, or an empty string."""
    return next((w for w in words if w in SPINES), "")


def _husk_behind(one: Body, words: tuple[str, ...]) -> Ink:
    name = spined(words)
    high, _ = _high(words)
    if name:
        return spines(_cup_body(one, high), name)
    if "leafy" in words and "longer than the nut" not in words:
        return tuple(Mark(_lobe(one, x, high * 1.12, 0.42), "thin", "husk") for x in (-0.62, 0.62))
    return ()


def _cup_body(one: Body, high: float) -> Body:
    return Body(
        one.outline, one.length * max(high, 0.6), one.width * 1.22, at=one.at - 0.03j * one.length
    )


def _lobe(one: Body, x: float, high: float, wide: float) -> Path:
    foot = one.at - 0.02j * one.length
    tip = foot + complex(x * 0.62 * one.width, high * one.length)
    out = wide * one.width
    return Path(
        foot - 0.06 * one.width,
        (
            Curve(foot + complex((x - 1.0) * out, 0.2 * one.length), tip + complex(-out * 0.8, -0.35 * one.length), tip),
            Curve(tip + complex(out * 0.8, -0.35 * one.length), foot + complex((x + 1.0) * out, 0.2 * one.length), foot + 0.06 * one.width),
        ),
        closed=True,
    )  # fmt: skip


def _husk(one: Body, words: tuple[str, ...]) -> Ink:
    """Return the cover before the nut; an edge whose height is not recorded is dotted."""
    high, known = _high(words)
    if "scaly cup" in words:
        return _scales(one, high)
    half, foot = one.width * 0.57, one.at - 0.04j * one.length
    tube = high > 1.2  # noqa: PLR2004 - a husk that hides its nut narrows over it
    mouth = 0.5 if tube else 0.98
    top = high * one.length
    low = 0.3 if tube else 0.0

    def at(x: float, y: float) -> complex:
        return foot + complex(x * half, y * top)

    right = Path(foot, (Curve(at(0.6 + low, 0), at(0.98, 0.12 - 0.3 * low), at(1, 0.5)),
                        Curve(at(1.02, 0.72), at(mouth * 1.05, 0.84), at(mouth, 1))))  # fmt: skip
    left = Path(at(-mouth, 1), (Curve(at(-mouth * 1.05, 0.84), at(-1.02, 0.72), at(-1, 0.5)),
                                Curve(at(-0.98, 0.12 - 0.3 * low), at(-0.6 - low, 0), foot)))  # fmt: skip
    edge = _edge(words, at(mouth, 1), at(-mouth, 1), one)
    veins = tuple(
        Mark(
            Path(
                at(0.1 * x, 0.06),
                (Curve(at(0.7 * x, 0.2), at(0.8 * x, 0.5), at(0.66 * x * (mouth + 0.3), 0.8)),),
            ),
            "fine",
        )
        for x in ((-0.9, -0.45, 0.0, 0.45, 0.9) if "leafy" in words else ())
    )
    pen: Pen = "line" if known else "dotted"
    front = _front_spines(one, words)
    return (Mark(right.then(edge).then(left).shut(), pen, "husk"), *veins, *front)


def _edge(words: tuple[str, ...], begin: complex, end: complex, one: Body) -> Path:
    """Return the upper edge of a husk: torn, in broad lobes, or plain."""
    if "ragged" in words:
        teeth, high = 8, 0.12 * one.length
        sharp = 1.0
    elif "leafy" in words:
        teeth, high, sharp = 3, 0.2 * one.length, 0.0
    else:
        return smooth([begin, (begin + end) / 2 - 0.05j * one.length, end])
    step = (end - begin) / teeth
    if sharp:
        points = [begin]
        for n in range(teeth):
            tall = high * (0.55 + 0.75 * math.sin(2.4 * n + 1) ** 2)
            lean = 0.45 + 0.25 * math.sin(4.1 * n)
            points += [
                begin + step * (n + lean) + 1j * tall,
                begin + step * (n + 1) - 0.3j * (n % 3) * high,
            ]
        return straight(*points[:-1], end)
    pieces = []
    for n in range(teeth):
        a, b = begin + step * n, begin + step * (n + 1)
        tip = (a + b) / 2 + 1j * high
        pieces += [
            Curve(a + 0.5j * high, tip - step * 0.2 - 0.2j * high, tip),
            Curve(tip + step * 0.2 - 0.2j * high, b + 0.5j * high, b),
        ]
    return Path(begin, tuple(pieces))


def _scales(one: Body, high: float) -> Ink:
    """Return a cup of overlapping scales at the foot of the nut."""
    half, top = one.width * 0.57, high * one.length
    foot = one.at - 0.05j * one.length

    def at(x: float, y: float) -> complex:
        return foot + complex(x * half, y * top)

    cup = Path(at(1, 1), (Curve(at(0.6, 0.86), at(-0.6, 0.86), at(-1, 1)),
                          Curve(at(-1.08, 0.3), at(-0.6, 0), foot),
                          Curve(at(0.6, 0), at(1.08, 0.3), at(1, 1))), closed=True)  # fmt: skip
    marks = [Mark(cup, "line", "husk")]
    for row in range(4):
        y = 0.8 - 0.2 * row
        wide = math.sqrt(max(0.05, 1 - (1 - y) ** 2.4)) * 0.96
        count = 6 + row % 2
        for k in range(count):
            x = wide * (-1 + 2 * (k + 0.5) / count)
            w = wide / count
            drop = 0.13 * (1 - x * x)
            marks.append(
                Mark(
                    Path(
                        at(x - w, y - drop),
                        (
                            Curve(
                                at(x - w, y + 0.16 - drop),
                                at(x + w, y + 0.16 - drop),
                                at(x + w, y - drop),
                            ),
                        ),
                    ),
                    "fine",
                )
            )
    return tuple(marks)


def spines(cup: Body, name: str) -> Ink:
    """Return the spines that stand round a cup."""
    count, long, sort = SPINES[name]
    reach = long * cup.width
    found = []
    for n, (root, out) in enumerate(cup.rim(count, 0.08, 0.92)):
        lean = out * cmath.exp(1j * (0.28 * math.sin(2.4 * n) if sort != "stout" else 0))
        found.append(Mark(spine(root, lean * reach, sort), "thin"))
    return tuple(found)


def spine(root: complex, way: complex, sort: str) -> Path:
    """Return one spine: a needle, a soft bent one, or a stout thorn."""
    if sort == "needle":
        return straight(root, root + way)
    if sort == "soft":
        bend = way * 0.4j * (1 if way.real >= 0 else -1)
        return Path(
            root, (Curve(root + way * 0.5, root + way * 0.8 + bend * 0.3, root + way + bend),)
        )
    side = way * 0.34j
    tip = root + way
    inner = root - way * 0.1
    return Path(
        inner + side,
        (
            Curve(inner + side * 0.5 + way * 0.4, tip, tip),
            Curve(tip, inner - side * 0.5 + way * 0.4, inner - side),
        ),
    )


def _front_spines(one: Body, words: tuple[str, ...]) -> Ink:
    name = spined(words)
    if not name:
        return ()
    _, long, sort = SPINES[name]
    high, _ = _high(words)
    cup = _cup_body(one, high)
    number = {"soft": 12, "needle": 26, "stout": 4}[sort]
    reach = long * cup.width * 0.62
    return tuple(
        Mark(
            spine(p, cmath.rect(reach, math.radians(90 - 80 * (p.real / (cup.width / 2)))), sort),
            "thin",
        )
        for p in cup.scatter(number, 0.72, 0.12, 0.7)
    )
