"""Gathering as far as it is sure: what is in doubt is marked, what nothing settles is taken out."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from helpers.workshop import bank_of
from helpers.years import plan_of
from sallet.lesson.value import Window
from sallet.lesson.values.times import day_of_year
from sallet.season.gathering import all_tellings, gathered_surely
from sallet.season.here import PlantYear, plant_year
from sallet.season.words import NEVER_SURE, row_words, seen_words

RAMSONS = """---
name: Ramsons
---
## Identification
### Leaves
- gloss: glossy above matt beneath
### Flowers
- inflorescence: umbel
- petals fused or free: free
## Look-alikes
### Lily of the valley
- danger: poisonous
{settled}
#### Leaves
- gloss: matt above glossy beneath
#### Flowers
- inflorescence: one-sided raceme
- petals fused or free: joined into a tube
## Season
- leaves: March to June
- flowers: mid April to mid June
## Edible parts
- leaves: {eaten}; raw
"""
SETTLED = "- settled by: patches marked while in flower"


def surely(eaten: str, settled: str = "") -> PlantYear:
    """Return the year of ramsons, with its gathering as far as it is sure."""
    bank = bank_of({"ramsons.md": RAMSONS.format(eaten=eaten, settled=settled)})
    years = {lesson.slug: plant_year(lesson, None) for lesson in bank.lessons}
    return gathered_surely(years["ramsons"], all_tellings(years, bank)["ramsons"])


def test_weeks_that_nothing_settles_are_in_no_window() -> None:
    """The flowers open from 16 April at the latest; the week of that day begins on the 16th."""
    [row] = surely("March to May").eaten
    assert row.doubts == (Window(day_of_year(3, 1), day_of_year(4, 15)),)
    assert row.windows == (Window(day_of_year(4, 16), day_of_year(5, 31)),)
    assert row_words(row) == "16 April to May"
    assert seen_words(row) == ""


def test_a_note_that_settles_it_leaves_the_window_and_marks_the_doubt() -> None:
    [row] = surely("March to May", SETTLED).eaten
    assert row.doubts == (Window(day_of_year(3, 1), day_of_year(4, 15)),)
    assert row.windows == (Window(day_of_year(3, 1), day_of_year(5, 31)),)
    assert row_words(row) == "March to May"


def test_where_no_week_is_left_it_is_said() -> None:
    [row] = surely("March").eaten
    assert row.windows == ()
    assert row_words(row) == NEVER_SURE


def test_what_is_sure_is_left_as_it_is() -> None:
    [row] = surely("late April to May").eaten
    assert (row.not_sure, row_words(row)) == (frozenset(), "late April to May")


def test_a_doubt_in_the_middle_cuts_a_window_in_two() -> None:
    """In flower in spring and again in autumn, in leaf between: beginning and end are sure."""
    text = RAMSONS.replace("flowers: mid April to mid June", "flowers: April to May, September")
    bank = bank_of({"ramsons.md": text.format(eaten="mid April to mid September", settled="")})
    years = {"ramsons": plant_year(bank.lessons[0], None)}
    [row] = gathered_surely(years["ramsons"], all_tellings(years, bank)["ramsons"]).eaten
    assert [(w.first, w.last) for w in row.windows] == [
        (day_of_year(4, 11), day_of_year(5, 20)),
        (day_of_year(9, 10), day_of_year(9, 20)),
    ]


def test_what_can_be_seen_is_never_cut() -> None:
    seen = [row_words(row) for row in surely("March to May").seen]
    assert seen == ["March to June", "mid April to mid June"]


@pytest.mark.parametrize(("settled", "taught"), [("", []), (SETTLED, ["Ramsons"])])
def test_a_plan_gathers_nothing_in_weeks_that_nothing_settles(
    settled: str, taught: list[str]
) -> None:
    course = "sessions:\n  - {date: 2027-03-20}\n"
    lesson = RAMSONS.format(eaten="March to May", settled=settled)
    plan = plan_of({"course.yml": course, "ramsons.md": lesson})
    in_season = [t.lesson.name for m in plan.meetings for t in m.taught if t.in_season]
    assert in_season == taught
    [telling] = plan.tellings["ramsons"]
    assert telling.name == "Lily of the valley"


@given(st.integers(1, 365), st.integers(1, 365))
def test_what_is_left_and_what_is_withheld_are_the_whole_of_what_is_written(
    first: int, last: int
) -> None:
    months = ("January", "February", "March", "April", "May", "June", "July", "August",
              "September", "October", "November", "December")  # fmt: skip
    eaten = f"{months[first % 12]} to {months[last % 12]}"
    [row] = surely(eaten).eaten
    [whole] = surely(eaten, SETTLED).eaten
    left = {day for window in row.windows for day in window.days}
    written = {day for window in whole.windows for day in window.days}
    assert left | row.not_sure == written
    assert left & row.not_sure == set()
