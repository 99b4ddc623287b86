"""What makes an entry of the list of sessions one meeting, a series, or neither."""

from __future__ import annotations

from datetime import date

import pytest

from sallet.course.entries import entry_faults, listed_entries, series_faults, series_of
from sallet.course.keys import CourseFields, SessionFields
from sallet.course.series import Series
from sallet.fields import read_fields
from sallet.yamltext import Node, read_yaml


def node_of(*entries: str) -> Node:
    """Return a course.yml with some entries, each written as a mapping on one line."""
    return read_yaml("sessions:\n" + "".join(f"  - {entry}\n" for entry in entries))[0]


def entries_of(node: Node) -> list[tuple[int, SessionFields]]:
    """Return the entries of a course.yml with their places."""
    fields, wrong = read_fields(CourseFields, node)
    return listed_entries(node, fields.sessions, wrong)


@pytest.mark.parametrize(
    ("entry", "at_fault"),
    [
        ("{date: 2027-04-03}", []),
        ("{date: 2027-04-03, first:, every:, plants: [Elder]}", []),
        ("{date: someday}", []),
        ("{first: 2027-04-03, every: week, count: 3, skip: [2027-04-10], date:}", []),
        ("{first: someday, every: often, count: many}", []),
        ("{}", ["date"]),
        ("{every: week, count: 3}", ["date"]),
        ("{first: 2027-04-03}", ["every", "count"]),
        ("{first: 2027-04-03, every: week}", ["count"]),
        ("{first: 2027-04-03, every: week, count: 3, plants: Elder}", ["plants"]),
        ("{date: 2027-04-03, first: 2027-04-03, count: 3}", ["first", "count"]),
        ("{date: 2027-04-03, skip: [2027-04-03]}", ["skip"]),
        ("just words", []),
    ],
)
def test_an_entry_is_one_meeting_or_a_series(entry: str, at_fault: list[str]) -> None:
    faults = list(entry_faults(node_of("{date: 2027-03-06}", entry)))
    assert [fault.path for fault in faults] == [("sessions", 1, key) for key in at_fault]
    assert [fault.key for fault in faults] == at_fault


def test_a_list_that_is_none_has_no_entries_and_no_faults_of_theirs() -> None:
    node = read_yaml("sessions: tomorrow\n")[0]
    assert (entries_of(node), list(entry_faults(node))) == ([], [])


def test_entries_keep_their_places_behind_one_that_was_set_aside() -> None:
    node = node_of("just words", "{title: one, date: 2027-04-03}", "[a]", "{title: two}")
    assert [(place, entry.title) for place, entry in entries_of(node)] == [(1, "one"), (3, "two")]


def test_a_series_is_one_that_is_told_wholly() -> None:
    whole = "{first: 2027-04-03, every: week, count: 3, skip: 2027-04-10}"
    half = ["{first: 2027-04-03, every: week}", "{first: 2027-04-03, every: often, count: 3}",
            "{date: 2027-04-03, first: 2027-04-03, every: week, count: 3}"]  # fmt: skip
    assert list(series_of(entries_of(node_of(*half, whole)))) == [
        Series(date(2027, 4, 3), 7, 3, (date(2027, 4, 10),), listed=3)
    ]


def test_a_series_that_runs_out_of_the_calendar_is_told_so() -> None:
    node = node_of("{date: 2027-04-03}", "{first: 2999-12-30, every: day, count: 2}",
                   "{first: 2999-12-30, every: day, count: 3}")  # fmt: skip
    faults = list(series_faults(node, list(series_of(entries_of(node)))))
    assert [(fault.path, fault.words) for fault in faults] == [(("sessions", 2, "count"), "3")]


@pytest.mark.parametrize(("singles", "at_fault"), [(600, 0), (601, 1)])
def test_a_thousand_meetings_are_the_most(singles: int, at_fault: int) -> None:
    series = "{first: 2027-04-03, every: day, count: 400}"
    node = node_of(*["{date: 2027-04-03}"] * singles, series)
    found = list(series_faults(node, list(series_of(entries_of(node)))))
    assert [fault.path for fault in found] == [("sessions",)] * at_fault
