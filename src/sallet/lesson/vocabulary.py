"""The trade's words: organs, labels, states and qualifiers, and how each is found."""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from difflib import SequenceMatcher, get_close_matches
from functools import cached_property, lru_cache
from typing import TYPE_CHECKING, Final, Literal

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

Kind = Literal["states", "measure", "count", "words", "times", "zones"]
Reliability = Literal["firm", "fair", "weak"]


_EACH_ITS_OWN: Final = frozenset({"form", "place", "behaviour"})
"""Aspects of which an organ has many that say nothing of each other: margin and arrangement."""
_LESS: Final = 0.1
"""What a word may be less like another than the most like, to be offered beside it."""


@lru_cache(maxsize=8192)
def normal(words: str) -> str:
    """Return words without regard to capitals, hyphens and extra spaces, for looking up."""
    return re.sub(r"[\s\u00a0_-]+", " ", words.replace("’", "'")).strip().casefold()


@dataclass(frozen=True)
class State:
    """One thing that a character can be."""

    name: str
    definition: str
    also: tuple[str, ...] = ()
    excludes: frozenset[str] = frozenset()
    """Names of the states of the same label that cannot hold where this one does."""
    draw: Mapping[str, str] = field(default_factory=dict, hash=False)
    """What a drawing needs to know."""
    lead: str = ""
    """The state as a line of a key, where its name alone does not read well."""


@dataclass(frozen=True)
class Label:
    """A character of an organ or subject: what stands before the colon of a fact."""

    subject: str
    name: str
    kind: Kind
    definition: str
    aspect: str
    reliability: Reliability = "fair"
    caveat: str = ""
    asks: str = ""
    also: tuple[str, ...] = ()
    tells_of: str = ""
    """What several characters tell of alike, such as hairs on stem and leaf: they are one kind."""
    watched: bool = False
    """Whether it shows over weeks or years only, and so cannot be looked at on a day."""
    ordered: bool = False
    shared: str = ""
    """The name of the list of states it has in common with other labels, if any."""
    states: tuple[State, ...] = ()

    @property
    def character_kind(self) -> str:
        """Return what the character tells of: two of one kind are one piece of evidence.

        Forms and places are each of their own kind, unless the vocabulary says that several
        tell of the same; numbers, sizes, colours, surfaces and the like of an organ are one.
        """
        if self.tells_of:
            return self.tells_of
        return f"{self.subject}: {self.name if self.aspect in _EACH_ITS_OWN else self.aspect}"

    @cached_property
    def _found(self) -> dict[str, State]:
        by_name = {normal(word): s for s in self.states for word in s.also}
        return by_name | {normal(s.name): s for s in self.states}

    def state(self, words: str) -> State | None:
        """Return the state that some words name, or None."""
        return self._found.get(normal(words))

    def between(self, low: State, high: State) -> tuple[State, ...]:
        """Return the states of the range `low to high`: all between where they are ordered."""
        if not self.ordered:
            return (low, high)
        at = sorted((self.states.index(low), self.states.index(high)))
        return self.states[at[0] : at[1] + 1]

    def nearest(self, words: str, most: int = 3) -> tuple[str, ...]:
        """Return the names of the states whose names or synonyms are spelt most like `words`."""
        close = _close(words, self._found, most * 2)
        return tuple(dict.fromkeys(self._found[word].name for word in close))[:most]


@dataclass(frozen=True)
class Part:
    """A kind or a piece of an organ: a hip is a fruit, a leaf stalk belongs to the leaves."""

    subject: str
    name: str
    definition: str
    also: tuple[str, ...] = ()


@dataclass(frozen=True)
class Qualifier:
    """Where, when or how often a state holds: lower leaves, in winter, rarely."""

    name: str
    kind: str
    definition: str
    also: tuple[str, ...] = ()


@dataclass(frozen=True)
class Subject:
    """An organ of the plant, or a section of the lesson that holds facts."""

    name: str
    heading: str
    is_organ: bool
    definition: str
    also: tuple[str, ...] = ()
    parts: tuple[Part, ...] = ()
    labels: tuple[Label, ...] = ()

    @cached_property
    def _found(self) -> dict[str, Label]:
        by_synonym = {normal(word): label for label in self.labels for word in label.also}
        return by_synonym | {normal(label.name): label for label in self.labels}

    def label(self, words: str) -> Label | None:
        """Return the label that some words name, or None."""
        return self._found.get(normal(words))

    def nearest(self, words: str, most: int = 3, cutoff: float = 0.6) -> tuple[str, ...]:
        """Return the names of the labels whose names or synonyms are spelt most like `words`."""
        close = _close(words, self._found, most * 2, cutoff)
        return tuple(dict.fromkeys(self._found[word].name for word in close))[:most]


@dataclass(frozen=True)
class Vocabulary:
    """All subjects and qualifiers."""

    subjects: tuple[Subject, ...]
    qualifiers: tuple[Qualifier, ...] = ()

    @cached_property
    def _by_name(self) -> dict[str, Subject]:
        return {subject.name: subject for subject in self.subjects}

    @cached_property
    def _organs(self) -> dict[str, tuple[Subject, Part | None]]:
        found: dict[str, tuple[Subject, Part | None]] = {}
        for organ in self.organs:
            for part in organ.parts:
                found |= {normal(word): (organ, part) for word in (part.name, *part.also)}
        for organ in self.organs:
            found |= {normal(w): (organ, None) for w in (organ.name, organ.heading, *organ.also)}
        return found

    @cached_property
    def _qualifiers(self) -> dict[str, Qualifier]:
        by_synonym = {normal(word): q for q in self.qualifiers for word in q.also}
        return by_synonym | {normal(q.name): q for q in self.qualifiers}

    @cached_property
    def organs(self) -> tuple[Subject, ...]:
        """Return the subjects that are organs of the plant."""
        return tuple(subject for subject in self.subjects if subject.is_organ)

    @cached_property
    def organ_headings(self) -> Mapping[str, str]:
        """Return the heading of each organ by its name; what is no organ is not among them."""
        return {organ.name: organ.heading for organ in self.organs}

    def subject(self, name: str) -> Subject:
        """Return a subject by its own name; raises KeyError for another."""
        return self._by_name[name]

    def organ(self, words: str) -> tuple[Subject, Part | None] | None:
        """Return the organ, and the kind or piece of it, that some words name."""
        return self._organs.get(normal(words))

    def nearest_organs(self, words: str, most: int = 3) -> tuple[str, ...]:
        """Return the headings and parts spelt most like `words`."""
        found = (self._organs[word] for word in _close(words, self._organs, most * 2))
        names = (part.name if part else organ.heading for organ, part in found)
        return tuple(dict.fromkeys(names))[:most]

    def qualifier(self, words: str) -> Qualifier | None:
        """Return the qualifier that some words name, with or without `leaves` and the like."""
        return self._qualifiers.get(normal(words)) or self._qualifiers.get(_bare(words))

    def label(self, subject: str, name: str) -> Label | None:
        """Return a label of a subject by its words, or None."""
        return self._by_name[subject].label(name) if subject in self._by_name else None


def _bare(words: str) -> str:
    # `lower leaves`, `upper surface`: the noun repeats the organ and adds nothing.
    return re.sub(
        r"\s+(leaf|leaves|ones|surface|side|part|parts|flowers|plants|stems)$", "", normal(words)
    )


def _close(words: str, among: Iterable[str], most: int, cutoff: float = 0.6) -> list[str]:
    """Return the words spelt most like `words`, and of those only the ones nearly as like."""
    close = get_close_matches(normal(words), list(among), n=most, cutoff=cutoff)
    likeness = [SequenceMatcher(a=word, b=normal(words)).ratio() for word in close]
    return [word for word, like in zip(close, likeness, strict=True) if like > likeness[0] - _LESS]
