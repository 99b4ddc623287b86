"""Stems that creep under the soil or along it: rhizomes, runners."""

from __future__ import annotations

import cmath
import math
from itertools import pairwise
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import smooth, straight
from sallet.drawing.ink import Copy, Curve, Line, Mark, Path, Place, put, turned
from sallet.drawing.stem.growth_lines import soil
from sallet.drawing.underground.cut import cut_ink
from sallet.drawing.underground.shape import SHAPES, Body
from sallet.drawing.underground.skin import rootlet, skin, stalk_remains

if TYPE_CHECKING:
    from sallet.drawing.ink import Ink
    from sallet.drawing.underground.form import UndergroundForm

_LONG: Final = 1.5
"""Length of a long rhizome in shares of the drawing's height; it goes on behind."""
_THIN: Final = 0.12
_SHORT: Final = 0.95
_THICK: Final = 0.26
_JOINTS: Final = (0.14, 0.32, 0.5, 0.68, 0.86)


def rhizome(form: UndergroundForm, size: float) -> tuple[Ink, float | None]:
    """Return a stem that creeps under the soil, with dotted shoots, and its scale."""
    short = form.kind.value == "short rhizome"
    long, thick = (_SHORT * size, _THICK * size) if short else (_LONG * size, _THIN * size)
    if form.ratio:
        thick = form.ratio * long
    half = thick / 2
    ink: list[Mark | Copy] = [*_roots(form, long, half, size)]
    edge = _edge(long, half, size, short=short)
    ink.append(Mark(edge, "line", "rhizome"))
    if not short:
        ink += _broken(half)
    if form.surface:
        body = Body(SHAPES["rod"], long * 0.96, half)
        ink += put(skin(body, form.surface.value), turned(90, complex(0.02 * long, 0)))
    if form.scales and form.scales.value != "remains":
        ink += _scales(form.scales.value, long, half)
    if form.scales and form.scales.value == "remains":
        ink += put(stalk_remains(half, 0.3 * size), Place(complex(long, half * 0.8)))
    turn = form.course.value if form.course else 0.0
    # It rises from its older end to its growing tip.
    down = 0.42 * size + long * math.sin(math.radians(turn))
    place = turned(turn, complex(0, -down))
    buried = put(tuple(ink), place)
    ends = [place.put(complex(x, 0)) for x in (0, long)]
    left, right = min(p.real for p in ends) - 0.12 * size, max(p.real for p in ends) + 0.28 * size
    ground = soil(left, right, size)
    shoots = _shoots(place, long, half, size, (0.5, 1.02) if short else (0.32, 0.68, 1.04))
    beside: Ink = ()
    if form.interior:
        piece = Body(SHAPES["rod"], 0.7 * size, half)
        beside = put(
            cut_ink(piece, form.interior.value, "line"),
            turned(90, complex(right + 0.1 * size, -down)),
        )
    return (*shoots, *buried, *ground, *beside), _scale(form, long, thick)


def _scale(form: UndergroundForm, long: float, thick: float) -> float | None:
    if form.length:
        return long / form.length.value
    return thick / form.width.value if form.width else None


def _edge(long: float, half: float, size: float, *, short: bool) -> Path:
    """Return the outline from its older end to its growing tip, which turns up in a bud."""
    bud = min(0.11 * size, 2.2 * half)
    tip = complex(long + bud * 0.62, half * 0.4 + bud)
    wave = half * 0.13
    level = [(t, wave * math.sin(9 * t)) for t in (0.0, 0.2, 0.4, 0.6, 0.8)]
    top = [complex(long * t, half + rise) for t, rise in level]
    low = [complex(long * t, -half + rise) for t, rise in reversed(level)]
    up = smooth(
        [
            *top,
            complex(long - bud * 0.3, half * 0.98),
            complex(long + bud * 0.12, half * 0.95 + bud * 0.2),
            tip,
        ]
    )
    down = smooth([tip, complex(long + bud * 0.72, half * 0.2 + bud * 0.3), complex(long + bud * 0.35, -half * 0.5), complex(long - bud * 0.4, -half), *low])  # fmt: skip
    path = up.then(down)
    if short:
        back = -0.4 * half
        end = Curve(low[-1] + back + 0.1j * half, top[0] + back - 0.1j * half, top[0])
        return Path(path.start, (*path.pieces, end), closed=True)
    return Path(path.start, (*path.pieces, Line(top[0])), closed=True)


def _broken(half: float) -> Ink:
    """Return the end that goes on into the soil: bare paper over the line, a wavy break."""
    cover = straight(
        complex(-half * 0.2, -half * 0.86), complex(half * 0.18, -half * 0.86),
        complex(half * 0.18, half * 0.9), complex(-half * 0.2, half * 0.9),
    )  # fmt: skip
    wave = [
        complex(0.12 * half * x, half * y)
        for x, y in ((0, -0.95), (1.2, -0.5), (-1, 0), (1.2, 0.5), (0, 1))
    ]
    return (Mark(cover.shut(), "paper"), Mark(smooth(wave), "fine"))


def _roots(form: UndergroundForm, long: float, half: float, size: float) -> Ink:
    if form.rootlets is None:
        return ()
    where = form.rootlets.value
    marks = []
    if where == "from the joints":
        seats = [(long * t + 3.2 * fork, fork) for t in _JOINTS for fork in (-1, 0, 1)]
    elif where == "few":
        seats = [(long * 0.3, 0), (long * 0.66, 1)]
    else:
        seats = [(long * (n + 0.5) / 22, (n * 7) % 3 - 1) for n in range(22)]
    for number, (x, fork) in enumerate(seats):
        tall = size * (0.27 + 0.06 * math.sin(number * 2.4))
        way = cmath.rect(tall, math.radians(-90 + 17 * fork + 4 * math.sin(number * 1.7)))
        marks.append(rootlet(complex(x, -half * 0.8), way))
    return tuple(marks)


def _scales(kind: str, long: float, half: float) -> Ink:
    """Return small leaves that clasp the creeping stem at its joints, pointing to its tip."""
    tall = half * (1.35 if kind == "fleshy" else 1.06)
    reach = min(0.14 * long, half * 2.6)
    scale = Path(
        complex(0, -tall),
        (
            Curve(complex(reach * 0.5, -tall * 1.05), complex(reach * 0.95, tall * 0.1), complex(reach, tall * 0.75)),
            Curve(complex(reach * 0.7, tall * 1.15), complex(reach * 0.3, tall * 1.12), complex(0, tall)),
            Curve(complex(reach * 0.12, tall * 0.4), complex(reach * 0.12, -tall * 0.4), complex(0, -tall)),
        ),
        closed=True,
    )  # fmt: skip
    piece: list[Mark] = [Mark(scale, "line" if kind == "fleshy" else "thin")]
    if kind == "brown":
        # Dry scales are seen by their veins.
        for n in range(5):
            y = tall * (-0.62 + 0.34 * n)
            piece.append(Mark(smooth([complex(reach * 0.12, y), complex(reach * 0.42, y + tall * 0.12), complex(reach * (0.6 + 0.05 * n), y + tall * 0.3)]), "fine"))  # fmt: skip
    return tuple(
        Copy(tuple(piece), Place(complex(long * t - reach * 0.4, 0)), "scale")
        for t in reversed(_JOINTS)
    )


def _shoots(place: Place, long: float, half: float, size: float, shares: tuple[float, ...]) -> Ink:
    """Return where shoots rise above the soil, dotted."""
    ink: list[Mark] = []
    wide = 0.022 * size
    for t in shares:
        tip = t > 1
        foot = place.put(
            complex(long + 0.05 * size, half * 0.4 + 0.09 * size)
            if tip
            else complex(long * t, half * 0.6)
        )
        top = complex(foot.real + 0.02 * size, 0.16 * size)
        ink += [
            Mark(smooth([foot + side, (foot + top) / 2 + side, top + side]), "dotted")
            for side in (-wide, wide)
        ]
    return tuple(ink)


def runners(size: float) -> tuple[Ink, float | None]:
    """Return stems along the ground that root, on both sides of a dotted plant."""
    ink: list[Mark | Copy] = [*soil(-1.0 * size, 1.0 * size, size)]
    tuft = tuple(
        Mark(_blade(0.4 * size).placed(turned(lean)), "dotted") for lean in (-38, -12, 14, 40)
    )
    young = tuple(Mark(_blade(0.2 * size).placed(turned(lean)), "dotted") for lean in (-30, 0, 30))
    for side in (-1, 1):
        joints = [complex(side * x * size, 0.015 * size) for x in (0.0, 0.48, 0.86)]
        for a, b in pairwise(joints):
            third, rise = (b - a) / 3, 0.1j * size
            path = Path(a, (Curve(a + third + rise, b - third + rise, b),))
            ink.append(Mark(path, "line", "runner"))
        for joint in joints[1:]:
            ink.append(Copy(young, Place(joint)))
            ink += (
                rootlet(joint, cmath.rect(0.3 * size, math.radians(-90 + 17 * fork)))
                for fork in (-1, 0, 1)
            )
    roots = [
        rootlet(0j, cmath.rect(0.5 * size, math.radians(-90 + 15 * fork)))
        for fork in (-2, -1, 0, 1, 2)
    ]
    return (*ink, *roots, *tuft), None


def _blade(long: float) -> Path:
    side = 0.13 * long
    return Path(
        0j,
        (
            Curve(complex(side, 0.3 * long), complex(side, 0.75 * long), 1j * long),
            Curve(complex(-side, 0.75 * long), complex(-side, 0.3 * long), 0j),
        ),
        closed=True,
    )
