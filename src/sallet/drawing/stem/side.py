"""A piece of stem from the side with one joint, without leaves: what can be seen and felt on it."""

from __future__ import annotations

from dataclasses import dataclass, fields
from typing import TYPE_CHECKING, Final

from sallet.drawing.sketch import Sketch
from sallet.drawing.stem.body import JOINTS, LINES, Body, Joint, body_ink, joint_ink, lines_ink
from sallet.drawing.stem.hairs import HAIRS, PLAIN, WHERE, Hair, hairs_ink
from sallet.drawing.stem.marks import (
    MARKINGS,
    ROOTS,
    TENDRILS,
    marking_ink,
    root_ink,
    tendril_ink,
)
from sallet.drawing.stem.thorns import ARMED, DENSITY, UNTOLD, Armed, thorns_ink
from sallet.drawing.told import characters

if TYPE_CHECKING:
    from sallet.drawing.ink import Ink
    from sallet.drawing.told import Shown, Told


@dataclass(frozen=True)
class PieceForm:
    """What is shown of a piece of stem."""

    joint: Shown[Joint] | None
    ridges: Shown[str] | None
    """A key of LINES."""
    markings: Shown[str] | None
    hairs: Shown[Hair] | None
    more_hairs: Shown[Hair] | None
    """Hairs of a second kind between the first."""
    where: Shown[str] | None
    """Where the hairs stand: a value of WHERE."""
    thorns: Shown[Armed] | None
    thorn_shape: Shown[str] | None
    """Where it is not what the kind of thorn says."""
    density: Shown[int] | None
    roots: Shown[str] | None
    tendrils: Shown[str] | None


_BARE: Final = frozenset({"hairless"})
_FEW: Final = frozenset({"nearly hairless", "sparsely hairy"})
"""Not drawn beside another kind of hair: both together would be neither."""
_WANTED: Final = ("nodes", "ridges", "markings", "surface")


def piece_form(told: Told) -> PieceForm | None:
    """Return the form of a piece of stem; None where nothing of it leaves ink."""
    hairs, more = _hairs(told)
    where = _where(told, hairs)
    if where and hairs and hairs.value is PLAIN:
        # Hairs not further described are what stands wherever hairs are said to stand.
        hairs = None
    thorns = told.pick("thorns", ARMED)
    form = PieceForm(
        joint=told.pick("nodes", JOINTS),
        ridges=_hint(told, "ridges", "ridges", frozenset(LINES)),
        markings=_hint(told, "markings", "marks", MARKINGS),
        hairs=hairs,
        more_hairs=more,
        where=where,
        thorns=thorns,
        thorn_shape=_thorn_shape(told, thorns),
        density=told.pick("thorn density", DENSITY) if thorns else None,
        roots=told.pick("rooting", ROOTS),
        tendrils=told.pick("tendrils", TENDRILS),
    )
    return form if any(getattr(form, field.name) for field in fields(form)) else None


def piece_ink(form: PieceForm, size: float) -> Ink:
    """Return a piece `size` units long, upright, the middle of its foot at the origin."""
    body = Body(size, form.joint.value.swollen if form.joint else ())
    ink: list[Ink] = []
    if form.roots:
        ink.append(root_ink(body, form.roots.value))
    ink.append(body_ink(body))
    if form.ridges:
        ink.append(lines_ink(body, form.ridges.value))
    if form.markings:
        ink.append(marking_ink(body, form.markings.value))
    if form.thorns:
        armed = form.thorns.value
        shape = form.thorn_shape.value if form.thorn_shape else armed.shape
        density = form.density.value if form.density else UNTOLD
        ink.append(thorns_ink(body, armed, shape, density))
    where = form.where.value if form.where else "all"
    if form.hairs or form.where:
        ink.append(hairs_ink(body, form.hairs.value if form.hairs else PLAIN, where))
    if form.more_hairs:
        ink.append(hairs_ink(body, form.more_hairs.value, where, 0.37))
    ink.append(joint_ink(body, form.joint.value if form.joint else None))
    if form.tendrils:
        ink.append(tendril_ink(body, form.tendrils.value))
    return tuple(mark for layer in ink for mark in layer)


def stem_piece(told: Told, size: float) -> Sketch | None:
    """Return a piece of stem from the side; `size` is its length in units."""
    form = piece_form(told)
    if form is None:
        return None
    return Sketch(
        title="piece of the stem",
        ink=piece_ink(form, size),
        shows=characters(form),
        wants=tuple(label for label in _WANTED if label not in told.items),
    )


def _hint(told: Told, label: str, key: str, among: frozenset[str]) -> Shown[str] | None:
    hint = told.hint(label, key)
    return hint if hint and hint.value in among else None


def _hairs(told: Told) -> tuple[Shown[Hair] | None, Shown[Hair] | None]:
    """Return the kinds of hair that stand together; what is seldom so is not drawn beside them."""
    usual = {state.value.name for state in told.usual("surface").states("surface")}
    states = [state for state in told.states("surface") if state.value.name in usual]
    if states and states[0].value.name in _BARE:
        return None, None
    found = [s.as_(HAIRS[s.value.name]) for s in states if s.value.name in HAIRS]
    more = [s for s in found[1:] if s.character.drawn not in _FEW]
    return (found[0] if found else None), (more[0] if more else None)


_EVERYWHERE: Final = frozenset({"web", "dot", "pore"})


def _where(told: Told, hairs: Shown[Hair] | None) -> Shown[str] | None:
    where = told.pick("hair arrangement", WHERE)
    if where is None:
        states = [s for s in told.states("surface") if s.value.name in WHERE]
        where = states[0].as_(WHERE[states[0].value.name]) if states else None
    if where and hairs and (where.value == "all" or hairs.value.shape in _EVERYWHERE):
        # Hairs of a recorded kind stand all round if nothing else is told.
        return None
    return where


_THORN_SHAPES: Final = {
    "straight": "straight", "hooked": "hook", "curved": "curve", "flattened at the base": "flat",
    "needle-like": "needle", "mixed": "mixed",
}  # fmt: skip
_OWN_SHAPE: Final = frozenset({"bristle", "hook"})


def _thorn_shape(told: Told, thorns: Shown[Armed] | None) -> Shown[str] | None:
    shape = told.pick("thorn shape", _THORN_SHAPES)
    if thorns is None or shape is None or thorns.value.seat in _OWN_SHAPE:
        return None
    return None if shape.value == thorns.value.shape else shape
