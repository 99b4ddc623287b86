"""One flower from its characters: from above, from the side, or a head of many small ones."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.drawing.flower.faces import face_ink, is_naked, wheel_of
from sallet.drawing.flower.form import FlowerForm, flower_form
from sallet.drawing.flower.heads import head_ink, thistle_ink
from sallet.drawing.flower.sides import side_ink
from sallet.drawing.flower.small import small_flower
from sallet.drawing.flower.tables import NAKED_WANTS, WANTS
from sallet.drawing.flower.tiny import catkin_ink, speck_ink
from sallet.drawing.flower.turned import turned_ink
from sallet.drawing.flower.vases import mouth_width
from sallet.drawing.sketch import Sketch
from sallet.drawing.told import characters

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.ink import Ink
    from sallet.drawing.told import Told

__all__ = ["FlowerForm", "flower", "flower_form", "flower_ink", "small_flower"]

_INK: Final[Mapping[str, Callable[[FlowerForm, float], Ink]]] = {
    "face": face_ink, "turned": turned_ink, "lipped": side_ink, "hooded": side_ink,
    "pea": side_ink, "violet": side_ink, "head": head_ink, "thistle": thistle_ink,
    "catkin": catkin_ink, "speck": speck_ink,
}  # fmt: skip
TITLES: Final[Mapping[str, str]] = {
    "face": "flower from above", "turned": "flower from the side", "lipped": "flower from the side",
    "hooded": "flower from the side", "pea": "flower from the side", "violet": "flower from the front",
    "head": "flower head from above", "thistle": "flower head from the side",
    "catkin": "flower of a catkin", "speck": "flower from above",
}  # fmt: skip
"""From where each kind of flower is drawn."""


def flower_ink(form: FlowerForm, size: float) -> Ink:
    """Return a flower; `size` is its width in units, or its length where seen from the side."""
    return _INK[form.plan](form, size)


def flower(told: Told, size: float) -> Sketch | None:
    """Return a flower drawn from what is told; None where too little is recorded to draw it.

    `size`: its width in units, for flowers seen from the side their length.
    """
    form = flower_form(told)
    if form is None:
        return None
    title, wanted = TITLES[form.plan], WANTS[form.plan]
    if form.plan == "face" and is_naked(form):
        wanted = NAKED_WANTS
    if form.plan == "head" and form.bracts:
        title = "flower head from above and from the side"
    return Sketch(
        title=f"{told.where} {title}".strip(),
        ink=flower_ink(form, size),
        shows=characters(form),
        scale=_scale(form, size),
        wants=tuple(label for label in wanted if label not in told.items),
    )


def _scale(form: FlowerForm, size: float) -> float | None:
    """Return the units to a millimetre, from the first length that is recorded."""
    if form.length:
        return size / form.length.value
    if form.width:
        across = mouth_width(form, size) if form.plan == "turned" else size
        return across / form.width.value
    if form.petal_length:
        wheel = wheel_of(form, size)
        return (wheel.radius - wheel.inner) / form.petal_length.value
    return None
