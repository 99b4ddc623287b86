"""A twig with its buds: one, two or more to a joint."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import straight
from sallet.drawing.ink import Copy, Curve, Mark, Path, turned
from sallet.drawing.sketch import Sketch
from sallet.drawing.told import characters

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.ink import Ink
    from sallet.drawing.told import Shown, Told


@dataclass(frozen=True)
class TwigForm:
    """What is shown of a twig."""

    buds: Shown[str]
    """How many stand at a joint, by the vocabulary's hint `per node`."""


_JOINTS: Final = 4
_SEATS: Final[Mapping[str, tuple[tuple[float, float], ...]]] = {
    "2": ((-1.0, 27.0), (1.0, -27.0)),
    "3": ((-1.0, 29.0), (1.0, -29.0), (-0.42, 13.0), (0.42, -13.0)),
}
"""Where buds stand on the near side of a joint, in shares of half the breadth, and their lean."""
_LEFT_RIGHT: Final = (((-1.0, 27.0),), ((1.0, -27.0),))


def twig(told: Told, size: float) -> Sketch | None:
    """Return a twig `size` units long with its buds; None where their number is not recorded."""
    buds = told.hint("buds on the twig", "per node")
    if buds is None:
        return None
    form = TwigForm(buds)
    return Sketch("buds on the twig", twig_ink(form, size), characters(form))


def twig_ink(form: TwigForm, size: float) -> Ink:
    """Return an upright twig, its foot at the origin; both ends are left open."""
    half = 0.032 * size
    edge = straight(
        complex(-half, 0), complex(-half * 0.7, size), complex(half * 0.7, size), complex(half, 0)
    )
    sides = (
        Mark(straight(edge.start, edge.pieces[0].end), "line", "edge"),
        Mark(straight(edge.pieces[1].end, edge.end), "line", "edge"),
    )
    bud = (Mark(_bud(0.115 * size)),)
    ink: list[Mark | Copy] = []
    for joint in range(_JOINTS):
        y = (0.13 + 0.235 * joint) * size
        wide = half * (1 - 0.3 * y / size)
        seats = _SEATS.get(form.buds.value) or _LEFT_RIGHT[joint % 2]
        for share, lean in seats:
            ink.append(Copy(bud, turned(lean, complex(wide * share, y)), "bud"))
    behind = [one for one in ink if isinstance(one, Copy) and abs(one.place.at.real) >= half * 0.65]
    before = [one for one in ink if one not in behind]
    return (*behind, Mark(edge.shut(), "paper"), *sides, *before)


def _bud(long: float) -> Path:
    half = long * 0.21
    return Path(
        0j,
        (
            Curve(complex(half * 1.5, long * 0.12), complex(half * 1.1, long * 0.62), 1j * long),
            Curve(complex(-half * 1.1, long * 0.62), complex(-half * 1.5, long * 0.12), 0j),
        ),
        closed=True,
    )
