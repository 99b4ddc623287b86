"""Hardiness zones of the United States Department of Agriculture in degrees of both scales.

A zone tells how cold the coldest night of a usual year is: the mean of the coldest nights of
thirty years, not the coldest there ever was. Zones are 10 °F wide from 1, which begins at
−60 °F, to 13, which ends at 70 °F; the halves `a`, the colder, and `b` are 5 °F wide. Each
ends where the next begins, as on the maps of 2012 and 2023; that of 1990 left a tenth of a
degree Celsius between two zones.
"""

from __future__ import annotations

from fractions import Fraction
from typing import TYPE_CHECKING, Final

if TYPE_CHECKING:
    from sallet.lesson.value import Zones
    from sallet.units import System

_COLDEST: Final = -60
_ZONE: Final = 10
_HALF: Final = 5
_COLD: Final = "coldest night of a usual year"


def zone_range(zone: str) -> tuple[int, int]:
    """Return from and to how many degrees Fahrenheit a zone or half zone reaches."""
    number = int(zone.rstrip("ab"))
    low = _COLDEST + _ZONE * (number - 1) + (_HALF if zone.endswith("b") else 0)
    return low, low + (_ZONE if zone[-1].isdigit() else _HALF)


def celsius(fahrenheit: int) -> Fraction:
    """Return whole degrees Fahrenheit in degrees Celsius, to one decimal."""
    # Ninths never lie halfway between two tenths: there is no half to round up or down.
    return Fraction(round(Fraction(fahrenheit - 32) * 50 / 9), 10)


def zone_words(zones: Zones, units_first: System) -> tuple[str, str]:
    """Return zones with their cold in the course's own scale, and the cold in the other.

    `zones 4–8: coldest night of a usual year −34.4 to −6.7 °C` and `−30 to 20 °F`.
    """
    low, high = zone_range(zones.low)[0], zone_range(zones.high)[1]
    in_fahrenheit = _degrees(str(low), str(high), "F")
    in_celsius = _degrees(f"{float(celsius(low)):.1f}", f"{float(celsius(high)):.1f}", "C")
    own, other = in_celsius, in_fahrenheit
    if units_first == "imperial":
        own, other = other, own
    return f"{_named(zones)}: {_COLD} {own}", other


def _named(zones: Zones) -> str:
    if zones.low == zones.high:
        return f"zone\u00a0{zones.low}"
    return f"zones\u00a0{zones.low}–{zones.high}"


def _degrees(low: str, high: str, scale: str) -> str:
    # A hyphen would be read as a dash, and would let a line break behind it.
    return f"{low} to {high}\u00a0°{scale}".replace("-", "\N{MINUS SIGN}")
