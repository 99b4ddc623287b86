"""What the words for blades mean to the pen: shapes, leaflets' shapes, lobing, depths."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.leaf.contour import BASES, TIPS, Base, Tip
from sallet.drawing.leaf.lobes import Lobing
from sallet.drawing.leaf.margin import MARGINS, Teeth

if TYPE_CHECKING:
    from collections.abc import Mapping

NEUTRAL_TIP: Final = Tip(0.85)
NEUTRAL_BASE: Final = Base(0.85)
"""Where the end of a blade is not recorded: drawn dotted."""


@dataclass(frozen=True, slots=True)
class Plan:
    """A shape: where it is widest, how full its sides are, and the ends that belong to it.

    A shape whose very name says how it ends has that end unless the lesson records another.
    """

    widest: float
    tip_p: float = 2.0
    base_p: float = 2.0
    tip: Tip | None = None
    base: Base | None = None
    sides: str = ""
    ratio: float | None = None
    """Where the vocabulary's ratio has no upper end, or the shape has one of its own."""
    lobing: Lobing | None = None


_ROUND, _ROUND_FOOT = TIPS["rounded"], BASES["rounded"]
_ACUTE, _WEDGE = TIPS["acute"], BASES["wedge-shaped"]

SHAPES: Final[Mapping[str, Plan]] = {
    "elliptic": Plan(0.5),
    "narrowly elliptic": Plan(0.5),
    "widely elliptic": Plan(0.5),
    "circular": Plan(0.5, tip=_ROUND, base=_ROUND_FOOT),
    "oblate": Plan(0.5, tip=_ROUND, base=_ROUND_FOOT),
    "oblong": Plan(0.5, 4.5, 4.5),
    "narrowly oblong": Plan(0.5, 4.5, 4.5),
    "square": Plan(0.5, 6, 6, tip=Tip(0.34), base=Base(0.34, 6)),
    "ovate": Plan(0.34),
    "widely ovate": Plan(0.36),
    "lanceolate": Plan(0.3),
    "broadly lanceolate": Plan(0.32),
    "obovate": Plan(0.66),
    "widely obovate": Plan(0.64),
    "oblanceolate": Plan(0.7),
    "linear": Plan(0.5, 5, 5, ratio=14),
    "strap-shaped": Plan(0.5, 5, 5),
    "sword-shaped": Plan(0.42, 2.6, 6, tip=TIPS["long-pointed"], base=Base(0.3, 6), ratio=13),
    "thread-like": Plan(0.5, 8, 8, tip=_ROUND, base=_ROUND_FOOT, ratio=45),
    "needle-like": Plan(0.5, 7, 7, tip=_ACUTE, base=_ROUND_FOOT, ratio=22),
    "awl-shaped": Plan(0.1, 1.3, 2, tip=_ACUTE, base=Base(0.3)),
    "scale-like": Plan(0.28, 1.9, 2, tip=_ACUTE, base=Base(0.3), ratio=1.45),
    "triangular": Plan(0.1, 1.08, 2, tip=_ACUTE, base=BASES["cut straight"]),
    "diamond-shaped": Plan(0.48, 1.08, 1.08, tip=Tip(1.0), base=Base(1.0, 1.08)),
    "heart-shaped": Plan(0.3, base=BASES["heart-shaped"]),
    "kidney-shaped": Plan(0.46, 2.2, tip=_ROUND, base=BASES["kidney-shaped"]),
    "arrow-shaped": Plan(0.36, base=Base(lobes="arrow", depth=0.24)),
    "spear-shaped": Plan(0.3, base=Base(lobes="spear", depth=0.06)),
    "spoon-shaped": Plan(0.78, tip=_ROUND, base=Base(2.3)),
    "wedge-shaped": Plan(0.86, 2.4, 1.05, base=Base(1.0, 1.05)),
    "fan-shaped": Plan(0.74, 2.2, 1.12, tip=_ROUND, base=Base(1.0, 1.12)),
    "fiddle-shaped": Plan(0.64, 2, 2.6, tip=_ROUND, base=_ROUND_FOOT, sides="waist"),
    "sickle-shaped": Plan(0.3, sides="sickle"),
    "lopsided": Plan(0.35, base=Base(0.6, lift=0.12)),
}
"""The shapes of leaves, by the states of the label `shape`."""
LEAFLET_SHAPES: Final[Mapping[str, Plan]] = {
    "elliptic": Plan(0.5),
    "ovate": Plan(0.34),
    "lanceolate": Plan(0.3),
    "obovate": Plan(0.66),
    "oblong": Plan(0.5, 4.5, 4.5),
    "linear": Plan(0.5, 5, 5, ratio=13),
    "circular": Plan(0.5, tip=_ROUND, base=_ROUND_FOOT),
    "wedge-shaped": Plan(0.86, 2.4, 1.05, base=Base(1.0, 1.05)),
    "diamond-shaped": Plan(0.48, 1.08, 1.08, tip=Tip(1.0), base=Base(1.0, 1.08)),
    "triangular": Plan(0.1, 1.08, 2, tip=_ACUTE, base=BASES["cut straight"]),
    "heart-shaped": Plan(0.64, tip=TIPS["heart-tipped"], base=_WEDGE),
    "thread-like": Plan(0.5, 8, 8, tip=_ROUND, base=_ROUND_FOOT, ratio=40),
    "fan-shaped": Plan(0.74, 2.2, 1.12, tip=_ROUND, base=Base(1.0, 1.12)),
    "cut into segments": Plan(0.36, tip=Tip(0.9), base=_WEDGE, lobing=Lobing("feather", 7, 0.6)),
}
"""The shapes of leaflets, by the states of `leaflet shape`."""
LEAFLET_TIPS: Final[Mapping[str, Tip]] = {**TIPS, "drawn out": TIPS["acuminate"]}
LEAFLET_MARGINS: Final[Mapping[str, Teeth | None]] = {
    **MARGINS,
    "few blunt teeth near the tip": Teeth("rounded", 0.16, 0.42, begin=0.52),
    "lobed": Teeth("rounded", 0.26, 0.5, begin=0.18),
}
LOBINGS: Final[Mapping[str, Lobing]] = {
    "lobed": Lobing("", 5, 0.45),
    "shallowly lobed": Lobing("", 5, 0.2),
    "deeply lobed": Lobing("", 5, 0.66),
    "three-lobed": Lobing("palm", 3, 0.42),
    "five-lobed": Lobing("palm", 5, 0.42),
    "palmately lobed": Lobing("palm", 5, 0.5),
    "pinnately lobed": Lobing("feather", 9, 0.5),
    "backward-lobed": Lobing("feather", 11, 0.62, "pointed", aim="back"),
    "lyre-shaped": Lobing("feather", 7, 0.8, "round", end="large"),
    "comb-like": Lobing("feather", 15, 0.82, slim=True),
    "round-lobed": Lobing("feather", 9, 0.46, "round"),
    "pointed lobes": Lobing("", 5, 0.42, "pointed"),
    "cut twice": Lobing("feather", 9, 0.66, twice=True),
}
"""The lobing by the states of `lobing`; without a pattern it is that of the veins.

The numbers are those of a diagram: a recorded number of lobes takes their place.
"""
DEPTHS: Final[Mapping[str, float]] = {
    "a quarter": 0.22,
    "a third": 0.33,
    "halfway": 0.5,
    "two thirds": 0.66,
    "nearly all the way": 0.86,
}
"""How deep lobes are cut, by the states of `depth of the lobes`."""
PATTERNS: Final[Mapping[str, str]] = {
    "pinnate": "feather", "net": "feather", "teeth": "feather", "palmate": "palm", "3": "palm",
}  # fmt: skip
"""How lobes follow the veins, by the hint of `venation`."""
