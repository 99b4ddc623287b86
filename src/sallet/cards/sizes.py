"""The sizes of cards and sheets, in millimetres."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

if TYPE_CHECKING:
    from sallet.course.printing import CardName, PaperName


@dataclass(frozen=True)
class Size:
    """Width and height in millimetres, as the thing is held upright."""

    width: float
    height: float

    @property
    def turned(self) -> Size:
        """Return the same lying on its side."""
        return Size(self.height, self.width)


@dataclass(frozen=True)
class CardSize:
    """A card: its trimmed size, the margin that stays empty, and the least height of its picture."""

    trim: Size
    margin: float
    picture: float

    @property
    def text_width(self) -> float:
        """Return the width of the text."""
        return self.trim.width - 2 * self.margin

    @property
    def text_height(self) -> float:
        """Return the height of the text."""
        return self.trim.height - 2 * self.margin


CARD_SIZES: Final[dict[CardName, CardSize]] = {
    "A6": CardSize(Size(105, 148), 4, 28),
    "A7": CardSize(Size(74, 105), 3.5, 20),
    "4×6 in": CardSize(Size(101.6, 152.4), 4, 28),
    "3×5 in": CardSize(Size(76.2, 127), 3.5, 22),
}
"""A sizes by ISO 216, the others exact by the inch of 25.4 mm. Margins are common practice, 3–6 mm."""
PAPERS: Final[dict[PaperName, Size]] = {"A4": Size(210, 297), "Letter": Size(215.9, 279.4)}
"""A4 by ISO 216, Letter by ANSI/ASME Y14.1."""
COMFORTABLE: Final = 10.0
"""Points at which a card is set where there is room."""
FLOOR: Final = 7.0
"""The smallest points: the floor for labels in the European readability guideline for medicines (2009)."""
STEP: Final = 0.25
"""Points by which the text shrinks until it fits."""
BLEED: Final = 3.0
"""Millimetres printed beyond the trimmed edge: common practice of printers, 2–5 mm."""


def points() -> tuple[float, ...]:
    """Return the sizes of text that are tried, from comfortable down to the floor."""
    steps = round((COMFORTABLE - FLOOR) / STEP)
    return tuple(COMFORTABLE - STEP * step for step in range(steps + 1))
