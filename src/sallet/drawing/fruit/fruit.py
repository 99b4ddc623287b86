"""A fruit drawn from its recorded characters."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Final

from sallet.drawing.fruit.case import capsule, lidded
from sallet.drawing.fruit.cup import cupped
from sallet.drawing.fruit.cut import cut
from sallet.drawing.fruit.dry import nutlets, shelled, three_angled
from sallet.drawing.fruit.fleshy import aggregate, aril, berry_spike
from sallet.drawing.fruit.form import fruit_form
from sallet.drawing.fruit.husk import husked
from sallet.drawing.fruit.lobes import hairy_pair, three_lobed
from sallet.drawing.fruit.parachute import parachute
from sallet.drawing.fruit.pod import cress_pod, follicle, pea_pod
from sallet.drawing.fruit.stand import held
from sallet.drawing.fruit.umbel import parted
from sallet.drawing.fruit.whole import Drawn, covering, scale_of, set_out, whole
from sallet.drawing.fruit.winged import bur, cone, double_samara, samara, winged_nut
from sallet.drawing.fruit.words import USES
from sallet.drawing.sketch import Sketch
from sallet.drawing.told import characters

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.fruit.form import FruitForm
    from sallet.drawing.ink import Ink
    from sallet.drawing.told import Told


def _schizocarp(form: FruitForm, size: float) -> Drawn:
    drawn = whole(form, size)
    if form.opening is None or drawn.body is None:
        return drawn
    _, ribs = covering(form)
    return replace(drawn, beside=(*drawn.beside, parted(drawn.body, ribs)))


def _one_seeded(form: FruitForm, size: float) -> Drawn:
    return shelled(form, whole(form, size))


_DRAWN: Final[Mapping[str, Callable[[FruitForm, float], Drawn]]] = {
    "aggregate": aggregate,
    "fleshy cup round a seed": aril,
    "nut": _one_seeded,
    "nut in a husk": husked,
    "nuts in a prickly cup": cupped,
    "achene": _one_seeded,
    "achene with parachute": parachute,
    "three-angled nut": three_angled,
    "winged three-angled nut": winged_nut,
    "four nutlets": nutlets,
    "capsule": capsule,
    "capsule with a lid": lidded,
    "three-lobed capsule": three_lobed,
    "pair of hairy lobes": hairy_pair,
    "long pod": cress_pod,
    "short pod": cress_pod,
    "pea pod": pea_pod,
    "follicle": follicle,
    "schizocarp": _schizocarp,
    "samara": samara,
    "double samara": double_samara,
    "cone": cone,
    "berries on a spike": berry_spike,
    "bur": bur,
}
"""How each kind is drawn; the others are of one body."""
WANTED: Final = (
    "kind", "shape", "length", "width", "surface", "ribs", "remains of the flower", "stones",
    "seeds", "chambers", "inside", "husk", "nuts together", "parachute", "wings", "wing surface",
    "valves", "opening", "core", "posture", "stalk",
)  # fmt: skip
"""Labels that a fruit is drawn from, in the order in which they tell most."""
_GAP: Final = 0.16
"""Between a fruit and what is drawn beside it, in shares of its size."""


def fruit_ink(form: FruitForm, size: float) -> tuple[Ink, float | None]:
    """Return a fruit `size` units long or wide, whichever is more, and units to a millimetre."""
    kind = form.kind.value if form.kind else ""
    drawn = _DRAWN.get(kind, whole)(form, size)
    upright = drawn.ink
    if "posture" in USES[kind]:
        unit = min(drawn.width, 0.62 * size, max(drawn.width, 0.22 * size) * 1.2)
        upright = held(
            upright, unit, form.posture.value if form.posture else "",
            form.stalk.value if form.stalk else "",
        )  # fmt: skip
    face = cut(form, drawn.width, drawn.body)
    return set_out(upright, (face, *drawn.beside), _GAP * size), scale_of(
        form, drawn.length, drawn.width
    )


def fruit(told: Told, size: float) -> Sketch | None:
    """Return a fruit drawn from what is told; None where neither kind nor shape is recorded."""
    form = fruit_form(told)
    return fruit_sketch(form, told, size) if form else None


def fruit_sketch(form: FruitForm, told: Told, size: float) -> Sketch:
    """Return a fruit drawn from its form; what is told says what is still missing."""
    ink, scale = fruit_ink(form, size)
    uses = USES[form.kind.value if form.kind else ""] | {"kind"}
    title = form.kind.value if form.kind else "fruit"
    wants = tuple(w for w in WANTED if w in uses and w not in told.items)
    return Sketch(title, ink, characters(form), scale, wants)
