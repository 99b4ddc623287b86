"""Divided blades in ink."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.drawing.leaf.division import Division, division
from sallet.drawing.leaf.feathers import feather
from sallet.drawing.leaf.fingers import foot_like, palm, threes
from sallet.drawing.leaf.plumes import plume, thread

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from sallet.drawing.ink import Ink

__all__ = ["Division", "compound_ink", "division"]


def compound_ink(form: Division, size: float) -> Ink:
    """Return a divided blade `size` units long, its lowest leaflets near 0."""
    pattern = form.pattern.value
    if pattern.kind == "feather" and pattern.times > 1:
        return plume(form, size)
    return KINDS[pattern.kind](form, size)


KINDS: Final[Mapping[str, Callable[[Division, float], Ink]]] = {
    "feather": feather,
    "palm": palm,
    "foot": foot_like,
    "threes": threes,
    "thread": thread,
}
"""The kinds of divided blades."""
