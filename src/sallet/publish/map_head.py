"""The head of the season map: months, weeks and the days on which the class meets."""

from __future__ import annotations

from itertools import accumulate
from typing import TYPE_CHECKING, Final

from markupsafe import Markup

from sallet.lesson.values.times import LENGTHS, MONTHS, YEAR, day_of_year
from sallet.publish.map_bars import along

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence
    from datetime import date

    from sallet.publish.map_shape import Layout

_STARTS: Final = (0, *accumulate(LENGTHS))
"""The days before each month, and the length of the year."""
_WEEK: Final = 7
_NUMBERS: Final = "42%"
_NAMES: Final = "72%"
"""How far down the numbers of the sessions stand, and the months' names."""
_TICKS: Final = "86%"
_ROOM: Final = {"narrow": 26, "wide": 8, "sheet": 6}
"""Days that the number of a session takes; the number of one nearer to it is left out."""
_LETTERS: Final = {"narrow": 1, "wide": 3, "sheet": 3}
"""Letters of a month's name."""


def season_head(sessions: Sequence[date], layout: Layout) -> Markup:
    """Return the drawing above the map; the map's own words and the table tell the same."""
    inside = [
        month_lines(layout.names, "60%", "100%"),
        _year(layout.names, _weeks()),
        session_lines(sessions, layout.names, "50%", "100%"),
        *(_year(layout.names, _words(sessions, kind)) for kind, _ in layout.letters),
    ]
    return Markup(
        '<svg class="season-map head {}" aria-hidden="true" width="100%" height="3.6em" '
        'data-from="{}">{}</svg>'
    ).format(layout.kind, layout.names, Markup("").join(inside))


def month_lines(names: int, top: str, foot: str) -> Markup:
    """Return the lines at which the months begin, and that of the year's end."""
    return _year(names, (_upright("month", day, top, foot) for day in _STARTS))


def session_lines(sessions: Sequence[date], names: int, top: str, foot: str) -> Markup:
    """Return a broken line for each day on which the class meets; the year does not count."""
    lines = (_upright("session", day - 1, top, foot) for day in _days(sessions))
    return _year(names, lines)


def _days(sessions: Sequence[date]) -> tuple[int, ...]:
    return tuple(day_of_year(session.month, session.day) for session in sessions)


def _year(names: int, inside: Iterator[Markup]) -> Markup:
    return Markup(
        '<svg class="year" x="{}%" width="{}%" height="100%" overflow="visible">{}</svg>'
    ).format(names, 100 - names, Markup("").join(inside))


def _upright(kind: str, days: float, top: str, foot: str) -> Markup:
    x = along(days)
    return Markup('<line class="{}" x1="{}" y1="{}" x2="{}" y2="{}"/>').format(
        kind, x, top, x, foot
    )


def _weeks() -> Iterator[Markup]:
    return (_upright("week", day, _TICKS, "100%") for day in range(_WEEK, YEAR, _WEEK))


def _words(sessions: Sequence[date], kind: str) -> Iterator[Markup]:
    for name, start, length in zip(MONTHS, _STARTS, LENGTHS, strict=False):
        yield _word(f"month {kind}", start + length / 2, _NAMES, name[: _LETTERS[kind]])
    last = -YEAR
    numbered = sorted((day, number) for number, day in enumerate(_days(sessions), 1))
    for day, number in numbered:
        if day - last >= _ROOM[kind]:
            yield _word(f"session {kind}", day - 1, _NUMBERS, str(number))
            last = day


def _word(kind: str, days: float, y: str, words: str) -> Markup:
    return Markup(
        '<text class="{}" x="{}" y="{}" text-anchor="middle" dominant-baseline="central">{}</text>'
    ).format(kind, along(days), y, words)
