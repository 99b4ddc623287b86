"""How a course is planned: its plants' years moved to its place, its sessions filled."""

from __future__ import annotations

from datetime import date, timedelta
from typing import TYPE_CHECKING

import pytest
from hypothesis import given
from hypothesis import strategies as st

from helpers.workshop import bank_of
from helpers.years import plan_of
from sallet.course.reading import read_course
from sallet.course.teaching import taught_lessons
from sallet.season.planning import broken_rules, nearest_date, plant_years, season_of
from sallet.season.teachable import day_of, teachable
from sallet.source import Source

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.course.model import Course
    from sallet.lesson.bank import Bank
    from sallet.season.here import PlantYear
    from sallet.season.plan import Plan

RAMSONS = """---
name: Ramsons
also called: [wild garlic]
seen at: {latitude: 54.4, longitude: -2.6, elevation: 150 m}
---
## Look-alikes
### Lily of the valley
- settled by: marked while in flower
## Season
- leaves: March to June
- flowers: May
## Edible parts
- leaves: April; raw
"""
LILY = """---
name: Lily of the valley
taught as: look-alike
danger: poisonous
seen at: {latitude: 54.4, longitude: -2.6, elevation: 150 m}
---
## Season
- leaves: mid April to September
"""
ELDER = """---
name: Elder
---
## Season
- leaves: April to November
## Edible parts
- flowers: June; boiled
- ripe fruit: September; boiled
"""
FILES = {"ramsons.md": RAMSONS, "lily.md": LILY, "elder.md": ELDER}


def taught(plan: Plan) -> list[list[str]]:
    """Return the names of the plants that each session teaches."""
    return [[t.lesson.name for t in meeting.taught] for meeting in plan.meetings]


def planned(course: str) -> Plan:
    """Return the plan of a course on ramsons, lily of the valley and elder."""
    return plan_of({"course.yml": course, **FILES})


def read(text: str) -> tuple[Course, Bank]:
    """Return a course on the same three plants and its lessons."""
    return read_course(Source("course.yml", text)), bank_of(FILES)


# ---- the plants' years --------------------------------------------------------------------


def test_every_lesson_at_hand_has_its_year_at_the_courses_place() -> None:
    course, bank = read(
        "place: {latitude: 57.4, longitude: -2.6, elevation: 150 m}\nplants: [Elder]"
    )
    years = plant_years(course, bank)
    assert {slug: round(year.move.spring) for slug, year in years.items()} == {
        "ramsons": 12, "lily": 12, "elder": 0,
    }  # fmt: skip
    assert years["elder"].shift.left_out == ("no place seen",)


def test_what_was_seen_here_moves_its_own_plant_and_no_other() -> None:
    course, bank = read(
        "place: {latitude: 54.4, longitude: -2.6, elevation: 150 m}\n"
        "seen here: {wild garlic flowers: 11 May 2026}\n"
    )
    years = plant_years(course, bank)
    assert {slug: year.move.spring for slug, year in years.items()} == {
        "ramsons": 10, "lily": 0, "elder": 0,
    }  # fmt: skip


def test_plants_stand_in_season_order_and_harm_knows_what_it_is_taken_for() -> None:
    course, bank = read("")
    season = season_of(course, bank, bank.lessons)
    assert [(w.year.lesson.name, [c.food.name for c in w.taken_for]) for w in season] == [
        ("Ramsons", []), ("Lily of the valley", ["Ramsons"]), ("Elder", []),
    ]  # fmt: skip


def test_a_plant_is_taken_for_food_that_the_course_does_not_teach() -> None:
    """It grows there all the same, and the student may have learnt of it elsewhere."""
    plan = planned("plants: [Lily of the valley]\nsessions:\n  - date: 2027-04-21\n")
    (only,) = plan.meetings[0].taught
    assert [lesson.name for lesson in only.confused_with] == ["Ramsons"]
    assert plan.pairs == frozenset()


# ---- sessions -----------------------------------------------------------------------------


def test_a_plant_is_taught_where_course_yml_names_it_by_any_of_its_names_and_as_often() -> None:
    plan = planned("""
sessions:
  - {date: 2027-06-05, plants: [wild garlic, Elder, Yew, Ramsons]}
  - {date: 2027-09-04, plants: [elder]}
  - {date: 2027-10-02, plants: [Lily of the valley]}
""")
    assert taught(plan) == [["Ramsons", "Elder"], ["Elder"], ["Lily of the valley"]]
    assert all(t.pinned for meeting in plan.meetings for t in meeting.taught)
    assert [meeting.number for meeting in plan.meetings] == [1, 2, 3]


def test_what_is_not_named_is_taught_in_season() -> None:
    plan = planned("sessions: [{date: 2027-04-20}, {date: 2027-06-05}]\n")
    assert taught(plan) == [["Ramsons", "Lily of the valley"], ["Elder"]]
    assert not any(t.pinned for meeting in plan.meetings for t in meeting.taught)
    assert plan.in_season == {"ramsons", "lily", "elder"}


def test_in_a_session_named_plants_come_first_then_by_season_but_none_before_what_it_follows() -> (
    None
):
    course = "sessions:\n  - {date: 2027-04-20, plants: [Elder]}\n"
    assert taught(planned(course)) == [["Elder", "Ramsons", "Lily of the valley"]]
    after = "after: {Ramsons: Lily of the valley}\n"
    assert taught(planned(after + course)) == [["Elder", "Lily of the valley", "Ramsons"]]


def test_a_circle_of_rules_does_not_keep_a_session_from_being_told() -> None:
    after = "after: {Ramsons: Elder, Elder: Ramsons}\nplants: [Ramsons, Elder]\n"
    course = f"{after}sessions:\n  - {{date: 2027-04-20, plants: [Elder, Ramsons]}}\n"
    assert taught(planned(course)) == [["Elder", "Ramsons"]]


def test_a_plant_knows_what_is_taught_before_it() -> None:
    plan = planned(
        "after: {Ramsons: [Elder, Lily of the valley, Yew]}\nsessions: [{date: 2027-04-20}]"
    )
    after = {t.lesson.name: [x.name for x in t.after] for t in plan.meetings[0].taught}
    assert after["Ramsons"] == ["Lily of the valley", "Elder"]
    assert after["Elder"] == after["Lily of the valley"] == []


@pytest.mark.parametrize(
    "course",
    ["after: {Ramsons: Ramsons}\nsessions: [{date: 2027-04-20, plants: [Ramsons]}]",
     ("after: {Ramsons: Elder, Elder: Ramsons}\n"
      "sessions: [{date: 2027-04-20, plants: [Elder, Ramsons]}]"),
     ("after: {Ramsons: Elder}\nsessions:\n  - {date: 2027-04-20, plants: [Ramsons]}\n"
      "  - {date: 2027-06-05, plants: [Elder]}"),
     ("after: {Ramsons: Elder}\nplants: [Ramsons, Elder]\n"
      "sessions: [{date: 2027-04-20, plants: [Ramsons], holds: 1}]")],
    ids=["itself", "circle", "named the other way round", "no room for the first"],
)  # fmt: skip
def test_no_plant_is_said_to_come_after_one_that_does_not_come_before_it(course: str) -> None:
    assert [
        t.after for meeting in planned(course).meetings for t in meeting.taught if t.after
    ] == []


@pytest.mark.parametrize(
    ("lily", "near"),
    [(1, [("Lily of the valley", 1)]), (2, [("Lily of the valley", 2)]), (3, [])],
)
def test_look_alikes_are_near_in_the_same_session_and_in_the_next(
    lily: int, near: list[tuple[str, int]]
) -> None:
    plants = {1: ["Ramsons"], 2: ["Elder"], 3: []}
    plants[lily] = [*plants[lily], "Lily of the valley"]
    sessions = [f"{{date: 2027-04-{20 + n}, plants: {names}}}" for n, names in plants.items()]
    plan = planned(f"sessions: [{', '.join(sessions)}]\n".replace("'", ""))
    ramsons = plan.meetings[0].taught[0]
    assert [(lesson.name, session) for lesson, session in ramsons.near] == near


def test_what_else_may_be_met_is_food_that_is_gathered_and_any_part_of_a_plant_that_harms() -> None:
    plan = planned("""
sessions:
  - {date: 2027-04-05, plants: [Elder]}
  - {date: 2027-08-05, plants: [Elder]}
  - {date: 2027-12-05, plants: [Lily of the valley, Ramsons]}
""")
    also = [[what.year.lesson.name for what in meeting.also] for meeting in plan.meetings]
    assert also == [["Ramsons"], ["Lily of the valley"], []]


# ---- out of season, out of room -----------------------------------------------------------


def test_out_of_season_the_nearest_date_is_told_in_season_none() -> None:
    plan = planned("""
sessions:
  - {date: 2027-04-24, plants: [Ramsons]}
  - {date: 2027-07-01, plants: [Elder, Lily of the valley]}
""")
    nearest = {t.lesson.name: t.nearest for m in plan.meetings for t in m.taught}
    assert nearest == {
        "Ramsons": None,
        "Elder": date(2027, 6, 30),
        "Lily of the valley": date(2027, 4, 30),
    }


def test_what_no_session_has_room_for_is_told_with_the_date_nearest_to_one() -> None:
    plan = planned("""
sessions:
  - {date: 2027-04-20, holds: 0}
  - {date: 2027-08-02, plants: [Ramsons, Lily of the valley], holds: 1}
""")
    assert taught(plan) == [[], ["Ramsons", "Lily of the valley"]]
    left = [(u.what.year.lesson.name, u.nearest) for u in plan.unplaced]
    assert left == [("Elder", date(2027, 9, 1))]


def test_without_sessions_nothing_is_taught_and_no_date_is_near() -> None:
    plan = planned("plants: [Elder]\n")
    assert plan.meetings == ()
    assert [(u.what.year.lesson.name, u.nearest) for u in plan.unplaced] == [("Elder", None)]


def test_without_plants_the_sessions_are_empty() -> None:
    plan = plan_of({"course.yml": "sessions:\n  - date: 2027-04-20\n"})
    assert (taught(plan), plan.plants, plan.unplaced) == ([[]], (), ())


def test_a_plant_without_a_time_is_taught_and_has_no_nearest_date() -> None:
    files: Mapping[str, str] = {
        "yew.md": "---\nname: Yew\n---\n## Season\n- leaves: when it likes\n"
    }
    plan = plan_of({"course.yml": "sessions: [{date: 2027-04-20}]\n", **files})
    (only,) = plan.meetings[0].taught
    assert (only.lesson.name, only.in_season, only.nearest) == ("Yew", False, None)


# ---- rules that the named plants break ---------------------------------------------------------------


@pytest.mark.parametrize(
    ("course", "broken"),
    [("after: {Ramsons: Lily of the valley}", set()),
     ("after: {Ramsons: Ramsons}", set()),
     ("after: {Ramsons: Elder, Elder: wild garlic}", set()),
     (("after: {Ramsons: Elder}\nsessions:\n  - {date: 2027-04-20, plants: [Ramsons]}\n"
      "  - {date: 2027-06-05, plants: [Elder]}"), {("elder", "ramsons")}),
     ("after: {Ramsons: Elder}\nsessions:\n  - {date: 2027-04-20, plants: [Ramsons, Elder]}", set()),
     ("after: {Yew: Elder}", set())],
)  # fmt: skip
def test_rules_of_order_that_the_named_plants_break_are_found_but_no_circles(
    course: str, broken: set[tuple[str, str]]
) -> None:
    read_in, bank = read(course)
    assert broken_rules(read_in, bank, taught_lessons(read_in, bank)) == broken


# ---- the nearest date ---------------------------------------------------------------------


def year_on(*days: int) -> PlantYear:
    """Return the year of a plant that is seen on some days of May."""
    times = ", ".join(f"{day}–{day} May" for day in days)
    course = read_course(Source("course.yml", ""))
    bank = bank_of({"a.md": f"## Season\n- leaves: {times}\n"})
    return plant_years(course, bank)["a"]


@pytest.mark.parametrize(
    ("dates", "nearest"),
    [([date(2027, 5, 10)], date(2027, 5, 10)), ([date(2027, 5, 13)], date(2027, 5, 10)),
     ([date(2027, 5, 15)], date(2027, 5, 20)), ([date(2027, 5, 1), date(2028, 5, 19)], date(2028, 5, 20)),
     ([date(2027, 12, 31)], date(2028, 5, 10)), ([date(2028, 2, 29)], date(2028, 5, 10)), ([], None)],
)  # fmt: skip
def test_the_nearest_date_is_the_later_of_two(dates: list[date], nearest: date | None) -> None:
    assert nearest_date(teachable(year_on(10, 20)), dates) == nearest


@given(st.dates(date(2026, 1, 1), date(2032, 12, 31)), st.integers(1, 31))
def test_no_date_in_season_lies_between_a_date_and_the_nearest(start: date, day: int) -> None:
    what = teachable(year_on(day))
    nearest = nearest_date(what, [start])
    assert nearest is not None
    assert what.is_on(day_of(nearest))
    apart = abs((nearest - start).days)
    assert not any(
        what.is_on(day_of(start + timedelta(days=days))) for days in range(1 - apart, apart)
    )
