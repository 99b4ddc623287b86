"""How a leaf stands on its plant: its stalk, long, winged, sheathing, or none."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import circle, straight
from sallet.drawing.ink import Curve, Line, Mark, Path
from sallet.drawing.leaf.holds import HOLDS, Foot
from sallet.drawing.leaf.stem_piece import stem_piece

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.ink import Ink
    from sallet.drawing.told import Shown, Told

STALKS: Final[Mapping[str, float]] = {"long": 0.4, "short": 0.12, "blurred": 0.3, "winged": 0.36,
                                      "sheath": 0.22, "middle": 0.5}  # fmt: skip
"""Length of the stalk, in lengths of the blade, where none is recorded, by the hint `stalk`."""
_MEASURED: Final = frozenset({"long", "short", "middle", "winged"})
"""Kinds of stalks that are drawn as long as recorded."""
LONGEST: Final = 1.2
"""A stalk of more blades' lengths is drawn shorter than it is, with a break in it."""
_REST: Final = 0.15
"""How much of what is over is drawn."""


@dataclass(frozen=True)
class FootForm:
    """What is shown of a leaf below its blade."""

    stalk: Shown[str] | None = None
    """The hint `stalk` of the attachment."""
    base: Shown[str] | None = None
    """The hint `base` of the attachment: clasp, decurrent, pierced, joined."""
    share: Shown[float] | None = None
    """Length of the stalk, in lengths of the blade."""


def foot_form(told: Told, blade_millimetres: Shown[float] | None) -> FootForm:
    """Return how a blade is carried, as recorded."""
    stalk = told.hint("attachment", "stalk")
    base = told.hint("attachment", "base")
    share = None
    if stalk and stalk.value in _MEASURED:
        share = told.hint_number("stalk against blade", "stalk")
        length = told.length("stalk length")
        if length and blade_millimetres:
            share = length.as_(length.value / blade_millimetres.value)
    return FootForm(stalk if base is None else None, base, share)


def foot(form: FootForm, length: float) -> Foot:
    """Return the foot of a leaf whose blade is `length` units long and begins at 0."""
    if form.base:
        return HOLDS[form.base.value](length)
    kind = form.stalk.value if form.stalk else ""
    if kind == "none":
        return Foot(stem_piece(0j, length))
    if not kind:
        # Nothing is recorded of what carries the blade.
        return Foot((Mark(straight(0j, -0.12j * length), "dotted"),))
    wanted = form.share.value if form.share else STALKS[kind]
    over = max(0.0, min(wanted, 4.0) - LONGEST)
    long = max(0.04, min(wanted, LONGEST) + _REST * over) * length
    end = -1j * long
    stalk = WAYS[kind](long, length)
    if wanted > LONGEST:
        stalk = Foot((*stalk.behind, *_broken(end * 0.55, _thick(length))), stalk.before)
    return stalk


def _thick(length: float) -> float:
    return max(1.5, 0.014 * length)


def _stalk(long: float, length: float) -> Foot:
    half = _thick(length)
    end = -1j * long
    left = Path(
        complex(-half, 0),
        (Curve(complex(-half, -0.3 * long), end + complex(-half, 0.3 * long), end - 1.25 * half),),
    )
    right = Path(
        end + 1.25 * half,
        (Curve(end + complex(half, 0.3 * long), complex(half, -0.3 * long), complex(half, 0)),),
    )
    return Foot((Mark(left.then(right).shut(), "line", "stalk"),))


def _winged(long: float, length: float) -> Foot:
    plain = _stalk(long, length)
    wide = 0.05 * length
    end = -1j * long
    left = Path(0j, (Curve(complex(-wide, -0.1 * long), complex(-wide, -0.6 * long), end),))
    right = Path(end, (Curve(complex(wide, -0.6 * long), complex(wide, -0.1 * long), 0j),))
    return Foot((Mark(left.then(right).shut(), "line", "wing"), *plain.behind))


def _blurred(long: float, length: float) -> Foot:
    # The edges of the blade run on: nobody can say where the stalk begins.
    half, wide = _thick(length), 0.034 * length
    top, end = 0.045j * length, -1j * long
    left = Path(top - wide, (Curve(-0.7 * wide, end * 0.5 - half, end - half),))
    right = Path(end + half, (Curve(end * 0.5 + half, 0.7 * wide + 0j, top + wide),))
    whole = left.then(right)
    return Foot((), (Mark(whole, "paper"), Mark(whole, "line", "stalk")))


def _middle(long: float, length: float) -> Foot:
    half = _thick(length)
    centre, end = 0.42j * length, -1j * long * 0.5
    stalk = straight(centre - half, end - half, end + half, centre + half, closed=True)
    return Foot(
        (Mark(stalk, "line", "stalk"),), (Mark(circle(centre, 2.2 * half), "fine", "stalk"),)
    )


def _sheathing(long: float, length: float) -> Foot:
    half, wide = _thick(length), 0.055 * length
    end = -1j * long
    low = end - 0.3j * length
    left = Path(
        complex(-half, 0),
        (
            Curve(complex(-half, -0.6 * long), end + complex(-wide, 0.05 * length), end - wide),
            Line(low - wide),
        ),
    )
    right = Path(
        low + wide,
        (
            Line(end + wide),
            Curve(end + complex(wide, 0.05 * length), complex(half, -0.6 * long), complex(half, 0)),
        ),
    )
    seam = Path(
        end + 0.2 * wide, (Curve(end - 0.05j * length, low + 0.1j * length, low + 0.5 * wide),)
    )
    stem_top = end + complex(-0.62 * wide, 0.2 * length)
    stem = (
        Mark(
            straight(
                end - 0.7 * wide,
                stem_top - 0.3 * wide,
                stem_top + 0.5 * wide,
                end + 0.5 * wide,
                closed=True,
            ),
            "paper",
        ),
        Mark(straight(end - 0.7 * wide, stem_top - 0.3 * wide)),
        Mark(straight(end + 0.5 * wide, stem_top + 0.5 * wide)),
    )
    return Foot((*stem, Mark(left.then(right).shut(), "line", "sheath"), Mark(seam, "fine")))


WAYS: Final[Mapping[str, Callable[[float, float], Foot]]] = {
    "long": _stalk,
    "short": _stalk,
    "blurred": _blurred,
    "winged": _winged,
    "middle": _middle,
    "sheath": _sheathing,
}
"""The ways in which a stalk is drawn, by the hint `stalk`."""


def _broken(at: complex, half: float) -> Ink:
    """Return the sign of a line that is drawn shorter than it is."""
    step = complex(2.6 * half, 1.2 * half)
    gap = 0.9j * half
    return (
        Mark(
            straight(
                at - step - gap, at + step - gap, at + step + gap, at - step + gap, closed=True
            ),
            "paper",
        ),
        Mark(straight(at - step - gap, at + step - gap), "fine", "break"),
        Mark(straight(at - step + gap, at + step + gap), "fine", "break"),
    )
