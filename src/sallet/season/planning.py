"""Plans a course: moves the plants' years to its place, and fills its sessions."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

from sallet.lesson.values.times import YEAR
from sallet.season.filling import Filling, contradictions, fill
from sallet.season.gathering import all_tellings, gathered_surely
from sallet.season.here import plant_year
from sallet.season.hopkins import spot_of
from sallet.season.observed import observed_here
from sallet.season.order import in_season_order
from sallet.season.plan import Meeting, Plan, Taught, Unplaced
from sallet.season.teachable import day_of, look_alike_pairs, teachable

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Mapping, Sequence
    from datetime import date

    from sallet.course.model import Course
    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson
    from sallet.season.gathering import Tellings
    from sallet.season.here import PlantYear
    from sallet.season.teachable import Pair, Teachable


def plant_years(course: Course, bank: Bank) -> Mapping[str, PlantYear]:
    """Return the year of every lesson at hand where the course meets, by slug."""
    here = spot_of(course.place)
    observed = list(observed_here(course, bank))
    return {
        lesson.slug: plant_year(lesson, here, [o for o in observed if o.lesson is lesson])
        for lesson in bank.lessons
    }


def season_of(course: Course, bank: Bank, lessons: Iterable[Lesson]) -> tuple[Teachable, ...]:
    """Return when each of some lessons is in season to teach, in season order."""
    return _season(plant_years(course, bank), bank, lessons)[0]


def year_and_tellings(
    course: Course, bank: Bank, lessons: Iterable[Lesson]
) -> tuple[tuple[PlantYear, ...], Mapping[str, Tellings]]:
    """Return each plant's year in season order, and how each food plant is told from what harms."""
    plants, told = _season(plant_years(course, bank), bank, lessons)
    return tuple(plant.year for plant in plants), told


def _season(
    years: Mapping[str, PlantYear], bank: Bank, lessons: Iterable[Lesson]
) -> tuple[tuple[Teachable, ...], Mapping[str, Tellings]]:
    told = all_tellings(years, bank)
    sure = {slug: gathered_surely(year, told.get(slug, ())) for slug, year in years.items()}
    pairs = look_alike_pairs(bank.lessons, bank)
    ordered = in_season_order(sure[lesson.slug] for lesson in lessons)
    # The mistake is made in the weeks that are not sure too.
    return tuple(teachable(year, _taken_for(year, years, pairs)) for year in ordered), told


def make_plan(course: Course, bank: Bank, lessons: Iterable[Lesson]) -> Plan:
    """Return the plan of a course that teaches some lessons of a bank."""
    plants, told = _season(plant_years(course, bank), bank, lessons)
    return replace(_Planner(course, bank, plants).plan(), tellings=told)


def broken_rules(
    course: Course, bank: Bank, lessons: Iterable[Lesson]
) -> frozenset[tuple[str, str]]:
    """Return the rules of order, as slugs of what is first and what then, that the pins break."""
    return _Planner(course, bank, season_of(course, bank, lessons)).broken()


def _taken_for(
    year: PlantYear, years: Mapping[str, PlantYear], pairs: frozenset[Pair]
) -> list[PlantYear]:
    if year.lesson.is_food:
        return []
    slug = year.lesson.slug
    others = [years[next(iter(pair - {slug}))] for pair in pairs if slug in pair]
    return sorted((o for o in others if o.lesson.is_food), key=lambda o: o.lesson.name.casefold())


class _Planner:
    """Holds what every part of one plan needs."""

    def __init__(self, course: Course, bank: Bank, plants: tuple[Teachable, ...]) -> None:
        self.plants = plants
        self.sessions = course.sessions
        self.at = {what.year.lesson.slug: i for i, what in enumerate(plants)}
        pairs = look_alike_pairs(bank.lessons, bank)
        self.pairs = frozenset(pair for pair in pairs if pair <= self.at.keys())
        self.pins = [self._named(session.plants, bank) for session in self.sessions]
        self.filling = self._filling(tuple(self._after(course, bank)))
        aside = contradictions(self.filling.pins, self.filling.after)
        self.held = [rule for rule in self.filling.after if rule not in aside]

    def plan(self) -> Plan:
        sessions_of = fill(self.filling)
        inside = [
            [plant for plant, numbers in enumerate(sessions_of) if number in numbers]
            for number in range(len(self.sessions))
        ]
        return Plan(
            plants=self.plants,
            meetings=tuple(self._meeting(n, inside[n], sessions_of) for n in range(len(inside))),
            unplaced=tuple(self._unplaced(p) for p, n in enumerate(sessions_of) if not n),
            pairs=self.pairs,
        )

    def broken(self) -> frozenset[tuple[str, str]]:
        filling = self.filling
        # Without pins nothing but a circle is left, and that is no fault of theirs.
        circles = contradictions((), filling.after)
        found = [r for r in contradictions(filling.pins, filling.after) if r not in circles]
        return frozenset((self._lesson(a).slug, self._lesson(b).slug) for a, b in found)

    def _named(self, names: Iterable[str], bank: Bank) -> list[int]:
        found = [lesson.slug for name in names if (lesson := bank.find(name))]
        return [self.at[slug] for slug in dict.fromkeys(found) if slug in self.at]

    def _after(self, course: Course, bank: Bank) -> Iterator[tuple[int, int]]:
        for rule in course.after:
            for then in self._named([rule.plant], bank):
                for first in self._named(rule.first, bank):
                    yield first, then

    def _filling(self, after: tuple[tuple[int, int], ...]) -> Filling:
        days = [day_of(session.date) for session in self.sessions]
        numbers = range(len(self.sessions))
        return Filling(
            away=tuple(tuple(what.days_away(day) for day in days) for what in self.plants),
            holds=tuple(session.holds for session in self.sessions),
            pins=tuple(
                tuple(n for n in numbers if plant in self.pins[n])
                for plant in range(len(self.plants))
            ),
            pairs=tuple(sorted((min(p), max(p)) for p in map(self._numbers, self.pairs))),
            after=after,
        )

    def _numbers(self, pair: Pair) -> list[int]:
        return [self.at[slug] for slug in pair]

    def _meeting(
        self, number: int, inside: Sequence[int], sessions_of: Sequence[Sequence[int]]
    ) -> Meeting:
        session = self.sessions[number]
        day = day_of(session.date)
        return Meeting(
            number=number + 1,
            session=session,
            taught=tuple(
                self._taught(plant, number, sessions_of) for plant in self._in_order(number, inside)
            ),
            also=tuple(
                w for i, w in enumerate(self.plants) if i not in inside and _is_told(w, day)
            ),
        )

    def _in_order(self, number: int, inside: Sequence[int]) -> list[int]:
        """Return a session's plants: as named, then by season, but none before what it follows."""
        named = [plant for plant in self.pins[number] if plant in inside]
        waiting = [*named, *(plant for plant in inside if plant not in named)]
        ordered: list[int] = []
        while waiting:
            free = [plant for plant in waiting if not self._before(plant) & {*waiting}]
            ordered.append((free or waiting)[0])
            waiting.remove(ordered[-1])
        return ordered

    def _before(self, plant: int) -> set[int]:
        return {first for first, then in self.held if then == plant}

    def _taught(self, plant: int, number: int, sessions_of: Sequence[Sequence[int]]) -> Taught:
        what = self.plants[plant]
        date = self.sessions[number].date
        day = day_of(date)
        return Taught(
            what=what,
            day=day,
            pinned=plant in self.pins[number],
            near=tuple(self._near(plant, number, sessions_of)),
            after=tuple(self._after_which(plant, sessions_of)),
            nearest=None if what.is_on(day) else nearest_date(what, [date]),
        )

    def _lesson(self, plant: int) -> Lesson:
        return self.plants[plant].year.lesson

    def _after_which(self, plant: int, sessions_of: Sequence[Sequence[int]]) -> Iterator[Lesson]:
        # One for which there was no room comes before nothing.
        for first in sorted(self._before(plant)):
            if sessions_of[first]:
                yield self._lesson(first)

    def _near(
        self, plant: int, number: int, sessions_of: Sequence[Sequence[int]]
    ) -> Iterator[tuple[Lesson, int]]:
        slug = self._lesson(plant).slug
        others = sorted(self.at[next(iter(pair - {slug}))] for pair in self.pairs if slug in pair)
        for other in others:
            for there in sessions_of[other]:
                if abs(there - number) <= 1:
                    yield self._lesson(other), there + 1

    def _unplaced(self, plant: int) -> Unplaced:
        what = self.plants[plant]
        return Unplaced(what, nearest_date(what, [session.date for session in self.sessions]))


def _is_told(what: Teachable, day: int) -> bool:
    # Of a plant that harms a group is told as soon as nobody can say that it will not be met.
    return what.is_about(day) or (not what.year.lesson.is_food and what.year.may_be_seen(day))


def nearest_date(what: Teachable, dates: Sequence[date]) -> date | None:
    """Return the date nearest to one of some dates on which a plant is in season; the later of two.

    None for a plant that is never in season, or without dates.
    """
    if not what.days:
        return None
    near = [(abs(days), -days, start) for start in dates for days in _apart(what, start)]
    if not near:
        return None
    _, back, start = min(near)
    return start - timedelta(days=back)


def _apart(what: Teachable, start: date) -> Iterator[int]:
    for days in range(YEAR):
        for signed in (days, -days):
            if what.is_on(day_of(start + timedelta(days=signed))):
                yield signed
                return
