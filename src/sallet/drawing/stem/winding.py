"""How a stem winds round another: up to the right or up to the left on the near side."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import smooth, straight
from sallet.drawing.ink import Copy, Curve, Mark, Path, Place
from sallet.drawing.sketch import Sketch
from sallet.drawing.told import characters

if TYPE_CHECKING:
    from sallet.drawing.ink import Ink
    from sallet.drawing.told import Shown, Told

WINDS: Final = {"right-handed": 1, "left-handed": -1}
"""By the states of `twining direction`: which way the near side rises, 1 to the upper right."""
_TURNS: Final = 4
_POINTS: Final = 7


@dataclass(frozen=True)
class WindingForm:
    """What is shown of a winding stem."""

    hand: Shown[int]


def stem_winding(told: Told, size: float) -> Sketch | None:
    """Return a stem round a support, `size` units high; None where its hand is not recorded."""
    hand = told.pick("twining direction", WINDS)
    if hand is None:
        return None
    form = WindingForm(hand)
    return Sketch("which way the stem winds", winding_ink(form, size), characters(form))


def winding_ink(form: WindingForm, size: float) -> Ink:
    """Return an upright support with a stem round it, its foot at the origin."""
    half, thick, rise = 0.06 * size, 0.026 * size, 0.2 * size
    coil = Coil(form.hand.value, half + 0.9 * thick, rise, -0.01 * size)
    edges = [
        Mark(straight(complex(x, 0), complex(x, size)), "fine", "support") for x in (-half, half)
    ]
    rod = straight(complex(-half, 0), complex(half, 0), complex(half, size), complex(-half, size))
    behind, before = coil.band(0.25, 0.75, thick), coil.band(-0.25, 0.25, thick)
    far = [Copy(behind, Place(1j * rise * turn), "far") for turn in range(_TURNS)]
    near = [Copy(before, Place(1j * rise * turn), "near") for turn in range(_TURNS + 1)]
    ends = [Mark(coil.end(share, thick), "fine") for share in (-0.25, _TURNS + 0.25)]
    return (*far, Mark(rod.shut(), "paper"), *edges, *near, *ends)


@dataclass(frozen=True)
class Coil:
    """The middle line of a stem round an upright support at x = 0."""

    hand: int
    """1: the near side rises to the right."""
    radius: float
    rise: float
    """How much it rises in one turn."""
    low: float

    def at(self, turns: float) -> complex:
        """Return where it is after some turns; whole turns lie on the near side."""
        return complex(
            self.hand * self.radius * math.sin(math.tau * turns),
            self.low + (turns + 0.25) * self.rise + 0.1 * self.rise,
        )

    def points(self, begin: float, end: float, aside: float = 0.0) -> list[complex]:
        """Return points from one turn to another, `aside` units to its left."""
        found = []
        for step in range(_POINTS + 1):
            turns = begin + (end - begin) * step / _POINTS
            way = self.at(turns + 0.01) - self.at(turns - 0.01)
            found.append(self.at(turns) + way / abs(way) * 1j * aside)
        return found

    def band(self, begin: float, end: float, thick: float) -> Ink:
        """Return a stretch of a round stem: it hides what is behind, its ends are open."""
        left, right = (
            smooth(self.points(begin, end, thick)),
            smooth(self.points(begin, end, -thick)),
        )
        return (
            Mark(left.then(right.reversed()).shut(), "paper"),
            Mark(left, "line"),
            Mark(right, "line"),
        )

    def end(self, turns: float, thick: float) -> Path:
        """Return the cut end of the stem."""
        a, b = (self.points(turns, turns, side * thick)[0] for side in (1, -1))
        return straight(a, b)


def loops(size: float, hand: int | None) -> Ink:
    """Return a stem round a rod at x = 0 as a line; where its hand is unknown, dotted and level."""
    half, rise = 0.058 * size, 0.19 * size
    if hand is None:
        return tuple(
            Mark(_sagging(half, (0.08 + 0.16 * number) * size), "dotted", "stem")
            for number in range(6)
        )
    coil = Coil(hand, half, rise, 0.0)
    ink: list[Mark] = [Mark(smooth([0j, *coil.points(-0.2, 0.25)]), "line", "stem")]
    for turn in range(1, 5):
        # The far side is hidden where the rod stands before it.
        for begin, end in ((turn - 0.75, turn - 0.58), (turn - 0.42, turn - 0.25)):
            ink.append(Mark(smooth(coil.points(begin, end)), "line"))
        ink.append(Mark(smooth(coil.points(turn - 0.25, turn + 0.25)), "line", "stem"))
    return tuple(ink)


def _sagging(half: float, y: float) -> Path:
    a, b = complex(-half, y), complex(half, y)
    return Path(a, (Curve(a - 0.5j * half, b - 0.5j * half, b),))
