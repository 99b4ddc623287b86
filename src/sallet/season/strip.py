"""A plant's year as rows of bars: what every drawing of it shows, on a page and on a card."""

from __future__ import annotations

from itertools import groupby
from typing import TYPE_CHECKING, Final, Literal

from sallet.lesson.values.times import YEAR
from sallet.season.move import windows_of
from sallet.season.words import days_words, row_words

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from sallet.lesson.value import Window
    from sallet.season.here import Row

NOT_SURE: Final = "not yet sure"
"""Said of weeks in which what is gathered is not surely told from a plant that harms."""

Run = tuple[int, int]
"""From the first to the last day, inside one year."""
Look = Literal["eaten", "seen", "harm", "doubt", "soft"]
"""What a bar tells: a row's kind, that it is not sure there, or that nobody can say."""


def strip_name(row: Row) -> str:
    """Return how a row is called at its left: `eat leaves`."""
    return f"eat {row.name}" if row.kind == "eaten" else row.name


def strip_rows(rows: Iterable[Row]) -> tuple[Row, ...]:
    """Return the rows that there is something to draw of."""
    return tuple(row for row in rows if row.windows)


def doubts_of(rows: Iterable[Row]) -> frozenset[int]:
    """Return the days of gathering on which it is not surely told from a plant that harms."""
    return frozenset[int]().union(*(row.not_sure for row in rows))


def strip_words(rows: Sequence[Row]) -> str:
    """Return in words what the drawing of some rows shows."""
    told = [f"{strip_name(row)}: {row_words(row)}" for row in strip_rows(rows)]
    doubt = doubts_of(rows)  # of a row that is taken out whole too, which has no bar left
    if doubt:
        told.append(f"{NOT_SURE}: {days_words(doubt)}")
    return "; ".join(told) + "."


def bars(row: Row) -> Iterator[tuple[Run, Look]]:
    """Yield the bars of a row, those of uncertain days before the certain ones of each time."""
    for stretch in row.stretches:
        if stretch.here is None:
            continue
        yield from ((run, "soft") for end in stretch.unsure for run in runs(end))
        for run in runs(stretch.firm or stretch.here):
            for part, unsure in split(run, row.not_sure):
                yield part, "doubt" if unsure else row.kind


def runs_of(days: Iterable[int]) -> Iterator[Run]:
    """Yield some days of the year as runs that do not cross the new year."""
    yield from (run for window in windows_of(days) for run in runs(window))


def runs(window: Window) -> tuple[Run, ...]:
    """Return a window as runs from and to that do not cross the new year."""
    if window.first <= window.last:
        return ((window.first, window.last),)
    return ((window.first, YEAR), (1, window.last))


def split(run: Run, days: frozenset[int]) -> Iterator[tuple[Run, bool]]:
    """Yield the parts of a run that lie within some days or outside of them, and which it is."""
    for within, part in groupby(range(run[0], run[1] + 1), days.__contains__):
        found = tuple(part)
        yield (found[0], found[-1]), within
