"""How leaves are set on the stem: a stem with small leaves at its nodes."""

from __future__ import annotations

import cmath
import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import GOLDEN, straight
from sallet.drawing.ink import Copy, Curve, Mark, Path, turned
from sallet.drawing.leaf.counts import fitting
from sallet.drawing.sketch import Sketch
from sallet.drawing.told import characters

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.ink import Ink
    from sallet.drawing.told import Shown, Told

POSTURES: Final[Mapping[str, float]] = {
    "erect": 14, "rising": 40, "spreading": 78, "bent back": 122, "drooping": 150, "arching": 58,
}  # fmt: skip
"""Degrees between stem and leaf, by the states of `posture`."""
_PLAIN: Final = 52.0
"""Degrees where no posture is recorded."""
_OWN_POSTURE: Final = frozenset({"basal", "rosette", "fanned", "bunched", "overlapping like tiles"})
"""Ways of setting leaves that say how they are held."""
_FEWEST, _MOST = 3, 12
"""Leaves of a ring that can be told apart."""


@dataclass(frozen=True)
class SetForm:
    """What is shown of how leaves are set."""

    way: Shown[str]
    """The state of `arrangement`, a key of WAYS."""
    node: Shown[int] | None = None
    """Leaves at a node, where another number than the state's own is recorded."""
    posture: Shown[float] | None = None


def set_form(told: Told) -> SetForm | None:
    """Return how leaves are set; None where it is not recorded."""
    way = told.pick("arrangement", {name: name for name in WAYS})
    if way is None:
        return None
    node = None
    if way.value == "whorled":
        node = fitting(told, "leaves to a node", lambda number: _FEWEST <= number <= _MOST)
    on_stem = way.value not in _OWN_POSTURE
    posture = told.pick("posture", POSTURES) if on_stem else None
    return SetForm(way, node, posture)


def set_ink(form: SetForm, size: float) -> Ink:
    """Return a piece of plant `size` units high with leaves set on it.

    The leaves are signs for leaves: how one looks is the business of its own drawing.
    """
    return WAYS[form.way.value](_Stem(form, size))


def leaf_set(told: Told, size: float) -> Sketch | None:
    """Return the arrangement of the leaves drawn from what is told."""
    form = set_form(told)
    if form is None:
        return None
    return Sketch("how the leaves are set", set_ink(form, size), characters(form))


class _Stem:
    """A stem of some height and a leaf that fits it."""

    def __init__(self, form: SetForm, size: float) -> None:
        self.size = size
        self.angle = form.posture.value if form.posture else _PLAIN
        self.node = form.node.value if form.node else 4
        self.known_node = form.node is not None
        self.leaf = _sign(0.36 * size)

    def axis(self, low: float = 0.0, high: float = 1.0) -> Mark:
        """Return the stem from one share of the height to another."""
        half = 0.014 * self.size
        a, b = 1j * low * self.size, 1j * high * self.size
        return Mark(straight(a - half, b - 0.4 * half, b + 0.4 * half, a + half), "line", "stem")

    def put(self, height: float, sign: float, scale: float = 1.0, angle: float = 0.0) -> Copy:
        """Return a leaf at a share of the height, on the right (1) or the left (-1)."""
        lean = angle or self.angle
        place = turned(-sign * lean, 1j * height * self.size, scale, mirrored=sign > 0)
        return Copy(self.leaf, place, "leaf")

    def facing(self, height: float, scale: float = 1.0) -> Copy:
        """Return a leaf that points at the beholder, shortened."""
        short = _sign(0.36 * self.size, 0.62)
        return Copy(short, turned(180, 1j * height * self.size, scale), "leaf")

    def behind(self, height: float, scale: float = 1.0) -> Copy:
        """Return a leaf that points away, shortened."""
        short = _sign(0.36 * self.size, 0.45)
        return Copy(short, turned(0, 1j * height * self.size, scale), "leaf")


def _sign(length: float, short: float = 1.0) -> Ink:
    """Return a plain leaf: the sign for one."""
    long, wide = length * short, 0.2 * length
    blade = Path(
        0.14j * long,
        (
            Curve(complex(wide, 0.24 * long), complex(wide, 0.7 * long), 1j * long),
            Curve(complex(-wide, 0.7 * long), complex(-wide, 0.24 * long), 0.14j * long),
        ),
        closed=True,
    )
    rib = straight(0j, 0.86j * long)
    return (Mark(blade, "thin"), Mark(rib, "fine"))


def _alternate(stem: _Stem) -> Ink:
    """Return single leaves, each on another side of the stem: also towards and away from us."""
    heights = (0.1, 0.28, 0.46, 0.64, 0.82)
    behind: list[Copy] = []
    before: list[Copy] = []
    for number, height in enumerate(heights):
        side = math.cos(math.radians(GOLDEN * number + 20))
        depth = math.sin(math.radians(GOLDEN * number + 20))
        scale = 1 - 0.1 * number
        leaf = stem.put(height, 1 if side > 0 else -1, scale * (0.72 + 0.28 * abs(side)))
        (behind if depth > 0 else before).append(leaf)
    return (*behind, stem.axis(), *before)


def _opposite(stem: _Stem) -> Ink:
    pairs = [(h, 1 - 0.12 * n) for n, h in enumerate((0.12, 0.42, 0.72))]
    return (stem.axis(), *(stem.put(h, s, k) for h, k in pairs for s in (1, -1)))


def _crossed(stem: _Stem) -> Ink:
    behind: list[Copy] = []
    before: list[Copy] = []
    for number, height in enumerate((0.1, 0.32, 0.54, 0.76)):
        scale = 1 - 0.1 * number
        if number % 2 == 0:
            before += [stem.put(height, s, scale) for s in (1, -1)]
        else:
            behind.append(stem.behind(height, scale))
            before.append(stem.facing(height, scale))
    return (*behind, stem.axis(), *before)


def _whorled(stem: _Stem) -> Ink:
    """Return rings of leaves; of a number that is not recorded all but two are dotted."""
    dotted = tuple(replace(mark, pen="dotted") for mark in stem.leaf if isinstance(mark, Mark))
    behind: list[Copy] = []
    before: list[Copy] = []
    for number, height in enumerate((0.16, 0.48, 0.8)):
        scale = 1 - 0.14 * number
        for index in range(stem.node):
            turn = math.radians(360 * (index + 0.5 * (number % 2)) / stem.node + 14)
            # A ring seen a little from above; the leaves rise from it as their posture says.
            point = complex(
                math.cos(turn), 0.46 * math.sin(turn) + math.cos(math.radians(stem.angle)) * 0.5
            )
            place = turned(
                math.degrees(cmath.phase(point)) - 90,
                1j * height * stem.size,
                scale * min(1.0, max(abs(point), 0.5)),
                mirrored=point.real > 0,
            )
            known = stem.known_node or index % 2 == 0
            leaf = Copy(stem.leaf if known else dotted, place, "leaf" if known else "unknown")
            (behind if math.sin(turn) > 0 else before).append(leaf)
    return (*behind, stem.axis(), *before)


def _two_ranked(stem: _Stem) -> Ink:
    heights = (0.08, 0.24, 0.4, 0.56, 0.72)
    return (
        stem.axis(),
        *(stem.put(h, 1 if n % 2 else -1, 1 - 0.07 * n) for n, h in enumerate(heights)),
    )


def _nearly(stem: _Stem) -> Ink:
    leaves = []
    for number, height in enumerate((0.12, 0.42, 0.72)):
        scale = 1 - 0.12 * number
        leaves += [stem.put(height - 0.025, 1, scale), stem.put(height + 0.045, -1, scale)]
    return (stem.axis(), *leaves)


def _basal(stem: _Stem) -> Ink:
    """Return leaves that rise together from the ground; of a stem among them nothing is said."""
    leans = (64, 40, 16)
    back = [stem.put(0.0, s, 1.15, a) for a in leans for s in (1, -1)]
    return (*back, _ground(stem.size))


def _rosette(stem: _Stem) -> Ink:
    """Return a ring of leaves seen from above and aslant, lying on the soil."""
    leaves = []
    for number in range(10):
        turn = 36 * number + 18
        side, depth = math.cos(math.radians(turn)), math.sin(math.radians(turn))
        point = complex(side, 0.46 * depth)
        place = turned(math.degrees(cmath.phase(point)) - 90, 0j, 1.3 * abs(point) + 0.08)
        leaves.append((depth, Copy(stem.leaf, place, "leaf")))
    ordered = [leaf for _, leaf in sorted(leaves, key=lambda pair: -pair[0])]
    return (_ground(stem.size, 0.34), *ordered)


def _bunched(stem: _Stem) -> Ink:
    shoot = straight(0j, complex(0.1, 0.07) * stem.size, closed=False)
    tip = complex(0.1, 0.07) * stem.size
    twig = stem.axis(-0.45, 0.5)
    leaves = tuple(
        Copy(stem.leaf, turned(-lean, tip, 0.9), "leaf") for lean in (118, 2, 92, 32, 62)
    )
    return (twig, Mark(shoot, "line", "shoot"), *leaves)


def _at_top(stem: _Stem) -> Ink:
    spots = ((0.72, 1), (0.76, -1), (0.81, 1), (0.86, -1), (0.91, 1), (0.95, -1))
    return (stem.axis(0, 0.98), *(stem.put(h, s, 0.9 - 0.4 * (h - 0.7)) for h, s in spots))


def _tiled(stem: _Stem) -> Ink:
    leaves = []
    for number in range(12):
        height = 0.86 - 0.07 * number
        leaves.append(stem.put(height, 1 if number % 2 else -1, 0.55, 24))
    return (stem.axis(), *leaves)


def _fanned(stem: _Stem) -> Ink:
    leans = (56, 40, 24, 8)
    leaves = [
        Copy(
            _sword(stem.size * (0.8 + 0.05 * n)),
            turned(-s * a, complex(s * 0.012 * n * stem.size, 0)),
            "leaf",
        )
        for n, a in enumerate(leans)
        for s in (1, -1)
    ]
    return (*leaves, _ground(stem.size))


def _sword(length: float) -> Ink:
    wide = 0.04 * length
    path = Path(
        complex(-wide, 0),
        (
            Curve(complex(-wide, 0.6 * length), complex(-0.6 * wide, 0.9 * length), 1j * length),
            Curve(
                complex(1.2 * wide, 0.85 * length), complex(wide, 0.5 * length), complex(wide, 0)
            ),
        ),
        closed=True,
    )
    return (Mark(path, "thin"),)


def _ground(size: float, half: float = 0.3) -> Mark:
    return Mark(straight(complex(-half * size, 0), complex(half * size, 0)), "fine", "ground")


WAYS: Final[Mapping[str, Callable[[_Stem], Ink]]] = {
    "alternate": _alternate,
    "opposite": _opposite,
    "whorled": _whorled,
    "crossed pairs": _crossed,
    "two-ranked": _two_ranked,
    "nearly opposite": _nearly,
    "basal": _basal,
    "rosette": _rosette,
    "bunched": _bunched,
    "crowded at the top": _at_top,
    "overlapping like tiles": _tiled,
    "fanned": _fanned,
}
"""The ways of setting leaves, by the states of `arrangement`."""
