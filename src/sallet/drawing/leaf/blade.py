"""One blade in ink: its edge, what is on the edge, veins and markings."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Final

from sallet.drawing.curves import straight
from sallet.drawing.ink import Curve, Mark, Path
from sallet.drawing.leaf.cutting import parted
from sallet.drawing.leaf.fringes import FRINGES
from sallet.drawing.leaf.markings import MARKINGS
from sallet.drawing.leaf.outline import outline
from sallet.drawing.leaf.veins import veins

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.ink import Ink, Pen
    from sallet.drawing.leaf.blade_form import BladeForm
    from sallet.drawing.leaf.outline import Outline

_UNKNOWN_TIP: Final = 0.8
_UNKNOWN_BASE: Final = 0.16
"""Heights above and below which an edge is dotted where the end is not recorded."""


def blade_ink(form: BladeForm, length: float, part: str = "blade", pen: Pen = "line") -> Ink:
    """Return a blade of some length in units, its stalk's end at 0, its tip above."""
    drawn = outline(form.blank, length)
    ink: Ink = _edge(form, drawn, length, Mark(drawn.path, pen, part))
    ink += TIP_MARKS.get(form.blank.contour.tip.end, _no_mark)(drawn, length)
    if form.fringe:
        ink += FRINGES[form.fringe.value](drawn)
    if form.venation:
        ink += veins(
            form.venation.value,
            drawn,
            form.pairs.value if form.pairs else None,
            form.main_veins.value if form.main_veins else None,
        )
    if form.markings:
        ink += MARKINGS[form.markings.value](drawn)
    return ink


def _edge(form: BladeForm, drawn: Outline, length: float, whole: Mark) -> Ink:
    if form.margin is None:
        return (replace(whole, pen="dotted"),)
    if form.tip_known and form.base_known:
        return (whole,)
    low = -form.blank.contour.base.depth * length
    begin = low - length if form.base_known else low + _UNKNOWN_BASE * length
    until = low + 2 * length if form.tip_known else low + _UNKNOWN_TIP * length
    known, unknown = parted(drawn.path, begin - 1e-6, until + 1e-6)
    return (
        replace(whole, pen="paper"),
        *(Mark(path, whole.pen) for path in known),
        *(Mark(path, "dotted") for path in unknown),
    )


def _no_mark(_: Outline, __: float) -> Ink:
    return ()


def _bristle(drawn: Outline, length: float) -> Ink:
    """Return the vein that runs out beyond the edge."""
    return (Mark(straight(drawn.tip, drawn.tip + 0.07j * length), "line", "bristle"),)


def _hood(drawn: Outline, length: float) -> Ink:
    """Return the fold of a tip that is pinched up like the bow of a boat."""
    tip = drawn.tip
    wide, deep = 0.09 * length, 0.15 * length
    fold = Path(
        tip, (Curve(tip + complex(-wide, -0.4 * deep), tip + complex(-wide, -deep), tip - 1j * deep),
              Curve(tip + complex(wide, -deep), tip + complex(wide, -0.4 * deep), tip))
    )  # fmt: skip
    return (Mark(fold, "fine", "hood"),)


TIP_MARKS: Final[Mapping[str, Callable[[Outline, float], Ink]]] = {
    "bristle": _bristle,
    "hood": _hood,
}
"""What is drawn at a tip beside its outline."""
