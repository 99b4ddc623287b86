"""How a plant is marked wherever it is named: a shape and a word for each danger."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

if TYPE_CHECKING:
    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson, LookAlike

DANGERS: Final = {
    "deadly": ("▲▲", "deadly"),
    "poisonous": ("▲", "poisonous"),
    "harmful": ("△", "harmful"),
    "harmless": ("○", "harmless"),
    "food": ("❧", "food"),
    "unknown": ("▲", "danger not stated"),
}
"""Each danger's shape and word; neither stands without the other."""


def danger_of(lesson: Lesson) -> str:
    """Return how a plant is marked wherever it is named: its danger, or `food`."""
    return "food" if lesson.is_food else lesson.front.danger or "unknown"


def danger_named(look: LookAlike, bank: Bank) -> str:
    """Return how a look-alike is marked: its danger, `food` for a plant for the pot, or `unknown`."""
    danger = bank.danger_of(look)
    if danger is None:
        own = bank.lesson_of(look)
        return "food" if own and own.is_food else "unknown"
    return danger
