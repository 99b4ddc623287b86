"""Stems and leaf stalks cut across: the outline, its ridges and corners, what is inside."""

from __future__ import annotations

import cmath
import math
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import ellipse, straight
from sallet.drawing.ink import Mark, Place, put
from sallet.drawing.sketch import Sketch
from sallet.drawing.stem.section_cut import PULLED, lengthwise, pulled_apart
from sallet.drawing.stem.section_fill import cells, stippled, within
from sallet.drawing.stem.section_outline import (
    RIDGES,
    along,
    of_breadth_one,
    outward,
    ridge_marks,
    ridged,
)
from sallet.drawing.stem.section_shapes import PLAIN, STALKS, STEMS
from sallet.drawing.told import characters

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.curves import Walk
    from sallet.drawing.ink import Copy, Ink
    from sallet.drawing.stem.section_outline import Outline, Ridges
    from sallet.drawing.told import Shown, Told


@dataclass(frozen=True)
class SectionForm:
    """What is shown of a stem or leaf stalk cut across."""

    outline: Shown[Outline] | None
    """None: it is dotted."""
    ridges: Shown[Ridges] | None = None
    interior: Shown[str] | None = None
    """A key of INSIDES."""
    pith: Shown[float] | None = None
    """How much of the breadth the pith takes."""
    hairs: Shown[str] | None = None
    """Where hairs stand: a key of `_HAIRS`."""
    thread: Shown[bool] | None = None
    """Whether a thread holds the halves of a broken stem together."""
    millimetres: Shown[float] | None = None
    """The breadth."""


INSIDES: Final[Mapping[str, float]] = {
    "no": 0.0, "yes": 0.58, "narrow": 0.2, "wide": 0.86, "pith": 0.5, "walls": 0.58, "ladder": 0.42,
    "spongy": 0.0, "strings": 0.0,
}  # fmt: skip
"""How much of the breadth the hollow or the pith takes, by the vocabulary's hint `hollow`."""
PITHS: Final = {"narrow": 0.17, "middling": 0.36, "wide": 0.68}
"""Shares of the stem: within what the vocabulary defines."""
_FULL: Final = frozenset({"", "no", "pith", "ladder"})
"""Insides within which there can be pith."""
_HAIRS: Final = {
    "all round": "all", "in one line": "one", "in two lines": "two", "on the corners only": "corners",
}  # fmt: skip
_STRINGY: Final = {"stringy": "strings"}
_SPACING: Final = 0.062
_MANY_PIECES: Final = 12
_PITH_MESH: Final = 0.062
_PITH_WAYS: Final = tuple(cmath.rect(1, math.radians(degrees)) for degrees in (-30, 30))
_TUFT: Final = 7
_ROUND_ABOUT: Final = 44
_HAIR: Final = 0.085
"""Length of a hair in shares of the breadth."""


def section_form(told: Told) -> SectionForm | None:
    """Return the form of a stem cut across; None where neither outline nor inside is recorded."""
    outline = _outline(told, "section", STEMS)
    interior = told.hint("interior", "hollow")
    if outline is None and interior is None:
        return None
    return SectionForm(
        outline=outline,
        ridges=_ridges(told, outline),
        interior=interior,
        pith=_pith(told, interior),
        hairs=_hairs(told, outline),
        thread=told.pick("inner thread", PULLED),
        millimetres=told.length("thickness"),
    )


def stalk_form(told: Told) -> SectionForm | None:
    """Return the form of a leaf stalk cut across; None where nothing of it is recorded."""
    outline = _outline(told, "stalk section", STALKS)
    interior = told.hint("stalk interior", "hollow") or told.pick("stalk interior", _STRINGY)
    if outline is None and interior is None:
        return None
    return SectionForm(outline=outline, interior=interior)


def section_ink(form: SectionForm, size: float) -> Ink:
    """Return a cut `size` units broad, its middle at the origin; what is cut lengthwise beside it."""
    outline = form.outline.value if form.outline else PLAIN
    if form.outline and form.ridges:
        outline = ridged(outline, form.ridges.value)
    outline = of_breadth_one(outline)
    kind = form.interior.value if form.interior else ""
    share = form.pith.value if form.pith else INSIDES.get(kind, 0.0)
    ink = [*_edge(form, outline, size), *_inside(form, outline, kind, share, size)]
    if form.hairs:
        ink += _hair_ink(form.hairs.value, outline, size)
    right = 0.68 * size
    if kind in {"walls", "ladder"}:
        piece = lengthwise(kind, share, size, dotted=form.outline is None)
        ink += put(piece, Place(complex(right + 0.5 * size, 0)))
        right += 1.18 * size
    if form.thread:
        piece = pulled_apart(size, thread=form.thread.value)
        ink += put(piece, Place(complex(right + 0.2 * size, 0)))
    return tuple(ink)


def stem_section(told: Told, size: float) -> Sketch | None:
    """Return a stem cut across; `size` is its breadth in units."""
    form = section_form(told)
    if form is None:
        return None
    wanted = ("section", "ridges", "interior", "thickness")
    return Sketch(
        title="stem cut across",
        ink=section_ink(form, size),
        shows=characters(form),
        scale=size / form.millimetres.value if form.millimetres else None,
        wants=tuple(label for label in wanted if label not in told.items),
    )


def stalk_section(told: Told, size: float) -> Sketch | None:
    """Return a leaf stalk cut across, its upper side up; `size` is its breadth in units."""
    form = stalk_form(told)
    if form is None:
        return None
    wanted = ("stalk section", "stalk interior")
    return Sketch(
        title="leaf stalk cut across",
        ink=section_ink(form, size),
        shows=characters(form),
        wants=tuple(label for label in wanted if label not in told.items),
    )


def _outline(told: Told, label: str, among: Mapping[str, Outline]) -> Shown[Outline] | None:
    hint = told.hint(label, "section")
    return hint.as_(among[hint.value]) if hint and hint.value in among else None


def _ridges(told: Told, outline: Shown[Outline] | None) -> Shown[Ridges] | None:
    hint = told.hint("ridges", "ridges")
    if hint is None or hint.value not in RIDGES:
        return None
    if outline and outline.value is STEMS["grooves"]:
        # The outline says the same already.
        return None
    if outline and outline.value.dotted:
        return None
    return hint.as_(RIDGES[hint.value])


def _pith(told: Told, interior: Shown[str] | None) -> Shown[float] | None:
    kind = interior.value if interior else ""
    return told.pick("pith width", PITHS) if kind in _FULL else None


def _hairs(told: Told, outline: Shown[Outline] | None) -> Shown[str] | None:
    hairs = told.pick("hair arrangement", _HAIRS)
    if hairs and hairs.value == "corners" and not (outline and outline.value.corners):
        return None
    return hairs


def _edge(form: SectionForm, outline: Outline, size: float) -> Ink:
    scaled = Place(turn=complex(size))
    if form.outline is None:
        marks: Ink = (Mark(outline.edge, "dotted", "outline"),)
        return put(marks + (ridge_marks(form.ridges.value) if form.ridges else ()), scaled)
    if not outline.dotted:
        return put((Mark(outline.edge, "line", "outline"),), scaled)
    return put(
        (
            Mark(outline.edge, "paper"),
            *(Mark(path, "dotted", "outline") for path in outline.dotted),
            *(Mark(path, "line", "outline") for path in outline.inked),
        ),
        scaled,
    )


def _inside(form: SectionForm, outline: Outline, kind: str, share: float, size: float) -> Ink:
    steps = 2 if len(outline.edge.pieces) > _MANY_PIECES else 6
    edge = [p * size for p in outline.edge.points(steps)]
    # A little off the edge, so that no dot touches the line.
    trimmed = [p - (p - outline.middle * size) * 0.055 for p in edge]
    middle, half = outline.middle * size, outline.half * size
    hollow = share + (0.05 if share else 0.0)

    def outside(point: complex, of: float) -> bool:
        off = point - middle
        return (off.real / half.real) ** 2 + (off.imag / half.imag) ** 2 > of * of

    def full(point: complex) -> bool:
        return outside(point, hollow) and within(trimmed, point)

    ink: list[Mark | Copy] = []
    if kind == "spongy":
        holes = [p * 0.86 for p in edge]
        return cells(0.042 * size, 0.105 * size, 0.6 * size, lambda p: within(holes, p), "hole")
    low = min(p.imag for p in edge)
    top = max(p.imag for p in edge)
    shift = complex(0, (low + top) / 2)
    if kind:
        dots = stippled(size, top - low, _SPACING * size, lambda p: full(p + shift))
        ink += (Mark(m.path.placed(Place(shift)), m.pen) for m in dots)
    if kind == "strings":
        return (*ink, *_strings(trimmed, size))
    if not share:
        return tuple(ink)
    inner = ellipse(middle, half.real * share, half.imag * share)
    if kind in {"yes", "narrow", "wide", "walls"}:
        return (*ink, Mark(inner, "thin", "hollow"))
    ink.append(Mark(inner, "fine" if form.pith else "dotted", "pith"))
    if kind != "ladder":
        ink += _pith_net(middle, half * share, _PITH_MESH * size)
    return tuple(ink)


def _pith_net(middle: complex, half: complex, mesh: float) -> Ink:
    """Return the soft core as a net of fine lines within an ellipse."""
    marks = []
    for slope in _PITH_WAYS:
        # In the ellipse made round, a line at `off` from the middle is a chord.
        rows = max(3, round(2 * half.real / mesh))
        for row in range(rows):
            off = 2 * (row + 0.5) / rows - 1
            reach = math.sqrt(1 - off * off)
            ends = [slope * complex(off, side * reach) * 0.97 for side in (-1, 1)]
            a, b = (middle + complex(e.real * half.real, e.imag * half.imag) for e in ends)
            marks.append(Mark(straight(a, b), "fine"))
    return tuple(marks)


def _strings(edge: list[complex], size: float) -> Ink:
    """Return tough strands cut across: dark spots within the edge."""
    ring = [p * 0.66 for p in edge]
    low = sum(p.imag for p in ring) / len(ring)
    step = max(1, len(ring) // 11)
    return tuple(
        Mark(ellipse(p + 1j * low * 0.2, 0.024 * size, 0.024 * size), "solid", "strand")
        for p in ring[::step]
    )


def _hair_ink(where: str, outline: Outline, size: float) -> Ink:
    way = along(outline)
    marks = []
    for number, spot in enumerate(_seats(where, outline, way)):
        far = spot % way.length
        out, foot = outward(way, far), way.at(far)
        tip = foot + out * _HAIR + out * 1j * (0.02 if number % 2 else -0.015)
        marks.append(Mark(straight(foot, foot + out * _HAIR * 0.6, tip), "fine"))
    return put(tuple(marks), Place(turn=complex(size)))


def _seats(where: str, outline: Outline, way: Walk) -> list[float]:
    """Return how far along the edge hairs stand."""
    length = way.length
    if where == "all":
        return [length * number / _ROUND_ABOUT for number in range(_ROUND_ABOUT)]
    if where == "corners":
        return [
            _nearest(way, corner) + length * 0.012 * offset
            for corner in outline.corners
            for offset in (-1.5, -0.5, 0.5, 1.5)
        ]
    half = (_TUFT - 1) / 2
    return [
        _nearest(way, top) + length * 0.014 * (number - half)
        for top in ((0.5j, -0.5j) if where == "two" else (0.5j,))
        for number in range(_TUFT)
    ]


def _nearest(way: Walk, to: complex) -> float:
    return min((way.length * n / 240 for n in range(240)), key=lambda far: abs(way.at(far) - to))
