"""A key as it is printed: numbered couplets of two leads, and what stands where a lead ends."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, cast

from sallet.publish.key_against import harms, look_alikes, page_way
from sallet.publish.key_words import organ_asked
from sallet.study.couplets import Couplet, End
from sallet.study.lengths import plants_of

if TYPE_CHECKING:
    from collections.abc import Iterator

    from markupsafe import Markup

    from sallet.lesson.model import Lesson
    from sallet.lesson.vocabulary import Label
    from sallet.publish.key_against import Against
    from sallet.publish.key_words import Explainer
    from sallet.publish.sheets import Setting
    from sallet.study.couplets import Key, Lead
    from sallet.study.plant_table import Asked
    from sallet.study.table import Options, Plants, Table

Path = tuple[tuple[int, "Options"], ...]
"""The leads taken so far: characters by their places in the table, and the options of each."""


@dataclass(frozen=True)
class Name:
    """A plant where a key ends."""

    lesson: Lesson
    against: tuple[Against, ...]
    """The plants that harm and that it is taken for."""


@dataclass(frozen=True)
class Ending:
    """Where a lead ends: one plant, or several that are not told apart."""

    names: tuple[Name, ...]
    harms: bool
    """Whether any of several may do harm: then all of them are left."""
    barely: tuple[Against, ...]
    """Further plants that harm, and that a single character of the key keeps from food here."""

    @property
    def is_group(self) -> bool:
        """Whether the key could not part what stands here."""
        return len(self.names) > 1


@dataclass(frozen=True)
class LeadLine:
    """One of the two statements of a couplet."""

    states: Markup
    number: int
    """The couplet it leads to; 0 where it ends."""
    ending: Ending | None


@dataclass(frozen=True)
class CoupletLines:
    """A couplet with its number and that of the couplet it is reached from (0 for the first)."""

    number: int
    came_from: int
    character: Label
    organ: str
    """The organ, and the place on it, as a heading."""
    label: Markup
    is_reliable: bool
    leads: tuple[LeadLine, ...]
    both: Markup
    """The states that are recorded of some of the plants and that neither lead rules out."""


@dataclass(frozen=True)
class _Spot:
    """A couplet's number, that of the couplet before it, and the leads that were taken."""

    number: int = 1
    came_from: int = 0
    path: Path = ()

    def behind(self, key: Couplet) -> tuple[_Spot, _Spot]:
        """Return the spots of what follows the two leads."""
        first, second = key.leads
        behind = self.number + 1 + size_of(first.goes_to)
        return (
            _Spot(self.number + 1, self.number, (*self.path, (key.character, first.options))),
            _Spot(behind, self.number, (*self.path, (key.character, second.options))),
        )


def size_of(key: Key) -> int:
    """Return the number of couplets of a key."""
    return 1 + sum(size_of(lead.goes_to) for lead in key.leads) if isinstance(key, Couplet) else 0


@dataclass(frozen=True)
class Printer:
    """Sets the key to a table."""

    table: Table
    setting: Setting
    explain: Explainer

    def couplets(self, key: Key) -> tuple[CoupletLines, ...]:
        """Return the couplets of a key in reading order: each with all that its first lead leads to."""
        return tuple(self._couplets(key, _Spot())) if isinstance(key, Couplet) else ()

    def _couplets(self, key: Couplet, spot: _Spot) -> Iterator[CoupletLines]:
        behind = spot.behind(key)
        yield self._lines(key, spot, behind)
        for lead, following in zip(key.leads, behind, strict=True):
            if isinstance(lead.goes_to, Couplet):
                yield from self._couplets(lead.goes_to, following)

    def _lines(self, key: Couplet, spot: _Spot, behind: tuple[_Spot, _Spot]) -> CoupletLines:
        asked = self.asked(key.character)
        leads = zip(key.leads, behind, strict=True)
        return CoupletLines(
            number=spot.number,
            came_from=spot.came_from,
            character=asked.label,
            organ=organ_asked(asked, self.setting.bank.vocabulary),
            label=self.explain.label(asked.label),
            is_reliable=self.table.characters[key.character].is_reliable,
            leads=tuple(self._lead(key, lead, following) for lead, following in leads),
            both=self._states(key.character, self._both(key)),
        )

    def _lead(self, key: Couplet, lead: Lead, behind: _Spot) -> LeadLine:
        states = self._states(key.character, lead.options)
        if isinstance(lead.goes_to, End):
            return LeadLine(states, 0, self.ending(lead.goes_to, behind.path))
        return LeadLine(states, behind.number, None)

    def _states(self, character: int, options: Options) -> Markup:
        words = [self.table.characters[character].options[option] for option in sorted(options)]
        return self.explain.options(words, self.asked(character).label)

    def _both(self, key: Couplet) -> Options:
        shown = self.table.characters[key.character].shown
        met = frozenset(option for plant in plants_of(key) for option in shown[plant] or ())
        return met.difference(*(lead.options for lead in key.leads))

    def ending(self, end: End, path: Path = ()) -> Ending:
        """Return what stands where a way through the key ends."""
        plants = [(plant, self.lesson(plant)) for plant in sorted(end.plants)]
        names = tuple(Name(lesson, look_alikes(lesson, self.setting)) for _, lesson in plants)
        if len(names) > 1 and any(harms(lesson) for _, lesson in plants):
            return Ending(names, harms=True, barely=())
        food = any(lesson.is_food for _, lesson in plants)
        barely = self._barely_apart(end.plants, path) if food else ()
        known = {one.name for name in names for one in name.against if len(names) == 1}
        return Ending(
            names, harms=False, barely=tuple(one for one in barely if one.name not in known)
        )

    def _barely_apart(self, plants: Plants, path: Path) -> Iterator[Against]:
        """Yield the plants that harm and that only one kind of character on the way contradicts."""
        for other in sorted(self.table.grave - plants):
            against = self.table.kinds(
                at for at, seen in path if self.table.characters[at].contradicts(other, seen)
            )
            if len(against) == 1:
                yield page_way(self.lesson(other), self.setting)

    def asked(self, character: int) -> Asked:
        """Return what a character of the table asks."""
        return cast("Asked", self.table.characters[character].name)

    def lesson(self, plant: int) -> Lesson:
        """Return the lesson of a plant of the table."""
        return self.setting.taught[str(self.table.plants[plant])]
