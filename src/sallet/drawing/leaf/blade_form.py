"""From what is told of a blade to its form: leaf or leaflet."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Final

from sallet.drawing.leaf.blade_tables import (
    DEPTHS,
    LEAFLET_MARGINS,
    LEAFLET_SHAPES,
    LEAFLET_TIPS,
    LOBINGS,
    NEUTRAL_BASE,
    NEUTRAL_TIP,
    PATTERNS,
    SHAPES,
    Plan,
)
from sallet.drawing.leaf.contour import BASES, TIPS, Base, Contour, Tip
from sallet.drawing.leaf.counts import fitting
from sallet.drawing.leaf.finger_lobes import MOST
from sallet.drawing.leaf.lobe_veins import LOBED
from sallet.drawing.leaf.margin import MARGINS
from sallet.drawing.leaf.markings import MARKINGS
from sallet.drawing.leaf.outline import LOBULES, Blank
from sallet.drawing.told import Shown
from sallet.lesson.leaf_shape import Ratio, ratio_of, widened

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.leaf.lobes import Lobing
    from sallet.drawing.leaf.margin import Teeth
    from sallet.drawing.told import Told

_TOOTHED, _VEINED, _LOBED, _MARKED = 20.0, 20.0, 8.0, 8.0
"""Blades so many times longer than wide have no room for teeth, for veins beside the midrib,
for lobes, for marks."""
_POINTED_LOBES: Final = frozenset({"arrow", "spear", "ears"})
"""Lobes at a base that finger-like lobes leave no place for."""
_FEATHERED: Final = frozenset({"pinnate", "net", "teeth", "1"})
"""Veins that lobes in two rows can have: straight from the stalk they would cross the notches."""
_COUNTED: Final = frozenset({"three-lobed", "five-lobed"})
"""Words for lobes that say their number."""
_FEWEST, _MOST_LOBES, _MOST_PAIRS = 2, 25, 30
_MAIN_VEINS: Final = (3, 5, 7, 9)
"""An even number has no midrib among them: nothing that could be drawn."""
_BACK: Final = 0.55
"""How deep lobes that look back are cut at the least."""


@dataclass(frozen=True)
class Words:
    """The labels and tables of a kind of blade."""

    shape: str
    margin: str
    tip: str
    base: str
    length: str
    width: str
    shapes: Mapping[str, Plan]
    margins: Mapping[str, Teeth | None]
    tips: Mapping[str, Tip]
    lobed: bool
    """Whether lobing, veins and markings are recorded of it."""


LEAF: Final = Words(
    "shape", "margin", "tip", "base", "length", "width", SHAPES, MARGINS, TIPS, lobed=True
)
LEAFLET: Final = Words(
    "leaflet shape", "leaflet margin", "leaflet tip", "leaflet base", "leaflet length",
    "leaflet width", LEAFLET_SHAPES, LEAFLET_MARGINS, LEAFLET_TIPS, lobed=False,
)  # fmt: skip


@dataclass(frozen=True)
class BladeForm:
    """Everything that the drawing of one blade shows."""

    shape: Shown[Plan]
    class_: Ratio
    """The length by width that the shape's name allows."""
    length: Shown[float] | None = None
    """Millimetres."""
    width: Shown[float] | None = None
    tip: Shown[Tip] | None = None
    base: Shown[Base] | None = None
    margin: Shown[Teeth | None] | None = None
    fringe: Shown[str] | None = None
    lobing: Shown[Lobing] | None = None
    lobes: Shown[int] | None = None
    depth: Shown[float] | None = None
    venation: Shown[str] | None = None
    pairs: Shown[int] | None = None
    main_veins: Shown[int] | None = None
    markings: Shown[str] | None = None
    """The state of `markings`."""

    @property
    def ratio(self) -> float:
        """Return length divided by width, within what the shape's name allows."""
        if self.length and self.width:
            reach = widened(self.class_)
            ratio = max(self.length.value / self.width.value, reach.low)
            return ratio if reach.high is None else min(ratio, reach.high)
        if self.shape.value.ratio:
            return self.shape.value.ratio
        low, high = self.class_.low, self.class_.high
        return low if high is None else (low * high) ** 0.5

    @property
    def millimetres(self) -> float | None:
        """Return the length in life, where a length or a width is recorded."""
        if self.length:
            return self.length.value
        return self.width.value * self.ratio if self.width else None

    @property
    def blank(self) -> Blank:
        """Return the form in numbers."""
        plan = self.shape.value
        tip = self.tip.value if self.tip else plan.tip or NEUTRAL_TIP
        base = self.base.value if self.base else plan.base or NEUTRAL_BASE
        # A shape with straight sides keeps them down to its foot.
        if not base.lobes and plan.base_p != 2.0:  # noqa: PLR2004
            base = replace(base, p=plan.base_p)
        contour = Contour(plan.widest, plan.tip_p, tip, base, plan.sides)
        teeth = self.margin.value if self.margin else None
        lobing = self._lobing()
        if lobing and lobing.twice:
            teeth = LOBULES
        return Blank(contour, self.ratio, teeth, lobing)

    def _lobing(self) -> Lobing | None:
        if self.lobing is None:
            return self.shape.value.lobing
        lobing = self.lobing.value
        if self.lobes:
            lobing = replace(lobing, number=self.lobes.value)
        if self.depth:
            lobing = replace(lobing, depth=self.depth.value)
        return lobing

    @property
    def tip_known(self) -> bool:
        """Whether the end of the blade is recorded, by itself or by the shape's name."""
        said_of_lobes = bool(self.lobing and self.lobing.value.pattern == "palm"
                             and self.lobing.value.tips)  # fmt: skip
        return bool(self.tip or self.shape.value.tip) or said_of_lobes

    @property
    def base_known(self) -> bool:
        """Whether the foot of the blade is recorded, by itself or by the shape's name."""
        return bool(self.base or self.shape.value.base)


def blade_form(told: Told, words: Words = LEAF) -> BladeForm | None:
    """Return the form of a blade; None where no shape is recorded."""
    shape = told.pick(words.shape, words.shapes)
    state = told.state(words.shape)
    if shape is None or state is None:
        return None
    class_ = ratio_of(state.value) or Ratio(1.0, 1.0)
    form = BladeForm(
        shape=shape,
        class_=class_,
        length=told.length(words.length),
        width=told.length(words.width),
        tip=told.pick(words.tip, words.tips),
        base=told.pick(words.base, BASES),
    )
    form = _with_margin(form, told, words)
    if not words.lobed:
        return form
    return _with_veins(_with_lobes(form, told), told)


def _with_margin(form: BladeForm, told: Told, words: Words) -> BladeForm:
    margin = told.pick(words.margin, words.margins)
    if margin:
        # The edge of a thread has no room for teeth.
        return form if margin.value and form.ratio > _TOOTHED else replace(form, margin=margin)
    for key in ("fringe", "edge"):
        # An even edge that carries hairs, knobs, a pale or rolled rim.
        hint = told.hint(words.margin, key)
        if hint:
            return replace(form, margin=Shown(None, hint.character), fringe=hint)
    return form


def _with_lobes(form: BladeForm, told: Told) -> BladeForm:
    lobing = _lobing(told) if form.ratio <= _LOBED else None
    if lobing is None:
        at_base = told.state("lobing")
        lobed = form.base and form.base.value.lobes
        free = not lobed and not _has_lobes(form)
        if free and at_base and at_base.value.name == "lobed at the base only":
            return replace(form, base=Shown(BASES["spear-shaped"], at_base.character))
        return form
    form = replace(
        form, lobing=lobing, lobes=_number(told, lobing), depth=_depth(told, lobing.value)
    )
    if lobing.value.twice and form.margin and form.margin.value:
        # Lobes cut again leave no room for teeth.
        form = replace(form, margin=None)
    return _fingered(form, lobing.value) if lobing.value.pattern == "palm" else form


def _lobing(told: Told) -> Shown[Lobing] | None:
    lobing = told.pick("lobing", LOBINGS)
    if lobing is None or lobing.value.pattern:
        return lobing
    veins = told.hint("venation", "veins")
    pattern = PATTERNS.get(veins.value) if veins else None
    return lobing.as_(replace(lobing.value, pattern=pattern)) if pattern else None


def _fingered(form: BladeForm, lobing: Lobing) -> BladeForm:
    """Return a form without the ends that a blade of finger-like lobes cannot have."""
    if form.tip and (lobing.tips or form.tip.value.finger is None):
        form = replace(form, tip=None)
    if form.base and form.base.value.lobes in _POINTED_LOBES:
        form = replace(form, base=None)
    return form


def _has_lobes(form: BladeForm) -> bool:
    """Return whether the very shape has lobes at its base."""
    base = form.shape.value.base
    return bool(base and base.lobes)


def _number(told: Told, lobing: Shown[Lobing]) -> Shown[int] | None:
    if lobing.character.drawn in _COUNTED:
        return None
    most = MOST if lobing.value.pattern == "palm" else _MOST_LOBES
    return fitting(told, "lobes", lambda number: _FEWEST <= number <= most)


def _depth(told: Told, lobing: Lobing) -> Shown[float] | None:
    depth = told.pick("depth of the lobes", DEPTHS)
    # Lobes that look back are cut deep, or they could not look back.
    return None if depth and lobing.aim == "back" and depth.value < _BACK else depth


def _with_veins(form: BladeForm, told: Told) -> BladeForm:
    if form.ratio <= _MARKED:
        form = replace(form, markings=told.pick("markings", {name: name for name in MARKINGS}))
    venation = told.hint("venation", "veins")
    if venation is None or (form.ratio > _VEINED and venation.value != "1"):
        return form
    if form.lobing:
        able = _FEATHERED if form.lobing.value.pattern == "feather" else frozenset(LOBED)
        return replace(form, venation=venation) if venation.value in able else form
    form = replace(form, venation=venation)
    if venation.value in {"palmate", "net"}:
        main = fitting(told, "main veins from the base", lambda n: n in _MAIN_VEINS)
        form = replace(form, main_veins=main)
    if venation.value in {"pinnate", "net", "edge", "teeth"} and not form.main_veins:
        pairs = fitting(told, "pairs of side veins", lambda n: 1 <= n <= _MOST_PAIRS)
        form = replace(form, pairs=pairs)
    return form
