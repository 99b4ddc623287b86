"""What is shown of the parts under the soil, and which characters go with which kind."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.told import Character, Shown, value_of
from sallet.drawing.underground.coat import COATS
from sallet.drawing.underground.cut import INSIDES
from sallet.drawing.underground.shape import SHAPES
from sallet.drawing.underground.skin import SKINS
from sallet.lesson.value import Count

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.told import Told


@dataclass(frozen=True)
class Number:
    """How many stores there are."""

    least: int
    more: bool
    """Whether there may be more: those are dotted."""


@dataclass(frozen=True)
class UndergroundForm:
    """What is shown of the parts under the soil."""

    kind: Shown[str]
    """A key of USES."""
    shape: Shown[str] | None
    """A key of SHAPES, or `forked`."""
    surface: Shown[str] | None
    coat: Shown[str] | None
    interior: Shown[str] | None
    scales: Shown[str] | None
    rootlets: Shown[str] | None
    course: Shown[float] | None
    """Degrees by which it is turned from the way in which its kind is drawn."""
    number: Shown[Number] | None
    length: Shown[float] | None
    """Millimetres."""
    width: Shown[float] | None
    depth: Shown[float] | None

    @property
    def ratio(self) -> float | None:
        """Return breadth in shares of length, where both are recorded."""
        return self.width.value / self.length.value if self.width and self.length else None


_ROOT: Final = frozenset({
    "shape", "surface", "interior", "rootlets", "course", "length", "width", "remains",
})  # fmt: skip
_STORE: Final = frozenset({
    "shape", "surface", "interior", "rootlets", "length", "width", "depth", "remains",
})  # fmt: skip
USES: Final[Mapping[str, frozenset[str]]] = {
    "taproot": _ROOT,
    "slender taproot": _ROOT,
    "stout taproot": _ROOT,
    "fibrous": frozenset({"length", "remains"}),
    "bulb": _STORE | {"coat"},
    "corm": _STORE | {"coat"},
    "tuber": _STORE,
    "cluster of tubers": frozenset({
        "shape", "surface", "interior", "length", "width", "number", "rootlets",
    }),
    "string of tubers": frozenset({"shape", "surface", "length", "width", "number"}),
    "rhizome": frozenset({"surface", "rootlets", "course", "scales", "remains", "interior", "width"}),
    "short rhizome": frozenset({
        "surface", "rootlets", "course", "scales", "remains", "interior", "length", "width",
    }),
    "woody stock": frozenset({"remains"}),
    "woody roots": frozenset(),
    "runners": frozenset(),
    "water roots": frozenset({"length"}),
    "root nodules": frozenset({"length"}),
}  # fmt: skip
"""Which characters change the drawing of which kind, by the states of `kind`."""
_ROOTLETS: Final[Mapping[str, frozenset[str]]] = {
    "from the base": frozenset({"bulb", "corm", "tuber"}),
    "all over": frozenset({
        "taproot", "slender taproot", "stout taproot", "bulb", "corm", "tuber", "rhizome",
        "short rhizome", "cluster of tubers",
    }),
    "from the joints": frozenset({"rhizome", "short rhizome"}),
    "few": frozenset({
        "taproot", "slender taproot", "stout taproot", "bulb", "corm", "tuber", "rhizome",
        "short rhizome", "cluster of tubers",
    }),
}  # fmt: skip
_SCALES: Final = {
    "pale scales": "pale", "brown scales": "brown", "fleshy scales": "fleshy",
    "remains of leaf stalks": "remains",
}  # fmt: skip
_UPRIGHT: Final = {"slanting": 38.0, "sideways": 82.0}
_FLAT: Final = {"slanting": 24.0}
"""Degrees by which roots that go down, and stems that creep, are turned."""
_CREEPING: Final = frozenset({"rhizome", "short rhizome"})
_SHORT_DEPTH: Final = 2.0
"""Deeper than so many of its lengths, a store would be too small to see."""
_THICKEST: Final = 3.0
_THINNEST: Final = 0.02


def underground_form(told: Told) -> UndergroundForm | None:
    """Return the form of the parts under the soil; None where their kind is not recorded."""
    kind = told.pick("kind", {name: name for name in USES})
    if kind is None:
        return None
    name, uses = kind.value, USES[kind.value]
    length = told.length("length") if "length" in uses else None
    width = _width(told, length, name) if "width" in uses else None
    depth = told.length("depth") if "depth" in uses else None
    if depth and not (length and depth.value <= _SHORT_DEPTH * length.value):
        depth = None
    coat = told.pick("coat", COATS) if "coat" in uses else None
    surface = told.pick("surface", SKINS) if "surface" in uses and coat is None else None
    return UndergroundForm(
        kind=kind,
        shape=_shape(told, name, measured=bool(length and width)) if "shape" in uses else None,
        surface=surface,
        coat=coat,
        interior=told.pick("interior", INSIDES) if "interior" in uses else None,
        scales=_scales(told, uses),
        rootlets=_rootlets(told, name),
        course=told.pick("course", _FLAT if name in _CREEPING else _UPRIGHT)
        if "course" in uses
        else None,
        number=_number(told) if "number" in uses else None,
        length=length,
        width=width,
        depth=depth,
    )


def _width(told: Told, length: Shown[float] | None, kind: str) -> Shown[float] | None:
    """Return the breadth, unless it would not be true beside the length."""
    width = told.length("width")
    if width and length:
        most = 1.0 if kind in _CREEPING else _THICKEST
        return width if _THINNEST <= width.value / length.value <= most else None
    return width


def _shape(told: Told, kind: str, *, measured: bool) -> Shown[str] | None:
    """Return the shape, unless its kind, or length and breadth, already draw the same."""
    hint = told.hint("shape", "shape")
    if hint is None:
        return None
    own = _OWN_SHAPE.get(kind)
    if hint.value == "forked":
        return hint if "taproot" in kind else None
    if hint.value not in SHAPES or hint.value == own:
        return None
    if own and measured and SHAPES[hint.value].right == SHAPES[own].right:
        return None
    return hint


_OWN_SHAPE: Final = {
    "taproot": "cone", "slender taproot": "cone", "stout taproot": "cone",
    "cluster of tubers": "spindle", "string of tubers": "round",
}  # fmt: skip
"""What a kind is drawn as where nothing is told of its shape."""


def _scales(told: Told, uses: frozenset[str]) -> Shown[str] | None:
    scales = told.pick("scales", _SCALES)
    if scales is None:
        return None
    needed = "remains" if scales.value == "remains" else "scales"
    return scales if needed in uses else None


def _rootlets(told: Told, kind: str) -> Shown[str] | None:
    found = told.pick("rootlets", {state: state for state in _ROOTLETS})
    return found if found and kind in _ROOTLETS[found.value] else None


_COUNTABLE: Final = 10
_MOST: Final = 12
"""More stores than that are not drawn."""


def _number(told: Told) -> Shown[Number] | None:
    value = value_of(told, "number of tubers")
    shown = told.count("number of tubers")
    if shown is None or not isinstance(value, Count):
        return None
    if value.high is not None:
        number = min(shown.value, _MOST)
        more = shown.value > _MOST
        return shown.as_(Number(number, more)) if number else None
    least = min(value.low, _MOST)
    if least < 1:
        return None
    words = "many" if value.low > _COUNTABLE else f"{least} or more"
    return Shown(
        Number(least, more=True), Character("number of tubers", words, shown.character.told)
    )
