"""On which days of the year an organ of a plant can be looked at, where the course meets.

Every doubt counts against it. Days on which a time is uncertain do not count; a stage that a
lesson tells apart, such as green fruit, does not show what is recorded of the organ as a whole; and
an organ whose times are not told can be seen only where another one vouches for it.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING, Final

from sallet.season.teachable import WHOLE, days_of

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from sallet.lesson.vocabulary import Vocabulary
    from sallet.season.here import PlantYear, Row
    from sallet.study.contrast import Contrast, Where

Days = frozenset[int]
"""Days of a 365-day year (1–365)."""

_UNDERGROUND: Final = "roots"
"""Looked at only where it is dug for the pot: to uproot a plant needs the owner's leave."""
_VOUCHED_BY: Final[Mapping[str, tuple[str, ...]]] = {
    "stem": ("flowers", "fruit"),
    "bark": ("stem",),
    "seeds": ("fruit",),
    "sap": ("stem", "leaves"),
}
"""Where an organ has no time of its own: the organs that are never there without it."""
_ON_THE_STEM: Final = frozenset(
    {"stem", "upper", "middle", "flowering shoots", "at the nodes", "terminal"}
)
"""Places of leaves that are there only while the stem is."""
_STEM_LEAVES: Final = frozenset({"upper leaves", "stem leaves"})
"""Pieces of leaves that are there only while the stem is."""
_UNLIKE: Final = frozenset(
    {
        "flower buds", "closed flowers that never open", "green fruit", "green pods", "milky nuts",
        "overripe fruit", "frosted fruit", "green seeds", "dry seeds", "sprouted seeds",
    }
)  # fmt: skip
"""Stages of an organ at which it does not look as the organ as a whole is recorded to."""
_STAGES: Final = _UNLIKE | {
    "young leaves", "old leaves", "winter leaves", "rosettes", "croziers", "young stems", "old stems",
}  # fmt: skip
"""Pieces that are there at some times only, and not whenever the organ is."""
_WHEN: Final[Mapping[str, str]] = {"in flower": "flowers", "in fruit": "fruit"}
"""Times told by a stage of the plant: the organ that must be there."""
_SOME_ONLY: Final = frozenset({"age", "season", "sex"})
"""Kinds of qualifiers by which a value holds at some times, or on some plants, only."""
_WHERE_IT_GROWS: Final = frozenset({"in the open", "in sun", "in shade", "in water"})
"""Places that are none on the plant: a value holds on the plants that grow there only."""


@dataclass(frozen=True)
class Visible:
    """What can be looked at of a plant through its year."""

    year: PlantYear
    vocabulary: Vocabulary
    with_unsure: bool = False
    """Whether days count on which nobody can say. They do where the plant is in the hand: if it is
    there at all, so is what makes it be there."""

    def days_of(self, contrast: Contrast) -> Days:
        """Return on which days one can look at what a contrast tells of its first plant."""
        fact = contrast.this
        found = (self.days(fact.subject, fact.part, where) for where in contrast.places)
        return frozenset[int]().union(*found)

    def days(self, organ: str, part: str = "", where: Where = frozenset()) -> Days:
        """Return on which days an organ, or a piece of it, can be looked at in some place."""
        days = self._organ(organ, part)
        for word in where:
            days &= self._place(word, organ)
        return days

    def _organ(self, organ: str, part: str) -> Days:
        key = organ, part
        if key not in self._found:
            days = self._seen(organ, part) | self._in_hand(organ, part)
            self._found[key] = days & self._organ("stem", "") if part in _STEM_LEAVES else days
        return self._found[key]

    @cached_property
    def _found(self) -> dict[tuple[str, str], Days]:
        return {}

    def _in_hand(self, organ: str, part: str) -> Days:
        # What is picked can be looked at on every day on which it is picked.
        rows = [row for row in self.year.eaten if row.timing.organ == organ]
        return days_of(row for row in rows if part == row.timing.part or _is_all_of(part, row))

    def _seen(self, organ: str, part: str) -> Days:
        if organ == _UNDERGROUND:
            return frozenset()
        above = [row for row in self.year.seen if row.timing.organ != _UNDERGROUND]
        if organ == WHOLE and not part:
            return self._on(above)
        told = _rows_for(part, [row for row in above if row.timing.organ == organ])
        if told or part in _STAGES or organ == WHOLE:
            return self._on(told)
        others = (self._organ(other, "") for other in _VOUCHED_BY.get(organ, ()))
        return frozenset[int]().union(*others)

    def _on(self, rows: Iterable[Row]) -> Days:
        return frozenset(day for row in rows for day in self._days_on(row))

    def _days_on(self, row: Row) -> Days:
        unsure = {day for end in row.unsure for day in end.days}
        return days_of([row]) | unsure if self.with_unsure else days_of([row]) - unsure

    def _place(self, word: str, organ: str) -> Days:
        qualifier = self.vocabulary.qualifier(word)
        if qualifier is None:
            # Words that only a reader understands: nobody can say when they hold.
            return frozenset()
        if qualifier.name in _WHEN:
            return self._organ(_WHEN[qualifier.name], "")
        if qualifier.kind in _SOME_ONLY or qualifier.name in _WHERE_IT_GROWS:
            return frozenset()
        if organ == "leaves" and qualifier.name in _ON_THE_STEM:
            return self._organ("stem", "")
        return self._organ(organ, "")


def _is_all_of(part: str, row: Row) -> bool:
    """Return whether a row of a piece shows what is recorded of the whole organ: hips, no green fruit."""
    return not part and row.timing.part not in _UNLIKE


def _rows_for(part: str, rows: list[Row]) -> list[Row]:
    """Return the rows that show a piece of an organ: its own, or those of the organ as a whole."""
    own = [row for row in rows if row.timing.part == part]
    return own or [row for row in rows if not row.timing.part and part not in _STAGES]
