"""A dichotomous key from a table: couplets of two leads, short in the mean, reliable first.

The key is built from the top. Every way of parting a group by one character is weighed by what it
costs to judge and by how many steps remain (no key for n plants is shorter in the mean than one
that halves them: Osborne 1963, New Phytologist 62; Payne and Preece 1980, Journal of the Royal
Statistical Society A 143: 253). The most promising are followed to their ends, and the best is kept.

A plant goes down every lead that it allows, so one that varies, or of which nothing is recorded, is
reached by both. What no character parts, or only in a key too long to print, ends as a group.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import combinations
from math import log2
from typing import TYPE_CHECKING, Final

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Mapping, Sequence

    from sallet.study.table import Character, Options, Plants, Table

_WIDTH: Final = ((7, 4), (14, 3))
"""Up to how many plants how many ways of parting a group are followed to their ends."""


@dataclass(frozen=True)
class _Effort:
    """How hard is tried for a short key, and what is parted at all."""

    width: tuple[tuple[int, int], ...]
    spread: float
    """How often, in the mean, a plant of a group may be met on its two sides: 2 is on both always."""
    groups: int
    """So many groups may be weighed for each plant of the key before it is given up as too long."""


_EFFORTS: Final = (
    _Effort(_WIDTH, 2.0, 90),
    *(_Effort((), spread, 15) for spread in (2.0, 1.8, 1.65, 1.5, 1.4, 1.3, 1.2)),
)
"""Each is tried when the one before would make a key too long to print: many plants of which little
is recorded stand on both sides of every couplet, and such a key doubles again and again."""


_ALL_TRIED: Final = 7
"""Up to how many plants, where some are met more often than others, all ways are followed: so many
then promise alike that the best is not among a few of them."""
_ALL_WAYS: Final = 8
"""Up to how many classes of options every way of putting them on two sides is weighed."""


@dataclass(frozen=True)
class End:
    """Where a lead ends: one plant, or several that the key does not part."""

    plants: Plants


@dataclass(frozen=True)
class Lead:
    """One side of a couplet."""

    options: Options
    goes_to: Couplet | End


@dataclass(frozen=True)
class Couplet:
    """Two contrasting statements of one character."""

    character: int
    """Its place in the table."""
    leads: tuple[Lead, Lead]


Key = Couplet | End


@dataclass(frozen=True)
class _Parting:
    """A way of parting a group; the sides are sets of plants as bits."""

    cost: float
    character: int
    options: tuple[Options, Options]
    sides: tuple[int, int]


_Sides = tuple[tuple["Options", "Options"], int, int]
"""The options of two leads, and the plants that go down each, as bits."""


@dataclass(frozen=True)
class _Built:
    """A key for a group, and what it costs to reach each plant by it."""

    key: Key
    costs: Mapping[int, float]


def build_key(
    table: Table, plants: Plants | None = None, weights: Mapping[int, float] | None = None
) -> Key:
    """Return a key to some plants of a table, by default to all.

    `weights` say how often each plant is met; by default all alike. Plants that a character
    separates end apart, unless the key would grow too long: then groups stay together that could
    be parted only with most of their plants on both sides.
    """
    group = table.everything if plants is None else plants
    for effort in _EFFORTS[:-1]:
        try:
            return _Builder(table, weights or {}, effort, len(group)).best(_bits(group)).key
        except _TooLong:
            continue
    return _Builder(table, weights or {}, _EFFORTS[-1], None).best(_bits(group)).key


class _TooLong(Exception):
    """A key that would be too long to print."""


class _Builder:
    """Holds the keys to every group met so far. A group is a number whose bits are plants."""

    def __init__(
        self, table: Table, weights: Mapping[int, float], effort: _Effort, plants: int | None
    ) -> None:
        self.effort = effort
        self.most = None if plants is None else effort.groups * plants
        self.weights = [weights.get(plant, 1.0) for plant in range(len(table.plants))]
        self.equal = set(self.weights) == {1.0}
        self.food, self.grave = _bits(table.food), _bits(table.grave)
        self.columns = [_Column(character) for character in table.characters]
        self.built: dict[int, _Built] = {}

    def best(self, group: int) -> _Built:
        if group not in self.built:
            if self.most is not None and len(self.built) > self.most:
                raise _TooLong
            self.built[group] = self._build(group)
        return self.built[group]

    def _build(self, group: int) -> _Built:
        size = group.bit_count()
        ways = self._partings(group) if size > 1 else []
        if not ways:
            return _Built(End(_plants(group)), dict.fromkeys(_plants(group), 0.0))
        tried = [self._joined(group, way) for way in ways[: self._width(size)]]
        return min(tried, key=self._total)

    def _width(self, size: int) -> int | None:
        if not self.equal and size <= _ALL_TRIED:
            return None
        return next((wide for most, wide in self.effort.width if size <= most), 1)

    def _total(self, built: _Built) -> float:
        return sum(self.weights[plant] * cost for plant, cost in built.costs.items())

    def _joined(self, group: int, way: _Parting) -> _Built:
        sides = [self.best(side) for side in way.sides]
        leads = tuple(Lead(o, s.key) for o, s in zip(way.options, sides, strict=True))
        costs = {}
        for plant in _plants(group):
            # A plant on both sides is as likely to be met on either.
            ways = [side.costs[plant] for side in sides if plant in side.costs]
            costs[plant] = way.cost + sum(ways) / len(ways)
        return _Built(Couplet(way.character, (leads[0], leads[1])), costs)

    def _partings(self, group: int) -> list[_Parting]:
        """Return the ways of parting a group, the most promising first, each result once."""
        found: dict[tuple[int, int], _Parting] = {}
        most = self.effort.spread * group.bit_count()
        for at, column in enumerate(self.columns):
            cost, is_weak = column.character.cost, column.character.is_weak
            for way, left, right in column.partings(group):
                if left.bit_count() + right.bit_count() > most:
                    continue
                if is_weak and self._parts_food_from_harm(left, right):
                    continue
                sides = (left, right) if left < right else (right, left)
                if sides not in found or cost < found[sides].cost:
                    found[sides] = _Parting(cost, at, way, (left, right))
        return sorted(found.values(), key=self._promise)

    def _parts_food_from_harm(self, left: int, right: int) -> bool:
        """Return whether a plant that harms stays behind where a lead goes on to food."""
        # Food that is on both sides counts too: one misjudged look, and harm would end at it.
        here, there = left & ~right, right & ~left
        return bool(
            (left & self.food and there & self.grave) or (right & self.food and here & self.grave)
        )

    def _promise(self, way: _Parting) -> tuple[float, int, tuple[int, ...]]:
        left, right = way.sides
        # A plant on both sides costs its steps on either: so keys stay short to print, too.
        rest = self._rest(left) + self._rest(right)
        return (
            way.cost * self._met(left | right) + rest,
            way.character,
            tuple(sorted(way.options[0])),
        )

    def _met(self, group: int) -> float:
        return group.bit_count() if self.equal else sum(self.weights[p] for p in _plants(group))

    def _rest(self, side: int) -> float:
        """Return the steps that a side costs at the least: its weight times its entropy."""
        if self.equal:
            number = side.bit_count()
            return number * log2(number)
        weights = [weight for p in _plants(side) if (weight := self.weights[p])]
        whole = sum(weights)
        return sum(weight * log2(whole / weight) for weight in weights)


class _Column:
    """A character with its plants as bits."""

    def __init__(self, character: Character) -> None:
        self.character = character
        every = range(len(character.options))
        shown, allowed = character.shown, character.allowed
        self.told = _bits(p for p, told in enumerate(shown) if told is not None)
        self.shown = [_bits(p for p, t in enumerate(shown) if t and o in t) for o in every]
        self.allowing = [_bits(p for p, t in enumerate(allowed) if t and o in t) for o in every]
        self.parted: dict[int, tuple[_Sides, ...]] = {}
        self.ways: dict[tuple[int, ...], tuple[tuple[Options, Options], ...]] = {}

    def partings(self, group: int) -> Iterator[_Sides]:
        """Yield the ways of parting a group; plants of which nothing is told are on both sides."""
        told = group & self.told
        if told not in self.parted:
            self.parted[told] = tuple(self._partings(told))
        untold = group & ~told
        for way, left, right in self.parted[told]:
            yield way, left | untold, right | untold

    def _partings(self, told: int) -> Iterator[_Sides]:
        for way in self._ways(told):
            left, right = (self._down(told, options) for options in way)
            if told not in (left, right) and left | right == told:
                yield way, left, right

    def _down(self, told: int, options: Options) -> int:
        """Return which plants go down a lead."""
        found = 0
        for option in options:
            found |= self.allowing[option]
        return found & told

    def _ways(self, told: int) -> tuple[tuple[Options, Options], ...]:
        """Return the ways of putting the options met on two sides that exclude each other."""
        met = tuple(option for option, plants in enumerate(self.shown) if plants & told)
        if len(met) < 2:  # noqa: PLR2004 - one answer parts nothing
            return ()
        if met not in self.ways:
            by_classes = _by_classes(
                _classes(self.character, met), ordered=self.character.is_ordered
            )
            by_told = () if self.character.is_ordered else self._by_told(met)
            self.ways[met] = tuple(dict.fromkeys((*by_classes, *by_told)))
        return self.ways[met]

    def _by_told(self, met: Sequence[int]) -> Iterator[tuple[Options, Options]]:
        """Yield each option, and all options of each plant, with what is like them, against all that they exclude."""
        told = (shown for shown in self.character.shown if shown and shown <= frozenset(met))
        for options in dict.fromkeys((*(frozenset({option}) for option in met), *told)):
            against = frozenset(o for o in met if self._excludes_all(o, options))
            alike = frozenset(o for o in met if o not in against and self._excludes_all(o, against))
            if against:
                yield alike, against

    def _excludes_all(self, one: int, options: Options) -> bool:
        return all(self.character.excludes(one, option) for option in options)


def _bits(plants: Iterable[int]) -> int:
    return sum(1 << plant for plant in plants)


def _plants(bits: int) -> Plants:
    return frozenset(plant for plant in range(bits.bit_length()) if bits >> plant & 1)


def _classes(character: Character, met: Sequence[int]) -> list[Options]:
    """Return the options in classes: those that do not exclude each other stand in one."""
    classes: list[set[int]] = []
    for option in met:
        near = [c for c in classes if any(not character.excludes(option, o) for o in c)]
        classes = [c for c in classes if c not in near]
        classes.append({option}.union(*near))
    return sorted(map(frozenset, classes), key=min)


def _by_classes(classes: Sequence[Options], *, ordered: bool) -> Iterator[tuple[Options, Options]]:
    if ordered:
        sides: Iterable[tuple[Options, ...]] = (
            tuple(classes[:end]) for end in range(1, len(classes))
        )
    elif len(classes) > _ALL_WAYS:
        sides = (
            *((one,) for one in classes),
            *(tuple(classes[:end]) for end in range(2, len(classes) - 1)),
        )
    else:
        rest = classes[1:]
        sides = (
            (classes[0], *some) for size in range(len(rest)) for some in combinations(rest, size)
        )
    whole = frozenset[int]().union(*classes)
    for side in sides:
        left = frozenset[int]().union(*side)
        if whole - left:
            yield left, whole - left
