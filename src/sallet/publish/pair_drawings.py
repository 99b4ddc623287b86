"""The same organ of two plants as one drawing: one scale, and pins at what differs."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from markupsafe import Markup

from sallet.drawing.ink import Box, Place, put
from sallet.drawing.pairs import pairs
from sallet.drawing.scale_bar import scale_bar
from sallet.publish.drawings import BAR_ROOM, framed, in_words, ink, scale_bar_svg

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from sallet.drawing.pairs import Difference, Pair, Plant
    from sallet.drawing.sketch import Sketch
    from sallet.lesson.vocabulary import Vocabulary

_PIN: Final = 9
"""Units of a pin's half."""
_MARGIN: Final = 34
"""Units beside a drawing that its pins take."""
_GAP: Final = 22
_NAME: Final = 22
"""Units below a drawing that the plant's name takes."""
_GLYPH: Final = 6.4
"""Units that a letter of a name takes across."""


@dataclass(frozen=True)
class PairFigure:
    """The same organ of two plants."""

    words: str
    svg: Markup
    one_scale: bool
    differences: tuple[Difference, ...]


@dataclass(frozen=True)
class _Side:
    """One of the two drawings in its place."""

    name: str
    sketch: Sketch
    pins: tuple[tuple[int, complex], ...]
    at: complex
    """Add it to every point of the sketch: its foot then stands at 0."""
    ident: str

    @property
    def box(self) -> Box:
        """Return the room that the ink takes where it stands."""
        box, by = self.sketch.box, self.at
        return Box(box.left + by.real, box.bottom + by.imag, box.right + by.real, box.top + by.imag)


def pair_figures(
    this: tuple[str, Plant], that: tuple[str, Plant], vocabulary: Vocabulary, ident: str
) -> tuple[PairFigure, ...]:
    """Return the figures that set a plant, by its name, beside one it is mistaken for."""
    return tuple(
        PairFigure(
            words=pair.words,
            svg=_both(this[0], that[0], pair, f"{ident}-{number}"),
            one_scale=pair.one_scale,
            differences=pair.differences,
        )
        for number, pair in enumerate(pairs(this[1], that[1], vocabulary), 1)
    )


def _both(this: str, that: str, pair: Pair, ident: str) -> Markup:
    ours = tuple((d.number, d.at_this) for d in pair.differences)
    theirs = tuple((d.number, d.at_that) for d in pair.differences)
    one = _side(this, pair.this, ours, 0.0, f"{ident}a")
    other = _side(that, pair.that, theirs, _wide(one) + _GAP, f"{ident}b")
    inner = Markup("").join([*_elements(one), *_elements(other)])
    high = max(one.box.top, other.box.top) + _PIN
    foot = -BAR_ROOM if pair.this.scale or pair.that.scale else 0
    room = Box(0, foot - _NAME, _wide(one) + _GAP + _wide(other), high)
    title = f"{this} and {that}: {pair.words}"
    desc = f"{this}: {in_words(pair.this)} {that}: {in_words(pair.that)}"
    return framed(room, ident, title, desc, inner)


def _side(
    name: str, sketch: Sketch, pins: tuple[tuple[int, complex], ...], left: float, ident: str
) -> _Side:
    return _Side(name, sketch, pins, complex(left - sketch.box.left, -sketch.box.bottom), ident)


def _wide(side: _Side) -> float:
    """Return the room that a side takes across: ink with pins, the bar, or the name."""
    bar = scale_bar(side.sketch.scale) if side.sketch.scale else None
    below = _GLYPH * len(side.name)
    if bar:
        below = max(below, bar.units + 5 + _GLYPH * len(bar.words))
    return max(side.sketch.box.width + _MARGIN, below)


def _elements(side: _Side) -> Iterator[Markup]:
    box = side.box
    yield ink(put(side.sketch.ink, Place(side.at)), side.ident)
    yield from _pins(box, [(number, at + side.at) for number, at in side.pins])
    foot = 0
    if side.sketch.scale:
        foot = BAR_ROOM
        yield scale_bar_svg(scale_bar(side.sketch.scale), box.left, 8)
    yield Markup('<text class="plant" x="{:.1f}" y="{}">{}</text>').format(
        box.left, foot + 15, side.name
    )


def _pins(box: Box, pins: Iterable[tuple[int, complex]]) -> Iterator[Markup]:
    """Yield numbered pins in the margin, each with a line to the place it stands for."""
    across = box.right + _MARGIN - _PIN - 2
    last = float("inf")
    for number, at in sorted(pins, key=lambda pin: -pin[1].imag):
        up = min(at.imag, last - 2.4 * _PIN)
        last = up
        yield Markup(
            '<path class="leader" d="M{:.1f} {:.1f}L{:.1f} {:.1f}"/>'
            '<circle class="pin" cx="{:.1f}" cy="{:.1f}" r="{}"/>'
            '<text class="pin" x="{:.1f}" y="{:.1f}" text-anchor="middle">{}</text>'
        ).format(
            at.real, -at.imag, across - _PIN, -up, across, -up, _PIN, across, -up + 4, number
        )  # fmt: skip
