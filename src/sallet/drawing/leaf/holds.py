"""How a leaf without a stalk holds its stem: clasping, running down, pierced, joined in pairs."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import ellipse, straight
from sallet.drawing.ink import Curve, Mark, Path
from sallet.drawing.leaf.stem_piece import LEAN, stem_piece

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.ink import Ink


@dataclass(frozen=True)
class Foot:
    """The ink of a foot: what lies behind the blade and what before it."""

    behind: Ink = ()
    before: Ink = ()


def _clasping(length: float) -> Foot:
    wide, deep = 0.11 * length, 0.07 * length
    ears = Path(
        complex(-0.02 * length, 0.1 * length),
        (
            Curve(complex(-wide, 0.08 * length), complex(-1.35 * wide, -deep), complex(-0.5 * wide, -1.2 * deep)),
            Curve(complex(-0.1 * wide, -1.2 * deep), complex(-0.1 * wide, -0.1 * deep), 0j),
            Curve(complex(0.1 * wide, -0.1 * deep), complex(0.1 * wide, -1.2 * deep), complex(0.5 * wide, -1.2 * deep)),
            Curve(complex(1.35 * wide, -deep), complex(wide, 0.08 * length), complex(0.02 * length, 0.1 * length)),
        ),
    )  # fmt: skip
    return Foot(stem_piece(0j, length), (Mark(ears, "paper"), Mark(ears, "line", "ears")))


def _decurrent(length: float) -> Foot:
    down = -LEAN * 0.3 * length
    side = LEAN * 1j * 0.03 * length
    wings = []
    for sign in (-1, 1):
        out = side * sign
        wing = Path(out, (Curve(out * 2.6 + 0.15 * down, out * 2.6 + 0.6 * down, out + down),))
        wings.append(Mark(wing, "line", "wing"))
    return Foot((*wings, *stem_piece(0j, length, 0.34)))


def _pierced(length: float) -> Foot:
    at = 0.14j * length
    side = LEAN * 1j * 0.025 * length
    up = at + LEAN * 0.42 * length
    stem = (
        Mark(straight(at - side, up - side, up + side, at + side, closed=True), "paper"),
        Mark(straight(at - side, up - side)),
        Mark(straight(at + side, up + side)),
        Mark(ellipse(at, 0.028 * length, 0.016 * length), "line", "hole"),
    )
    low = at - LEAN * 0.46 * length
    behind = (
        Mark(straight(at - side, low - side, low + side, at + side, closed=True), "paper"),
        Mark(straight(at - side, low - side)),
        Mark(straight(at + side, low + side)),
    )
    return Foot(behind, stem)


def _joined(length: float) -> Foot:
    """Return the pair's other leaf, cut short, with the stem between them."""
    wide = 0.15 * length
    low = -0.34j * length
    other = (
        Mark(
            straight(
                complex(-wide, 0), low - wide * 1.6, low + wide * 1.6, complex(wide, 0), closed=True
            ),
            "paper",
        ),
        Mark(
            Path(
                complex(-wide, 0),
                (
                    Curve(
                        complex(-wide, -0.1 * length),
                        low + complex(-1.3 * wide, 0.1 * length),
                        low - 1.6 * wide,
                    ),
                ),
            ),
            "line",
            "blade",
        ),
        Mark(
            Path(
                complex(wide, 0),
                (
                    Curve(
                        complex(wide, -0.1 * length),
                        low + complex(1.3 * wide, 0.1 * length),
                        low + 1.6 * wide,
                    ),
                ),
            ),
            "line",
            "blade",
        ),
    )
    neck = (
        Mark(
            Path(
                complex(-wide, 0),
                (
                    Curve(
                        complex(-wide, 0.06 * length),
                        complex(-1.1 * wide, 0.1 * length),
                        complex(-1.3 * wide, 0.16 * length),
                    ),
                ),
            )
        ),
        Mark(
            Path(
                complex(wide, 0),
                (
                    Curve(
                        complex(wide, 0.06 * length),
                        complex(1.1 * wide, 0.1 * length),
                        complex(1.3 * wide, 0.16 * length),
                    ),
                ),
            )
        ),
    )
    hole = (Mark(ellipse(0j, 0.04 * length, 0.022 * length), "line", "hole"),)
    return Foot(other, (*neck, *hole))


HOLDS: Final[Mapping[str, Callable[[float], Foot]]] = {
    "clasp": _clasping,
    "decurrent": _decurrent,
    "pierced": _pierced,
    "joined": _joined,
}
"""The ways in which a leaf without a stalk holds its stem, by the hint `base`."""
