"""What must hold of the outline of every blade, and the words that outlines are made of."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from helpers.leaves import ratio_of_ring, ring
from sallet.drawing.leaf.blade_tables import SHAPES
from sallet.drawing.leaf.contour import BASES, TIPS
from sallet.drawing.leaf.margin import MARGINS
from sallet.drawing.leaf.outline import outline

if TYPE_CHECKING:
    from sallet.drawing.leaf.blade_form import BladeForm

LABELS: Final = ("shape", "margin", "tip", "base")
TABLES: Final = (tuple(SHAPES), tuple(MARGINS), tuple(TIPS), tuple(BASES))
NEAR: Final = 0.02
"""How far the drawn length by width may be from the recorded, of its value."""


def faults_of(form: BladeForm, length: float = 200) -> list[str]:
    """Return what is wrong with an outline."""
    drawn = ring(outline(form.blank, length).path)
    faults = [] if drawn.is_simple else ["it crosses itself"]
    off = abs(ratio_of_ring(drawn) / form.ratio - 1)
    return faults + ([f"length by width is off by {off:.3f}"] if off > NEAR else [])
