"""One wish met after another, and what holds when branchings run out."""

from __future__ import annotations

from itertools import product
from math import inf
from random import Random

import pytest

from sallet.season.programme import NO_LIMIT, Programme


def knapsack(seed: int) -> tuple[Programme, dict[int, int], list[dict[int, int]]]:
    """Return a programme of eight things in two bags, what they are worth, and the bags' weights."""
    random = Random(seed)  # noqa: S311
    programme = Programme()
    things = [programme.column(whole=True) for _ in range(8)]
    weights = [{thing: random.randrange(3, 20) for thing in things} for _ in range(2)]
    for bag in weights:
        programme.row(bag, -inf, sum(bag.values()) // 2)
    return programme, {thing: -random.randrange(1, 30) for thing in things}, weights


def cost_of(cost: dict[int, int], values: list[float]) -> int:
    """Return what a solution costs."""
    return sum(price * round(values[column]) for column, price in cost.items())


def least(cost: dict[int, int], weights: list[dict[int, int]]) -> int:
    """Return the least cost of all solutions, tried one after another."""
    return min(
        sum(price * taken[column] for column, price in cost.items())
        for taken in product((0, 1), repeat=8)
        if all(
            sum(w * taken[c] for c, w in bag.items()) <= sum(bag.values()) // 2 for bag in weights
        )
    )


@pytest.mark.parametrize("seed", range(20))
def test_a_wish_is_met_as_well_as_can_be(seed: int) -> None:
    """Source: every solution, tried one after another."""
    programme, cost, weights = knapsack(seed)
    programme.minimise(cost, NO_LIMIT)
    assert cost_of(cost, programme.values) == least(cost, weights)


@pytest.mark.parametrize("seed", range(20))
@pytest.mark.parametrize("nodes", [0, 1])
def test_where_branchings_run_out_all_that_must_hold_still_holds(seed: int, nodes: int) -> None:
    programme, cost, weights = knapsack(seed)
    programme.minimise(cost, nodes)
    assert all(abs(value - round(value)) < 1e-5 for value in programme.values)
    for bag in weights:
        assert cost_of(bag, programme.values) <= sum(bag.values()) // 2
    assert least(cost, weights) <= cost_of(cost, programme.values) <= 0


def test_a_later_wish_never_costs_an_earlier_one() -> None:
    programme, cost, weights = knapsack(3)
    programme.minimise(cost, NO_LIMIT)
    programme.minimise({column: -price for column, price in cost.items()}, NO_LIMIT)
    assert cost_of(cost, programme.values) == least(cost, weights)


def test_a_wish_for_nothing_changes_nothing() -> None:
    programme, cost, _ = knapsack(4)
    programme.minimise(dict.fromkeys(cost, 0))
    assert programme.values == [0.0] * 8
