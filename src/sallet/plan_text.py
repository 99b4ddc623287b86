"""`sallet plan`: the course's plan as text for a terminal."""

from __future__ import annotations

from textwrap import fill
from typing import TYPE_CHECKING, Final

from sallet.season.dates import clock_words, date_words, dates_apart
from sallet.season.hopkins import spot_of
from sallet.season.reasons import (
    names_of,
    place_words,
    taken_for_words,
    year_notes,
)
from sallet.season.teachable import day_of
from sallet.season.words import row_words

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence
    from datetime import date

    from sallet.course.model import Course
    from sallet.lesson.model import Lesson
    from sallet.season.here import PlantYear
    from sallet.season.plan import Meeting, Plan, Taught
    from sallet.season.teachable import Teachable

    Line = tuple[str, str]
    """What stands before a line, and the line itself, which goes on below its own beginning."""

_PLAIN: Final = ""
_BELOW: Final = "     "
_MORE: Final = "       "
_FINE: Final = "   · "
_LOOK: Final = "   ! "
"""Before what a teacher should look at."""
_DOUBT: Final = "       ! "
"""The same, of the plant named above."""


def plan_text(plan: Plan, course: Course, today: date, width: int) -> str:
    """Return the whole plan: the place, the sessions, what is out of season, what is in season today."""
    blocks = [
        _head(plan, course),
        _counts(plan),
        *(_meeting(meeting, plan) for meeting in plan.meetings),
        _out_of_season(plan),
        _without_session(plan),
        _today(plan, today),
    ]
    return "\n\n".join(text for block in blocks if (text := _set(block, width)))


def moved_text(before: Plan, after: Plan, width: int) -> str:
    """Return how the year at one place differs from that at another, part by part."""
    return _set(_moved(before, after), width)


def _set(lines: Iterable[Line], width: int) -> str:
    return "\n".join(_wrapped(start, words, width) for start, words in lines)


def _wrapped(start: str, words: str, width: int) -> str:
    # A name keeps its hyphens on one line: `Hemlock water-dropwort` is looked for as it is written.
    return fill(
        words,
        width,
        initial_indent=start,
        subsequent_indent=" " * len(start),
        expand_tabs=False,
        break_long_words=False,
        break_on_hyphens=False,
    )


def _head(plan: Plan, course: Course) -> Iterator[Line]:
    spot = spot_of(course.place)
    where = [course.place.name, place_words(spot) if spot else "place not told"]
    yield _PLAIN, f"{course.title or 'Course'} · {', '.join(part for part in where if part)}"
    for note in year_notes(plan.years):
        yield _PLAIN, note


def _counts(plan: Plan) -> Iterator[Line]:
    plants = _counted(len(plan.plants), "plant")
    if not plan.meetings:
        yield _PLAIN, f"{plants}; course.yml names no sessions, so there is nothing to fill"
        return
    yield _PLAIN, f"{plants}, {_counted(len(plan.meetings), 'session')}"
    taught = len(plan.in_season)
    fewer = taught < len(plan.plants)
    most = ", the most that course.yml leaves room for" if fewer else ""
    yield _PLAIN, f"Taught in season: {taught} of {plants}{most}"
    if plan.pairs:
        pairs = _counted(len(plan.pairs), "pair")
        near = "Look-alikes taught in one session or in neighbouring ones"
        yield _PLAIN, f"{near}: {plan.pairs_together} of {pairs}"


def _meeting(meeting: Meeting, plan: Plan) -> Iterator[Line]:
    session = meeting.session
    when = ", ".join(part for part in (date_words(session.date), clock_words(session)) if part)
    title = f" · {session.title}" if session.title else ""
    yield f"{meeting.number:>3}  ", f"{when}{title}"
    room = "" if session.holds is None else f", room for {session.holds}"
    plants = f"{_counted(len(meeting.taught), 'plant')}{room}"
    yield _BELOW, " · ".join(part for part in (session.meets_at, plants) if part)
    for taught in meeting.taught:
        yield _FINE if taught.in_season else _LOOK, f"{_called(taught.lesson)} – {_what(taught)}"
        reasons = "; ".join(_reasons(taught, meeting.number))
        if reasons:
            yield _MORE, reasons
        yield from _doubts(taught.lesson, meeting.day, plan)


def _doubts(lesson: Lesson, day: int, plan: Plan) -> Iterator[Line]:
    """Yield what a plant that is gathered on a day is not surely told from, and what settles it."""
    for telling in plan.tellings.get(lesson.slug, ()):
        if day in telling.unsure:
            how = f"made sure by: {telling.settled_by}" if telling.settled_by else "pick none of it"
            yield _DOUBT, f"not yet surely told from {telling.name} ({telling.danger}); {how}"


def _called(lesson: Lesson) -> str:
    if lesson.is_food:
        return lesson.name
    return f"{lesson.name} ({lesson.front.danger or 'danger not told'})"


def _what(taught: Taught) -> str:
    stages = _stages(taught.what, taught.day)
    if taught.in_season:
        return stages
    return "; ".join(part for part in ("not in season", stages, _nearest(taught.nearest)) if part)


def _stages(what: Teachable, day: int) -> str:
    # What is only seen is never told in one row with what is eaten.
    parts = [("to eat", what.eaten(day)), ("to be seen", what.seen(day))]
    return "; ".join(f"{how}: {', '.join(names)}" for how, names in parts if names)


def _reasons(taught: Taught, number: int) -> Iterator[str]:
    if taught.pinned:
        yield "named in course.yml"
    if taught.after:
        yield f"after {names_of(taught.after)}"
    if taught.confused_with:
        yield taken_for_words(taught.confused_with)
    if taught.near:
        yield f"look-alikes {', '.join(_near(taught.near, number))}"


def _near(near: Sequence[tuple[Lesson, int]], number: int) -> Iterator[str]:
    for at in sorted({at for _, at in near}, key=lambda at: (at != number, at)):
        names = names_of([lesson for lesson, there in near if there == at])
        yield f"in {'this session' if at == number else f'session {at}'} ({names})"


def _out_of_season(plan: Plan) -> Iterator[Line]:
    if plan.out_of_season:
        yield _PLAIN, "Not in season on the day"
    for meeting, taught in plan.out_of_season:
        session = meeting.session.date
        apart = f", {dates_apart(session, taught.nearest)}" if taught.nearest else ""
        where = f"{_called(taught.lesson)}, session {meeting.number}"
        yield _LOOK, f"{where}: {_nearest(taught.nearest)}{apart}"


def _without_session(plan: Plan) -> Iterator[Line]:
    if not plan.meetings:
        return
    if plan.unplaced:
        yield _PLAIN, "In no session, for want of room"
    for unplaced in plan.unplaced:
        yield _LOOK, f"{_called(unplaced.what.year.lesson)}: {_nearest(unplaced.nearest)}"


def _nearest(nearest: date | None) -> str:
    if nearest is None:
        return "the lesson gives no time that could be read"
    return f"nearest date {date_words(nearest)}"


def _today(plan: Plan, today: date) -> Iterator[Line]:
    yield _PLAIN, f"In season on {date_words(today)}"
    day = day_of(today)
    found = [what for what in plan.plants if what.is_on(day)]
    for what in sorted(found, key=lambda what: not what.year.lesson.is_food):
        taken_for = what.confused_with(day)
        reason = f"; {taken_for_words(taken_for)}" if taken_for else ""
        yield _FINE, f"{_called(what.year.lesson)} – {_stages(what, day)}{reason}"
        yield from _doubts(what.year.lesson, day, plan)
    if not found:
        yield _FINE, "no plant of this course"
    yield from _to_keep_away_from(plan, day)


def _to_keep_away_from(plan: Plan, day: int) -> Iterator[Line]:
    """Yield the plants that harm and are no subject on a day, but may be met."""
    harm = [what for what in plan.plants if not (what.year.lesson.is_food or what.is_on(day))]
    about = [_called(what.year.lesson) for what in harm if what.is_about(day)]
    if about:
        yield _LOOK, f"to be met too, and to keep away from: {', '.join(about)}"
    unknown = [_called(what.year.lesson) for what in harm if what.is_unsure_on(day)]
    if unknown:
        yield _LOOK, f"perhaps to be met, for its times are uncertain: {', '.join(unknown)}"


def _moved(before: Plan, after: Plan) -> Iterator[Line]:
    there = {year.lesson.slug: year for year in after.years}
    yield _PLAIN, "How the year would move (where the course meets → at the other place)"
    for year in before.years:
        moved = list(_moved_parts(year, there[year.lesson.slug]))
        yield _FINE, f"{year.lesson.name}{'' if moved else ': as where the course meets'}"
        yield from moved


def _moved_parts(year: PlantYear, there: PlantYear) -> Iterator[Line]:
    for here, moved in zip(year.rows, there.rows, strict=True):
        if row_words(here) != row_words(moved):
            part = f"{here.name} to eat" if here.kind == "eaten" else here.name
            yield _MORE, f"{part}: {row_words(here)} → {row_words(moved)}"


def _counted(number: int, word: str) -> str:
    return f"{number} {word}" if number == 1 else f"{number} {word}s"
