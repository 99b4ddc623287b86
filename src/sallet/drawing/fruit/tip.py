"""What the flower leaves on its fruit: sepals, styles, a beak, a lantern."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import ellipse, smooth, straight
from sallet.drawing.ink import Curve, Line, Mark, Path

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.fruit.body import Body
    from sallet.drawing.ink import Ink


@dataclass(frozen=True, slots=True)
class Tip:
    """Where the remains stand."""

    top: complex
    foot: complex
    length: float
    width: float
    styles: float | None = None
    """The length of what stands on the tip in units; None where it is not recorded."""
    below: bool = False
    """Whether the sepals stand at the stalk, not at the tip."""


Remains = tuple["Ink", "Ink"]
"""What lies behind the fruit and what before it."""


def remains(name: str, tip: Tip) -> Remains:
    """Return what a flower left, behind and before its fruit."""
    return _REMAINS[name](tip)


def tip_of(body: Body, styles: float | None = None, *, below: bool = False) -> Tip:
    """Return the tip of a body."""
    return Tip(body.top, body.at, body.length, body.width, styles, below)


def _unit(tip: Tip) -> float:
    return min(tip.width, tip.length * 0.8, 0.55 * max(tip.width, tip.length))


def _sepal(root: complex, way: complex, half: float, bend: complex = 0j) -> Path:
    side = way / abs(way) * 1j * half
    end = root + way + bend
    return Path(
        root - side,
        (
            Curve(root - side * 1.5 + way * 0.45, end - way * 0.25 + bend * 0.3, end),
            Curve(end - way * 0.25 + bend * 0.3, root + side * 1.5 + way * 0.45, root + side),
        ),
        closed=True,
    )  # fmt: skip


def _crown(tip: Tip) -> Remains:
    unit = _unit(tip)
    long, half = 0.25 * unit, 0.055 * unit + 0.6
    wide = 0.2 * unit
    back = tuple(
        Mark(_sepal(tip.top + x * wide, complex(0.4 * x, 1) * long, half), "thin", "sepal")
        for x in (-0.55, 0.55)
    )
    front = tuple(
        Mark(_sepal(tip.top + x * wide - 0.02j * unit, complex(0.75 * x, h) * long, half * 1.15), "thin", "sepal")
        for x, h in ((-1, 0.72), (1, 0.72), (0, 0.8))
    )  # fmt: skip
    return back, front


def _bent_back(tip: Tip) -> Remains:
    unit = _unit(tip)
    long, half = 0.3 * unit, 0.055 * unit + 0.5
    root = tip.foot if tip.below else tip.top
    places = ((-1.0, -0.5), (1.0, -0.5), (-0.45, -0.85), (0.45, -0.85))
    down = tuple(
        Mark(
            _sepal(
                root + 0.12 * x * unit, complex(x, y) * long, half, complex(0.1 * x, -0.12) * long
            ),
            "thin",
            "sepal",
        )
        for x, y in places
    )
    return (down, ()) if tip.below else ((), down)


def _clasping(tip: Tip) -> Remains:
    half = tip.width / 2
    high = min(0.5 * tip.length, 0.9 * tip.width)
    foot = tip.foot
    marks = []
    for x in (-1, 1):
        out = [
            foot + complex(x * a * half, b * high)
            for a, b in ((0.1, -0.03), (0.72, 0.04), (1.06, 0.42), (0.94, 0.98))
        ]
        back = [
            foot + complex(x * a * half, b * high)
            for a, b in ((0.62, 0.74), (0.28, 0.3), (0.06, 0))
        ]
        marks.append(Mark(smooth([*out, *back], closed=True), "thin", "sepal"))
    middle = smooth(
        [
            foot + complex(a * half, b * high)
            for a, b in ((0, -0.04), (0.36, 0.2), (0.3, 0.6), (0, 1.04), (-0.3, 0.6), (-0.36, 0.2))
        ],
        closed=True,
    )
    return (), (*marks, Mark(middle, "thin", "sepal"))


def _fallen(tip: Tip) -> Remains:
    unit = _unit(tip)
    scar = ellipse(tip.top - 0.01j * unit, 0.11 * unit + 0.6, 0.036 * unit + 0.4)
    return (), (Mark(scar, "thin", "scar"),)


def _dent(tip: Tip) -> Remains:
    unit = _unit(tip)
    at = tip.top - 0.1j * unit
    rim = ellipse(at, 0.15 * unit, 0.07 * unit)
    hollow = Path(
        at - 0.08 * unit,
        (Curve(at - (0.05 + 0.05j) * unit, at + (0.05 - 0.05j) * unit, at + 0.08 * unit),),
    )
    return (), (Mark(rim, "thin", "dent"), Mark(hollow, "fine"))


def _star(tip: Tip) -> Remains:
    unit = _unit(tip)
    at = tip.top - 0.13j * unit
    points = []
    for n in range(10):
        far = (0.15 if n % 2 == 0 else 0.055) * unit
        angle = math.radians(90 + 36 * n)
        points.append(at + complex(far * math.cos(angle), 0.66 * far * math.sin(angle)))
    return (), (Mark(straight(*points, closed=True), "thin", "star"),)


def _dry_calyx(tip: Tip) -> Remains:
    unit = _unit(tip)
    foot = tip.foot
    rim = [(-1, 0.8), (-0.62, 0.34), (-0.4, 0.86), (0, 0.36), (0.4, 0.86), (0.62, 0.34), (1, 0.8)]
    edge = [foot + complex(0.38 * x * unit, (0.26 * y - 0.07) * unit) for x, y in rim]
    base = foot - 0.08j * unit
    cup = Path(
        base,
        (
            Curve(base - 0.18 * unit, base + (-0.32 + 0.06j) * unit, edge[0]),
            *(Line(p) for p in edge[1:]),
            Curve(base + (0.32 + 0.06j) * unit, base + 0.18 * unit, base),
        ),
        closed=True,
    )
    return (), (Mark(cup, "line", "calyx"),)


def _lantern(tip: Tip) -> Remains:
    wide, high = 0.86 * tip.width, 1.42 * tip.length
    foot = tip.foot - 0.1j * tip.length

    def at(x: float, y: float) -> complex:
        return foot + complex(x * wide, y * high)

    def rib(x: float) -> Path:
        return Path(foot, (Curve(at(0.75 * x, 0), at(1.1 * x, 0.2), at(x, 0.4)),
                           Curve(at(0.86 * x, 0.74), at(0.2 * x, 0.84), at(0.05 * x, 1))))  # fmt: skip

    skin = rib(1.0).then(rib(-1.0).reversed()).shut()
    veins = tuple(Mark(rib(x), "fine") for x in (-0.5, 0.0, 0.5))
    # The fruit shows through as an outline behind the paper: the lantern hides nothing.
    return (Mark(skin, "line", "lantern"),), veins


def _beak(tip: Tip) -> Remains:
    unit = min(tip.width, 0.5 * tip.length + 0.2 * tip.width)
    long = tip.styles or 0.32 * max(tip.length, tip.width) ** 0.5 * tip.width**0.5
    half = min(0.13 * unit, 0.5 * long)
    base = tip.top - 0.035j * unit
    end = tip.top + 1j * long
    beak = Path(
        base - half,
        (
            Curve(base - half * 0.5 + 0.24j * long, end - 0.3j * long - 0.8, end),
            Curve(end - 0.3j * long + 0.8, base + half * 0.5 + 0.24j * long, base + half),
        ),
    )
    return (Mark(beak, "line", "beak"),), ()


def _cushion(tip: Tip) -> Path:
    unit = _unit(tip)
    wide, high = 0.17 * unit + 0.6, 0.13 * unit + 0.8
    at = tip.top - 0.04j * unit
    return Path(
        at - wide,
        (Curve(at - wide + 1j * high, at + complex(-0.5 * wide, high), at + 1j * high),
         Curve(at + complex(0.5 * wide, high), at + wide + 1j * high, at + wide)),
        closed=True,
    )  # fmt: skip


def _styles(tip: Tip, bend: float) -> Remains:
    unit = _unit(tip)
    long = tip.styles or (0.62 if bend else 0.46) * unit + 3
    root = tip.top + 0.05j * unit
    marks = []
    for x in (-1, 1):
        start = root + 0.07 * x * unit
        if bend:
            out, fall = 0.46 * long, 0.56 * long
            curve = Curve(
                start + complex(0.1 * x * long, 0.34 * long), start + complex(0.95 * x * out, 0.3 * long),
                start + complex(1.06 * x * out, -fall),
            )  # fmt: skip
        else:
            curve = Curve(
                start + complex(0.02 * x * long, 0.4 * long), start + complex(0.08 * x * long, 0.7 * long),
                start + complex(0.2 * x * long, 0.98 * long),
            )  # fmt: skip
        marks.append(Mark(Path(start, (curve,)), "line", "style"))
    return tuple(marks), (Mark(_cushion(tip), "line", "style-base"),)


def _bent(tip: Tip) -> Remains:
    behind, before = _styles(tip, 1.0)
    return (), (*behind, *before)


def _upright(tip: Tip) -> Remains:
    return _styles(tip, 0.0)


_REMAINS: Final[Mapping[str, Callable[[Tip], Remains]]] = {
    "crown of sepals": _crown,
    "sepals bent back": _bent_back,
    "sepals clasping": _clasping,
    "sepals fallen": _fallen,
    "a small dent": _dent,
    "a star": _star,
    "a dry calyx at the stalk": _dry_calyx,
    "in a papery lantern": _lantern,
    "a beak": _beak,
    "bent styles": _bent,
    "upright styles": _upright,
}
