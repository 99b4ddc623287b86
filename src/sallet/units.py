"""Units of length, exact, and how a length is written in either system.

1 inch = 25.4 mm and 1 foot = 0.3048 m exactly, by the international yard and pound
agreement of 1 July 1959.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Final, Literal

System = Literal["metric", "imperial"]


@dataclass(frozen=True)
class Unit:
    """A unit of length."""

    name: str
    millimetres: Fraction
    system: System


UNITS: Final = {
    "mm": Unit("mm", Fraction(1), "metric"),
    "cm": Unit("cm", Fraction(10), "metric"),
    "m": Unit("m", Fraction(1000), "metric"),
    "in": Unit("in", Fraction(254, 10), "imperial"),
    "ft": Unit("ft", Fraction(3048, 10), "imperial"),
}
_ALSO: Final = {
    "millimetre": "mm", "millimetres": "mm", "millimeter": "mm", "millimeters": "mm",
    "centimetre": "cm", "centimetres": "cm", "centimeter": "cm", "centimeters": "cm",
    "metre": "m", "metres": "m", "meter": "m", "meters": "m",
    "inch": "in", "inches": "in", "ins": "in", '"': "in", "”": "in", "″": "in",
    "foot": "ft", "feet": "ft", "'": "ft", "’": "ft", "′": "ft",
}  # fmt: skip


def unit_named(words: str) -> Unit | None:
    """Return the unit that some words or a sign name, or None."""
    name = words.strip().lower()
    return UNITS.get(_ALSO.get(name, name))
