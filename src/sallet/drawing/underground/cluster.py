"""Several thick stores: in a bunch, or on a thin root like beads."""

from __future__ import annotations

import cmath
import math
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import smooth, straight
from sallet.drawing.ink import Copy, Curve, Mark, Path, Place, put, turned
from sallet.drawing.stem.growth_lines import soil
from sallet.drawing.underground.cut import cut_ink
from sallet.drawing.underground.shape import Body
from sallet.drawing.underground.skin import rootlets_all_over, skin
from sallet.drawing.underground.stores import scale_of, shape_of, shoot

if TYPE_CHECKING:
    from sallet.drawing.ink import Ink, Pen
    from sallet.drawing.underground.form import Number, UndergroundForm


def cluster(form: UndergroundForm, size: float) -> tuple[Ink, float | None]:
    """Return thick stores in a bunch below the foot of the stem, and their scale."""
    shape, ratio = shape_of(form, "spindle")
    slender = ratio < _SLENDER
    long = (0.92 if slender else min(0.42, 0.34 / ratio)) * size
    away = 0.0 if slender else 0.98 * size - long
    body = Body(shape, long, long * ratio / 2)
    sure, more = _counts(form.number.value if form.number else None)
    leans = _fan(sure + more)
    dotted = set(_flanks(sure + more, more))
    order = sorted(range(sure + more), key=lambda n: (n not in dotted, -abs(leans[n])))
    ink: list[Mark | Copy] = []
    plain = _tuber_ink(form, body, "line")
    for number in order:
        out = cmath.rect(1, math.radians(leans[number] - 90))
        far = complex(0.08 * size * out.real, -0.03 * size) + out * away * (
            0.8 + 0.2 * (number % 2)
        )
        unsure = number in dotted
        if away:
            thread = smooth([-0.04j * size, far * 0.5 + 0.03 * size * out.real, far])
            ink.append(Mark(thread, "dotted" if unsure else "thin"))
        piece = (Mark(body.edge(), "dotted"),) if unsure else plain
        ink.append(Copy(piece, turned(leans[number], far), "more" if unsure else "tuber"))
    crown = 0.1 * size
    foot = Path(
        complex(-crown, 0.0),
        (
            Curve(complex(-crown * 1.25, -0.05 * size), complex(-crown, -0.1 * size), complex(0, -0.1 * size)),
            Curve(complex(crown, -0.1 * size), complex(crown * 1.25, -0.05 * size), complex(crown, 0)),
        ),
        closed=True,
    )  # fmt: skip
    reach = (
        max((abs(math.sin(math.radians(a))) for a in leans), default=0.4) * (long + away)
        + 0.16 * size
    )
    ink += (Mark(foot, "line", "crown"), *soil(-reach, reach, size))
    ink += shoot(0.055 * size, 0.13 * size)
    if form.interior:
        at = Place(complex(reach + body.half * 1.3, -0.03 * size))
        ink += put(cut_ink(body, form.interior.value, "line"), at)
    return tuple(ink), scale_of(form, body)


def _tuber_ink(form: UndergroundForm, body: Body, pen: Pen) -> Ink:
    ink: list[Mark | Copy] = []
    if form.rootlets:
        ink += rootlets_all_over(body, 2 if form.rootlets.value == "few" else 8)
    ink.append(Mark(body.edge(), pen))
    if form.surface:
        ink += skin(body, form.surface.value)
    return tuple(ink)


_SLENDER: Final = 0.62
_UNTOLD: Final = (3, 4)
"""Stores in ink and dotted where no number is recorded; `several` is all that is known."""


def _counts(number: Number | None) -> tuple[int, int]:
    if number is None:
        return _UNTOLD
    return number.least, 2 if number.more else 0


def _fan(count: int) -> list[float]:
    """Return the degrees by which stores lean."""
    if count == 1:
        return [0.0]
    half = min(64.0, 17.0 * (count - 1) / 2)
    return [-half + 2 * half * n / (count - 1) for n in range(count)]


def _flanks(count: int, more: int) -> list[int]:
    """Return which of the stores are dotted: those at both ends of the fan."""
    left = more // 2
    return [*range(left), *range(count - (more - left), count)]


def string(form: UndergroundForm, size: float) -> tuple[Ink, float | None]:
    """Return thick stores along a thin root, like beads, and their scale."""
    shape, ratio = shape_of(form, "round")
    long = 0.34 * size
    body = Body(shape, long, long * ratio / 2)
    sure, more = _counts(form.number.value if form.number else None)
    more = min(more, 1)
    gap = long * 0.55
    ink: list[Mark | Copy] = []
    start = complex(0.16 * size, -0.4 * size)
    bead = put(_tuber_ink(form, body, "line"), turned(90))
    at = start
    thread = [0j, complex(0.02 * size, -0.2 * size), start]
    for number in range(sure):
        place = Place(at + 1j * 0.03 * size * math.sin(number * 2.4))
        ink.append(Copy(bead, place, "tuber"))
        at += long + gap
        if number < sure - 1:
            thread += [place.at + long, place.at + long + gap * 0.5 - 0.02j * size]
    ends: list[Mark] = [Mark(smooth([*thread, at - gap]), "line", "thread")]
    if more:
        ends.append(Mark(straight(at - gap, at), "dotted"))
        dotted = put((Mark(body.edge(), "dotted"),), turned(90))
        ink.append(Copy(dotted, Place(at), "more"))
        at += long
    ground = soil(-0.3 * size, at.real, size)
    return (*ends, *ink, *ground, *shoot(0.03 * size, 0.13 * size)), scale_of(form, body)
