"""The piece of stem that carries a leaf, leaning, cut off at both ends."""

from __future__ import annotations

import cmath
import math
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import straight
from sallet.drawing.ink import Mark

if TYPE_CHECKING:
    from sallet.drawing.ink import Ink

LEAN: Final = cmath.rect(1, math.radians(122))
"""The way up the stem that carries an upright leaf."""


def stem_piece(at: complex, length: float, share: float = 0.26) -> Ink:
    """Return a piece of stem through a point, leaning, cut off at both ends."""
    half, reach = 0.03 * length, share * length
    side = LEAN * 1j * half
    low, high = at - LEAN * reach, at + LEAN * reach
    return (
        Mark(straight(low - side, high - side, high + side, low + side, closed=True), "paper"),
        Mark(straight(low - side, high - side)),
        Mark(straight(low + side, high + side)),
    )
