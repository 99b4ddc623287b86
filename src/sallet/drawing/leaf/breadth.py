"""How broad one half of an outline is, by height."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from itertools import pairwise
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from sallet.drawing.leaf.run import Run


class Breadth:
    """The right half of an outline: its ends, and how far it reaches from the midrib."""

    def __init__(self, points: Sequence[complex]) -> None:
        self.top = points[-1].imag
        """The height at which the half ends, on the midrib."""
        self.low = min(p.imag for p in points)
        self.wide = max(p.real for p in points)
        self._heights = sorted({p.imag for p in points})
        self._spans: list[list[tuple[complex, complex]]] = [[] for _ in self._heights]
        for a, b in pairwise(points):
            below, above = sorted((a.imag, b.imag))
            if above > below:
                first, last = (bisect_left(self._heights, h) for h in (below, above))
                for at in range(first, last):
                    self._spans[at].append((a, b))

    def at(self, height: float) -> float:
        """Return the distance of the outermost edge from the midrib; 0 beyond both ends."""
        if not self._heights[0] <= height <= self._heights[-1]:
            return 0.0
        index = max(0, bisect_right(self._heights, height) - 1)
        # At a corner two spans meet, and either may be the outer.
        spans = {*self._spans[index], *self._spans[max(0, index - 1)]}
        return max((_across(a, b, height) for a, b in spans), default=0.0)

    def rises_to(self, share: float) -> float:
        """Return the lowest height above the stalk's end with a share of the greatest width."""
        wanted = share * self.wide
        steps = (n / _STEPS * self.top for n in range(_STEPS))
        return next((y for y in steps if self.at(y) >= wanted), 0.0)


_STEPS = 100


def _across(a: complex, b: complex, height: float) -> float:
    low, high = sorted((a.imag, b.imag))
    if not low <= height <= high:
        return 0.0
    return a.real + (b.real - a.real) * (height - a.imag) / (b.imag - a.imag)


def breadth(runs: Iterable[Run]) -> Breadth:
    """Return the breadth of a half that is made of runs."""
    return Breadth([p for run in runs for p in run.points])
