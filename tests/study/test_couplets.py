"""Keys of couplets: nobody goes astray, nothing is parted that should not be, and they are short."""

from __future__ import annotations

import heapq
import random
from itertools import combinations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from sklearn.tree import DecisionTreeClassifier

from helpers.tables import (
    column,
    couplets_of,
    flavia,
    one_character,
    paths_of,
    profiles_of,
    reached,
    some_of,
    specimens_of,
    table_of,
    tables,
)
from sallet.study.couplets import Couplet, End, Key, Lead, build_key
from sallet.study.lengths import (
    entropy,
    longest_mean,
    mean_steps,
    plants_of,
    shortest_mean,
    ways_of,
)
from sallet.study.table import Character, Table

FIRST, SECOND, THIRD = (frozenset({at}) for at in range(3))


def ends_of(table: Table) -> list[str]:
    """Return the plants of each end of a table's key, by their letters."""
    return [
        "".join(sorted(str(table.plants[p]) for p in w.plants)) for w in ways_of(build_key(table))
    ]


# ---- small keys, whole ---------------------------------------------------------------------


def test_a_key_of_two_plants_has_one_couplet() -> None:
    assert build_key(table_of(column("a b"))) == Couplet(
        0, (Lead(FIRST, End(FIRST)), Lead(SECOND, End(SECOND)))
    )


def test_without_plants_or_with_one_there_is_nothing_to_ask() -> None:
    assert build_key(Table((), ())) == End(frozenset())
    assert build_key(table_of(column("a"))) == End(FIRST)


def test_what_no_character_parts_ends_as_a_group() -> None:
    assert ends_of(table_of(column("a a b"), column("a a -"))) == ["AB", "C"]


def test_a_key_to_some_plants_of_a_table_leads_to_those() -> None:
    key = build_key(table_of(column("a b c")), frozenset({0, 2}))
    assert key == Couplet(0, (Lead(FIRST, End(FIRST)), Lead(THIRD, End(THIRD))))


def test_a_plant_that_varies_is_reached_by_both_leads() -> None:
    assert ends_of(table_of(column("a b ab"))) == ["AC", "BC"]


def test_a_plant_of_which_nothing_is_recorded_is_reached_by_both_leads() -> None:
    assert ends_of(table_of(column("a b -"))) == ["AC", "BC"]


def test_of_two_characters_that_part_alike_the_easier_is_asked() -> None:
    hard = column("a b")
    easy = Character("easy", ("a", "b"), hard.shown, cost=0.9)
    key = build_key(table_of(hard, easy))
    assert isinstance(key, Couplet)
    assert key.character == 1


def test_plants_that_show_several_options_are_parted_where_all_of_them_exclude() -> None:
    """Five petals in the midst of four and six, if the options are no numbers: two against one."""
    assert ends_of(table_of(column("ac b"))) == ["A", "B"]
    many = column("acegi bdfh")
    assert ends_of(table_of(many)) == ["A", "B"]


def test_options_that_others_bridge_are_parted_where_no_plant_is_lost() -> None:
    """First and second may meet, the third excludes both; a plant with all but the second varies."""
    excluded = (
        THIRD | frozenset({3}),
        frozenset({3}),
        FIRST | frozenset({3}),
        frozenset({0, 1, 2}),
    )
    shown = (frozenset({0, 3}), frozenset({2}), frozenset({1}))
    table = table_of(Character("x", ("a", "b", "c", "d"), shown, excluded))
    assert sorted(ends_of(table)) == ["AC", "BC"]


def test_numbers_are_parted_at_one_number() -> None:
    """A lead has all numbers up to one: four or six against five is no couplet."""
    assert ends_of(table_of(column("ac b", is_ordered=True))) == ["AB"]
    assert ends_of(table_of(column("ab c", is_ordered=True))) == ["A", "B"]


def test_a_weak_character_does_not_part_food_from_harm() -> None:
    weak = column("a b", is_weak=True)
    assert ends_of(table_of(weak, food="A", grave="B")) == ["AB"]
    assert ends_of(table_of(weak, food="AB")) == ["A", "B"]
    assert ends_of(table_of(weak, column("a b"), food="A", grave="B")) == ["A", "B"]


@pytest.mark.parametrize("food", ["ab", "-"])
def test_a_weak_character_does_not_leave_food_alone_on_a_lead_either(food: str) -> None:
    """Where the food varies, a mistaken look at the other plant would still end at the food."""
    weak = column(f"{food} b a", is_weak=True)
    assert ends_of(table_of(weak, food="A", grave="B")) == ["ABC"]


# ---- what holds of every key ---------------------------------------------------------------


@given(tables())
def test_every_specimen_reaches_its_plant_by_every_way_it_may_go(table: Table) -> None:
    key = build_key(table)
    for plant in table.everything:
        for specimen in specimens_of(table, plant):
            assert all(plant in plants for plants in reached(key, specimen))


@given(tables())
def test_the_leads_of_a_couplet_exclude_each_other_option_by_option(table: Table) -> None:
    for couplet in couplets_of(build_key(table)):
        character = table.characters[couplet.character]
        left, right = (lead.options for lead in couplet.leads)
        assert left
        assert right
        assert all(character.excludes(one, other) for one in left for other in right)
        assert not character.is_ordered or max(left) < min(right) or max(right) < min(left)


@given(tables())
def test_every_couplet_takes_a_plant_away_on_either_side(table: Table) -> None:
    for couplet in couplets_of(build_key(table)):
        left, right = (plants_of(lead.goes_to) for lead in couplet.leads)
        assert left - right
        assert right - left


@given(tables())
def test_nothing_parts_the_plants_of_an_end(table: Table) -> None:
    """Save weak characters, where food and harm stand together, and numbers between numbers."""
    for way in ways_of(build_key(table)):
        mixed = way.plants & table.food and way.plants & table.grave
        for pair in combinations(sorted(way.plants), 2):
            for character in table.separating(*pair):
                assert (character.is_weak and mixed) or lie_between(character, *pair)


def lie_between(character: Character, one: int, other: int) -> bool:
    """Return whether numbers of two plants lie between each other's."""
    ours, theirs = character.shown[one], character.shown[other]
    assert ours is not None
    assert theirs is not None
    apart = max(ours) < min(theirs) or max(theirs) < min(ours)
    return character.is_ordered and not apart


@given(tables())
def test_a_weak_character_is_never_all_that_keeps_harm_from_a_lead_with_food(table: Table) -> None:
    for path, end in paths_of(build_key(table)):
        if end.plants & table.food:
            for couplet, side in path:
                left_behind = plants_of(couplet) - plants_of(couplet.leads[side].goes_to)
                weak = table.characters[couplet.character].is_weak
                assert not (weak and left_behind & table.grave)


@given(tables())
def test_plants_that_share_no_end_are_separated_by_a_character(table: Table) -> None:
    ways = ways_of(build_key(table))
    for pair in combinations(sorted(table.everything), 2):
        assert table.separating(*pair) or any(set(pair) <= way.plants for way in ways)


@given(tables())
def test_the_same_table_gives_the_same_key(table: Table) -> None:
    assert build_key(table) == build_key(table)


@given(tables(varying=False))
def test_a_key_of_plants_that_do_not_vary_has_each_once_and_lies_within_the_bounds(
    table: Table,
) -> None:
    ways = ways_of(build_key(table))
    assert sorted(plant for way in ways for plant in way.plants) == sorted(table.everything)
    mean = mean_steps(build_key(table))
    assert entropy([len(way.plants) for way in ways]) <= mean + 1e-9
    assert mean <= longest_mean(len(table.plants)) + 1e-9


# ---- how short -----------------------------------------------------------------------------


@pytest.mark.parametrize("number", [1, 2, 3, 5, 6, 8, 10, 18, 23, 32, 100])
def test_where_every_parting_is_to_be_had_no_key_is_shorter(number: int) -> None:
    """Halves, as near as may be, are shortest (Osborne 1963, New Phytologist 62)."""
    assert mean_steps(build_key(one_character(number))) == pytest.approx(shortest_mean(number))


def huffman(weights: list[int]) -> int:
    """Return the least weighted number of steps to some ends (Huffman 1952)."""
    heap, total = list(weights), 0
    heapq.heapify(heap)
    while len(heap) > 1:
        joined = heapq.heappop(heap) + heapq.heappop(heap)
        total += joined
        heapq.heappush(heap, joined)
    return total


def steps_to(weights: list[int]) -> int:
    """Return the weighted number of steps of the key to plants met so often."""
    key = build_key(one_character(len(weights)), weights=dict(enumerate(weights)))
    return sum(way.steps * weights[plant] for way in ways_of(key) for plant in way.plants)


@pytest.mark.parametrize(
    ("weights", "shannon_fano", "least"),
    [([15, 7, 6, 6, 5], 89, 87), ([24, 12, 10, 8, 8], 140, 138)],
)
def test_plants_met_more_often_are_reached_sooner(
    weights: list[int], shannon_fano: int, least: int
) -> None:
    """Shannon and Fano's totals: worked examples of Cardiff's lecture notes and of binaryessence.com."""
    assert huffman(weights) == least
    assert least <= steps_to(weights) <= shannon_fano


def test_the_entropy_of_the_published_weights_is_the_published() -> None:
    assert entropy([15, 7, 6, 6, 5]) == pytest.approx(2.1858, abs=5e-5)


@settings(max_examples=60)
@given(st.lists(st.integers(1, 50), min_size=2, max_size=7))
def test_where_every_parting_is_to_be_had_a_few_plants_are_reached_as_soon_as_by_huffman_s_code(
    weights: list[int],
) -> None:
    assert steps_to(weights) == huffman(weights)


@settings(max_examples=60)
@given(st.lists(st.integers(1, 50), min_size=8, max_size=14))
def test_more_plants_are_reached_within_a_step_of_the_entropy(weights: list[int]) -> None:
    """So are the ends of Huffman's code, and the entropy is what no key can go below (Shannon 1948)."""
    assert huffman(weights) <= steps_to(weights)
    assert entropy(weights) <= steps_to(weights) / sum(weights) < entropy(weights) + 1


# ---- the Flavia leaf set -------------------------------------------------------------------


def names_of(key: Key) -> list[list[str]]:
    """Return the species of each end that has several."""
    groups = (way.plants for way in ways_of(key) if len(way.plants) > 1)
    return sorted(sorted(str(flavia().plants[plant]) for plant in group) for group in groups)


def test_the_two_sets_of_flavia_leaves_that_nothing_separates_end_as_groups() -> None:
    assert names_of(build_key(flavia())) == [
        ["camphortree", "japanese_flowering_cherry", "sweet_osmanthus"],
        ["oleander", "peach", "yew_plum_pine"],
    ]


def test_the_key_to_the_flavia_leaves_has_an_end_for_each_profile_and_one_step_too_many_at_most() -> (
    None
):
    """No key to ends so often met is shorter than Huffman's code, which may ask for anything."""
    key, sizes = build_key(flavia()), list(profiles_of(flavia()).values())
    assert len(ways_of(key)) == 28
    assert entropy(sizes) <= huffman(sizes) / 32 <= mean_steps(key) <= longest_mean(32)
    assert mean_steps(key) * 32 <= huffman(sizes) + 1


def test_the_key_to_one_species_of_each_profile_is_near_osborne_s_minimum() -> None:
    first = {tuple(c.shown[p] for c in flavia().characters): p for p in reversed(range(32))}
    mean = mean_steps(build_key(flavia(), frozenset(first.values())))
    assert shortest_mean(28) <= mean <= 1.01 * shortest_mean(28)


NO_LONGER = 1.10
"""How much longer a key may be than the tree that scikit-learn grows by entropy."""


def grown_by_scikit_learn(table: Table) -> float:
    """Return the mean depth of the species in a tree of yes-or-no questions, one an option."""
    rows = [
        [
            float(option in (c.shown[p] or ()))
            for c in table.characters
            for option in range(len(c.options))
        ]
        for p in range(len(table.plants))
    ]
    tree = DecisionTreeClassifier(criterion="entropy", random_state=0)
    # Two leaves of each: the library wonders whether classes of one member are meant as numbers.
    tree.fit(rows * 2, list(range(len(rows))) * 2)
    return float(tree.decision_path(rows).sum()) / len(rows) - 1


def test_the_key_to_the_flavia_leaves_is_no_longer_than_a_grown_tree() -> None:
    assert mean_steps(build_key(flavia())) <= NO_LONGER * grown_by_scikit_learn(flavia())


@pytest.mark.parametrize("seed", range(40))
def test_keys_to_some_of_the_flavia_leaves_are_no_longer_than_grown_trees(seed: int) -> None:
    some = random.Random(seed)  # noqa: S311 - repeatable, no secret
    plants = some.sample(range(32), some.randint(3, 32))
    table = some_of(flavia(), plants, sorted(some.sample(range(8), some.randint(3, 8))))
    assert mean_steps(build_key(table)) <= NO_LONGER * grown_by_scikit_learn(table)
