"""The course's two calendars: its sessions, and what can be gathered when."""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta
from typing import TYPE_CHECKING, Final
from uuid import NAMESPACE_URL, uuid5

from sallet.lesson.model import GRAVE
from sallet.lesson.values.times import YEAR, month_and_day
from sallet.publish.ics import Event, calendar_text
from sallet.season.words import doubt_words, row_words

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from sallet.course.model import Course
    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson
    from sallet.lesson.value import Window
    from sallet.season.here import PlantYear, Row
    from sallet.season.plan import Meeting, Plan

CERTAIN: Final = "Do not eat what you have not identified with certainty."


def sessions_calendar(course: Course, plan: Plan) -> str:
    """Return the sessions as an iCalendar text (RFC 5545); nothing where there are none."""
    events = [_session(course, meeting) for meeting in plan.meetings]
    return _text(course, course.title or "Sessions", events, plan)


def _session(course: Course, meeting: Meeting) -> Event:
    session = meeting.session
    village = "" if course.place.name in session.meets_at else course.place.name
    place = ", ".join(part for part in (session.meets_at, village) if part)
    title = session.title or course.title
    return Event(
        uid=_uid(course, "session", meeting.number),
        summary=f"{meeting.number} {title}".strip(),
        first=session.date,
        starts=session.starts,
        minutes=session.minutes,
        place=place,
        description="\n".join(_about_session(course, meeting)),
    )


def _about_session(course: Course, meeting: Meeting) -> Iterator[str]:
    if meeting.taught:
        yield f"Plants: {', '.join(_named(taught.lesson) for taught in meeting.taught)}"
    if meeting.session.bring:
        yield f"Bring: {', '.join(meeting.session.bring)}"
    if meeting.session.notes.strip():
        yield meeting.session.notes.strip()
    yield CERTAIN
    yield from course.emergency


def _named(lesson: Lesson) -> str:
    if lesson.is_food:
        return lesson.name
    return f"{lesson.name} ({lesson.front.danger or 'danger not stated'})"


def harvest_calendar(course: Course, plan: Plan, bank: Bank) -> str:
    """Return what can be gathered when, in the years of the course; nothing where nothing can."""
    events = [event for what in plan.plants for event in _harvest(course, what.year, plan, bank)]
    return _text(course, f"{course.title or 'Course'}: what can be gathered", events, plan)


def _text(course: Course, name: str, events: Sequence[Event], plan: Plan) -> str:
    # A calendar without events would break the standard (RFC 5545, 3.6).
    if not events:
        return ""
    return calendar_text(name, events, _stamp(plan), course.time_zone, course.language)


def _harvest(course: Course, year: PlantYear, plan: Plan, bank: Bank) -> Iterator[Event]:
    # Windows are counted through all parts: a lesson may tell of one part in two places.
    windows = ((row, window) for row in year.eaten for window in row.windows)
    for number, (row, window) in enumerate(windows):
        # What is there all year would only fill every day of the calendar.
        if len(window.days) < YEAR:
            for first, last in _occurrences(window, _years(plan)):
                yield Event(
                    uid=_uid(course, year.lesson.slug, row.name, number, first.year),
                    summary=f"{year.lesson.name}: {row.name}{' (about)' if row.about else ''}",
                    first=first,
                    last=last,
                    description="\n".join(_about_harvest(course, year, row, plan, bank)),
                    busy=False,
                )


def _occurrences(window: Window, years: tuple[int, ...]) -> Iterator[tuple[date, date]]:
    """Yield a window's first and last date, each time that a day of it falls into the years."""
    wraps = window.first > window.last
    for year in sorted({*years, *(year - 1 for year in years if wraps)}):
        # Counted back from the day behind it: the year of a lesson has no 29 February.
        behind = _date(year + (1 if wraps else 0) + window.last // YEAR, window.last % YEAR + 1)
        yield _date(year, window.first), behind - timedelta(days=1)


def _date(year: int, day: int) -> date:
    return date(year, *month_and_day(day))


def _about_harvest(
    course: Course, year: PlantYear, row: Row, plan: Plan, bank: Bank
) -> Iterator[str]:
    yield f"{row.name}: {row_words(row)}"
    for telling in plan.tellings.get(year.lesson.slug, ()):
        if telling.unsure & row.not_sure:
            yield doubt_words(telling, telling.unsure & row.not_sure)
    grave = [x for x in year.lesson.look_alikes if bank.danger_of(x) in GRAVE]
    if grave:
        yield f"Mistaken for it: {', '.join(f'{x.name.value} ({bank.danger_of(x)})' for x in grave)}"
    yield f"{CERTAIN} The lesson says which parts to remove, how to prepare it and who should not eat it."
    yield from course.emergency


def gathered_all_year(plan: Plan) -> tuple[tuple[Lesson, str], ...]:
    """Return the parts that can be gathered all year, which the calendar leaves out."""
    return tuple(
        (what.year.lesson, row.name)
        for what in plan.plants
        for row in what.year.eaten
        if any(len(window.days) >= YEAR for window in row.windows)
    )


def _years(plan: Plan) -> tuple[int, ...]:
    # Only years with a session: a slip in one date must not fill a calendar for centuries.
    return tuple(sorted({meeting.session.date.year for meeting in plan.meetings}))


def _stamp(plan: Plan) -> datetime:
    # Fixed by the course, not by the clock: the same course makes the same bytes.
    dates = [meeting.session.date for meeting in plan.meetings]
    return datetime.combine(min(dates, default=date(2000, 1, 1)), time(), UTC)


def _uid(course: Course, *parts: object) -> str:
    # The number, not the date, names a session: where a calendar goes by that, a moved one takes
    # the place of its old entry.
    words = "|".join(map(str, ("sallet", course.title, course.place.name, *parts)))
    return str(uuid5(NAMESPACE_URL, words))
