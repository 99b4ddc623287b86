"""Thorns, prickles, spines, bristles and hooks along a piece of stem."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import straight
from sallet.drawing.ink import Copy, Curve, Mark, Path, Place
from sallet.drawing.stem.body import JOINT

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.ink import Ink, Pen
    from sallet.drawing.stem.body import Body


@dataclass(frozen=True)
class Armed:
    """What the sharp points of a stem are."""

    seat: str
    """`skin`, `twig`, `node`, `bristle`, `hook`."""
    shape: str
    """A key of `SHAPES`; empty where the kind says nothing of it."""


ARMED: Final[Mapping[str, Armed]] = {
    "thorns": Armed("twig", "straight"),
    "prickles": Armed("skin", ""),
    "spines": Armed("node", "needle"),
    "hooked prickles": Armed("skin", "hook"),
    "straight prickles": Armed("skin", "straight"),
    "bristles": Armed("bristle", "needle"),
    "hooks": Armed("hook", "hook"),
}
"""By the states of `thorns`; an unarmed stem is drawn as one that tells nothing."""


@dataclass(frozen=True)
class Shape:
    """The shape of a sharp point, in shares of its length."""

    foot: float
    """Half the breadth of its foot."""
    droop: float = 0.0
    """How far its tip hangs towards the foot of the stem."""
    long: float = 1.0


SHAPES: Final[Mapping[str, Shape]] = {
    "": Shape(0.3),
    "straight": Shape(0.26),
    "hook": Shape(0.5, 0.85, 0.86),
    "curve": Shape(0.22, 0.3, 1.15),
    "flat": Shape(0.85, 0.12, 0.9),
    "needle": Shape(0.06, 0.0, 1.25),
}
MIXED: Final = ("hook", "needle", "straight", "curve", "needle", "flat")
DENSITY: Final = {"few": 0, "middling": 2, "crowded": 3}
"""By the states of `thorn density`: places in `_COUNTS`."""
UNTOLD: Final = 1
_COUNTS: Final = {
    "skin": (2, 5, 9, 26), "twig": (2, 3, 6, 13), "node": (2, 3, 6, 13), "bristle": (10, 40, 26, 84),
    "hook": (8, 30, 18, 60),
}  # fmt: skip
"""How many are drawn: few, where it is not told, middling, crowded."""
_LONG: Final = {"skin": 0.075, "twig": 0.24, "node": 0.2, "bristle": 0.05, "hook": 0.03}


def thorns_ink(body: Body, armed: Armed, shape: str, density: int = UNTOLD) -> Ink:
    """Return the sharp points; `shape` may be `mixed`, `density` is a value of DENSITY."""
    ink: list[Mark | Copy] = []
    heights = _heights(armed.seat, _COUNTS[armed.seat][density])
    for index, height in enumerate(heights):
        kind = MIXED[index % len(MIXED)] if shape == "mixed" else shape
        side = 1 if index % 2 else -1
        y = height * body.size
        at = Place(complex(side * body.half(y), y), mirrored=side < 0)
        ink += _points(armed.seat, kind, body.size, at)
    return tuple(ink)


def _heights(seat: str, number: int) -> list[float]:
    if seat in {"twig", "node"}:
        # Twigs and what stands for leaves rise at joints: one at that which is drawn.
        half = number // 2
        below = [JOINT * (n + 0.5) / half for n in range(half)]
        rest = number - 1 - half
        return [*below, JOINT, *(JOINT + (1 - JOINT) * (n + 0.6) / rest for n in range(rest))]
    return [0.05 + 0.9 * (n + 0.5 + 0.18 * math.sin(n * 2.4)) / number for n in range(number)]


def _points(seat: str, kind: str, size: float, at: Place) -> Ink:
    long = _LONG[seat] * size * SHAPES[kind].long
    if seat == "twig":
        return _twig(long, SHAPES[kind], at)
    if seat == "node":
        return _spine(long, SHAPES[kind], at)
    pen: Pen = "thin" if seat == "hook" else "line"
    if seat == "bristle":
        return (Mark(straight(0j, complex(long, long * 0.12)).placed(at), "thin"),)
    piece = (Mark(_point(long, SHAPES[kind]), "dotted" if not kind else pen),)
    return (Copy(piece, at, "thorn"),)


def _point(long: float, shape: Shape) -> Path:
    """Return a point to the right of the origin, its foot upright on the edge."""
    foot = shape.foot * long
    tip = complex(long, -shape.droop * long)
    high, low = 1j * foot, -1j * foot
    bend = shape.droop * long
    if shape.droop:
        return Path(
            high,
            (
                Curve(
                    complex(long * 0.45, foot * 0.5),
                    complex(long * (0.7 + 0.3 * shape.droop), bend * 0.1),
                    tip,
                ),
                Curve(complex(long * 0.72, -bend * 0.25), complex(long * 0.3, -foot * 0.5), low),
            ),
            closed=True,
        )
    return Path(
        high,
        (
            Curve(complex(long * 0.16, foot * 0.62), complex(long * 0.55, foot * 0.26), tip),
            Curve(complex(long * 0.55, -foot * 0.26), complex(long * 0.16, -foot * 0.62), low),
        ),
        closed=True,
    )


def _twig(long: float, shape: Shape, at: Place) -> Ink:
    """Return a sharp twig: it grows out of the wood, with no seam at its foot."""
    rise = 0.62
    wide = min(shape.foot, 0.3) * long * 0.34
    tip = complex(long, long * rise - shape.droop * long)
    path = Path(
        complex(0, -wide * 1.9),
        (
            Curve(complex(wide * 0.1, -wide * 0.6), complex(long * 0.3, long * rise * 0.22 - wide * 0.3), tip),
            Curve(complex(long * 0.28, long * rise * 0.3 + wide * 0.8), complex(wide * 0.3, wide * 1.3), complex(0, wide * 2.6)),
        ),
    )  # fmt: skip
    cover = straight(path.start - 0.9, path.start, path.end, path.end - 0.9, closed=True)
    return (
        Mark(path.shut().placed(at), "paper"),
        Mark(cover.placed(at), "paper"),
        Mark(path.placed(at), "line", "thorn"),
    )


def _spine(long: float, shape: Shape, at: Place) -> Ink:
    """Return a spine on its small cushion."""
    foot = 0.05 * long + min(shape.foot, 0.3) * long * 0.25
    cushion = Path(
        complex(0, foot * 1.9),
        (
            Curve(complex(foot * 1.5, foot * 1.5), complex(foot * 1.5, -foot * 1.5), complex(0, -foot * 1.9)),
        ),
        closed=True,
    )  # fmt: skip
    tip = complex(long, long * 0.28 - shape.droop * long)
    spine = Path(
        complex(foot * 0.7, foot),
        (
            Curve(complex(long * 0.4, long * 0.2 + foot * 0.4), tip, tip),
            Curve(tip, complex(long * 0.4, long * 0.1 - foot * 0.2), complex(foot * 0.7, -foot)),
        ),
        closed=True,
    )
    return (Mark(spine.placed(at), "line", "thorn"), Mark(cushion.placed(at), "thin"))
