"""The course as its pages show it: lessons in season order with what surrounds them."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING

from sallet.lesson.model import MEMORY
from sallet.lesson.values.times import day_of_year
from sallet.publish.prose import Scribe
from sallet.publish.sheets import Setting, plant_sheet
from sallet.season.order import in_season_on, in_season_order
from sallet.study.glossary import glossary

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping, Sequence

    from markupsafe import Markup

    from sallet.course.model import Course, Session
    from sallet.findings import Finding
    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson
    from sallet.publish.photographs import Photograph
    from sallet.publish.sheet import Sheet
    from sallet.study.glossary import UsedSubject


@dataclass(frozen=True)
class Meeting:
    """A session with the plants it teaches."""

    number: int
    session: Session
    plants: tuple[Lesson, ...]
    also_food: tuple[Lesson, ...]
    also_harm: tuple[Lesson, ...]
    """Further plants of the course that can be met on the day, for the pot and to keep away from."""
    notes: Markup


@dataclass(frozen=True)
class Cited:
    """A source of the course and the plants whose lessons cite it."""

    text: Markup
    plants: tuple[Lesson, ...]


@dataclass(frozen=True)
class Site:
    """Everything that the pages of a course are made from."""

    course: Course
    bank: Bank
    lessons: tuple[Lesson, ...]
    findings: tuple[Finding, ...]
    photographs: Mapping[str, tuple[Photograph, ...]]
    draft: bool = False

    @cached_property
    def ordered(self) -> tuple[Lesson, ...]:
        """Return the lessons in season order."""
        return in_season_order(self.lessons)

    @cached_property
    def setting(self) -> Setting:
        """Return what the plants' pages have in common."""
        taught = {lesson.slug: lesson for lesson in self.ordered}
        return Setting(self.bank, taught, self.course.units_first, self.findings)

    @cached_property
    def scribe(self) -> Scribe:
        """Return what sets the words of course.yml."""
        return Scribe(plants="plants/", places=self.setting.places)

    @cached_property
    def sheets(self) -> tuple[Sheet, ...]:
        """Return the plants' pages in season order."""
        return tuple(
            plant_sheet(lesson, self.setting, self.photographs.get(lesson.slug, ()))
            for lesson in self.ordered
        )

    @cached_property
    def food(self) -> tuple[Sheet, ...]:
        """Return the sheets of the plants taught as food."""
        return tuple(sheet for sheet in self.sheets if sheet.lesson.is_food)

    @cached_property
    def kept_away_from(self) -> tuple[Sheet, ...]:
        """Return the sheets of the plants to keep away from."""
        return tuple(sheet for sheet in self.sheets if not sheet.lesson.is_food)

    @cached_property
    def meetings(self) -> tuple[Meeting, ...]:
        """Return the sessions in the order of their dates."""
        sessions = sorted(self.course.sessions, key=lambda s: (s.date, str(s.starts)))
        return tuple(self._meeting(number, session) for number, session in enumerate(sessions, 1))

    def _meeting(self, number: int, session: Session) -> Meeting:
        found = [self.bank.find(name) for name in session.plants]
        plants = tuple(lesson for lesson in found if lesson)
        day = day_of_year(session.date.month, session.date.day)
        also = [x for x in in_season_on(self.ordered, day) if x not in plants]
        return Meeting(
            number=number,
            session=session,
            plants=plants,
            also_food=tuple(lesson for lesson in also if lesson.is_food),
            also_harm=tuple(lesson for lesson in also if not lesson.is_food),
            notes=self.scribe.text(session.notes),
        )

    @cached_property
    def words(self) -> tuple[UsedSubject, ...]:
        """Return the words that the course's lessons use."""
        return glossary(self.lessons, self.bank.vocabulary)

    @cached_property
    def about(self) -> Markup:
        """Return the course's own words about itself."""
        return self.scribe.text(self.course.about)

    @cached_property
    def sources(self) -> tuple[Cited, ...]:
        """Return the sources of all lessons, by their text."""
        cited: dict[str, dict[str, Lesson]] = {}
        for lesson, text in self._footnotes():
            cited.setdefault(text, {})[lesson.slug] = lesson
        order = sorted(cited, key=str.casefold)
        return tuple(Cited(self.scribe.line(t), tuple(cited[t].values())) for t in order)

    def _footnotes(self) -> Iterator[tuple[Lesson, str]]:
        for lesson in self.ordered:
            used = {citation.key for citation in lesson.citations}
            for note in lesson.footnotes:
                if note.key in used and note.key != MEMORY:
                    yield lesson, note.text

    def neighbours(self, sheet: Sheet) -> tuple[Lesson | None, Lesson | None]:
        """Return the plants before and after one in the season."""
        at = self.sheets.index(sheet)
        ordered: Sequence[Lesson] = self.ordered
        before = ordered[at - 1] if at else None
        return before, ordered[at + 1] if at + 1 < len(ordered) else None
