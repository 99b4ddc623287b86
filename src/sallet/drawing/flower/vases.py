"""The bodies of radial flowers that are seen from the side, and how they stand to the eye."""

from __future__ import annotations

import cmath
import math
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import straight

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from sallet.drawing.flower.form import FlowerForm
    from sallet.drawing.ink import Path


@dataclass(frozen=True)
class Vase:
    """The body of a flower of length one, its foot at 0, and what its lobes do."""

    wall: tuple[tuple[float, float], ...]
    """Heights and radii from the foot to the rim."""
    lobe: float
    """The length of a lobe."""
    flare: tuple[float, float]
    """How far a lobe leans out at its foot and at its end, in degrees from the axis."""
    lean: float = 17.0
    """From how far above the mouth it is seen, in degrees."""
    fill: float = 0.55
    """How much wider a lobe grows as the mouth opens: 1 keeps its share of the ring."""
    hang: float = 0.0
    """How far it is turned from upright, in degrees."""
    slant: float = 0.0
    """How far the rim rises towards one side, beside its radius."""
    soil: float | None = None
    """The height at which the soil lies."""

    @property
    def rim(self) -> tuple[float, float]:
        """Return the height and the radius of the rim."""
        return self.wall[-1]

    def leaning(self, out: float) -> float:
        """Return how far a lobe leans out some share of its length from the rim, in degrees."""
        return self.flare[0] + (self.flare[1] - self.flare[0]) * out

    def reach(self, out: float) -> tuple[float, float]:
        """Return the height and the radius of a lobe's middle line, some share of it out."""
        height, radius = self.rim
        step = out * self.lobe / _STEPS
        for at in range(_STEPS):
            lean = math.radians(self.leaning(out * (at + 0.5) / _STEPS))
            radius += step * math.sin(lean)
            height += step * math.cos(lean)
        return height, max(radius, 0.0)

    @property
    def width(self) -> float:
        """Return how wide it is, its lobes included."""
        return 2 * max(self.reach(1.0)[1], *(radius for _, radius in self.wall))


_STEPS: Final = 6
"""In how many straight steps the bow of a lobe is followed."""
VASES: Final[Mapping[str, Vase]] = {
    "saucer": Vase(((0, 0.04), (0.02, 0.1), (0.05, 0.17)), 0.66, (70, 34), 54, fill=0.95),
    "cup": Vase(
        ((0, 0.05), (0.03, 0.16), (0.12, 0.28), (0.25, 0.36)), 0.74, (16, -4), 24, fill=0.8
    ),
    "bell": Vase(
        ((0, 0.05), (0.03, 0.18), (0.14, 0.29), (0.45, 0.33), (0.72, 0.4)), 0.24, (24, 62), hang=180
    ),
    "urn": Vase(
        ((0, 0.1), (0.06, 0.24), (0.3, 0.38), (0.58, 0.34), (0.8, 0.2), (0.88, 0.19)),
        0.12, (35, 110), 15, hang=180,
    ),
    "tube": Vase(((0, 0.08), (0.1, 0.1), (0.45, 0.11), (0.84, 0.125)), 0.15, (8, 30), 15),
    "thimble": Vase(
        ((0, 0.07), (0.04, 0.12), (0.2, 0.16), (0.45, 0.23), (0.7, 0.29), (0.86, 0.32)),
        0.1, (8, 40), 20, hang=156, slant=0.34,
    ),
    "funnel": Vase(((0, 0.05), (0.3, 0.12), (0.6, 0.25), (0.84, 0.4)), 0.16, (38, 66), fill=0.9),
    "trumpet": Vase(
        ((0, 0.06), (0.3, 0.08), (0.6, 0.12), (0.78, 0.21), (0.86, 0.32)), 0.2, (56, 92), fill=0.9
    ),
    "plate on a tube": Vase(
        ((0, 0.055), (0.2, 0.055), (0.5, 0.06), (0.84, 0.065)), 0.42, (80, 94), 30, fill=0.9
    ),
    "goblet from the ground": Vase(
        ((-0.2, 0.035), (0.3, 0.04), (0.46, 0.06), (0.56, 0.14)), 0.46, (26, -6), 15, soil=0.0
    ),
}  # fmt: skip
"""Flowers by their shape."""
FLARES: Final[Mapping[str, tuple[float, float]]] = {
    "flat": (74.0, 84.0), "cupped": (24.0, -24.0), "upright": (4.0, 2.0), "back": (80.0, 160.0),
    "tips": (12.0, 150.0),
}  # fmt: skip
"""How far lobes lean out, by their posture."""
TUBE: Final[Mapping[str, tuple[float, float]]] = {"short": (0.55, 1.7), "long": (1.12, 0.8)}
"""How long tube and lobes are beside those of a flower of which that is not recorded."""
_NARROWEST: Final = 0.25
_WIDEST: Final = 4.0
"""Between which shares of its width a body is drawn narrower or wider than its shape."""


def vase_of(form: FlowerForm) -> Vase:
    """Return the body of a flower after its shape and what is recorded of its parts."""
    vase = VASES[form.shape.character.drawn if form.shape else "bell"]
    if form.petal_posture:
        vase = replace(vase, flare=FLARES[form.petal_posture.value])
    for name in form.tube.value if form.tube else ():
        vase = _tubed(vase, name)
    if form.petals is None:
        # Without lobes the rim is drawn where their ends would be.
        vase = replace(vase, wall=(*vase.wall, *(vase.reach(out) for out in (0.5, 1.0))), lobe=0.0)
    if form.width and form.length:
        # The lobes keep their length: only the body is drawn wider or narrower.
        half, rim = form.width.value / form.length.value / 2, vase.rim[1]
        widest = max(radius for _, radius in vase.wall)
        share = min(half / widest, (half - vase.reach(1.0)[1] + rim) / rim)
        share = min(_WIDEST, max(_NARROWEST, share))
        wall = tuple((height, radius * share) for height, radius in vase.wall)
        vase = replace(vase, wall=wall)
    return vase


def _tubed(vase: Vase, name: str) -> Vase:
    top = vase.rim[0]
    if name == "swollen":
        wall = tuple(
            (z, r * (1 + 0.5 * math.sin(math.pi * min(1.0, max(0.0, z / top)))))
            for z, r in vase.wall
        )
        return replace(vase, wall=wall)
    if name not in TUBE:
        return vase
    tall, lobe = TUBE[name]
    return replace(vase, wall=tuple((z * tall, r) for z, r in vase.wall), lobe=vase.lobe * lobe)


def mouth_width(form: FlowerForm, size: float) -> float:
    """Return how wide a flower is drawn whose length is `size` units."""
    return vase_of(form).width * size


@dataclass(frozen=True)
class Seen:
    """A body as it is seen from a little above its mouth, `size` units long."""

    vase: Vase
    size: float
    bow: float = 0.0
    """How far it is bent over to the right from its foot to its mouth, in radians."""

    def at(self, turn: float, radius: float, height: float) -> complex:
        """Return where a point lies; `turn` is 0 at the far side, in radians."""
        lean = math.radians(self.vase.lean)
        tilt = self.vase.slant * radius * math.sin(turn) * min(1.0, max(0.0, height) * 2)
        across = complex(radius * math.sin(turn), radius * math.cos(turn) * math.sin(lean))
        flat = across + 1j * (height + tilt) * math.cos(lean)
        return self.size * (self._bent(flat) if self.bow else flat)

    def _bent(self, flat: complex) -> complex:
        angle = self.bow * flat.imag
        middle = complex(1 - math.cos(angle), math.sin(angle)) / self.bow
        return middle + cmath.rect(flat.real, -angle)

    def wall(self, turn: float) -> list[complex]:
        """Return the points of the wall on one side, from the foot to the rim."""
        return [self.at(turn, radius, height) for height, radius in self.vase.wall]

    def arc(self, ring: tuple[float, float], begin: float, end: float) -> list[complex]:
        """Return points of a ring of some height and radius, from one turn to another."""
        height, radius = ring
        return [self.at(begin + (end - begin) * k / 6, radius, height) for k in range(7)]


def filled(left: Sequence[complex], right: Sequence[complex], front: Sequence[complex]) -> Path:
    """Return the paper of a body between its two sides and the near half of its rim.

    Where a rim is so flat that it hides the sides below it, the paper ends level with it.
    """
    sides = [*reversed(left), *right]
    for ring in ([*sides, *front[1:-1]], sides):
        if _is_simple(ring):
            return straight(*ring, closed=True)
    return straight(*hull_of(sides), closed=True)


def _is_simple(ring: Sequence[complex]) -> bool:
    """Return whether a closed ring of straight lines never meets itself."""
    edges = [*pairwise(ring), (ring[-1], ring[0])]
    return not any(
        _cross(*edges[one], *edges[other])
        for one in range(len(edges))
        for other in range(one + 2, len(edges) - (one == 0))
    )


def _cross(a: complex, b: complex, c: complex, d: complex) -> bool:
    return _turn(a, b, c) * _turn(a, b, d) <= 0 and _turn(c, d, a) * _turn(c, d, b) <= 0


def hull_of(points: Sequence[complex]) -> list[complex]:
    """Return the corners of the convex hull of some points (Andrew 1979)."""
    ordered = sorted(set(points), key=lambda p: (p.real, p.imag))

    def half(run: Sequence[complex]) -> list[complex]:
        chain: list[complex] = []
        for p in run:
            while len(chain) > 1 and _turn(chain[-2], chain[-1], p) <= 0:
                chain.pop()
            chain.append(p)
        return chain[:-1]

    return [*half(ordered), *half(ordered[::-1])]


def _turn(a: complex, b: complex, c: complex) -> float:
    return (b - a).real * (c - a).imag - (b - a).imag * (c - a).real
