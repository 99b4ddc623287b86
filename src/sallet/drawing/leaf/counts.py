"""Numbers that a drawing can show: of a recorded range the one that fits what is drawn."""

from __future__ import annotations

from typing import TYPE_CHECKING

from sallet.drawing.told import Character, Shown
from sallet.lesson.value import Count

if TYPE_CHECKING:
    from collections.abc import Callable

    from sallet.drawing.told import Told


def fitting(told: Told, label: str, fits: Callable[[int], bool]) -> Shown[int] | None:
    """Return the recorded number nearest the middle that fits; None where none does.

    Of `5–8` leaflets, a leaf that ends in a leaflet shows 7: pairs and one.
    """
    shown = told.count(label)
    if shown is None or fits(shown.value):
        return shown
    value = next(item.value for item in told.items[label] if isinstance(item.value, Count))
    low, high = value.low, value.high
    able = [] if high is None else [number for number in range(low, high + 1) if fits(number)]
    if not able or high is None:
        return None
    middle = (low + high) / 2
    best = min(able, key=lambda number: abs(number - middle))
    return Shown(best, Character(label, str(best), shown.character.told))
