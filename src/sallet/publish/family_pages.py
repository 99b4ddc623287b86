"""What stands on the page of families, ready to be set."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from markupsafe import Markup

from sallet.lesson.model import GRAVE
from sallet.publish.sheet import FactRow
from sallet.publish.values import Writer, explained
from sallet.study.families import families
from sallet.study.glossary import glossary

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from sallet.lesson.model import Lesson
    from sallet.lesson.vocabulary import Vocabulary
    from sallet.publish.sheets import Setting
    from sallet.study.families import Family, SharedFeature
    from sallet.study.glossary import UsedSubject


@dataclass(frozen=True)
class FamilyTable:
    """A family with its members and what they share."""

    name: str
    """Empty for the plants whose lessons tell no family."""
    ident: str
    lessons: tuple[Lesson, ...]
    rows: tuple[FactRow, ...]
    holds_food: bool
    grave: int
    """How many members are deadly or poisonous."""
    untold: int
    """How many are to be kept away from without their danger being told."""

    @property
    def is_mixed(self) -> bool:
        """Whether relatives stand here of which some are eaten and others may kill."""
        return bool(self.name) and self.holds_food and self.grave + self.untold > 0


@dataclass(frozen=True)
class FamilyPage:
    """The page of families."""

    families: tuple[FamilyTable, ...]
    words: tuple[UsedSubject, ...]
    """The words that the tables explain."""


def family_page(setting: Setting) -> FamilyPage:
    """Return the page of the families of a course."""
    vocabulary, writer = setting.bank.vocabulary, Writer(setting.units_first)
    found = families(setting.taught.values(), vocabulary)
    tables = (
        _table(family, f"family-{number}", writer, vocabulary)
        for number, family in enumerate(found, 1)
    )
    return FamilyPage(tuple(tables), tuple(_words(found, vocabulary)))


def _table(family: Family, ident: str, writer: Writer, vocabulary: Vocabulary) -> FamilyTable:
    lessons = family.lessons
    return FamilyTable(
        name=family.name,
        ident=ident,
        lessons=lessons,
        rows=tuple(_row(feature, writer, vocabulary) for feature in family.shared),
        holds_food=any(lesson.is_food for lesson in lessons),
        # A danger counts also where the plant is taught as food.
        grave=sum(lesson.front.danger in GRAVE for lesson in lessons),
        untold=sum(not lesson.is_food and lesson.front.danger is None for lesson in lessons),
    )


def _row(feature: SharedFeature, writer: Writer, vocabulary: Vocabulary) -> FactRow:
    return FactRow(
        label=explained(feature.label, feature.subject, feature.label),
        value=writer.items(feature.items, feature.subject, feature.label),
        note=Markup(),
        key=False,
        organ=feature.part or vocabulary.subject(feature.subject).heading,
    )


def _words(found: Sequence[Family], vocabulary: Vocabulary) -> Iterator[UsedSubject]:
    """Yield the words of the members' lessons that some table shows."""
    sharing = [family for family in found if family.shared]
    shown = {(feature.subject, feature.label) for family in sharing for feature in family.shared}
    for used in glossary((x for family in sharing for x in family.lessons), vocabulary):
        labels = (x for x in used.labels if (used.subject.name, x.label.name) in shown)
        if kept := tuple(labels):
            yield replace(used, labels=kept)
