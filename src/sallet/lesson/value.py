"""What stands behind the colon of a fact, as frozen values."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from sallet.source import Span


@dataclass(frozen=True)
class Term:
    """A state's name in the vocabulary and the words by which the lesson calls it."""

    name: str
    words: str


@dataclass(frozen=True)
class StateRange:
    """One state, or all from one to another; names as in the vocabulary, in its order."""

    names: tuple[str, ...]
    ends: tuple[Term, ...]
    """The state, or the two ends of the range, as written."""

    @property
    def is_range(self) -> bool:
        """Whether it is a range between two states."""
        return len(self.ends) > 1


@dataclass(frozen=True)
class Absent:
    """`none`: the thing is known not to be there."""


@dataclass(frozen=True)
class Measure:
    """A length in millimetres, exact. `least` and `most` are the extremes, where given."""

    low: Fraction
    high: Fraction
    unit: str
    least: Fraction | None = None
    most: Fraction | None = None
    about: bool = False
    step: Fraction = Fraction(1)
    """The finest step the writer used, in millimetres: pages round no finer."""

    @property
    def smallest(self) -> Fraction:
        """Return the smallest length that was recorded, in millimetres."""
        return self.low if self.least is None else min(self.least, self.low)

    @property
    def largest(self) -> Fraction:
        """Return the largest length that was recorded, in millimetres."""
        return self.high if self.most is None else max(self.most, self.high)


@dataclass(frozen=True)
class Count:
    """A number of things, from `low` to `high`; `high` None means `many` or no upper end."""

    low: int
    high: int | None
    about: bool = False


@dataclass(frozen=True)
class Window:
    """A time of year, from and to inclusive days of a 365-day year (1 January is 1).

    `first > last` wraps the new year.
    """

    first: int
    last: int

    def __contains__(self, day: int) -> bool:
        if self.first <= self.last:
            return self.first <= day <= self.last
        return day >= self.first or day <= self.last

    @property
    def days(self) -> tuple[int, ...]:
        """Return the days of the window in their order."""
        if self.first <= self.last:
            return tuple(range(self.first, self.last + 1))
        return (*range(self.first, 366), *range(1, self.last + 1))


@dataclass(frozen=True)
class Zones:
    """Hardiness zones, from and to, such as `4` or `7b`."""

    low: str
    high: str


@dataclass(frozen=True)
class Words:
    """Words that are kept as they stand: free text, or what could not be read."""

    text: str
    understood: bool = True


Value = StateRange | Absent | Measure | Count | Window | Zones | Words


@dataclass(frozen=True)
class Qualified:
    """Where or when a value holds: a word of the vocabulary, or kept for the reader."""

    words: str
    name: str | None = None
    kind: str = ""


@dataclass(frozen=True)
class Item:
    """One of the values of a fact, with its qualifiers, and where it stands."""

    value: Value
    text: str
    span: Span
    qualifiers: tuple[Qualified, ...] = ()

    @property
    def qualifier_names(self) -> frozenset[str]:
        """Return the qualifiers that the vocabulary knows."""
        return frozenset(q.name for q in self.qualifiers if q.name)

    @property
    def where(self) -> frozenset[str]:
        """Return where and when the value holds; `often` and its like say neither."""
        return frozenset(
            q.name or q.words.casefold() for q in self.qualifiers if q.kind != "frequency"
        )
