"""The lower part of a leaf where it wraps its stem."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import circle, straight
from sallet.drawing.ink import Curve, Line, Mark, Path
from sallet.drawing.leaf.stem_piece import LEAN
from sallet.drawing.leaf.stipules import tube

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.ink import Ink


def _wrap(long: float, wide: float, *, slit: bool) -> Callable[[complex, float], Ink]:
    """Return the lower part of a leaf that wraps the stem below the node."""

    def drawn(at: complex, length: float) -> Ink:
        side, down = LEAN * 1j * wide * length, -LEAN * long * length
        bulge = 1.0 if wide < 0.05 else 1.35  # noqa: PLR2004 - a bag is blown up in the middle
        path = Path(at - side, (
            Curve(at - side * bulge + 0.3 * down, at - side * bulge + 0.7 * down, at - side * 0.8 + down),
            Line(at + side * 0.8 + down),
            Curve(at + side * bulge + 0.7 * down, at + side * bulge + 0.3 * down, at + side),
        ), closed=True)  # fmt: skip
        seam = straight(at - 0.3 * side, at + 0.1 * side + down)
        return (Mark(path, "line", "sheath"), *((Mark(seam, "fine"),) if slit else ()))

    return drawn


def _pale_rim(at: complex, length: float) -> Ink:
    side, down = LEAN * 1j * 0.03 * length, -LEAN * 0.26 * length
    return (
        *_wrap(0.3, 0.045, slit=False)(at, length),
        Mark(straight(at + 0.5 * side, at + 0.2 * side + down), "fine"),
        Mark(straight(at - 0.2 * side, at - 0.1 * side + down), "fine"),
        *(Mark(straight(at + 0.5 * side + down * k, at - 0.2 * side + down * (k + 0.08)), "fine") for k in (0.1, 0.3, 0.5, 0.7)),
    )  # fmt: skip


def _eared(at: complex, length: float) -> Ink:
    side = LEAN * 1j * 0.05 * length
    ears = tuple(Mark(circle(at + side * sign, 0.028 * length), "line", "ear") for sign in (-1, 1))
    return (*_wrap(0.3, 0.045, slit=True)(at, length), *ears)


def _nested(at: complex, length: float) -> Ink:
    inner = _wrap(0.18, 0.036, slit=True)(at + LEAN * 0.16 * length, length)
    return (*inner, *_wrap(0.3, 0.05, slit=True)(at, length))


SHEATHS: Final[Mapping[str, Callable[[complex, float], Ink]]] = {
    "open": _wrap(0.3, 0.045, slit=True),
    "closed": _wrap(0.3, 0.045, slit=False),
    "bag": _wrap(0.3, 0.07, slit=True),
    "edge": _pale_rim,
    "tube": tube,
    "ears": _eared,
    "short": _wrap(0.09, 0.04, slit=True),
    "nested": _nested,
}
"""Sheaths by the vocabulary's hint."""
