"""How cards lie on the printer's sheets: as many up as fit, backs behind their fronts.

Lengths are millimetres, from the sheet's left upper corner, y downwards.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import product
from math import ceil
from typing import TYPE_CHECKING, Final

from sallet.cards.sizes import BLEED, Size

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.course.printing import Duplex

MARK: Final = 3.0
"""The length of a crop mark."""
_ROUNDING: Final = 1e-6


@dataclass(frozen=True)
class Spot:
    """Where a card lies: its number in season order, its left upper corner."""

    card: int
    x: float
    y: float
    turned: bool = False
    """Whether it stands on its head, as the sheet is printed."""


@dataclass(frozen=True)
class Mark:
    """A line along which to cut, from a point so far across and down."""

    x: float
    y: float
    across: float
    down: float


@dataclass(frozen=True)
class Layout:
    """Cards in columns and rows in the middle of a sheet."""

    card: Size
    sheet: Size
    columns: int
    rows: int
    bleed: float
    """Millimetres round each card; 0 where neighbours share their cuts."""

    @property
    def up(self) -> int:
        """Return how many cards lie on a sheet."""
        return self.columns * self.rows

    @property
    def is_landscape(self) -> bool:
        """Whether the sheet lies on its side."""
        return self.sheet.width > self.sheet.height

    @property
    def lefts(self) -> tuple[float, ...]:
        """Return the left edges of the columns."""
        return _edges(self.sheet.width, self.card.width, self.columns, self.bleed)

    @property
    def tops(self) -> tuple[float, ...]:
        """Return the upper edges of the rows."""
        return _edges(self.sheet.height, self.card.height, self.rows, self.bleed)

    @property
    def corners(self) -> tuple[tuple[float, float], ...]:
        """Return the left upper corners, row by row."""
        return tuple((x, y) for y, x in product(self.tops, self.lefts))


def _edges(room: float, length: float, count: int, bleed: float) -> tuple[float, ...]:
    step = length + 2 * bleed
    first = (room - count * step) / 2 + bleed
    return tuple(first + number * step for number in range(count))


def layout_for(card: Size, paper: Size) -> Layout:
    """Return how most cards lie on a sheet; of two such ways, one with bleed and crop marks.

    The paper may lie on its side, the cards stand upright. Raises ValueError where not one fits.
    """
    found = [
        Layout(card, sheet, columns, rows, bleed)
        for bleed, sheet in product((BLEED, 0.0), (paper, paper.turned))
        if (columns := _many(sheet.width, card.width, bleed))
        and (rows := _many(sheet.height, card.height, bleed))
    ]
    if not found:
        raise ValueError(f"no card of {card} fits on a sheet of {paper}")
    return max(found, key=lambda layout: layout.up)  # of equals the first: with bleed, upright


def _many(room: float, length: float, bleed: float) -> int:
    # Beyond the bleed there must be room for the marks; shared cuts may use the whole sheet.
    marks = 2 * MARK if bleed else 0.0
    return int((room - marks + _ROUNDING) / (length + 2 * bleed))


def fronts(count: int, layout: Layout) -> Iterator[tuple[Spot, ...]]:
    """Yield the cards of each sheet's front.

    Cut sheets give a pile for each place. The piles, laid one below the other in the order of the
    places, are in season order: each place has a run of neighbouring cards.
    """
    sheets = ceil(count / layout.up)
    for sheet in range(sheets):
        spots = (Spot(place * sheets + sheet, x, y) for place, (x, y) in enumerate(layout.corners))
        yield tuple(spot for spot in spots if spot.card < count)


def behind(spots: tuple[Spot, ...], layout: Layout, duplex: Duplex) -> tuple[Spot, ...]:
    """Return the backs of a sheet's cards as they are printed on its other side.

    A sheet turned about its upright axis has left and right changed; one turned about the level
    axis has top and bottom changed, and every card on its head.
    """
    sheet, card = layout.sheet, layout.card
    if layout.is_landscape == (duplex == "short edge"):
        return tuple(Spot(s.card, sheet.width - s.x - card.width, s.y) for s in spots)
    return tuple(Spot(s.card, s.x, sheet.height - s.y - card.height, turned=True) for s in spots)


def crop_marks(layout: Layout) -> tuple[Mark, ...]:
    """Return the marks along every cut, outside the cards where the sheet has room, else inside."""
    uprights = _cuts(layout.lefts, layout.card.width)
    levels = _cuts(layout.tops, layout.card.height)
    across = [
        Mark(x, y, 0, MARK)
        for x in uprights
        for y in _ends(levels, layout.sheet.height, layout.bleed)
    ]
    down = [
        Mark(x, y, MARK, 0)
        for y in levels
        for x in _ends(uprights, layout.sheet.width, layout.bleed)
    ]
    return (*across, *down)


def _cuts(starts: tuple[float, ...], length: float) -> tuple[float, ...]:
    """Return where cuts lie; neighbours that share one have it once."""
    return tuple(sorted({round(edge, 4) for start in starts for edge in (start, start + length)}))


def _ends(cuts: tuple[float, ...], room: float, bleed: float) -> tuple[float, float]:
    """Return where the marks at either end of a cut begin."""
    before, behind_ = cuts[0] - bleed - MARK, cuts[-1] + bleed
    if before < 0 or behind_ + MARK > room:
        return max(cuts[0], 0.0), min(cuts[-1], room) - MARK
    return before, behind_
