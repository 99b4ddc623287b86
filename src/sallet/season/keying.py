"""The tables behind the keys, for a whole year or for a month, where the course meets."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.lesson.values.times import LENGTHS, MONTHS, YEAR
from sallet.season.visible import Visible
from sallet.study.plant_table import plant_table

if TYPE_CHECKING:
    from collections.abc import Sequence

    from sallet.lesson.vocabulary import Vocabulary
    from sallet.season.here import PlantYear
    from sallet.season.visible import Days
    from sallet.study.contrast import Where
    from sallet.study.table import Table

_MOSTLY: Final = 0.5
_ALL_YEAR = frozenset(range(1, YEAR + 1))


def days_of_month(month: int) -> Days:
    """Return the days of the year (1–365) of a month (1–12)."""
    first = sum(LENGTHS[: month - 1]) + 1
    return frozenset(range(first, first + LENGTHS[month - 1]))


def met_in(years: Sequence[PlantYear], days: Days) -> tuple[PlantYear, ...]:
    """Return the plants of which something can be seen on any of some days, or may be."""
    return tuple(year for year in years if year.days_about & days)


def key_table(
    years: Sequence[PlantYear], vocabulary: Vocabulary, month: int | None = None
) -> Table:
    """Return the table of the plants that can be met in a month (1–12), or in the whole year.

    In a month only that counts which can be looked at on most days on which the plant can be met.
    """
    days = _ALL_YEAR if month is None else days_of_month(month)
    met = years if month is None else met_in(years, days)
    looks = {year.lesson.slug: _Look(year, vocabulary, days) for year in met}

    def seen(slug: str, organ: str, part: str, where: Where) -> float:
        return looks[slug].share(organ, part, where)

    lessons = [year.lesson for year in met]
    return plant_table(lessons, vocabulary, seen, least=0.0 if month is None else _MOSTLY)


class _Look:
    """When a plant can be met, and its organs looked at."""

    def __init__(self, year: PlantYear, vocabulary: Vocabulary, days: Days) -> None:
        self.visible = Visible(year, vocabulary, with_unsure=True)
        self.met = year.days_about & days
        self.shares: dict[tuple[str, str, Where], float] = {}

    def share(self, organ: str, part: str, where: Where) -> float:
        key = organ, part, where
        if key not in self.shares:
            seen = self.visible.days(*key) & self.met
            self.shares[key] = len(seen) / len(self.met) if self.met else 0.0
        return self.shares[key]


def month_name(month: int) -> str:
    """Return a month (1–12) by its name."""
    return MONTHS[month - 1]
