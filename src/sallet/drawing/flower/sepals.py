"""Sepals laid flat, as they show behind the petals."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.drawing.flower.petal import Blade, petal, petal_ink
from sallet.drawing.ink import Mark, turned

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.ink import Ink

_PLAIN: Final = (Blade(1, 0.45, 0.6), "open", 1.0)
SEPALS: Final[Mapping[str, tuple[Blade, str, float]]] = {
    "": _PLAIN,
    "blunt": (Blade(1, 0.5, 0.6), "round", 1.0),
    "point": (Blade(1, 0.42, 0.6), "point", 1.0),
    "long": (Blade(1, 0.3, 0.6, (0.4, 0.2, 0.4)), "drawn out", 1.0),
    "narrow": (Blade(1, 0.4, 0.8), "point", 0.5),
    "broad": (Blade(1, 0.5, 0.5), "arc", 1.4),
    "lobed": (Blade(1, 0.4, 0.6), "point", 0.8),
}
"""The outline of a sepal, its end, and how wide it is beside a plain one."""


def sepal(shape: str, length: float, half: float, *, dotted: bool, foot: str = "shut") -> Ink:
    """Return one sepal with its foot at the origin; `dotted` where its length is not recorded."""
    blade, end, share = SEPALS[shape]
    one = petal(blade, end, length, half * share)
    if dotted:
        return (Mark(one.outline, "paper"), Mark(one.rim, "dotted"))
    ink = petal_ink(one, foot=foot, dotted=shape == "")
    if shape == "lobed":
        ink = (*_lobes(length, half * share), *ink)
    return ink


def _lobes(length: float, half: float) -> Ink:
    # Two slender side lobes at each edge, as on the outer sepals of a rose.
    lobe = petal(Blade(1, 0.4, 0.5), "point", length * 0.2, length * 0.026).outline
    return tuple(
        Mark(lobe.placed(turned(-side * 52, complex(side * half * 0.62, share * length))))
        for share in (0.5, 0.68) for side in (-1, 1)
    )  # fmt: skip
