"""The specimens on which words for leaves are shown."""

from __future__ import annotations

from typing import Final

from sallet.drawing.example import Example, without
from sallet.drawing.leaf.arrangement import leaf_set
from sallet.drawing.leaf.foot import leaf_foot
from sallet.drawing.leaf.leaf import leaf
from sallet.drawing.leaf.rising import rising

_PLAIN: Final = {
    "division": "simple", "shape": "elliptic", "margin": "entire", "tip": "acute", "base": "rounded",
    "venation": "pinnate",
}  # fmt: skip
_STALKED: Final = _PLAIN | {"attachment": "stalked"}
_LEAFLET: Final = {
    "leaflet shape": "ovate", "leaflet margin": "entire", "leaflet tip": "acute",
    "leaflet base": "rounded",
}  # fmt: skip
_FEATHER: Final = _LEAFLET | {
    "division": "pinnate with an end leaflet", "leaflets": "9", "attachment": "stalked",
}  # fmt: skip
_THREE: Final = _LEAFLET | {"division": "trifoliate", "attachment": "stalked"}


EXAMPLES: Final = (
    Example("leaves", "arrangement", {}, leaf_set),
    Example("leaves", "posture", {"arrangement": "opposite"}, leaf_set),
    Example("leaves", "rises from the ground", {}, rising),
    Example("leaves", "division", _LEAFLET | _STALKED | {"leaflets": "5–8"}, leaf),
    Example("leaves", "shape", {"division": "simple", "margin": "entire"}, leaf),
    Example("leaves", "margin", without(_PLAIN, "margin"), leaf),
    Example("leaves", "tip", without(_PLAIN, "tip"), leaf),
    Example("leaves", "base", _STALKED, leaf),
    Example("leaves", "lobing", _PLAIN | {"base": "wedge-shaped"}, leaf),
    Example("leaves", "leaflet shape", without(_THREE, "leaflet shape", "leaflet tip"), leaf),
    Example("leaves", "leaflet margin", _THREE, leaf),
    Example("leaves", "leaflet tip", _THREE, leaf),
    Example("leaves", "leaflet base", _THREE | {"leaflet stalk": "short-stalked"}, leaf),
    Example("leaves", "leaflet stalk", _FEATHER, leaf),
    Example("leaves", "leaflet size", _FEATHER, leaf),
    Example("leaves", "attachment", _PLAIN, leaf),
    Example("leaves", "stalk against blade", _STALKED, leaf),
    Example("leaves", "stipules", {}, leaf_foot),
    Example("leaves", "sheath", {}, leaf_foot),
    Example("leaves", "venation", without(_PLAIN, "venation"), leaf),
    Example("leaves", "markings", _PLAIN, leaf),
)
"""The labels of leaves whose states can be drawn."""
