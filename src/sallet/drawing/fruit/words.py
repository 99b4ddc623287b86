"""Which words on fruits a drawing understands, and for which kinds of fruit."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.drawing.fruit.body import LOBES

if TYPE_CHECKING:
    from collections.abc import Mapping

STYLES: Final = "style length on the fruit"
_REST: Final = "remains of the flower"
_SIZE: Final = frozenset({"length", "width"})
_HELD: Final = frozenset({"posture", "stalk"})
_BODY: Final = _SIZE | {"shape", "surface", "ribs"}
_TIP: Final = frozenset({_REST, STYLES})
_WHOLE: Final = _BODY | _HELD | _TIP
USES: Final[Mapping[str, frozenset[str]]] = {
    "": _BODY | _TIP,
    "berry": _WHOLE | {"stones", "seeds", "chambers", "inside"},
    "drupe": _WHOLE | {"stones", "inside"},
    "aggregate": _HELD | _SIZE | {"shape", "core", _REST},
    "hip": _WHOLE | {"seeds", "inside"},
    "haw": _WHOLE | {"stones", "inside"},
    "pome": _WHOLE | {"seeds", "chambers", "inside"},
    "fleshy cup round a seed": _HELD | _SIZE,
    "nut": _BODY | _TIP,
    "nut in a husk": _SIZE | {"shape", "husk", "nuts together"},
    "nuts in a prickly cup": _SIZE | {"shape", "husk", "nuts together"},
    "achene": _BODY | _TIP,
    "achene with parachute": _BODY | {"parachute", STYLES},
    "three-angled nut": _SIZE | {"shape", "surface"},
    "winged three-angled nut": _SIZE | {"wing surface"},
    "four nutlets": _SIZE | {"surface"},
    "capsule": _WHOLE | {"valves", "opening", "chambers"},
    "capsule with a lid": _WHOLE | {"opening"},
    "three-lobed capsule": _SIZE | _HELD | {"surface", "opening"},
    "pair of hairy lobes": _SIZE | _HELD | {"surface"},
    "long pod": _WHOLE | {"opening"},
    "short pod": _WHOLE | {"opening"},
    "pea pod": _SIZE | _HELD | {"surface", "seeds"},
    "follicle": _SIZE | _HELD | {"surface"},
    "schizocarp": _WHOLE | {"opening"},
    "samara": _HELD | {"length", "wings"},
    "double samara": _HELD | {"length"},
    "cone": _HELD | _SIZE | {"shape"},
    "berries on a spike": _HELD,
    "grain": _BODY,
    "bur": _HELD | _SIZE | {"shape"},
}
"""Which characters change the drawing of which kind; without a kind, of its bare shape."""

SURFACES: Final = frozenset({
    "shiny", "hairy", "bristly", "prickly", "hooked", "warty", "wrinkled", "glandular", "ribbed",
    "dotted", "beaded",
})  # fmt: skip
RIBS: Final = frozenset({"sharp", "low", "thick", "wavy", "straight", "with bristles"})
ANGLES: Final[Mapping[str, int]] = {"three-angled": 3, "four-angled": 4}
_LINES: Final = frozenset({
    "round", "roundish", "egg-shaped", "ellipsoid", "flask-shaped", "pear-shaped", "cylindrical",
    "long and narrow", "spindle-shaped", "heart-shaped", "cone-shaped", "club-shaped",
})  # fmt: skip
_HEAPS: Final = frozenset({
    "round", "roundish", "egg-shaped", "ellipsoid", "cylindrical", "cone-shaped",
})  # fmt: skip
SHAPES_OF: Final[Mapping[str, frozenset[str]]] = {
    "": _LINES | {*LOBES, *ANGLES, "flat", "beaked"},
    "aggregate": _HEAPS,
    "hip": _LINES | {*ANGLES, "flat", "beaked"},
    "long pod": (_LINES - {"long and narrow"}) | {*LOBES, *ANGLES, "flat", "beaked"},
    "nut in a husk": _LINES | {"three-angled"},
    "nuts in a prickly cup": _LINES | {"three-angled"},
    "achene with parachute": _LINES | {*ANGLES, "flat"},
    "three-angled nut": _LINES,
    "capsule with a lid": _LINES,
    "schizocarp": _LINES | {"two-lobed", "flat", "beaked"},
    "cone": _HEAPS | {"spindle-shaped"},
    "bur": _HEAPS | {"pear-shaped", "spindle-shaped"},
}
"""The shapes that each kind can be drawn in; the first row is for all others."""

POSTURES: Final[Mapping[str, str]] = {
    "upright": "up", "spreading": "side", "nodding": "down", "hanging": "straight down",
    "pressed to the stem": "stem", "turned down": "turned", "lying on the soil": "ground",
    "among the leaves at ground level": "tuft",
}  # fmt: skip
STALKS: Final[Mapping[str, str]] = {
    "turned down": "turned", "curved back": "bow", "upright": "up", "thickened": "thick",
    "coiled": "coil", "stalkless": "none",
}  # fmt: skip
BENT: Final = frozenset({"turned", "bow", "up", "coil", "none"})
"""Ways of a stalk that leave no room for a posture: beside one they are not drawn."""
STALK_HIDDEN: Final = frozenset({"ground", "tuft"})
TOPLESS: Final = frozenset({"by flaps", "by a lid"})
TIPPED: Final = frozenset({"a beak", "bent styles", "upright styles"})
FOOT_REMAINS: Final = frozenset({
    "sepals clasping", "a dry calyx at the stalk", "in a papery lantern",
})  # fmt: skip
REMAINS: Final = TIPPED | FOOT_REMAINS | {
    "crown of sepals", "sepals bent back", "sepals fallen", "a small dent", "a star",
}  # fmt: skip
_POD: Final = frozenset({"a beak", "sepals clasping"})
REMAINS_OF: Final[Mapping[str, frozenset[str]]] = {
    "aggregate": frozenset({"sepals bent back", "sepals clasping"}),
    "schizocarp": TIPPED | {"crown of sepals"},
    "long pod": _POD,
    "short pod": _POD,
    "capsule with a lid": FOOT_REMAINS,
}
"""The remains that can be drawn on a kind; on all others, all of them."""
OPENINGS: Final[Mapping[str, frozenset[str]]] = {
    "capsule": frozenset({"by flaps", "by slits", "by holes", "by a lid"}),
    "capsule with a lid": frozenset({"by a lid"}),
    "three-lobed capsule": frozenset({"by slits"}),
    "long pod": frozenset({"by two flaps from below"}),
    "short pod": frozenset({"by two flaps from below"}),
    "schizocarp": frozenset({"parting in two halves"}),
}
_STONES: Final = frozenset({"one large stone", "several small stones"})
INSIDES: Final[Mapping[str, frozenset[str]]] = {
    "berry": _STONES | {"many small seeds"},
    "drupe": _STONES,
    "haw": _STONES,
    "hip": frozenset({"hairs round the seeds"}),
    "pome": frozenset({"a core with pips"}),
}
HIGH: Final = ("shorter than the nut", "as long as the nut", "longer than the nut")
SPINES: Final = ("soft prickles", "sharp spines", "a few stout spines")
HUSKS_OF: Final[Mapping[str, frozenset[str]]] = {
    "nut in a husk": frozenset({"leafy", "ragged", *HIGH, *SPINES, "scaly cup"}),
    "nuts in a prickly cup": frozenset({*SPINES, "four flaps", "scaly cup"}),
}
PARACHUTES: Final = frozenset({
    "plain hairs", "feathery hairs", "on a stalk", "sitting on the fruit", "scales",
})  # fmt: skip
CLASHING: Final[tuple[frozenset[str], ...]] = (
    frozenset(HIGH), frozenset(SPINES), frozenset({"plain hairs", "feathery hairs", "scales"}),
    frozenset({"on a stalk", "sitting on the fruit"}), frozenset({"sharp", "thick", "low"}),
    frozenset({"wavy", "straight"}),
)  # fmt: skip
"""Of words that cannot be drawn together the first is drawn."""
ALONE: Final = "scaly cup"
"""A husk that leaves no room for another word."""
WINGS: Final = frozenset({
    "all round", "one long wing", "a pair", "a leafy strap", "a three-lobed bract",
})  # fmt: skip
WING_SURFACES: Final = frozenset({"without warts", "one wart", "three warts", "toothed"})
