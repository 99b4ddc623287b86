"""Units of length against the agreement that fixes them.

International yard and pound agreement, effective 1 July 1959: one yard is 0.9144 metre
exactly; so one foot is 0.3048 m and one inch 25.4 mm.
"""

from __future__ import annotations

from fractions import Fraction

import pytest

from sallet.units import UNITS, unit_named

YARD = Fraction(9144, 10)


def test_the_inch_and_the_foot_are_exact() -> None:
    assert UNITS["in"].millimetres == Fraction("25.4")
    assert UNITS["ft"].millimetres == Fraction("304.8")
    assert UNITS["ft"].millimetres * 3 == UNITS["in"].millimetres * 36 == YARD


@pytest.mark.parametrize(("unit", "millimetres"), [("mm", 1), ("cm", 10), ("m", 1000)])
def test_metric_units_are_powers_of_ten(unit: str, millimetres: int) -> None:
    assert UNITS[unit].millimetres == millimetres


def test_each_unit_belongs_to_a_system_and_carries_its_own_name() -> None:
    assert {name: unit.system for name, unit in UNITS.items()} == {
        "mm": "metric", "cm": "metric", "m": "metric", "in": "imperial", "ft": "imperial",
    }  # fmt: skip
    assert all(name == unit.name for name, unit in UNITS.items())


@pytest.mark.parametrize(
    ("words", "unit"),
    [("cm", "cm"), ("CM", "cm"), (" mm ", "mm"), ("metres", "m"), ("Meter", "m"),
     ("centimeters", "cm"), ("inches", "in"), ("ins", "in"), ('"', "in"), ("”", "in"),
     ("″", "in"), ("feet", "ft"), ("foot", "ft"), ("'", "ft"), ("’", "ft"), ("′", "ft")],
)  # fmt: skip
def test_a_unit_is_found_by_its_names_and_signs(words: str, unit: str) -> None:
    assert unit_named(words) == UNITS[unit]


@pytest.mark.parametrize("words", ["", "c", "yard", "km", "hands"])
def test_other_words_are_no_unit(words: str) -> None:
    assert unit_named(words) is None
