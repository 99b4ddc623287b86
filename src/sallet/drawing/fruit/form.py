"""What of a fruit's recorded characters its drawing shows."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from sallet.drawing.fruit.body import LOBES, OUTLINES
from sallet.drawing.fruit.words import (
    ALONE,
    ANGLES,
    BENT,
    CLASHING,
    FOOT_REMAINS,
    HUSKS_OF,
    INSIDES,
    OPENINGS,
    PARACHUTES,
    POSTURES,
    REMAINS,
    REMAINS_OF,
    RIBS,
    SHAPES_OF,
    STALK_HIDDEN,
    STALKS,
    STYLES,
    SURFACES,
    TIPPED,
    TOPLESS,
    USES,
    WING_SURFACES,
    WINGS,
)
from sallet.drawing.told import Character, Shown, beside, some

if TYPE_CHECKING:
    from collections.abc import Collection, Mapping

    from sallet.drawing.told import Told


@dataclass(frozen=True, slots=True)
class Shape:
    """What the words for a shape say to the pen."""

    outline: str = ""
    lobes: int = 0
    angles: int = 0
    flat: bool = False
    beaked: bool = False


@dataclass(frozen=True)
class FruitForm:
    """What is drawn of a fruit; None where it is not recorded or would change nothing."""

    kind: Shown[str] | None
    shape: Shown[Shape] | None = None
    length: Shown[float] | None = None
    width: Shown[float] | None = None
    surface: Shown[tuple[str, ...]] | None = None
    ribs: Shown[tuple[str, ...]] | None = None
    remains: Shown[str] | None = None
    styles: Shown[float] | None = None
    """How long what stands on the tip is, in millimetres."""
    posture: Shown[str] | None = None
    stalk: Shown[str] | None = None
    opening: Shown[str] | None = None
    valves: Shown[int] | None = None
    stones: Shown[int] | None = None
    seeds: Shown[int] | None = None
    chambers: Shown[int] | None = None
    inside: Shown[str] | None = None
    nuts: Shown[int] | None = None
    husk: Shown[tuple[str, ...]] | None = None
    wings: Shown[str] | None = None
    wing_surface: Shown[str] | None = None
    parachute: Shown[tuple[str, ...]] | None = None
    core: Shown[str] | None = None

    @property
    def ratio(self) -> float | None:
        """Return length by width, where both are recorded."""
        return self.length.value / self.width.value if self.length and self.width else None


def fruit_form(told: Told) -> FruitForm | None:
    """Return what a drawing shows of a fruit; None where neither kind nor shape is recorded."""
    kind = told.pick("kind", {name: name for name in USES})
    name = kind.value if kind else ""
    given = told.only(USES[name])
    shape = _shape(given, name)
    if kind is None and shape is None:
        return None
    length, width = beside(given.length("length"), given.length("width"))
    return _tidied(
        FruitForm(
            kind=kind,
            shape=shape,
            length=length,
            width=width,
            surface=_all(given, "surface", SURFACES),
            ribs=_all(given, "ribs", RIBS),
            remains=given.pick("remains of the flower", _same(REMAINS_OF.get(name, REMAINS))),
            styles=beside(length or width, given.length(STYLES))[1],
            posture=given.pick("posture", POSTURES),
            stalk=given.pick("stalk", STALKS),
            opening=given.pick("opening", _same(OPENINGS.get(name, frozenset()))),
            valves=some(given.count("valves")),
            stones=some(given.count("stones")),
            seeds=some(given.count("seeds")),
            chambers=some(given.count("chambers")),
            inside=given.pick("inside", _same(INSIDES.get(name, frozenset()))),
            nuts=some(given.count("nuts together")),
            husk=_all(given, "husk", HUSKS_OF.get(name, frozenset())),
            wings=given.pick("wings", _same(WINGS)),
            wing_surface=given.pick("wing surface", _same(WING_SURFACES)),
            parachute=_all(given, "parachute", PARACHUTES),
            core=given.pick("core", _same(frozenset({"in the fruit", "on the plant"}))),
        )
    )


def _tidied(form: FruitForm) -> FruitForm:
    """Return the form without what another of its characters hides or already says."""
    for step in (_beaks, _openings, _nuts, _tips, _skins, _stalks, _insides):
        form = step(form)
    return form


def _name(form: FruitForm) -> str:
    return form.kind.value if form.kind else ""


def _beaks(form: FruitForm) -> FruitForm:
    """Leave out a second word for one beak."""
    if form.shape and form.remains and form.remains.value == "a beak":
        return replace(form, shape=_without_beak(form.shape))
    return form


def _openings(form: FruitForm) -> FruitForm:
    """Leave out what a number of flaps says already, and what went with the top."""
    if form.shape and form.shape.value.lobes:
        return replace(form, opening=None, valves=None)
    if form.valves:
        form = replace(form, opening=None)
    open_above = form.valves or (form.opening and form.opening.value in TOPLESS)
    if _name(form) != "capsule" or not open_above:
        return form
    low = form.remains and form.remains.value in FOOT_REMAINS
    shape = _without_beak(form.shape) if form.shape else None
    return replace(form, remains=form.remains if low else None, shape=shape)


def _nuts(form: FruitForm) -> FruitForm:
    """Leave out a single nut where one without a number looks the same."""
    outlined = bool(form.shape and form.shape.value.outline)
    if form.nuts and form.nuts.value == 1 and not (outlined and _open_cup(form)):
        return replace(form, nuts=None)
    return form


def _tips(form: FruitForm) -> FruitForm:
    """Leave out the length of styles where there are none, or the fruit has no measure."""
    beaked = bool(form.shape and form.shape.value.beaked)
    tipped = beaked or bool(form.remains and form.remains.value in TIPPED)
    flying = _name(form) == "achene with parachute"
    sitting = form.parachute and "sitting on the fruit" in form.parachute.value
    if not (tipped or flying) or sitting or not (form.length or form.width):
        return replace(form, styles=None)
    return form


def _skins(form: FruitForm) -> FruitForm:
    """Leave out what the kind or the ribs say already."""
    surface, ribs = form.surface, form.ribs
    if surface and _name(form) == "pair of hairy lobes":
        surface = _less(surface, "hairy")
    if surface and ribs:
        surface = _less(surface, "ribbed")
    if ribs and {"sharp", "thick", "low"} & set(ribs.value):
        ribs = _less(ribs, "straight")
    return replace(form, surface=surface, ribs=ribs)


def _stalks(form: FruitForm) -> FruitForm:
    """Leave out a stalk that bends as the posture tells, or that is not to be seen."""
    if form.posture and form.stalk and (
        form.stalk.value in BENT or form.posture.value in STALK_HIDDEN
    ):  # fmt: skip
        return replace(form, stalk=None)
    return form


def _insides(form: FruitForm) -> FruitForm:
    """Leave out what is only described where it is counted."""
    inside = form.inside.value if form.inside else ""
    if form.stones:
        return replace(form, inside=None, seeds=None, chambers=None)
    if inside in {"one large stone", "several small stones"}:
        return replace(form, seeds=None, chambers=None)
    counted = form.seeds or (form.chambers and inside == "a core with pips")
    if counted and inside in {"many small seeds", "a core with pips"}:
        return replace(form, inside=None)
    return form


def _open_cup(form: FruitForm) -> bool:
    """Return whether the nuts stand in a cup that is dotted while their number is not told."""
    in_cup = form.kind is not None and form.kind.value == "nuts in a prickly cup"
    return in_cup and not (form.husk and ALONE in form.husk.value)


def _without_beak(shape: Shown[Shape]) -> Shown[Shape] | None:
    rest = replace(shape.value, beaked=False)
    names = [n for n in shape.character.drawn.split(", ") if n != "beaked"]
    if rest == Shape():
        return None
    return Shown(rest, replace(shape.character, drawn=", ".join(names)))


def _less(shown: Shown[tuple[str, ...]], name: str) -> Shown[tuple[str, ...]] | None:
    rest = tuple(n for n in shown.value if n != name)
    if not rest:
        return None
    return Shown(rest, replace(shown.character, drawn=", ".join(rest)))


def _shape(told: Told, kind: str) -> Shown[Shape] | None:
    shown = _all(told, "shape", SHAPES_OF.get(kind, SHAPES_OF[""]))
    if shown is None:
        return None
    value = Shape()
    drawn = []
    for name in shown.value:
        better = _with(value, name)
        if better != value:
            value = better
            drawn.append(name)
    return Shown(value, replace(shown.character, drawn=", ".join(drawn)))


def _with(shape: Shape, name: str) -> Shape:
    """Return a shape with one word more; of two outlines the first is drawn."""
    if name == "flat":
        return replace(shape, flat=True)
    if name == "beaked":
        return replace(shape, beaked=True)
    if name in ANGLES:
        return replace(shape, angles=shape.angles or ANGLES[name])
    if shape.outline or shape.lobes:
        return shape
    if name in LOBES:
        return replace(shape, lobes=LOBES[name])
    return replace(shape, outline=name) if name in OUTLINES else shape


def _all(told: Told, label: str, among: Collection[str]) -> Shown[tuple[str, ...]] | None:
    """Return the usual states of a label that can be drawn together."""
    states = [s for s in told.usual(label).states(label) if s.value.name in among]
    if not states:
        return None
    names = _compatible(tuple(dict.fromkeys(s.value.name for s in states)))
    whole = told.states(label)[0].character
    return Shown(names, Character(label, ", ".join(names), whole.told))


def _compatible(names: tuple[str, ...]) -> tuple[str, ...]:
    """Return the words that can be drawn together, of those that clash the first."""
    if ALONE in names:
        return (ALONE,)
    kept: list[str] = []
    for name in names:
        if not any(name in few and few & set(kept) for few in CLASHING):
            kept.append(name)
    return tuple(kept)


def _same(names: Collection[str]) -> Mapping[str, str]:
    return {name: name for name in names}
