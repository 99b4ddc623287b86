"""How leaves come out of the ground: each on its own stalk, wrapped round one another, on a stem."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import straight
from sallet.drawing.ink import Copy, Curve, Line, Mark, Path, turned
from sallet.drawing.sketch import Sketch
from sallet.drawing.told import characters

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.ink import Ink
    from sallet.drawing.told import Shown, Told


@dataclass(frozen=True)
class RisingForm:
    """What is shown of how leaves leave the ground."""

    way: Shown[str]
    """The vocabulary's hint `from ground`, a key of WAYS."""


def rising(told: Told, size: float) -> Sketch | None:
    """Return leaves rising from the ground, `size` units high; None where it is not recorded."""
    way = told.hint("rises from the ground", "from ground")
    if way is None:
        return None
    form = RisingForm(way)
    return Sketch("how the leaves rise", WAYS[way.value](size), characters(form))


def _blade(size: float) -> Ink:
    """Return a plain blade: the sign for one, whatever its shape."""
    long, wide = 0.52 * size, 0.12 * size
    edge = Path(
        0j,
        (
            Curve(complex(wide, 0.2 * long), complex(wide, 0.72 * long), 1j * long),
            Curve(complex(-wide, 0.72 * long), complex(-wide, 0.2 * long), 0j),
        ),
        closed=True,
    )
    return (Mark(edge, "thin"), Mark(straight(0j, 0.93j * long), "fine"))


def _ground(size: float) -> Ink:
    line = straight(complex(-0.46 * size, 0), complex(0.46 * size, 0))
    soil = (
        Mark(straight(complex(x * size, 0), complex((x - 0.03) * size, -0.035 * size)), "fine")
        for x in (-0.36, -0.22, -0.08, 0.08, 0.22, 0.36)
    )
    return (Mark(line, "fine", "ground"), *soil)


def _stalk(foot: complex, top: complex, half: float, part: str = "stalk") -> Mark:
    side = 1j * (top - foot) / abs(top - foot) * half
    return Mark(
        Path(
            foot + side,
            (Line(top + side * 0.8), Line(top - side * 0.8), Line(foot - side)),
        ),
        "line",
        part,
    )


def _single(size: float) -> Ink:
    """Return three leaves, each with a stalk of its own down into the soil."""
    ink: list[Mark | Copy] = []
    for x, lean in ((-0.24, 12), (0.22, -14), (0.0, 2)):
        place = turned(lean, complex(x * size, 0))
        top = place.put(0.44j * size)
        ink.append(_stalk(place.put(-0.03j * size), top, 0.014 * size))
        ink.append(Copy(_blade(size), turned(lean, top), "leaf"))
    return (*ink, *_ground(size))


def _wrapped(size: float, count: int) -> Ink:
    """Return leaves of one shoot: the stalk of each comes out of the sheath of the one outside it."""
    ink: list[Mark | Copy] = []
    # From the innermost, whose mouth is the highest, to the outermost, which hides their feet.
    for number in range(count):
        inner = count - 1 - number
        side = 1 if number % 2 else -1
        half = (0.05 - 0.011 * inner) * size
        mouth = (0.2 + 0.12 * inner) * size
        lean = 6.0 if not number and count % 2 else 15.0
        top = complex(side * (0.045 if number else 0.02) * size * 2, mouth + 0.17 * size)
        neck = 0.012 * size
        sheath = Path(
            complex(side * half, -0.03 * size),
            (
                Line(complex(side * half, mouth - 0.03 * size)),
                Curve(
                    complex(side * half, mouth + 0.05 * size),
                    top + complex(side * neck, -0.08 * size),
                    top + side * neck,
                ),
                Line(top - side * neck),
                Curve(
                    top + complex(-side * neck, -0.08 * size),
                    complex(side * 0.3 * half, mouth + 0.04 * size),
                    complex(0, mouth),
                ),
                Curve(
                    complex(-side * 0.4 * half, mouth - 0.03 * size),
                    complex(-side * half, mouth - 0.05 * size),
                    complex(-side * half, mouth - 0.07 * size),
                ),
                Line(complex(-side * half, -0.03 * size)),
            ),
        )
        ink += [
            Copy(_blade(size), turned(-side * lean, top, 1 - 0.04 * number), "leaf"),
            Mark(sheath.shut(), "paper"),
            Mark(sheath, "line", "sheath"),
        ]
    return (*ink, *_ground(size))


def _pair(size: float) -> Ink:
    return _wrapped(size, 2)


def _nested(size: float) -> Ink:
    return _wrapped(size, 3)


def _on_stem(size: float) -> Ink:
    """Return leaves on a stem that can be seen above the ground."""
    ink: list[Mark | Copy] = [_stalk(-0.03j * size, 0.98j * size, 0.02 * size, "stem")]
    for height, lean in ((0.34, -58), (0.34, 58), (0.66, -52), (0.66, 52)):
        ink.append(Copy(_blade(size), turned(lean, 1j * height * size, 0.66), "leaf"))
    return (*ink, *_ground(size))


WAYS: Final[Mapping[str, Callable[[float], Ink]]] = {
    "single": _single,
    "pair": _pair,
    "nested": _nested,
    "stem": _on_stem,
}
"""The ways of rising, by the vocabulary's hint `from ground`."""
