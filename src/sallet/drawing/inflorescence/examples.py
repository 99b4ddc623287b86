"""Specimens on which the glossary shows the words for flower clusters."""

from __future__ import annotations

from typing import Final

from sallet.drawing.example import Example
from sallet.drawing.inflorescence.inflorescence import inflorescence

_UMBEL: Final = {"inflorescence": "umbel", "rays": "9", "petals": "5"}
_DOUBLE: Final = {"inflorescence": "compound umbel", "rays": "7", "bracts": "none"}
EXAMPLES: Final[tuple[Example, ...]] = (
    Example(
        "flowers",
        "inflorescence",
        {"rays": "12", "main branches": "7", "petals": "5", "bracts": "none", "bracteoles": "none"},
        inflorescence,
    ),
    Example("flowers", "position", _UMBEL, inflorescence),
    Example(
        "flowers",
        "cluster shape",
        {"inflorescence": "head"},
        inflorescence,
    ),
    Example("flowers", "bracts", {**_UMBEL, "number of bracts": "5"}, inflorescence),
    Example("flowers", "bracteoles", {**_DOUBLE, "number of bracteoles": "5"}, inflorescence),
    Example(
        "flowers",
        "posture",
        {"inflorescence": "raceme", "flowers in a cluster": "9", "petals": "5"},
        inflorescence,
    ),
    Example("flowers", "spathe", _UMBEL, inflorescence),
)
"""One for each label whose states a cluster shows."""
