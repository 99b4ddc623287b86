"""The plate of a plant: its figures arranged as on a herbarium sheet, each with its letter."""

from __future__ import annotations

from dataclasses import dataclass
from string import ascii_lowercase
from typing import TYPE_CHECKING, Final

from sallet.drawing.scale_bar import Bar, scale_bar

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from sallet.drawing.figures import Figure

GAP: Final = 26.0
"""Between figures, in units."""
_LETTER: Final = 14.0
_GLYPH: Final = 7.0
"""Units that a letter, and one of a bar's words, takes across."""
FOOT: Final = 30.0
"""Below a figure, for its letter and its scale bar."""


@dataclass(frozen=True)
class Cell:
    """A figure in its place: add `at` to every point of its ink. y upwards, the sheet's top at 0."""

    figure: Figure
    letter: str
    at: complex
    bar: Bar | None

    @property
    def letter_at(self) -> complex:
        """Return the middle of the letter's foot: letter and bar stand in the middle together."""
        return self.foot - complex(_beside(self.bar) / 2, 20)

    @property
    def bar_at(self) -> complex:
        """Return the left end of the bar."""
        return self.letter_at + complex(_LETTER, 8)

    @property
    def foot(self) -> complex:
        """Return the middle of the space below the figure."""
        room = self.figure.sketch.box
        return self.at + complex((room.left + room.right) / 2, room.bottom)


@dataclass(frozen=True)
class Plate:
    """A sheet of figures, in units."""

    cells: tuple[Cell, ...]
    width: float
    height: float


def lettered(figures: Iterable[Figure]) -> Iterator[tuple[str, Figure]]:
    """Yield each figure with its letter: a to z, then aa."""
    for number, figure in enumerate(figures):
        rounds, index = divmod(number, len(ascii_lowercase))
        yield ascii_lowercase[index] * (rounds + 1), figure


def plate(figures: Iterable[Figure], width: float) -> Plate:
    """Return figures arranged in rows no wider than `width` units, standing on common lines."""
    rows: list[list[tuple[str, Figure]]] = [[]]
    taken = 0.0
    for letter, figure in lettered(figures):
        room = _wide(figure)
        if rows[-1] and taken + GAP + room > width:
            rows.append([])
            taken = 0.0
        taken += room + (GAP if rows[-1] else 0)
        rows[-1].append((letter, figure))
    cells: list[Cell] = []
    top = -GAP / 2
    for row in filter(None, rows):
        high = max(figure.sketch.box.height for _, figure in row)
        cells += _row(row, width, top - high)
        top -= high + FOOT + GAP / 2
    return Plate(tuple(cells), width, -top)


def _bar(figure: Figure) -> Bar | None:
    scale = figure.sketch.scale
    return scale_bar(scale) if scale else None


def _beside(bar: Bar | None) -> float:
    """Return the room that a bar with its words takes beside a letter."""
    return _LETTER + bar.units + _GLYPH * len(bar.words) if bar else 0.0


def _wide(figure: Figure) -> float:
    """Return the room that a figure takes across, or what stands below it."""
    return max(figure.sketch.box.width, _LETTER + _beside(_bar(figure)))


def _row(row: list[tuple[str, Figure]], width: float, line: float) -> Iterator[Cell]:
    wide = sum(_wide(figure) for _, figure in row)
    gap = (width - wide) / (len(row) + 1)
    across = gap
    for letter, figure in row:
        room = figure.sketch.box
        aside = (_wide(figure) - room.width) / 2
        at = complex(across + aside - room.left, line - room.bottom)
        yield Cell(figure, letter, at, _bar(figure))
        across += _wide(figure) + gap
