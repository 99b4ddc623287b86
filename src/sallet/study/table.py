"""Plants against characters: which things that can be seen on a specimen each plant allows.

One table stands behind both keys. A character is a question with options, and of every plant it
knows which of the options can be met on it. A plant of which nothing is recorded allows them all,
so silence never rules a plant out; one that varies allows several; and two options exclude each
other only where the vocabulary says that no part of a plant shows both.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Hashable, Iterable, Sequence

Options = frozenset[int]
"""Options of a character by their places in it."""
Plants = frozenset[int]
"""Plants of a table by their places in it."""


@dataclass(frozen=True)
class Character:
    """A question that can be asked of a specimen, and how each plant answers it."""

    name: Hashable
    options: tuple[str, ...]
    shown: tuple[Options | None, ...]
    """By plant: the options that are recorded of it; None where nothing is."""
    excluded: tuple[Options, ...] = ()
    """By option: the options that exclude it; empty means that every option excludes the others."""
    kind: str = ""
    """What it tells of: two characters of one kind are one piece of evidence; empty, a kind by itself."""
    is_ordered: bool = False
    """Whether the options stand in order, as numbers do: a lead then has all up to one of them."""
    cost: float = 1.0
    """How hard it is to see and to judge: 1 for what is firm and seen at once."""
    is_reliable: bool = True
    """Whether it may be trusted by itself."""
    is_weak: bool = False
    """Whether it may never be all that parts a plant for the pot from one that harms."""

    @cached_property
    def allowed(self) -> tuple[Options | None, ...]:
        """Return by plant the options that could be met on it: those that nothing shown excludes."""
        return tuple(None if told is None else self._like(told) for told in self.shown)

    def _like(self, told: Options) -> Options:
        every = range(len(self.options))
        return frozenset(o for o in every if any(not self.excludes(o, shown) for shown in told))

    def excludes(self, one: int, other: int) -> bool:
        """Return whether no part of a plant shows both of two options."""
        return one != other and (not self.excluded or other in self.excluded[one])

    def contradicts(self, plant: int, seen: Iterable[int]) -> bool:
        """Return whether a plant is ruled out by what was seen: any one of some options."""
        allowed, options = self.allowed[plant], frozenset(seen)
        return allowed is not None and bool(options) and not options & allowed

    def separates(self, one: int, other: int) -> bool:
        """Return whether nothing that is recorded of one plant could be met on the other."""
        ours, theirs = self.shown[one], self.allowed[other]
        return ours is not None and theirs is not None and not ours & theirs


@dataclass(frozen=True)
class Table:
    """Plants, and the characters by which they are told."""

    plants: tuple[Hashable, ...]
    characters: tuple[Character, ...]
    food: Plants = frozenset()
    """The plants for the pot."""
    grave: Plants = frozenset()
    """The plants that may cost a life or a night in hospital."""

    @cached_property
    def everything(self) -> Plants:
        """Return all plants."""
        return frozenset(range(len(self.plants)))

    def kinds(self, characters: Iterable[int]) -> frozenset[Hashable]:
        """Return of how many different kinds some characters are, by their places in the table."""
        return frozenset(self.characters[at].kind or at for at in characters)

    def separating(self, one: int, other: int) -> tuple[Character, ...]:
        """Return the characters that separate two plants."""
        return tuple(c for c in self.characters if c.separates(one, other))

    @cached_property
    def inseparable(self) -> tuple[tuple[int, int], ...]:
        """Return the pairs of plants that no character separates."""
        return tuple(
            (one, other)
            for one in range(len(self.plants))
            for other in range(one + 1, len(self.plants))
            if not self.separating(one, other)
        )


@dataclass(frozen=True)
class Standing:
    """How a plant stands against what was seen."""

    plant: int
    contradicting: tuple[int, ...]
    """The characters that contradict it, by their places in the table."""
    is_out: bool


CONTRADICTIONS_AGAINST_GRAVE = 2
"""So many reliable characters of different kinds must contradict a dangerous plant before it drops out:
one look, at the milk of stem and leaf or at how the leaves are set, is one mistake."""


def standings(table: Table, seen: Sequence[tuple[int, Options]]) -> tuple[Standing, ...]:
    """Return how every plant stands against what was seen: options by character.

    Several options of one character mean that the specimen shows one of them. A plant drops out
    when a character contradicts it; a dangerous one only when two reliable characters of different kinds do.
    """
    return tuple(_standing(table, plant, seen) for plant in range(len(table.plants)))


def _standing(table: Table, plant: int, seen: Sequence[tuple[int, Options]]) -> Standing:
    found = (at for at, options in seen if table.characters[at].contradicts(plant, options))
    # One character looked at twice is one contradiction.
    against = tuple(dict.fromkeys(found))
    if plant in table.grave:
        kinds = table.kinds(at for at in against if table.characters[at].is_reliable)
        return Standing(plant, against, len(kinds) >= CONTRADICTIONS_AGAINST_GRAVE)
    return Standing(plant, against, bool(against))
