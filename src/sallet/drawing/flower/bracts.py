"""The cup of scales under a head, seen from the side."""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import smooth, straight
from sallet.drawing.ink import Curve, Mark, Path

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from sallet.drawing.ink import Ink

WALL: Final = ((0.06, 0.0), (0.2, 0.1), (0.29, 0.26), (0.31, 0.42), (0.31, 0.56))
"""Heights and radii of a plain cup, beside the width it is drawn for."""
SWOLLEN: Final = ((0.06, 0.0), (0.26, 0.08), (0.35, 0.24), (0.33, 0.4), (0.27, 0.56))
"""Those of the cup of a thistle."""
ROWS: Final[Mapping[str, int]] = {"one": 1, "several": 4}
ACROSS: Final = 7
"""How many scales of one row are seen from one side."""


@dataclass(frozen=True)
class Cup:
    """The outline of a cup, in units."""

    wall: tuple[tuple[float, float], ...]
    width: float

    @property
    def top(self) -> float:
        """Return its height."""
        return self.wall[-1][1]

    def radius(self, height: float) -> float:
        """Return its radius at a height."""
        for (r1, z1), (r2, z2) in pairwise(self.wall):
            if z1 <= height <= z2:
                return r1 + (r2 - r1) * (height - z1) / (z2 - z1)
        return self.wall[-1][0]

    def at(self, turn: float, height: float, off: float = 0.0) -> complex:
        """Return a point of its side; `turn` from -1 (left) to 1 (right)."""
        angle = max(-1.0, min(1.0, turn)) * math.pi / 2
        return complex((self.radius(height) + off) * math.sin(angle), height)

    @property
    def outline(self) -> Path:
        """Return its two sides and its foot, open at the top."""
        left = [complex(-r, z) for r, z in self.wall]
        return smooth([*reversed(left), *(complex(r, z) for r, z in self.wall)])


def cup_ink(names: Sequence[str], width: float, *, swollen: bool = False) -> Ink:
    """Return a cup of scales with its foot at the origin, after the recorded states."""
    wall = SWOLLEN if swollen else WALL
    cup = Cup(tuple((r * width, z * width) for r, z in wall), width)
    rows = next((ROWS[name] for name in names if name in ROWS), 3 if swollen else 1)
    known = any(name in ROWS for name in names)
    ink = [Mark(cup.outline.shut(), "paper"), Mark(cup.outline, "line" if names else "dotted")]
    gap = 0.0 if "close" in names else 0.045 * width
    tips: list[tuple[complex, float]] = []
    for row in range(rows):
        path, points = _row(cup, row, rows, gap)
        ink.append(Mark(path, "thin" if known else "dotted", "bracts"))
        tips += points
    if "dark" in names:
        ink += [_cap(cup, tip, turn) for tip, turn in tips]
    if "spiny" in names:
        ink += [_spine(cup, tip, turn) for tip, turn in tips]
    if "cotton" in names:
        ink += _threads(cup)
    if "few" in names:
        ink += _short(cup)
    if "down" in names:
        ink += _bent(cup)
    return tuple(ink)


def _row(cup: Cup, row: int, rows: int, gap: float) -> tuple[Path, list[tuple[complex, float]]]:
    """Return one row of scales like tiles, and their tips; the feet stand on the tips below."""
    step = 2 / ACROSS
    high = cup.top * (row + 1) / rows
    low = cup.top * row / rows + (0.0 if row else 0.02 * cup.top)
    shift = step / 2 if row % 2 else 0.0
    turns = [-1 + shift + step * k for k in range(ACROSS + (0 if row % 2 else 1))]
    pieces: list[Curve] = []
    tips: list[tuple[complex, float]] = []
    for left, right in pairwise(turns):
        middle = (left + right) / 2
        tip = cup.at(middle, high, gap * abs(middle))
        belly = low + (high - low) * 0.62
        foot = cup.at(right, low)
        pieces += [
            Curve(cup.at(left, low + (high - low) * 0.3), cup.at(left, belly), tip),
            Curve(cup.at(right, belly), cup.at(right, low + (high - low) * 0.3), foot),
        ]
        tips.append((tip, middle))
    return Path(cup.at(turns[0], low), tuple(pieces)), tips


def _cap(cup: Cup, tip: complex, turn: float) -> Mark:
    deep = 0.06 * cup.width
    left, right = cup.at(turn - 0.09, tip.imag - deep), cup.at(turn + 0.09, tip.imag - deep)
    return Mark(straight(left, tip, right, closed=True), "solid")


def _spine(cup: Cup, tip: complex, turn: float) -> Mark:
    way = complex(1.3 * turn, 0.6)
    return Mark(straight(tip, tip + way / abs(way) * cup.width * 0.085), "line")


def _short(cup: Cup) -> list[Mark]:
    marks = []
    for turn in (-0.62, 0.0, 0.62):
        tip = cup.at(turn, 0.32 * cup.top, 0.06 * cup.width * abs(turn))
        left, right = cup.at(turn - 0.2, 0.02 * cup.top), cup.at(turn + 0.2, 0.02 * cup.top)
        rise = 0.16j * cup.top
        path = Path(
            left,
            (Curve(left + rise, tip - rise / 2, tip), Curve(tip - rise / 2, right + rise, right)),
        )
        marks.append(Mark(path.shut(), part="bract"))
    return marks


def _bent(cup: Cup) -> list[Mark]:
    """Return the outer scales, which arch out from the foot of the cup and hang down."""
    marks, width = [], cup.width
    for side in (-1.0, 1.0, -0.55, 0.55, 0.0):
        start = complex(side * cup.wall[0][0] * 1.6, cup.wall[1][1] * 0.5)
        end = complex(side * width * 0.34, -width * (0.34 - 0.1 * abs(side)))
        drop = 0.14j * width
        out = complex(side * width * 0.21, abs(side) * width * 0.04)
        # The outer edge runs above the inner one, and then beside it.
        foot = 0.032j * width if side else complex(0.045 * width, 0)
        hang = complex(math.copysign(0.045 * width, side), 0)
        path = Path(
            start + foot,
            (
                Curve(start + foot + out, end + hang + drop, end),
                Curve(end - hang + drop, start - foot + out, start - foot),
            ),
            closed=True,
        )
        marks.append(Mark(path, part="bract"))
    return marks


def _threads(cup: Cup) -> list[Mark]:
    marks = []
    for k in range(9):
        low, high = cup.top * (0.08 + 0.09 * k), cup.top * (0.12 + 0.09 * ((k * 4) % 9))
        left, right = cup.at(-1, low, 0.02 * cup.width), cup.at(1, high, 0.02 * cup.width)
        sag = (right - left) / 3
        bow = 0.1j * cup.top * (1 if k % 2 else -1)
        marks.append(Mark(Path(left, (Curve(left + sag + bow, right - sag + bow, right),)), "fine"))
    return marks
