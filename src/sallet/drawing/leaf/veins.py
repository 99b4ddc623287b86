"""The veins of a blade, drawn within its outline."""

from __future__ import annotations

import cmath
import math
from dataclasses import replace
from itertools import pairwise
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import mirrored, smooth
from sallet.drawing.ink import Curve, Line, Mark, Path
from sallet.drawing.leaf.breadth import breadth
from sallet.drawing.leaf.lobe_veins import LOBED

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping, Sequence

    from sallet.drawing.ink import Ink
    from sallet.drawing.leaf.breadth import Breadth
    from sallet.drawing.leaf.outline import Outline

_RUNGS: Final = (0.34, 0.68)
"""Where on a side vein the short veins to its neighbour begin."""
_EDGE: Final = 0.9
"""How far towards the edge a side vein runs."""
_STEPS: Final = 26
"""Steps of a vein to the length of the blade."""
_NARROW: Final = 5.0
"""Length by half width of a blade whose side veins run steeper."""
_FORKS: Final = 2
"""Main veins on either side that fork on their way."""


def veins(kind: str, outline: Outline, pairs: int | None = None, main: int | None = None) -> Ink:
    """Return the veins of a kind (the hint of a state of `venation`) in a blade.

    `pairs` of side veins and `main` veins from the base are drawn as recorded; without a
    number, pinnate veins stand as far apart as reads well.
    """
    lines = LOBED[kind](outline) if outline.axes else KINDS[kind](_Blade(outline), pairs, main)
    return tuple(
        replace(mark, path=mark.path.mapped(lambda p: p + outline.sway(p.imag))) for mark in lines
    )


def side_veins(outline: Outline, pairs: int) -> list[Path]:
    """Return the midrib and some pairs of side veins, as paths."""
    lines = LOBED["pinnate"](outline) if outline.axes else _pinnate(_Blade(outline), pairs, None)
    return [mark.path.mapped(lambda p: p + outline.sway(p.imag)) for mark in lines]


class _Blade:
    """Half the width of the blade by height, and whether it is bent aside."""

    def __init__(self, outline: Outline) -> None:
        self.half: Breadth = breadth(outline.bare)
        self.top = self.half.top
        self.low = self.half.low
        self.wide = self.half.wide
        self.bent = outline.sway(self.top) > 0

    def midrib(self, far: float = 0.985) -> Mark:
        """Return the vein down the middle."""
        end = complex(0, self.top * far)
        path = smooth([end * n / 6 for n in range(7)]) if self.bent else Path(0j, (Line(end),))
        return Mark(path, "fine", "midrib")


def _grown(blade: _Blade, start: complex, angle: float, reach: float = _EDGE) -> list[complex]:
    """Return the points of a vein until near the edge, turning forward; two at the least."""
    at, points = start, [start]
    step = max(blade.top / _STEPS, 0.5)
    for _ in range(3 * _STEPS):
        ahead = at + cmath.rect(step, math.radians(90 - angle))
        angle *= 0.965
        if ahead.imag >= blade.top or ahead.real >= reach * blade.half.at(ahead.imag):
            break
        at = ahead
        points.append(at)
    if len(points) == 1:
        # A narrow place: the vein is shorter than a step.
        room = reach * blade.half.at(start.imag) - start.real
        points.append(start + max(room, 0.2) * cmath.rect(1.0, math.radians(90 - angle)))
    return points


def _line(points: Sequence[complex], part: str = "") -> Mark:
    if len(points) < 4:  # noqa: PLR2004 - too few for a curve
        return Mark(Path(points[0], tuple(Line(p) for p in points[1:])), "fine", part)
    out = points[1] - points[0]
    back = points[-2] - points[-1]
    third = abs(points[-1] - points[0]) / 3
    curve = Curve(
        points[0] + out / abs(out) * third, points[-1] + back / abs(back) * third, points[-1]
    )
    return Mark(Path(points[0], (curve,)), "fine", part)


def _both(points: Sequence[complex], part: str = "") -> list[Mark]:
    return [_line(points, part), _line(mirrored(points), part)]


def _starts(blade: _Blade, pairs: int | None) -> list[float]:
    count = pairs or max(3, min(9, round(blade.top / (0.62 * blade.wide + 9))))
    # Upper veins stand closer than lower ones; lobes at the base have the first from the stalk.
    lowest = 0.0 if blade.low < 0 else 0.35
    return [
        blade.top * (0.06 * (lowest > 0) + 0.76 * ((n + lowest) / count) ** 0.92)
        for n in range(count)
    ]


def _down(blade: _Blade, number: int) -> float:
    """Return how many degrees a vein is turned down into a lobe at the base."""
    return 62 * min(1.0, -blade.low / (0.16 * blade.top)) * float(0.4**number)


def _sides(blade: _Blade, pairs: int | None, reach: float = _EDGE) -> list[list[complex]]:
    """Return the side veins of the right half, the lowest first."""
    narrow = blade.top > _NARROW * blade.wide
    first, last = (46, 32) if narrow else (52, 42)
    starts = _starts(blade, pairs)
    return [
        _grown(
            blade,
            1j * start,
            first + (last - first) * number / max(1, len(starts) - 1) + _down(blade, number),
            reach,
        )
        for number, start in enumerate(starts)
    ]


def _pinnate(blade: _Blade, pairs: int | None, _: int | None, reach: float = _EDGE) -> list[Mark]:
    sides = _sides(blade, pairs, reach)
    return [blade.midrib(), *(line for points in sides for line in _both(points, "sidevein"))]


def _net(blade: _Blade, pairs: int | None, main: int | None) -> list[Mark]:
    if main:
        return [*_palmate(blade, None, main), *_rungs(_from_base(blade, main)[::-1])]
    return [*_pinnate(blade, pairs, None), *_rungs(_sides(blade, pairs))]


def _rungs(sides: Sequence[Sequence[complex]]) -> list[Mark]:
    """Return short veins between neighbouring side veins, and loops that join their ends."""
    lines: list[Mark] = []
    for lower, upper in pairwise(sides):
        for share in _RUNGS:
            a = lower[round(share * (len(lower) - 1))]
            # The nearest point of the vein above: rungs stand across, as in a ladder.
            b = min(upper, key=lambda point, a=a: abs(point - a - 0.25 * abs(point - a)))  # type: ignore[misc]
            if b not in {upper[0], upper[-1]}:
                lines += _bowed(a, b, 0.5, 0.1)
        a, b = lower[-1], upper[max(0, round(0.82 * (len(upper) - 1)))]
        lines += _bowed(a, b, 0.45, 0.12)
    return lines


def _bowed(a: complex, b: complex, far: float, aside: float) -> list[Mark]:
    points = [a, a + (b - a) * far + aside * abs(b - a), b]
    return [Mark(smooth(points), "fine"), Mark(smooth(mirrored(points)), "fine")]


def _along(blade: _Blade, share: float) -> list[complex]:
    """Return a vein that keeps its share of the width from base to tip."""
    steps = 14
    return [
        complex(share * blade.half.at(y) * min(1.0, (n / steps) * 5), y)
        for n in range(steps + 1)
        for y in [blade.top * n / steps]
    ]


def _lengthwise(shares: Sequence[float]) -> Callable[[_Blade, int | None, int | None], list[Mark]]:
    def drawn(blade: _Blade, _: int | None, __: int | None) -> list[Mark]:
        marks = [blade.midrib(0.99)]
        for share in shares:
            points = _along(blade, share)[::2]
            marks += [Mark(smooth(line), "fine", "longvein") for line in (points, mirrored(points))]
        return marks

    return drawn


def _from_base(blade: _Blade, number: int) -> list[list[complex]]:
    """Return the main veins of the right half but the midrib, the innermost first."""
    side = (number - 1) // 2
    step, first = {1: (34.0, 0.0), 2: (28.0, 6.0)}.get(side, (78.0 / side, 4.0))
    # In a blade that narrows to its foot they part more steeply, and first run along the midrib.
    heights = [blade.top * n / 20 for n in range(3, 13)]
    opening = max(math.degrees(math.atan2(blade.half.at(y), y)) for y in heights)
    outermost = step * side + first
    squeezed = 1.0 if blade.low < 0 else min(1.0, 0.82 * opening / outermost)
    lines = []
    for k in range(1, side + 1):
        angle = (step * k + first) * squeezed
        # The first step lies on the midrib where the foot is too narrow for the vein.
        foot = 0j
        if squeezed < 1:
            foot = 0.12j * blade.top
        grown = _grown(blade, foot, angle)
        lines.append([0j, *grown] if foot else grown)
    return lines


def _palmate(blade: _Blade, _: int | None, main: int | None) -> list[Mark]:
    marks = [blade.midrib()]
    for number, points in enumerate(_from_base(blade, main or 5), 1):
        marks += _both(points, "mainvein")
        if number <= _FORKS and len(points) > 3:  # noqa: PLR2004 - long enough to fork
            marks += _both(_grown(blade, points[len(points) // 2], 28.0 * number + 22))
    for start in (0.42, 0.62):
        marks += _both(_grown(blade, 1j * blade.top * start, 42))
    return marks


def _forked(blade: _Blade, _: int | None, __: int | None) -> list[Mark]:
    """Return veins that part in two and in two again, as in a fern or a maidenhair tree."""
    marks: list[Mark] = []
    stage = blade.top / 5.2

    def grow(at: complex, heading: float, spread: float) -> None:
        end = at + cmath.rect(stage, math.radians(90 - heading))
        if end.imag >= blade.top * 0.98 or abs(end.real) >= 0.94 * blade.half.at(end.imag):
            return
        marks.append(Mark(Path(at, (Line(end),)), "fine"))
        grow(end, heading - spread, spread * 0.55)
        grow(end, heading + spread, spread * 0.55)

    widest = math.degrees(math.atan2(blade.wide, 0.75 * blade.top))
    for share in (-0.75, -0.25, 0.25, 0.75):
        grow(0j, share * widest, 0.36 * widest)
    return marks or [blade.midrib(0.4)]


def _edge(blade: _Blade, pairs: int | None, _: int | None) -> list[Mark]:
    points = _along(blade, 0.88)[::2]
    rim = [Mark(smooth(line), "fine", "rimvein") for line in (points, mirrored(points))]
    return [*_pinnate(blade, pairs, None, 0.84), *rim]


def _to_teeth(blade: _Blade, pairs: int | None, _: int | None) -> list[Mark]:
    return _pinnate(blade, pairs, None, 1.0)


def _midrib(blade: _Blade, _: int | None, __: int | None) -> list[Mark]:
    return [blade.midrib()]


KINDS: Final[Mapping[str, Callable[[_Blade, int | None, int | None], list[Mark]]]] = {
    "pinnate": _pinnate,
    "net": _net,
    "parallel": _lengthwise((0.22, 0.44, 0.66, 0.86)),
    "arcuate": _lengthwise((0.38, 0.74)),
    "palmate": _palmate,
    "forked": _forked,
    "1": _midrib,
    "3": _lengthwise((0.5,)),
    "edge": _edge,
    "teeth": _to_teeth,
}
"""The ways of veins in a blade without lobes, by the vocabulary's hint."""
