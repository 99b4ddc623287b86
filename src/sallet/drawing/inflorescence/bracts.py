"""Bracts and bracteoles: one of them drawn, by what is recorded of its form and edge."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final, Literal

from sallet.drawing.ink import Copy, Curve, Line, Mark, Path, Place

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.ink import Ink, Pen

Form = Literal["", "blade", "leaf", "paper", "petal", "scale", "strip"]
Edge = Literal["", "forked", "fringed", "spiny"]


@dataclass(frozen=True)
class Kind:
    """What a bract looks like. An empty word: not recorded."""

    form: str = ""
    edge: str = ""
    posture: str = ""
    """`down`, `level`, `up`."""


@dataclass(frozen=True)
class Shape:
    """A bract's outline in shares of its length."""

    breadth: float
    widest: float
    """Where along it, from its foot."""
    blunt: float = 0.0
    """How far the tip is rounded: 0 is a point."""
    length: float = 1.0
    """Its length beside that of others."""


SHAPES: Final[Mapping[str, Shape]] = {
    "": Shape(0.17, 0.4),
    "blade": Shape(0.44, 0.36),
    "leaf": Shape(0.5, 0.42, length=1.25),
    "paper": Shape(0.4, 0.45, 0.25),
    "petal": Shape(0.62, 0.68, 1.0, 1.2),
    "scale": Shape(0.42, 0.2, 0.15, 0.62),
    "strip": Shape(0.0, 0.5),
}


_STATIONS: Final[Mapping[str, tuple[float, ...]]] = {
    "spiny": (0.3, 0.55, 0.78),
    "fringed": (0.14, 0.29, 0.44, 0.59, 0.74, 0.89),
    "small": (0.25, 0.45, 0.65, 0.85),
}
"""Where hairs and spines stand on either edge."""
_SMALL: Final = 36.0
"""Bracts shorter than this, in units, have fewer hairs and no veins."""


@dataclass(frozen=True)
class Run:
    """Where a bract lies on the page: its foot, the point it bends towards, its tip."""

    foot: complex
    through: complex
    tip: complex

    def at(self, t: float) -> complex:
        """Return a point of its middle line."""
        u = 1 - t
        return u * u * self.foot + 2 * u * t * self.through + t * t * self.tip

    def aside(self, t: float) -> complex:
        """Return the direction to its left there, of length one."""
        way = (1 - t) * (self.through - self.foot) + t * (self.tip - self.through)
        way = way or self.tip - self.foot
        return 1j * way / abs(way) if way else 1j

    def part(self, begin: float, end: float) -> Path:
        """Return a stretch of its middle line."""
        a, m, b = self.at(begin), self.at((begin + end) / 2), self.at(end)
        bend = 2 * m - (a + b) / 2
        return Path(a, (Curve(a + (bend - a) * 2 / 3, b + (bend - b) * 2 / 3, b),))


def bract(kind: Kind, run: Run, length: float, part: str, pen: Pen = "line") -> Ink:
    """Return one bract. `length` is its true length in units, seen from its broad side."""
    if kind.edge == "forked":
        marks = _forked(run, pen)
    elif kind.form == "strip":
        marks = (Mark(run.part(0, 1), pen), *_edge(kind, run, Shape(0.03, 0.5), length))
    else:
        shape = SHAPES[kind.form]
        marks = (
            Mark(_outline(run, shape, length), _pen(kind, pen, length)),
            *_veins(kind, run, shape, length),
            *_edge(kind, run, shape, length),
        )
    if len(marks) == 1:
        return (Mark(marks[0].path, marks[0].pen, part),)
    return (Copy(marks, Place(), part),)


def _pen(kind: Kind, pen: Pen, length: float) -> Pen:
    if pen != "line":
        return pen
    return "fine" if kind.form == "paper" else "thin" if length < _SMALL else "line"


def _outline(run: Run, shape: Shape, length: float) -> Path:
    aside = run.aside(shape.widest) * (shape.breadth * length / 2)
    if length < _SMALL and shape.blunt < 1:
        return _lens(run, aside * (4 / 3))
    middle = run.at(shape.widest)
    before = (middle - run.foot) * 0.55
    behind = (run.tip - middle) * 0.5
    blunt = run.aside(1) * abs(aside) * shape.blunt * 0.7
    right, left = middle - aside, middle + aside
    low = run.foot + before * 0.3
    return Path(
        run.foot,
        (
            Curve(low - aside * 0.7, right - before, right),
            Curve(right + behind, run.tip - blunt, run.tip),
            Curve(run.tip + blunt, left + behind, left),
            Curve(left - before, low + aside * 0.7, run.foot),
        ),
        closed=True,
    )


def _lens(run: Run, aside: complex) -> Path:
    """Return a small outline, pointed at both ends."""
    first, second = run.at(0.33), run.at(0.67)
    return Path(
        run.foot,
        (
            Curve(first - aside, second - aside, run.tip),
            Curve(second + aside, first + aside, run.foot),
        ),
        closed=True,
    )


def _veins(kind: Kind, run: Run, shape: Shape, length: float) -> tuple[Mark, ...]:
    if kind.form == "leaf":
        half = shape.breadth * length / 2
        sides = [
            Mark(_stroke(run.at(t), run.at(t + 0.16) + run.aside(t) * half * side * 0.62), "fine")
            for t in (0.25, 0.48) for side in (1, -1)
        ]  # fmt: skip
        return (Mark(run.part(0, 0.93), "fine"), *sides)
    if kind.form == "paper" and length > _SMALL:
        half = shape.breadth * length / 2
        return tuple(
            Mark(_stroke(run.at(0.25) + run.aside(0.25) * half * side,
                         run.at(0.78) + run.aside(0.78) * half * side), "fine")
            for side in (-0.35, 0.35)
        )  # fmt: skip
    return ()


def _edge(kind: Kind, run: Run, shape: Shape, length: float) -> tuple[Mark, ...]:
    if not kind.edge:
        return ()
    spiny = kind.edge == "spiny"
    half = shape.breadth * length / 2
    reach = max(length * (0.2 if spiny else 0.16), 2.2)
    stations = _STATIONS["spiny" if spiny else "fringed" if length > _SMALL else "small"]
    marks = []
    for t in stations:
        broad = half * _breadth(shape, t)
        for side in (1, -1):
            foot = run.at(t) + run.aside(t) * side * broad
            way = run.aside(t) * side - 1j * run.aside(t) * 0.6
            marks.append(Mark(_stroke(foot, foot + way * reach * 0.8), "line" if spiny else "fine"))
    if spiny:
        tip = run.tip - 1j * run.aside(1) * reach
        marks.append(Mark(_stroke(run.tip, tip)))
    return tuple(marks)


def _breadth(shape: Shape, t: float) -> float:
    # The share of its half breadth that a bract has there: near enough to set hairs on its edge.
    far = (t - shape.widest) / ((1 - shape.widest) if t > shape.widest else shape.widest)
    return float(max(0.0, 1 - abs(far) ** 2.2))


def _forked(run: Run, pen: Pen) -> tuple[Mark, ...]:
    """Return a bract cut into narrow forks, as long strokes."""
    length = abs(run.tip - run.foot)
    marks = [Mark(run.part(0, 1), pen)]
    for t, reach in ((0.34, 0.42), (0.62, 0.28)):
        foot = run.at(t)
        ahead = -1j * run.aside(t)
        marks += [
            Mark(_stroke(foot, foot + (ahead + side * run.aside(t) * 0.75) * reach * length), pen)
            for side in (1, -1)
        ]
    return tuple(marks)


def _stroke(start: complex, end: complex) -> Path:
    return Path(start, (Line(end),))
