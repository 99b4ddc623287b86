"""When a plant is in season to teach."""

from __future__ import annotations

from datetime import date

import pytest

from helpers.workshop import bank_of
from helpers.years import year_at, year_of
from sallet.lesson.values.times import day_of_year
from sallet.season.hopkins import Spot
from sallet.season.teachable import Teachable, day_of, look_alike_pairs, teachable

ELDER = year_of("""---
name: Elder
---
## Season
- leaves: April to November
- flowers: June
## Edible parts
- flowers: June; boiled
- ripe fruit: September; boiled
""")
DWARF = year_of("""---
name: Dwarf elder
taught as: look-alike
---
## Season
- leaves: mid May to October
- flowers: late June to July
- fruit: mid September to October
""")


def days(what: Teachable) -> tuple[int, int, int]:
    """Return the first and the last day in season and how many there are."""
    return min(what.days), max(what.days), len(what.days)


def test_food_is_in_season_while_it_is_gathered() -> None:
    assert days(teachable(ELDER)) == (152, 273, 30 + 30)


def test_food_of_which_nothing_is_gathered_is_so_while_it_can_be_seen() -> None:
    assert days(teachable(year_of("## Season\n- leaves: May\n"))) == (121, 151, 31)


def test_a_plant_that_harms_is_in_season_while_the_same_organ_of_both_can_be_met() -> None:
    """Its flowers with the flowers from 21 to 30 June, its fruit with the fruit from 11 to 30 September."""
    assert days(teachable(DWARF, [ELDER])) == (172, 273, 10 + 20)


def test_the_whole_plant_is_every_organ() -> None:
    whole = year_of("---\ntaught as: look-alike\n---\n## Season\n- whole plant: 21 June to July\n")
    assert days(teachable(whole, [ELDER])) == (172, 181, 10)


def test_where_no_organ_is_the_same_any_part_of_it_will_do() -> None:
    late = year_of(
        "---\ntaught as: look-alike\n---\n## Season\n- leaves: 21 June to 10 September\n"
    )
    assert days(teachable(late, [ELDER])) == (172, 253, 10 + 10)


def test_where_the_two_never_meet_it_is_so_while_it_can_be_seen() -> None:
    early = year_of("---\ntaught as: look-alike\n---\n## Season\n- leaves: March\n")
    assert days(teachable(early, [ELDER])) == (60, 90, 31)
    assert days(teachable(early)) == (60, 90, 31)


@pytest.mark.parametrize(
    ("text", "day", "unsure"),
    [("- leaves: May", (4, 25), False), ("- leaves: May", (4, 26), True),
     ("- leaves: May", (5, 1), False), ("- leaves: May", (6, 5), True),
     ("- leaves: May", (6, 6), False), ("- leaves: January", (12, 27), True),
     ("- leaves: May\n- fruit: when it likes", (12, 1), True),
     ("- leaves: May\n- fruit: when it likes", (5, 1), False),
     ("", (12, 1), True), ("- leaves: all year", (12, 1), False)],
)  # fmt: skip
def test_a_plant_that_harms_may_be_met_some_days_beyond_its_times_and_where_none_is_known(
    text: str, day: tuple[int, int], *, unsure: bool
) -> None:
    """No end is surer than 5 days, half of the `early` or `mid` in which lessons write."""
    harm = year_of(f"---\ntaught as: look-alike\n---\n## Season\n{text}\n")
    assert teachable(harm).is_unsure_on(day_of_year(*day)) is unsure


def test_what_is_eaten_and_what_is_seen_besides_are_told_apart() -> None:
    june = day_of_year(6, 15)
    assert (teachable(ELDER).eaten(june), teachable(ELDER).seen(june)) == (
        ("flowers",),
        ("leaves",),
    )


@pytest.mark.parametrize(
    ("day", "stages"),
    [((6, 15), ("flowers to eat", "leaves")), ((5, 1), ("leaves",)),
     ((9, 15), ("ripe fruit to eat", "leaves")), ((1, 1), ())],
)  # fmt: skip
def test_the_stages_of_a_day_name_each_part_once(
    day: tuple[int, int], stages: tuple[str, ...]
) -> None:
    assert teachable(ELDER).stages(day_of_year(*day)) == stages


def test_what_it_is_taken_for_on_a_day() -> None:
    what = teachable(DWARF, [ELDER])
    assert what.confused_with(day_of_year(6, 25)) == (ELDER.lesson,)
    assert what.confused_with(day_of_year(6, 15)) == ()
    assert what.confused_with(day_of_year(7, 15)) == ()


def test_a_group_is_told_of_food_in_season_and_of_harm_in_sight() -> None:
    july = day_of_year(7, 15)
    assert not teachable(ELDER).is_about(july)
    assert teachable(DWARF, [ELDER]).is_about(july)
    assert not teachable(DWARF, [ELDER]).is_about(day_of_year(1, 1))


@pytest.mark.parametrize(("day", "away"), [((6, 1), 0), ((5, 31), 1), ((7, 15), 15), ((1, 1), 93)])
def test_days_away_are_counted_the_shorter_way_round(day: tuple[int, int], away: int) -> None:
    """From 1 January back to 30 September are 93 days, on to 1 June 151."""
    assert teachable(ELDER).days_away(day_of_year(*day)) == away


def test_without_a_season_a_plant_is_a_year_away() -> None:
    what = teachable(year_of("---\nname: Yew\n---\n"))
    assert (what.days, what.days_away(100)) == (frozenset(), 365)


def test_a_pair_is_found_from_either_side_and_once() -> None:
    bank = bank_of({
        "elder.md": "---\nname: Elder\n---\n## Look-alikes\n### Dwarf elder\n### Danewort\n### Privet\n",
        "dwarf-elder.md": "---\nname: Dwarf elder\nalso called: [Danewort]\n---\n"
        "## Look-alikes\n### Elder\n### Dwarf elder\n",
        "ramsons.md": "---\nname: Ramsons\n---\n",
    })  # fmt: skip
    assert look_alike_pairs(bank.lessons, bank) == {frozenset({"elder", "dwarf-elder"})}


def test_the_29th_of_february_is_the_28th() -> None:
    assert day_of(date(2028, 2, 29)) == day_of(date(2028, 2, 28)) == 59
    assert day_of(date(2028, 12, 31)) == 365


def test_an_estimated_part_to_eat_is_told_with_a_doubt_at_its_ends() -> None:
    """12 days later, flowers are gathered from 13 June to about 7 July."""
    elder = """---
name: Elder
seen at: {latitude: 54.4, longitude: -2.6, elevation: 150 m}
---
## Season
- flowers: June
## Edible parts
- flowers: June; boiled
"""
    what = teachable(year_at(elder, Spot(57.4, -2.6, 150)))
    days = [day_of_year(6, 14), day_of_year(6, 26), day_of_year(5, 1)]
    assert [what.stages(day) for day in days] == [
        ("perhaps flowers to eat",), ("flowers to eat",), (),
    ]  # fmt: skip
