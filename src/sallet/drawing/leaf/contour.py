"""Half the outline of a blade, from where it meets its stalk to its tip.

Both parts of a half follow x = W·f(s), f(s) = (1 - (1 - s)^p)^q, from the tip or the base
(s = 0) to the widest place (s = 1). `p` says how full the sides are, `q` how the end is shaped:
below one blunt, above one drawn out. Blunt ends are sampled by angle, or they would go flat.
Lobes at the base, notches at the tip and the like are curves of their own.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import bezier
from sallet.drawing.leaf.base_lobes import BASE_LOBES
from sallet.drawing.leaf.run import Run

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

_STEPS: Final = 22
"""Points on each part of a half."""


@dataclass(frozen=True, slots=True)
class Tip:
    """How a blade ends: `q` of the outline, and what is set on or cut off."""

    q: float
    end: str = ""
    """point, bristle, spine, notch, cut, hood, bend, or nothing."""
    size: float = 0.0
    """Length of the point or depth of the notch, in lengths of the blade."""
    finger: float | None = None
    """How full finger-like lobes end: 0 in a sharp angle, above rounder, below drawn out."""


@dataclass(frozen=True, slots=True)
class Base:
    """How a blade begins: `p` and `q` of the outline, or lobes of their own."""

    q: float = 1.0
    p: float = 2.0
    lobes: str = ""
    """The kind of basal lobes, a key of BASE_LOBES, or nothing."""
    depth: float = 0.0
    """How far the lobes reach below the stalk's end, in lengths of the blade."""
    lift: float = 0.0
    """How much higher one half begins, in lengths of the blade."""
    wing: float = 0.0
    """How broad the blade is where it runs down the stalk, of half its width."""


TIPS: Final[Mapping[str, Tip]] = {
    "acute": Tip(1.15, finger=0.0),
    "obtuse": Tip(0.72, finger=0.26),
    "rounded": Tip(0.5, finger=0.42),
    "acuminate": Tip(1.75, finger=-0.34),
    "long-pointed": Tip(2.4, finger=-0.5),
    "abruptly pointed": Tip(0.55, "point", 0.11),
    "short-pointed": Tip(0.72, "point", 0.055),
    "tail-like": Tip(0.8, "point", 0.26),
    "bristle-tipped": Tip(0.8, "bristle", 0.07),
    "spine-tipped": Tip(1.1, "spine", 0.1),
    "notched": Tip(0.5, "notch", 0.05),
    "heart-tipped": Tip(0.5, "notch", 0.17),
    "cut off": Tip(0.5, "cut"),
    "hooded": Tip(0.8, "hood", 0.14),
    "bent forward": Tip(1.15, "bend", 0.2),
    "dripping": Tip(1.0, "point", 0.17),
}
"""The tips by the states of the label `tip`."""
BASES: Final[Mapping[str, Base]] = {
    "wedge-shaped": Base(1.0, 1.7),
    "tapering": Base(1.75),
    "rounded": Base(0.5),
    "obtuse": Base(0.72),
    "cut straight": Base(0.24, 1.6),
    "heart-shaped": Base(lobes="heart", depth=0.13),
    "deeply heart-shaped": Base(lobes="deep heart", depth=0.24),
    "slightly heart-shaped": Base(lobes="heart", depth=0.055),
    "kidney-shaped": Base(lobes="kidney", depth=0.2),
    "arrow-shaped": Base(lobes="arrow", depth=0.2),
    "spear-shaped": Base(lobes="spear", depth=0.05),
    "eared": Base(lobes="ears", depth=0.03),
    "lopsided": Base(0.6, lift=0.1),
    "running down the stalk": Base(3.4, wing=0.12),
    "hidden by a lobe": Base(lobes="heart", depth=0.09, lift=0.12),
}
"""The bases by the states of the label `base`."""


@dataclass(frozen=True, slots=True)
class Contour:
    """The outline of a blade before lobes and teeth."""

    widest: float
    """Where it is widest: 0 at the foot, 1 at the tip."""
    tip_p: float
    tip: Tip
    base: Base
    sides: str = ""
    """waist, sickle, or nothing; a sickle is bent once both halves stand."""


def body_top(contour: Contour, length: float) -> float:
    """Return the height at which the body of a blade ends and a point set on it begins."""
    top = length * (1 - contour.base.depth)
    if contour.tip.end not in {"point", "spine"}:
        return top
    return top - _reach(contour, length)


def widest(contour: Contour) -> float:
    """Return where a blade is widest, of its length: above any lobes at its base."""
    base = contour.base
    if not base.lobes:
        return contour.widest
    return max(contour.widest, base.depth + 0.1, _LEAST.get(base.lobes, 0.0))


_LEAST: Final[Mapping[str, float]] = {"spear": 0.34, "ears": 0.24}
"""How high above its lowest point a blade with such lobes is widest at the least."""


def _reach(contour: Contour, length: float) -> float:
    """Return the length of a point set on the blade."""
    return min(contour.tip.size, 0.45 * (1 - widest(contour))) * length


def half(contour: Contour, length: float, width: float) -> tuple[Run, ...]:
    """Return the right half of a blade of some length and width, its stalk's end at 0."""
    w = width / 2
    low = -contour.base.depth * length
    middle = complex(w, low + widest(contour) * length)
    lower = _lower(contour, middle, low, length)
    upper, ending = _upper(contour, middle, low + length, length)
    if contour.sides == "waist":
        lower, upper = _waist(lower, upper)
    # The sides meet smoothly at the widest place unless the blade is an angle there.
    sharp = min(contour.tip_p, contour.base.p) < 1.5 and not contour.base.lobes  # noqa: PLR2004
    if sharp or not lower:
        runs = [*lower[:-1], *([lower[-1]] if lower else []), Run(tuple(upper))]
    else:
        joined = Run((*lower[-1].points, *upper[1:]))
        runs = [*lower[:-1], joined]
    runs += ending
    return tuple(runs)


def fullness(s: float, p: float, q: float) -> float:
    """Return how far a side has opened: 0 at the end of the blade, 1 at the widest place."""
    return float((1 - (1 - s) ** p) ** q)


def _samples() -> list[float]:
    return [1 - math.cos(step / _STEPS * math.pi / 2) for step in range(_STEPS + 1)]


def _lower(contour: Contour, middle: complex, low: float, length: float) -> list[Run]:
    base = contour.base
    if base.lobes:
        return BASE_LOBES[base.lobes](middle, low, length)
    w, rise = middle.real, middle.imag
    if base.wing:
        # A narrow strip on either side of the stalk, before the blade proper opens.
        strip = base.wing * w
        points = tuple(
            complex(
                strip * min(1.0, 9 * s) ** 0.5 + (w - strip) * fullness(s, base.p, base.q), rise * s
            )
            for s in _samples()
        )
        return [Run(points)]
    points = tuple(complex(w * fullness(s, base.p, base.q), rise * s) for s in _samples())
    return [Run(points)]


def _upper(
    contour: Contour, middle: complex, top: float, length: float
) -> tuple[list[complex], list[Run]]:
    """Return the points from the widest place to the end of the side, and what ends it."""
    tip, w = contour.tip, middle.real
    if tip.end in {"point", "spine"}:
        return _with_point(contour, middle, top, length)
    shoulder = {"cut": 0.5 * w, "notch": 0.42 * w}.get(tip.end, 0.0)
    q = tip.q if tip.end != "cut" else 0.9
    points = [
        complex(
            shoulder + (w - shoulder) * fullness(s, contour.tip_p, q),
            top - (top - middle.imag) * s,
        )
        for s in reversed(_samples())
    ]
    if tip.end == "cut":
        return points, [Run((points[-1], complex(0, top)), toothed=False)]
    if tip.end == "notch":
        foot = complex(0, top - tip.size * length)
        dip = bezier(
            points[-1],
            points[-1] - 0.7 * shoulder,
            foot + complex(0.12 * shoulder, 0.5 * tip.size * length),
            foot,
        )
        # No teeth in the notch: there would be no room for them.
        return points, [Run(tuple(dip), toothed=False)]
    return points, []


def _with_point(
    contour: Contour, middle: complex, top: float, length: float
) -> tuple[list[complex], list[Run]]:
    tip, w = contour.tip, middle.real
    # The point stands on a blade that is shorter by its own length, so that the whole keeps its
    # length.
    reach = _reach(contour, length)
    shoulder = top - reach
    neck = min(0.16 * w + 0.006 * length, 0.34 * w, 0.3 * reach)
    points = [
        complex(
            neck + (w - neck) * fullness(s, contour.tip_p, tip.q),
            shoulder - (shoulder - middle.imag) * s,
        )
        for s in reversed(_samples())
    ]
    if tip.end == "spine":
        # Stiff and straight, set off from the blade by a corner.
        return points, [Run((points[-1], complex(0, top)), toothed=False)]
    point = bezier(
        points[-1], complex(neck * 0.45, shoulder + 0.12 * reach),
        complex(neck * 0.28, shoulder + 0.5 * reach), complex(0, top),
    )  # fmt: skip
    return points, [Run(tuple(point), toothed=False)]


def _waist(lower: Sequence[Run], upper: Sequence[complex]) -> tuple[list[Run], list[complex]]:
    """Return a blade drawn in at its waist, between a small lower and a broad upper part."""
    top = upper[-1].imag

    def drawn_in(point: complex) -> complex:
        t = max(0.0, min(1.0, point.imag / top if top else 0.0))
        return complex(point.real * (1 - 0.4 * math.exp(-(((t - 0.36) / 0.15) ** 2))), point.imag)

    return (
        [Run(tuple(map(drawn_in, run.points)), run.forward, run.toothed) for run in lower],
        [drawn_in(point) for point in upper],
    )
