"""What a flower cluster stands on: its stalk, and its place on the plant.

Leaves, soil and the rest of the stem are dotted: they are there, and how they look is recorded
elsewhere.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import smooth, straight
from sallet.drawing.ink import Curve, Mark, Path, Place, put, turned

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.inflorescence.form import InflorescenceForm
    from sallet.drawing.ink import Box, Ink

AXIL: Final = "cluster in the leaf axil"


@dataclass(frozen=True)
class Seat:
    """Ink under a cluster that stands at the origin, and how deep it reaches."""

    ink: Ink
    depth: float


_FIXED: Final = frozenset({"soil", "ground"})
"""Places that say themselves what stalk there is."""
_STALKED: Final = frozenset({"single", "in pairs", AXIL})
_ON_NOTHING: Final = frozenset({"whorls", "spikelet"})
"""Clusters that need no dotted stalk under them."""


def seat(form: InflorescenceForm, room: Box) -> Seat:
    """Return the stalk of a cluster that takes some room, and where it stands."""
    plan, stalk = form.plan.value, form.stalk.value if form.stalk else ""
    place = form.place.value if form.place else "axil" if plan == AXIL else ""
    unit = max(room.width, room.height) * (0.7 if plan == AXIL else 0.2)
    if plan == "catkin":
        return Seat(put(_twig(unit, room, 0), turned(0)) if place else _hung(unit, room), 0)
    if plan == "whorls":
        return Seat(_leaves_at_rings(unit, room) if place else (), 0)
    # A stalk that is told long is longer than the rays, or than the cluster is wide.
    against = room.height * 0.95 if plan == "compound umbel" else min(room.width, unit * 4)
    length = {"long": against * 1.1, "short": against * 0.4}.get(stalk, 0.0)
    foot = -1j * length
    marks = [Mark(straight(0j, foot), "line", "cluster stalk")] if length else []
    if place and not stalk and plan not in _STALKED and place not in _FIXED:
        marks.append(Mark(straight(0j, -0.7j * unit), "dotted"))
        foot = -0.7j * unit
    if place:
        marks += put_marks(PLACES[place](unit, room, length), foot)
    elif stalk:
        marks += put_marks(_stem(unit), foot)
    elif plan not in _ON_NOTHING:
        marks.append(Mark(straight(0j, -0.8j * unit), "dotted"))
    return Seat(tuple(marks), length)


def _hung(unit: float, room: Box) -> Ink:
    way = 1j if room.top < -room.bottom else -1j
    return (Mark(straight(0j, way * unit * 0.6), "dotted"),)


def _leaves_at_rings(unit: float, room: Box) -> Ink:
    return tuple(
        mark
        for level in (0.2, 0.5, 0.8) for degrees in (72, -72)
        for mark in _leaf(unit * 1.5, degrees, complex(0, room.bottom + room.height * (level - 0.06)))
    )  # fmt: skip


def put_marks(ink: Ink, at: complex) -> list[Mark]:
    """Return marks moved."""
    return [mark for mark in put(ink, Place(at)) if isinstance(mark, Mark)]


def _stem(unit: float) -> Ink:
    """Return the stem from which a stalk springs, of which nothing more is said."""
    return (
        Mark(straight(complex(-0.25, -1.0) * unit, 0j, complex(-0.3, 0.55) * unit), "dotted"),
        Mark(straight(complex(-0.3, 0.0) * unit, complex(0.3, 0.0) * unit), "fine"),
    )


def _leaf(unit: float, degrees: float, at: complex = 0j) -> Ink:
    """Return a dotted leaf: one stands here, its form is told elsewhere."""
    path = Path(
        0j,
        (
            Curve(complex(0.34, 0.2) * unit, complex(0.3, 0.8) * unit, 1.25j * unit),
            Curve(complex(-0.3, 0.8) * unit, complex(-0.34, 0.2) * unit, 0j),
        ),
    )
    return put((Mark(path, "dotted", "leaf"),), turned(degrees, at))


def _top(unit: float, room: Box, length: float) -> Ink:
    del room, length
    return (
        *_leaf(unit, 62, -0.7j * unit), *_leaf(unit, -62, -0.7j * unit),
        Mark(straight(0j, -1.2j * unit), "line", "stem"),
    )  # fmt: skip


def _side_tips(unit: float, room: Box, length: float) -> Ink:
    del room, length
    node = complex(-0.9, -1.3) * unit
    shoot = smooth([0j, complex(-0.15, -0.7) * unit, node])
    return (
        Mark(
            straight(node + complex(0.25, -0.9) * unit, node + complex(-0.5, 1.5) * unit),
            "line",
            "stem",
        ),
        Mark(shoot, "line", "shoot"),
        *_leaf(unit * 0.7, -75, complex(-0.1, -0.6) * unit),
        *_leaf(unit * 0.7, 75, complex(-0.1, -0.6) * unit),
    )


def _axil(unit: float, room: Box, length: float) -> Ink:
    del room, length
    return (*_passing_stem(unit), *_leaf(unit * 1.2, -96))


def _across(unit: float, room: Box, length: float) -> Ink:
    del room, length
    return (*_passing_stem(unit), *_leaf(unit * 1.2, 100))


def _passing_stem(unit: float) -> Ink:
    return (
        Mark(straight(complex(0.2, -1.2) * unit, 0j, complex(-1.9, 0.6) * unit), "line", "stem"),
    )


def _ground(unit: float, room: Box, length: float) -> Ink:
    del room
    far = max(0.0, 3.2 * unit - length)
    return (
        Mark(straight(0j, -1j * far), "line", "stem"), *_soil(unit, -1j * far),
    )  # fmt: skip


def _soil(unit: float, at: complex) -> Ink:
    line = Mark(straight(at - 1.3 * unit, at + 1.3 * unit), "line", "soil")
    strokes = tuple(
        Mark(straight(at + x * unit, at + complex(x - 0.16, -0.2) * unit), "fine")
        for x in (-1.0, -0.6, -0.2, 0.2, 0.6, 1.0)
    )
    return (line, *strokes)


def _from_soil(unit: float, room: Box, length: float) -> Ink:
    del room, length
    return _soil(unit, 0j)


def _twig(unit: float, room: Box, length: float) -> Ink:
    del room, length
    top = smooth(
        [
            complex(-1.6, 0.05) * unit,
            complex(-0.5, -0.05) * unit,
            0.04j * unit,
            complex(1.5, 0.2) * unit,
        ]
    )
    low = smooth(
        [
            complex(-1.6, -0.2) * unit,
            complex(-0.5, -0.28) * unit,
            -0.16j * unit,
            complex(1.5, 0.04) * unit,
        ]
    )
    scars = tuple(
        Mark(straight(complex(x, 0.0) * unit, complex(x + 0.03, -0.17) * unit), "fine")
        for x in (-1.0, 0.75)
    )
    return (Mark(top, "line", "twig"), Mark(low, "line", "twig"), *scars)


def _above(unit: float, room: Box, length: float) -> Ink:
    del room, length
    node = -2.2j * unit
    return (
        Mark(straight(0j, -2.7j * unit), "line", "stem"),
        *_leaf(unit, 40, node), *_leaf(unit, -40, node),
        *_leaf(unit, 80, node - 0.2j * unit), *_leaf(unit, -80, node - 0.2j * unit),
    )  # fmt: skip


def _among(unit: float, room: Box, length: float) -> Ink:
    high = (room.top * 0.7 + length) / 1.25
    return (
        Mark(straight(0j, -0.9j * unit), "line", "stem"),
        *_leaf(high, 28), *_leaf(high, -28), *_leaf(high * 0.8, 58), *_leaf(high * 0.8, -58),
    )  # fmt: skip


PLACES: Final[Mapping[str, Callable[[float, Box, float], Ink]]] = {
    "tip": _top,
    "side tips": _side_tips,
    "axil": _axil,
    "across": _across,
    "ground": _ground,
    "soil": _from_soil,
    "twig": _twig,
    "above": _above,
    "among": _among,
}
"""How each place is drawn, by the vocabulary's hint."""
