"""The gathering of a plant as far as it is sure: weeks in which nothing settles a doubt are taken out."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from sallet.season.move import windows_of
from sallet.season.teachable import days_of
from sallet.season.telling import tellings

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Mapping

    from sallet.lesson.bank import Bank
    from sallet.season.here import PlantYear, Row, Stretch
    from sallet.season.telling import Telling
    from sallet.season.visible import Days

Tellings = tuple["Telling", ...]


def all_tellings(years: Mapping[str, PlantYear], bank: Bank) -> Mapping[str, Tellings]:
    """Return how each food plant is told from its grave look-alikes, by slug."""
    foods = (year.lesson for year in years.values() if year.lesson.is_food)
    return {lesson.slug: tellings(lesson, years, bank) for lesson in foods}


def gathered_surely(year: PlantYear, told: Iterable[Telling]) -> PlantYear:
    """Return a plant's year with the doubts of its gathering marked, and what none settles taken out."""
    told = tuple(told)
    unsure = frozenset[int]().union(*(telling.unsure for telling in told))
    withheld = frozenset[int]().union(*(telling.withheld for telling in told))
    rows = tuple(
        _marked(row, unsure, withheld) if row.kind == "eaten" else row for row in year.rows
    )
    return replace(year, rows=rows)


def _marked(row: Row, unsure: Days, withheld: Days) -> Row:
    days = days_of([row])
    if not days & unsure:
        return row
    stretches = tuple(_cut(row.stretches, withheld)) if days & withheld else row.stretches
    return replace(row, stretches=stretches, not_sure=days & unsure)


def _cut(stretches: Iterable[Stretch], days: Days) -> Iterator[Stretch]:
    for stretch in stretches:
        if stretch.here is None:
            yield stretch
            continue
        for window in windows_of(set(stretch.here.days) - days):
            # An end that a doubt has cut is as sure as the doubt: it is no estimate of the season.
            soft = (
                stretch.soft[0] if window.first == stretch.here.first else 0,
                stretch.soft[1] if window.last == stretch.here.last else 0,
            )
            yield replace(stretch, here=window, soft=soft)
