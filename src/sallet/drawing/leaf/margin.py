"""The edge of a blade: teeth walked along a smooth run of the outline.

Each tooth takes an interval of the run; the intervals are narrower towards both ends, so that
the teeth die out there. A tooth is as high as its interval is broad, by the kind of tooth.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import NOTHING, fitted, walk
from sallet.drawing.ink import Curve, Line

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping, Sequence

    from sallet.drawing.curves import Walk
    from sallet.drawing.ink import Piece
    from sallet.drawing.leaf.run import Run


@dataclass(frozen=True, slots=True)
class Teeth:
    """How an edge is toothed."""

    kind: str
    """A key of KINDS."""
    spacing: float
    """From one tooth to the next, in lengths of the blade."""
    height: float
    """Of a tooth, in widths of its own interval."""
    begin: float = 0.0
    """Where on the run the teeth begin, of its length."""
    hollow: float = 1.0
    """How high they are in a hollow, of the height at which plain teeth would meet there."""


FLOOR: Final = 5.0
"""Teeth stand no closer, in units, or they would run together in print."""
_SMALL: Final = 0.12
"""Nor than so much of the length of a blade so small that the floor is no small thing."""
_MEET: Final = 0.16
"""How much of the way until they would meet teeth in a hollow reach."""
_SHORT: Final = 0.045
"""A piece of edge shorter than this, in lengths of the blade, has no teeth."""
_BARE_FOOT: Final = 0.04
_BARE_TIP: Final = 0.045
"""Of a run: the blade's own tip stays a tip, not two teeth side by side."""

MARGINS: Final[Mapping[str, Teeth | None]] = {
    "entire": None,
    "toothed": Teeth("forward", 0.07, 0.32),
    "serrate": Teeth("forward", 0.065, 0.34),
    "finely serrate": Teeth("forward", 0.036, 0.3),
    "coarsely serrate": Teeth("forward", 0.115, 0.46),
    "doubly serrate": Teeth("double", 0.13, 0.34, hollow=0.5),
    "dentate": Teeth("outward", 0.075, 0.42),
    "coarsely dentate": Teeth("outward", 0.125, 0.5),
    "crenate": Teeth("rounded", 0.085, 0.36),
    "faintly scalloped": Teeth("rounded", 0.1, 0.15),
    "wavy": Teeth("wave", 0.12, 0.15),
    "wavy-toothed": Teeth("bays", 0.15, 0.22),
    "crisped": Teeth("wave", 0.07, 0.36),
    "spiny": Teeth("spine", 0.13, 0.62),
    "torn": Teeth("uneven", 0.075, 0.5),
    "toothed near the tip only": Teeth("forward", 0.07, 0.36, begin=0.62),
    "toothed except at the base": Teeth("forward", 0.07, 0.34, begin=0.34),
}
"""The margins by the states of the label `margin`; None has no teeth."""
_UNEVEN: Final = (1.0, 0.45, 0.8, 0.25, 0.9, 0.6, 0.35)


@dataclass(frozen=True, slots=True)
class _Place:
    """The interval of one tooth."""

    begin: complex
    end: complex
    ahead: complex
    """The direction of the run, of length one."""
    out: complex
    """The direction away from the blade, of length one."""
    high: float
    number: int
    bend: complex
    """From the middle of the straight line between the ends to the run."""
    outs: tuple[complex, complex]
    """The directions away from the blade at both ends: neighbours share them."""
    lean: float
    """How far forward tips lean, 1 at a straight edge: in a hollow less, to keep off the next."""


def edge(run: Run, teeth: Teeth | None, length: float, room: float) -> list[Piece]:
    """Return a run as pieces of a path behind its first point.

    `length` is that of the blade, `room` half its width, both in units. Out is to the right of
    the way the run goes.
    """
    points = list(run.points)
    if teeth is None or not run.toothed:
        return list(fitted(points).pieces)
    if not run.forward:
        return _backwards(edge_pieces(points[::-1], teeth, length, room, -1), points[-1])
    return edge_pieces(points, teeth, length, room, 1)


def edge_pieces(
    points: Sequence[complex], teeth: Teeth, length: float, room: float, side: int
) -> list[Piece]:
    """Return the pieces of a run towards a tip; out is right for side 1 and left for -1."""
    way = walk(points)
    if way.length < _SHORT * length:
        return list(fitted(points).pieces)
    floor = min(FLOOR, _SMALL * length)
    spacing = max(teeth.spacing * length, floor)
    # Teeth on a narrow blade are smaller, or they would meet in its middle.
    spacing = max(min(spacing, 1.1 * room / max(teeth.height, 0.2)), 0.8 * floor)
    bare = max(teeth.begin, _BARE_FOOT) * way.length
    until = way.length - min(max(_BARE_TIP * way.length, 0.45 * spacing), 0.12 * way.length)
    count = max(2, round((until - bare) / spacing))
    ends = [bare + (until - bare) * far for far in _ends(count)]
    pieces: list[Piece] = [*fitted(way.between(0, bare)).pieces]
    for number, (low, high) in enumerate(pairwise(ends)):
        pieces += KINDS[teeth.kind](_place(way, low, high, number, (teeth, room, side)))
    return [*pieces, *fitted(way.between(until, way.length)).pieces]


def _place(
    way: Walk, low: float, high: float, number: int, size: tuple[Teeth, float, int]
) -> _Place:
    teeth, room, side = size
    a, b = way.at(low), way.at(high)
    wide = abs(b - a)
    ahead = (b - a) / wide if wide > NOTHING else way.heading(low)
    near = high - low
    outs = [_heading(way, far, near) * -1j * side for far in (low, high)]
    # In a hollow the teeth lean together: they are lower there, or they would meet.
    closing = ((outs[0] - outs[1]) * ahead.conjugate()).real
    meet = teeth.hollow * _MEET * wide / closing if closing > NOTHING else room
    most = min(0.5 * room, meet)
    return _Place(
        a, b, ahead, ahead * -1j * side, min(teeth.height * wide, most), number,
        way.at((low + high) / 2) - (a + b) / 2, (outs[0], outs[1]),
        max(0.3, 1 - 0.6 * max(0.0, closing)),
    )  # fmt: skip


def _heading(way: Walk, far: float, near: float) -> complex:
    step = way.at(min(far + near, way.length)) - way.at(max(far - near, 0.0))
    return step / abs(step) if abs(step) > NOTHING else way.heading(far)


def _ends(count: int) -> list[float]:
    widths = [
        0.42 + 0.58 * math.sin(math.pi * (number + 0.5) / count) ** 0.6 for number in range(count)
    ]
    whole, ends = sum(widths), [0.0]
    for width in widths:
        ends.append(ends[-1] + width / whole)
    return ends


def _backwards(pieces: Sequence[Piece], start: complex) -> list[Piece]:
    """Return pieces that ran from `start`, the other way round."""
    ends = [start, *(piece.end for piece in pieces)]
    turned: list[Piece] = []
    for at in range(len(pieces) - 1, -1, -1):
        piece = pieces[at]
        turned.append(
            Line(ends[at]) if isinstance(piece, Line)
            else Curve(piece.second, piece.first, ends[at])
        )  # fmt: skip
    return turned


# ---- the kinds of teeth -------------------------------------------------------------------------


def _forward(at: _Place) -> list[Piece]:
    wide = abs(at.end - at.begin)
    tip = at.begin + at.ahead * wide * 0.92 * at.lean + at.out * at.high
    return _saw(at.begin, tip, at.end, at)


def _saw(begin: complex, tip: complex, end: complex, at: _Place) -> list[Piece]:
    step = tip - begin
    return [
        Curve(
            begin + 0.3 * step + 0.22 * at.high * at.out,
            begin + 0.72 * step + 0.2 * at.high * at.out,
            tip,
        ),
        Curve(tip + 0.3 * (end - tip) - 0.06 * at.high * at.ahead, end - 0.25 * (end - tip), end),
    ]


def _double(at: _Place) -> list[Piece]:
    wide, pieces, begin = abs(at.end - at.begin), [], at.begin
    for tip_at, end_at, height in ((0.3, 0.34, 0.5), (0.64, 0.68, 0.84), (0.96, 1.0, 1.12)):
        tip = at.begin + at.ahead * wide * tip_at * at.lean + at.out * at.high * height
        # The valleys climb with the large tooth; the last falls back to the outline.
        rise = 0.0 if end_at == 1.0 else height * 0.52
        end = (
            at.begin
            + at.ahead * wide * (end_at * at.lean if rise else 1.0)
            + at.out * at.high * rise
        )
        pieces += _saw(begin, tip, end, replace(at, high=at.high * 0.5))
        begin = end
    return pieces


def _outward(at: _Place) -> list[Piece]:
    tip = (at.begin + at.end) / 2 + at.bend + at.out * at.high
    return [Line(tip), Line(at.end)]


def _rounded(at: _Place) -> list[Piece]:
    high = 1.4 * at.high
    return [Curve(at.begin + at.outs[0] * high, at.end + at.outs[1] * high, at.end)]


def _wave(at: _Place) -> list[Piece]:
    step = at.end - at.begin
    rise = at.out * at.high * (1 if at.number % 2 == 0 else -0.55)
    return [
        Curve(
            at.begin + 0.36 * step + 1.33 * rise + at.bend,
            at.end - 0.36 * step + 1.33 * rise + at.bend,
            at.end,
        )
    ]


def _bays(at: _Place) -> list[Piece]:
    # Rounded bays between shallow points: the point is the end of the interval.
    step = at.end - at.begin
    size = _UNEVEN[at.number % len(_UNEVEN)] * 0.5 + 0.5
    rise = at.out * at.high * size
    tip = at.begin + 0.5 * step + rise
    return [
        Curve(at.begin + 0.28 * step, tip - 0.16 * step - 0.1 * rise, tip),
        Curve(tip + 0.16 * step - 0.1 * rise, at.end - 0.28 * step, at.end),
    ]


def _spine(at: _Place) -> list[Piece]:
    step = at.end - at.begin
    tip = at.begin + 0.55 * step + at.out * at.high
    return [
        Curve(at.begin + 0.34 * step, tip - 0.55 * at.out * at.high - 0.03 * step, tip),
        Curve(tip - 0.55 * at.out * at.high + 0.05 * step, at.end - 0.3 * step, at.end),
    ]


def _torn(at: _Place) -> list[Piece]:
    size = _UNEVEN[at.number % len(_UNEVEN)]
    step = at.end - at.begin
    lean = 0.35 + 0.3 * _UNEVEN[(at.number + 3) % len(_UNEVEN)]
    return [Line(at.begin + lean * step + at.out * at.high * size), Line(at.end)]


KINDS: Final[Mapping[str, Callable[[_Place], list[Piece]]]] = {
    "forward": _forward,
    "double": _double,
    "outward": _outward,
    "rounded": _rounded,
    "wave": _wave,
    "bays": _bays,
    "spine": _spine,
    "uneven": _torn,
}
"""Each kind of tooth, from the begin of its interval to its end."""
