"""Lobes cut into a simple outline, in two rows along the midrib."""

from __future__ import annotations

from dataclasses import dataclass, replace
from itertools import pairwise
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import NOTHING, bezier
from sallet.drawing.leaf.breadth import breadth
from sallet.drawing.leaf.run import Run

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from sallet.drawing.leaf.breadth import Breadth


@dataclass(frozen=True, slots=True)
class Lobing:
    """How a blade is lobed."""

    pattern: str
    """feather or palm."""
    number: int
    """Of all lobes, the end lobe included."""
    depth: float
    """From the edge to the midrib or the stalk, 0 to 1."""
    tips: str = ""
    """round or pointed where the word says so; otherwise lobes are blunt."""
    aim: str = ""
    """back, where the lobes look to the base."""
    end: str = ""
    """large, where the end lobe is much the largest."""
    slim: bool = False
    """Narrow lobes side by side."""
    twice: bool = False
    """Whether the lobes are lobed again."""


@dataclass(frozen=True, slots=True)
class Lobed:
    """A lobed outline, both halves from the stalk's end to the tip, and the axis of each lobe."""

    right: tuple[Run, ...]
    left: tuple[Run, ...]
    """As the right half, mirrored to the right."""
    axes: tuple[tuple[complex, complex], ...]
    """From where a lobe's vein begins to its tip; those of the left half are mirrored back."""
    room: float
    """How much room there is for teeth between two lobes, in units."""


_SOFT: Final[Mapping[str, float]] = {"round": 0.3, "": 0.16, "pointed": 0.0}
"""How far from its tip the end of a lobe is rounded, of its width."""


@dataclass(frozen=True, slots=True)
class _Rows:
    """Where the lobes of one half stand."""

    first: float
    """The height of the lowest notch, or of the foot of the lowest lobe."""
    last: float
    """The height of the notch below the end lobe."""
    number: int
    """Of lobes on this side."""
    shares: tuple[float, ...]
    """How much of the breadth of the simple outline each lobe has."""
    end: float
    """The height at which the end lobe's body ends."""
    eared: bool
    """Whether the base has lobes of its own: the lowest lobe then takes them in."""

    @property
    def pitch(self) -> float:
        """Return the height of one lobe."""
        return (self.last - self.first) / self.number if self.number else 0.0


def feathered(runs: Sequence[Run], lobing: Lobing, length: float, body: float) -> Lobed:
    """Return a simple half blade cut into lobes; `body` is where a point set on its tip begins."""
    simple = breadth(runs)
    right = (lobing.number - 1) // 2
    left = lobing.number - 1 - right
    one, axes = _half(runs, simple, lobing, _rows(simple, lobing, right, length, body))
    other, axes_left = one, axes
    if left != right:
        other, axes_left = _half(runs, simple, lobing, _rows(simple, lobing, left, length, body))
    mirrored = [(-a.conjugate(), -b.conjugate()) for a, b in axes_left]
    longest = max((*axes, *axes_left), key=lambda axis: axis[0].imag, default=(0j, 0j))
    pitch = body / max(2, lobing.number // 2 + 1)
    # Shallow notches and the small lobes of a lyre have less room.
    room = _ROOM * pitch * min(1.0, 1.5 * lobing.depth) * (0.35 if lobing.end else 1.0)
    end = (longest[0], complex(0, simple.top))
    return Lobed(one, other, (*axes, *mirrored, end), room)


def _rows(simple: Breadth, lobing: Lobing, number: int, length: float, body: float) -> _Rows:
    end = min(body, simple.top)
    large = lobing.end == "large"
    eared = simple.low < 0
    opens = 0.0 if eared else simple.rises_to(0.16 if large else 0.24)
    first = min(max(0.05 * length, opens), 0.4 * end)
    last = end * (0.55 if large else 1 - 0.9 / (number + 1.4))
    shares = tuple(0.22 + 0.28 * (n + 1) / number if large else 1.0 for n in range(number))
    return _Rows(first, last, number, shares, end, eared)


def _half(
    runs: Sequence[Run], simple: Breadth, lobing: Lobing, rows: _Rows
) -> tuple[tuple[Run, ...], list[tuple[complex, complex]]]:
    lobed: list[Run] = []
    axes: list[tuple[complex, complex]] = []
    pitch = rows.pitch
    before = simple.at(rows.first) if rows.eared else 0.0
    for number, share in enumerate(rows.shares):
        low = rows.first + number * pitch
        middle, high = low + pitch / 2, low + pitch
        reach = simple.at(min(max(middle + 0.15 * pitch, low), 0.98 * rows.end)) * share
        upper = complex(_notch(simple, high, share * (1 - lobing.depth), rows), high)
        tip = complex(reach, middle + _lean(lobing, reach, before) * pitch)
        before = reach
        if number == 0 and rows.eared:
            lobed += _eared_lobe(runs, upper, lobing, pitch)
        else:
            if number == 0:
                lobed += _below(runs, low, _drawn_in(lobing))
            lower = lobed[-1].points[-1]
            tip = complex(max(tip.real, 1.1 * lower.real, 1.1 * upper.real), tip.imag)
            lobed += _lobe((lower, tip, upper), lobing, pitch)
        axes.append(
            (complex(0, middle - 0.28 * pitch), complex(tip.real * 0.9, tip.imag - 0.02 * pitch))
        )
    if not rows.number:
        lobed += _below(runs, 0.7 * rows.last)
        edge = lobed[-1].points[-1]
        notch = complex(_notch(simple, rows.last, 1 - lobing.depth, rows), rows.last)
        rise = 0.5j * (notch.imag - edge.imag)
        lobed.append(Run(tuple(_rising(edge, edge + rise, notch, notch)), toothed=False))
    lobed += _end_lobe(lobed[-1].points[-1], runs, simple, lobing, rows)
    return tuple(lobed), axes


_OUTSTANDING: Final = 0.8
_SLACK: Final = 0.04
"""How far handles stay from the heights of the ends, of the way between them."""
_ROOM: Final = 0.15
"""Room for teeth between two lobes, in heights of a lobe."""
_RIB: Final = 0.02
"""What is left of the blade beside the midrib in the deepest notch, in lengths of the blade."""


def _lean(lobing: Lobing, reach: float, before: float) -> float:
    """Return how far a lobe's tip stands above its middle, in heights of a lobe."""
    if lobing.aim != "back":
        return 0.26
    # A lobe looks back past the notch below it only where it stands out beyond the lobe below.
    return -0.75 if reach > _OUTSTANDING * before else -0.42


def _drawn_in(lobing: Lobing) -> float:
    """Return the breadth of the foot below the lowest lobe, of that of the simple outline."""
    if lobing.end:
        return 0.3
    return 1 - lobing.depth if lobing.aim else 1.0


def _notch(simple: Breadth, height: float, share: float, rows: _Rows) -> float:
    """Return how far a notch stays off the midrib."""
    broad = simple.at(height)
    return max(min(_RIB * rows.end, 0.4 * broad), broad * share)


def _below(runs: Sequence[Run], height: float, narrowed: float = 1.0) -> list[Run]:
    """Return the simple outline from the stalk's end until it rises past a height, drawn in."""
    kept: list[Run] = []
    for run in runs:
        points: list[complex] = []
        for a, b in pairwise(run.points):
            points.append(a)
            if a.imag <= height < b.imag:
                points.append(a + (b - a) * ((height - a.imag) / (b.imag - a.imag)))
                drawn_in = tuple(complex(p.real * narrowed, p.imag) for p in points)
                return [*kept, replace(run, points=drawn_in, toothed=False)]
        kept.append(run)
    return kept


def _above(runs: Sequence[Run], height: float) -> list[Run]:
    """Return the simple outline from where it last rises past a height to its end."""
    kept: list[Run] = []
    for run in reversed(runs):
        for at in range(len(run.points) - 2, -1, -1):
            a, b = run.points[at], run.points[at + 1]
            if a.imag <= height < b.imag:
                begin = a + (b - a) * ((height - a.imag) / (b.imag - a.imag))
                return [replace(run, points=(begin, *run.points[at + 1 :])), *kept]
        kept.insert(0, run)
    return kept


def _eared_lobe(runs: Sequence[Run], upper: complex, lobing: Lobing, pitch: float) -> list[Run]:
    """Return the lowest lobe of a blade with lobes at its base: they are its lower edge."""
    below = _below(runs, upper.imag - 0.45 * pitch)
    edge = below[-1].points
    inward = edge[-1].real - upper.real
    back = _rising(
        edge[-1],
        edge[-1] + complex(-0.2 * inward, 0.12 * pitch),
        upper + complex(0.2 * inward, -0.2 * pitch),
        upper,
    )
    toothed = lobing.aim != "back"
    return [
        *below[:-1], Run(edge, toothed=toothed), Run(tuple(back), forward=False, toothed=toothed),
    ]  # fmt: skip


def _lobe(spots: tuple[complex, complex, complex], lobing: Lobing, pitch: float) -> list[Run]:
    """Return one lobe, from the notch below it over its tip to the notch above."""
    lower, tip, upper = spots
    if lobing.aim == "back":
        return _barb(lower, tip, upper, pitch)
    gap = (0.3 if lobing.slim else 0.1) * pitch
    out = tip - (lower + upper) / 2
    # A lobe far broader than long still ends sideways, and is rounded by its length.
    sideways = complex(max(out.real, abs(out.imag)), out.imag)
    side = sideways / abs(sideways) if abs(sideways) else 1 + 0j
    stands = tip.real - max(lower.real, upper.real)
    wide = min(abs(upper - lower), 1.8 * abs(sideways), 3 * stands)
    soft = _SOFT[lobing.tips] * wide
    across = side * 1j
    shoulder = 0.5 * (0.6 if lobing.slim else 0.7) * wide
    low = _rising(
        lower,
        lower + 0.1 * out + complex(0, gap),
        tip - 0.42 * out - across * shoulder,
        tip - soft * 0.5 * side - across * soft,
    )
    high = _rising(
        tip - soft * 0.5 * side + across * soft,
        tip - 0.42 * out + 0.8 * across * shoulder,
        upper + 0.1 * out - complex(0, gap),
        upper,
    )
    if not soft:
        return [Run(tuple(low)), Run(tuple(high), forward=False)]
    cap = _rising(
        low[-1],
        low[-1] + 0.55 * (tip - low[-1]) + 0.2 * soft * side,
        high[0] + 0.55 * (tip - high[0]) + 0.2 * soft * side,
        high[0],
        6,
    )
    return [Run((*low, *cap[1:4])), Run((*cap[3:], *high[1:]), forward=False)]


def _rising(a: complex, b: complex, c: complex, d: complex, steps: int = 10) -> list[complex]:
    """Return a curve that nowhere falls back: lobes one above the other cannot cross."""
    slack = _SLACK * abs(d.imag - a.imag)
    low, high = min(a.imag, d.imag) + slack, max(a.imag, d.imag) - slack
    first, second = sorted(min(max(p.imag, low), high) for p in (b, c))
    least = 0.7 * min(a.real, d.real)
    return bezier(
        a, complex(max(b.real, least), first), complex(max(c.real, least), second), d, steps
    )


def _barb(lower: complex, tip: complex, upper: complex, pitch: float) -> list[Run]:
    """Return a lobe that looks back: a short hollow lower edge, a long bulging upper edge."""
    reach = tip.real - lower.real
    low = bezier(lower, lower + complex(0.3 * reach, 0.12 * pitch),
                 tip + complex(-0.35 * reach, 0.22 * pitch), tip)  # fmt: skip
    high = bezier(tip, tip + complex(-0.02 * tip.real, 0.4 * pitch),
                  upper + complex(0.14 * (tip.real - upper.real), -0.3 * pitch), upper)  # fmt: skip
    return [Run(tuple(low), toothed=False), Run(tuple(high), forward=False)]


def _end_lobe(
    foot: complex, runs: Sequence[Run], simple: Breadth, lobing: Lobing, rows: _Rows
) -> list[Run]:
    """Return the end of the simple outline, drawn in to the notch below it."""
    high = rows.end - foot.imag
    at = foot.imag + (0.42 if lobing.end == "large" else 0.3) * high
    scale = max(0.9, 1.2 * foot.real / max(simple.at(at), NOTHING))
    rest = [
        replace(run, points=tuple(complex(p.real * scale, p.imag) for p in run.points))
        for run in _above(runs, at)
    ]
    broad = rest[0].points[0]
    spread = broad.real - foot.real
    # It meets the outline in the outline's own direction.
    ahead = rest[0].points[1] - broad
    handle = broad - ahead / abs(ahead) * 0.2 * high
    away = complex(0.5 * spread, 0.1 * high) if lobing.end else complex(0.35 * spread, 0.06 * high)
    low = _rising(foot, foot + away, handle, broad, 8)
    return [replace(rest[0], points=(*low, *rest[0].points[1:]), toothed=True), *rest[1:]]
