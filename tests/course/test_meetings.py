"""A series day by day, and what an entry with a date changes of it."""

from __future__ import annotations

from datetime import date, time

from hypothesis import given
from hypothesis import strategies as st

from sallet.course.model import Session
from sallet.course.reading import read_course
from sallet.source import Source

SERIES = """\
  - first: 2027-04-03
    every: 2 weeks
    count: 3
    skip: 2027-04-17
    starts: "10:00"
    length: 2 h
    title: Walk
    meets at: the pump
    holds: 4
    bring: [a hand lens]
    notes: Boots.
"""


def sessions(*entries: str) -> tuple[Session, ...]:
    """Return the sessions of a list: of whole texts, or of mappings on one line."""
    lines = (entry if entry.startswith("  -") else f"  - {entry}\n" for entry in entries)
    return read_course(Source("course.yml", "sessions:\n" + "".join(lines))).sessions


def walk(month: int, day: int) -> Session:
    """Return a meeting as the series above has it."""
    return Session(date(2027, month, day), time(10), "Walk", "the pump", (), ("a hand lens",),
                   "Boots.", 120, 4)  # fmt: skip


def test_each_meeting_of_a_series_has_what_the_series_has() -> None:
    assert sessions(SERIES) == (walk(4, 3), walk(5, 1), walk(5, 15))


def test_an_entry_of_the_same_day_is_the_same_meeting_and_its_own_keys_win() -> None:
    entry = "{date: 2027-05-01, title: Hedges, plants: [Elder], holds: 0, bring: [], starts:}"
    assert sessions(SERIES, entry) == (
        walk(4, 3),
        Session(date(2027, 5, 1), time(10), "Hedges", "the pump", ("Elder",), (), "Boots.", 120, 0,
                listed=1),
        walk(5, 15),
    )  # fmt: skip


def test_an_entry_may_stand_in_front_of_its_series() -> None:
    found = sessions("{date: 2027-05-01, title: Hedges}", SERIES)
    assert [(s.title, s.meets_at, s.listed) for s in found] == [
        ("Walk", "the pump", 1), ("Hedges", "the pump", 0), ("Walk", "the pump", 1),
    ]  # fmt: skip


def test_an_entry_of_another_day_stands_alone_even_if_the_series_skips_that_day() -> None:
    found = sessions(SERIES, "{date: 2027-04-17}", "{date: 2027-04-04}")
    assert found == (walk(4, 3), Session(date(2027, 4, 4), listed=2),
                     Session(date(2027, 4, 17), listed=1), walk(5, 1), walk(5, 15))  # fmt: skip


def test_of_two_entries_of_one_day_the_second_is_a_meeting_of_its_own() -> None:
    found = sessions(SERIES, "{date: 2027-05-01, title: one}", "{date: 2027-05-01, title: two}")
    assert [(s.title, s.starts) for s in found if s.date == date(2027, 5, 1)] == [
        ("two", None),
        ("one", time(10)),
    ]


def test_two_series_of_one_day_are_two_meetings_in_the_order_of_their_starts() -> None:
    late = '{first: 2027-04-03, every: week, count: 1, starts: "14:00", title: late}'
    early = '{first: 2027-04-03, every: week, count: 1, starts: "9:00", title: early}'
    assert [s.title for s in sessions(late, early)] == ["early", "late"]


def test_of_two_series_an_entry_changes_the_one_with_its_start_or_else_the_first() -> None:
    first = '{first: 2027-04-03, every: week, count: 1, starts: "9:00", title: one}'
    second = '{first: 2027-04-03, every: week, count: 1, starts: "14:00", title: two}'
    by_start = sessions(first, second, '{date: 2027-04-03, starts: "14:00", notes: here}')
    assert [(s.title, s.notes) for s in by_start] == [("one", ""), ("two", "here")]
    by_place = sessions(first, second, "{date: 2027-04-03, notes: here}")
    assert [(s.title, s.notes) for s in by_place] == [("one", "here"), ("two", "")]


def test_plants_of_a_series_are_taught_nowhere_but_where_an_entry_names_some() -> None:
    series = "{first: 2027-04-03, every: week, count: 2, plants: [Elder]}"
    found = sessions(series, "{date: 2027-04-10, title: Hedges}")
    assert [s.plants for s in found] == [(), ()]


@given(st.lists(st.dates(date(2027, 1, 1), date(2027, 3, 1)), max_size=8), st.integers(0, 8))
def test_each_dated_entry_and_each_meeting_is_there_once(days: list[date], count: int) -> None:
    series = [f"{{first: 2027-01-02, every: week, count: {count}}}"] if count else []
    found = sessions(*(f"{{date: {day}}}" for day in days), *series)
    held = {date.fromordinal(date(2027, 1, 2).toordinal() + 7 * n) for n in range(count)}
    assert sorted([*days, *(held - set(days))]) == [session.date for session in found]
    assert {session.listed for session in found} >= set(range(len(days)))
