"""Entries of course.yml → sessions: each series told day by day, and what a date changes of it."""

from __future__ import annotations

from collections import defaultdict
from datetime import time
from typing import TYPE_CHECKING

from sallet.course.model import Session

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence
    from datetime import date

    from sallet.course.entries import Listed
    from sallet.course.keys import SessionFields
    from sallet.course.series import Series


def sessions_of(entries: Sequence[Listed], series: Iterable[Series]) -> tuple[Session, ...]:
    """Return the sessions in the order of their dates, their starts and their places."""
    return tuple(sorted(_sessions(entries, series), key=_order))


def _order(session: Session) -> tuple[date, time, int]:
    return session.date, session.starts or time.min, session.listed


def _sessions(entries: Sequence[Listed], series: Iterable[Series]) -> Iterator[Session]:
    regular = _by_day(entries, series)
    for place, entry in entries:
        if entry.date_ and not entry.first:
            of_series = _taken(regular[entry.date_], entry)
            fields = _changed(of_series, entry) if of_series else entry
            yield _session(fields, entry.date_, place)
    for day, meetings in regular.items():
        for place, entry in meetings:
            yield _session(entry, day, place)


def _by_day(entries: Sequence[Listed], series: Iterable[Series]) -> defaultdict[date, list[Listed]]:
    # Plants in a series are a fault: they would be taught at every meeting.
    at = {place: entry.model_copy(update={"plants": []}) for place, entry in entries}
    found: defaultdict[date, list[Listed]] = defaultdict(list)
    for one in series:
        for day in one.held():
            found[day].append((one.listed, at[one.listed]))
    return found


def _taken(meetings: list[Listed], entry: SessionFields) -> SessionFields | None:
    """Take the meeting that an entry of the same day is about: of several the one with its start."""
    if not meetings:
        return None
    same = [m for m in meetings if entry.starts and m[1].starts == entry.starts]
    chosen = (same or meetings)[0]
    meetings.remove(chosen)
    return chosen[1]


def _changed(regular: SessionFields, entry: SessionFields) -> SessionFields:
    return regular.model_copy(update={key: getattr(entry, key) for key in entry.model_fields_set})


def _session(fields: SessionFields, day: date, place: int) -> Session:
    return Session(
        date=day,
        starts=fields.starts,
        title=fields.title.strip(),
        meets_at=fields.meets_at.strip(),
        plants=tuple(fields.plants),
        bring=tuple(fields.bring),
        notes=fields.notes,
        minutes=fields.length,
        holds=fields.holds,
        listed=place,
    )
