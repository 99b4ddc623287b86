"""How far the rays of an umbel reach aside, and how long they can be beside its width."""

from __future__ import annotations

import math
from typing import Final

SIMPLE: Final = 0.41
"""How far the rays of an umbel of single flowers reach aside, about, in shares of its width."""
UNCOUNTED_RAYS: Final = 12
"""Rays that are drawn, dotted, where no number is recorded."""


def can_rise(ratio: float, rays: int | None) -> bool:
    """Return whether rays of some length beside the umbel's width can be drawn.

    `rays` is the number of rays of a compound umbel, None for an umbel of single flowers.
    """
    half = SIMPLE if rays is None else 0.5 - half_of_little(rays)
    return 1.05 < ratio / half < 2.2  # noqa: PLR2004 - neither flat on the ground nor a brush


def half_of_little(count: int) -> float:
    """Return half the width of a little umbel in shares of the whole."""
    return 0.5 * min(0.3, 0.95 / math.sqrt(count + 2))
