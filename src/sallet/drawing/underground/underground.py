"""The parts under the soil, drawn from their characters."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.drawing.sketch import Sketch
from sallet.drawing.told import characters
from sallet.drawing.underground.cluster import cluster, string
from sallet.drawing.underground.creeping import rhizome, runners
from sallet.drawing.underground.form import underground_form
from sallet.drawing.underground.roots import (
    fibrous,
    nodules,
    water_roots,
    woody_roots,
    woody_stock,
)  # fmt: skip
from sallet.drawing.underground.stores import store, taproot

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.ink import Ink
    from sallet.drawing.told import Told
    from sallet.drawing.underground.form import UndergroundForm

    Plan = Callable[[UndergroundForm, float], tuple[Ink, float | None]]

PLANS: Final[Mapping[str, Plan]] = {
    "taproot": taproot,
    "slender taproot": taproot,
    "stout taproot": taproot,
    "fibrous": fibrous,
    "bulb": store,
    "corm": store,
    "tuber": store,
    "cluster of tubers": cluster,
    "string of tubers": string,
    "rhizome": rhizome,
    "short rhizome": rhizome,
    "woody stock": woody_stock,
    "woody roots": lambda _, size: woody_roots(size),
    "runners": lambda _, size: runners(size),
    "water roots": water_roots,
    "root nodules": nodules,
}
_WANTED: Final[Mapping[str, tuple[str, ...]]] = {
    "bulb": ("shape", "length", "width", "depth", "coat", "interior"),
    "corm": ("shape", "length", "width", "depth", "coat", "interior"),
    "tuber": ("shape", "length", "width", "interior", "surface"),
    "cluster of tubers": ("shape", "number of tubers", "length", "interior"),
    "string of tubers": ("number of tubers", "length"),
    "taproot": ("shape", "length", "width"),
    "slender taproot": ("length",),
    "stout taproot": ("shape", "length"),
    "rhizome": ("width", "scales", "rootlets"),
    "short rhizome": ("length", "scales", "rootlets"),
}


def underground(told: Told, size: float) -> Sketch | None:
    """Return the parts under the soil; `size` is the height of the drawing below it in units.

    Of bulbs, corms and whatever has a recorded inside a lengthwise cut stands beside the whole,
    at the same scale. None where it is not recorded what kind of root or store there is.
    """
    form = underground_form(told)
    if form is None:
        return None
    ink, scale = PLANS[form.kind.value](form, size)
    wanted = _WANTED.get(form.kind.value, ())
    return Sketch(
        title="under the soil",
        ink=ink,
        shows=characters(form),
        scale=scale,
        wants=tuple(label for label in wanted if label not in told.items),
    )
