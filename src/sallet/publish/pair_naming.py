"""Which plants have a page together: every look-alike that a lesson of the course names.

Two lessons that name each other have one page; the plant for the pot stands first on it.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import chain, count
from typing import TYPE_CHECKING, Final

from sallet.lesson.dangers import danger_of
from sallet.lesson.model import GRAVE
from sallet.lesson.places import place_named

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Fact, Lesson, LookAlike

PAIRS: Final = "pairs/"
"""The folder of the pages of two plants."""
_NAMELESS: Final = "look-alike"


@dataclass(frozen=True)
class Naming:
    """A lesson that names another plant as a look-alike, and where among its look-alikes."""

    lesson: Lesson
    number: int
    """From 0."""

    @property
    def look(self) -> LookAlike:
        """Return the look-alike."""
        return self.lesson.look_alikes[self.number]


@dataclass(frozen=True)
class Pair:
    """Two plants of which a lesson names one as a look-alike of the other."""

    this: Lesson
    other: Lesson | None
    """The other plant's own lesson; None where it is described in place only."""
    name: str
    """What the other plant is called."""
    scientific_name: str
    danger: str
    """How the other plant is marked."""
    namings: tuple[Naming, ...]
    """Where the lessons name them: the first plant's own first."""
    path: str
    """The page's file: `pairs/ramsons-and-meadow-saffron.html`."""

    @property
    def own(self) -> tuple[Naming, ...]:
        """Return where the first plant's lesson names the other."""
        return tuple(naming for naming in self.namings if naming.lesson is self.this)

    @property
    def those(self) -> tuple[Fact, ...]:
        """Return what is recorded of the other plant, in place and in its own lesson."""
        in_place = (fact for naming in self.own for fact in naming.look.facts)
        return (*in_place, *(self.other.facts if self.other else ()))


def named_pairs(taught: Mapping[str, Lesson], bank: Bank) -> tuple[Pair, ...]:
    """Return the pairs that the lessons taught in a course name, in their order."""
    found: dict[tuple[str, str], list[Naming]] = {}
    for naming in _namings(taught, bank):
        found.setdefault(_key(naming, taught, bank), []).append(naming)
    paths: set[str] = set()
    return tuple(_pair(key, namings, taught, bank, paths) for key, namings in found.items())


def _namings(taught: Mapping[str, Lesson], bank: Bank) -> Iterator[Naming]:
    # What food lessons say is read first: most pairs are named by both.
    for lesson in sorted(taught.values(), key=lambda lesson: not lesson.is_food):
        for number, look in enumerate(lesson.look_alikes):
            if bank.lesson_of(look) is not lesson:
                yield Naming(lesson, number)


def _key(naming: Naming, taught: Mapping[str, Lesson], bank: Bank) -> tuple[str, str]:
    """Return the first and the other plant by slug; one described in place by its name."""
    own, other = naming.lesson, bank.lesson_of(naming.look)
    if other is None:
        return own.slug, f"{naming.look.name.value}\N{NULL}"
    comes_first = other.slug in taught and (_rank(other, taught) < _rank(own, taught))
    return (other.slug, own.slug) if comes_first else (own.slug, other.slug)


def _rank(lesson: Lesson, taught: Mapping[str, Lesson]) -> tuple[bool, int]:
    return not lesson.is_food, [*taught].index(lesson.slug)


def _pair(
    key: tuple[str, str],
    namings: list[Naming],
    taught: Mapping[str, Lesson],
    bank: Bank,
    paths: set[str],
) -> Pair:
    this = taught[key[0]]
    look = namings[0].look
    other = bank.lesson_of(look) if namings[0].lesson is this else namings[0].lesson
    return Pair(
        this=this,
        other=other,
        name=other.name if other else look.name.value,
        scientific_name=other.front.scientific_name if other else look.scientific_name,
        danger=_danger(other, look if namings[0].lesson is this else None, bank),
        namings=tuple(sorted(namings, key=lambda naming: naming.lesson is not this)),
        path=_path(this, other.slug if other else place_named(look.name.value), paths),
    )


def _danger(other: Lesson | None, look: LookAlike | None, bank: Bank) -> str:
    told = bank.danger_of(look) if look else None
    if other and (told is None or (other.is_food and told not in GRAVE)):
        return danger_of(other)
    return told or "unknown"


def _path(this: Lesson, that: str, paths: set[str]) -> str:
    """Return the name of a page and keep it among those that are given."""
    name = f"{PAIRS}{this.slug}-and-{that or _NAMELESS}"
    numbered = (f"{name}-{number}.html" for number in count(2))
    path = next(path for path in chain([f"{name}.html"], numbered) if path not in paths)
    paths.add(path)
    return path
