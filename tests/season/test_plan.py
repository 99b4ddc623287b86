"""What a plan tells of itself."""

from __future__ import annotations

from helpers.years import plan_of

RAMSONS = """---
name: Ramsons
---
## Look-alikes
### Lily of the valley
### Dog's mercury
## Season
- leaves: March to June
## Edible parts
- leaves: April; raw
"""
LILY = """---
name: Lily of the valley
taught as: look-alike
---
## Season
- leaves: mid April to September
- flowers: May
"""
MERCURY = """---
name: Dog's mercury
taught as: look-alike
---
## Season
- leaves: February to October
"""
PLAN = plan_of({
    "course.yml": """
sessions:
  - {date: 2027-04-20, plants: [Ramsons, Lily of the valley]}
  - {date: 2027-05-10, plants: [Lily of the valley, Ramsons]}
  - {date: 2027-07-10, plants: []}
  - {date: 2028-02-29, plants: [Dog's mercury]}
""",
    "ramsons.md": RAMSONS, "lily.md": LILY, "mercury.md": MERCURY,
})  # fmt: skip


def test_the_years_of_its_plants_stand_in_season_order() -> None:
    names = [year.lesson.name for year in PLAN.years]
    assert names == ["Dog's mercury", "Ramsons", "Lily of the valley"]


def test_a_plant_taught_in_season_once_is_taught_in_season() -> None:
    assert PLAN.in_season == {"ramsons", "lily"}
    late = [t.lesson.slug for t in PLAN.meetings[1].taught if not t.in_season]
    assert late == ["lily", "ramsons"]


def test_out_of_season_are_those_that_are_never_taught_in_season() -> None:
    found = [(meeting.number, taught.lesson.slug) for meeting, taught in PLAN.out_of_season]
    assert found == [(4, "mercury")]


def test_a_pair_is_together_once_however_often_and_only_in_sessions_side_by_side() -> None:
    assert len(PLAN.pairs) == 2
    assert PLAN.pairs_together == 1


def test_a_session_knows_its_day_of_the_year_in_a_leap_year_too() -> None:
    """1 January is day 1; 29 February is taken for the 28th."""
    assert [meeting.day for meeting in PLAN.meetings] == [110, 130, 191, 59]


def test_a_plant_in_a_session_tells_what_of_it_can_be_met() -> None:
    ramsons, lily = PLAN.meetings[0].taught
    assert (ramsons.stages, lily.stages) == (("leaves to eat",), ("leaves",))
    assert [lesson.name for lesson in lily.confused_with] == ["Ramsons"]
    assert ramsons.confused_with == ()
    later = PLAN.meetings[1].taught[0]
    assert (later.stages, later.confused_with) == (("leaves", "flowers"), ())
