"""The shape of a plant's page: every value ready to be set."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from sallet.lesson.model import GRAVE

if TYPE_CHECKING:
    from collections.abc import Mapping

    from markupsafe import Markup

    from sallet.lesson.model import Lesson
    from sallet.publish.pair_drawings import PairFigure
    from sallet.publish.photographs import Photograph
    from sallet.publish.plates import PlateFigure
    from sallet.study.glossary import UsedSubject


@dataclass(frozen=True)
class FactRow:
    """A fact as a row of a table."""

    label: Markup
    value: Markup
    note: Markup
    key: bool
    organ: str = ""


@dataclass(frozen=True)
class OrganTable:
    """The facts of one organ."""

    heading: str
    rows: tuple[FactRow, ...]


@dataclass(frozen=True)
class SpellText:
    """Days of gathering, and what can be looked at then to tell a plant from one that harms."""

    when: str
    is_sure: bool
    words: str


@dataclass(frozen=True)
class Double:
    """A look-alike as the page warns of it."""

    name: str
    ident: str
    scientific_name: str
    danger: str
    page: str
    """The way to its own page, or an empty string."""
    tell: Markup
    """What tells it apart, in the fewest words the lesson gives."""
    prose: Markup
    settled_by: Markup
    marks: Markup
    """The citations of what its bullets tell, such as how it is settled."""
    organs: tuple[OrganTable, ...]
    figures: tuple[PairFigure, ...] = ()
    """The same organ of both plants, where something drawn differs."""
    pair: str = ""
    """The way to the page of the two plants."""
    spells: tuple[SpellText, ...] = ()
    """What to look at when, where the plant is for the pot and the look-alike grave."""

    @property
    def is_grave(self) -> bool:
        """Whether mistaking the plant for this one may cost a life or a night in hospital."""
        return self.danger in GRAVE


@dataclass(frozen=True)
class SeasonRow:
    """A row of the season in words."""

    name: str
    words: str
    """When, where the course meets."""
    seen: str
    """When, where the lesson was seen, if that is another time."""
    marks: Markup
    note: Markup


@dataclass(frozen=True)
class PartEaten:
    """An edible part."""

    name: str
    when: str
    """When, where the course meets."""
    seen: str
    """When, where the lesson was seen, if that is another time."""
    ways: Markup
    note: Markup
    rows: tuple[FactRow, ...]
    marks: Markup


@dataclass(frozen=True)
class PartRemoved:
    """A part to cut away."""

    name: str
    reason: Markup
    note: Markup
    marks: Markup


@dataclass(frozen=True)
class CautionText:
    """A caution with its kind."""

    kind: str
    text: Markup


@dataclass(frozen=True)
class SelfCheck:
    """A question with its answers folded below it."""

    prompt: Markup
    options: tuple[tuple[Markup, bool], ...]
    feedback: Markup


@dataclass(frozen=True)
class Passage:
    """A section of prose with the facts it holds."""

    ident: str
    heading: str
    rows: tuple[FactRow, ...]
    prose: Markup


@dataclass(frozen=True)
class SourceText:
    """A source in the list at the page's end."""

    ident: str
    number: str
    text: Markup


@dataclass(frozen=True)
class Sheet:
    """A plant's page."""

    lesson: Lesson
    intro: Markup
    doubles: tuple[Double, ...]
    key_rows: tuple[FactRow, ...]
    organs: tuple[OrganTable, ...]
    plate: tuple[PlateFigure, ...]
    """What can be drawn from the recorded characters."""
    strip: Markup
    year_note: str
    """Why the year's days are what they are."""
    rule: str
    """By what rule they are estimated; nothing where they are the lesson's own."""
    not_sure: str
    """When, of the time of gathering, it is not surely told from a plant that harms; or nothing."""
    season: tuple[SeasonRow, ...]
    eaten: tuple[PartEaten, ...]
    removed: tuple[PartRemoved, ...]
    cautions: tuple[CautionText, ...]
    passages: tuple[Passage, ...]
    questions: tuple[SelfCheck, ...]
    sources: tuple[SourceText, ...]
    words: tuple[UsedSubject, ...]
    leads: Mapping[str, Markup]
    """The running text of the sections that are set as lists, by section."""
    stamps: tuple[str, ...]
    photographs: tuple[Photograph, ...]
    picture_notes: Mapping[str, Markup]
    """What is said below a picture, by its file."""
