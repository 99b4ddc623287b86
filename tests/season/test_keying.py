"""The tables behind the keys of a year and of its months, and the keys to the lessons at hand."""

from __future__ import annotations

from functools import cache
from itertools import combinations
from typing import TYPE_CHECKING

import pytest

from helpers.lessons import LESSONS, VOCABULARY
from helpers.tables import couplets_of, paths_of
from helpers.workshop import bank_of
from sallet.lesson.values.times import YEAR
from sallet.season.here import plant_year
from sallet.season.hopkins import spot_of
from sallet.season.keying import days_of_month, key_table, met_in, month_name
from sallet.study.contrast import contrasts
from sallet.study.couplets import build_key
from sallet.study.lengths import longest_mean, mean_steps, plants_of, ways_of
from sallet.study.plant_table import Asked

if TYPE_CHECKING:
    from sallet.season.here import PlantYear
    from sallet.study.couplets import Key
    from sallet.study.table import Character, Table

ALL = range(1, 13)


def years_of(**seasons: str) -> tuple[PlantYear, ...]:
    """Return the years of plants with leaves and a stem; their arrangements are all different."""
    arrangements = "opposite", "alternate", "whorled"
    files = {
        f"{name}.md": f"## Identification\n### Leaves\n- arrangement: {arrangement}\n"
        f"### Stem\n- interior: {interior}\n## Season\n{seasons[name]}\n"
        for name, arrangement, interior in zip(
            seasons, arrangements, ("solid", "hollow", "solid"), strict=False
        )
    }
    return tuple(plant_year(lesson, None) for lesson in bank_of(files).lessons)


def asked_of(table: Table) -> list[str]:
    """Return the labels that a table asks."""
    return [c.name.label.name for c in table.characters if isinstance(c.name, Asked)]


# ---- months --------------------------------------------------------------------------------


def test_the_months_are_the_days_of_the_year() -> None:
    assert [len(days_of_month(month)) for month in ALL] == [
        31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31,
    ]  # fmt: skip
    assert frozenset().union(*map(days_of_month, ALL)) == frozenset(range(1, YEAR + 1))
    assert days_of_month(2) == frozenset(range(32, 60))


def test_a_month_has_a_name() -> None:
    assert (month_name(1), month_name(12)) == ("January", "December")


# ---- who is met ----------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("season", "months"),
    [
        ("- leaves: May", [4, 5, 6]),
        ("- leaves: mid May", [5]),
        ("- leaves: December", [11, 12, 1]),
        ("- leaves: all year", [*ALL]),
        ("- roots: May", [4, 5, 6]),
        ("- leaves: when it likes", [*ALL]),
        ("", [*ALL]),
    ],
)
def test_a_plant_is_met_in_the_months_in_which_it_may_be_seen(
    season: str, months: list[int]
) -> None:
    """A time may begin and end five days off; of a plant without times nobody can say."""
    years = years_of(a=season)
    assert {month for month in ALL if met_in(years, days_of_month(month))} == set(months)


def test_the_table_of_a_month_has_the_plants_that_are_met_in_it() -> None:
    years = years_of(a="- leaves: all year", b="- leaves: May", c="- leaves: July")
    assert key_table(years, VOCABULARY).plants == ("a", "b", "c")
    assert key_table(years, VOCABULARY, 5).plants == ("a", "b")
    assert key_table(years, VOCABULARY, 1).plants == ("a",)


# ---- what is asked -------------------------------------------------------------------------


def test_in_a_month_only_that_is_asked_which_can_be_looked_at_in_it() -> None:
    season = "- leaves: all year\n- stem: May"
    years = years_of(a=season, b=season)
    assert asked_of(key_table(years, VOCABULARY, 5)) == ["interior", "arrangement"]
    assert asked_of(key_table(years, VOCABULARY, 7)) == ["arrangement"]
    assert asked_of(key_table(years, VOCABULARY)) == ["interior", "arrangement"]


@pytest.mark.parametrize(
    ("first", "asked"), [("12 May", ["arrangement"]), ("31 May", []), ("21 May", ["arrangement"])]
)
def test_it_must_be_on_most_days_on_which_the_plant_is_met(first: str, asked: list[str]) -> None:
    """Leaves are perhaps there five days before: from 16 May on 16 of the 31 days, from 26 May on 6."""
    years = years_of(a=f"- leaves: {first} to July\n- stem: all year", b="- leaves: all year")
    assert asked_of(key_table(years, VOCABULARY, 5)) == asked


def test_days_count_of_which_nobody_can_say_for_the_plant_is_in_the_hand() -> None:
    """Only in its last days of May is it met, and what is met then are its leaves."""
    years = years_of(a="- leaves: June", b="- leaves: all year")
    table = key_table(years, VOCABULARY, 5)
    assert (table.plants, asked_of(table)) == (("a", "b"), ["arrangement"])


def test_what_is_hidden_for_a_part_of_the_year_is_asked_of_the_year_and_costs_more() -> None:
    years = years_of(a="- stem: May\n- leaves: all year", b="- stem: all year\n- leaves: all year")
    stem, leaves = key_table(years, VOCABULARY).characters
    assert leaves.cost == 1
    assert stem.cost == pytest.approx(1.1 + 0.6 * (1 - (41 / YEAR + 1) / 2))


# ---- the keys to the lessons at hand -------------------------------------------------------


@cache
def table_in(month: int | None) -> Table:
    """Return the table of the lessons at hand in a month, where the first of them was seen."""
    here = spot_of(LESSONS[0].front.seen_at)
    return key_table([plant_year(lesson, here) for lesson in LESSONS], VOCABULARY, month)


@cache
def key_in(month: int | None) -> Key:
    """Return the key to the lessons at hand in a month."""
    return build_key(table_in(month))


@cache
def have_a_contrast(one: str, other: str) -> bool:
    """Return whether anything tells two plants of the lessons at hand apart."""
    facts = {lesson.slug: lesson.facts for lesson in LESSONS}
    return bool(contrasts(facts[one], facts[other], VOCABULARY))


every_table = pytest.mark.parametrize("month", [None, *ALL])


def test_the_year_s_key_has_all_lessons() -> None:
    assert table_in(None).plants == tuple(lesson.slug for lesson in LESSONS)
    assert plants_of(key_in(None)) == table_in(None).everything


@every_table
def test_plants_that_share_no_end_have_a_contrast(month: int | None) -> None:
    table, ways = table_in(month), ways_of(key_in(month))
    for one, other in combinations(sorted(table.everything), 2):
        if not any({one, other} <= way.plants for way in ways):
            assert have_a_contrast(str(table.plants[one]), str(table.plants[other]))


@every_table
def test_a_weak_character_never_leaves_harm_behind_where_a_lead_goes_on_to_food(
    month: int | None,
) -> None:
    table = table_in(month)
    assert table.food
    assert table.grave
    for path, end in paths_of(key_in(month)):
        if end.plants & table.food:
            for couplet, side in path:
                left_behind = plants_of(couplet) - plants_of(couplet.leads[side].goes_to)
                assert not (
                    table.characters[couplet.character].is_weak and left_behind & table.grave
                )


@every_table
def test_every_plant_is_led_to_by_the_leads_that_its_options_are_on(month: int | None) -> None:
    table = table_in(month)
    for couplet in couplets_of(key_in(month)):
        character = table.characters[couplet.character]
        for lead in couplet.leads:
            going = {p for p in plants_of(couplet) if _may_go(character, p, lead.options)}
            assert going == plants_of(lead.goes_to)


def _may_go(character: Character, plant: int, options: frozenset[int]) -> bool:
    allowed = character.allowed[plant]
    return allowed is None or bool(allowed & options)


@every_table
def test_a_month_separates_no_plants_that_the_year_does_not(month: int | None) -> None:
    """What cannot be looked at in a month is left out; nothing is added."""
    year, table = table_in(None), table_in(month)
    places = {slug: at for at, slug in enumerate(year.plants)}
    for one, other in combinations(range(len(table.plants)), 2):
        if table.separating(one, other):
            assert year.separating(places[table.plants[one]], places[table.plants[other]])


def test_the_key_to_the_lessons_is_shorter_than_a_list_read_through() -> None:
    assert mean_steps(key_in(None)) < longest_mean(len(LESSONS)) / 2


def test_the_same_lessons_give_the_same_table() -> None:
    here = spot_of(LESSONS[0].front.seen_at)
    again = key_table([plant_year(lesson, here) for lesson in LESSONS], VOCABULARY)
    assert again == table_in(None)
