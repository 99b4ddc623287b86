"""The course as its pages show it."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from helpers.courses import site_of

if TYPE_CHECKING:
    from sallet.lesson.model import Lesson

COURSE = """
title: Hedge
about: See [elder](elder.md#season) and [the yew](yew.md).
plants: [ramsons, elder, hemlock, bramble]
sessions:
  - {date: 2027-06-12, starts: "14:00", title: Second, plants: [Elder, Nobody]}
  - {date: 2027-06-12, starts: "9:30", title: First, notes: "Bring [ramsons](ramsons.md)."}
  - {date: 2027-04-03, title: Early, plants: [Ramsons]}
"""
FILES = {
    "course.yml": COURSE,
    "ramsons.md": """---
name: Ramsons
---
Garlic.[^stace][^memory]

## Edible parts
- leaves: March to May; raw

[^stace]: Stace, New Flora.
[^unused]: Nobody.
[^memory]: From memory.
""",
    "elder.md": """---
name: Elder
---
Flowers.[^s]

## Edible parts
- flowers: June; cooked

## Season
- leaves: April to October

[^s]: Stace, New Flora.
""",
    "hemlock.md": """---
name: Hemlock
taught as: look-alike
danger: deadly
---
Smooth.[^a]

## Season
- leaves: April to August

[^a]: a flora.
""",
    "bramble.md": "---\nname: Bramble\n---\n## Edible parts\n- fruit: August; raw\n",
    "yew.md": "---\nname: Yew\ntaught as: look-alike\n---\n",
}
SITE = site_of(FILES)


def names(lessons: tuple[Lesson, ...]) -> list[str]:
    """Return the names of lessons."""
    return [lesson.name for lesson in lessons]


def test_the_plants_come_in_season_order() -> None:
    order = ["Ramsons", "Hemlock", "Elder", "Bramble"]
    assert names(SITE.ordered) == order
    assert [sheet.lesson.name for sheet in SITE.sheets] == order


def test_food_and_what_to_keep_away_from_are_told_apart() -> None:
    assert [sheet.lesson.name for sheet in SITE.food] == ["Ramsons", "Elder", "Bramble"]
    assert [sheet.lesson.name for sheet in SITE.kept_away_from] == ["Hemlock"]


def test_every_plant_has_its_neighbours_in_the_season() -> None:
    found = [SITE.neighbours(sheet) for sheet in SITE.sheets]
    assert [(a and a.name, b and b.name) for a, b in found] == [
        (None, "Hemlock"), ("Ramsons", "Elder"), ("Hemlock", "Bramble"), ("Elder", None),
    ]  # fmt: skip


def test_the_sessions_come_by_day_and_hour() -> None:
    assert [(m.number, m.session.title) for m in SITE.meetings] == [
        (1, "Early"), (2, "First"), (3, "Second"),
    ]  # fmt: skip


def test_a_session_teaches_its_plants_and_tells_what_else_is_about() -> None:
    found = [(names(m.plants), names(m.also_food), names(m.also_harm)) for m in SITE.meetings]
    assert found == [
        (["Ramsons"], [], ["Hemlock"]),
        ([], ["Elder"], ["Hemlock"]),
        (["Elder"], [], ["Hemlock"]),
    ]


@pytest.mark.parametrize(
    ("day", "about"),
    [("2027-05-31", []), ("2027-06-01", ["Elder"]), ("2027-06-30", ["Elder"]), ("2027-07-01", []),
     ("2028-05-31", []), ("2028-06-01", ["Elder"]), ("2028-06-30", ["Elder"]), ("2028-07-01", [])],
)  # fmt: skip
def test_what_is_about_is_told_by_the_calendar_in_leap_years_too(
    day: str, about: list[str]
) -> None:
    course = f"plants: [elder]\nsessions:\n  - date: {day}\n"
    (meeting,) = site_of({**FILES, "course.yml": course}).meetings
    assert names(meeting.also_food) == about


@pytest.mark.parametrize("day", ["2028-02-29", "2027-02-28"])
def test_the_29th_of_february_is_as_the_28th(day: str) -> None:
    lesson = "## Edible parts\n- leaves: February; raw\n"
    course = f"sessions:\n  - date: {day}\n"
    (meeting,) = site_of({"course.yml": course, "a.md": lesson}).meetings
    assert names(meeting.also_food) == ["a"]


def test_the_courses_own_words_lead_to_the_plants_it_teaches() -> None:
    elder = '<a href="plants/elder.html#year">elder</a>'
    assert SITE.about == f"<p>See {elder} and <span>the yew</span>.</p>"
    assert SITE.meetings[1].notes == '<p>Bring <a href="plants/ramsons.html">ramsons</a>.</p>'


def test_a_source_is_told_once_with_the_plants_that_cite_it() -> None:
    """In the order of the alphabet; a source that no statement cites is left out."""
    assert [(c.text, names(c.plants)) for c in SITE.sources] == [
        ("a flora.", ["Hemlock"]),
        ("Stace, New Flora.", ["Ramsons", "Elder"]),
    ]


def test_the_words_are_those_of_the_lessons_that_are_taught() -> None:
    used = [(u.subject.name, [x.label.name for x in u.labels]) for u in SITE.words]
    assert used == [("edible parts", ["preparation"])]
