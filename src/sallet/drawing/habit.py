"""The whole plant as a sketch, at its recorded height.

Only where the stem's width, its branching, its posture and the number of its leaves are
recorded: guessed, they make a plant that nobody has seen. At this size no organ can be
known by its form, so a sketch never stands without the details beside it.
"""

from __future__ import annotations

import cmath
import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import smooth, straight, walk
from sallet.drawing.ink import Copy, Curve, Mark, Path, turned
from sallet.drawing.leaf.blade import blade_ink
from sallet.drawing.leaf.compound import compound_ink
from sallet.drawing.leaf.leaf import leaf_form
from sallet.drawing.sketch import Sketch
from sallet.drawing.told import characters, told

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping, Sequence

    from sallet.drawing.curves import Walk
    from sallet.drawing.ink import Ink, Place
    from sallet.drawing.leaf.blade_form import BladeForm
    from sallet.drawing.leaf.compound import Division
    from sallet.drawing.told import Shown, Told
    from sallet.lesson.model import Fact
    from sallet.lesson.vocabulary import Vocabulary

TITLE: Final = "the whole plant"
_OUTLINED: Final = 2.0
"""A stem of more units is drawn with two edges, a thinner one as a line."""
_READABLE: Final = 16.0
"""A leaf of fewer units is drawn as a plain sign: its teeth and veins would run together."""
_MOST_LEAVES: Final = 60
_FLAT: Final = frozenset({"lying", "weak", "rising"})
"""Stems whose branches keep near the ground with them."""


@dataclass(frozen=True)
class HabitForm:
    """Everything that the sketch of a plant shows."""

    height: Shown[float]
    """Millimetres."""
    thickness: Shown[float]
    """Of the stem, in millimetres."""
    branching: Shown[str]
    posture: Shown[str]
    leaves: Shown[int]
    """On one stem, or on the plant."""
    setting: Shown[str]
    leaf_length: Shown[float]
    """Of a blade, in millimetres."""
    blade: BladeForm | None = None
    """How the blade of a leaf looks, where it is large enough to be seen."""
    division: Division | None = None
    """How a divided blade looks, where it is large enough to be seen."""


def habit_form(facts: tuple[Fact, ...], vocabulary: Vocabulary, size: float) -> HabitForm | None:
    """Return the form of the whole plant; None where anything that it needs is not recorded."""
    plant, stem, leaves = (
        told(facts, vocabulary.subject(organ)) for organ in ("whole plant", "stem", "leaves")
    )
    height, thickness = plant.length("height"), stem.length("thickness")
    branching = _either(stem, plant, "branching", "branches", BRANCHES)
    posture = _either(stem, plant, "posture", "line", LINES)
    number = leaves.count("per stem") or plant.count("leaf count")
    setting = leaves.pick("arrangement", {name: name for name in SETTINGS})
    length = leaves.length("length")
    if not (height and thickness and branching and posture and number and setting and length):
        return None
    form = HabitForm(height, thickness, branching, posture, number, setting, length)
    leaf = leaf_form(leaves)
    if leaf is None or length.value / height.value * size < _READABLE:
        return form
    return replace(form, blade=leaf.blade, division=leaf.division)


def _either(
    stem: Told, plant: Told, label: str, key: str, among: Mapping[str, object]
) -> Shown[str] | None:
    """Return a hint told of the stem, or else of the whole plant."""
    for where in (stem, plant):
        hint = where.hint(label, key)
        if hint and hint.value in among:
            return hint
    return None


def habit(facts: tuple[Fact, ...], vocabulary: Vocabulary, size: float) -> Sketch | None:
    """Return the whole plant, its stem `size` units long; None where too little is recorded."""
    form = habit_form(facts, vocabulary, size)
    if form is None:
        return None
    return Sketch(TITLE, habit_ink(form, size), characters(form), size / form.height.value)


def habit_ink(form: HabitForm, size: float) -> Ink:
    """Return the ink of a whole plant."""
    scale = size / form.height.value
    axis = walk(LINES[form.posture.value](size))
    wide = form.thickness.value * scale
    stem = _stem(axis, wide)
    flat = 0.35 if form.posture.value in _FLAT else 1.0
    branches = tuple(
        _branch(axis, far, angle * flat, long * size)
        for far, angle, long in BRANCHES[form.branching.value]
    )
    long = form.leaf_length.value * scale
    piece = _leaf(form, long)
    number = min(form.leaves.value, _MOST_LEAVES)
    places = SETTINGS[form.setting.value](axis, number)
    leaves = tuple(Copy(piece, place, "leaf") for place in places)
    ground = Mark(straight(complex(-0.3 * size, 0), complex(0.3 * size, 0)), "fine", "ground")
    return (*branches, *stem, *leaves, ground)


def _branch(axis: Walk, far: float, angle: float, long: float) -> Mark:
    """Return a branch that leaves the stem at an angle and turns the way the stem goes."""
    start, ahead = axis.at(far * axis.length), axis.heading(far * axis.length)
    way = ahead * cmath.rect(1, math.radians(angle))
    points = (start + way * 0.35 * long, start + way * 0.62 * long + ahead * 0.12 * long,
              start + way * 0.7 * long + ahead * 0.36 * long)  # fmt: skip
    first, second, end = (complex(p.real, max(p.imag, 2.0)) for p in points)
    return Mark(Path(start, (Curve(first, second, end),)), "thin", "branch")


def _stem(axis: Walk, wide: float) -> Ink:
    points = list(axis.points)
    if wide < _OUTLINED:
        return (Mark(smooth(points), "line" if wide > 1 else "thin", "stem"),)
    sides = [
        [
            p + 1j * axis.heading(far) * sign * wide / 2 * (1 - 0.6 * far / axis.length)
            for p, far in zip(points, axis.lengths, strict=True)
        ]
        for sign in (1, -1)
    ]
    edge = smooth(sides[0]).then(smooth(sides[1][::-1]))
    return (Mark(edge, "thin", "stem"),)


def _leaf(form: HabitForm, long: float) -> Ink:
    if form.division:
        return compound_ink(form.division, long)
    if form.blade:
        return blade_ink(form.blade, long, "", "thin")
    return _sign(long)


def _sign(long: float) -> Ink:
    """Return a plain leaf: the sign for one."""
    wide = 0.22 * long
    blade = Path(
        0j,
        (
            Curve(complex(wide, 0.2 * long), complex(wide, 0.7 * long), 1j * long),
            Curve(complex(-wide, 0.7 * long), complex(-wide, 0.2 * long), 0j),
        ),
        closed=True,
    )
    return (Mark(blade, "thin"),)


# ---- the way of the stem --------------------------------------------------------------------------


def _upright(size: float) -> list[complex]:
    return [complex(0, size * n / 6) for n in range(7)]


def _bow(size: float, *bends: float) -> list[complex]:
    """Return a stem that turns by so many degrees from upright, from its foot to its tip."""
    points, at = [0j], 0j
    for bend in bends:
        at += cmath.rect(size / len(bends), math.radians(90 - bend))
        points.append(complex(at.real, max(at.imag, 0.0)))
    return points


LINES: Final[Mapping[str, Callable[[float], list[complex]]]] = {
    "upright": _upright,
    "rising": lambda size: _bow(size, 84, 66, 40, 18, 6, 0),
    "spreading": lambda size: _bow(size, 20, 34, 48, 58, 66, 72),
    "arching": lambda size: _bow(size, 4, 14, 34, 64, 96, 116),
    "nodding": lambda size: _bow(size, 0, 0, 0, 4, 40, 110),
    "lying": lambda size: _bow(size, 60, 84, 90, 90, 88, 74),
    "leaning": lambda size: _bow(size, 10, 18, 24, 30, 34, 38),
    "weak": lambda size: _bow(size, 20, 50, 70, 74, 66, 50),
}
"""The way of a stem from its foot, by the hint `line` of its posture."""
BRANCHES: Final[Mapping[str, Sequence[tuple[float, float, float]]]] = {
    "none": (),
    "base": ((0.03, 34, 0.7), (0.03, -34, 0.7), (0.02, 58, 0.5), (0.02, -58, 0.5)),
    "top": ((0.66, 38, 0.26), (0.74, -38, 0.22), (0.82, 38, 0.15), (0.89, -38, 0.1)),
    "all": (
        (0.2, 42, 0.4),
        (0.32, -42, 0.36),
        (0.46, 42, 0.3),
        (0.6, -42, 0.24),
        (0.74, 42, 0.17),
        (0.86, -42, 0.1),
    ),
    "few": ((0.5, 36, 0.26), (0.68, -36, 0.2)),
    "fork": ((0.55, 30, 0.4), (0.78, -30, 0.2)),
    "pairs": ((0.4, 42, 0.32), (0.4, -42, 0.32), (0.66, 42, 0.2), (0.66, -42, 0.2)),
    "single": ((0.3, 42, 0.36), (0.5, -42, 0.28), (0.7, 42, 0.18)),
}
"""Where branches leave the stem, at what angle and how long, by the hint `branches`."""


# ---- the places of the leaves ---------------------------------------------------------------------


def _along(axis: Walk, number: int, each: int) -> list[Place]:
    nodes = max(1, math.ceil(number / each))
    places = []
    for index in range(number):
        node, which = divmod(index, each)
        far = axis.length * (0.12 + 0.78 * (node + 0.5) / nodes)
        side = 1 if (which if each > 1 else node) % 2 == 0 else -1
        scale = 1 - 0.5 * far / axis.length
        up = math.degrees(cmath.phase(axis.heading(far))) - 90
        places.append(turned(up - side * 56, axis.at(far), scale, mirrored=side > 0))
    return places


def _alternate(axis: Walk, number: int) -> list[Place]:
    return _along(axis, number, 1)


def _opposite(axis: Walk, number: int) -> list[Place]:
    return _along(axis, number, 2)


def _basal(_: Walk, number: int) -> list[Place]:
    step = 136 / max(1, number - 1)
    return [
        turned(68 - step * index if number > 1 else 24, 0j, mirrored=index * 2 >= number)
        for index in range(number)
    ]


SETTINGS: Final[Mapping[str, Callable[[Walk, int], list[Place]]]] = {
    "alternate": _alternate,
    "two-ranked": _alternate,
    "opposite": _opposite,
    "crossed pairs": _opposite,
    "nearly opposite": _opposite,
    "basal": _basal,
    "rosette": _basal,
}
"""Where leaves stand, by the states of `arrangement`."""
