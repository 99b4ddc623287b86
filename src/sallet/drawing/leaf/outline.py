"""The whole outline of a blade: both halves, lobes, teeth, set to its length and width."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Final

from sallet.drawing.ink import Curve, Path
from sallet.drawing.leaf.contour import Contour, body_top, half, widest
from sallet.drawing.leaf.finger_lobes import fingered
from sallet.drawing.leaf.lobes import Lobed, Lobing, feathered
from sallet.drawing.leaf.margin import Teeth, edge

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from sallet.drawing.ink import Piece
    from sallet.drawing.leaf.run import Run

LOBULES: Final = Teeth("rounded", 0.075, 0.5)
"""Lobes cut again: deep rounded teeth on every lobe."""

_OFF: Final = 0.15
"""Units that stay between the edge and the midrib."""
_OUTER: Final = 0.42
"""Where teeth begin on the side of a lobe, of its length."""
_NARROWINGS: Final = 8


@dataclass(frozen=True)
class Blank:
    """A blade's form in numbers, before it has a size."""

    contour: Contour
    ratio: float
    """Length divided by width."""
    teeth: Teeth | None = None
    lobing: Lobing | None = None


@dataclass(frozen=True)
class Outline:
    """A blade's edge."""

    path: Path
    """Closed, from the stalk's end up the right side over the tip and down the left."""
    bare: tuple[Run, ...]
    """The right half without teeth, before the blade is bent aside."""
    axes: tuple[tuple[complex, complex], ...]
    """The axes of its lobes."""
    tip: complex
    sway: Callable[[float], float]
    """How far the midrib stands aside, by height."""
    at_tip: int
    """How many pieces of the path lie before the tip."""

    @property
    def top(self) -> float:
        """Return the height of the tip above the stalk's end."""
        return self.tip.imag


def outline(blank: Blank, length: float) -> Outline:
    """Return the outline of a blade of some length in units, its stalk's end at 0."""
    width = length / blank.ratio
    right = half(blank.contour, length, width)
    left = right
    axes: tuple[tuple[complex, complex], ...] = ()
    lobed: Lobed | None = None
    if blank.lobing and blank.lobing.pattern == "feather":
        lobed = feathered(right, blank.lobing, length, body_top(blank.contour, length))
    elif blank.lobing:
        lobed = fingered(blank.lobing, length, blank.contour.base, blank.contour.tip.finger)
    teeth = blank.teeth
    if lobed:
        # Teeth stand on the outer part of lobes: in the notches they would meet.
        right, left, axes = lobed.right, lobed.left, lobed.axes
        teeth = replace(teeth, begin=max(teeth.begin, _OUTER)) if teeth else None
    lift = blank.contour.base.lift * length
    room = min(0.2 * width, lobed.room) if lobed else width / 2
    one = _side(right, teeth, length, room)
    other = _side(left, teeth, length, room)
    if lift:
        other = _lifted(other, lift, max(widest(blank.contour) * length, 3 * lift))
    path = one.then(other.mirrored().reversed()).shut()
    tip = one.end
    points = path.points()
    low = min(p.imag for p in points)
    up = length / (max(p.imag for p in points) - low)
    broad = max(p.real for p in points) - min(p.real for p in points)
    sway = _sway(blank.contour, low * up, length, width)
    across = width / broad

    def straight(p: complex) -> complex:
        return complex(p.real * across, p.imag * up)

    def fit(p: complex) -> complex:
        q = straight(p)
        return q + sway(q.imag)

    whole = path.mapped(fit)
    if sway(length + low * up):
        # Bent aside it is broader: narrowed until the whole is as broad as it shall be.
        for _ in range(_NARROWINGS):
            moved = [p.real for p in whole.points()]
            across += (width - max(moved) + min(moved)) / broad
            whole = path.mapped(fit)
    return Outline(
        path=whole,
        bare=tuple(replace(run, points=tuple(map(straight, run.points))) for run in right),
        axes=tuple((straight(a), straight(b)) for a, b in axes),
        tip=fit(tip),
        sway=sway,
        at_tip=len(one.pieces),
    )


def _sway(contour: Contour, low: float, length: float, width: float) -> Callable[[float], float]:
    """Return how far the blade is bent aside by height: sickles, and tips that hang over."""
    if contour.sides == "sickle":
        reach = min(0.2 * length, 0.8 * width)
        return lambda y: reach * ((y - low) / length) ** 2
    if contour.tip.end == "bend":
        reach = min(0.16 * length, 0.6 * width)
        begin = low + 0.72 * length
        return lambda y: reach * (max(0.0, y - begin) / (0.28 * length)) ** 2
    return lambda _: 0.0


def _side(runs: Sequence[Run], teeth: Teeth | None, length: float, room: float) -> Path:
    pieces: list[Piece] = []
    for run in runs:
        pieces += edge(run, teeth, length, room)
    return _clear(Path(0j, tuple(pieces)))


def _clear(side: Path) -> Path:
    """Return a half that keeps off the midrib but at its two ends: the halves cannot cross."""
    *inner, last = side.pieces

    def off(p: complex) -> complex:
        return complex(max(p.real, _OFF), p.imag)

    if isinstance(last, Curve):
        last = Curve(off(last.first), off(last.second), last.end)
    return Path(side.start, (*Path(0j, tuple(inner)).mapped(off).pieces, last))


def _lifted(side: Path, lift: float, until: float) -> Path:
    """Return a half whose base begins higher on the midrib."""

    def up(p: complex) -> complex:
        share = max(0.0, 1 - max(p.imag, 0.0) / until) if until else 0.0
        return p + 1j * lift * share * share

    return side.mapped(up)
