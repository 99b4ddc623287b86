"""A printed sheet in the hand: where a needle comes out, and what a card covers."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

if TYPE_CHECKING:
    from sallet.cards.sizes import Size
    from sallet.course.printing import Duplex


class Turn(NamedTuple):
    """A sheet on the table, turned over about one of its middle lines until its back shows.

    A printer prints the back so that it reads upright once the sheet is turned over the edge
    chosen: a point of the back as printed is a point of what one then sees.
    """

    sheet: Size
    duplex: Duplex

    @property
    def about_upright_axis(self) -> bool:
        """Whether the edge over which it turns stands upright."""
        long_is_upright = self.sheet.height > self.sheet.width
        return long_is_upright == (self.duplex == "long edge")

    def __call__(self, x: float, y: float) -> tuple[float, float]:
        """Return where on the back a needle comes out that is stuck through the front."""
        if self.about_upright_axis:
            return self.sheet.width - x, y
        return x, self.sheet.height - y


class Rectangle(NamedTuple):
    """Part of a page, in millimetres from its left upper corner."""

    left: float
    top: float
    right: float
    bottom: float

    def inside(self, by: float) -> Rectangle:
        """Return what is left of it so many millimetres further in."""
        return Rectangle(self.left + by, self.top + by, self.right - by, self.bottom - by)

    def behind(self, turn: Turn) -> Rectangle:
        """Return what lies behind it on the other side of the sheet."""
        one, other = turn(self.left, self.top), turn(self.right, self.bottom)
        (left, right), (top, bottom) = (sorted(pair) for pair in zip(one, other, strict=True))
        return Rectangle(left, top, right, bottom)
