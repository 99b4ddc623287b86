"""Lobes at the base of a blade, each from the stalk's end to the widest place of its half."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import bezier
from sallet.drawing.leaf.run import Run

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping


def _rounded_lobe(
    middle: complex, low: float, turn: tuple[float, float, float, float, float]
) -> list[Run]:
    """Return a round lobe: handles of the notch (x, y, x), the lowest place and its fullness."""
    w, (x1, y1, x2, x3, x4) = middle.real, turn
    lowest = complex(x3 * w, low)
    notch = bezier(0j, complex(x1 * w, y1 * low), complex(x2 * w, low), lowest)
    side = bezier(
        lowest, complex(x4 * w, low), complex(w, low + 0.42 * (middle.imag - low)), middle, 14
    )
    # No teeth in the notch: there would be no room for them.
    return [Run(tuple(notch), toothed=False), Run(tuple(side))]


def _heart(middle: complex, low: float, length: float) -> list[Run]:  # noqa: ARG001
    return _rounded_lobe(middle, low, (0.06, 0.62, 0.2, 0.44, 0.8))


def _deep_heart(middle: complex, low: float, length: float) -> list[Run]:  # noqa: ARG001
    return _rounded_lobe(middle, low, (0.03, 0.45, 0.04, 0.36, 0.8))


def _kidney(middle: complex, low: float, length: float) -> list[Run]:  # noqa: ARG001
    return _rounded_lobe(middle, low, (0.2, 0.1, 0.24, 0.56, 0.86))


def _arrow(middle: complex, low: float, length: float) -> list[Run]:
    w = middle.real
    barb = complex(0.78 * w, low)
    # A narrow blade draws in above its barbs; the inner edge of a barb is nearly straight.
    inner = bezier(0j, complex(0.2 * w, 0.12 * low), complex(0.52 * w, 0.5 * low), barb)
    outer = bezier(
        barb, complex(0.9 * w, 0.35 * low), complex(w, middle.imag - 0.3 * length * 0.5), middle, 14
    )
    return [Run(tuple(inner), toothed=False), Run(tuple(outer))]


def _spear(middle: complex, low: float, length: float) -> list[Run]:
    w = middle.real
    barb = complex(1.3 * w, 0.4 * low)
    waist = complex(0.8 * w, low + 0.2 * length)
    inner = bezier(0j, complex(0.3 * w, 1.5 * low), complex(0.8 * w, 1.2 * low), barb)
    upper = bezier(barb, barb + complex(-0.22 * w, 0.03 * length), waist - 0.05j * length, waist)
    rest = middle.imag - waist.imag
    side = bezier(waist, waist + 0.35j * rest, middle - 0.35j * rest, middle)
    return [Run(tuple(inner), toothed=False), Run((*upper, *side[1:]))]


def _ears(middle: complex, low: float, length: float) -> list[Run]:
    w = middle.real
    r = min(0.3 * w, 0.07 * length)
    ear = complex(r * 1.15, low)
    out = complex(min(r * 1.9, 0.9 * w), low + 0.8 * r)
    neck = complex(r * 1.1, low + 1.75 * r)
    lobe = [
        *bezier(0j, complex(0.1 * r, 0.7 * low), complex(0.5 * r, low), ear, 6),
        *bezier(ear, ear + 0.5 * r, out - 0.5j * r, out, 6)[1:],
        *bezier(out, out + 0.45j * r, neck + complex(0.35 * r, -0.1 * r), neck, 6)[1:],
    ]
    rest = middle - neck
    side = bezier(
        neck,
        neck + complex(0.35 * rest.real, 0.12 * rest.imag),
        middle - 0.5j * rest.imag,
        middle,
        12,
    )
    return [Run(tuple(lobe), toothed=False), Run(tuple(side))]


BASE_LOBES: Final[Mapping[str, Callable[[complex, float, float], list[Run]]]] = {
    "heart": _heart,
    "deep heart": _deep_heart,
    "kidney": _kidney,
    "arrow": _arrow,
    "spear": _spear,
    "ears": _ears,
}
"""The lobes at a base by their kind."""
