"""The outside of roots and stores: their skin, thin roots, remains of leaf stalks."""

from __future__ import annotations

import cmath
import math
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import circle, smooth, straight
from sallet.drawing.ink import Copy, Curve, Mark, Path, Place
from sallet.drawing.stem.section_fill import strewn

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Mapping

    from sallet.drawing.ink import Ink
    from sallet.drawing.underground.shape import Body


def across(body: Body, down: float, sag: float = 0.16) -> Path:
    """Return the near half of a line round a body."""
    a, b = body.at(down, -1), body.at(down, 1)
    drop = 1j * (b.real - a.real) * sag * 0.66
    third = (b - a) / 4
    return Path(a, (Curve(a + third - drop, b - third - drop, b),))


def skin(body: Body, kind: str) -> Ink:
    """Return what is on the surface of a body, by the state of `surface`."""
    return _SKINS[kind](body)


def _ringed(body: Body) -> Ink:
    count = max(8, min(16, round(body.long / 10)))
    return tuple(Mark(across(body, 0.06 + 0.84 * (n + 0.5) / count), "fine") for n in range(count))


def _jointed(body: Body) -> Ink:
    marks = []
    for n in range(6):
        down = 0.1 + 0.8 * (n + 0.5) / 6
        marks.append(Mark(across(body, down), "thin"))
        wide = body.wide(down)
        for share in (-0.45, 0.1, 0.6):
            at = complex(wide * share, -down * body.long - 0.1 * wide - 3)
            marks.append(Mark(straight(at, at + 0.2), "line"))
    return tuple(marks)


def _strewn(body: Body, count: int, keep: float = 0.86) -> Iterator[complex]:
    for p in strewn(count, 2, 0.92):
        down = 0.5 - p.imag
        wide = body.wide(down, 1 if p.real > 0 else -1)
        yield complex(p.real * wide * keep, -down * body.long)


def _scaly(body: Body) -> Ink:
    marks = []
    size = max(3.0, min(0.3 * body.half, 0.07 * body.long))
    for at in _strewn(body, 40):
        a, b = at - size / 2, at + size / 2
        marks.append(Mark(Path(a, (Curve(a - 0.8j * size, b - 0.8j * size, b),)), "fine"))
    return tuple(marks)


def _wrinkled(body: Body) -> Ink:
    marks = []
    long = 0.085 * body.long
    for number, at in enumerate(_strewn(body, 26)):
        bow = (0.05 if number % 2 else -0.05) * body.half
        marks.append(Mark(smooth([at + 1j * long, at + bow, at - 1j * long]), "fine"))
    return tuple(marks)


def _hairy(body: Body) -> Ink:
    marks = []
    long = max(5.0, 0.045 * body.long)
    for number in range(30):
        down = 0.04 + 0.9 * (number + 0.5) / 30
        for side in (-1, 1):
            at = body.at(down, side)
            way = cmath.rect(long, math.radians(-18 + 12 * math.sin(number * 2.4)))
            marks.append(Mark(straight(at, at + complex(way.real * side, way.imag)), "fine"))
    return tuple(marks)


def _warty(body: Body) -> Ink:
    piece = (Mark(circle(0j, max(1.6, min(0.11 * body.half, 3.6))), "thin"),)
    return tuple(Copy(piece, Place(at)) for at in _strewn(body, 22, 0.9))


def _corky(body: Body) -> Ink:
    marks = [Mark(body.edge(0.9), "fine")]
    for number, at in enumerate(_strewn(body, 13, 0.62)):
        long = 0.045 * body.long * (1.3 if number % 2 else 0.9)
        jag = 0.07 * body.half
        marks.append(
            Mark(straight(at + 1j * long, at + jag, at - 0.3j * long - jag, at - 1j * long), "thin")
        )
    return tuple(marks[1:]) + tuple(_open(marks[0]))


def _open(mark: Mark) -> Iterator[Mark]:
    # Not filled: what is drawn on the body stays.
    yield Mark(Path(mark.path.start, mark.path.pieces), mark.pen)


_SKINS: Final[Mapping[str, Callable[[Body], Ink]]] = {
    "ringed": _ringed, "scaly": _scaly, "wrinkled": _wrinkled, "hairy": _hairy, "warty": _warty,
    "jointed": _jointed, "corky": _corky,
}  # fmt: skip
SKINS: Final = {state: state for state in _SKINS}
"""The states of `surface` that leave ink: a smooth skin is drawn as one that tells nothing."""


def rootlet(foot: complex, way: complex, pen: str = "thin") -> Mark:
    """Return one thin root that goes some way from its foot, in a wave."""
    side = way * 0.13j * (1 if way.real >= 0 else -1)
    path = Path(foot, (Curve(foot + way * 0.3 + side, foot + way * 0.68 - side, foot + way),))
    return Mark(path, "fine" if pen == "fine" else "thin", "root")


def rootlets_from_base(body: Body) -> Ink:
    """Return thin roots from the lower end of a body alone."""
    long = min(0.4 * body.long, 0.8 * body.half + 0.1 * body.long)
    marks = []
    for number in range(11):
        lean = -90 + 100 * ((number + 0.5) / 11 - 0.5)
        foot = complex(0.34 * body.half * ((number + 0.5) / 11 * 2 - 1), -0.975 * body.long)
        tall = long * (0.85 + 0.15 * math.sin(number * 2.4))
        marks.append(rootlet(foot, cmath.rect(tall, math.radians(lean))))
    return tuple(marks)


def rootlets_all_over(body: Body, count: int = 11) -> Ink:
    """Return thin roots from both sides, all the way down."""
    marks = []
    for number in range(count):
        down = 0.08 + 0.84 * (number + 0.5) / count
        side = 1 if number % 2 else -1
        foot = body.at(down, side) * 0.98
        long = body.long * (0.2 - 0.09 * down) * (0.9 + 0.2 * math.sin(number * 2.4))
        way = cmath.rect(long, math.radians(-28 - 20 * down))
        marks.append(rootlet(foot, complex(way.real * side, way.imag)))
    return tuple(marks)


def stalk_remains(half: float, high: float) -> Ink:
    """Return dry remains of leaf stalks about the top of a root at the origin."""
    marks = []
    for number in range(13):
        share = -1 + 2 * number / 12
        foot = complex(half * 0.85 * share, -0.1 * high)
        tip = complex(half * 1.5 * share, high * (0.75 + 0.25 * math.sin(number * 2.4)))
        marks.append(
            Mark(
                smooth([foot, (foot + tip) / 2 + half * 0.12 * share, tip]),
                "fine" if number % 3 else "thin",
            )
        )
    return tuple(marks)
