"""The plate of a plant: figure by figure on its page, and as a file of its own."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from markupsafe import Markup

from sallet.drawing.ink import Place, put
from sallet.drawing.plate import lettered, plate
from sallet.drawing.svg import style
from sallet.publish.drawings import drawing, ink, scale_bar_svg

if TYPE_CHECKING:
    from collections.abc import Sequence

    from sallet.drawing.figures import Figure
    from sallet.drawing.plate import Cell
    from sallet.drawing.told import Character

WIDTH: Final = 720.0
"""Units of a plate that stands by itself."""
_INK: Final = "#1b1b1b"
_PAPER: Final = "#ffffff"
_NAME_ROOM: Final = 30
_STYLE: Final = style(_INK, _PAPER) + (
    f"text{{font:italic 14px serif;fill:{_INK};stroke:none}}"
    "text.bar{font-style:normal;font-size:11px}path.bar{fill:none;stroke-width:1}"
    "text.name{font-style:normal;font-size:16px}tspan{font-style:italic}"
)


@dataclass(frozen=True)
class PlateFigure:
    """A figure of a plant's plate."""

    letter: str
    words: str
    svg: Markup
    shows: tuple[Character, ...]


def plate_figures(name: str, figures: Sequence[Figure]) -> tuple[PlateFigure, ...]:
    """Return the figures of a plant's plate, each with its letter."""
    return tuple(
        PlateFigure(
            letter=letter,
            words=figure.words,
            svg=drawing(figure.sketch, f"plate-{letter}", f"{name}: {figure.words}"),
            shows=figure.sketch.shows,
        )
        for letter, figure in lettered(figures)
    )


def plate_file(name: str, scientific_name: str, figures: Sequence[Figure]) -> Markup:
    """Return the plate of a plant as an SVG file, to print or to lay on a card."""
    sheet = plate(figures, WIDTH)
    said = "; ".join(f"{letter} {figure.words}" for letter, figure in lettered(figures))
    return Markup(
        '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width:.0f} {height:.0f}" '
        'width="{width:.0f}" height="{height:.0f}" role="img" aria-labelledby="title desc">'
        '<title id="title">{name}</title><desc id="desc">{said}. Dotted: not recorded.</desc>'
        "<style>{style}</style>{cells}"
        '<text class="name" x="{middle:.0f}" y="{foot:.0f}" text-anchor="middle">{name} '
        "<tspan>{scientific}</tspan></text></svg>\n"
    ).format(
        width=sheet.width, height=sheet.height + _NAME_ROOM, name=name, said=said,
        style=_STYLE, cells=Markup("").join(map(_cell, sheet.cells)),
        middle=sheet.width / 2, foot=sheet.height + 18, scientific=scientific_name,
    )  # fmt: skip


def _cell(cell: Cell) -> Markup:
    at = cell.letter_at
    label = Markup(
        '<text class="letter" x="{:.1f}" y="{:.1f}" text-anchor="middle">{}</text>'
    ).format(at.real, -at.imag, cell.letter)
    bar = Markup()
    if cell.bar:
        bar = scale_bar_svg(cell.bar, cell.bar_at.real, -cell.bar_at.imag)
    return ink(put(cell.figure.sketch.ink, Place(cell.at)), cell.letter) + label + bar
