"""The specimens on which words for the parts under the soil are shown."""

from __future__ import annotations

from typing import Final

from sallet.drawing.example import Example
from sallet.drawing.underground.underground import underground

_BULB: Final = {"kind": "bulb", "shape": "egg-shaped"}
_ROOT: Final = {"kind": "stout taproot"}

EXAMPLES: Final = (
    Example("roots", "kind", {}, underground),
    Example("roots", "shape", {"kind": "taproot"}, underground),
    Example("roots", "course", {"kind": "taproot"}, underground),
    Example("roots", "surface", _ROOT, underground),
    Example("roots", "coat", _BULB, underground),
    Example("roots", "interior", {"kind": "corm", "shape": "flattened"}, underground),
    Example("roots", "rootlets", {"kind": "bulb", "shape": "egg-shaped"}, underground),
    Example("roots", "scales", {"kind": "rhizome"}, underground),
)
"""The labels whose states can be drawn."""
