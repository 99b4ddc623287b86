"""What several checks ask of the weeks in which a plant is not surely told from one that harms."""

from __future__ import annotations

from functools import lru_cache
from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import listed
from sallet.lesson.model import GRAVE
from sallet.season.here import plant_year
from sallet.season.hopkins import spot_of
from sallet.season.telling import telling_of, tellings
from sallet.season.words import days_words
from sallet.study.features import organ_words

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson
    from sallet.season.here import PlantYear
    from sallet.season.hopkins import Spot
    from sallet.season.telling import Telling
    from sallet.source import Span

_MOST_NAMED: Final = 3


def home_years(lesson: Lesson, bank: Bank) -> Mapping[str, PlantYear]:
    """Return the year of every plant at hand where a lesson was seen, by slug."""
    return _years_at(spot_of(lesson.front.seen_at), bank)


@lru_cache(maxsize=32)
def _years_at(here: Spot | None, bank: Bank) -> Mapping[str, PlantYear]:
    # Most lessons of a bank were seen at one place.
    return {other.slug: plant_year(other, here) for other in bank.lessons}


def doubts(lesson: Lesson, years: Mapping[str, PlantYear], bank: Bank) -> Iterator[Telling]:
    """Yield what a plant is not surely told from in some weeks, where no note settles it."""
    return (telling for telling in tellings(lesson, years, bank) if telling.withheld)


def problem(telling: Telling, lesson: Lesson, bank: Bank) -> Problem:
    """Return the problem of a doubt, at the look-alike that the lesson names."""
    message = (
        f"`{telling.name}` is {telling.danger}, and at times of gathering "
        f"({days_words(telling.withheld)}) {what_is_seen(telling, bank)}, "
        "expected two features of different kinds, one of them reliable"
    )
    hint = (
        "record a further feature of both that can be seen then, or write under the look-alike "
        "`- settled by: how you make sure`, or shorten the time of the edible part"
    )
    return Problem(_where(telling, lesson), message, hint)


def _where(telling: Telling, lesson: Lesson) -> Span:
    return telling.look.name.span if telling.look else lesson.front.where("name")


def what_is_seen(telling: Telling, bank: Bank) -> str:
    """Return in words what little can be seen in the worst of the weeks that are not sure."""
    worst = min(telling.unsure, key=lambda day: (len(telling.on(day)), day))
    seen = telling.on(worst)
    if not seen:
        return "nothing that can be seen tells the two apart"
    named = [
        f"{organ_words(c.this, bank.vocabulary).lower()}: {c.label.name} ({c.reliability})"
        for c in seen[:_MOST_NAMED]
    ]
    return f"all that can be seen to tell the two apart is {listed(named, 'and')}"


def unnamed_doubts(lesson: Lesson, bank: Bank) -> tuple[Telling, ...]:
    """Return the grave plants that no lesson names with this one, and that it is not told from."""
    return _unnamed(lesson.slug, bank) if lesson.is_food else ()


@lru_cache(maxsize=1024)
def _unnamed(slug: str, bank: Bank) -> tuple[Telling, ...]:
    # Two checks ask: one for what resembles the plant, one for the rest.
    lesson = next(lesson for lesson in bank.lessons if lesson.slug == slug)
    years = home_years(lesson, bank)
    named = {id(telling.other) for telling in tellings(lesson, years, bank)}
    grave = (o for o in bank.lessons if o.front.danger in GRAVE and id(o) not in named)
    found = (telling_of(lesson, other, years, bank) for other in grave)
    return tuple(telling for telling in found if telling.unsure)
