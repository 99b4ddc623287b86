"""A table of plants and characters: what separates, what contradicts, what drops out."""

from __future__ import annotations

from collections import Counter
from itertools import combinations
from math import comb

import pytest
from hypothesis import given
from hypothesis import strategies as st

from helpers.tables import NOT_TOLD, column, flavia, profiles_of, table_of, tables
from sallet.study.table import Character, Standing, Table, standings

NO_HARM = column("a b ab - a")


def out_of(table: Table, *seen: tuple[int, frozenset[int]]) -> str:
    """Return the plants that drop out, by their letters."""
    return "".join(str(table.plants[s.plant]) for s in standings(table, seen) if s.is_out)


# ---- a character ---------------------------------------------------------------------------


def test_plants_without_an_option_in_common_are_separated() -> None:
    pairs = [
        (one, other) for one in range(5) for other in range(5) if NO_HARM.separates(one, other)
    ]
    assert pairs == [(0, 1), (1, 0), (1, 4), (4, 1)]


def test_options_that_may_meet_on_one_plant_separate_nothing() -> None:
    """White and pink exclude each other not, white and red do."""
    white, pink, red = frozenset({0}), frozenset({1}), frozenset({2})
    colour = Character(
        "colour", ("white", "pink", "red"), (white, pink, red), (red, frozenset(), white)
    )
    assert [colour.separates(*pair) for pair in ((0, 1), (1, 2), (0, 2))] == [False, False, True]
    assert colour.allowed == (frozenset({0, 1}), frozenset({0, 1, 2}), frozenset({1, 2}))


def test_a_plant_is_contradicted_where_it_allows_nothing_of_what_was_seen() -> None:
    assert [NO_HARM.contradicts(plant, {0}) for plant in range(5)] == [
        False,
        True,
        False,
        False,
        False,
    ]
    assert [NO_HARM.contradicts(plant, {0, 1}) for plant in range(5)] == [False] * 5


def test_nothing_seen_contradicts_nothing() -> None:
    assert not any(NO_HARM.contradicts(plant, ()) for plant in range(5))


@given(st.lists(st.sampled_from("abcde"), min_size=1, max_size=12))
def test_a_complete_character_separates_all_pairs_but_those_that_answer_alike(
    told: list[str],
) -> None:
    """C(n, 2) − Σ C(nᵢ, 2), where nᵢ plants give each answer."""
    character = column(" ".join(told))
    pairs = sum(character.separates(*pair) for pair in combinations(range(len(told)), 2))
    assert pairs == comb(len(told), 2) - sum(comb(n, 2) for n in Counter(told).values())


@pytest.mark.parametrize("number", range(2, 13))
def test_of_two_answers_halves_separate_most(number: int) -> None:
    """n₀ · n₁ pairs, at the most n² / 4 (Pankhurst 1971, Watsonia 8: 357)."""
    counts = [
        number * (number - 1) // 2
        - len(table_of(column("a " * zeros + "b " * (number - zeros))).inseparable)
        for zeros in range(number + 1)
    ]
    assert counts == [zeros * (number - zeros) for zeros in range(number + 1)]
    assert max(counts) == counts[number // 2] == number**2 // 4


# ---- the Flavia leaf set -------------------------------------------------------------------


def test_the_characters_of_the_flavia_leaves_separate_the_pairs_they_do() -> None:
    """Counted over the published set's 496 pairs of 32 species, character by character."""
    table = flavia()
    counts = {
        character.name: sum(character.separates(*pair) for pair in combinations(range(32), 2))
        for character in table.characters
    }
    assert counts == {
        "apex": 426, "base": 256, "shape": 323, "denate_edge": 31, "lobed_edge": 135,
        "smooth_edge": 231, "toothed_edge": 175, "undulate_edge": 31,
    }  # fmt: skip


def test_490_of_the_496_pairs_of_the_flavia_leaves_are_separated() -> None:
    table = flavia()
    assert (len(table.plants), 496 - len(table.inseparable)) == (32, 490)
    assert sorted(sorted(str(table.plants[p]) for p in pair) for pair in table.inseparable) == [
        ["camphortree", "japanese_flowering_cherry"], ["camphortree", "sweet_osmanthus"],
        ["japanese_flowering_cherry", "sweet_osmanthus"], ["oleander", "peach"],
        ["oleander", "yew_plum_pine"], ["peach", "yew_plum_pine"],
    ]  # fmt: skip


def test_the_flavia_leaves_have_28_profiles() -> None:
    assert len(profiles_of(flavia())) == 28


# ---- what was seen -------------------------------------------------------------------------

FIRST, SECOND = frozenset({0}), frozenset({1})


def test_a_plant_drops_out_by_one_contradiction_a_grave_one_by_two_reliable_ones() -> None:
    reliable, other, fair = (
        column("a a b b"),
        column("a a b b"),
        column("a a b b", is_reliable=False),
    )
    table = table_of(reliable, other, fair, grave="BD")
    assert out_of(table, (0, SECOND)) == "A"
    assert out_of(table, (0, SECOND), (2, SECOND)) == "A"
    assert out_of(table, (2, SECOND)) == "A"
    assert out_of(table, (0, SECOND), (1, SECOND)) == "AB"
    assert out_of(table, (0, SECOND), (1, FIRST)) == "AC"


def test_a_standing_names_all_that_contradicts_the_plant() -> None:
    table = table_of(column("a b"), column("a b", is_reliable=False), grave="A")
    assert standings(table, [(0, SECOND), (1, SECOND)]) == (
        Standing(0, (0, 1), is_out=False),
        Standing(1, (), is_out=False),
    )


def test_one_character_seen_twice_is_one_contradiction() -> None:
    table = table_of(column("a b c"), grave="A")
    assert out_of(table, (0, SECOND), (0, frozenset({2}))) == "BC"


def test_two_characters_of_one_kind_are_one_contradiction() -> None:
    """Milk in the stem and milk in the leaf: one look, and one mistake."""
    stem, leaf = (column("a b", kind="milk"), column("a b", kind="milk"))
    table = table_of(stem, leaf, column("a b"), grave="A")
    assert out_of(table, (0, SECOND), (1, SECOND)) == ""
    assert out_of(table, (0, SECOND), (1, SECOND), (2, SECOND)) == "A"


_seen = st.lists(
    st.tuples(st.integers(0, 3), st.frozensets(st.integers(0, 4), max_size=3)), max_size=4
)


@given(tables(), _seen)
def test_a_silent_plant_never_drops_out(
    table: Table, seen: list[tuple[int, frozenset[int]]]
) -> None:
    asked = [(at, options) for at, options in seen if at < len(table.characters)]
    for standing in standings(table, asked):
        told = [at for at, _ in asked if table.characters[at].shown[standing.plant]]
        assert told or not standing.is_out


@given(tables(), _seen)
def test_a_grave_plant_drops_out_only_by_two_reliable_characters_of_different_kinds(
    table: Table, seen: list[tuple[int, frozenset[int]]]
) -> None:
    asked = [(at, options) for at, options in seen if at < len(table.characters)]
    for standing in standings(table, asked):
        reliable = {at for at in standing.contradicting if table.characters[at].is_reliable}
        against = {table.characters[at].kind or at for at in reliable}
        if standing.plant in table.grave:
            assert standing.is_out is (len(against) >= 2)
        else:
            assert standing.is_out is bool(standing.contradicting)


@given(tables(), st.frozensets(st.integers(0, 4), min_size=1, max_size=4))
def test_several_options_of_a_character_are_any_of_them(
    table: Table, options: frozenset[int]
) -> None:
    for plant in table.everything:
        each = [table.characters[0].contradicts(plant, {option}) for option in options]
        assert table.characters[0].contradicts(plant, options) is all(each)


@given(tables(), _seen, _seen)
def test_seeing_more_brings_no_plant_back(
    table: Table, seen: list[tuple[int, frozenset[int]]], more: list[tuple[int, frozenset[int]]]
) -> None:
    fitting = [[s for s in some if s[0] < len(table.characters)] for some in (seen, [*seen, *more])]
    before, after = ({s.plant for s in standings(table, some) if s.is_out} for some in fitting)
    assert before <= after


@given(tables())
def test_plants_are_separated_from_either_side(table: Table) -> None:
    for one, other in combinations(range(len(table.plants)), 2):
        assert table.separating(one, other) == table.separating(other, one)


def test_what_is_not_told_separates_nothing() -> None:
    assert table_of(column(f"a {NOT_TOLD}")).inseparable == ((0, 1),)
