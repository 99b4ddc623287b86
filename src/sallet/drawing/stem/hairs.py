"""Hairs and other things felt on a stem: strokes on its edges and on its face."""

from __future__ import annotations

import cmath
import math
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import circle, smooth, straight
from sallet.drawing.ink import Copy, Curve, Line, Mark, Path, Place
from sallet.drawing.stem.body import HALF, JOINT
from sallet.drawing.stem.section_fill import strewn

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Mapping

    from sallet.drawing.ink import Ink, Pen
    from sallet.drawing.stem.body import Body

    Grow = Callable[[complex, complex, "Hair", float, int], Iterator[Mark | Copy]]
    """From a hair's foot and the way out of the stem, its kind, the piece's length, its number."""


@dataclass(frozen=True)
class Hair:
    """A kind of hair. Lengths are in shares of the piece's length."""

    long: float
    count: int
    """How many stand along an edge."""
    lean: float = 12.0
    """Degrees towards the tip of the stem."""
    pen: Pen = "fine"
    shape: str = "plain"
    """`plain`, `wavy`, `gland`, `sting`, `star`, `knob`, `flake`, `grain`, `web`, `prickle`."""
    tangle: float = 8.0
    """Degrees by which they lean this way and that."""
    face: float = 0.6
    """How many stand on the face, against one edge."""


HAIRS: Final[Mapping[str, Hair]] = {
    "nearly hairless": Hair(0.03, 4, face=0.5),
    "hairy": Hair(0.036, 26),
    "sparsely hairy": Hair(0.036, 10),
    "downy": Hair(0.018, 52, tangle=14),
    "long-haired": Hair(0.075, 24, 18, shape="wavy"),
    "shaggy": Hair(0.08, 44, -8, shape="wavy", tangle=34),
    "roughly hairy": Hair(0.04, 22, 4, "thin"),
    "bristly": Hair(0.06, 17, 0, "line", tangle=5),
    "silky": Hair(0.075, 40, 76, tangle=3),
    "woolly": Hair(0.06, 40, 0, shape="wavy", tangle=58, face=0.9),
    "felted": Hair(0.03, 64, 0, tangle=60, face=1.6),
    "cobwebby": Hair(0.2, 16, shape="web"),
    "velvety": Hair(0.022, 80, 0, tangle=0),
    "glandular-hairy": Hair(0.042, 20, 4, shape="gland"),
    "sticky": Hair(0.014, 24, 0, shape="gland"),
    "stinging": Hair(0.075, 8, 8, shape="sting", tangle=4),
    "flat hairs": Hair(0.05, 24, 82, tangle=2),
    "hairs pointing down": Hair(0.042, 24, -58, tangle=4),
    "hairs pointing up": Hair(0.042, 24, 52, tangle=4),
    "star hairs": Hair(0.015, 15, 0, shape="star"),
    "rough": Hair(0.009, 60, 0, "thin", tangle=0),
    "mealy": Hair(0.007, 44, shape="grain", face=2.6),
    "scaly": Hair(0.024, 13, shape="flake", face=1.6),
    "warty": Hair(0.012, 16, shape="knob", face=1.0),
    "gland-dotted": Hair(0.005, 0, shape="dot"),
    "dotted with pores": Hair(0.016, 0, shape="pore"),
    "prickly": Hair(0.03, 9, 0, shape="prickle", tangle=0),
}
"""By the states of `surface` that can be drawn."""
PLAIN: Final = HAIRS["hairy"]
"""What stands for hairs of a kind that is not recorded."""

WHERE: Final[Mapping[str, str]] = {
    "all round": "all", "in one line": "one", "in two lines": "two",
    "on the corners only": "corners", "at the nodes only": "node", "at the base only": "base",
    "towards the top only": "top", "hairs in one line": "one", "hairs in two lines": "two",
    "hairs at the nodes only": "node",
}  # fmt: skip
"""Where hairs stand, by the states of `hair arrangement` and those of `surface` that say it."""
_RANGES: Final = {
    "node": (JOINT - 0.035, JOINT + 0.035), "base": (0.0, 0.3), "top": (0.7, 1.0),
}  # fmt: skip
_DOTS: Final = 34
_DROP: Final = 0.2
"""A line so short is a dot as broad as its pen."""
_ONE: Final = 0.45
"""How far from the middle a single line of hairs stands, in shares of half the breadth."""


def hairs_ink(body: Body, hair: Hair, where: str, shift: float = 0.0) -> Ink:
    """Return hairs of a kind on a piece of stem; `shift` keeps two kinds out of step."""
    if hair.shape in {"dot", "pore"}:
        return _dots(body, hair)
    if hair.shape == "web":
        return _web(body, hair)
    seats = [seat for seat in _seats(body, hair, where, shift) if _stands(seat[0], body, where)]
    draw: Grow = _SHAPES.get(hair.shape, _plain)
    marks: list[Mark | Copy] = [
        mark
        for number, (foot, out) in enumerate(seats)
        for mark in draw(foot, out, hair, body.size, number)
    ]
    # Lines of one pen behind one another are written as one.
    return tuple(sorted(marks, key=lambda mark: mark.pen if isinstance(mark, Mark) else ""))


def _stands(foot: complex, body: Body, where: str) -> bool:
    low, high = _RANGES.get(where, (0.0, 1.0))
    return low * body.size <= foot.imag <= high * body.size


def _seats(body: Body, hair: Hair, where: str, shift: float) -> Iterator[tuple[complex, complex]]:
    size, count = body.size, hair.count
    if where == "one":
        # The row changes sides at the joint.
        count *= 2
        for number in range(count):
            y = size * (number + 0.5 + shift) / count
            side = -_ONE if y < JOINT * size else _ONE
            yield complex(body.half(y) * side, y), complex(0.8 if number % 2 else -0.8, 0.6)
        return
    columns = {"two": (-1, 1), "corners": (-1, 0.08, 1)}.get(where, (-1, 1))
    crowd = 5 if where == "node" else 1
    for column in columns:
        for number in range(count * crowd):
            y = size * (number + 0.5 + shift + 0.2 * column) / (count * crowd)
            if y < size:
                way = column if abs(column) == 1 else (0.8 if number % 2 else -0.8)
                yield complex(body.half(y) * column, y), complex(way, 0)
    if where in {"two", "corners"}:
        return
    for number, point in enumerate(strewn(round(count * hair.face * crowd), 1, 1)):
        y = (point.imag + 0.5) * size
        share = point.real * 1.7
        lean = share + (0.25 if number % 2 else -0.25)
        yield complex(body.half(y) * share, y), complex(lean, 0.55)


def _way(out: complex, hair: Hair, number: int) -> complex:
    """Return the direction of a hair of length one."""
    sway = hair.tangle * math.sin(number * 2.4)
    level = out / abs(out)
    up = hair.lean + sway
    turn = up if level.real >= 0 else -up
    if abs(level.real) < 0.6 and abs(hair.lean) > 40:  # noqa: PLR2004 - on the face
        return cmath.rect(1, math.radians(math.copysign(90, hair.lean) + sway))
    return level * cmath.rect(1, math.radians(turn))


def _plain(foot: complex, out: complex, hair: Hair, size: float, number: int) -> Iterator[Mark]:
    way = _way(out, hair, number) * hair.long * size * (0.9 + 0.1 * math.sin(number * 1.7))
    yield Mark(straight(foot, foot + way), hair.pen)


def _wavy(foot: complex, out: complex, hair: Hair, size: float, number: int) -> Iterator[Mark]:
    way = _way(out, hair, number) * hair.long * size * (0.85 + 0.15 * math.sin(number * 1.7))
    side = way * 1j * math.copysign(max(0.15, hair.tangle / 100), 0.5 - number % 2)
    bent = Curve(foot + way * 0.35 + side, foot + way * 0.7 - side, foot + way)
    yield Mark(Path(foot, (bent,)), "fine")


def _gland(foot: complex, out: complex, hair: Hair, size: float, number: int) -> Iterator[Mark]:
    way = _way(out, hair, number) * hair.long * size
    yield Mark(straight(foot, foot + way), hair.pen)
    tip = foot + way
    yield Mark(straight(tip, tip + _DROP), "line")


def _sting(foot: complex, out: complex, hair: Hair, size: float, number: int) -> Iterator[Mark]:
    way = _way(out, hair, number) * hair.long * size
    side = way / abs(way) * 1j * 0.0085 * size
    bulb = way * 0.16
    yield Mark(
        Path(
            foot + side * 0.7,
            (
                Curve(foot + side * 1.5, foot + bulb + side * 1.4, foot + bulb * 1.6 + side * 0.5),
                Line(foot + way),
                Line(foot + bulb * 1.6 - side * 0.5),
                Curve(foot + bulb - side * 1.4, foot - side * 1.5, foot - side * 0.7),
            ),
            closed=True,
        ),
        "thin",
        "sting",
    )


def _star(foot: complex, out: complex, hair: Hair, size: float, number: int) -> Iterator[Mark]:
    middle = foot + out / abs(out) * hair.long * size * 0.6
    for ray in range(3):
        way = cmath.rect(hair.long * size, math.radians(60 * ray + 31 * number))
        yield Mark(straight(middle - way, middle + way), "fine")


def _knob(foot: complex, out: complex, hair: Hair, size: float, number: int) -> Iterator[Copy]:
    del out, number
    yield Copy((Mark(circle(0j, hair.long * size), "thin"),), Place(foot))


def _grain(foot: complex, out: complex, hair: Hair, size: float, number: int) -> Iterator[Mark]:
    del number
    at = foot + out / abs(out) * hair.long * size
    yield Mark(straight(at, at + _DROP), "thin")


def _flake(foot: complex, out: complex, hair: Hair, size: float, number: int) -> Iterator[Copy]:
    del out
    long = hair.long * size
    flake = Path(
        0j,
        (
            Curve(complex(long * 0.8, long * 0.1), complex(long * 0.7, long), complex(0, long * 1.1)),
            Curve(complex(-long * 0.7, long), complex(-long * 0.8, long * 0.1), 0j),
        ),
        closed=True,
    )  # fmt: skip
    turn = cmath.rect(1, math.radians(18 * math.sin(number * 2.4)))
    yield Copy((Mark(flake, "fine"),), Place(foot, turn))


def _prickle(foot: complex, out: complex, hair: Hair, size: float, number: int) -> Iterator[Mark]:
    del number
    way = out / abs(out) * hair.long * size
    side = way * 0.3j
    yield Mark(straight(foot + side, foot + way, foot - side, closed=True), "thin")


def _dots(body: Body, hair: Hair) -> Ink:
    size, up = body.size, hair.long * body.size
    piece: Ink = (Mark(circle(0j, up), "solid"),)
    if hair.shape == "pore":
        piece = pore(up)
    return tuple(
        Copy(piece, Place(complex(p.real, p.imag + size / 2)))
        for p in strewn(_DOTS, 1.7 * HALF * size, 0.94 * size)
    )


def pore(up: float) -> Ink:
    """Return a small raised pore with its slit."""
    lens = Path(
        -1j * up,
        (
            Curve(complex(up * 0.62, -up * 0.5), complex(up * 0.62, up * 0.5), 1j * up),
            Curve(complex(-up * 0.62, up * 0.5), complex(-up * 0.62, -up * 0.5), -1j * up),
        ),
        closed=True,
    )
    return (Mark(lens, "thin"), Mark(straight(-0.45j * up, 0.45j * up), "fine"))


def _web(body: Body, hair: Hair) -> Ink:
    """Return long threads from edge to edge."""
    size, half = body.size, HALF * body.size
    marks = []
    for number in range(hair.count):
        y = size * (number + 0.5) / hair.count
        rise = hair.long * size * math.sin(number * 2.4)
        side = 1 if number % 2 else -1
        a, b = complex(-1.25 * half * side, y), complex(1.25 * half * side, y + rise)
        if not 0 <= b.imag <= size:
            b = complex(b.real, y - rise)
        marks.append(Mark(smooth([a, (a + b) / 2 + 0.03j * size * side, b]), "fine"))
    return tuple(marks)


_SHAPES: Final[Mapping[str, Grow]] = {
    "wavy": _wavy, "gland": _gland, "sting": _sting, "star": _star, "knob": _knob,
    "grain": _grain, "flake": _flake, "prickle": _prickle,
}  # fmt: skip
