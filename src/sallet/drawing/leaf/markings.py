"""Marks on a blade: dots, blotches, bands, coloured veins, what insects leave."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import circle, ellipse, straight
from sallet.drawing.ink import Copy, Curve, Mark, Path, Place
from sallet.drawing.leaf.breadth import breadth
from sallet.drawing.leaf.fringes import inner_line
from sallet.drawing.leaf.veins import side_veins

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.ink import Ink, Pen, Piece
    from sallet.drawing.leaf.outline import Outline

_GOLDEN: Final = 0.6180339887
"""Steps of the golden section never fall into rows."""

_PATIENCE: Final = 40
"""Places tried at most, for each that is wanted."""


def _scattered(drawn: Outline, count: int, inner: float = 0.78) -> list[complex]:
    """Return places spread evenly over the blade."""
    half = breadth(drawn.bare)
    # More places are tried on narrow and lobed blades, until enough lie within.
    tried = count
    places: list[complex] = []
    while len(places) < count and tried < _PATIENCE * count:
        tried += count // 4 + 1
        places = []
        for number in range(tried):
            y = drawn.top * (0.08 + 0.84 * (number + 0.5) / tried)
            x = half.wide * (2 * ((number * _GOLDEN) % 1) - 1)
            if 0.06 * half.wide < abs(x) < inner * half.at(y):
                places.append(complex(x + drawn.sway(y), y))
    return places


def _copies(piece: Ink, count: int, inner: float = 0.78) -> Callable[[Outline], Ink]:
    def drawn(edge: Outline) -> Ink:
        return tuple(Copy(piece, Place(at), "leafmark") for at in _scattered(edge, count, inner))

    return drawn


def _dots(count: int, radius: float, pen: Pen) -> Callable[[Outline], Ink]:
    return _copies((Mark(circle(0j, radius), pen),), count)


def _flecks(edge: Outline) -> Ink:
    return tuple(
        Mark(straight(at, at + 5 + 4j if at.real > 0 else at - 5 + 4j), "fine", "leafmark")
        for at in _scattered(edge, 22, 0.5)
    )


def _blotch(edge: Outline) -> Ink:
    half = breadth(edge.bare)
    lines = []
    for number in range(-5, 6):
        y = edge.top * (0.45 + number * 0.025)
        reach = min(0.42 * half.wide, 0.8 * half.at(y)) * (1 - (number / 6) ** 2) ** 0.5
        aside = edge.sway(y)
        line = straight(complex(aside - reach, y - 2), complex(aside + reach, y + 2))
        lines.append(Mark(line, "fine", "leafmark"))
    return tuple(lines)


def _band(edge: Outline) -> Ink:
    top = edge.top
    reach = 0.62 * breadth(edge.bare).wide
    low, crest = 0.36 * top, 0.5 * top

    def line(rise: float) -> Mark:
        curve = Curve(
            complex(-0.48 * reach, crest + rise), complex(0.48 * reach, crest + rise),
            complex(reach, low + rise),
        )  # fmt: skip
        path = Path(complex(-reach, low + rise), (curve,))
        return Mark(path.placed(Place(edge.sway(low) + 0j)), "fine", "leafmark")

    return (line(0.0), line(0.07 * top))


def _pale_veins(edge: Outline) -> Ink:
    """Return veins as double lines: paler than the blade."""
    return tuple(
        Mark(straight(line.start + aside, line.end + aside), "fine", "leafmark")
        for line in side_veins(edge, 4)
        for aside in (-1.4, 1.4)
    )


def _dark_veins(edge: Outline) -> Ink:
    """Return veins as strong lines: darker than the blade."""
    return tuple(Mark(line, "thin", "leafmark") for line in side_veins(edge, 4))


_PATCH: Final[Ink] = (Mark(ellipse(0j, 8, 5), "fine"),)


def _tracks(edge: Outline) -> Ink:
    half = 0.35 * breadth(edge.bare).wide
    at = start = complex(edge.sway(0.4 * edge.top) - half, 0.4 * edge.top)
    pieces: list[Piece] = []
    for number in range(5):
        step = complex(0.4 * half, 8 if number % 2 else -5)
        bow = 9j if number % 2 else -9j
        pieces.append(Curve(at + bow, at + step + bow, at + step))
        at += step
    return (Mark(Path(start, tuple(pieces)), "line", "leafmark"),)


MARKINGS: Final[Mapping[str, Callable[[Outline], Ink]]] = {
    "white flecks": _flecks,
    "dark spots": _dots(18, 2.6, "solid"),
    "dark blotch in the middle": _blotch,
    "pale band": _band,
    "whitish veins": _pale_veins,
    "red veins": _dark_veins,
    "red edge": inner_line(0.95, dense=True),
    "silver patches": _copies(_PATCH, 7, 0.6),
    "clear dots": _dots(26, 1.3, "fine"),
    "dark dots beneath": _dots(26, 1.1, "solid"),
    "galls": _dots(8, 4.5, "fine"),
    "mines": _tracks,
}
"""Marks on a blade, by the states of `markings`."""
