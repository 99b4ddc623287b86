"""The single flowers of a cluster: each seen from one of three sides, so that few are drawn."""

from __future__ import annotations

import cmath
import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import circle, smooth
from sallet.drawing.flower.flower import small_flower
from sallet.drawing.ink import Copy, Curve, Mark, Path, Place, turned

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.inflorescence.cluster import Cluster
    from sallet.drawing.inflorescence.space import Eye, Vec
    from sallet.drawing.ink import Ink, Pen
    from sallet.drawing.told import Character, Told

TILTS: Final = (0.0, 38.0, 90.0)
"""From how far aside of its middle a flower is seen, in degrees: 0 looks at the eye."""
FLOWER: Final = "flower"
_BOLD: Final = 7.0
"""Circles wider than this are drawn with the pen of outlines."""
UNCOUNTED: Final = ""
"""Flowers of a cluster whose number is not recorded have no name: there is nothing to count."""


@dataclass(frozen=True)
class Florets:
    """One kind of flower seen from three sides, facing up the page."""

    views: tuple[Ink, ...]
    width: float
    bud: Ink
    part: str = FLOWER
    """What each is called: as a flower only where their number is recorded."""

    def facing(self, eye: Eye, at: Vec, way: Vec) -> Copy:
        """Return a flower at a point that faces some way."""
        return Copy(self._view(eye, way), Place(eye.at(at), _turn(eye.at(way))), self.part)

    def closed(self, eye: Eye, at: Vec, way: Vec, scale: float = 1.0) -> Copy:
        """Return a bud at a point that points some way."""
        return Copy(
            self.bud, Place(eye.at(at), _turn(eye.at(way)) * scale), f"{self.part} bud".strip()
        )

    def _view(self, eye: Eye, way: Vec) -> Ink:
        tilt = math.degrees(math.acos(max(-1.0, min(1.0, way.unit.dot(eye.toward)))))
        if tilt > 90:  # noqa: PLR2004 - beyond a right angle its back is seen: as from the side
            return self.views[-1]
        nearest = min(range(len(TILTS)), key=lambda at: abs(TILTS[at] - tilt))
        return self.views[nearest]


def _turn(way: complex) -> complex:
    # Fifteen degrees are near enough, and keep the turns few.
    if abs(way) < 0.15:  # noqa: PLR2004 - a flower that looks at the eye has no side up
        return 1 + 0j
    step = math.radians(15)
    return cmath.rect(1, round((cmath.phase(way) - math.pi / 2) / step) * step)


HEADS: Final = {"daisy": True, "dandelion": True, "thistle": True}
"""Shapes of the flower that are whole heads."""
_FEW: Final = frozenset({"single", "in pairs"})
_WITHOUT: Final = frozenset({"catkin", "spadix", "spikelet"})
"""Clusters whose flowers are too small to be drawn one by one."""
_LEAST: Final = 13.0
"""The width in units below which the petals of a flower cannot be told apart."""
_SITES: Final[Mapping[str, float]] = {
    "single": 0.07, "in pairs": 0.07, "umbel": 0.07, "raceme": 0.07, "one-sided raceme": 0.07,
    "corymb": 0.07, "cyme": 0.07, "coiled cyme": 0.07, "whorls": 0.1,
    "cluster in the leaf axil": 0.34, "compound umbel": 0.038, "flat-topped cyme": 0.036,
}  # fmt: skip
"""How wide the circle that marks a flower may be, in shares of its cluster."""
_WIDTHS: Final[Mapping[str, float]] = {
    "single": 0.6, "in pairs": 0.34, "compound umbel": 0.05, "branched spike": 0.05,
    "panicle": 0.055, "flat-topped cyme": 0.05, "heads in a cluster": 0.22,
}  # fmt: skip
"""The width of one flower in shares of its cluster."""
_SHRINKING: Final[Mapping[str, tuple[float, float, int, float, float]]] = {
    "umbel": (0.68, 0.5, 10, 0.08, 0.34),
    "corymb": (0.62, 0.5, 12, 0.08, 0.34),
    "cyme": (0.46, 0.5, 7, 0.07, 0.34),
    "raceme": (2.3, 1.0, 18, 0.08, 0.2),
    "one-sided raceme": (2.1, 1.0, 15, 0.08, 0.2),
    "spike": (2.2, 1.0, 23, 0.07, 0.2),
    "coiled cyme": (1.6, 1.0, 11, 0.05, 0.2),
    "whorls": (1.6, 1.0, 10, 0.08, 0.2),
    "head": (1.3, 0.5, 64, 0.06, 0.6),
    "globe": (2.0, 0.5, 150, 0.06, 0.5),
    "cluster in the leaf axil": (1.65, 0.5, 22, 0.12, 0.6),
}
"""The same where more flowers are smaller: a share, divided by a power of their number, the number
where it is not recorded, the least and the most."""


def width_of(cluster: Cluster, size: float) -> float:
    """Return how wide one flower of a cluster is drawn, in units."""
    shrinking = _SHRINKING.get(cluster.plan)
    if shrinking is None:
        return size * _WIDTHS.get(cluster.plan, 0.1)
    share, power, usual, least, most = shrinking
    number = cluster.flowers or cluster.rays or usual
    return size * max(least, min(most, share / math.pow(number, power)))


def florets(told: Told, cluster: Cluster, width: float, size: float) -> Florets:
    """Return the single flowers of a cluster, open circles where their petals are not told."""
    plan = cluster.plan
    counted = any((cluster.flowers, cluster.rays, cluster.heads == 1)) or plan in _FEW
    views = _views(told, plan, width)
    if views:
        kind = Florets(views, width, bud(width * 0.55))
    elif plan == "heads in a cluster":
        kind = _heads(width)
    else:
        kind = sites(min(width * 0.85, size * _SITES.get(plan, 1.0)))
    return kind if counted and plan != "compound umbel" else replace(kind, part=UNCOUNTED)


def flower_characters(told: Told, plan: str, width: float) -> tuple[Character, ...]:
    """Return the characters of the single flower that its drawing in a cluster shows.

    They are found by leaving each out in turn: those without which it looks otherwise.
    """
    views = _views(told, plan, width)
    if not views:
        return ()
    found = []
    for label in told.items:
        if _views(told.without(label), plan, width) != views:
            shown = told.state(label) or told.count(label) or told.length(label)
            if shown:
                found.append(shown.character)
    return tuple(found)


def _views(told: Told, plan: str, width: float) -> tuple[Ink, ...]:
    """Return a flower seen from each side; nothing where it is too small or too little is told."""
    if width < _LEAST or plan in _WITHOUT:
        return ()
    if plan == "heads in a cluster" and told.pick("shape", HEADS) is None:
        return ()
    views = [small_flower(told, width, tilt) for tilt in range(len(TILTS))]
    known = tuple(view for view in views if view)
    return known if len(known) == len(views) else ()


def sites(width: float) -> Florets:
    """Return open circles: a flower stands here, and no more is recorded of it."""
    pen: Pen = "thin" if width > _BOLD else "fine"
    ring: Ink = (Mark(circle(0j, width / 2), pen),)
    return Florets((ring,) * len(TILTS), width, bud(width * 0.75))


def _heads(width: float) -> Florets:
    """Return heads of packed flowers of which no more is recorded."""
    half = width * 0.34
    cup = Path(
        complex(-half, half * 0.5),
        (
            Curve(complex(-half * 0.95, -half * 0.5), complex(half * 0.95, -half * 0.5), complex(half, half * 0.5)),
            Curve(complex(half * 0.7, half * 1.25), complex(-half * 0.7, half * 1.25), complex(-half, half * 0.5)),
        ),
        closed=True,
    )  # fmt: skip
    rim = Path(cup.start, (
        Curve(complex(-half * 0.5, half * 0.2), complex(half * 0.5, half * 0.2), complex(half, half * 0.5)),
    ))  # fmt: skip
    spots = tuple(
        Mark(circle(complex(x, y) * half, half * 0.07), "solid")
        for x, y in ((-0.5, 0.55), (0, 0.5), (0.5, 0.55), (-0.27, 0.76), (0.27, 0.76), (0, 0.9))
    )
    side: Ink = (Mark(cup, "thin"), Mark(rim, "fine"), *spots)
    return Florets((side,) * len(TILTS), width, bud(width * 0.4))


def bud(length: float) -> Ink:
    """Return a closed flower, its foot at the origin, its tip upwards."""
    half = length * 0.34
    path = smooth(
        [0j, complex(half, 0.42 * length), 1j * length, complex(-half, 0.42 * length)], closed=True
    )
    return (Mark(path, "thin"),)


def bulbil(width: float) -> Ink:
    """Return a tiny bulb, its foot at the origin: full and drawn out to a tip."""
    half = width / 2
    right = [0j, complex(half, half * 0.7), complex(half * 0.5, width), complex(0, width * 1.45)]
    left = [complex(-p.real, p.imag) for p in right[-2:0:-1]]
    path = Path(right[0], (*smooth(right).pieces, *smooth([right[-1], *left, 0j]).pieces), True)  # noqa: FBT003 - closed
    return (Mark(path, "solid"),)


def put_bulbil(piece: Ink, at: complex, degrees: float) -> Copy:
    """Return a bulbil at a point."""
    return Copy(piece, turned(degrees, at), "bulbil")
