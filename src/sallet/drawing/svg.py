"""Ink → SVG: relative coordinates with one decimal, copies as `<use>`."""

from __future__ import annotations

from collections import Counter
from typing import TYPE_CHECKING, Final

from sallet.drawing.ink import WIDTHS, Copy, Line, Mark, Place, put

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from sallet.drawing.ink import Box, Ink, Path

_PLAIN: Final = (1 + 0j, False)


def path_data(path: Path) -> str:
    """Return a path as SVG path data, y downwards, relative, with one decimal."""
    # Each number is rounded against the point reached, so that roundings never add up.
    at = _rounded(path.start)
    parts = [f"M{_pair(at)}"]
    last = "M"
    for piece in path.pieces:
        if isinstance(piece, Line):
            end = _rounded(piece.end)
            command, numbers = "l", _pair(end - at)
        else:
            points = [_rounded(p) for p in (piece.first, piece.second, piece.end)]
            end = points[-1]
            command, numbers = "c", _pairs(p - at for p in points)
        if command != last:
            parts.append(command)
        elif not numbers.startswith("-"):
            parts.append(" ")
        parts.append(numbers)
        last, at = command, end
    return "".join(parts) + ("z" if path.closed else "")


def _rounded(point: complex) -> complex:
    return complex(round(point.real, 1), round(-point.imag, 1))


def _pairs(points: Iterable[complex]) -> str:
    text = ""
    for point in points:
        pair = _pair(point)
        text += pair if not text or pair.startswith("-") else f" {pair}"
    return text


def _pair(point: complex) -> str:
    across, down = _number(point.real), _number(point.imag)
    return across + (down if down.startswith("-") else f" {down}")


def _number(value: float) -> str:
    text = f"{value:.1f}".rstrip("0").rstrip(".")
    if text in {"-0", ""}:
        return "0"
    return text.replace("0.", ".", 1) if text.startswith(("0.", "-0.")) else text


def ink_svg(ink: Ink, ident: str) -> str:
    """Return the marks of a drawing as SVG elements; ids begin with `ident`."""
    pieces = _repeated(ink)
    names = {piece: f"{ident}-{number}" for number, piece in enumerate(pieces, 1)}
    defined = "".join(
        f'<g id="{name}">{"".join(_elements(piece, names))}</g>' for piece, name in names.items()
    )
    defs = f"<defs>{defined}</defs>" if defined else ""
    return defs + "".join(_elements(ink, names))


def _repeated(ink: Ink) -> list[Ink]:
    """Return the pieces that stand in the drawing more than once, the inner before the outer."""
    counts: Counter[Ink] = Counter()
    order: dict[Ink, None] = {}

    def visit(one: Ink) -> None:
        for mark in one:
            if isinstance(mark, Copy):
                if not counts[mark.piece]:
                    visit(mark.piece)
                counts[mark.piece] += 1
                order.setdefault(mark.piece)

    visit(ink)
    return [piece for piece in order if counts[piece] > 1]


def _elements(ink: Ink, names: dict[Ink, str]) -> Iterator[str]:
    fine: list[Mark] = []
    for one in ink:
        if isinstance(one, Mark) and _joins(one, fine):
            fine.append(one)
            continue
        yield from _joined(fine)
        fine = [one] if isinstance(one, Mark) and not one.path.closed else []
        if isinstance(one, Copy):
            yield from _copy(one, names)
        elif not fine:
            yield _path(path_data(one.path), one)
    yield from _joined(fine)


def _joins(mark: Mark, run: list[Mark]) -> bool:
    # Open lines of one pen and one kind hide nothing: they can stand in one path.
    return (
        bool(run) and not mark.path.closed and not mark.part
        and (mark.pen, mark.part) == (run[0].pen, run[0].part)
    )  # fmt: skip


def _joined(run: list[Mark]) -> Iterator[str]:
    if run:
        yield _path("".join(path_data(mark.path) for mark in run), run[0])


def _path(data: str, mark: Mark) -> str:
    pen = "" if mark.pen == "line" else mark.pen
    hollow = "" if mark.path.closed or pen in {"solid", "paper"} else "open"
    named = " ".join(filter(None, (pen, hollow, mark.part)))
    classes = f' class="{named}"' if named else ""
    return f'<path{classes} d="{data}"/>'


def _copy(copy: Copy, names: dict[Ink, str]) -> Iterator[str]:
    named = f' class="{copy.part}"' if copy.part else ""
    name = names.get(copy.piece)
    if name is None:
        inner = "".join(_elements(put(copy.piece, copy.place), names))
        yield f"<g{named}>{inner}</g>" if named else inner
        return
    yield f'<use{named} href="#{name}" transform="{_transform(copy.place)}"/>'


def _transform(place: Place) -> str:
    at = f"{_number(place.at.real)} {_number(-place.at.imag)}"
    if (place.turn, place.mirrored) == _PLAIN:
        return f"translate({at})"
    # y downwards: the factor's angle turns the other way; mirroring changes the first column.
    a, b = place.turn.real, -place.turn.imag
    first = (-a, -b) if place.mirrored else (a, b)
    numbers = " ".join(f"{n:.3f}".rstrip("0").rstrip(".") for n in (*first, -b, a))
    return f"matrix({numbers} {at})"


def view_box(room: Box) -> str:
    """Return the room of a drawing as an SVG view box, y downwards, whole units."""
    left, top = round(room.left - 1), round(-room.top - 1)
    return f"{left} {top} {round(room.right + 1) - left} {round(-room.bottom + 1) - top}"


def standalone(
    ink: Ink, room: Box, *, ink_colour: str = "#1b1b1b", paper: str = "#fff", broader: float = 1.0
) -> str:
    """Return a drawing as an SVG file of its own, with its colours in it; `broader` as for `style`."""
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="{view_box(room)}">'
        f"<style>{style(ink_colour, paper, broader=broader)}</style>{ink_svg(ink, 'd')}</svg>"
    )


def style(ink_colour: str, paper: str, svg: str = "svg", *, broader: float = 1.0) -> str:
    """Return the style rules of the pens for the drawings that the selector `svg` finds.

    Copies inherit from the drawing, and no rule for their paths may look outside them. A drawing
    that is made small gets pens so many times `broader`.
    """
    widths = {pen: f"{width * broader:.3g}" for pen, width in WIDTHS.items()}
    return (
        f"{svg}{{fill:{paper};stroke:{ink_colour};stroke-width:{widths['line']};"
        "stroke-linejoin:round;stroke-linecap:round}"
        f"path.open{{fill:none}}path.thin{{stroke-width:{widths['thin']}}}"
        f"path.fine{{stroke-width:{widths['fine']}}}"
        f"path.dotted{{stroke-width:{widths['dotted']};stroke-dasharray:.1 {3.4 * broader:.3g}}}"
        f"path.solid{{fill:{ink_colour};stroke:none}}path.paper{{stroke:none}}"
    )
