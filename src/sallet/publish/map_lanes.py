"""The lanes of a plant on the season map: what is eaten of a part lies on what is seen of it."""

from __future__ import annotations

import textwrap
from dataclasses import dataclass
from typing import TYPE_CHECKING

from sallet.lesson.vocabulary import normal
from sallet.publish.map_parts import look_of

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from sallet.publish.map_parts import Look
    from sallet.season.here import PlantYear, Row


@dataclass(frozen=True)
class Lane:
    """A part of a plant through the year: at least one of the two rows."""

    eaten: Row | None
    seen: Row | None
    """What can be seen of it, or of a plant that harms."""

    @property
    def rows(self) -> tuple[Row, ...]:
        """Return the rows in the order in which they are drawn, the upper one last."""
        return tuple(row for row in (self.seen, self.eaten) if row)

    @property
    def name(self) -> str:
        """Return the word that stands in the lane: what is eaten, if anything is."""
        return self.rows[-1].name

    @property
    def look(self) -> Look:
        """Return how its bars are filled."""
        return look_of(self.rows[-1].timing)


def lanes_of(year: PlantYear) -> tuple[Lane, ...]:
    """Return the lanes of a plant, those with something to eat first; without times there is none."""
    eaten = [row for row in year.eaten if row.windows]
    seen = [row for row in year.seen if row.windows]
    partners = _partners(eaten, seen)
    together = [Lane(row, partners.get(at)) for at, row in enumerate(eaten)]
    taken = {id(row) for row in partners.values()}
    return (*together, *(Lane(None, row) for row in seen if id(row) not in taken))


def _partners(eaten: Sequence[Row], seen: Sequence[Row]) -> dict[int, Row]:
    """Return what is seen of the part that each eaten row names, by the eaten row's place."""
    found: dict[int, Row] = {}
    for same in (_same_name, _same_part, _same_organ):
        for at, row in enumerate(eaten):
            partner = None if at in found else _only(same, row, seen)
            if partner and all(partner is not other for other in found.values()):
                found[at] = partner
    return found


def _only(same: Callable[[Row, Row], bool], row: Row, seen: Sequence[Row]) -> Row | None:
    # Of two rows that would do, neither is taken: the map must not guess which part is eaten.
    alike = [other for other in seen if same(row, other)]
    return alike[0] if len(alike) == 1 else None


def _same_name(row: Row, other: Row) -> bool:
    return normal(row.name) == normal(other.name)


def _same_part(row: Row, other: Row) -> bool:
    return bool(row.timing.part) and row.timing.part == other.timing.part


def _same_organ(row: Row, other: Row) -> bool:
    return bool(row.timing.organ) and row.timing.organ == other.timing.organ


def lines_of(words: str, letters: int) -> tuple[str, ...]:
    """Return words in lines of at most so many letters; a longer word is broken."""
    return tuple(textwrap.wrap(words, letters))
