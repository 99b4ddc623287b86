"""Radial flowers seen from the side: bells, tubes, funnels, cups.

The flower is a body turned about its axis, seen from a little above its mouth, so that the lobes
of the far side show over the mouth and every one of them can be counted.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import circle, smooth, straight
from sallet.drawing.flower.calyx import calyx_of
from sallet.drawing.flower.tables import TUBULAR
from sallet.drawing.flower.vases import Seen, filled, hull_of, vase_of
from sallet.drawing.flower.words import number
from sallet.drawing.ink import Mark, put, turned

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.flower.form import FlowerForm
    from sallet.drawing.ink import Ink

OUTLINE: Final = ((0.0, 1.0), (0.3, 0.98), (0.6, 0.84), (0.84, 0.52))
"""The edge of a lobe: how far out, how wide beside its foot."""
TIPS: Final[Mapping[str, tuple[tuple[float, float], ...]]] = {
    "": ((1.0, 0.0),),
    "round": ((0.95, 0.3), (1.0, 0.0)),
    "point": ((1.12, 0.0),),
    "flat": ((0.97, 0.44), (0.99, 0.0)),
    "notch": ((1.0, 0.26), (0.86, 0.0)),
    "inrolled": ((1.0, 0.3), (0.9, 0.08), (0.8, 0.0)),
    "half split": ((1.04, 0.34), (0.5, 0.0)),
    "split": ((1.04, 0.4), (0.14, 0.0)),
    "teeth": ((0.86, 0.36), (0.98, 0.24), (0.86, 0.12), (1.0, 0.0)),
    "fringe": ((0.72, 0.42), (1.06, 0.36), (0.72, 0.26), (1.08, 0.16), (0.72, 0.08), (1.1, 0.0)),
}
"""The right half of the end of a lobe, in the same way."""
CORNERED: Final = frozenset({"teeth", "fringe", "notch", "half split", "split", "inrolled"})
"""Ends that are drawn with corners."""
EDGE: Final = 0.02
"""Lobes that are nearly edge-on stand before the mouth."""
FLAT: Final = 52.0
"""From which lean on both faces of a lobe are seen at once, in degrees."""
SEAMS: Final[Mapping[str, tuple[float, bool]]] = {
    "no": (0.0, False), "base": (0.3, False), "": (0.0, True),
}  # fmt: skip
"""From how far up the body petals are parted, and whether that is not recorded."""
SIDE: Final = math.pi / 2
"""The turn of the outline on the right; the far side is 0."""
BOW: Final = math.radians(48)
"""How far a curved tube is bent over from its foot to its mouth."""


@dataclass(frozen=True)
class Lobes:
    """How the lobes of a flower stand."""

    turns: tuple[float, ...]
    """Where each stands, that of the far side first."""
    half: float
    """Half of its share of the ring, in radians."""
    tip: str
    """How it ends: a key of TIPS; empty where that is not recorded."""


def turned_ink(form: FlowerForm, size: float) -> Ink:
    """Return a flower `size` units long from its foot to its mouth, its foot at the origin."""
    curved = form.tube is not None and "curved" in form.tube.value
    seen = Seen(vase_of(form), size, BOW if curved else 0.0)
    lobes = _lobes(form)
    calyx = calyx_of(form, seen, [(r, z) for z, r in seen.vase.wall])
    ink: Ink = (
        *calyx.behind,
        *_ovary(form, seen),
        *_mouth(seen, bare=not lobes.turns),
        *(mark for t in lobes.turns if math.cos(t) > EDGE for mark in _lobe(seen, lobes, t)),
        *_stamens(form, seen),
        *_body(seen, bare=not lobes.turns),
        *(mark for t in lobes.turns if math.cos(t) <= EDGE for mark in _lobe(seen, lobes, t)),
        *_seams(form, seen, lobes),
        *_marks(form, seen),
        *calyx.before,
        *_soil(seen),
    )
    return put(ink, turned(seen.vase.hang)) if seen.vase.hang else ink


def _lobes(form: FlowerForm) -> Lobes:
    count = number(form.petals)
    # One stands straight before the eye.
    turns = (math.pi + math.tau * k / count for k in range(count))
    ordered = tuple(sorted(turns, key=lambda turn: -math.cos(turn)))
    return Lobes(ordered, math.pi / max(1, count), form.petal_tip.value if form.petal_tip else "")


def _lobe(seen: Seen, lobes: Lobes, turn: float) -> Ink:
    """Return one lobe: its edge, and before the mouth the paper with which it hides it."""
    vase, near = seen.vase, math.cos(turn) <= EDGE
    centre = math.atan2(math.sin(turn), math.cos(turn))
    rim = vase.rim[1]

    def at(out: float, wide: float) -> complex:
        height, radius = vase.reach(out)
        # A lobe keeps its width as it leaves the rim, or widens with the mouth.
        share = (rim + (radius - rim) * vase.fill) / radius if radius > rim else 1.0
        angle = centre + lobes.half * wide * share
        if abs(vase.leaning(out)) < FLAT:
            angle = _on_side(angle, near=near)
        return seen.at(angle, radius, height)

    right = [at(s, -w) for s, w in OUTLINE]
    left = [at(s, w) for s, w in reversed(OUTLINE)]
    ends = TIPS[lobes.tip]
    end = [at(s, -w) for s, w in ends] + [at(s, w) for s, w in reversed(ends[:-1])]
    hull = straight(*hull_of([*right, *end, *left]), closed=True)
    fill: Ink = (Mark(hull, "paper"),) if near else ()
    if not lobes.tip:
        sides = (Mark(smooth(right), part="petal"), Mark(smooth(left)))
        return (*fill, *sides, Mark(smooth([right[-1], *end, left[0]]), "dotted"))
    edge = smooth([*right, *end, *left])
    if lobes.tip == "point":
        edge = smooth([*right, *end]).then(smooth([*end, *left]))
    if lobes.tip in CORNERED:
        edge = smooth(right).then(straight(right[-1], *end, left[0])).then(smooth(left))
    return (*fill, Mark(edge, part="petal"))


def _on_side(angle: float, *, near: bool) -> float:
    # The part of an upright lobe that bends away behind the outline of the body is not seen.
    beyond = math.cos(angle) > 0 if near else math.cos(angle) < 0
    return math.copysign(SIDE, math.sin(angle)) if beyond else angle


def _mouth(seen: Seen, *, bare: bool) -> Ink:
    height, radius = seen.vase.rim
    ring = smooth([seen.at(math.tau * k / 8, radius, height) for k in range(8)], closed=True)
    return (Mark(ring, "paper"), *((Mark(ring, "dotted"),) if bare else ()))


def _body(seen: Seen, *, bare: bool) -> Ink:
    vase = seen.vase
    left, right = seen.wall(-SIDE), seen.wall(SIDE)
    foot = seen.arc(vase.wall[0], 3 * SIDE, SIDE)[1:-1:2]
    # The tube of a flower that rises from the soil has no end to be seen.
    sides = smooth([*reversed(left), *foot, *right])
    if vase.soil is not None:
        sides = smooth(left[::-1]).then(smooth(right))
    front = seen.arc(vase.rim, SIDE, 3 * SIDE)
    fill = filled(left, right, front)
    rim = (Mark(smooth(front), "dotted"),) if bare else ()
    return (Mark(fill, "paper"), Mark(sides), *rim)


def _seams(form: FlowerForm, seen: Seen, lobes: Lobes) -> Ink:
    """Return the lines between petals that are free, or of which it is not recorded."""
    joined = form.joined.value if form.joined else ""
    settled = not joined and form.shape is not None and form.shape.value in TUBULAR
    if joined not in SEAMS or settled:
        return ()
    low, unknown = SEAMS[joined]
    marks = []
    for turn in lobes.turns:
        between, wall = turn + lobes.half, seen.vase.wall
        line = [
            point
            for point, (height, _) in zip(seen.wall(between), wall, strict=True)
            if height >= low * seen.vase.rim[0]
        ]
        # Those of the far side are not seen, and those at the edge are its outline.
        if math.cos(between) < -0.2 and len(line) > 1:  # noqa: PLR2004
            marks.append(Mark(smooth(line), "dotted" if unknown else "thin"))
    return tuple(marks)


def _stamens(form: FlowerForm, seen: Seen) -> Ink:
    count, (height, rim) = number(form.stamens), seen.vase.rim
    top = max(seen.vase.reach(1.0)[0], height) + 0.16
    marks: list[Mark] = []
    for k in range(count):
        turn = math.tau * (k + 0.5) / count
        begin = seen.at(turn, rim * 0.3, height * 0.9)
        end = seen.at(turn, rim * (0.62 if k % 2 else 0.5), top)
        way = (end - begin) / abs(end - begin)
        marks.append(Mark(straight(begin, end), "thin", "stamen"))
        marks.append(Mark(straight(end, end + way * max(2.4, 0.03 * seen.size))))
    return tuple(marks)


def _ovary(form: FlowerForm, seen: Seen) -> Ink:
    if form.ovary is None:
        return ()
    radius = max(seen.vase.wall[0][1], 0.06) * 1.1
    run = ((-0.02, 0.8), (-0.1, 1.3), (-0.22, 1.1), (-0.28, 0.5))
    right = [seen.at(SIDE, radius * r, z) for z, r in run]
    left = [seen.at(-SIDE, radius * r, z) for z, r in reversed(run)]
    return (Mark(smooth([*right, *left], closed=True), part="ovary"),)


def _marks(form: FlowerForm, seen: Seen) -> Ink:
    """Return the marks: spots inside the far lobes, veins and stripes outside on the near side."""
    marks: list[Mark] = []
    for name in form.marks.value if form.marks else ():
        if name in STRIPES:
            marks += _stripes(seen, *STRIPES[name])
        else:
            marks += _spots(seen, ringed=name == "rings")
    return tuple(marks)


STRIPES: Final = {"veins": (5, 0.42), "lines": (3, 0.12)}
"""How many lines run down the near side, and how far apart, in radians."""
SPOTS: Final = ((-0.5, 0.2), (0.0, 0.1), (0.5, 0.2), (-0.24, 0.5), (0.26, 0.5), (0.0, 0.75))
"""Where spots stand on the far side: the turn, and how far out on a lobe."""


def _stripes(seen: Seen, count: int, gap: float) -> list[Mark]:
    above = [(height, radius) for height, radius in seen.vase.wall if height >= 0]
    turns = [math.pi + gap * (k - (count - 1) / 2) for k in range(count)]
    return [Mark(smooth([seen.at(t, r, z) for z, r in above]), "fine") for t in turns]


def _spots(seen: Seen, *, ringed: bool) -> list[Mark]:
    marks: list[Mark] = []
    for turn, out in SPOTS:
        height, radius = seen.vase.reach(out)
        point = seen.at(turn, radius * (1 - out * 0.06), height)
        marks.append(Mark(straight(point, point)))
        if ringed:
            marks.append(Mark(circle(point, seen.size * 0.018 + 0.8), "fine"))
    return marks


def _soil(seen: Seen) -> Ink:
    if seen.vase.soil is None:
        return ()
    level, reach = seen.at(0, 0, seen.vase.soil), seen.size * 0.3
    strokes = (level + x * reach for x in (-0.8, -0.5, -0.2, 0.1, 0.4, 0.7, 0.95))
    return (
        Mark(straight(level - reach, level + reach), "thin"),
        *(Mark(straight(p, p - (0.12 + 0.1j) * reach), "fine") for p in strokes),
    )
