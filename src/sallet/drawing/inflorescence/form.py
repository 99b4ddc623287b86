"""What of a flower cluster's recorded characters its drawing shows."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.inflorescence.bracts import Kind
from sallet.drawing.inflorescence.rays import UNCOUNTED_RAYS, can_rise
from sallet.drawing.inflorescence.whorls import Whorl
from sallet.drawing.told import Character, Shown, some
from sallet.lesson.value import Absent

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.told import Told

NUMBER: Final = "flowers in a cluster"
_RINGED: Final = frozenset({"bracts", "number of bracts"})
_SPIRE: Final = frozenset(
    {NUMBER, "cluster shape", "bracts", "flowering order", "bulbils", "posture"}
)
_TOP: Final = _RINGED | {NUMBER, "cluster shape", "flowering order"}
_UMBEL: Final = _RINGED | {"rays", "cluster shape", "ray length"}
USES: Final[Mapping[str, frozenset[str]]] = {
    "single": _RINGED | {"posture"},
    "in pairs": _RINGED | {"posture"},
    "umbel": _UMBEL | {NUMBER, "spathe", "bulbils", "flowering order"},
    "compound umbel": _UMBEL | {"bracteoles", "number of bracteoles"},
    "raceme": _SPIRE,
    "one-sided raceme": _SPIRE,
    "spike": _SPIRE - {"posture"},
    "branched spike": frozenset({"main branches"}),
    "panicle": frozenset({"main branches", "cluster shape"}),
    "corymb": _TOP,
    "cyme": frozenset({NUMBER, "flowering order", "bracts"}),
    "flat-topped cyme": frozenset({"main branches", "cluster shape"}),
    "coiled cyme": frozenset({NUMBER}),
    "head": _RINGED | {NUMBER, "cluster shape"},
    "heads in a cluster": frozenset({"heads on a stalk", "cluster shape"}),
    "globe": _RINGED | {NUMBER, "spathe", "bulbils"},
    "whorls": frozenset({NUMBER, "posture"}),
    "catkin": frozenset({"cluster shape", "posture"}),
    "spadix": frozenset({"spathe"}),
    "cluster in the leaf axil": frozenset({NUMBER}),
    "spikelet": frozenset({NUMBER}),
}
"""Which characters change the drawing of which cluster, beside its size, its stalk and place."""
PLANS: Final = {name: name for name in USES}
_SEAT: Final = frozenset({"position", "cluster stalk"})
_SEATS: Final[Mapping[str, frozenset[str]]] = {
    "single": frozenset({"position"}),
    "in pairs": frozenset({"position"}),
    "cluster in the leaf axil": frozenset(),
    "whorls": frozenset({"position"}),
    "catkin": frozenset({"position"}),
    "spikelet": frozenset(),
}
"""What each stands on; any other has both a stalk and a place."""
PLACES: Final[Mapping[str, Mapping[str, str]]] = {
    "whorls": {"in the leaf axils": "axil"},
    "catkin": {"on bare twigs": "twig"},
}
"""The only places in which some can be drawn."""
_UNMEASURED: Final = frozenset({"single", "in pairs"})
_TALLER: Final = frozenset(
    {"raceme", "one-sided raceme", "spike", "branched spike", "panicle", "catkin", "spadix",
     "spikelet"}
)  # fmt: skip
"""Clusters measured by their length, the others by their width."""

_LEVEL: Final = {"flat": "flat", "domed": "domed", "hollow": "hollow", "ball": "ball"}
_TALL: Final = {"cone": "cone", "cylinder": "cylinder"}
OUTLINES: Final[Mapping[str, Mapping[str, str]]] = {
    "umbel": _LEVEL, "compound umbel": _LEVEL,
    "raceme": _TALL, "one-sided raceme": _TALL, "spike": _TALL,
    "catkin": _TALL, "panicle": {**_TALL, "domed": "domed", "flat": "flat"},
    "corymb": {"flat": "flat", "domed": "domed"},
    "flat-topped cyme": {"flat": "flat", "domed": "domed", "hollow": "hollow"},
    "heads in a cluster": {"flat": "flat", "domed": "domed"},
    "head": {**_LEVEL, **_TALL},
}  # fmt: skip
"""The outlines that each cluster can be drawn in."""

_RISING: Final = {"lowest first": "up", "outermost first": "up", "middle first": "down"}
_INWARD: Final = {"lowest first": "in", "outermost first": "in", "middle first": "out"}
_AT_ONCE: Final = {"all at once": "all"}
ORDERS: Final[Mapping[str, Mapping[str, str]]] = {
    # The definitions of the raceme and the cyme say which flowers open first.
    "raceme": {"middle first": "down", **_AT_ONCE},
    "one-sided raceme": {"middle first": "down", **_AT_ONCE},
    "spike": _RISING,
    "umbel": _INWARD,
    "corymb": _INWARD,
    "cyme": _AT_ONCE,
}
"""The orders of flowering that change which flowers of a cluster are buds."""

FACES: Final[Mapping[str, str]] = {
    "upright": "up",
    "facing outwards": "side",
    "nodding": "down",
    "hanging": "straight down",
    "all facing one way": "one side",
}
_TAILS: Final = {"upright": "up"}
"""A catkin hangs, if it is not said to stand."""
_FACED: Final[Mapping[str, Mapping[str, str]]] = {
    "catkin": _TAILS,
    "whorls": {"upright": "up", "nodding": "down", "hanging": "straight down"},
    "one-sided raceme": {k: v for k, v in FACES.items() if v != "one side"},
    "single": {k: v for k, v in FACES.items() if v != "one side"},
    "in pairs": {k: v for k, v in FACES.items() if v != "one side"},
}
SPATHES: Final = {
    "hood": "hood",
    "papery sheath": "sheath",
    "green sheath": "fold",
    "in two pieces": "two",
}
BULBILS: Final = {"present": 3, "more than flowers": 1}
"""At every how many-eth flower stands one."""
STALKS: Final = {"long": "long", "short": "short", "none to speak of": "none"}
_STALKLESS: Final = frozenset({"soil", "ground"})
"""Places that say themselves what stalk there is."""
WANTS: Final = (
    "rays", NUMBER, "main branches", "heads on a stalk", "bracts", "number of bracts",
    "bracteoles", "number of bracteoles", "spathe", "cluster shape", "cluster width",
    "cluster length", "cluster stalk", "position",
)  # fmt: skip
"""What is worth recording so that a drawing can show it, the most telling first."""
HEADS: Final = {"one": 1, "a few": 4, "many": 24}


@dataclass(frozen=True)
class InflorescenceForm:
    """What is drawn of a cluster; None where it is not recorded or would change nothing."""

    plan: Shown[str]
    flowers: Shown[int] | None = None
    rays: Shown[int] | None = None
    branches: Shown[int] | None = None
    outline: Shown[str] | None = None
    order: Shown[str] | None = None
    face: Shown[str] | None = None
    bracts: Shown[Whorl] | None = None
    bract_number: Shown[int] | None = None
    bracteoles: Shown[Whorl] | None = None
    bracteole_number: Shown[int] | None = None
    spathe: Shown[str] | None = None
    bulbils: Shown[int] | None = None
    heads: Shown[int] | None = None
    stalk: Shown[str] | None = None
    place: Shown[str] | None = None
    width: Shown[float] | None = None
    """In millimetres; it gives the scale."""
    length: Shown[float] | None = None
    steep: Shown[float] | None = None
    """The length of an umbel's rays divided by its width."""


def inflorescence_form(told: Told) -> InflorescenceForm | None:
    """Return what a drawing shows of a flower cluster; None where its kind is not recorded."""
    plan = told.pick("inflorescence", PLANS)
    if plan is None:
        return None
    uses = USES[plan.value]
    given = told.only(uses | _SEATS.get(plan.value, _SEAT))
    rays = some(given.count("rays"))
    flowers = None if rays else some(given.count(NUMBER))
    bracts, bract_number = _whorl(given, "bracts", "number of bracts")
    bracteoles, bracteole_number = _whorl(given, "bracteoles", "number of bracteoles")
    if plan.value != "compound umbel" and bracts and bracts.value.none:
        # Nothing is drawn without it either, unless their number says otherwise.
        bracts = bracts if given.count("number of bracts") else None
    place = (
        given.pick("position", PLACES[plan.value]) if plan.value in PLACES
        else given.hint("position", "at")
    )  # fmt: skip
    width, length = _measured(told, plan.value)
    return InflorescenceForm(
        plan=plan,
        flowers=flowers,
        rays=rays,
        branches=some(given.count("main branches")),
        outline=given.pick("cluster shape", OUTLINES.get(plan.value, {})),
        order=given.pick("flowering order", ORDERS.get(plan.value, {})),
        face=given.pick("posture", _FACED.get(plan.value, FACES)),
        bracts=bracts,
        bract_number=bract_number,
        bracteoles=bracteoles,
        bracteole_number=bracteole_number,
        spathe=given.pick("spathe", SPATHES),
        bulbils=given.pick("bulbils", BULBILS),
        heads=given.pick("heads on a stalk", HEADS),
        stalk=None if place and place.value in _STALKLESS else given.pick("cluster stalk", STALKS),
        place=place,
        width=width,
        length=length,
        steep=_steep(given, width, plan.value, rays),
    )


def wanted(form: InflorescenceForm, told: Told) -> tuple[str, ...]:
    """Return the labels that would let more be drawn, once they are recorded."""
    plan = form.plan.value
    idle = set() if form.bracts and not form.bracts.value.none else {"number of bracts"}
    if not form.bracteoles or form.bracteoles.value.none:
        idle.add("number of bracteoles")
    if "rays" in USES[plan]:
        idle |= {NUMBER, "rays"} if form.flowers else {NUMBER}
    if plan in PLACES:
        idle.add("position")
    if form.place and form.place.value in _STALKLESS:
        idle.add("cluster stalk")
    uses = USES[plan] | _SEATS.get(plan, _SEAT)
    if plan not in _UNMEASURED:
        uses |= {"cluster length" if plan in _TALLER else "cluster width"}
    return tuple(w for w in WANTS if w in uses - idle and w not in told.items)


def _measured(told: Told, plan: str) -> tuple[Shown[float] | None, Shown[float] | None]:
    if plan in _UNMEASURED:
        return None, None
    if plan in _TALLER:
        return None, told.length("cluster length")
    return told.length("cluster width"), None


def _steep(
    given: Told, width: Shown[float] | None, plan: str, rays: Shown[int] | None
) -> Shown[float] | None:
    ray = given.length("ray length")
    if ray is None or width is None or given.pick("cluster shape", {"ball": True}):
        return None
    ratio = ray.value / width.value
    count = (rays.value if rays else UNCOUNTED_RAYS) if plan == "compound umbel" else None
    return ray.as_(ratio) if can_rise(ratio, count) else None


def _whorl(told: Told, label: str, number: str) -> tuple[Shown[Whorl] | None, Shown[int] | None]:
    """Return the bracts of one kind and how many there are."""
    none = told.is_none(label) or (told.is_none(number) if label not in told.items else None)
    if none:
        return none.as_(Whorl(none=True)), None
    states = _usual(told, label).states(label)
    count = some(told.count(number))
    if not states:
        return (count.as_(Whorl()), count) if count else (None, None)
    hints: dict[str, str] = {}
    for state in states:
        for key, value in state.value.draw.items():
            hints.setdefault(key, value)
    if count and not hints:
        # Their number says that there are some.
        return count.as_(Whorl()), count
    names = ", ".join(state.value.name for state in states)
    character = Character(label, names, told.states(label)[0].character.told)
    whorl = Whorl(
        Kind(hints.get("form", ""), hints.get("edge", ""), hints.get("posture", "")),
        side=hints.get("side", ""),
        joined=hints.get("base") == "joined",
        falling=hints.get("fate") == "falling",
    )
    return Shown(whorl, character), count


def _usual(told: Told, label: str) -> Told:
    """Return the same without what is seldom so, where something is usual."""
    items = told.usual(label).items.get(label, ())
    return told.with_(label, tuple(item for item in items if item.value != Absent()))
