"""Lessons → the table behind the keys: which of the things that can be seen each plant allows.

What can stand in a key is what one can look at, or count, on a plant that is left in the ground:
nothing tasted, nothing dug up, no lengths (they hang on soil and age), nothing that takes watching.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from itertools import combinations, pairwise
from math import ceil, floor
from typing import TYPE_CHECKING, Final

from sallet.lesson.model import GRAVE
from sallet.lesson.value import Absent, Count, StateRange, Term, Words
from sallet.study.contrast import NEVER_A_TEST, characters, tell_all, told_by_place
from sallet.study.table import Character, Table
from sallet.study.values import ABOUT, can_both_hold, states_of

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Mapping, Sequence

    from sallet.lesson.model import Fact, Lesson
    from sallet.lesson.value import Value
    from sallet.lesson.vocabulary import Label, Reliability, Vocabulary
    from sallet.study.contrast import Characters, Key, Where
    from sallet.study.table import Options

UNDERGROUND: Final = "roots"
"""To uproot a plant needs the owner's leave, and kills it: no key asks for it."""
COST: Final[Mapping[Reliability, float]] = {"firm": 1.0, "fair": 1.3, "weak": 2.5}
"""What a question costs by how far its answer may be trusted. Ours; no publication has figures."""
FURTHER: Final[Mapping[str, float]] = {
    "whole plant": 0.1, "stem": 0.1, "bark": 0.2, "buds": 0.3, "fruit": 0.1, "seeds": 0.5, "sap": 0.5,
}  # fmt: skip
"""What it costs more where an organ is not the first that one looks at."""
WITH_A_LENS: Final = 0.5
IN_A_PLACE: Final = 0.1
OUT_OF_SIGHT: Final = 0.6
"""What it costs more for the part of the year in which the organ cannot be seen."""

Seen = Callable[[str, str, str, "Where"], float]
"""Of the days on which a plant (slug) can be met, the part on which one of its organs can be looked
at: slug, organ, kind or piece of it, place on it → from 0 to 1."""


@dataclass(frozen=True)
class Asked:
    """What a column of the table asks: the name of a Character."""

    organ: str
    part: str
    label: Label
    where: Where


def plant_table(
    lessons: Sequence[Lesson], vocabulary: Vocabulary, seen: Seen, *, least: float = 0.0
) -> Table:
    """Return the table of some lessons.

    What can be looked at on a smaller part than `least` of the days on which a plant can be met is
    left out, as if it were not recorded; what cannot be looked at on all of them costs more.
    """
    told = [characters(lesson.facts) for lesson in lessons]
    slugs = [lesson.slug for lesson in lessons]
    columns: dict[object, Character] = {}
    for asked in _all_asked(told, vocabulary):
        column = _column(asked, told, slugs, seen, least=least)
        if column:
            # A place at which no plant is told from elsewhere asks the same question again.
            same = asked.organ, asked.part, asked.label.name, column.shown, column.options
            columns.setdefault(same, column)
    return Table(
        plants=tuple(slugs),
        characters=tuple(columns.values()),
        food=frozenset(i for i, lesson in enumerate(lessons) if lesson.is_food),
        grave=frozenset(i for i, one in enumerate(lessons) if _may_be_grave(one)),
    )


def _may_be_grave(lesson: Lesson) -> bool:
    """Return whether a mistake may cost a life: what nobody tells of a plant to keep away from may be so."""
    return lesson.front.danger in GRAVE or not (lesson.is_food or lesson.front.danger)


def _all_asked(told: Sequence[Characters], vocabulary: Vocabulary) -> Iterator[Asked]:
    places: dict[Key, dict[Where, None]] = {}
    for plant in told:
        for key, facts in plant.items():
            for where in told_by_place(facts):
                places.setdefault(key, {frozenset(): None})[where] = None
    by_label: dict[tuple[str, str], list[Key]] = {}
    for key in sorted(places):
        by_label.setdefault((key[0], key[2]), []).append(key)
    for organ in vocabulary.organs:
        for label in filter(_can_be_asked, organ.labels):
            for key in by_label.get((organ.name, label.name), ()):
                yield from (Asked(*key[:2], label, w) for w in _known(places[key], vocabulary))


def _can_be_asked(label: Label) -> bool:
    return (
        label.kind in {"states", "count"}
        and label.subject != UNDERGROUND
        and label.aspect not in NEVER_A_TEST
        and not label.watched
    )


def _known(places: Iterable[Where], vocabulary: Vocabulary) -> Iterator[Where]:
    """Yield the places that the vocabulary knows as places: nobody can be asked about the others."""
    for where in places:
        known = [vocabulary.qualifier(word) for word in where]
        if all(q is not None and q.kind == "place" for q in known):
            yield where


def _column(
    asked: Asked, told: Sequence[Characters], slugs: Sequence[str], seen: Seen, *, least: float
) -> Character | None:
    """Return a column; None where it separates no plants."""
    key = asked.organ, asked.part, asked.label.name
    values = [_values(plant.get(key, ()), asked.where) for plant in told]
    shares = [seen(slug, asked.organ, asked.part, asked.where) for slug in slugs]
    values = [v if share >= least else None for v, share in zip(values, shares, strict=True)]
    options = _options([v for plant in values if plant for v in plant], asked.label)
    column = Character(
        name=asked,
        options=tuple(_words(option, asked.label) for option in options),
        shown=tuple(_shown(plant, options, asked.label) for plant in values),
        excluded=tuple(_excluded(option, options, asked.label) for option in options),
        kind=asked.label.character_kind,
        is_ordered=asked.label.kind == "count",
        cost=_cost(asked),
        is_reliable=asked.label.reliability == "firm",
        is_weak=asked.label.reliability == "weak",
    )
    if not _separates(column):
        return None
    recorded = [share for v, share in zip(values, shares, strict=True) if v]
    hidden = 1 - sum(recorded) / len(recorded)
    return replace(column, cost=column.cost + OUT_OF_SIGHT * hidden)


def _cost(asked: Asked) -> float:
    label = asked.label
    lens = WITH_A_LENS if "lens" in label.caveat else 0.0
    place = IN_A_PLACE if asked.where else 0.0
    return COST[label.reliability] + FURTHER.get(label.subject, 0.0) + lens + place


def _values(facts: Sequence[Fact], where: Where) -> tuple[Value, ...] | None:
    """Return what is recorded of a character in one place; None where that leaves anything open."""
    by_place = told_by_place(facts)
    if where not in by_place and tuple(by_place) != (frozenset(),):
        # What is told beside another place is the rest: it says nothing of this one, nor does
        # `lower` of `basal`. Of the whole organ is told what is told of it without a place.
        return None
    places = (where, frozenset()) if where else tuple(by_place)
    tellings = [items for place in places for items in by_place.get(place, ())]
    values = tuple(_widened(item.value) for items in tellings for item in items)
    firm = all(tell_all(items) for items in tellings)
    unread = any(isinstance(value, Words) for value in values)
    return values if values and firm and not unread else None


def _widened(value: Value) -> Value:
    """Return `about 8` as the whole numbers that it reaches: 6 to 10."""
    if not isinstance(value, Count) or not value.about:
        return value
    high = None if value.high is None else ceil(value.high * (1 + ABOUT))
    return Count(floor(value.low * (1 - ABOUT)), high)


def _options(values: Iterable[Value], label: Label) -> tuple[Value, ...]:
    values = tuple(values)
    counts = [value for value in values if isinstance(value, Count)]
    names = {n for v in values if isinstance(v, StateRange) for n in states_of(v, label)}
    nothing = [Absent()] if any(isinstance(value, Absent) for value in values) else []
    states = (
        StateRange((s.name,), (Term(s.name, s.name),)) for s in label.states if s.name in names
    )
    return (*nothing, *states, *_intervals(counts))


def _intervals(counts: Sequence[Count]) -> Iterator[Count]:
    """Yield the numbers at which no recorded count begins or ends inside, in order."""
    starts = {count.low for count in counts}
    starts |= {count.high + 1 for count in counts if count.high is not None}
    open_end = any(count.high is None for count in counts)
    ordered = sorted(starts)
    for first, following in pairwise(ordered):
        if any(_holds(count, first) for count in counts):
            yield Count(first, following - 1)
    if open_end and ordered:
        yield Count(ordered[-1], None)


def _holds(count: Count, number: int) -> bool:
    return count.low <= number and (count.high is None or number <= count.high)


def _shown(
    values: tuple[Value, ...] | None, options: Sequence[Value], label: Label
) -> Options | None:
    if values is None:
        return None
    return frozenset(
        at
        for at, option in enumerate(options)
        if any(_is_among(option, value, label) for value in values)
    )


def _is_among(option: Value, value: Value, label: Label) -> bool:
    """Return whether an option is, or is part of, a recorded value."""
    if isinstance(option, StateRange) and isinstance(value, StateRange):
        return option.names[0] in states_of(value, label)
    if isinstance(option, Absent) or isinstance(value, Absent):
        return option == value
    return can_both_hold(value, option, label)


def _excluded(option: Value, options: Sequence[Value], label: Label) -> Options:
    return frozenset(
        at for at, other in enumerate(options) if not can_both_hold(option, other, label)
    )


def _separates(column: Character) -> bool:
    told = [plant for plant, shown in enumerate(column.shown) if shown]
    return any(column.separates(one, other) for one, other in combinations(told, 2))


def _words(option: Value, label: Label) -> str:
    match option:
        case StateRange((name,)):
            state = label.state(name)
            return state.lead or state.name if state else name
        case Count(low, None):
            return f"{low} or more"
        case Count(low, high):
            return str(low) if low == high else f"{low}–{high}"
    return "none"
