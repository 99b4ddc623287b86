"""A leaf from its characters: simple or divided, with what carries it."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Final

from sallet.drawing.leaf.blade import blade_ink
from sallet.drawing.leaf.blade_form import BladeForm, blade_form
from sallet.drawing.leaf.compound import Division, compound_ink, division
from sallet.drawing.leaf.contour import BASES
from sallet.drawing.leaf.stalks import FootForm, foot, foot_form
from sallet.drawing.sketch import Sketch
from sallet.drawing.told import characters

if TYPE_CHECKING:
    from sallet.drawing.ink import Ink
    from sallet.drawing.told import Shown, Told

WANTED: Final = (
    "division",
    "shape",
    "margin",
    "tip",
    "base",
    "attachment",
    "venation",
    "length",
    "width",
)
"""Labels that a leaf of one piece is drawn from."""
WANTED_DIVIDED: Final = (
    "division", "leaflets", "leaflet shape", "leaflet margin", "leaflet tip", "leaflet base",
    "attachment", "length",
)  # fmt: skip
"""Labels that a divided leaf is drawn from."""


@dataclass(frozen=True)
class LeafForm:
    """Everything that the drawing of one leaf shows."""

    blade: BladeForm | None
    division: Division | None
    simple: Shown[bool] | None
    """That the blade is of one piece; a divided leaf says how it is divided."""
    foot: FootForm


def leaf_form(told: Told) -> LeafForm | None:
    """Return the form of a leaf; None where it is not recorded how it is divided, or its shape."""
    divided = division(told)
    if divided:
        return LeafForm(None, divided, None, foot_form(told, divided.length))
    blade = blade_form(told)
    simple = told.pick("division", {"simple": True})
    if blade is None or simple is None:
        return None
    feet = foot_form(told, blade.length)
    if feet.stalk and feet.stalk.value == "blurred" and blade.base is None:
        # The word says of the base what a word for the base would say.
        blade = replace(blade, base=feet.stalk.as_(BASES["tapering"]))
    return LeafForm(blade, None, simple, feet)


def leaf_ink(form: LeafForm, size: float) -> Ink:
    """Return a leaf whose blade is `size` units long and begins at 0."""
    below = foot(form.foot, size)
    if form.division:
        middle = compound_ink(form.division, size)
    elif form.blade:
        middle = blade_ink(form.blade, size)
    return (*below.behind, *middle, *below.before)


def leaf(told: Told, size: float) -> Sketch | None:
    """Return a leaf drawn from what is told; `size` is the length of its blade in units."""
    form = leaf_form(told)
    if form is None:
        return None
    length = form.division.millimetres if form.division else None
    if form.blade:
        length = form.blade.millimetres
    wanted = WANTED_DIVIDED if form.division else WANTED
    return Sketch(
        title="leaf",
        ink=leaf_ink(form, size),
        shows=characters(form),
        scale=size / length if length else None,
        wants=tuple(label for label in wanted if label not in told.items),
    )
