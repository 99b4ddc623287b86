"""Calendars, read back by icalendar, and against the examples of RFC 5545 itself."""

from __future__ import annotations

import re
from datetime import UTC, date, datetime, time, timedelta
from typing import Any
from zoneinfo import ZoneInfo

import pytest
from hypothesis import example, given
from hypothesis import strategies as st
from icalendar import Calendar

from sallet.publish.ics import Event, calendar_text
from sallet.publish.timezones import zone_lines

STAMP = datetime(2027, 1, 2, 3, 4, 5, tzinfo=UTC)
DAY = date(2027, 4, 3)
LONG = "Bärlauch, Giersch; Brennnessel \\ 🌿 👩🏽‍🌾 \t" * 20
WRITABLE = st.text(
    st.characters(exclude_categories=["Cc", "Cs", "Zl", "Zp"], include_characters="\t\n")
)
"""Any text but what cannot stand in a calendar, with its line ends already of one kind."""


def event(**fields: Any) -> Event:
    """Return an event on a day, with some fields of its own."""
    return Event(**{"uid": "1", "summary": "Walk", "first": DAY, **fields})


def written(*events: Event, name: str = "Walks", zone: str = "", language: str = "en") -> str:
    """Return the text of a calendar."""
    return calendar_text(name, events, STAMP, zone, language)


def lines(text: str) -> list[str]:
    """Return the lines of a calendar, unfolded as RFC 5545, 3.1 says."""
    return text.replace("\r\n ", "").removesuffix("\r\n").split("\r\n")


def calendar(text: str) -> Calendar:
    """Return a calendar as icalendar reads its bytes, without complaint."""
    read = Calendar.from_ical(text.encode())
    assert isinstance(read, Calendar)
    assert [part.errors for part in read.walk() if part.errors] == []
    return read


def name_of(text: str) -> str:
    """Return a calendar's name.

    RFC 7986, 5.1 calls it a TEXT, icalendar does not know it: it is given the line as another's.
    """
    read = calendar(text.replace("\r\nNAME:", "\r\nDESCRIPTION:", 1))
    return str(read["DESCRIPTION"])


def properties(one: Event, **fields: str) -> Any:
    """Return the properties of an event that was written and read back."""
    (read,) = calendar(written(one, **fields)).walk("VEVENT")
    return read


def begin(one: Event, zone: str = "") -> list[str]:
    """Return the lines that say when an event is."""
    when = ("DTSTART", "DTEND", "DURATION")
    return [line for line in lines(written(one, zone=zone))
            if line.startswith(when) and line not in zone_part(one, zone)]  # fmt: skip


def zone_part(one: Event, zone: str) -> list[str]:
    """Return the lines of an event's zone."""
    return list(zone_lines(zone, one.first.year, one.first.year)) if zone else []


def test_a_calendar_is_these_lines() -> None:
    one = event(starts=time(10), minutes=90, place="Mill", description="Boots")
    assert written(one, zone="Asia/Kolkata", language="en-GB") == "".join(
        f"{line}\r\n"
        for line in (
            "BEGIN:VCALENDAR",
            "VERSION:2.0",
            "PRODID:-//sallet//course//EN",
            "CALSCALE:GREGORIAN",
            "NAME:Walks",
            *zone_part(one, "Asia/Kolkata"),
            "BEGIN:VEVENT",
            "UID:1",
            "DTSTAMP:20270102T030405Z",
            "DTSTART;TZID=Asia/Kolkata:20270403T100000",
            "DURATION:PT90M",
            "SUMMARY;LANGUAGE=en-GB:Walk",
            "LOCATION:Mill",
            "DESCRIPTION:Boots",
            "END:VEVENT",
            "END:VCALENDAR",
        )
    )


def test_an_event_of_some_days_is_the_example_of_the_standard() -> None:
    """RFC 5545, 3.6.1: a festival from 28 June to 8 July 2007, both counted, nobody kept busy."""
    festival = Event(
        uid="20070423T123432Z-541111@example.com",
        summary="Festival International de Jazz de Montreal",
        first=date(2007, 6, 28),
        last=date(2007, 7, 8),
        busy=False,
    )
    text = calendar_text("Jazz", [festival], datetime(2007, 4, 23, 12, 34, 32, tzinfo=UTC))
    assert lines(text)[5:-1] == [
        "BEGIN:VEVENT",
        "UID:20070423T123432Z-541111@example.com",
        "DTSTAMP:20070423T123432Z",
        "DTSTART;VALUE=DATE:20070628",
        "DTEND;VALUE=DATE:20070709",
        "SUMMARY;LANGUAGE=en:Festival International de Jazz de Montreal",
        "TRANSP:TRANSPARENT",
        "END:VEVENT",
    ]


@pytest.mark.parametrize(
    ("first", "last", "ends"),
    [(date(2018, 5, 1), date(2018, 5, 7), "20180508"),
     (date(2018, 5, 7), None, "20180508"),
     (date(2018, 5, 7), date(2018, 5, 7), "20180508"),
     (date(2027, 12, 30), date(2027, 12, 31), "20280101"),
     (date(2028, 2, 28), None, "20280229")],
)  # fmt: skip
def test_whole_days_end_where_the_first_free_day_begins(
    first: date, last: date | None, ends: str
) -> None:
    one = event(first=first, last=last)
    assert begin(one) == [f"DTSTART;VALUE=DATE:{first:%Y%m%d}", f"DTEND;VALUE=DATE:{ends}"]
    assert properties(one).decoded("DTEND") - timedelta(days=1) == (last or first)


def test_the_last_date_of_all_has_no_day_behind_it() -> None:
    assert begin(event(first=date.max)) == ["DTSTART;VALUE=DATE:99991231"]


def test_without_a_zone_a_time_is_that_of_whoever_reads_it() -> None:
    one = event(starts=time(9, 5), minutes=45)
    assert begin(one) == ["DTSTART:20270403T090500", "DURATION:PT45M"]
    assert properties(one).decoded("DTSTART") == datetime(2027, 4, 3, 9, 5)  # noqa: DTZ001
    assert calendar(written(one)).walk("VTIMEZONE") == []


@pytest.mark.parametrize("minutes", [None, 0])
def test_an_event_whose_length_nobody_said_has_no_end(minutes: int | None) -> None:
    one = event(starts=time(9), minutes=minutes)
    assert begin(one, "Europe/London") == ["DTSTART;TZID=Europe/London:20270403T090000"]


@pytest.mark.parametrize(
    ("day", "ends"),
    [(date(2024, 3, 30), "2024-03-31T02:00+00:00"),
     (date(2024, 10, 26), "2024-10-27T01:00+00:00"),
     (date(2024, 12, 31), "2025-01-01T02:00+00:00"),
     (date(2024, 7, 3), "2024-07-04T01:00+00:00")],
)  # fmt: skip
def test_four_hours_are_four_hours_over_midnight_and_a_change_of_the_clock(
    day: date, ends: str
) -> None:
    """London from ten at night; the clock goes forward on 31 March 2024, back on 27 October."""
    one = event(first=day, starts=time(22), minutes=240)
    read = properties(one, zone="Europe/London")
    begins = read.decoded("DTSTART").astimezone(UTC)
    assert begins + read.decoded("DURATION") == datetime.fromisoformat(ends)


def test_the_zone_is_told_once_and_for_every_year_with_a_time() -> None:
    events = [event(uid=str(year), first=date(year, 5, 1), starts=time(9)) for year in (2029, 2027)]
    text = written(*events, event(uid="3", first=date(2035, 1, 1)), zone="Europe/London")
    (zone,) = calendar(text).walk("VTIMEZONE")
    assert zone["TZID"] == "Europe/London"
    told = list(zone_lines("Europe/London", 2027, 2029))
    assert lines(text)[5 : 5 + len(told)] == told


def test_whole_days_need_no_zone() -> None:
    assert "TZ" not in written(event(), zone="Europe/London")


def test_the_stamp_is_in_utc_wherever_it_was_taken() -> None:
    tokyo = datetime(2027, 1, 2, 3, 4, 5, 678, tzinfo=ZoneInfo("Asia/Tokyo"))
    assert "DTSTAMP:20270101T180405Z" in lines(calendar_text("Walks", [event()], tokyo))


def test_nothing_stands_for_a_place_or_words_that_are_not_there() -> None:
    read = properties(event())
    assert sorted(read) == ["DTEND", "DTSTAMP", "DTSTART", "SUMMARY", "UID"]


def test_every_property_is_read_back_as_it_was() -> None:
    one = event(
        uid="a;b,c", summary=LONG, starts=time(18, 30), minutes=75, place=f"{LONG}\n2", busy=False,
        description=f"{LONG}\n\n{LONG}",
    )  # fmt: skip
    text = written(one, name=LONG, zone="Australia/Hobart", language="de-AT")
    read = calendar(text)
    (back,) = read.walk("VEVENT")
    assert (name_of(text), read["VERSION"], read["CALSCALE"]) == (LONG, "2.0", "GREGORIAN")
    assert (back["UID"], back["SUMMARY"]) == (one.uid, one.summary)
    assert (back["LOCATION"], back["DESCRIPTION"]) == (one.place, one.description)
    assert back["SUMMARY"].params == {"LANGUAGE": "de-AT"}
    assert back["TRANSP"] == "TRANSPARENT"
    assert back.decoded("DTSTAMP") == STAMP
    assert back["DTSTART"].params["TZID"] == "Australia/Hobart"
    assert back.decoded("DTSTART").replace(tzinfo=None) == datetime(2027, 4, 3, 18, 30)  # noqa: DTZ001
    assert back.decoded("DURATION") == timedelta(minutes=75)


def test_events_stand_in_the_order_given() -> None:
    events = calendar(written(*(event(uid=uid) for uid in "cab"))).walk("VEVENT")
    assert [str(one["UID"]) for one in events] == ["c", "a", "b"]


def test_words_of_several_lines_are_the_example_of_the_standard() -> None:
    """RFC 5545, 3.3.11."""
    words = "Project XYZ Final Review\nConference Room - 3B\nCome Prepared."
    line = r"DESCRIPTION:Project XYZ Final Review\nConference Room - 3B\nCome Prepared."
    assert line in lines(written(event(description=words)))


@pytest.mark.parametrize(
    ("words", "value"),
    [("a, b; c", r"a\, b\; c"),
     ("a\\b", r"a\\b"),
     ("a\\nb", r"a\\nb"),
     ('10:30 "sharp"', '10:30 "sharp"'),
     ("a\tb", "a\tb"),
     ("a\r\nb\rc\n\nd", r"a\nb\nc\n\nd"),
     ("a\vb\fc\x85d\u2028e\u2029f", r"a\nb\nc\nd\ne\nf"),
     ("a\x00\x07\x1b\x7f\x9fb", "ab"),
     ("a\ud83cb", "ab")],
)  # fmt: skip
def test_what_has_a_meaning_of_its_own_is_escaped_or_left_out(words: str, value: str) -> None:
    text = written(event(uid=words, summary=words, place=words, description=words), name=words)
    starts = ("NAME:", "UID:", "SUMMARY;LANGUAGE=en:", "LOCATION:", "DESCRIPTION:")
    assert [line for line in lines(text) if line.startswith(starts)] == [
        f"{start}{value}" for start in starts
    ]


def test_words_cannot_begin_a_line_of_their_own() -> None:
    words = "Walk\r\nEND:VEVENT\r\nBEGIN:VALARM"
    text = written(event(summary=words, place=words, description=words), name=words)
    assert [part.name for part in calendar(text).walk()] == ["VCALENDAR", "VEVENT"]


@pytest.mark.parametrize(
    ("words", "rows"),
    [("a" * 70, ["NAME:" + "a" * 70]),
     ("a" * 71, ["NAME:" + "a" * 70, " a"]),
     ("a" * 145, ["NAME:" + "a" * 70, " " + "a" * 74, " a"]),
     ("a" * 69 + "é", ["NAME:" + "a" * 69, " é"]),
     ("a" * 68 + "é", ["NAME:" + "a" * 68 + "é"]),
     ("a" * 67 + "🌿", ["NAME:" + "a" * 67, " 🌿"]),
     ("a" * 66 + "🌿", ["NAME:" + "a" * 66 + "🌿"]),
     ("a" * 70 + " b", ["NAME:" + "a" * 70, "  b"])],
)  # fmt: skip
def test_a_line_is_broken_after_at_most_75_octets_and_never_in_a_character(
    words: str, rows: list[str]
) -> None:
    """RFC 5545, 3.1; the line end is not counted, the space of the next row is."""
    assert written(event(), name=words).split("\r\n")[4 : 4 + len(rows)] == rows


@given(st.text())
@example(LONG)
@example("\r\n" * 80)
@example(" " * 300)
def test_whatever_the_words_are_each_row_is_short_and_whole(words: str) -> None:
    data = written(event(uid=words, summary=words, place=words, description=words), name=words)
    rows = data.encode().split(b"\r\n")
    assert rows.pop() == b""
    assert max(map(len, rows)) <= 75
    assert all(row.decode() for row in rows)
    assert re.search(rb"[\r\n]", b"".join(rows)) is None


@given(WRITABLE)
@example(LONG)
@example(" " * 300)
@example("\\n\\\\,;:\n")
def test_whatever_the_words_are_they_are_read_back(words: str) -> None:
    one = event(uid=words, summary=words, place=words, description=words)
    text = written(one, name=words)
    (back,) = calendar(text).walk("VEVENT")
    assert (name_of(text), back["UID"], back["SUMMARY"]) == (words, words, words)
    assert (back.get("LOCATION", ""), back.get("DESCRIPTION", "")) == (words, words)
