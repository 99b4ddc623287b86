"""The plan as a teacher reads it on a terminal."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from typing import TYPE_CHECKING

import pytest
from hypothesis import given
from hypothesis import strategies as st

from helpers.workshop import bank_of
from sallet.course.reading import read_course
from sallet.course.teaching import taught_lessons
from sallet.plan_text import moved_text, plan_text
from sallet.season.planning import make_plan
from sallet.season.spots import place_at
from sallet.source import Source

if TYPE_CHECKING:
    from collections.abc import Mapping

SEEN_AT = "seen at: {latitude: 54.4, longitude: -2.6, elevation: 150 m}\n"
RAMSONS = f"""---
name: Ramsons
{SEEN_AT}---
## Look-alikes
### Lily of the valley
- settled by: marked while in flower
## Season
- leaves: March to June
- flowers: May
## Edible parts
- leaves: April; raw
"""
LILY = f"""---
name: Lily of the valley
taught as: look-alike
danger: poisonous
{SEEN_AT}---
## Season
- leaves: mid April to September
"""
ELDER = f"""---
name: Elder
{SEEN_AT}---
## Season
- leaves: April to November
## Edible parts
- flowers: June; boiled
"""
YEW = "---\nname: Yew\ntaught as: look-alike\n---\n## Season\n- leaves: when it likes\n"
FILES = {"ramsons.md": RAMSONS, "lily.md": LILY, "elder.md": ELDER}
PLACE = """title: Hedge
place: {name: Askerby, latitude: 54.4, longitude: -2.6, elevation: 150 m}
"""
SESSIONS = """sessions:
  - date: 2027-04-20
    starts: "10:00"
    length: 2 h
    title: Green leaves
    meets at: the pump
    holds: 2
  - {date: 2027-06-05, plants: [Elder]}
"""
APRIL = date(2027, 4, 25)


def planned(text: str, on: date = APRIL, width: int = 80, files: Mapping[str, str] = FILES) -> str:
    """Return the plan of a course as text, without its last line end."""
    course, bank = read_course(Source("course.yml", text)), bank_of(files)
    return plan_text(make_plan(course, bank, taught_lessons(course, bank)), course, on, width)


def planned_at(spot: str, text: str, width: int) -> str:
    """Return the plan of a course for another place, and what moves."""
    course, bank = read_course(Source("course.yml", text)), bank_of(FILES)
    lessons = taught_lessons(course, bank)
    there = replace(course, place=place_at(spot), seen_here=())
    here, moved = make_plan(course, bank, lessons), make_plan(there, bank, lessons)
    return f"{plan_text(moved, there, APRIL, width)}\n\n{moved_text(here, moved, width)}"


def test_at_its_own_place_the_times_are_those_of_the_lessons() -> None:
    assert planned(PLACE + SESSIONS) == """\
Hedge · Askerby, 54.4° N, 2.6° W, 150 m above the sea
As seen at 54.4° N, 2.6° W, 150 m above the sea.

3 plants, 2 sessions
Taught in season: 3 of 3 plants
Look-alikes taught in one session or in neighbouring ones: 1 of 1 pair

  1  Tuesday 20 April 2027, 10:00–12:00 · Green leaves
     the pump · 2 plants, room for 2
   · Ramsons – to eat: leaves
       look-alikes in this session (Lily of the valley)
       ! not yet surely told from Lily of the valley (poisonous); made sure by:
         marked while in flower
   · Lily of the valley (poisonous) – to be seen: leaves
       taken for Ramsons, gathered at the same time; look-alikes in this session
       (Ramsons)

  2  Saturday 5 June 2027
     1 plant
   · Elder – to eat: flowers; to be seen: leaves
       named in course.yml

In season on Sunday 25 April 2027
   · Ramsons – to eat: leaves
       ! not yet surely told from Lily of the valley (poisonous); made sure by:
         marked while in flower
   · Lily of the valley (poisonous) – to be seen: leaves; taken for Ramsons,
     gathered at the same time"""  # fmt: skip


def test_at_another_place_they_are_estimates_and_what_moves_is_told_part_by_part() -> None:
    assert planned_at("57.4,-2.6,450", PLACE + SESSIONS, 60) == """\
Hedge · 57.4° N, 2.6° W, 450 m above the sea
Estimated from what was seen at 54.4° N, 2.6° W, 150 m above
the sea; spring about 22 days later, autumn about 22 days
earlier (+12.0 days for 3.0° of latitude nearer the pole;
+9.8 days for 300 m higher).
By Hopkins' law: 4 days for each degree of latitude, each 5
degrees of longitude and each 122 metres (400 feet) of
height. It is an estimate: the weather of a year, a warm
slope or a frost hollow can move a date by weeks.

3 plants, 2 sessions
Taught in season: 0 of 3 plants, the most that course.yml
leaves room for
Look-alikes taught in one session or in neighbouring ones: 1
of 1 pair

  1  Tuesday 20 April 2027, 10:00–12:00 · Green leaves
     the pump · 2 plants, room for 2
   ! Ramsons – not in season; to be seen: leaves; nearest
     date Friday 23 April 2027
       look-alikes in this session (Lily of the valley)
   ! Lily of the valley (poisonous) – not in season; nearest
     date Monday 3 May 2027
       look-alikes in this session (Ramsons)

  2  Saturday 5 June 2027
     1 plant
   ! Elder – not in season; to be seen: leaves; nearest date
     Wednesday 23 June 2027
       named in course.yml

Not in season on the day
   ! Ramsons, session 1: nearest date Friday 23 April 2027,
     3 days later
   ! Lily of the valley (poisonous), session 1: nearest date
     Monday 3 May 2027, 13 days later
   ! Elder, session 2: nearest date Wednesday 23 June 2027,
     18 days later

In season on Sunday 25 April 2027
   · Ramsons – to eat: perhaps leaves
       ! not yet surely told from Lily of the valley
         (poisonous); made sure by: marked while in flower
   ! perhaps to be met, for its times are uncertain: Lily of
     the valley (poisonous)

How the year would move (where the course meets → at the
other place)
   · Ramsons
       leaves to eat: April → about late April to late May
       leaves: March to June → about late March to mid July
       flowers: May → about late May to late June
   · Lily of the valley
       leaves: mid April to September → about early May to
       early September
   · Elder
       flowers to eat: June → about late June to mid July
       leaves: April to November → about late April to early
       November"""  # fmt: skip


def test_without_sessions_there_is_nothing_to_fill() -> None:
    assert planned("plants: [Elder]\n") == """\
Course · place not told
The course does not say where it meets, so the times stand as written.

1 plant; course.yml names no sessions, so there is nothing to fill

In season on Sunday 25 April 2027
   · no plant of this course"""  # fmt: skip


def test_what_is_not_in_season_is_marked_with_the_nearest_date_and_harm_is_never_passed_over() -> (
    None
):
    course = (
        PLACE
        + """
sessions:
  - {date: 2027-07-01, plants: [Elder, Ramsons, Lily of the valley]}
  - {date: 2027-07-08, plants: [Yew]}
"""
    )
    assert planned(course, date(2027, 8, 1), files={**FILES, "yew.md": YEW}) == """\
Hedge · Askerby, 54.4° N, 2.6° W, 150 m above the sea
As seen at 54.4° N, 2.6° W, 150 m above the sea.
Yew: the lesson does not say where its times were seen, so they stand as
written.

4 plants, 2 sessions
Taught in season: 0 of 4 plants, the most that course.yml leaves room for
Look-alikes taught in one session or in neighbouring ones: 1 of 1 pair

  1  Thursday 1 July 2027
     3 plants
   ! Elder – not in season; to be seen: leaves; nearest date Wednesday 30 June
     2027
       named in course.yml
   ! Ramsons – not in season; nearest date Friday 30 April 2027
       named in course.yml; look-alikes in this session (Lily of the valley)
   ! Lily of the valley (poisonous) – not in season; to be seen: leaves; nearest
     date Friday 30 April 2027
       named in course.yml; look-alikes in this session (Ramsons)

  2  Thursday 8 July 2027
     1 plant
   ! Yew (danger not told) – not in season; the lesson gives no time that could
     be read
       named in course.yml

Not in season on the day
   ! Elder, session 1: nearest date Wednesday 30 June 2027, 1 day earlier
   ! Ramsons, session 1: nearest date Friday 30 April 2027, 62 days earlier
   ! Lily of the valley (poisonous), session 1: nearest date Friday 30 April
     2027, 62 days earlier
   ! Yew (danger not told), session 2: the lesson gives no time that could be
     read

In season on Sunday 1 August 2027
   · no plant of this course
   ! to be met too, and to keep away from: Lily of the valley (poisonous)
   ! perhaps to be met, for its times are uncertain: Yew (danger not told)"""  # fmt: skip


def test_what_there_is_no_room_for_is_told() -> None:
    course = (
        PLACE
        + """
sessions:
  - {date: 2027-04-20, plants: [Ramsons], holds: 1}
  - {date: 2027-05-20, holds: 0}
"""
    )
    assert planned(course, date(2027, 1, 1)) == """\
Hedge · Askerby, 54.4° N, 2.6° W, 150 m above the sea
As seen at 54.4° N, 2.6° W, 150 m above the sea.

3 plants, 2 sessions
Taught in season: 1 of 3 plants, the most that course.yml leaves room for
Look-alikes taught in one session or in neighbouring ones: 0 of 1 pair

  1  Tuesday 20 April 2027
     1 plant, room for 1
   · Ramsons – to eat: leaves
       named in course.yml
       ! not yet surely told from Lily of the valley (poisonous); made sure by:
         marked while in flower

  2  Thursday 20 May 2027
     0 plants, room for 0

In no session, for want of room
   ! Lily of the valley (poisonous): nearest date Tuesday 20 April 2027
   ! Elder: nearest date Tuesday 1 June 2027

In season on Friday 1 January 2027
   · no plant of this course"""  # fmt: skip


def test_what_was_seen_here_is_told_with_its_dates() -> None:
    course = (
        PLACE
        + """
seen here: {Ramsons flowers: [11 May 2026, 9 May 2025]}
plants: [Ramsons, Elder]
sessions:
  - {date: 2027-04-20, plants: [Ramsons]}
  - {date: 2027-06-05, plants: [Elder]}
"""
    )
    assert planned(course) == """\
Hedge · Askerby, 54.4° N, 2.6° W, 150 m above the sea
Seen at 54.4° N, 2.6° W, 150 m above the sea; moved by what was seen here:
flowers from 11 May 2026, 9 May 2025.
Elder: as seen at 54.4° N, 2.6° W, 150 m above the sea.
The plant's other parts are moved by as many days, in autumn the other way than
in spring. It is an estimate: the weather of a year, a warm slope or a frost
hollow can move a date by weeks.

2 plants, 2 sessions
Taught in season: 2 of 2 plants

  1  Tuesday 20 April 2027
     1 plant
   · Ramsons – to eat: leaves
       named in course.yml
       ! not yet surely told from Lily of the valley (poisonous); made sure by:
         marked while in flower

  2  Saturday 5 June 2027
     1 plant
   · Elder – to eat: flowers; to be seen: leaves
       named in course.yml

In season on Sunday 25 April 2027
   · Ramsons – to eat: leaves
       ! not yet surely told from Lily of the valley (poisonous); made sure by:
         marked while in flower"""  # fmt: skip


def test_what_comes_after_what_is_told() -> None:
    course = (
        PLACE
        + """
after: {Ramsons: Lily of the valley}
sessions:
  - {date: 2027-04-20, plants: [Lily of the valley, Elder]}
  - {date: 2027-04-21, plants: [Ramsons]}
"""
    )
    assert planned(course) == """\
Hedge · Askerby, 54.4° N, 2.6° W, 150 m above the sea
As seen at 54.4° N, 2.6° W, 150 m above the sea.

3 plants, 2 sessions
Taught in season: 2 of 3 plants, the most that course.yml leaves room for
Look-alikes taught in one session or in neighbouring ones: 1 of 1 pair

  1  Tuesday 20 April 2027
     2 plants
   · Lily of the valley (poisonous) – to be seen: leaves
       named in course.yml; taken for Ramsons, gathered at the same time;
       look-alikes in session 2 (Ramsons)
   ! Elder – not in season; to be seen: leaves; nearest date Tuesday 1 June 2027
       named in course.yml

  2  Wednesday 21 April 2027
     1 plant
   · Ramsons – to eat: leaves
       named in course.yml; after Lily of the valley; look-alikes in session 1
       (Lily of the valley)
       ! not yet surely told from Lily of the valley (poisonous); made sure by:
         marked while in flower

Not in season on the day
   ! Elder, session 1: nearest date Tuesday 1 June 2027, 42 days later

In season on Sunday 25 April 2027
   · Ramsons – to eat: leaves
       ! not yet surely told from Lily of the valley (poisonous); made sure by:
         marked while in flower
   · Lily of the valley (poisonous) – to be seen: leaves; taken for Ramsons,
     gathered at the same time"""  # fmt: skip


# ---- single words -------------------------------------------------------------------------


def test_a_course_that_stays_where_it_is_moves_nothing() -> None:
    assert planned_at("54.4,-2.6,150", PLACE + SESSIONS, 80).split("\n\n")[-1] == """\
How the year would move (where the course meets → at the other place)
   · Ramsons: as where the course meets
   · Lily of the valley: as where the course meets
   · Elder: as where the course meets"""  # fmt: skip


def test_what_is_only_seen_is_never_told_as_something_to_eat() -> None:
    """Leaves of elder are not eaten, whatever else of it is."""
    assert "   · Elder – to eat: flowers; to be seen: leaves\n" in planned(PLACE + SESSIONS)


def test_a_plant_that_harms_is_told_of_on_the_days_by_which_its_time_is_uncertain() -> None:
    last = [planned("plants: [Lily of the valley]", date(2027, 4, day), 99) for day in (5, 6)]
    assert [text.split("\n")[-1] for text in last] == [
        "   · no plant of this course",
        "   ! perhaps to be met, for its times are uncertain: Lily of the valley (poisonous)",
    ]


@pytest.mark.parametrize(
    ("session", "line"),
    [("{date: 2027-04-20, meets at: the pump}", "     the pump · 0 plants"),
     ("{date: 2027-04-20, holds: 0}", "     0 plants, room for 0"),
     ("{date: 2027-04-20, holds: 0, plants: [Elder]}", "     1 plant, room for 0")],
)  # fmt: skip
def test_a_session_tells_where_it_meets_and_what_it_can_hold(session: str, line: str) -> None:
    assert planned(f"plants: []\nsessions: [{session}]").split("\n\n")[2].split("\n")[1] == line


def test_look_alikes_of_the_same_session_are_told_first() -> None:
    course = """sessions:
  - {date: 2027-04-20, plants: [Lily of the valley]}
  - {date: 2027-04-21, plants: [Ramsons, Lily of the valley]}
"""
    words = "look-alikes in this session (Lily of the valley), in session 1 (Lily of the valley)"
    assert f"named in course.yml; {words}\n" in planned(course, width=200)


def test_what_can_be_eaten_on_the_day_is_told_before_what_harms() -> None:
    """Though the plant that harms begins the year."""
    early = LILY.replace("mid April", "January")
    text = planned("plants: all", files={**FILES, "lily.md": early}, width=200)
    assert text.split("\n")[-3:] == [
        "   · Ramsons – to eat: leaves",
        (
            "       ! not yet surely told from Lily of the valley (poisonous); "
            "made sure by: marked while in flower"
        ),
        (
            "   · Lily of the valley (poisonous) – to be seen: leaves; "
            "taken for Ramsons, gathered at the same time"
        ),
    ]


def test_a_title_of_several_lines_stands_on_one() -> None:
    course = 'title: "Hedge\\nand\\twood"\nsessions: [{date: 2027-04-20, title: "a\\nb"}]\n'
    text = planned(course)
    assert text.startswith("Hedge and wood · place not told\n")
    assert "\n  1  Tuesday 20 April 2027 · a b\n" in text


@given(st.integers(40, 100))
def test_no_line_is_wider_than_asked_for_and_no_word_is_lost(width: int) -> None:
    course = PLACE + SESSIONS
    narrow, wide = (
        planned_at("57.4,-2.6,450", course, width),
        planned_at("57.4,-2.6,450", course, 999),
    )
    assert max(map(len, narrow.split("\n"))) <= width
    assert narrow.split() == wide.split()
