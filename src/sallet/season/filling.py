"""Fills the sessions of a course: which plant is taught when, by an integer programme.

Where a plant may stand in a session is a column that is 0 or 1; what must hold is a row. One wish
after another is then met as well as it can be, and what an earlier one has reached is held.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from functools import lru_cache
from itertools import product
from math import inf
from typing import TYPE_CHECKING

from sallet.season.programme import NO_LIMIT, Programme

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Mapping, Sequence

    Rule = tuple[int, int]


@dataclass(frozen=True)
class Filling:
    """A course in numbers: plants from 0 in season order, sessions from 0 in order of date."""

    away: tuple[tuple[int, ...], ...]
    """For each plant, for each session, the days to the nearest one in season; 0 is in season."""
    holds: tuple[int | None, ...]
    """For each session how many plants it can hold; None is any number."""
    pins: tuple[tuple[int, ...], ...] = ()
    """For each plant the sessions for which the teacher named it; nothing at all is none for any."""
    pairs: tuple[tuple[int, int], ...] = ()
    """Plants that are look-alikes of each other."""
    after: tuple[Rule, ...] = ()
    """What comes first and what then: the second plant in no earlier session than the first."""


@lru_cache(maxsize=8)
def fill(filling: Filling) -> tuple[tuple[int, ...], ...]:
    """Return for each plant the sessions in which it is taught; none where there is no room.

    A pinned plant is taught where it is pinned and nowhere else. No other plant takes a session
    beyond what it holds. No plant is taught before one that is to come first, be it by one rule or
    by a chain of them; where that one gets no session, what is to follow it gets none, unless it is
    pinned. Rules that contradict the pins or each other are not followed.

    What is wished, each only as far as those before it leave a choice: most plants in season; most
    plants at all; most look-alike pairs in one session or neighbouring ones; even sessions (least
    sum of squares); early sessions, and for plants out of season the fewest days away; what is
    early in season order before what is late.
    """
    # A course is planned for its checks and again for its pages: it is reckoned out once.
    timetable = _Timetable(filling)
    given = timetable.given()
    return tuple(tuple(sorted({*on})) or given.get(p, ()) for p, on in enumerate(timetable.pins))


def contradictions(pins: Sequence[Sequence[int]], after: Iterable[Rule]) -> tuple[Rule, ...]:
    """Return the rules of order that run in a circle or cannot hold with the pins.

    The latter lie on a chain of rules that leads from a plant to one pinned to an earlier session.
    """
    rules = sorted({*after})
    circles = [rule for rule in rules if rule[0] in _followers(rule[1], rules)]
    earliest, latest = _bounds(pins, [rule for rule in rules if rule not in circles])
    return tuple(
        (first, then)
        for first, then in rules
        if (first, then) in circles or earliest.get(first, -inf) > latest.get(then, inf)
    )


def _followers(plant: int, rules: Sequence[Rule]) -> set[int]:
    """Return a plant and all that come after it."""
    found = [plant]
    for one in found:
        found.extend({then for first, then in rules if first == one and then not in found})
    return {*found}


def _bounds(
    pins: Sequence[Sequence[int]], rules: Sequence[Rule]
) -> tuple[dict[int, int], dict[int, int]]:
    """Return the earliest and the latest session that pins leave to plants; no entry is any."""
    earliest = {plant: min(on) for plant, on in enumerate(pins) if on}
    mirrored = _pushed({p: -n for p, n in earliest.items()}, [(b, a) for a, b in rules])
    return _pushed(earliest, rules), {plant: -number for plant, number in mirrored.items()}


def _pushed(pinned: Mapping[int, int], rules: Sequence[Rule]) -> dict[int, int]:
    """Return the earliest sessions of pinned plants and of those that come after them."""
    found = dict(pinned)
    waiting = [*pinned]
    for one in waiting:
        for first, then in rules:
            if first == one and then not in pinned and found.get(then, -inf) < found[one]:
                found[then] = found[one]
                waiting.append(then)
    return found


class _Timetable:
    """The programme of one course: a column for each place, a plant that may be in a session."""

    def __init__(self, filling: Filling) -> None:
        self.filling = filling
        self.sessions = range(len(filling.holds))
        self.pins = filling.pins or ((),) * len(filling.away)
        self.rules = sorted({*filling.after} - {*contradictions(self.pins, filling.after)})
        self.pinned = [sum(number in on for on in self.pins) for number in self.sessions]
        self.programme = Programme()
        self.column = {place: self.programme.column(whole=True) for place in self._places()}
        self._teach_once()
        self._keep_order()
        self.crowding = dict(self._crowding())
        self.nearness = self._nearness()

    def given(self) -> dict[int, tuple[int, ...]]:
        """Return the session given to each plant that is not pinned and gets one."""
        season, *others = self._wishes()
        # That no plan has more plants in season is said to people: it must be proven.
        self.programme.minimise(season, NO_LIMIT)
        for wish in others:
            self.programme.minimise(wish)
        taught = self.programme.values
        return {plant: (number,) for (plant, number), c in self.column.items() if taught[c] > 1 / 2}

    def _wishes(self) -> Iterator[dict[int, int]]:
        """Yield what each column costs, wish by wish; below 0 it is worth something."""
        away, plants, sessions = self.filling.away, len(self.pins), len(self.sessions)
        yield {c: -1 for (plant, number), c in self.column.items() if not away[plant][number]}
        yield dict.fromkeys(self.column.values(), -1)
        yield {c: -pairs for c, pairs in self.nearness.items()}
        yield self.crowding
        yield {c: away[plant][number] or number for (plant, number), c in self.column.items()}
        yield {c: (plants - p) * (number - sessions) for (p, number), c in self.column.items()}

    def _places(self) -> Iterator[tuple[int, int]]:
        earliest, latest = _bounds(self.pins, self.rules)
        for plant, number in product(range(len(self.pins)), self.sessions):
            within = earliest.get(plant, number) <= number <= latest.get(plant, number)
            if within and not self.pins[plant] and self._room(number):
                yield plant, number

    def _room(self, number: int) -> int:
        holds, free = self.filling.holds[number], sum(not on for on in self.pins)
        return free if holds is None else min(max(holds - self.pinned[number], 0), free)

    def _of(self, plant: int, until: int | None = None) -> list[int]:
        numbers = self.sessions if until is None else range(until + 1)
        return [self.column[plant, n] for n in numbers if (plant, n) in self.column]

    def _teach_once(self) -> None:
        for plant in range(len(self.pins)):
            self.programme.row(dict.fromkeys(self._of(plant), 1), 0, 1)

    def _keep_order(self) -> None:
        # By the end of each session: taught the second, taught the first. Pins need no rows, as
        # they have closed the sessions that are too early or too late.
        for first, then in self.rules:
            for number in self.sessions:
                if (then, number) in self.column and not self.pins[first]:
                    seconds = dict.fromkeys(self._of(then, number), 1)
                    self.programme.row(
                        seconds | dict.fromkeys(self._of(first, number), -1), -inf, 0
                    )

    def _crowding(self) -> Iterator[tuple[int, int]]:
        """Yield a column for each seat and what it adds to the sum of squares, the first least."""
        for number in self.sessions:
            inside = [c for (_, there), c in self.column.items() if there == number]
            seats = [self.programme.column() for _ in inside[: self._room(number)]]
            row = dict.fromkeys(inside, 1) | dict.fromkeys(seats, -1)
            self.programme.row(row, 0, 0)
            yield from ((c, 2 * (self.pinned[number] + n) + 1) for n, c in enumerate(seats))

    def _nearness(self) -> Counter[int]:
        """Return how many look-alike pairs each column brings near each other."""
        found: Counter[int] = Counter()
        for one, other in sorted({(min(pair), max(pair)) for pair in self.filling.pairs}):
            found.update(self._near_pins(one, other))
            found.update(self._near_pins(other, one))
            found.update(self._meetings(one, other) if one != other else ())
        return found

    def _near_pins(self, pinned: int, free: int) -> Iterator[int]:
        for number in self.sessions:
            near = any(abs(number - pin) <= 1 for pin in self.pins[pinned])
            if near and (free, number) in self.column:
                yield self.column[free, number]

    def _meetings(self, one: int, other: int) -> list[int]:
        """Return a column for each two places near each other; it is 1 where both are taken."""
        near = {
            (self.column[one, here], self.column[other, there]): self.programme.column()
            for here in self.sessions
            for there in (here - 1, here, here + 1)
            if (one, here) in self.column and (other, there) in self.column
        }
        for place in {place: None for places in near for place in places}:
            row = {meeting: 1 for places, meeting in near.items() if place in places}
            self.programme.row(row | {place: -1}, -inf, 0)
        return [*near.values()]
