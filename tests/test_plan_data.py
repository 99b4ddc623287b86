"""The plan for programs."""

from __future__ import annotations

import json
from datetime import date
from typing import TYPE_CHECKING, Any

import pytest

from helpers.workshop import bank_of
from sallet.course.reading import read_course
from sallet.course.teaching import taught_lessons
from sallet.plan_data import plan_json
from sallet.season.planning import make_plan
from sallet.source import Source

if TYPE_CHECKING:
    from sallet.course.model import Course
    from sallet.season.plan import Plan

RAMSONS = """---
name: Ramsons
seen at: {latitude: 51.4, longitude: -2.6, elevation: 150 m}
---
## Look-alikes
### Lily of the valley
- settled by: marked while in flower
## Season
- flowers: May
## Edible parts
- leaves: April; raw
"""
LILY = """---
name: Lily of the valley
taught as: look-alike
danger: poisonous
---
## Season
- leaves: mid April to September
- fruit: when it likes
"""
ELDER = "---\nname: Elder\n---\n## Edible parts\n- flowers: December to January; boiled\n"
FILES = {"ramsons.md": RAMSONS, "lily.md": LILY, "elder.md": ELDER}
COURSE = """
title: Hedge
place: {name: Askerby, latitude: 54.4, longitude: -2.6, elevation: 150 m}
after: {Ramsons: Lily of the valley}
seen here: {Ramsons flowers: 11 May 2026}
sessions:
  - date: 2027-04-20
    starts: "10:00"
    length: 2 h 30 min
    title: Leaves
    meets at: the pump
    holds: 2
    plants: [Lily of the valley, Ramsons]
  - {date: 2027-08-02, plants: [Lily of the valley], holds: 1}
"""


def made(text: str) -> tuple[Plan, Course]:
    """Return the plan of a course, and the course."""
    course, bank = read_course(Source("course.yml", text)), bank_of(FILES)
    return make_plan(course, bank, taught_lessons(course, bank)), course


def planned(text: str, on: date) -> dict[str, Any]:
    """Return the plan of a course as a program reads it."""
    read: dict[str, Any] = json.loads(plan_json(*made(text), on))
    return read


WHOLE = """{
  "course": "Hedge",
  "place": {"name": "Askerby", "latitude": 54.4, "longitude": -2.6, "elevation": 150.0},
  "taught in season": 2,
  "look-alike pairs": {"all": 1, "together": 1},
  "plants": [
    {
      "plant": "elder",
      "name": "Elder",
      "taught as": "food",
      "danger": null,
      "moved": {
        "spring": 0.0,
        "autumn": 0.0,
        "half year": 0,
        "left out": ["no place seen"],
        "seen here": []
      },
      "parts": [
        {
          "part": "flowers",
          "eaten": true,
          "when": "December to January",
          "estimate": false,
          "days": [["12-01", "01-31"]]
        }
      ],
      "not yet sure": []
    },
    {
      "plant": "ramsons",
      "name": "Ramsons",
      "taught as": "food",
      "danger": null,
      "moved": {
        "spring": 10.0,
        "autumn": -10.0,
        "half year": 0,
        "left out": [],
        "seen here": ["Ramsons flowers"]
      },
      "parts": [
        {
          "part": "leaves",
          "eaten": true,
          "when": "about mid April to early May",
          "estimate": true,
          "days": [["04-11", "05-10"]]
        },
        {
          "part": "flowers",
          "eaten": false,
          "when": "11 May to about early June",
          "estimate": true,
          "days": [["05-11", "06-10"]]
        }
      ],
      "not yet sure": [
        {
          "look-alike": "Lily of the valley",
          "danger": "poisonous",
          "days": [["04-11", "05-10"]],
          "settled by": "marked while in flower"
        }
      ]
    },
    {
      "plant": "lily",
      "name": "Lily of the valley",
      "taught as": "look-alike",
      "danger": "poisonous",
      "moved": {
        "spring": 0.0,
        "autumn": 0.0,
        "half year": 0,
        "left out": ["no place seen"],
        "seen here": []
      },
      "parts": [
        {
          "part": "leaves",
          "eaten": false,
          "when": "mid April to September",
          "estimate": false,
          "days": [["04-11", "09-30"]]
        },
        {
          "part": "fruit",
          "eaten": false,
          "when": "when it likes",
          "estimate": false,
          "days": []
        }
      ],
      "not yet sure": []
    }
  ],
  "sessions": [
    {
      "session": 1,
      "date": "2027-04-20",
      "starts": "10:00",
      "minutes": 150,
      "title": "Leaves",
      "meets at": "the pump",
      "holds": 2,
      "plants": [
        {
          "plant": "lily",
          "in season": true,
          "stages": ["leaves"],
          "named in course.yml": true,
          "taken for": ["ramsons"],
          "look-alikes near": [{"plant": "ramsons", "session": 1}],
          "after": [],
          "nearest": null
        },
        {
          "plant": "ramsons",
          "in season": true,
          "stages": ["leaves to eat"],
          "named in course.yml": true,
          "taken for": [],
          "look-alikes near": [
            {"plant": "lily", "session": 1},
            {"plant": "lily", "session": 2}
          ],
          "after": ["lily"],
          "nearest": null
        }
      ]
    },
    {
      "session": 2,
      "date": "2027-08-02",
      "starts": null,
      "minutes": null,
      "title": "",
      "meets at": "",
      "holds": 1,
      "plants": [
        {
          "plant": "lily",
          "in season": false,
          "stages": ["leaves"],
          "named in course.yml": true,
          "taken for": [],
          "look-alikes near": [{"plant": "ramsons", "session": 1}],
          "after": [],
          "nearest": "2027-05-10"
        }
      ]
    }
  ],
  "out of season": [],
  "without a session": [{"plant": "elder", "nearest": "2027-01-31"}],
  "today": {
    "date": "2027-04-25",
    "in season": [
      {"plant": "ramsons", "stages": ["leaves to eat"]},
      {"plant": "lily", "stages": ["leaves"]}
    ],
    "to keep away from": [{"plant": "lily", "stages": ["leaves"], "sure": true}]
  }
}"""


def test_the_whole_plan_is_told() -> None:
    assert planned(COURSE, date(2027, 4, 25)) == json.loads(WHOLE)


def test_every_plant_of_the_course_stands_in_it_whether_or_not_it_is_taught() -> None:
    for course in (COURSE, "", "sessions: [{date: 2027-04-20, holds: 0}]\n"):
        plan = planned(course, date(2027, 4, 25))
        assert sorted(plant["plant"] for plant in plan["plants"]) == ["elder", "lily", "ramsons"]


def test_without_place_and_sessions_there_is_nothing_where_nothing_is_known() -> None:
    plan = planned("plants: [Elder]\n", date(2027, 12, 31))
    assert plan["place"] == {"name": "", "latitude": None, "longitude": None, "elevation": None}
    assert plan["sessions"] == plan["out of season"] == []
    assert plan["without a session"] == [{"plant": "elder", "nearest": None}]


def test_what_is_never_taught_in_season_is_told_with_its_session() -> None:
    course = "plants: []\nsessions: [{date: 2027-08-02, plants: [Elder]}]\n"
    late = planned(course, date(2027, 4, 25))["out of season"]
    assert late == [{"plant": "elder", "session": 1, "nearest": "2027-12-01"}]


@pytest.mark.parametrize(
    ("day", "told"),
    [(date(2027, 8, 2), [{"plant": "lily", "stages": ["leaves"], "sure": True}]),
     (date(2027, 12, 2), [{"plant": "lily", "stages": [], "sure": False}])],
)  # fmt: skip
def test_what_harms_is_told_of_on_every_day_on_which_it_may_be_met(
    day: date, told: list[dict[str, Any]]
) -> None:
    """The lesson's word for the time of its fruit cannot be read: it may be met on any day."""
    assert planned(COURSE, day)["today"]["to keep away from"] == told


def test_days_that_stay_where_they_are_move_by_nothing_and_not_by_less() -> None:
    """Some programs tell `-0.0` from `0.0`."""
    text = plan_json(*made("plants: [Elder]\n"), date(2027, 4, 25))
    assert '"spring": 0.0' in text
    assert "-0.0" not in text
