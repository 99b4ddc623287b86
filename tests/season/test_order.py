"""Season order: what can be taught first in the year comes first."""

from __future__ import annotations

from typing import TYPE_CHECKING

from helpers.years import year_at, year_of
from sallet.lesson.value import Window
from sallet.season.hopkins import Spot
from sallet.season.order import in_season_order, teaching_windows

if TYPE_CHECKING:
    from collections.abc import Iterable

    from sallet.season.here import PlantYear

HEAD = "---\nname: {}\nseen at: {{latitude: 54, longitude: -2, elevation: 0 m}}\n---\n"


def text(name: str, eaten: str = "", season: str = "") -> str:
    """Return a lesson on a food plant whose leaves are eaten and seen at some time."""
    lesson = HEAD.format(name)
    lesson += f"## Edible parts\n- leaves: {eaten}; raw\n" if eaten else ""
    return lesson + (f"## Season\n- leaves: {season}\n" if season else "")


def food(name: str, eaten: str = "", season: str = "") -> PlantYear:
    """Return the year of such a plant where it was seen."""
    return year_of(text(name, eaten, season))


def names(years: Iterable[PlantYear]) -> list[str]:
    """Return the names of plants."""
    return [year.lesson.name for year in years]


def test_a_food_plant_is_worth_meeting_when_it_can_be_eaten() -> None:
    assert teaching_windows(food("Elder", "June", "April to November")) == (Window(152, 181),)


def test_a_plant_to_keep_away_from_is_worth_meeting_while_it_can_be_seen() -> None:
    lesson = "---\ntaught as: look-alike\n---\n## Season\n- leaves: May\n- fruit: August, October\n"
    assert teaching_windows(year_of(lesson)) == (
        Window(121, 151), Window(213, 243), Window(274, 304),
    )  # fmt: skip


def test_a_time_that_cannot_be_read_leaves_the_season() -> None:
    assert teaching_windows(food("Elder", "when ripe", "May")) == (Window(121, 151),)
    assert teaching_windows(food("Elder", "when ripe")) == ()


def test_plants_come_by_their_first_day() -> None:
    years = [food("Bramble", "August"), food("Ramsons", "March to May"), food("Nettle", "April")]
    assert names(in_season_order(years)) == ["Ramsons", "Nettle", "Bramble"]


def test_of_two_that_begin_together_the_one_that_ends_first_comes_first() -> None:
    years = [food("Dandelion", "March to June"), food("Ramsons", "March to May")]
    assert names(in_season_order(years)) == ["Ramsons", "Dandelion"]


def test_of_two_with_the_same_window_the_name_decides() -> None:
    years = [food("elder", "June"), food("Dog rose", "June"), food("Yarrow", "June")]
    assert names(in_season_order(years)) == ["Dog rose", "elder", "Yarrow"]


def test_a_window_over_the_new_year_opens_the_year() -> None:
    years = [food("Ramsons", "mid January to March"), food("Chickweed", "October to March")]
    assert names(in_season_order(years)) == ["Chickweed", "Ramsons"]


def test_a_plant_without_a_window_comes_last() -> None:
    assert names(in_season_order([food("Ash"), food("Sloe", "December")])) == ["Sloe", "Ash"]


def test_in_the_south_the_year_opens_in_july() -> None:
    """Spring greens of August and September come before the fruit of March."""
    south = Spot(-54, -2, 0)
    lessons = [
        text("Bramble", "September"),
        text("Ramsons", "March to May"),
        text("Watercress", "all year"),
    ]
    years = [year_at(lesson, south) for lesson in lessons]
    assert names(in_season_order(years)) == ["Watercress", "Ramsons", "Bramble"]
