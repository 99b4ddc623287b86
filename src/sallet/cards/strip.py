"""The year of a plant at the course's place, as the bars of a card's strip."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from sallet.lesson.values.times import LENGTHS, MONTHS, YEAR
from sallet.season.strip import (
    NOT_SURE,
    bars,
    doubts_of,
    runs_of,
    strip_name,
    strip_rows,
    strip_words,
)

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from sallet.season.here import Row
    from sallet.season.strip import Run


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
    return {"name": strip_name(row), "bars": [_bar(run, look) for run, look in bars(row)]}


def _doubt(days: frozenset[int]) -> Iterator[dict[str, Any]]:
    if days:
        yield {"name": NOT_SURE, "bars": [_bar(run, "cross") for run in runs_of(days)]}


def _bar(run: Run, look: str) -> dict[str, Any]:
    """Return a bar with its ends as parts of the year."""
    return {"from": (run[0] - 1) / YEAR, "to": run[1] / YEAR, "look": look}
