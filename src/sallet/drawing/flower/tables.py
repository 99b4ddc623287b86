"""Which characters change the drawing of which flower, and what each state is to the pen."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

if TYPE_CHECKING:
    from collections.abc import Mapping

PLANS: Final[Mapping[str, str]] = {
    "star": "face", "cross": "face", "wheel": "face",
    "saucer": "turned", "cup": "turned", "bell": "turned", "urn": "turned", "tube": "turned",
    "thimble": "turned", "funnel": "turned", "trumpet": "turned", "plate on a tube": "turned",
    "goblet from the ground": "turned",
    "lipped": "lipped", "hooded": "hooded", "pea": "pea", "violet": "violet",
    "daisy": "head", "dandelion": "head", "thistle": "thistle",
    "catkin flower": "catkin", "no petals to see": "speck",
}  # fmt: skip
"""By which rules a flower of a shape is drawn."""
_CALYX: Final = frozenset(
    {"sepals", "sepals fused or free", "calyx", "sepal shape", "sepal posture"}
)
USES: Final[Mapping[str, frozenset[str]]] = {
    "face": frozenset({
        "shape", "symmetry", "petals and sepals", "petals", "petals fused or free", "petal shape",
        "petal tip", "petal posture", "petal length", "petal width", "width", "sepals",
        "sepal shape", "sepal length beside the petals", "sepal posture", "stamens",
        "stamen length", "styles", "stigma", "markings",
    }),
    "turned": _CALYX | {
        "shape", "petals", "petals fused or free", "petal tip", "petal posture", "width", "length",
        "stamens", "stamen length", "corolla tube", "markings", "ovary position",
    },
    "lipped": _CALYX - {"sepal posture"} | {
        "shape", "upper lip", "lower lip", "corolla tube", "spur", "length", "stamens",
        "stamen length",
    },
    "hooded": frozenset({"shape", "length"}),
    "pea": _CALYX - {"sepal posture"} | {"shape", "length", "markings"},
    "violet": frozenset({"shape", "width", "spur", "markings"}),
    "head": frozenset({"shape", "florets", "ray florets", "head bracts", "width"}),
    "thistle": frozenset({"shape", "head bracts", "width"}),
    "catkin": frozenset({"shape", "stamens", "styles", "stigma"}),
    "speck": frozenset({"shape", "sepals", "stamens", "styles", "stigma", "width"}),
}  # fmt: skip
"""The labels that may change a drawing, by its rules."""

HEADS: Final = {"daisy": "daisy", "dandelion": "straps", "thistle": "thistle"}
"""Heads, by the shape of the whole."""
FLORETS: Final = {
    "all straps": "straps", "all tubes": "tubes", "tubes with straps round them": "daisy",
}  # fmt: skip
"""Heads, by the florets they are made of."""
TUBULAR: Final = frozenset({"tube", "urn", "thimble", "funnel", "trumpet", "salver"})
"""Flowers whose shape says that their petals make a tube."""
SYMMETRIES: Final = {
    "radial": "radial", "almost radial": "nearly", "two-sided": "one", "lopsided": "none",
}  # fmt: skip
JOINED: Final = {
    "free": "no", "joined": "some", "joined at the base": "base", "joined into a tube": "tube",
    "two joined": "two",
}  # fmt: skip
FACE_POSTURES: Final = {
    "cupped": "cupped", "upright": "upright", "swept back": "back", "tips turned out": "tips",
}  # fmt: skip
"""How petals are held that are seen from above: those held out flat are drawn plainly."""
SEAMS: Final = {
    "free": "no", "joined": "some", "joined at the base": "base", "joined into a tube": "tube",
}  # fmt: skip
"""How far the petals of a flower seen from the side are joined."""
POSTURES: Final = {
    "cupped": "cupped", "upright": "upright", "swept back": "back", "tips turned out": "tips",
    "spreading": "flat",
}  # fmt: skip
REACHES: Final = {
    "hidden": "hidden", "half as long as the petals": "half", "level": "level",
    "sticking out": "out",
}  # fmt: skip
STIGMAS: Final = {
    "knob": "knob", "forked": "fork", "three-lobed": "three", "feathery": "feather",
    "threads": "threads", "disc": "disc", "hooked": "hook",
}  # fmt: skip
SEPAL_LENGTHS: Final = {"shorter": 0.82, "about equal": 1.0, "longer": 1.2}
"""How long the sepals are beside the petals."""
SEPAL_SHAPES: Final = {
    "blunt": "blunt", "pointed": "point", "long-pointed": "long", "narrow": "narrow",
    "broad": "broad", "lobed": "lobed",
}  # fmt: skip
TOOTH_SHAPES: Final = {name: pen for name, pen in SEPAL_SHAPES.items() if name != "lobed"}
"""The shapes of sepals that can be told from the side."""
SEPAL_POSTURES: Final = {
    "pressed to the petals": "up", "spreading": "level", "bent down": "down",
}  # fmt: skip
CALYXES: Final = {
    "tube": "tube", "bell": "bell", "cup": "cup", "swollen": "swollen", "ribbed": "ribbed",
    "reduced to a rim": "rim",
}  # fmt: skip
LIPS_UP: Final = {"hooded": "hood", "flat": "flat", "notched": "notch", "missing": "none"}
LIPS_LOW: Final = {
    "three-lobed": "three", "two-lobed": "two", "with small side teeth": "teeth",
    "with two humps": "humps", "spotted": "spots", "undivided": "whole",
}  # fmt: skip
SPURS: Final = {
    "present": "some", "long and thin": "long", "short and blunt": "short", "curved": "curved",
    "straight": "straight", "a bulge only": "bulge",
}  # fmt: skip
TUBES: Final = {
    "straight": "straight", "curved": "curved", "short": "short", "long": "long",
    "swollen": "swollen",
}  # fmt: skip
BRACTS: Final = {
    "outer ones bent down": "down", "pressed close": "close", "in one row": "one",
    "in several rows": "several", "dark-tipped": "dark", "spiny": "spiny", "cottony": "cotton",
    "with a few short ones at the base": "few",
}  # fmt: skip
MARKS: Final = {
    "dark spots": "spots", "dark veins": "veins", "ringed spots": "rings", "blotch": "blotch",
    "pale eye": "pale", "yellow eye": "yellow", "dark eye": "dark", "green lines": "lines",
}  # fmt: skip
MARKED: Final[Mapping[str, frozenset[str]]] = {
    "face": frozenset(MARKS),
    "turned": frozenset({"dark spots", "ringed spots", "dark veins", "green lines"}),
    "pea": frozenset({"dark veins", "blotch"}),
    "violet": frozenset(MARKS) - {"ringed spots", "green lines"},
}
"""Which marks can be drawn on which flower."""
OVARIES: Final = {"below": "below"}

_SIDE: Final = ("length", "sepals", "calyx")
WANTS: Final[Mapping[str, tuple[str, ...]]] = {
    "face": (
        "petals",
        "petals fused or free",
        "petal shape",
        "petal tip",
        "width",
        "sepals",
        "stamens",
        "stamen length",
        "styles",
    ),
    "turned": ("petals", "petals fused or free", "petal tip", *_SIDE),
    "lipped": ("upper lip", "lower lip", "corolla tube", *_SIDE),
    "hooded": ("length",),
    "pea": _SIDE,
    "violet": ("width", "spur"),
    "head": ("ray florets", "head bracts", "width"),
    "thistle": ("head bracts", "width"),
    "catkin": ("stamens", "styles"),
    "speck": ("sepals", "stamens", "styles", "width"),
}
"""Labels that would let more be drawn."""
NAKED_WANTS: Final = ("width", "sepal shape", "stamens", "styles")
"""Those of a flower that is told to have no petals."""
