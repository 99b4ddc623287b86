"""What was seen here takes the place of the estimate."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from helpers.workshop import bank_of
from sallet.course.reading import read_course
from sallet.lesson.value import Window
from sallet.lesson.values.times import day_of_year, month_and_day
from sallet.season.move import Move
from sallet.season.observed import named_in, observed_here, onset_here
from sallet.season.planning import plant_years
from sallet.source import Source

if TYPE_CHECKING:
    from sallet.course.model import Course
    from sallet.season.here import PlantYear

PLACE = "place: {latitude: 57.4, longitude: -2.6, elevation: 150 m}\n"
"""12 days later in spring than where the lessons were seen."""
FILES = {
    "ramsons.md": """---
name: Ramsons
also called: [wild garlic]
seen at: {latitude: 54.4, longitude: -2.6, elevation: 150 m}
---
## Season
- leaves: late February to mid June
- flowers: late April to early June
- seeds: June to July
- stem: all year
## Edible parts
- flowers: late April to May; raw
""",
    "garlic-mustard.md": """---
name: Garlic mustard
seen at: {latitude: 54.4, longitude: -2.6, elevation: 150 m}
---
## Season
- young shoots: March to May, September to October
- seeds: October
- dead stems: December to February
- flower buds: July
""",
}


def course(seen: str) -> Course:
    """Return a course in which some days were seen here."""
    return read_course(Source("course.yml", f"{PLACE}seen here: {{{seen}}}\n"))


def year(name: str, seen: str) -> PlantYear:
    """Return a plant's year where some days were seen."""
    return plant_years(course(seen), bank_of(FILES))[name]


def first_days(found: PlantYear) -> dict[str, tuple[int, int]]:
    """Return the month and day on which each part begins, by its name."""
    return {row.name: month_and_day(row.windows[0].first) for row in found.seen}


def test_without_what_was_seen_the_law_holds() -> None:
    found = year("ramsons", "")
    assert found.move == Move(12.0, -12.0)
    assert first_days(found)["flowers"] == (5, 3)


def test_the_part_that_was_seen_begins_on_that_day_and_the_rest_follows() -> None:
    """21 April in the lesson, 26 April here: five days, not the twelve of the law."""
    found = year("ramsons", "ramsons flowers: 26 April 2026")
    assert found.move == Move(5.0, -5.0)
    assert first_days(found) == {
        "leaves": (2, 26), "flowers": (4, 26), "seeds": (6, 6), "stem": (1, 1),
    }  # fmt: skip
    assert found.eaten[0].windows == (Window(day_of_year(4, 26), day_of_year(6, 5)),)


def test_only_the_part_that_was_seen_is_marked_as_seen() -> None:
    found = year("ramsons", "ramsons flowers: 26 April 2026")
    marked = [row.name for row in found.seen for s in row.stretches if s.observed]
    assert marked == ["flowers"]
    assert [o.observation.words for o in found.observed] == ["ramsons flowers"]


def test_another_plant_keeps_its_estimate() -> None:
    assert year("garlic-mustard", "ramsons flowers: 26 April 2026").move == Move(12.0, -12.0)


def test_an_autumn_event_that_came_early_means_a_late_spring() -> None:
    found = year("garlic-mustard", "garlic mustard seeds: 24 September 2026")
    assert found.move == Move(7.0, -7.0)
    assert first_days(found)["young shoots"] == (3, 8)


def test_with_both_seen_each_half_has_its_own_days() -> None:
    seen = "garlic mustard young shoots: 5 March, garlic mustard seeds: 3 October"
    assert year("garlic-mustard", seen).move == Move(4.0, 2.0)


def test_of_several_spring_events_the_mean_is_used_and_each_keeps_its_day() -> None:
    found = year("ramsons", "ramsons leaves: 25 February, ramsons flowers: 1 May")
    assert found.move == Move(7.0, -7.0)
    assert first_days(found)["leaves"] == (2, 25)
    assert first_days(found)["flowers"] == (5, 1)


def test_of_several_years_the_middle_one_is_used() -> None:
    found = year("ramsons", "ramsons flowers: [2 May 2026, 26 April 2025, 27 April 2024]")
    assert first_days(found)["flowers"] == (4, 27)


def test_years_around_the_new_year_are_counted_on() -> None:
    found = year(
        "garlic-mustard", "garlic mustard dead stems: [28 November, 2 January, 20 December]"
    )
    assert first_days(found)["dead stems"] == (12, 20)


def test_a_part_with_two_times_is_corrected_where_it_is_nearest() -> None:
    found = year("garlic-mustard", "garlic mustard young shoots: 10 September")
    spring, autumn = found.seen[0].windows
    assert month_and_day(autumn.first) == (9, 10)
    assert found.move == Move(-9.0, 9.0)
    assert month_and_day(spring.first) == (2, 20)


def test_a_part_that_begins_in_high_summer_begins_on_its_day_too() -> None:
    found = year("garlic-mustard", "garlic mustard flower buds: 9 July")
    assert first_days(found)["flower buds"] == (7, 9)


@pytest.mark.parametrize(
    "seen", ["ramsons stem: 2 May", "ramsons catkins: 2 May", "yew leaves: 2 May"]
)
def test_what_names_no_first_day_changes_nothing(seen: str) -> None:
    assert list(observed_here(course(seen), bank_of(FILES))) == []


@pytest.mark.parametrize(
    ("words", "plant", "part"),
    [("ramsons flowers", "Ramsons", "flowers"), ("Wild  Garlic leaves", "Ramsons", "leaves"),
     ("garlic mustard young shoots", "Garlic mustard", "young shoots"),
     ("ramsons", "Ramsons", ""), ("yew leaves", "", "")],
)  # fmt: skip
def test_an_observation_begins_with_the_longest_name(words: str, plant: str, part: str) -> None:
    observation = course(f"{words}: 2 May").seen_here[0]
    lesson, rest = named_in(observation, bank_of(FILES))
    assert (lesson.name if lesson else "", rest) == (plant, part)


def test_a_window_never_ends_before_the_day_on_which_it_was_seen_to_begin() -> None:
    assert onset_here(Window(100, 120), 110) == Window(110, 120)
    assert onset_here(Window(100, 120), 130) == Window(130, 130)
    assert onset_here(Window(350, 20), 5) == Window(5, 20)
    assert onset_here(Window(100, 120), 90) == Window(90, 120)


def test_a_window_that_what_was_seen_has_shortened_keeps_a_day_that_is_certain() -> None:
    """Buds seen on 29 July, of which the lesson has no more than July."""
    found = year("garlic-mustard", "garlic mustard flower buds: 29 July")
    (stretch,) = next(row for row in found.seen if row.name == "flower buds").stretches
    assert stretch.here
    assert stretch.firm
    assert set(stretch.firm.days) <= set(stretch.here.days)
