"""The sepals at the foot of a flower that is seen from the side."""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise
from typing import TYPE_CHECKING, Final, Protocol

from sallet.drawing.curves import smooth, straight
from sallet.drawing.flower.vases import filled, hull_of
from sallet.drawing.ink import Mark

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from sallet.drawing.flower.form import FlowerForm
    from sallet.drawing.ink import Ink


class View(Protocol):
    """From where a turned body is seen."""

    def at(self, turn: float, radius: float, height: float) -> complex:
        """Return where a point lies."""


@dataclass(frozen=True)
class Frame:
    """A body turned about an axis that points some way on the page, seen a little from its front."""

    foot: complex
    axis: complex
    size: float
    deep: float = 0.2

    def at(self, turn: float, radius: float, height: float) -> complex:
        """Return where a point lies; `turn` is 0 at the far side, in radians."""
        flat = complex(radius * math.sin(turn), height + radius * math.cos(turn) * self.deep)
        return self.foot + self.size * flat * self.axis * -1j


@dataclass(frozen=True)
class Calyx:
    """The sepals of the far side, and those before the flower."""

    behind: Ink = ()
    before: Ink = ()


CUPS: Final[Mapping[str, tuple[float, float]]] = {
    "tube": (0.3, 0.0), "bell": (0.2, 0.3), "cup": (0.1, 0.5), "swollen": (0.34, 0.9),
    "ribbed": (0.22, 0.1), "rim": (0.03, 0.2), "base": (0.07, 0.1), "joined": (0.2, 0.1),
    "no": (0.0, 0.0), "": (0.1, 0.1),
}  # fmt: skip
"""How high the joined sepals reach beside the flower, and how wide they stand off."""
TEETH: Final[Mapping[str, tuple[float, float, float]]] = {
    "": (0.21, 0.85, 0.42), "blunt": (0.17, 0.95, 0.95), "point": (0.22, 0.8, 0.55),
    "long": (0.32, 0.75, 0.3), "narrow": (0.24, 0.4, 0.5), "broad": (0.2, 1.2, 0.95),
}  # fmt: skip
"""How long a sepal is, how wide at its foot, and how wide half-way out beside that."""
BLUNT: Final = frozenset({"", "blunt", "broad"})
LEANS: Final = {"up": 8.0, "level": 82.0, "down": 152.0, "": 24.0}
"""How far the sepals lean out from the axis, in degrees."""


@dataclass(frozen=True)
class Tooth:
    """What all teeth of a calyx have in common, beside the length of the flower."""

    rim: float
    high: float
    off: float
    """How far the cup bulges out."""
    lean: float
    shape: str
    half: float
    """Half of a tooth's share of the ring, in radians."""
    short: float
    free: bool


def calyx_of(form: FlowerForm, eye: View, wall: Sequence[tuple[float, float]]) -> Calyx:
    """Return the sepals round a body of some radii and heights."""
    if form.sepals is None and form.calyx is None:
        return Calyx()
    known = form.calyx or form.sepals_joined
    names = form.calyx.value if form.calyx else ()
    cup = next((name for name in names if name != "ribbed"), "ribbed" if names else "")
    if not cup and form.sepals_joined:
        cup = {"no": "no", "base": "base", "tube": "joined"}[form.sepals_joined.value]
    high, off = CUPS[cup]
    rim = _radius(wall, high) * (1.1 + 0.3 * off) + 0.014 + 0.05 * off
    count = form.sepals.value if form.sepals else 0
    tooth = Tooth(
        rim,
        high,
        off,
        LEANS[form.sepal_posture.value if form.sepal_posture else ""],
        form.sepal_shape.value if form.sepal_shape else "",
        min(math.pi / max(count, 1), 0.9),
        0.3 if cup == "rim" else 1.0,
        free=not high,
    )
    turns = [math.tau * (k + 0.5) / count + math.pi for k in range(count)]
    turns.sort(key=lambda turn: -math.cos(turn))
    behind = tuple(mark for t in turns if math.cos(t) > 0 for mark in _tooth(eye, t, tooth))
    before = tuple(mark for t in turns if math.cos(t) <= 0 for mark in _tooth(eye, t, tooth))
    body = _cup(eye, wall[0][0], tooth, dotted=known is None, open_rim=not count)
    ribs = _ribs(eye, wall[0][0], tooth) if "ribbed" in names else ()
    return Calyx(behind, (*body, *ribs, *before))


def _radius(wall: Sequence[tuple[float, float]], height: float) -> float:
    for (r1, z1), (r2, z2) in pairwise(wall):
        if z1 <= height <= z2:
            return r1 + (r2 - r1) * (height - z1) / (z2 - z1)
    return wall[0][0]


def _tooth(eye: View, turn: float, tooth: Tooth) -> Ink:
    length, wide, middle = TEETH[tooth.shape]
    length *= tooth.short
    lean = math.radians(tooth.lean)
    out, up = length * math.sin(lean), length * math.cos(lean)
    blunt = tooth.shape in BLUNT

    def at(far: float, side: float) -> complex:
        radius = tooth.rim + out * far
        angle = side * tooth.half * wide * tooth.rim / max(radius, tooth.rim)
        return eye.at(turn + angle, radius, tooth.high + up * far)

    half = {"": 0.74, "blunt": 0.62, "broad": 0.62}.get(tooth.shape, 0.5)
    right, left = [at(0, -1), at(half, -middle)], [at(half, middle), at(0, 1)]
    ends = [at(0.95, -0.4 * middle), at(0.95, 0.4 * middle)] if blunt else [at(1, 0)]
    if blunt:
        edge = smooth([*right, *ends, *left])
    else:
        edge = smooth([*right, *ends]).then(smooth([*ends, *left]))
    if tooth.shape == "":
        outer = smooth([right[1], *ends, left[0]])
        sides = (straight(*right), straight(*left))
        fill = Mark(straight(*hull_of([*right, *ends, *left]), closed=True), "paper", "sepal")
        return (fill, *(Mark(side) for side in sides), Mark(outer, "dotted"))
    if tooth.free:
        return (Mark(edge.shut(), part="sepal"),)
    return (
        Mark(straight(*hull_of([*right, *ends, *left]), closed=True), "paper"),
        Mark(edge, part="sepal"),
    )


def _run(foot: float, tooth: Tooth) -> list[tuple[float, float]]:
    swell, high = tooth.rim * (1 + 0.35 * tooth.off), tooth.high
    low = foot * 0.7 + tooth.rim * 0.2
    return [
        (low, -0.025),
        (max(low * 1.15, swell * 0.85), high * 0.3),
        (swell, high * 0.7),
        (tooth.rim, high),
    ]


def _cup(eye: View, foot: float, tooth: Tooth, *, dotted: bool, open_rim: bool) -> Ink:
    if not tooth.high:
        return ()
    run = _run(foot, tooth)
    left = [eye.at(-math.pi / 2, r, z) for r, z in run]
    right = [eye.at(math.pi / 2, r, z) for r, z in run]
    sides = smooth([*reversed(left), *right])
    turns = (math.pi / 2 + math.pi * k / 6 for k in range(7))
    front = [eye.at(turn, tooth.rim, tooth.high) for turn in turns]
    fill = Mark(filled(left, right, front), "paper")
    rim = (Mark(smooth(front), "dotted"),) if open_rim else ()
    return (fill, Mark(sides, "dotted" if dotted else "line", "calyx"), *rim)


def _ribs(eye: View, foot: float, tooth: Tooth) -> Ink:
    run = _run(foot, tooth)
    turns = (math.pi + turn for turn in (-0.9, -0.45, 0.0, 0.45, 0.9))
    return tuple(Mark(smooth([eye.at(t, r, z) for r, z in run[1:]]), "fine") for t in turns)
