"""The course as its pages show it."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

import pytest

from helpers.courses import site_of
from sallet.season.reasons import CARE, LAW

if TYPE_CHECKING:
    from sallet.lesson.model import Lesson

COURSE = """
title: Hedge
about: See [elder](elder.md#season) and [the yew](yew.md).
plants: [ramsons, elder, hemlock, bramble]
sessions:
  - {date: 2027-06-12, starts: "14:00", title: Second, plants: [Elder, Nobody], holds: 1}
  - {date: 2027-06-12, starts: "9:30", title: First, notes: "Bring [ramsons](ramsons.md).", holds: 0}
  - {date: 2027-04-03, title: Early, plants: [Ramsons], holds: 1}
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
    assert [(s.meeting.number, s.meeting.session.title) for s in SITE.sessions] == [
        (1, "Early"), (2, "First"), (3, "Second"),
    ]  # fmt: skip


def test_a_session_teaches_its_plants_and_tells_what_else_is_about() -> None:
    taught = [[t.lesson.name for t in s.meeting.taught] for s in SITE.sessions]
    assert taught == [["Ramsons"], [], ["Elder"]]
    harm = [[(lesson.name, sure) for lesson, sure in s.also_harm] for s in SITE.sessions]
    assert harm == [[("Hemlock", True)]] * 3
    assert [names(s.also_food) for s in SITE.sessions] == [[], ["Elder"], []]


def test_a_plant_that_harms_is_told_of_on_days_on_which_it_may_be_met() -> None:
    """Its leaves come in April, give or take five days; of the yew no time is told."""
    course = "sessions: [{date: 2027-03-20, holds: 0}, {date: 2027-03-29, holds: 0}]\n"
    found = site_of({**FILES, "course.yml": f"{course}plants: [hemlock, yew]\n"}).sessions
    assert [[(lesson.name, sure) for lesson, sure in s.also_harm] for s in found] == [
        [("Yew", False)], [("Hemlock", False), ("Yew", False)],
    ]  # fmt: skip


def test_what_is_to_be_read_are_the_plants_of_the_next_session() -> None:
    assert [names(s.reading) for s in SITE.sessions] == [[], ["Elder"], []]


def test_only_food_of_the_day_is_tasted() -> None:
    course = "sessions:\n  - {date: 2027-04-03, plants: [Hemlock, Ramsons]}\n"
    (page,) = site_of({**FILES, "course.yml": f"plants: [ramsons, hemlock]\n{course}"}).sessions
    assert names(page.food) == ["Ramsons"]


@pytest.mark.parametrize(
    ("day", "about"),
    [("2027-05-31", []), ("2027-06-01", ["Elder"]), ("2027-06-30", ["Elder"]), ("2027-07-01", []),
     ("2028-05-31", []), ("2028-06-01", ["Elder"]), ("2028-06-30", ["Elder"]), ("2028-07-01", [])],
)  # fmt: skip
def test_what_is_about_is_told_by_the_calendar_in_leap_years_too(
    day: str, about: list[str]
) -> None:
    course = f"plants: [elder]\nsessions:\n  - {{date: {day}, holds: 0}}\n"
    (page,) = site_of({**FILES, "course.yml": course}).sessions
    assert names(page.also_food) == about


@pytest.mark.parametrize("day", ["2028-02-29", "2027-02-28"])
def test_the_29th_of_february_is_as_the_28th(day: str) -> None:
    lesson = "## Edible parts\n- leaves: February; raw\n"
    course = f"sessions:\n  - {{date: {day}, holds: 0}}\n"
    (page,) = site_of({"course.yml": course, "a.md": lesson}).sessions
    assert names(page.also_food) == ["a"]


def test_the_courses_own_words_lead_to_the_plants_it_teaches() -> None:
    elder = '<a href="plants/elder.html#year">elder</a>'
    assert SITE.about == f"<p>See {elder} and <span>the yew</span>.</p>"
    assert SITE.sessions[1].notes == '<p>Bring <a href="plants/ramsons.html">ramsons</a>.</p>'


def test_a_source_is_told_once_with_the_plants_that_cite_it() -> None:
    """In the order of the alphabet; a source that no statement cites is left out."""
    assert [(c.text, names(c.plants)) for c in SITE.sources] == [
        ("a flora.", ["Hemlock"]),
        ("Stace, New Flora.", ["Ramsons", "Elder"]),
    ]


def test_the_words_are_those_of_the_lessons_that_are_taught() -> None:
    used = [(u.subject.name, [x.label.name for x in u.labels]) for u in SITE.words]
    assert used == [("edible parts", ["preparation"])]


# ---- words set on a page that is not the plant's own --------------------------------------


def test_a_look_alikes_words_lead_to_the_plants_page_from_the_page_of_all() -> None:
    """Its source, a heading of its own lesson and another lesson: all lie in another folder."""
    text = (
        "## Look-alikes\n### Yew\nDark.[^f] See [who](#cautions) and [the elder](elder.md).[^memory]\n"
        "\n## Cautions\n- dogs: ill.\n\n[^f]: Flora.\n[^memory]: From memory.\n"
    )
    site = site_of({"course.yml": "", "a.md": text, "elder.md": FILES["elder.md"]})
    ((lesson, (yew,)),) = site.mistaken
    assert lesson.slug == "a"
    assert re.findall(r'href="([^"]+)"', yew.tell) == [
        "plants/a.html#source-1", "plants/a.html#cautions", "plants/elder.html",
        "plants/a.html#source-memory",
    ]  # fmt: skip


def test_a_look_alikes_own_page_is_found_from_the_page_of_all() -> None:
    text = "## Look-alikes\n### Yew\nDark.\n"
    ((_, (yew,)),) = site_of({"course.yml": "", "a.md": text, "yew.md": FILES["yew.md"]}).mistaken
    assert yew.page == "plants/yew.html"


def test_a_source_that_speaks_of_its_lesson_leads_to_the_plants_page() -> None:
    text = (
        "Dark.[^f]\n\n## Cautions\n- dogs: ill.\n\n"
        "[^f]: Flora, as [here](#cautions).[^memory]\n[^memory]: From memory.\n"
    )
    (cited,) = site_of({"course.yml": "", "a.md": text}).sources
    assert re.findall(r'href="([^"]+)"', cited.text) == [
        "plants/a.html#cautions", "plants/a.html#source-memory",
    ]  # fmt: skip


def test_what_the_course_says_from_memory_says_so_without_a_link() -> None:
    about = site_of({"course.yml": "about: Old.[^memory]\n"}).about
    assert "from memory, not yet checked" in about
    assert "<a " not in about


# ---- calendars ----------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("course", "files"),
    [("sessions:\n  - date: 2027-04-03\n", ["sessions.ics", "harvest.ics"]),
     ("plants: [hemlock]\nsessions:\n  - date: 2027-04-03\n", ["sessions.ics"]),
     ("plants: [ramsons]\n", [])],
)  # fmt: skip
def test_a_calendar_that_would_be_empty_is_not_made(course: str, files: list[str]) -> None:
    assert list(site_of({**FILES, "course.yml": course}).calendars) == files


# ---- where the dates come from ------------------------------------------------------------

SEEN = "seen at: {latitude: 54.4, longitude: -2.6, elevation: 150 m}"
HERE = "place: {latitude: 57.4, longitude: -2.6, elevation: 150 m}\n"
"""Three degrees to the north: by Hopkins' law spring is 12 days later."""


def test_dates_are_moved_as_soon_as_one_plants_are() -> None:
    seen = {
        **FILES,
        "ramsons.md": FILES["ramsons.md"].replace("name: Ramsons", f"name: Ramsons\n{SEEN}"),
    }
    assert site_of({**seen, "course.yml": HERE}).dates_are_moved
    assert not site_of({**seen, "course.yml": HERE.replace("57", "54")}).dates_are_moved


def test_the_commonest_reason_stands_first_and_the_others_with_their_plants() -> None:
    seen = {
        **FILES,
        "ramsons.md": FILES["ramsons.md"].replace("name: Ramsons", f"name: Ramsons\n{SEEN}"),
    }
    moved = (
        "Ramsons: estimated from what was seen at 54.4° N, 2.6° W, 150 m above the sea; "
        "spring about 12 days later, autumn about 12 days earlier (+12.0 days for 3.0° of latitude "
        "nearer the pole)."
    )
    assert site_of({**seen, "course.yml": HERE}).year_notes == (
        "The lesson does not say where its times were seen, so they stand as written.",
        moved,
        f"{LAW} {CARE}",
    )
