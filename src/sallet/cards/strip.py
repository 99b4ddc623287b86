"""The year of a plant at the course's place, as the bars of a card's strip."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from sallet.lesson.values.times import LENGTHS, MONTHS, YEAR
from sallet.season.move import windows_of
from sallet.season.strip import (
    NOT_SURE,
    doubts_of,
    runs,
    split,
    strip_name,
    strip_rows,
    strip_words,
)

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from sallet.lesson.value import Window
    from sallet.season.here import Row

Bar = dict[str, Any]
"""`from` and `to` as parts of the year, and `look`: a row's kind, `doubt` or `soft`."""


def strip_data(rows: Sequence[Row]) -> dict[str, Any]:
    """Return the months, the rows with their bars, and all of it in words."""
    drawn, doubt = strip_rows(rows), doubts_of(rows)
    eaten = [_row(row) for row in drawn if row.kind == "eaten"]
    seen = [_row(row) for row in drawn if row.kind != "eaten"]
    months = [[month[0], days / YEAR] for month, days in zip(MONTHS, LENGTHS, strict=True)]
    return {
        "months": months,
        "rows": [*eaten, *_doubt(doubt), *seen],
        "words": strip_words(rows),
    }


def _row(row: Row) -> dict[str, Any]:
    return {"name": strip_name(row), "bars": list(_bars(row))}


def _doubt(days: frozenset[int]) -> Iterator[dict[str, Any]]:
    if days:
        bars = [bar for window in windows_of(days) for bar in _all(window, "cross")]
        yield {"name": NOT_SURE, "bars": bars}


def _bars(row: Row) -> Iterator[Bar]:
    for stretch in row.stretches:
        if stretch.here is None:
            continue
        for end in stretch.unsure:
            yield from _all(end, "soft")
        for run in runs(stretch.firm or stretch.here):
            for part, unsure in split(run, row.not_sure):
                yield _bar(part, "doubt" if unsure else row.kind)


def _all(window: Window, look: str) -> Iterator[Bar]:
    yield from (_bar(run, look) for run in runs(window))


def _bar(run: tuple[int, int], look: str) -> Bar:
    return {"from": (run[0] - 1) / YEAR, "to": run[1] / YEAR, "look": look}
