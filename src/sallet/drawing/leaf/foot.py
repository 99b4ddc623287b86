"""The foot of a leaf on its stem, with stipules and sheath."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from sallet.drawing.curves import straight
from sallet.drawing.ink import Mark
from sallet.drawing.leaf.sheaths import SHEATHS
from sallet.drawing.leaf.stem_piece import stem_piece
from sallet.drawing.leaf.stipules import STIPULES
from sallet.drawing.sketch import Sketch
from sallet.drawing.told import characters

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.ink import Ink
    from sallet.drawing.told import Shown, Told


@dataclass(frozen=True)
class NodeForm:
    """What is shown of the place where a leaf meets its stem."""

    stipules: Shown[str] | None = None
    sheath: Shown[str] | None = None


def leaf_foot(told: Told, size: float) -> Sketch | None:
    """Return the foot of a leaf with its sheath and stipules, `size` units high."""
    form = NodeForm(
        _among(told.hint("stipules", "stipules"), STIPULES),
        _among(told.hint("sheath", "sheath"), SHEATHS),
    )
    if form == NodeForm():
        return None
    length = 1.7 * size
    stalk = straight(
        *(complex(x, y) * length for x, y in ((-0.016, 0.3), (-0.02, 0), (0.02, 0), (0.016, 0.3)))
    )
    ink: Ink = (*stem_piece(0j, length, 0.3), Mark(stalk, "line", "stalk"))
    if form.stipules:
        ink += STIPULES[form.stipules.value](0j, length)
    if form.sheath:
        ink += SHEATHS[form.sheath.value](0j, length)
    return Sketch("foot of a leaf", ink, characters(form))


def _among(hint: Shown[str] | None, table: Mapping[str, object]) -> Shown[str] | None:
    return hint if hint and hint.value in table else None
