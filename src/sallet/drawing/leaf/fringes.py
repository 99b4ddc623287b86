"""What stands on an even edge: hairs, glands, a pale rim, a rolled edge."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import circle, straight, walk
from sallet.drawing.ink import Copy, Mark, Place

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.ink import Ink
    from sallet.drawing.leaf.outline import Outline


def _on_edge(drawn: Outline, apart: float) -> list[tuple[complex, complex]]:
    """Return places along the edge with the direction outwards."""
    way = walk(drawn.path.points())
    count = int(way.length / apart)
    far = [number * way.length / count for number in range(1, count)]
    return [(way.at(at), way.heading(at) * -1j) for at in far]


def _hairs(apart: float, long: float) -> Callable[[Outline], Ink]:
    def drawn(edge: Outline) -> Ink:
        return tuple(
            Mark(straight(at, at + out * long + 1j * long * 0.35), "fine")
            for at, out in _on_edge(edge, apart)
        )

    return drawn


def _glands(edge: Outline) -> Ink:
    knob: Ink = (Mark(circle(0j, 1.6), "solid"),)
    return tuple(Copy(knob, Place(at + out * 1.8), "gland") for at, out in _on_edge(edge, 15))


def inner_line(share: float, *, dense: bool) -> Callable[[Outline], Ink]:
    """Return what draws a line inside the edge: a pale rim, or with bars a rolled or dark one.

    `share` is what the line leaves of the blade.
    """

    def drawn(edge: Outline) -> Ink:
        points = edge.path.points()
        centre = complex(0, (max(p.imag for p in points) + min(p.imag for p in points)) / 2)
        shrunk = [centre + (p - centre) * share for p in points]
        rim = straight(*shrunk[::2])
        if not dense:
            return (Mark(rim, "fine"),)
        bars = [straight(points[n], shrunk[n]) for n in range(2, len(points) - 1, 3)]
        return (Mark(rim, "fine"), *(Mark(bar, "fine") for bar in bars))

    return drawn


FRINGES: Final[Mapping[str, Callable[[Outline], Ink]]] = {
    "hairs": _hairs(6, 4.5),
    "silk": _hairs(4.5, 9),
    "glands": _glands,
    "pale": inner_line(0.93, dense=False),
    "under": inner_line(0.9, dense=True),
    "over": inner_line(0.84, dense=True),
}
"""What stands on an even edge, by the vocabulary's hints `fringe` and `edge`."""
