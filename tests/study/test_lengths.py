"""How long keys are, and how short they could be."""

from __future__ import annotations

from math import log2
from typing import TYPE_CHECKING

import pytest
from hypothesis import given
from hypothesis import strategies as st

from helpers.tables import column, one_character, table_of, tables
from sallet.study.couplets import Couplet, End, Lead, build_key
from sallet.study.lengths import (
    Way,
    entropy,
    longest_mean,
    mean_steps,
    plants_of,
    shortest_mean,
    ways_of,
)

if TYPE_CHECKING:
    from sallet.study.table import Table

PUBLISHED = {
    3: (1.6667, 1.6667), 5: (2.4, 2.8), 6: (2.6667, 3.3333), 8: (3, 4.375), 10: (3.4, 5.4),
    18: (4.2222, 9.4444), 23: (4.6087, 11.9565), 32: (5, 16.4688), 100: (6.72, 50.49),
}  # fmt: skip
"""By number of plants: the shortest and the longest mean of any key (after Osborne 1963, New
Phytologist 62, and Payne and Preece 1980, Journal of the Royal Statistical Society A 143: 253)."""


def comb(plants: int, first: int = 0) -> Couplet | End:
    """Return the key that splits off one plant at every couplet."""
    here = frozenset({first})
    if plants == 1:
        return End(here)
    leads = Lead(frozenset({0}), End(here)), Lead(frozenset({1}), comb(plants - 1, first + 1))
    return Couplet(first, leads)


@pytest.mark.parametrize("plants", PUBLISHED)
def test_the_bounds_are_the_published(plants: int) -> None:
    shortest, longest = PUBLISHED[plants]
    assert shortest_mean(plants) == pytest.approx(shortest, abs=6e-5)
    assert longest_mean(plants) == pytest.approx(longest, abs=6e-5)


@pytest.mark.parametrize("plants", [0, 1])
def test_one_plant_takes_no_steps(plants: int) -> None:
    assert (shortest_mean(plants), longest_mean(plants)) == (0, 0)


@pytest.mark.parametrize("plants", range(1, 30))
def test_a_key_that_splits_off_one_plant_at_a_time_is_as_long_as_any(plants: int) -> None:
    assert mean_steps(comb(plants)) == pytest.approx(longest_mean(plants))


def test_where_only_one_plant_can_be_split_off_at_a_time_the_key_is_as_long_as_any() -> None:
    characters = [column(" ".join("a" if p == at else "b" for p in range(6))) for at in range(2)]
    key = build_key(table_of(*characters), frozenset({0, 1, 2}))
    assert mean_steps(key) == longest_mean(3)


@given(st.integers(1, 200))
def test_the_shortest_mean_lies_between_the_entropy_and_a_step_more(plants: int) -> None:
    assert log2(plants) - 1e-9 <= shortest_mean(plants) < log2(plants) + 1
    assert shortest_mean(plants) <= longest_mean(plants) + 1e-9


@pytest.mark.parametrize(
    ("weights", "bits"),
    [([1, 1], 1), ([1] * 8, 3), ([3], 0), ([2, 1, 1], 1.5), ([4, 2, 2, 0], 1.5), ([], 0)],
)
def test_entropy(weights: list[float], bits: float) -> None:
    assert entropy(weights) == pytest.approx(bits)


# ---- ways ----------------------------------------------------------------------------------


def test_the_ways_stand_from_the_first_lead_to_the_last() -> None:
    assert ways_of(comb(3)) == (
        Way(frozenset({0}), 1, {0: 1.0}),
        Way(frozenset({1}), 2, {1: 1.0}),
        Way(frozenset({2}), 2, {2: 1.0}),
    )


def test_a_plant_that_several_leads_reach_counts_with_the_mean_of_its_ways() -> None:
    """D goes either way at the first couplet, and either way again at the second."""
    key = build_key(table_of(column("a b b ab"), column("- a b -")))
    a, b, c, d = (frozenset({plant}) for plant in range(4))
    assert ways_of(key) == (
        Way(a | d, 1, {0: 1.0, 3: 0.5}),
        Way(b | d, 2, {1: 1.0, 3: 0.25}),
        Way(c | d, 2, {2: 1.0, 3: 0.25}),
    )
    assert mean_steps(key) == (1 + 2 + 2 + (1 / 2 + 2 / 4 + 2 / 4)) / 4


def test_a_key_without_couplets_has_no_steps() -> None:
    assert mean_steps(End(frozenset({0, 1}))) == 0
    assert mean_steps(End(frozenset())) == 0


@given(tables())
def test_each_plant_is_reached_once_in_all(table: Table) -> None:
    key = build_key(table)
    assert plants_of(key) == table.everything
    for plant in table.everything:
        assert sum(way.share.get(plant, 0) for way in ways_of(key)) == pytest.approx(1)


@given(tables())
def test_the_leads_of_a_key_are_halved_at_every_couplet(table: Table) -> None:
    """So the ends' steps fill Kraft's sum."""
    assert sum(2.0**-way.steps for way in ways_of(build_key(table))) == 1


def test_the_mean_is_of_steps_to_plants_not_to_ends() -> None:
    key = build_key(table_of(column("a a a b c")))
    assert sorted(way.steps for way in ways_of(key)) == [1, 2, 2]
    assert mean_steps(key) == (3 * 1 + 2 * 2) / 5
    assert mean_steps(build_key(one_character(3))) == pytest.approx(5 / 3)
