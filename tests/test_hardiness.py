"""Hardiness zones in both scales.

That zones are 10 °F wide from 1 to 13, their halves `a` and `b` 5 °F, and that they tell the
mean of the years' lowest temperatures: planthardiness.ars.usda.gov, How to Use the Maps. The
degrees of the 26 half zones were read from two tables that agree, en.permawiki.org,
Hardiness zone, and worldofsucculents.com, USDA Hardiness Zones; the legend of the map itself
(2012, 2023) has not been compared.
"""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from sallet.hardiness import celsius, zone_range, zone_words
from sallet.lesson.value import Zones

TABLE = [
    ("1a", -60, -55, -51.1, -48.3), ("1b", -55, -50, -48.3, -45.6),
    ("2a", -50, -45, -45.6, -42.8), ("2b", -45, -40, -42.8, -40),
    ("3a", -40, -35, -40, -37.2), ("3b", -35, -30, -37.2, -34.4),
    ("4a", -30, -25, -34.4, -31.7), ("4b", -25, -20, -31.7, -28.9),
    ("5a", -20, -15, -28.9, -26.1), ("5b", -15, -10, -26.1, -23.3),
    ("6a", -10, -5, -23.3, -20.6), ("6b", -5, 0, -20.6, -17.8),
    ("7a", 0, 5, -17.8, -15), ("7b", 5, 10, -15, -12.2),
    ("8a", 10, 15, -12.2, -9.4), ("8b", 15, 20, -9.4, -6.7),
    ("9a", 20, 25, -6.7, -3.9), ("9b", 25, 30, -3.9, -1.1),
    ("10a", 30, 35, -1.1, 1.7), ("10b", 35, 40, 1.7, 4.4),
    ("11a", 40, 45, 4.4, 7.2), ("11b", 45, 50, 7.2, 10),
    ("12a", 50, 55, 10, 12.8), ("12b", 55, 60, 12.8, 15.6),
    ("13a", 60, 65, 15.6, 18.3), ("13b", 65, 70, 18.3, 21.1),
]  # fmt: skip
"""Half zone, from and to in °F, from and to in °C."""
NUMBERS = st.integers(1, 13)


def plain(zones: Zones, first: str = "metric") -> str:
    """Return what a page says of zones, with spaces that may break."""
    own, other = zone_words(zones, "imperial" if first == "imperial" else "metric")
    return f"{own} ({other})".replace("\u00a0", " ")


@pytest.mark.parametrize(("zone", "low", "high", "low_c", "high_c"), TABLE)
def test_a_half_zone_has_the_degrees_of_the_published_table(
    zone: str, low: int, high: int, low_c: float, high_c: float
) -> None:
    assert zone_range(zone) == (low, high)
    assert (float(celsius(low)), float(celsius(high))) == (low_c, high_c)


def test_the_table_holds_every_half_zone() -> None:
    assert [row[0] for row in TABLE] == [f"{n}{half}" for n in range(1, 14) for half in "ab"]


def test_a_half_zone_ends_where_the_next_begins() -> None:
    """The map of 1990 said −45.5 for the end of a zone and −45.6 for the next one's."""
    ranges = [zone_range(zone) for zone, *_ in TABLE]
    assert [(a, b) for a, b in pairwise(ranges) if a[1] != b[0]] == []


@given(NUMBERS)
def test_a_whole_zone_is_both_its_halves(number: int) -> None:
    (low, middle), (middle_too, high) = zone_range(f"{number}a"), zone_range(f"{number}b")
    assert middle == middle_too
    assert zone_range(str(number)) == (low, high)


@pytest.mark.parametrize(("fahrenheit", "degrees"), [(32, 0), (212, 100), (-40, -40)])
def test_the_scales_meet_where_they_are_defined_to(fahrenheit: int, degrees: int) -> None:
    """Ice melts at 32 °F and 0 °C, water boils at 212 °F and 100 °C; at −40 both are one."""
    assert celsius(fahrenheit) == degrees


@given(st.integers(-200, 300))
def test_celsius_is_off_by_half_a_tenth_at_most(fahrenheit: int) -> None:
    assert abs(float(celsius(fahrenheit)) * 9 / 5 + 32 - fahrenheit) <= 0.09 + 1e-9


@pytest.mark.parametrize(
    ("zones", "words"),
    [(Zones("4", "8"),
      "zones 4–8: coldest night of a usual year −34.4 to −6.7 °C (−30 to 20 °F)"),
     (Zones("5", "5"),
      "zone 5: coldest night of a usual year −28.9 to −23.3 °C (−20 to −10 °F)"),
     (Zones("7a", "7a"),
      "zone 7a: coldest night of a usual year −17.8 to −15.0 °C (0 to 5 °F)"),
     (Zones("7b", "13b"),
      "zones 7b–13b: coldest night of a usual year −15.0 to 21.1 °C (5 to 70 °F)")],
)  # fmt: skip
def test_zones_are_said_with_their_cold_in_both_scales(zones: Zones, words: str) -> None:
    assert plain(zones) == words


def test_the_courses_own_scale_stands_first() -> None:
    assert plain(Zones("4", "8"), "imperial") == (
        "zones 4–8: coldest night of a usual year −30 to 20 °F (−34.4 to −6.7 °C)"
    )


@given(NUMBERS, NUMBERS)
def test_no_hyphen_stands_for_a_minus(a: int, b: int) -> None:
    assert "-" not in plain(Zones(str(min(a, b)), str(max(a, b))))
