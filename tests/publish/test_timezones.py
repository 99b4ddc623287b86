"""Time zones as a calendar carries them: read by icalendar, held against zoneinfo's own clock."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta
from itertools import pairwise
from typing import Any
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st
from icalendar import Timezone

from sallet.publish.timezones import basic, zone_lines

CHANGING = (
    "Europe/London", "Europe/Dublin", "America/New_York", "America/St_Johns", "Australia/Hobart",
    "Australia/Lord_Howe", "Pacific/Chatham", "Africa/Casablanca", "Africa/Cairo",
)  # fmt: skip
"""North and south, by an hour and by half of one, and Morocco, where Ramadan decided.

The years below are past ones: what a parliament will do to its clocks is not ours to claim.
"""
STEADY = ("Asia/Kolkata", "Asia/Kathmandu", "Asia/Tokyo", "America/Phoenix", "UTC")
HALF_HOUR = timedelta(minutes=30)


@dataclass(frozen=True)
class Observance:
    """A sub-component of a VTIMEZONE."""

    kind: str
    onset: datetime
    before: timedelta
    after: timedelta
    name: str


def observances(zone: str, first: int, last: int) -> list[Observance]:
    """Return the sub-components of a zone in their order, as icalendar reads them."""
    read: Any = Timezone.from_ical("\r\n".join([*zone_lines(zone, first, last), ""]))
    assert read["TZID"] == zone
    return [
        Observance(
            str(part.name),
            part["DTSTART"].dt,
            part["TZOFFSETFROM"].td,
            part["TZOFFSETTO"].td,
            str(part["TZNAME"]),
        )
        for part in read.subcomponents
    ]


def in_utc(told: list[Observance], local: datetime) -> datetime:
    """Return when a local time is, going by the sub-components alone.

    RFC 5545, 3.3.5: a time that comes twice is the first of the two, one that a change leaves out
    is told by the offset before it. So a change forward counts from the end of its gap on.
    """
    held = [o for o in told if o.onset + max(o.after - o.before, timedelta()) <= local]
    return (local - max(held, key=lambda o: o.onset).after).replace(tzinfo=UTC)


def by_zoneinfo(zone: str, local: datetime) -> datetime:
    """Return when a local time is by the data of the system."""
    return local.replace(tzinfo=ZoneInfo(zone)).astimezone(UTC)


def hours(count: float) -> timedelta:
    """Return so many hours."""
    return timedelta(hours=count)


def test_new_york_changes_when_the_standard_says() -> None:
    """RFC 5545, 3.6.5, its examples of New York.

    The old rule ended on 29 October 2006 at 06:00 UTC, the new one began with 11 March and
    4 November 2007, each at two o'clock.
    """
    assert observances("America/New_York", 2007, 2007) == [
        Observance("STANDARD", datetime(2006, 10, 29, 2), hours(-4), hours(-5), "EST"),  # noqa: DTZ001
        Observance("DAYLIGHT", datetime(2007, 3, 11, 2), hours(-5), hours(-4), "EDT"),  # noqa: DTZ001
        Observance("STANDARD", datetime(2007, 11, 4, 2), hours(-4), hours(-5), "EST"),  # noqa: DTZ001
    ]


@pytest.mark.parametrize(
    ("local", "utc"), [("2007-11-04T01:30", "05:30"), ("2007-03-11T02:30", "07:30")]
)
def test_new_york_times_that_come_twice_or_never_are_those_of_the_standard(
    local: str, utc: str
) -> None:
    """RFC 5545, 3.3.5: 1:30 A.M. EDT, the first of two; and 3:30 A.M. EDT for one left out."""
    when = in_utc(observances("America/New_York", 2007, 2007), datetime.fromisoformat(local))
    assert f"{when:%H:%M}" == utc


@pytest.mark.parametrize("year", range(2018, 2026))
def test_london_changes_at_one_in_utc_on_the_last_sundays_of_march_and_october(year: int) -> None:
    """The Summer Time Order 2002 (S.I. 2002/262), from memory."""
    _, spring, autumn = observances("Europe/London", year, year)
    assert spring.onset == last_sunday(year, 3) + hours(1)
    assert autumn.onset == last_sunday(year, 10) + hours(2)
    assert (spring.kind, spring.before, spring.after) == ("DAYLIGHT", hours(0), hours(1))
    assert (autumn.kind, autumn.before, autumn.after) == ("STANDARD", hours(1), hours(0))


def last_sunday(year: int, month: int) -> datetime:
    """Return the beginning of the last Sunday of a month of 31 days."""
    last = datetime(year, month, 31)  # noqa: DTZ001
    return last - timedelta(days=last.isoweekday() % 7)


def test_the_lines_of_a_zone_stand_in_this_order() -> None:
    assert list(zone_lines("Asia/Kolkata", 2027, 2028)) == [
        "BEGIN:VTIMEZONE",
        "TZID:Asia/Kolkata",
        "BEGIN:STANDARD",
        "DTSTART:20260101T000000",
        "TZOFFSETFROM:+0530",
        "TZOFFSETTO:+0530",
        "TZNAME:IST",
        "END:STANDARD",
        "END:VTIMEZONE",
    ]


@pytest.mark.parametrize("zone", STEADY)
def test_a_zone_without_changes_has_one_standard_time(zone: str) -> None:
    (only,) = observances(zone, 2023, 2025)
    assert (only.kind, only.before) == ("STANDARD", only.after)


@pytest.mark.parametrize("zone", [*CHANGING, *STEADY])
def test_every_half_hour_of_two_years_is_when_zoneinfo_says(zone: str) -> None:
    told = observances(zone, 2024, 2025)
    local = datetime(2024, 1, 1)  # noqa: DTZ001
    while local.year < 2026:
        assert in_utc(told, local) == by_zoneinfo(zone, local)
        local += HALF_HOUR


@given(
    st.sampled_from([*CHANGING, *STEADY]),
    st.datetimes(datetime(1980, 1, 1), datetime(2099, 12, 31)),  # noqa: DTZ001
    st.integers(0, 2),
    st.integers(0, 2),
)
def test_every_time_in_the_years_told_is_when_zoneinfo_says(
    zone: str, local: datetime, earlier: int, later: int
) -> None:
    told = observances(zone, local.year - earlier, local.year + later)
    assert in_utc(told, local) == by_zoneinfo(zone, local)


@pytest.mark.parametrize("zone", CHANGING)
def test_each_change_begins_where_the_one_before_it_left_the_clock(zone: str) -> None:
    told = observances(zone, 2023, 2025)
    assert [one.after for one in told[:-1]] == [two.before for two in told[1:]]
    assert all(one.onset < two.onset for one, two in pairwise(told))
    assert all(one.before != one.after for one in told[1:])


@pytest.mark.parametrize("zone", [*CHANGING, *STEADY])
def test_one_offset_and_no_more_begins_before_the_first_year(zone: str) -> None:
    assert [one.onset.year < 2024 for one in observances(zone, 2024, 2025)].count(True) == 1


@pytest.mark.parametrize("zone", CHANGING)
def test_daylight_time_is_the_one_for_which_the_clock_is_put_forward(zone: str) -> None:
    """In Ireland and Morocco too, where the data call the other one the exception."""
    told = observances(zone, 2023, 2025)
    assert {one.kind for one in told} == {"STANDARD", "DAYLIGHT"}
    assert all((one.kind == "DAYLIGHT") == (one.after > one.before) for one in told)


def test_a_change_for_good_is_a_standard_time() -> None:
    """Pyongyang went back to the time of Seoul on 4 May 2018 at 23:30: tz database, from memory."""
    back = observances("Asia/Pyongyang", 2018, 2018)[-1]
    assert back == Observance("STANDARD", datetime(2018, 5, 4, 23, 30), hours(8.5), hours(9), "KST")  # noqa: DTZ001


def test_a_change_in_the_first_moment_of_a_year_is_told_with_what_was_before_it() -> None:
    """Nepal put its clocks forward by a quarter of an hour as 1986 began: tz database, from memory."""
    before, change = observances("Asia/Kathmandu", 1986, 1986)
    assert before.after == change.before == hours(5.5)
    assert (change.onset, change.after) == (datetime(1986, 1, 1), hours(5.75))  # noqa: DTZ001


@pytest.mark.parametrize("zone", ["Pacific/Kiritimati", "Pacific/Niue", "Europe/London"])
@pytest.mark.parametrize("year", [1, 2, 3, 9997, 9998, 9999])
def test_the_first_and_the_last_years_that_can_be_written_are_no_error(
    zone: str, year: int
) -> None:
    assert observances(zone, year, year)


@pytest.mark.parametrize(
    ("moment", "written"),
    [(date(2027, 4, 3), "20270403"),
     (date(99, 4, 3), "00990403"),
     (datetime(2027, 4, 3, 10, 5, tzinfo=UTC), "20270403T100500"),
     (datetime(2027, 4, 3, 0, 0, 1, 999, tzinfo=ZoneInfo("Asia/Tokyo")), "20270403T000001")],
)  # fmt: skip
def test_a_date_is_written_without_signs_between(moment: date, written: str) -> None:
    assert basic(moment) == written
