"""A flower cluster drawn from its recorded characters."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.drawing.inflorescence.branched import panicle, tassels
from sallet.drawing.inflorescence.catkin import catkin
from sallet.drawing.inflorescence.cluster import Cluster, cluster
from sallet.drawing.inflorescence.florets import florets, flower_characters, width_of
from sallet.drawing.inflorescence.form import InflorescenceForm, inflorescence_form, wanted
from sallet.drawing.inflorescence.seat import seat
from sallet.drawing.inflorescence.spathe import spadix
from sallet.drawing.inflorescence.spires import spire
from sallet.drawing.inflorescence.tight import few, globe, head, knot, spikelet, whorls
from sallet.drawing.inflorescence.tops import coil, corymb, cyme, flat_cyme
from sallet.drawing.inflorescence.umbels import compound, umbel
from sallet.drawing.ink import WIDTHS, Place, box, put
from sallet.drawing.sketch import Sketch
from sallet.drawing.told import characters

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.inflorescence.florets import Florets
    from sallet.drawing.ink import Box, Ink
    from sallet.drawing.told import Told

_DRAWN: Final[Mapping[str, Callable[[Cluster, Florets, float], Ink]]] = {
    "single": few,
    "in pairs": few,
    "umbel": umbel,
    "compound umbel": compound,
    "raceme": spire,
    "one-sided raceme": spire,
    "spike": spire,
    "branched spike": tassels,
    "panicle": panicle,
    "corymb": corymb,
    "cyme": cyme,
    "flat-topped cyme": flat_cyme,
    "coiled cyme": coil,
    "head": head,
    "heads in a cluster": corymb,
    "globe": globe,
    "whorls": whorls,
    "catkin": lambda told, _, size: catkin(told, size),
    "spadix": lambda told, _, size: spadix(told.spathe, size),
    "cluster in the leaf axil": knot,
    "spikelet": lambda told, _, size: spikelet(told, size),
}


def inflorescence(told: Told, size: float) -> Sketch | None:
    """Return a cluster whose larger dimension is `size` units; None where its kind is not told."""
    form = inflorescence_form(told)
    if form is None:
        return None
    plain = cluster(form)
    width = width_of(plain, size)
    drawn = _DRAWN[plain.plan](plain, florets(told, plain, width, size), size)
    room = box(drawn)
    under = seat(form, room)
    return Sketch(
        title=form.plan.value,
        ink=put((*under.ink, *drawn), Place(1j * under.depth)),
        shows=(*characters(form), *flower_characters(told, plain.plan, width)),
        scale=_scale(form, room),
        wants=wanted(form, told),
    )


def _scale(form: InflorescenceForm, room: Box) -> float | None:
    edge = WIDTHS["line"]
    if form.width:
        return (room.width - edge) / form.width.value
    if form.length:
        return (room.height - edge) / form.length.value
    return None
