"""Leaves divided once, like a feather."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from sallet.drawing.ink import Copy, Curve, Mark, Path, turned
from sallet.drawing.leaf.division import LONGEST
from sallet.drawing.leaf.leaflets import axis, dotted_leaflet, leaflet_ink, on_stalk, stalk_of

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.drawing.ink import Ink
    from sallet.drawing.leaf.division import Division

_ANGLE = 58.0
"""Degrees between the axis and a leaflet."""
_UNKNOWN_PAIRS = 3
"""Pairs where no number is recorded: the lowest is dotted and says that there may be more."""
_SMALL = 0.4
"""The small leaflets between the large ones, in lengths of a large one."""


def feather(form: Division, size: float) -> Ink:
    """Return leaflets in pairs along an axis `size` units long, end leaflet and all."""
    end = form.pattern.value.end
    pairs = max(1, form.number.value // 2) if form.number else _UNKNOWN_PAIRS
    ends_in_leaflet = end in {"leaflet", ""}
    long = _length(form, size, pairs)
    stalk = stalk_of(form, long)
    rachis = size - long - stalk if ends_in_leaflet else 0.9 * size
    piece = on_stalk(form, leaflet_ink(form, long), stalk)
    ink: list[Mark | Copy] = [axis(rachis)]
    if form.stalks and form.stalks.value == "joined":
        ink.append(_wings(rachis, 0.035 * size))
    if form.pattern.value.mixed or (form.sizes and form.sizes.value == "mixed"):
        ink.extend(_small(piece, size, rachis, pairs))
    ink.extend(_pairs(form, piece, (size, rachis, long), pairs))
    if ends_in_leaflet:
        place = turned(0, 1j * rachis, _end_scale(form))
        ink.append(
            Copy(piece, place, "leaflet") if end else Copy(dotted_leaflet(long), place, "unknown")
        )
    elif end == "tendril":
        ink.append(_tendril(1j * rachis, 0.16 * size))
    return tuple(ink)


def _length(form: Division, size: float, pairs: int) -> float:
    """Return the length of a leaflet: as recorded, or as long as leaves the pairs apart."""
    reach = form.ratio * math.sin(math.radians(_ANGLE)) * 0.92
    long = min(size * reach / (pairs + reach), LONGEST * size)
    return form.share * size if form.share else long


def _height(size: float, rachis: float, number: float, pairs: int) -> complex:
    return 1j * (0.02 * size + number * rachis / pairs)


def _pairs(
    form: Division, piece: Ink, lengths: tuple[float, float, float], pairs: int
) -> Iterator[Copy]:
    size, rachis, long = lengths
    for pair in range(pairs):
        known = bool(form.number) or pair > 0
        scale = _scale(form, pair / max(1, pairs - 1))
        for sign in (1, -1):
            place = turned(
                sign * _ANGLE, _height(size, rachis, pair, pairs), scale, mirrored=sign < 0
            )
            shown = dotted_leaflet(long) if form.end_only or not known else piece
            yield Copy(shown, place, "leaflet" if known else "unknown")


def _small(piece: Ink, size: float, rachis: float, pairs: int) -> Iterator[Copy]:
    for pair in range(pairs):
        for sign in (1, -1):
            at = _height(size, rachis, pair + 0.55, pairs)
            yield Copy(piece, turned(sign * 66, at, _SMALL, mirrored=sign < 0), "small")


def _scale(form: Division, far: float) -> float:
    kind = form.sizes.value if form.sizes else ""
    if kind == "base":
        return 1 - 0.5 * far
    if kind == "middle":
        return 0.55 + 0.45 * math.sin(math.pi * (0.12 + 0.76 * far))
    if kind == "end":
        return 0.55 + 0.25 * far
    return 1.0


def _end_scale(form: Division) -> float:
    kind = form.sizes.value if form.sizes else ""
    return {"base": 0.55, "middle": 0.75}.get(kind, 1.0)


def _wings(rachis: float, wide: float) -> Mark:
    left = Path(
        0j, (Curve(complex(-wide, 0.3 * rachis), complex(-wide, 0.7 * rachis), 1j * rachis),)
    )
    right = Path(
        1j * rachis, (Curve(complex(wide, 0.7 * rachis), complex(wide, 0.3 * rachis), 0j),)
    )
    return Mark(left.then(right).shut(), "line", "wing")


def _tendril(at: complex, long: float) -> Mark:
    turn = 0.42 * long
    steps = (
        (0.4j, 0.9j, 1.0j, 0.0, -0.2, 0.6),
        (1.05j, 0.6j, 0.66j, 1.3, 1.4, 0.8),
        (0.7j, 0.86j, 0.84j, 0.5, 0.6, 0.9),
    )
    curves = tuple(
        Curve(at + a * long + x * turn, at + b * long + y * turn, at + c * long + z * turn)
        for a, b, c, x, y, z in steps
    )
    return Mark(Path(at, curves), "line", "tendril")
