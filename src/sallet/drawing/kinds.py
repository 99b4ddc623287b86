"""The kinds of figures: which organ, how large on a plate, what each needs and what it shows."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.flower.flower import flower
from sallet.drawing.fruit.fruit import fruit
from sallet.drawing.fruit.seed import seed
from sallet.drawing.inflorescence.inflorescence import inflorescence
from sallet.drawing.leaf.arrangement import leaf_set
from sallet.drawing.leaf.foot import leaf_foot
from sallet.drawing.leaf.leaf import leaf
from sallet.drawing.leaf.rising import rising
from sallet.drawing.stem.growth import growth
from sallet.drawing.stem.section import stalk_section, stem_section
from sallet.drawing.stem.side import stem_piece
from sallet.drawing.stem.twig import twig
from sallet.drawing.stem.winding import stem_winding
from sallet.drawing.underground.underground import underground

if TYPE_CHECKING:
    from sallet.drawing.example import Draw
    from sallet.drawing.sketch import Sketch
    from sallet.drawing.told import Told


@dataclass(frozen=True)
class Kind:
    """A kind of figure."""

    name: str
    organ: str
    draw: Draw
    size: float
    """Units of its main length on a plate."""
    needs: str
    """What must be recorded that anything is drawn, in words for a writer of lessons."""
    shows: tuple[str, ...]
    """The labels that the drawing can show."""
    places: tuple[str, ...] = ()
    """Where the organ may differ, in the order in which it is drawn."""
    main: bool = False
    """Whether it is the drawing that is missed where an organ has none."""


@dataclass(frozen=True)
class Whole:
    """The figure of the whole plant."""

    name: str
    organ: str
    size: float
    """Units of its stem."""
    needs: str
    shows: tuple[str, ...]


_ALONE: Final = frozenset({"single", "head"})
_UP_THE_STEM: Final = (
    "spring",
    "summer",
    "autumn",
    "winter",
    "basal",
    "first year",
    "lower",
    "middle",
    "stem",
    "upper",
)
_SEXES: Final = ("male", "female")


def _cluster(about: Told, size: float) -> Sketch | None:
    """Return a cluster of flowers; what stands alone is drawn as a flower already."""
    state = about.state("inflorescence")
    return None if state and state.value.name in _ALONE else inflorescence(about, size)


KINDS: Final = (
    Kind(
        "how the leaves rise", "leaves", rising, 150, "`rises from the ground`",
        ("rises from the ground",),
    ),
    Kind(
        "how the leaves are set", "leaves", leaf_set, 150, "`arrangement`",
        ("arrangement", "leaves to a node", "posture"), places=_UP_THE_STEM,
    ),
    Kind(
        "leaf", "leaves", leaf, 200, "`division`, and `shape` if it is simple",
        ("division", "leaflets", "pairs of leaflets", "shape", "margin", "tip", "base", "lobing",
         "lobes", "depth of the lobes", "leaflet shape", "leaflet margin", "leaflet tip",
         "leaflet base", "leaflet stalk", "leaflet size", "leaflet length", "leaflet width",
         "attachment", "stalk length", "stalk against blade", "venation", "pairs of side veins",
         "main veins from the base", "markings", "length", "width"),
        places=_UP_THE_STEM, main=True,
    ),
    Kind("foot of a leaf", "leaves", leaf_foot, 80, "`sheath` or `stipules`",
         ("sheath", "stipules")),
    Kind(
        "flower", "flowers", flower, 120, "`shape`, or `petals` and `symmetry`",
        ("shape", "petals", "symmetry", "petals and sepals", "petals fused or free", "petal shape",
         "petal tip", "petal posture", "petal length", "petal width", "markings", "corolla tube",
         "upper lip", "lower lip", "spur", "sepals", "sepals fused or free", "sepal shape",
         "sepal length beside the petals", "sepal posture", "calyx", "stamens", "stamen length",
         "styles", "stigma", "ovary position", "florets", "ray florets", "head bracts", "width",
         "length"),
        places=_SEXES, main=True,
    ),
    Kind(
        "cluster of flowers", "flowers", _cluster, 190, "`inflorescence`",
        ("inflorescence", "flowers in a cluster", "position", "cluster shape", "main branches",
         "flowering order", "cluster stalk", "rays", "ray length", "bracts", "number of bracts",
         "bracteoles", "number of bracteoles", "heads on a stalk", "spathe", "posture", "bulbils",
         "petals", "shape", "petal shape", "petal tip", "florets", "ray florets", "cluster width",
         "cluster length"),
        places=_SEXES,
    ),
    Kind(
        "fruit", "fruit", fruit, 120, "`kind`",
        ("kind", "shape", "surface", "ribs", "wings", "wing surface", "stones", "seeds",
         "chambers", "valves", "nuts together", "posture", "stalk", "opening", "inside",
         "remains of the flower", "style length on the fruit", "parachute", "core", "husk",
         "length", "width"),
        main=True,
    ),
    Kind("seed", "seeds", seed, 60, "`shape`",
         ("shape", "surface", "appendage", "length", "width")),
    Kind(
        "stem cut across", "stem", stem_section, 70, "`section` or `interior`",
        ("section", "interior", "ridges", "pith width", "hair arrangement", "inner thread",
         "thickness"),
        main=True,
    ),
    Kind(
        "leaf stalk cut across", "leaves", stalk_section, 60, "`stalk section` or `stalk interior`",
        ("stalk section", "stalk interior"),
    ),
    Kind(
        "piece of the stem", "stem", stem_piece, 170, "`surface`, `markings`, `thorns` or `nodes`",
        ("surface", "hair arrangement", "markings", "ridges", "nodes", "thorns", "thorn shape",
         "thorn density", "tendrils", "rooting"),
    ),
    Kind("twig with buds", "stem", twig, 150, "`buds on the twig`", ("buds on the twig",)),
    Kind("how the stem winds", "stem", stem_winding, 150, "`twining direction`",
         ("twining direction",)),
    Kind(
        "how it grows", "stem", growth, 130, "`posture`, `branching` or `runners`",
        ("posture", "branching", "runners", "rooting"),
    ),
    Kind(
        "how it grows", "whole plant", growth, 130,
        "`posture`, `branching` or `stems from the base`",
        ("posture", "branching", "stems from the base"),
    ),
    Kind(
        "under the soil", "roots", underground, 140, "`kind`",
        ("kind", "shape", "number of tubers", "course", "surface", "coat", "interior", "rootlets",
         "scales", "depth", "length", "width"),
        main=True,
    ),
)  # fmt: skip
"""The figures of a plate, in its order."""
HABIT: Final = Whole(
    "the whole plant", "whole plant", 300,
    "`height`, `branching` and `posture`; of the stem `thickness`; of the leaves `arrangement`,"
    " `length` and `per stem` (or the `leaf count` of the plant)",
    ("division", "leaflets", "shape", "margin", "tip", "base", "lobing", "venation"),
)  # fmt: skip
"""The sketch of the whole plant, beside its details; it shows the leaves where they are large."""
