"""Hardiness zones of the United States Department of Agriculture's map of 2012: 1a to 13b."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from helpers.values import VALUES, faults_of, hold_to_the_text, qualifiers_of, values_of
from sallet.lesson.value import Words, Zones
from sallet.lesson.values.zones import rank, read_zones

HALVES = [f"{number}{half}" for number in range(1, 14) for half in "ab"]
"""The 26 half zones of the map, from cold to warm."""


@pytest.mark.parametrize(
    ("words", "zones"),
    [("4–8", Zones("4", "8")), ("7a to 9b", Zones("7a", "9b")), ("5", Zones("5", "5")),
     ("7B", Zones("7b", "7b")), ("USDA 4-8", Zones("4", "8")), ("zones 4–8", Zones("4", "8")),
     ("USDA zone 13b", Zones("13b", "13b")), ("7–7b", Zones("7", "7b")),
     ("7b–8", Zones("7b", "8"))],
)  # fmt: skip
def test_zones_are_read(words: str, zones: Zones) -> None:
    assert values_of(read_zones, words) == [zones]
    assert faults_of(read_zones, words) == []


def test_several_zones_with_qualifiers() -> None:
    assert values_of(read_zones, "4–6, 8 (in shade)") == [Zones("4", "6"), Zones("8", "8")]
    assert qualifiers_of(read_zones, "4–6, 8 (in shade)") == [[], ["in shade"]]


@pytest.mark.parametrize(
    ("words", "faults"),
    [("mild", [("unreadable-zones", "mild")]), ("0–4", [("unreadable-zones", "0–4")]),
     ("4, 14", [("unreadable-zones", "14")]), ("7c", [("unreadable-zones", "7c")]),
     ("8–4", [("range-upside-down", "8–4")]), ("7b–7a", [("range-upside-down", "7b–7a")])],
)  # fmt: skip
def test_each_fault_is_named_at_its_place(words: str, faults: list[tuple[str, str]]) -> None:
    assert faults_of(read_zones, words) == faults


def test_what_cannot_be_read_is_kept_and_what_is_upside_down_turned() -> None:
    assert values_of(read_zones, "mild") == [Words("mild", understood=False)]
    assert values_of(read_zones, "8–4") == [Zones("4", "8")]


def test_half_zones_stand_in_the_order_of_the_map() -> None:
    assert [rank(zone, 1) for zone in HALVES] == list(range(26))
    assert all(rank(a, 1) < rank(b, 1) for a, b in pairwise(HALVES))


@pytest.mark.parametrize("number", range(1, 14))
def test_a_whole_zone_is_both_its_halves(number: int) -> None:
    assert rank(str(number), -1) == rank(f"{number}a", 1)
    assert rank(str(number), 1) == rank(f"{number}b", 1)


@settings(max_examples=100, deadline=None)
@given(st.integers(0, 25), st.integers(0, 25))
def test_half_zones_come_back_as_they_were_written(a: int, b: int) -> None:
    low, high = HALVES[min(a, b)], HALVES[max(a, b)]
    assert values_of(read_zones, f"{low}–{high}") == [Zones(low, high)]


@settings(max_examples=150, deadline=None)
@given(VALUES)
def test_no_value_raises_or_loses_its_words(words: str) -> None:
    hold_to_the_text(read_zones, words)
