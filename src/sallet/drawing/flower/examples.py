"""The specimens on which words for flowers are shown."""

from __future__ import annotations

from typing import Final

from sallet.drawing.example import Example, without
from sallet.drawing.flower.flower import flower

_FREE: Final = {"petals": "5", "symmetry": "radial", "petals fused or free": "free"}
_PLAIN: Final = _FREE | {"petal shape": "oval", "petal tip": "rounded"}
_SEPALS: Final = _PLAIN | {"sepals": "5", "sepal length beside the petals": "longer"}
_TUBE: Final = {"shape": "tube", "petals": "5", "petal tip": "rounded", "sepals": "5",
                "sepal shape": "pointed"}  # fmt: skip
_FUNNEL: Final = _TUBE | {"shape": "funnel"}
_LIPS: Final = {"shape": "lipped", "upper lip": "hooded", "lower lip": "undivided"}
_LIPS_BARE: Final = {"upper lip": "hooded", "lower lip": "three-lobed"}
_DAISY: Final = {"shape": "daisy", "ray florets": "13"}


EXAMPLES: Final[tuple[Example, ...]] = tuple(
    Example("flowers", label, base, flower)
    for label, base in (
        ("shape", _LIPS_BARE | {"petals": "5", "petal tip": "rounded", "ray florets": "13"}),
        ("symmetry", {"shape": "wheel", "petals": "5", "petals fused or free": "free"}),
        ("petals fused or free",
         {"petals": "5", "symmetry": "radial", "petal shape": "oval", "petal tip": "rounded"}),
        ("petal shape", _FREE),
        ("petal tip", _FREE),
        ("petal posture", without(_TUBE, "sepals", "sepal shape") | {"shape": "bell"}),
        ("markings", _PLAIN),
        ("sepals fused or free", _TUBE),
        ("sepal shape", without(_SEPALS, "sepal shape")),
        ("sepal length beside the petals", _SEPALS | {"sepal shape": "pointed"}),
        ("sepal posture", _FUNNEL | {"sepals fused or free": "free"}),
        ("calyx", _TUBE),
        ("stamen length", _PLAIN | {"stamens": "5"}),
        ("stigma", _PLAIN | {"styles": "3"}),
        ("corolla tube", _LIPS),
        ("upper lip", without(_LIPS, "upper lip")),
        ("lower lip", without(_LIPS, "lower lip")),
        ("spur", {"shape": "violet"}),
        ("florets", {"ray florets": "13"}),
        ("head bracts", _DAISY),
    )
)  # fmt: skip
"""The labels of a single flower whose states can be drawn."""
