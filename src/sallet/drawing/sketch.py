"""One organ drawn: its ink, what it shows, how large it is in life."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING

from sallet.drawing.ink import Box, box

if TYPE_CHECKING:
    from sallet.drawing.ink import Ink
    from sallet.drawing.told import Character


@dataclass(frozen=True)
class Sketch:
    """A drawing of one organ, in the place it has on the plant: its foot near the origin."""

    title: str
    """What it is, without the plant: `lower leaf`, `flower from above`."""
    ink: Ink
    shows: tuple[Character, ...]
    """Exactly the characters that the ink shows."""
    scale: float | None = None
    """Units of the drawing to a millimetre of the plant; None where no length is recorded."""
    wants: tuple[str, ...] = ()
    """Labels that, once recorded, would let more be drawn."""

    @cached_property
    def box(self) -> Box:
        """Return the room it takes."""
        return box(self.ink)
