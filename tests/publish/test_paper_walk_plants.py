"""A plant of the day on the walk sheet."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

import pytest

from helpers.courses import site_of
from helpers.papers import demo_site
from helpers.workshop import lesson_of
from helpers.years import year_of
from sallet.lesson.vocabulary_file import load_vocabulary
from sallet.publish.paper_walk_plants import (
    about_words,
    is_on_show,
    settled_data,
    taught_data,
    telling_data,
    tellings_of,
)
from sallet.season.teachable import day_of
from sallet.season.visible import Visible

if TYPE_CHECKING:
    from sallet.publish.site import Site

RAMSONS = """---
name: Ramsons
scientific name: Allium ursinum L.
---
## Identification
### Leaves
- **venation**: parallel
  Side by side.
- smell when crushed: garlic
### Flowers
- **inflorescence**: umbel
  - on the card: all stalks from one point
## Look-alikes
### Lily of the valley
Two leaves from one shoot.
- settled by: patches marked in *flower*
### Few-flowered garlic
Narrow.
- danger: harmless
## Season
- leaves: March to June
- flowers: late April to June
## Edible parts
- leaves: March to May; raw
"""
LILY = """---
name: Lily of the valley
taught as: look-alike
danger: poisonous
written by: Ann
checked by: Joe, 2027-03-01
---
## Identification
### Leaves
- smell when crushed: none
### Fruit
- **kind**: berry
## Look-alikes
### Ramsons
It smells of garlic.
## Season
- leaves: April to August
"""
SAFFRON = """---
name: Meadow saffron
taught as: look-alike
danger: deadly
---
## Look-alikes
### Ramsons
It has stalks.
## Season
- leaves: April to June
"""
LESSONS = {"ramsons.md": RAMSONS, "lily.md": LILY}


def walk(day: str, plants: str, **changed: str) -> Site:
    """Return the site of a course with one session that teaches some plants."""
    session = f"{{date: {day}, plants: [{plants}], holds: 0}}"
    texts = {**LESSONS, **{f"{slug}.md": text for slug, text in changed.items()}}
    return site_of({**texts, "course.yml": f"sessions:\n  - {session}\n"})


def taught_on(day: str, plant: str, **changed: str) -> dict[str, object]:
    """Return a plant of the day as the sheet is given it."""
    site = walk(day, plant, **changed)
    (taught,) = site.plan.meetings[0].taught
    return taught_data(taught, site)


def test_a_food_plant_has_its_stage_its_marks_and_what_it_is_told_from() -> None:
    assert taught_on("2027-03-20", "Ramsons") == {
        "name": "Ramsons",
        "scientific": "Allium ursinum L.",
        "danger": "food",
        "shape": "❧",
        "word": "food",
        "food": True,
        "unread": "Not yet checked by a second reader",
        "stages": "leaves to eat",
        "taken_for": "",
        "not_now": "",
        "marks": [[["Leaves, venation:", "strong"], [" parallel. Side by side.", "plain"]]],
        "no_mark": False,
        "hidden": ["Flowers, inflorescence"],
        "told": [
            {
                "danger": "poisonous",
                "shape": "▲",
                "word": "poisonous",
                "name": "Lily of the valley",
                "about": "",
                "look_at": ["Leaves, smell when crushed: garlic; Lily of the valley: none"],
                "sure": False,
                "settled": [
                    ["Made sure by: patches marked in ", "plain"],
                    ["flower", "emphasis"],
                ],
            }
        ],
        "doubles": [
            {
                "name": "Few-flowered garlic",
                "danger": "harmless",
                "shape": "○",
                "word": "harmless",
            }
        ],
    }


def test_a_plant_to_keep_away_from_says_what_it_is_taken_for() -> None:
    assert taught_on("2027-05-01", "Lily of the valley") == {
        "name": "Lily of the valley",
        "scientific": "",
        "danger": "poisonous",
        "shape": "▲",
        "word": "poisonous",
        "food": False,
        "unread": "",
        "stages": "leaves",
        "taken_for": "taken for Ramsons, gathered at the same time",
        "not_now": "",
        "marks": [],
        "no_mark": False,
        "hidden": ["Fruit, kind"],
        "told": [],
        "doubles": [{"name": "Ramsons", "danger": "food", "shape": "❧", "word": "food"}],
    }


def test_out_of_season_the_nearest_date_is_told() -> None:
    data = taught_on("2027-08-20", "Ramsons")
    assert (data["stages"], data["not_now"]) == (
        "its lesson tells of no part on this day",
        "not in season to teach; nearest date 31 May",
    )


def test_a_lesson_without_key_features_says_so() -> None:
    data = taught_on("2027-05-01", "Ramsons", ramsons=RAMSONS.replace("**", ""))
    assert (data["marks"], data["no_mark"], data["hidden"]) == ([], True, [])


def test_a_plant_that_harms_is_told_from_even_where_only_its_own_lesson_names_the_two() -> None:
    data = taught_on("2027-05-01", "Ramsons", saffron=SAFFRON)
    told = data["told"]
    assert isinstance(told, list)
    assert [(one["name"], one["about"], one["sure"], one["settled"]) for one in told] == [
        ("Lily of the valley", "about now", False, told[0]["settled"]),
        ("Meadow saffron", "about now", False, [["Pick none of it.", "plain"]]),
    ]


def test_of_a_look_alike_without_a_lesson_nobody_knows_when_it_is_about() -> None:
    site = walk("2027-05-01", "Ramsons", ramsons=RAMSONS.replace("harmless", "deadly"))
    (taught,) = site.plan.meetings[0].taught
    told = tellings_of(taught, site)
    assert [about_words(telling, taught.day, site) for telling in told] == [
        "about now",
        "when it is about is not told",
    ]


# ---- what can be looked at ----------------------------------------------------------------


@pytest.mark.parametrize(
    ("heading", "line", "expected"),
    [
        ("Leaves", "venation: parallel", True),
        ("Leaves", "margin: entire (lower), toothed (at the nodes)", True),
        ("Flowers", "colour: white", False),
        ("Leaves", "taste: bitter", False),
        ("Whole plant", "growth through the year: spring growth then rest", False),
        ("Leaves", "hum: none", True),
    ],
)
def test_what_is_not_there_tasted_or_waited_for_cannot_be_looked_at(
    heading: str, line: str, *, expected: bool
) -> None:
    """Leaves stand all through May; of flowers nothing is known."""
    text = f"---\nname: Ramsons\n---\n## Identification\n### {heading}\n- {line}\n"
    lesson = lesson_of(f"{text}\n## Season\n- leaves: April to June\n")
    seen = Visible(year_of(lesson.source.text), load_vocabulary())
    (fact,) = lesson.facts
    assert is_on_show(fact, 135, seen) is expected


# ---- as on the pages ----------------------------------------------------------------------


def test_what_tells_plants_apart_is_what_the_page_of_the_sessions_says() -> None:
    """Of every look-alike of every session of the demo course: two ways to the same words."""
    site = demo_site()
    for page in site.sessions:
        foods = [taught for taught in page.meeting.taught if taught.lesson.is_food]
        told = [
            (taught.lesson.name, telling_data(telling, taught.day, site))
            for taught in foods
            for telling in tellings_of(taught, site)
            if telling.look
        ]
        assert [
            (food, t["name"], t["danger"], t["about"] == "about now", t["look_at"], t["sure"])
            for food, t in told
        ] == [
            (w.food.name, w.name, w.danger, w.is_about, list(w.look_at), w.is_sure)
            for w in page.briefing.warned
        ]


def test_a_day_is_sure_only_if_its_whole_week_is() -> None:
    site = demo_site()
    told = site.plan.tellings["ramsons"]
    for telling in told:
        sure = {day for day in range(1, 366) if telling.is_sure_all_week(day)}
        assert not sure & telling.unsure
        for day in sure:
            assert telling.is_sure(day)


def test_without_a_way_to_settle_it_none_is_picked() -> None:
    (telling, *_) = demo_site().plan.tellings["ramsons"]
    settled = replace(telling, settled_by="")
    assert settled_data(settled) == [["Pick none of it.", "plain"]]


def test_the_day_of_a_session_is_the_day_looked_at() -> None:
    site = demo_site()
    for meeting in site.plan.meetings:
        assert {taught.day for taught in meeting.taught} <= {day_of(meeting.session.date)}
