"""Season order: what can be taught first in the year comes first."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from helpers.workshop import lesson_of
from sallet.lesson.value import Window
from sallet.season.order import in_season_on, in_season_order, teaching_windows

if TYPE_CHECKING:
    from sallet.lesson.model import Lesson


def food(name: str, eaten: str = "", season: str = "") -> Lesson:
    """Return a lesson on a food plant whose leaves are eaten and seen at some time."""
    text = f"---\nname: {name}\n---\n"
    text += f"## Edible parts\n- leaves: {eaten}; raw\n" if eaten else ""
    text += f"## Season\n- leaves: {season}\n" if season else ""
    return lesson_of(text)


def names(lessons: tuple[Lesson, ...]) -> list[str]:
    """Return the names of lessons."""
    return [lesson.name for lesson in lessons]


def test_a_food_plant_is_worth_meeting_when_it_can_be_eaten() -> None:
    assert teaching_windows(food("Elder", "June", "April to November")) == (Window(152, 181),)


def test_a_plant_to_keep_away_from_is_worth_meeting_while_it_can_be_seen() -> None:
    text = "---\ntaught as: look-alike\n---\n## Season\n- leaves: May\n- fruit: August, October\n"
    assert teaching_windows(lesson_of(text)) == (
        Window(121, 151), Window(213, 243), Window(274, 304),
    )  # fmt: skip


def test_a_time_that_cannot_be_read_leaves_the_season() -> None:
    assert teaching_windows(food("Elder", "when ripe", "May")) == (Window(121, 151),)
    assert teaching_windows(food("Elder", "when ripe")) == ()


def test_plants_come_by_their_first_day() -> None:
    lessons = [food("Bramble", "August"), food("Ramsons", "March to May"), food("Nettle", "April")]
    assert names(in_season_order(lessons)) == ["Ramsons", "Nettle", "Bramble"]


def test_of_two_that_begin_together_the_one_that_ends_first_comes_first() -> None:
    lessons = [food("Dandelion", "March to June"), food("Ramsons", "March to May")]
    assert names(in_season_order(lessons)) == ["Ramsons", "Dandelion"]


def test_of_two_with_the_same_window_the_name_decides() -> None:
    lessons = [food("elder", "June"), food("Dog rose", "June"), food("Yarrow", "June")]
    assert names(in_season_order(lessons)) == ["Dog rose", "elder", "Yarrow"]


def test_a_window_over_the_new_year_opens_the_year() -> None:
    lessons = [food("Ramsons", "mid January to March"), food("Chickweed", "October to March")]
    assert names(in_season_order(lessons)) == ["Chickweed", "Ramsons"]


def test_a_plant_without_a_window_comes_last() -> None:
    lessons = [food("Ash"), food("Sloe", "December")]
    assert names(in_season_order(lessons)) == ["Sloe", "Ash"]


@pytest.mark.parametrize(
    ("day", "met"),
    [(1, ["Chickweed"]), (90, ["Chickweed"]), (91, []), (151, []), (152, ["Elder"]),
     (181, ["Elder"]), (182, []), (274, ["Chickweed"]), (365, ["Chickweed"])],
)  # fmt: skip
def test_what_is_worth_meeting_on_a_day_of_the_year(day: int, met: list[str]) -> None:
    """Both ends of a window belong to it; 31 March is day 90, 1 October day 274."""
    lessons = [food("Elder", "June"), food("Chickweed", "October to March"), food("Ash")]
    assert names(in_season_on(lessons, day)) == met
