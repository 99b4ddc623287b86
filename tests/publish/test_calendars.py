"""The two calendars, read back by icalendar: the sessions, and what can be gathered when."""

from __future__ import annotations

from datetime import date, datetime, timedelta
from typing import TYPE_CHECKING, Any, NamedTuple
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st
from icalendar import Calendar

from helpers.courses import site_of
from sallet.lesson.values.times import day_of_year
from sallet.season.words import day_words

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.publish.site import Site

CERTAIN = "Do not eat what you have not identified with certainty."
PREPARED = "The lesson says which parts to remove, how to prepare it and who should not eat it."
COURSE = """
title: Walks
place: {name: Askerby}
time zone: Europe/London
language: en-GB
plants: [ramsons, lily, yew, watercress]
emergency: [Ring 999 at once, "Or ring 111, if unsure"]
sessions:
  - date: 2027-04-03
    starts: "10:00"
    length: 2 h 30 min
    title: First leaves
    meets at: by the pump
    plants: [Ramsons, Lily, Yew]
    bring: [boots, a lens]
    notes: We fill no basket.
    holds: 0
  - {date: 2027-05-01, holds: 0}
"""
FILES = {
    "ramsons.md": """---
name: Ramsons
---
## Edible parts
- leaves: March to May; raw
- bulbs: late October to February, July; cooked
- leaves: September; cooked
## Look-alikes
### Lily
Two leaves.
- settled by: marked while in flower
### Few-flowered garlic
Narrow.
- danger: harmless
### Arum
Net veins.
- danger: poisonous
- settled by: marked while in flower
""",
    "lily.md": "---\nname: Lily\ntaught as: look-alike\ndanger: deadly\n---\n",
    "yew.md": "---\nname: Yew\ntaught as: look-alike\n---\n",
    "watercress.md": """---
name: Watercress
---
## Edible parts
- shoot tips: all year; cooked
- seeds: when ripe; cooked
""",
}


class Told(NamedTuple):
    """An event as icalendar reads it; its end is the first day or moment behind it."""

    summary: str
    start: date
    end: date
    place: str
    busy: bool
    description: str


def site_with(course: str = COURSE, **lessons: str) -> Site:
    """Return the site of a course, with some lessons changed."""
    changed = {f"{slug}.md": text for slug, text in lessons.items()}
    return site_of({**FILES, **changed, "course.yml": course})


def calendar_of(text: str) -> Calendar:
    """Return a calendar as icalendar reads its bytes, without complaint."""
    read = Calendar.from_ical(text.encode())
    assert isinstance(read, Calendar)
    assert [part.errors for part in read.walk() if part.errors] == []
    return read


def told(text: str) -> list[Told]:
    """Return the events of a calendar."""
    return [told_of(event) for event in calendar_of(text).walk("VEVENT")]


def told_of(event: Any) -> Told:
    """Return an event; where only its length is written, icalendar reckons the end."""
    return Told(
        summary=str(event["SUMMARY"]),
        start=event.start,
        end=event.end,
        place=str(event.get("LOCATION", "")),
        busy=event.get("TRANSP", "OPAQUE") == "OPAQUE",
        description=str(event.get("DESCRIPTION", "")),
    )


def uids(text: str) -> list[str]:
    """Return what names each event."""
    return [str(e["UID"]) for e in calendar_of(text).walk("VEVENT")]


def days(site: Site) -> list[tuple[str, date, date]]:
    """Return of each harvest its name, its first day and the day behind its last."""
    return [(e.summary, e.start, e.end) for e in told(site.calendars["harvest.ics"])]


# ---- sessions -----------------------------------------------------------------------------

SITE = site_with()
LONDON = ZoneInfo("Europe/London")


def test_a_session_tells_all_that_a_student_must_know() -> None:
    assert told(SITE.calendars["sessions.ics"]) == [
        Told(
            "1 First leaves",
            datetime(2027, 4, 3, 10, tzinfo=LONDON),
            datetime(2027, 4, 3, 12, 30, tzinfo=LONDON),
            "by the pump, Askerby",
            busy=True,
            description="Plants: Ramsons, Lily (deadly), Yew (danger not stated)\n"
            "Bring: boots, a lens\n"
            f"We fill no basket.\n{CERTAIN}\nRing 999 at once\nOr ring 111, if unsure",
        ),
        Told(
            "2 Walks",
            date(2027, 5, 1),
            date(2027, 5, 2),
            "Askerby",
            busy=True,
            description=f"{CERTAIN}\nRing 999 at once\nOr ring 111, if unsure",
        ),
    ]


def test_the_village_is_not_named_twice() -> None:
    course = COURSE.replace("meets at: by the pump", "meets at: Askerby, by the pump")
    (first, _) = told(site_with(course).calendars["sessions.ics"])
    assert first.place == "Askerby, by the pump"


def test_the_calendars_have_the_courses_name() -> None:
    names = [str(calendar_of(text)["NAME"]) for text in SITE.calendars.values()]
    assert names == ["Walks", "Walks: what can be gathered"]


def test_a_course_without_a_title_has_calendars_with_a_name_too() -> None:
    made = site_with("plants: [ramsons]\nsessions:\n  - date: 2027-04-03\n").calendars
    assert [str(calendar_of(text)["NAME"]) for text in made.values()] == [
        "Sessions", "Course: what can be gathered",
    ]  # fmt: skip


# ---- names of events ----------------------------------------------------------------------


def test_no_two_events_have_one_name() -> None:
    """Though a lesson tells of one part in two places, and a window has two occurrences."""
    found = [uid for text in SITE.calendars.values() for uid in uids(text)]
    assert len(found) == len(set(found)) > 5


@pytest.mark.parametrize(
    ("old", "new"), [("2027-05-01", "2027-05-08"), ("2027-04-03", "2027-04-10")]
)
def test_a_session_that_is_moved_replaces_its_old_entry(old: str, new: str) -> None:
    moved = site_with(COURSE.replace(old, new)).calendars
    assert uids(moved["sessions.ics"]) == uids(SITE.calendars["sessions.ics"])
    assert uids(moved["harvest.ics"]) == uids(SITE.calendars["harvest.ics"])
    assert date.fromisoformat(new).timetuple()[:3] in [
        e.start.timetuple()[:3] for e in told(moved["sessions.ics"])
    ]


def test_events_of_another_course_have_other_names() -> None:
    other = site_with(COURSE.replace("title: Walks", "title: Strolls")).calendars
    for path, text in SITE.calendars.items():
        assert set(uids(text)).isdisjoint(uids(other[path]))


def test_the_same_course_gives_the_same_bytes() -> None:
    assert site_with().calendars == SITE.calendars


# ---- what can be gathered -----------------------------------------------------------------


def test_every_window_of_an_edible_part_is_there_in_the_years_of_the_course() -> None:
    """Whole days, the end is the first day behind; over the new year in both its winters."""
    assert days(SITE) == [
        ("Ramsons: leaves", date(2027, 3, 1), date(2027, 6, 1)),
        ("Ramsons: bulbs", date(2026, 10, 21), date(2027, 3, 1)),
        ("Ramsons: bulbs", date(2027, 10, 21), date(2028, 3, 1)),
        ("Ramsons: bulbs", date(2027, 7, 1), date(2027, 8, 1)),
        ("Ramsons: leaves", date(2027, 9, 1), date(2027, 10, 1)),
    ]


def test_a_harvest_warns_of_what_is_mistaken_for_it_and_takes_no_time() -> None:
    """What is harmless is not named: the two that are not would be harder to see."""
    first = told(SITE.calendars["harvest.ics"])[0]
    assert first == Told(
        "Ramsons: leaves",
        date(2027, 3, 1),
        date(2027, 6, 1),
        "",
        busy=False,
        description="leaves: March to May\n"
        "Not yet surely told from Lily (deadly): March to May. Made sure by: marked while in flower\n"
        "Not yet surely told from Arum (poisonous): March to May. "
        "Made sure by: marked while in flower\n"
        "Mistaken for it: Lily (deadly), Arum (poisonous)\n"
        f"{CERTAIN} {PREPARED}\nRing 999 at once\nOr ring 111, if unsure",
    )


def test_a_course_over_two_years_has_the_harvests_of_both() -> None:
    course = COURSE.replace("2027-05-01", "2028-05-01").replace("[ramsons, ", "[elder, ")
    elder = "---\nname: Elder\n---\n## Edible parts\n- flowers: June; cooked\n"
    site = site_with(course, elder=elder)
    assert [day for name, *day in days(site) if name == "Elder: flowers"] == [
        [date(2027, 6, 1), date(2027, 7, 1)],
        [date(2028, 6, 1), date(2028, 7, 1)],
    ]


def test_the_29th_of_february_is_gathered_as_the_28th() -> None:
    course = COURSE.replace("2027", "2028")
    site = site_with(
        course, ramsons="---\nname: Ramsons\n---\n## Edible parts\n- roots: February; raw\n"
    )
    assert days(site) == [("Ramsons: roots", date(2028, 2, 1), date(2028, 3, 1))]


def test_a_window_that_ends_with_the_year_ends_there() -> None:
    text = "---\nname: Ramsons\n---\n## Edible parts\n- roots: December; raw\n"
    assert days(site_with(ramsons=text)) == [
        ("Ramsons: roots", date(2027, 12, 1), date(2028, 1, 1))
    ]


@given(st.integers(1, 365), st.integers(1, 365))
def test_the_days_of_a_harvest_are_those_of_its_window(first: int, last: int) -> None:
    """Each day of the course's year is in an event if, and only if, the lesson has it."""
    text = f"- roots: {day_words(first)} – {day_words(last)}; raw\n"
    site = site_with(ramsons=f"---\nname: Ramsons\n---\n## Edible parts\n{text}")
    (year,) = (year for year in site.years if year.lesson.slug == "ramsons")
    (window,) = year.eaten[0].windows
    found = set() if len(window.days) == 365 else gathered(days(site), 2027)
    assert found == (set() if len(window.days) == 365 else set(window.days))


def gathered(events: list[tuple[str, date, date]], year: int) -> set[int]:
    """Return the days of a year on which something is gathered, as days of the year."""
    found = set()
    for _, start, end in events:
        for ahead in range((end - start).days):
            day = start + timedelta(days=ahead)
            found |= {day_of_year(day.month, day.day)} if day.year == year else set()
    return found


def test_an_estimate_says_that_it_is_about() -> None:
    """Three degrees to the north: 12 days later in spring, by Hopkins' 4 days a degree."""
    seen = "seen at: {latitude: 54.4, longitude: -2.6, elevation: 150 m}"
    text = f"---\nname: Ramsons\n{seen}\n---\n## Edible parts\n- leaves: March to May; raw\n"
    place = "{name: Askerby, latitude: 57.4, longitude: -2.6, elevation: 150 m}"
    site = site_with(COURSE.replace("{name: Askerby}", place), ramsons=text)
    (leaves,) = told(site.calendars["harvest.ics"])
    assert (leaves.start, leaves.end) == (date(2027, 3, 13), date(2027, 6, 13))
    assert leaves.description.startswith("leaves: about mid March to mid June\n")


def test_what_is_there_all_year_is_left_out_and_named() -> None:
    assert [(lesson.name, part) for lesson, part in SITE.gathered_all_year] == [
        ("Watercress", "shoot tips")
    ]
    assert not any("Watercress" in name for name, *_ in days(SITE))


@pytest.mark.parametrize(
    "files",
    [{}, {"ramsons.md": "---\nname: Ramsons\n---\n## Edible parts\n- leaves: all year; raw\n"},
     {"ramsons.md": "---\nname: Ramsons\ntaught as: look-alike\n---\n## Season\n- leaves: May\n"}],
)  # fmt: skip
def test_where_nothing_is_gathered_in_a_part_of_the_year_there_is_no_calendar(
    files: Mapping[str, str],
) -> None:
    site = site_of({**files, "course.yml": "title: Walks\nsessions:\n  - date: 2027-04-03\n"})
    assert list(site.calendars) == ["sessions.ics"]
