"""The drawing on a card: as many figures of the plant as the room allows, in rows, with their bars.

Each figure has a scale of its own, as on the plate, and a bar that says how large the thing is.
Lengths are millimetres on the card.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.ink import WIDTHS, Box
from sallet.drawing.scale_bar import scale_bar
from sallet.drawing.svg import standalone, view_box

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from sallet.drawing.figures import Figure
    from sallet.lesson.model import Lesson

LARGEST: Final = 0.24
"""Millimetres to a unit of a drawing: beyond this it says no more."""
PEN: Final = 0.18
"""Millimetres to a unit at which the pens are as broad as they were meant; smaller drawings get broader ones."""
BELOW: Final = 6.4
"""What stands below a figure: its bar and its name, a line of 7 pt each."""
LETTER: Final = 1.15
"""How far a letter of 7 pt runs, on the average."""
GAP: Final = 2.5
"""Between figures."""
ROW: Final = 24.0
"""A row of figures is at least so high where there is more than one."""
_EDGE: Final = WIDTHS["line"] * LARGEST / 2
"""Half the broadest pen, on paper."""
_ROUNDED: Final = 3
"""Units by which a view box is at most larger than its drawing: one at either end, and whole units."""


@dataclass(frozen=True)
class DrawnFigure:
    """A figure ready to be placed."""

    svg: str
    width: float
    height: float
    words: str
    bar: tuple[float, str] | None
    """The length of its bar and what it stands for."""

    @property
    def room(self) -> float:
        """Return the width that the figure or what stands below it takes."""
        bar = self.bar[0] + LETTER * (len(self.bar[1]) + 1) if self.bar else 0.0
        return max(self.width, bar, LETTER * len(self.words))


Rows = tuple[tuple[DrawnFigure, ...], ...]


def card_plate(lesson: Lesson, figures: Sequence[Figure], width: float, height: float) -> Rows:
    """Return the figures that fit into so much room, in rows; none where nothing can be drawn.

    The organs of the key features go first, the rest as on the plate.
    """
    rows = max(1, int(height // ROW))
    high = height / rows - BELOW
    drawn = {id(figure): _drawn(figure, width, high) for figure in figures}
    chosen: list[Figure] = []
    for figure in _by_worth(lesson, figures):
        tried = [f for f in figures if f in chosen or f is figure]
        if len(_in_rows([drawn[id(f)] for f in tried], width)) <= rows:
            chosen.append(figure)
    return _in_rows([drawn[id(f)] for f in figures if f in chosen], width)


def _by_worth(lesson: Lesson, figures: Sequence[Figure]) -> list[Figure]:
    organs = list(dict.fromkeys(fact.subject for fact in lesson.key_facts))
    return sorted(
        figures, key=lambda f: organs.index(f.organ) if f.organ in organs else len(organs)
    )


def _in_rows(figures: Iterable[DrawnFigure], width: float) -> Rows:
    rows: list[list[DrawnFigure]] = []
    taken = width + 1
    for figure in figures:
        if taken + GAP + figure.room > width:
            rows.append([])
            taken = -GAP
        rows[-1].append(figure)
        taken += GAP + figure.room
    return tuple(map(tuple, rows))


def _drawn(figure: Figure, width: float, height: float) -> DrawnFigure:
    sketch = figure.sketch
    scale = _scale(sketch.box, width - 2 * _EDGE, height - 2 * _EDGE)
    broader = max(1.0, PEN / scale)
    room = _with_pens(sketch.box, broader)
    bar = scale_bar(sketch.scale) if sketch.scale else None
    _, _, wide, high = map(int, view_box(room).split())
    return DrawnFigure(
        svg=standalone(sketch.ink, room, ink_colour="#000", broader=broader),
        width=wide * scale,
        height=high * scale,
        words=figure.words,
        bar=(bar.units * scale, bar.words) if bar else None,
    )


def _scale(box: Box, width: float, height: float) -> float:
    """Return millimetres to a unit at which a drawing with its view box's edge fits."""
    return min(LARGEST, width / (box.width + _ROUNDED), height / (box.height + _ROUNDED))


def _with_pens(box: Box, broader: float) -> Box:
    """Return the room that a drawing takes with half a pen round it: else its edges are cut thin."""
    half = WIDTHS["line"] * broader / 2
    return Box(box.left - half, box.bottom - half, box.right + half, box.top + half)
