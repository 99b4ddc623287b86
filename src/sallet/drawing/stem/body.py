"""The body of a piece of stem seen from the side: its edges, its joint, lines along it."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import smooth, straight
from sallet.drawing.ink import Curve, Line, Mark, Path, Place

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.ink import Ink, Pen

HALF: Final = 0.1
"""Half the breadth of a piece in shares of its length."""
JOINT: Final = 0.5
"""How high its joint stands, in shares of its length."""
_BREAK: Final = ((-1, 0), (-0.55, 0.9), (-0.1, -0.7), (0.35, 0.8), (0.7, -0.5), (1, 0))
_SAG: Final = 0.22
"""How far a line round the stem sags in front, in shares of half the breadth."""


@dataclass(frozen=True)
class Joint:
    """What a joint looks like."""

    swollen: tuple[tuple[float, float], ...] = ()
    """How much thicker the stem is, by height above the joint in shares of the length."""
    sign: str = "line"
    """`line`, `rings`, `bristles`, `sheath`, `tube`."""


JOINTS: Final[Mapping[str, Joint]] = {
    "not swollen": Joint(),
    "swollen": Joint(
        (
            (-0.12, 0.0),
            (-0.08, 0.03),
            (-0.03, 0.3),
            (0.0, 0.38),
            (0.03, 0.3),
            (0.08, 0.03),
            (0.12, 0.0),
        )
    ),
    "swollen below the joint": Joint(
        (
            (-0.2, 0.0),
            (-0.15, 0.03),
            (-0.08, 0.28),
            (-0.04, 0.4),
            (-0.012, 0.26),
            (0.0, 0.04),
            (0.03, 0.0),
        )
    ),
    "ringed": Joint(sign="rings"),
    "bristly at the joint": Joint(sign="bristles"),
    "sheathed": Joint(sign="sheath"),
    "papery tube": Joint(sign="tube"),
}
"""By the states of `nodes`."""

LINES: Final[Mapping[str, tuple[int, float, Pen]]] = {
    "fine": (13, 0.0, "fine"),
    "middle": (7, 0.0, "thin"),
    "grooves": (6, 0.05, "fine"),
    "deep": (5, 0.1, "thin"),
    "one": (1, 0.16, "line"),
}
"""Lines along the stem by the hint `ridges`: how many are seen, how broad furrows are, the pen."""


@dataclass(frozen=True)
class Body:
    """A piece of stem `size` units long, upright, its foot at the origin."""

    size: float
    swollen: tuple[tuple[float, float], ...] = ()

    def half(self, y: float) -> float:
        """Return half its breadth at a height, in units."""
        above = y / self.size - JOINT
        more = 0.0
        for (low, a), (high, b) in zip(self.swollen, self.swollen[1:], strict=False):
            if low <= above < high:
                more = a + (b - a) * (above - low) / (high - low)
        return HALF * self.size * (1 + more)

    @property
    def heights(self) -> list[float]:
        """Return the heights at which its edges bend."""
        bends = [JOINT + above for above, _ in self.swollen]
        return [self.size * share for share in (0.0, *bends, 1.0)]

    def line(self, share: float) -> Path:
        """Return a line along the stem, `share` of half its breadth to the right."""
        points = [complex(self.half(y) * share, y) for y in self.heights]
        if len(points) == 2:  # noqa: PLR2004 - its two ends
            return straight(*points)
        ends = smooth(points[1:-1])
        return straight(points[0], points[1]).then(ends).then(straight(points[-2], points[-1]))


def body_ink(body: Body) -> Ink:
    """Return the two edges and the broken ends; what lies behind is hidden."""
    right, left = body.line(1), body.line(-1)
    ends = []
    for y in (0.0, body.size):
        half = HALF * body.size
        points = [complex(half * x, y + 0.011 * body.size * bow) for x, bow in _BREAK]
        ends.append(Mark(smooth(points), "fine"))
    return (
        Mark(right.then(left.reversed()).shut(), "paper"),
        Mark(right, "line", "edge"),
        Mark(left, "line", "edge"),
        *ends,
    )


def lines_ink(body: Body, ridges: str) -> Ink:
    """Return ridges or furrows along the stem, nearer together towards its edges."""
    count, wide, pen = LINES[ridges]
    marks: list[Mark] = []
    for number in range(count):
        angle = math.pi * ((number + 0.5) / count - 0.5) * 0.94
        sides = (-wide, wide) if wide else (0.0,)
        marks += [Mark(body.line(math.sin(angle + side)), pen) for side in sides]
    return tuple(marks)


def ring(body: Body, y: float, more: float = 0.0) -> Path:
    """Return the near half of a line round the stem."""
    half = body.half(y) * (1 + more)
    sag = half * _SAG * 4 / 3
    return Path(
        complex(-half, y),
        (Curve(complex(-half * 0.55, y - sag), complex(half * 0.55, y - sag), complex(half, y)),),
    )


def joint_ink(body: Body, joint: Joint | None) -> Ink:
    """Return the joint; where it is not recorded how it looks, a dotted line."""
    y = JOINT * body.size
    if joint is None:
        return (Mark(ring(body, y), "dotted", "node"),)
    if joint.sign == "line":
        return (Mark(ring(body, y), "thin", "node"),)
    return _SIGNS[joint.sign](body, y)


def _rings(body: Body, y: float) -> Ink:
    return tuple(Mark(ring(body, y + d * body.size, 0.05), "line", "node") for d in (-0.009, 0.009))


def _bristles(body: Body, y: float) -> Ink:
    marks: list[Mark] = [Mark(ring(body, y), "thin", "node")]
    half, size = body.half(y), body.size
    for number in range(15):
        share = math.sin(math.pi * ((number + 0.5) / 15 - 0.5))
        foot = complex(half * share, y - half * _SAG * math.sqrt(1 - share * share))
        way = complex(share * 0.075 * size, 0.052 * size)
        marks.append(Mark(straight(foot, foot + way), "thin"))
    return tuple(marks)


def _tube(body: Body, y: float) -> Ink:
    """Return a thin dry tube above the joint, torn at its mouth."""
    size, half = body.size, body.half(y)
    wide, top = half * 1.2, y + 0.19 * size
    teeth = 9
    rim = []
    for number in range(teeth + 1):
        share = 1 - 2 * number / teeth
        dip = -half * 0.3 * math.sqrt(max(0.0, 1 - share * share))
        rim.append(complex(wide * share, top + dip + (0.022 * size if number % 2 else 0.0)))
    foot = ring(body, y, 0.08)
    edge = foot.then(Path(foot.end, tuple(Line(p) for p in rim))).shut()
    folds = [
        Mark(straight(complex(half * s, y - half * _SAG * 0.7), complex(wide * s, top - half * 0.34)), "fine")
        for s in (-0.72, -0.42, -0.1, 0.22, 0.52, 0.8)
    ]  # fmt: skip
    return (Mark(edge, "thin", "tube"), *folds)


def _sheath(body: Body, y: float) -> Ink:
    """Return the foot of a leaf wrapped about the stem; the leaf itself is dotted."""
    size, half = body.size, body.half(y)
    wide = half * 1.22
    low, high = y + 0.13 * size, y + 0.3 * size
    foot = ring(body, y, 0.06)
    away = complex(wide + 0.13 * size, high + 0.1 * size)
    edge = foot.then(
        Path(
            foot.end,
            (
                Curve(
                    complex(wide, y + 0.05 * size), complex(wide, high - 0.1 * size),
                    complex(wide * 1.15, high),
                ),
                Curve(
                    complex(wide * 0.5, high - 0.05 * size), complex(-wide * 0.4, low),
                    complex(-wide, low),
                ),
            ),
        )
    ).shut()  # fmt: skip
    veins = [
        Mark(
            smooth([
                complex(half * s, y - half * _SAG * 0.8),
                complex(wide * s, y + 0.08 * size),
                complex(wide * (s + 0.1), y + (0.15 + 0.055 * (s + 0.7)) * size),
            ]),
            "fine",
        )
        for s in (-0.65, -0.25, 0.2, 0.62)
    ]  # fmt: skip
    leaf = Path(
        complex(wide * 1.15, high),
        (Curve(complex(wide * 1.4, high + 0.04 * size), away - 0.05 * size, away),),
    )
    return (
        Mark(edge, "line", "sheath"),
        *veins,
        Mark(leaf, "dotted"),
        Mark(leaf.placed(Place(complex(0.045, -0.022) * size)), "dotted"),
    )


_SIGNS: Final = {"rings": _rings, "bristles": _bristles, "tube": _tube, "sheath": _sheath}
