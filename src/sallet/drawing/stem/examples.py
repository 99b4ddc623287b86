"""The specimens on which words for stems, leaf stalks cut across and whole plants are shown."""

from __future__ import annotations

from typing import Final

from sallet.drawing.example import Example
from sallet.drawing.stem.growth import growth
from sallet.drawing.stem.section import stalk_section, stem_section
from sallet.drawing.stem.side import stem_piece
from sallet.drawing.stem.twig import twig
from sallet.drawing.stem.winding import stem_winding

_ROUND: Final = {"section": "round"}
_JOINT: Final = {"nodes": "not swollen"}

EXAMPLES: Final = (
    Example("stem", "section", {"interior": "solid"}, stem_section),
    Example("stem", "ridges", _ROUND, stem_section),
    Example("stem", "interior", _ROUND, stem_section),
    Example("stem", "pith width", _ROUND | {"interior": "pithy"}, stem_section),
    Example("stem", "inner thread", _ROUND, stem_section),
    Example("stem", "surface", _JOINT, stem_piece),
    Example("stem", "hair arrangement", _JOINT, stem_piece),
    Example("stem", "markings", _JOINT, stem_piece),
    Example("stem", "branching", {"posture": "erect"}, growth),
    Example("stem", "posture", {}, growth),
    Example("stem", "twining direction", {}, stem_winding),
    Example("stem", "nodes", {}, stem_piece),
    Example("stem", "rooting", {"posture": "lying"}, growth),
    Example("stem", "thorns", _JOINT, stem_piece),
    Example("stem", "thorn shape", _JOINT | {"thorns": "prickles"}, stem_piece),
    Example(
        "stem",
        "thorn density",
        _JOINT | {"thorns": "prickles", "thorn shape": "curved"},
        stem_piece,
    ),
    Example("stem", "tendrils", _JOINT, stem_piece),
    Example("stem", "runners", {"posture": "erect"}, growth),
    Example("stem", "buds on the twig", {}, twig),
    Example("leaves", "stalk section", {"stalk interior": "solid"}, stalk_section),
    Example("leaves", "stalk interior", {"stalk section": "round"}, stalk_section),
    Example("whole plant", "posture", {}, growth),
    Example("whole plant", "branching", {"posture": "upright"}, growth),
    Example("whole plant", "stems from the base", {}, growth),
)
"""The labels whose states can be drawn."""
