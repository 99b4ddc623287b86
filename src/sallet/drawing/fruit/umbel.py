"""The ridged pair of the carrot family: two halves side by side, ribs, styles, how they part."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import smooth
from sallet.drawing.fruit.surface import NARROW, cover, rib_bristles, ribbed, wavy_side
from sallet.drawing.ink import Curve, Line, Mark, Path, put, turned

if TYPE_CHECKING:
    from sallet.drawing.fruit.body import Body
    from sallet.drawing.ink import Ink

_RIGHT: Final = (0.3, 0.66)
"""Where the ribs run that face the viewer on the right half; the outline is the next."""


def pair(body: Body, surface: tuple[str, ...], ribs: tuple[str, ...]) -> Ink:
    """Return both halves, joined, seen on the line between them."""
    right_lines = _right(body)
    lines = (*(-x for x in reversed(right_lines)), *right_lines)
    around = rib_bristles(body, lines, ribs)
    under, over = cover(body, tuple(name for name in surface if name != "ribbed"))
    lined = ribbed(body, ribs, lines) if ribs else ()
    if "ribbed" in surface:
        lined = tuple(Mark(body.meridian(x), "fine", "rib") for x in lines)
    right = half(body, ribs)
    left = put(right, turned(0, 2 * body.at.real + 0j, mirrored=True))
    return (*around, *under, *right, *left, *_edges(body, ribs), *lined, *over)


def _right(body: Body) -> tuple[float, ...]:
    """Return the ribs of the right half; a narrow fruit has room for one."""
    return _RIGHT if body.width >= NARROW else (0.52,)


def half(body: Body, ribs: tuple[str, ...]) -> Ink:
    """Return the right half, flat against the other along the axis."""
    outer = smooth(wavy_side(body)) if "wavy" in ribs else body.side
    return (Mark(Path(outer.start, (*outer.pieces, Line(body.at)), closed=True), body.pen, "half"),)


def _edges(body: Body, ribs: tuple[str, ...]) -> Ink:
    """Return the ribs on the outline: a keel seen from the side."""
    if body.width < NARROW or not {"sharp", "thick"} & {*ribs}:
        return ()
    at = 0.88 if "sharp" in ribs else 0.82
    return tuple(Mark(body.meridian(x, 0.07, 0.93), "thin") for x in (-at, at))


def parted(body: Body, ribs: tuple[str, ...]) -> Ink:
    """Return the halves hanging from their fork, the fruit's foot at 0."""
    lined = ribbed(body, ribs, _right(body)) if ribs else ()
    piece: Ink = (*half(body, ribs), *lined)
    away = turned(15)
    end = body.top + 0.06 * body.width
    place = replace(away, at=end - away.put(body.top))
    split = body.at + 0.62j * body.length
    fork = Path(
        body.at, (Line(split), Curve(split + 0.2j * body.length, end - 0.1j * body.length, end))
    )
    right: Ink = (Mark(fork, "thin", "fork"), *put(piece, place))
    return (*right, *put(right, turned(0, 2 * body.at.real + 0j, mirrored=True)))
