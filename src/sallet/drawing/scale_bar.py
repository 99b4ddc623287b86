"""The bar that says how long things are in life."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from sallet.drawing.told import millimetres

_LENGTHS: Final = tuple(step * 10**power for power in range(-2, 5) for step in (1, 2, 5))
"""Lengths of a bar, in millimetres."""
_LONGEST: Final = 62.0
"""Units that a bar takes at most."""


@dataclass(frozen=True)
class Bar:
    """A scale bar: its length in units of the drawing and what it stands for."""

    units: float
    words: str


def scale_bar(scale: float) -> Bar:
    """Return the bar for a drawing of `scale` units to a millimetre: 1, 2 or 5 of something."""
    fitting = [length for length in _LENGTHS if length * scale <= _LONGEST]
    length = fitting[-1] if fitting else _LENGTHS[0]
    words = f"{length // 10} cm" if 10 <= length < 1000 else millimetres(length)  # noqa: PLR2004
    return Bar(length * scale, words.replace(" ", "\u00a0"))
