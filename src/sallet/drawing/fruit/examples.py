"""The specimens on which words for fruits are shown."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Any, Final

from sallet.drawing.example import Example
from sallet.drawing.fruit.form import Shape, fruit_form
from sallet.drawing.fruit.fruit import fruit, fruit_sketch
from sallet.drawing.fruit.whole import USUAL
from sallet.drawing.told import Shown

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.sketch import Sketch
    from sallet.drawing.told import Told

_TYPICAL: Final[Mapping[str, Mapping[str, Any]]] = {
    "berry": {"seeds": 12},
    "drupe": {"stones": 1},
    "hip": {"seeds": 14, "inside": "hairs round the seeds"},
    "haw": {"stones": 1, "remains": "crown of sepals"},
    "pome": {"seeds": 5, "chambers": 5},
    "nut in a husk": {"husk": ("leafy", "shorter than the nut")},
    "nuts in a prickly cup": {"husk": ("soft prickles",), "nuts": 2},
    "achene with parachute": {"parachute": ("plain hairs", "on a stalk")},
    "capsule": {"valves": 5},
    "capsule with a lid": {"opening": "by a lid"},
    "long pod": {"opening": "by two flaps from below"},
    "short pod": {"opening": "by two flaps from below"},
    "pea pod": {"seeds": 6},
    "schizocarp": {"ribs": ("low",), "opening": "parting in two halves"},
    "samara": {"wings": "one long wing"},
    "double samara": {"wings": "a pair"},
}
"""What the example of a kind has beside its kind, to be known by: its inside, how it opens."""


def typical_fruit(told: Told, size: float) -> Sketch | None:
    """Return a fruit as it is usual for its kind; a lesson's fruit has nothing that is not told."""
    form = fruit_form(told)
    if form is None or form.kind is None:
        return None
    kind = form.kind
    more: dict[str, Any] = {
        field: Shown(value, kind.character)
        for field, value in _TYPICAL.get(kind.value, {}).items()
        if getattr(form, field) is None
    }
    if form.shape is None and kind.value in USUAL:
        more["shape"] = Shown(Shape(USUAL[kind.value]), kind.character)
    return fruit_sketch(replace(form, **more), told, size)


_BERRY: Final = {"kind": "berry", "shape": "egg-shaped"}
_BALL: Final = {"kind": "berry", "shape": "round"}
_CAPSULE: Final = {"kind": "capsule", "shape": "egg-shaped"}
_NUT: Final = {"kind": "nut in a husk", "shape": "egg-shaped"}
_PAIR: Final = {"kind": "schizocarp", "shape": "egg-shaped"}

EXAMPLES: Final = (
    Example("fruit", "kind", {}, typical_fruit),
    Example("fruit", "shape", {}, fruit),
    Example("fruit", "surface", _BERRY, fruit),
    Example("fruit", "ribs", _PAIR, fruit),
    Example("fruit", "posture", _CAPSULE, fruit),
    Example("fruit", "stalk", _CAPSULE, fruit),
    Example("fruit", "opening", _CAPSULE, fruit),
    Example("fruit", "remains of the flower", _BALL, fruit),
    Example("fruit", "inside", _BALL, fruit),
    Example(
        "fruit", "parachute", {"kind": "achene with parachute", "shape": "spindle-shaped"}, fruit
    ),
    Example("fruit", "husk", _NUT, fruit),
    Example("fruit", "core", {"kind": "aggregate"}, fruit),
    Example("fruit", "wings", {"kind": "samara"}, fruit),
    Example("fruit", "wing surface", {"kind": "winged three-angled nut"}, fruit),
)
"""The labels of fruits whose states can be drawn."""
