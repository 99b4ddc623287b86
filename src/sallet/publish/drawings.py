"""Drawings as they stand on a page: inline SVG with a title, a description and a scale bar."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from markupsafe import Markup

from sallet.drawing.ink import Box
from sallet.drawing.scale_bar import scale_bar
from sallet.drawing.svg import ink_svg, view_box
from sallet.drawing.words import word_figure

if TYPE_CHECKING:
    from sallet.drawing.ink import Ink
    from sallet.drawing.scale_bar import Bar
    from sallet.drawing.sketch import Sketch
    from sallet.lesson.vocabulary import State, Vocabulary

BAR_ROOM: Final = 24
"""Units below a drawing that its scale bar takes."""
WORD_SIZE: Final = 84
"""Units of the drawing of a word."""


def drawing(sketch: Sketch, ident: str, title: str) -> Markup:
    """Return a sketch as an inline drawing; its ids begin with `ident`."""
    room, bar = sketch.box, Markup()
    if sketch.scale:
        bar = scale_bar_svg(scale_bar(sketch.scale), room.left, -room.bottom + 8)
        room = Box(room.left, room.bottom - BAR_ROOM, room.right, room.top)
    return framed(room, ident, title, in_words(sketch), ink(sketch.ink, ident) + bar)


def framed(room: Box, ident: str, title: str, desc: str, inner: Markup) -> Markup:
    """Return elements as an inline drawing with its title and description."""
    return Markup(
        '<svg class="drawing" viewBox="{}" width="{}" height="{}" role="img" '
        'aria-labelledby="{ident}-title {ident}-desc"><title id="{ident}-title">{title}</title>'
        '<desc id="{ident}-desc">{desc}</desc>{inner}</svg>'
    ).format(*_room(room), ident=ident, title=title, desc=desc, inner=inner)


def word_drawing(
    organ: str, label: str, state: State, vocabulary: Vocabulary, ident: str
) -> Markup:
    """Return the figure of a word, or nothing where it cannot be drawn; `ident` as above."""
    sketch = word_figure(organ, label, state, vocabulary, WORD_SIZE)
    if sketch is None:
        return Markup()
    # The words stand beside it: a reader of the page hears them once.
    return Markup(
        '<svg class="drawing" viewBox="{}" width="{}" height="{}" aria-hidden="true">{}</svg>'
    ).format(*_room(sketch.box), ink(sketch.ink, f"figure-{ident}"))


def ink(marks: Ink, ident: str) -> Markup:
    """Return ink as SVG elements; its ids begin with `ident`."""
    return Markup(ink_svg(marks, ident))  # noqa: S704 - numbers and names of our own only


def in_words(sketch: Sketch) -> str:
    """Return what a sketch shows, character by character."""
    shows = "; ".join(character.words for character in sketch.shows)
    size = f" The bar is {scale_bar(sketch.scale).words}." if sketch.scale else " Not to scale."
    return f"Drawn from what is recorded: {shows}.{size}"


def scale_bar_svg(bar: Bar, left: float, down: float) -> Markup:
    """Return a scale bar with its words, by its left end; y downwards."""
    return Markup(
        '<path class="bar" d="M{:.1f} {:.1f}v4h{:.1f}v-4"/>'
        '<text class="bar" x="{:.1f}" y="{:.1f}">{}</text>'
    ).format(left, down, bar.units, left + bar.units + 5, down + 6, bar.words)


def _room(room: Box) -> tuple[str, str, str]:
    box = view_box(room)
    width, height = box.split()[2:]
    return box, width, height
