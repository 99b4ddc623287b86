"""The course as its pages show it: lessons in season order with what surrounds them."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property
from typing import TYPE_CHECKING, Final

from sallet.lesson.model import MEMORY
from sallet.publish.briefing import briefing_of
from sallet.publish.calendars import gathered_all_year, harvest_calendar, sessions_calendar
from sallet.publish.drawings import word_drawing
from sallet.publish.family_pages import family_page
from sallet.publish.key_asking import ticking
from sallet.publish.key_pages import key_pages
from sallet.publish.key_words import Explainer
from sallet.publish.map_key import map_key
from sallet.publish.pair_comparing import Comparer
from sallet.publish.pair_matrix import matrices
from sallet.publish.pair_pages import PairMaker
from sallet.publish.pair_untold import untold
from sallet.publish.prose import PAGE_END, Scribe
from sallet.publish.season_map import map_sheets, season_map
from sallet.publish.sheets import PLANTS, Setting, doubles_elsewhere, plant_sheet
from sallet.season.keying import key_table
from sallet.season.planning import make_plan, plant_years
from sallet.season.reasons import year_notes
from sallet.study.glossary import anchor, glossary

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping, Sequence
    from datetime import date

    from markupsafe import Markup

    from sallet.cards.printed import Printed
    from sallet.course.model import Course
    from sallet.findings import Finding
    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson
    from sallet.lesson.vocabulary import Subject
    from sallet.publish.briefing import Briefing
    from sallet.publish.family_pages import FamilyPage
    from sallet.publish.key_asking import Ticking
    from sallet.publish.key_pages import KeyPage
    from sallet.publish.pair_matrix import Matrices
    from sallet.publish.pair_pages import PairPage
    from sallet.publish.pair_untold import Untold
    from sallet.publish.photographs import Photograph
    from sallet.publish.sheet import Double, Sheet
    from sallet.season.here import PlantYear
    from sallet.season.plan import Meeting, Plan
    from sallet.study.glossary import UsedLabel, UsedSubject


SESSIONS: Final = "sessions.ics"
HARVEST: Final = "harvest.ics"


@dataclass(frozen=True)
class SessionPage:
    """A session as the syllabus sets it."""

    meeting: Meeting
    notes: Markup
    briefing: Briefing
    reading: tuple[Lesson, ...]
    """What to read for the next session: its plants."""

    @property
    def food(self) -> tuple[Lesson, ...]:
        """Return the plants of the day that are taught as food."""
        return tuple(t.lesson for t in self.meeting.taught if t.lesson.is_food)

    @property
    def also_food(self) -> tuple[Lesson, ...]:
        """Return further plants of the course that can be gathered on the day."""
        return tuple(w.year.lesson for w in self.meeting.also if w.year.lesson.is_food)

    @property
    def also_harm(self) -> tuple[tuple[Lesson, bool], ...]:
        """Return further plants to keep away from, and whether it is sure that they can be met."""
        harm = [what for what in self.meeting.also if not what.year.lesson.is_food]
        return tuple((what.year.lesson, what.is_about(self.meeting.day)) for what in harm)


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
    printed: Printed | None = None
    """What was measured of the field cards; without it nothing is printed."""

    @cached_property
    def plan(self) -> Plan:
        """Return which plant is taught when, and every plant's year where the course meets."""
        return make_plan(self.course, self.bank, self.lessons)

    @cached_property
    def ordered(self) -> tuple[Lesson, ...]:
        """Return the lessons in season order."""
        return tuple(year.lesson for year in self.plan.years)

    @cached_property
    def setting(self) -> Setting:
        """Return what the plants' pages have in common."""
        taught = {lesson.slug: lesson for lesson in self.ordered}
        years = {year.lesson.slug: year for year in self.plan.years}
        return Setting(
            self.bank, taught, years, self.course.units_first, self.findings, self.plan.tellings
        )

    @cached_property
    def scribe(self) -> Scribe:
        """Return what sets the words of course.yml."""
        return Scribe(plants=PLANTS, places=self.setting.places)

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
    def mistaken(self) -> tuple[tuple[Lesson, tuple[Double, ...]], ...]:
        """Return the plants taught as food that have look-alikes, and these for a page of all."""
        return tuple(
            (sheet.lesson, doubles_elsewhere(sheet.lesson, self.setting, PLANTS))
            for sheet in self.food
            if sheet.doubles
        )

    @cached_property
    def comparer(self) -> Comparer:
        """Return what compares the course's plants two by two."""
        return Comparer(self.setting, plant_years(self.course, self.bank))

    @cached_property
    def pairs(self) -> tuple[PairPage, ...]:
        """Return the pages of the plants that are taken for each other."""
        return PairMaker(self.comparer).pages(self.sheets)

    @cached_property
    def all_pairs(self) -> Matrices:
        """Return the tables of all pairs of the course's plants."""
        return matrices(self.comparer)

    @cached_property
    def untold(self) -> tuple[Untold, ...]:
        """Return the pairs that no lesson names and what is recorded does not tell apart."""
        return untold(self.comparer)

    @cached_property
    def sessions(self) -> tuple[SessionPage, ...]:
        """Return the sessions in the order of their dates."""
        sheets = {sheet.lesson.slug: sheet for sheet in self.sheets}
        meetings = self.plan.meetings
        return tuple(
            SessionPage(
                meeting=meeting,
                notes=self.scribe.text(meeting.session.notes),
                briefing=briefing_of(meeting, sheets, self.setting),
                reading=tuple(t.lesson for m in meetings[number : number + 1] for t in m.taught),
            )
            for number, meeting in enumerate(meetings, 1)
        )

    @cached_property
    def calendars(self) -> Mapping[str, str]:
        """Return the calendars of the course, by file; one that would be empty is not made."""
        calendars = {
            SESSIONS: sessions_calendar(self.course, self.plan),
            HARVEST: harvest_calendar(self.course, self.plan, self.bank),
        }
        return {path: text for path, text in calendars.items() if text}

    @cached_property
    def gathered_all_year(self) -> tuple[tuple[Lesson, str], ...]:
        """Return the parts that the harvest calendar leaves out, because they are there all year."""
        return gathered_all_year(self.plan)

    @cached_property
    def families(self) -> FamilyPage:
        """Return the families with what their members share."""
        return family_page(self.setting)

    @cached_property
    def dates_are_moved(self) -> bool:
        """Whether any date is an estimate for another place than where it was seen."""
        return any(year.is_estimate for year in self.plan.years)

    @cached_property
    def years(self) -> tuple[PlantYear, ...]:
        """Return the plants' years in season order."""
        return self.plan.years

    @cached_property
    def year_notes(self) -> tuple[str, ...]:
        """Return why the dates are what they are: what is true of most plants, the others, the rule."""
        return year_notes(self.years)

    @cached_property
    def season_map(self) -> Markup:
        """Return the year of all plants as one drawing."""
        return season_map(self.years, self._dates, "map")

    @cached_property
    def map_key(self) -> Markup:
        """Return what the drawing's patterns and lines mean."""
        return map_key(self.years)

    @cached_property
    def map_sheets(self) -> tuple[Markup, ...]:
        """Return the drawing as sheets for the wall."""
        return map_sheets(self.years, self._dates)

    @property
    def _dates(self) -> list[date]:
        return [meeting.session.date for meeting in self.plan.meetings]

    @cached_property
    def words(self) -> tuple[UsedSubject, ...]:
        """Return the words that the course's lessons use."""
        return glossary(self.lessons, self.bank.vocabulary)

    @cached_property
    def keys(self) -> tuple[KeyPage, ...]:
        """Return the numbered keys: for the whole year and for each month."""
        return key_pages(self.years, self.setting, self.words)

    @cached_property
    def ticking(self) -> Ticking:
        """Return the key on which one ticks what one sees."""
        table = key_table(self.years, self.bank.vocabulary)
        return ticking(table, self.setting, Explainer(self.words))

    @cached_property
    def word_figures(self) -> Mapping[str, Markup]:
        """Return the figures of the words used that can be drawn, by their places on the page."""
        vocabulary = self.bank.vocabulary
        found = {
            place: word_drawing(used.subject.name, label.label.name, state, vocabulary, place)
            for used in self.words
            for label in used.labels
            for state in label.states
            if (place := anchor(used.subject.name, label.label.name, state.name))
        }
        return {place: figure for place, figure in found.items() if figure}

    def is_drawn(self, subject: Subject, used: UsedLabel) -> bool:
        """Return whether any word of a label has a figure."""
        places = (anchor(subject.name, used.label.name, state.name) for state in used.states)
        return any(place in self.word_figures for place in places)

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
        plants = {text: tuple(cited[text].values()) for text in order}
        return tuple(Cited(self._scribe_of(who[0]).line(t), who) for t, who in plants.items())

    def _scribe_of(self, lesson: Lesson) -> Scribe:
        """Return what sets a lesson's words on a page of the whole course."""
        return replace(self.scribe, here=lesson.slug, page=f"{PLANTS}{lesson.slug}{PAGE_END}")

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
