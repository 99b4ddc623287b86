"""The middle of a flower seen from above: stamens, styles and stigmas."""

from __future__ import annotations

import cmath
import math
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import GOLDEN, circle, ellipse, straight
from sallet.drawing.ink import Copy, Mark, turned

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.ink import Ink

RING: Final = 11
"""Up to how many stamens stand in one ring."""
REACH: Final[Mapping[str, float]] = {"half": 0.5, "level": 0.93, "out": 1.14, "": 0.36}
"""How far the stamens reach, beside the petals."""


def stamens_ink(count: int, reach: float, thread: float, *, crowd: bool, turn: float) -> Ink:
    """Return stamens round the middle; `reach` is their length in units.

    `thread` is where the stalks begin, `turn` the direction of the first in degrees. Where they
    are many they stand crowded in several lengths.
    """
    if crowd:
        tuft = tuple(
            Copy(stamen(thread, reach * share), turned(at), "stamen")
            for at, share in ((0, 1.0), (41, 0.78), (27, 0.92), (58, 0.6), (14, 0.68))
        )
        return tuple(Copy(tuft, turned(turn + GOLDEN * k)) for k in range(8))
    if count <= RING:
        piece = stamen(thread, reach)
        return tuple(Copy(piece, turned(turn + 360 * k / count), "stamen") for k in range(count))
    pieces = [stamen(thread, reach * share) for share in (1.0, 0.74)]
    outer = (count + 1) // 2
    return tuple(
        Copy(pieces[k % 2], turned(turn + 180 * k / outer), "stamen") for k in range(count)
    )


def stamen(begin: float, end: float) -> Ink:
    """Return one stamen that stands up the page: its stalk and its pollen sac."""
    sac = max(2.0, min(4.5, (end - begin) * 0.12))
    return (
        Mark(straight(1j * begin, 1j * (end - sac)), "thin"),
        Mark(ellipse(1j * end, sac * 0.68, sac), "thin"),
    )


def styles_ink(count: int, length: float, stigma: str, *, crowd: bool) -> Ink:
    """Return the styles in the middle, `length` units long, with what they bear."""
    if count == 1:
        return (Copy(_ALONE[stigma](length), turned(0), "style"),)
    if crowd:
        head: Ink = (Mark(circle(0.8j * length, max(1.2, length * 0.1)), "thin"),)
        tuft = tuple(
            Copy(head, turned(a, scale=s), "style") for a, s in ((0, 1.0), (38, 0.7), (19, 0.4))
        )
        return tuple(Copy(tuft, turned(GOLDEN * k)) for k in range(9))
    piece = style(length, stigma)
    return tuple(Copy(piece, turned(360 * k / count), "style") for k in range(count))


def style(length: float, stigma: str) -> Ink:
    """Return one style that leans up the page, with its stigma."""
    head = max(1.6, length * 0.16)
    if stigma not in _HEADS:
        return (Mark(straight(0j, 1j * length)),)
    lines = tuple(
        Mark(straight(*(complex(x * head, length + y * head) for x, y in run)), "thin")
        for run in _HEADS[stigma]
    )
    stalk = Mark(straight(0j, 1j * length))
    if stigma == "knob":
        return (stalk, Mark(circle(1j * length, head)))
    if stigma == "disc":
        return (stalk, Mark(ellipse(1j * length, head * 1.8, head * 0.7)))
    return (stalk, *lines)


_HEADS: Final[Mapping[str, tuple[tuple[tuple[float, float], ...], ...]]] = {
    "knob": (),
    "disc": (),
    "fork": (((-1.2, 1.6), (0, 0), (1.2, 1.6)),),
    "three": (((-1.5, 1.2), (0, 0), (1.5, 1.2)), ((0, 0), (0, 1.9))),
    "feather": (
        ((-1.2, 0.2), (0, -1), (1.2, 0.2)), ((-1.2, 1.2), (0, 0), (1.2, 1.2)),
        ((-1, 2.2), (0, 1), (1, 2.2)), ((0, 0), (0, 2.2)),
    ),
    "threads": (((-0.9, 3.2), (0, 0), (0.9, 3.2)), ((0, 0), (0, 3.6))),
    "hook": (((0, 0), (0.5, 0.9), (1.3, 0.9), (1.6, 0.1)),),
}  # fmt: skip
"""The tips of a style, by its stigma, in the width of a knob."""


def _bare(length: float) -> Ink:
    return (Mark(circle(0j, max(1.6, length * 0.14)), "solid"),)


def _knob(length: float) -> Ink:
    return (Mark(circle(0j, max(2.2, length * 0.26))),)


def _disc(length: float) -> Ink:
    radius = length * 0.6
    rays = (straight(0j, cmath.rect(radius, math.tau * k / 8)) for k in range(8))
    return (Mark(circle(0j, radius)), *(Mark(ray, "thin") for ray in rays))


def _rays(length: float, arms: int, pen: str) -> Ink:
    return tuple(
        Mark(
            straight(0j, cmath.rect(length * 0.42, math.pi / 2 + math.tau * k / arms)),
            "line" if pen == "line" else "thin",
        )
        for k in range(arms)
    )


def _feather(length: float) -> Ink:
    head = length * 0.24
    return tuple(
        Mark(straight(*(complex(x * head, y * head) for x, y in run)), "thin")
        for run in _HEADS["feather"]
    )


def _hook(length: float) -> Ink:
    head = length * 0.3
    return (Mark(straight(*(complex(x * head, y * head) for x, y in _HEADS["hook"][0]))),)


_ALONE: Final = {
    "": _bare,
    "knob": _knob,
    "disc": _disc,
    "fork": lambda length: _rays(length, 2, "line"),
    "three": lambda length: _rays(length, 3, "line"),
    "threads": lambda length: _rays(length * 1.6, 5, "thin"),
    "feather": _feather,
    "hook": _hook,
}
"""A single style seen from above, by its stigma."""
