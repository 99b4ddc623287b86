"""What stands on the page of one plant, ready to be set: no template computes anything."""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import cached_property
from typing import TYPE_CHECKING, Final

from markupsafe import Markup, escape

from sallet.drawing.figures import figures
from sallet.drawing.pairs import Plant
from sallet.lesson.dangers import danger_named
from sallet.lesson.model import MEMORY, NO_PROSE
from sallet.publish.anchors import (
    PROSE_SECTIONS,
    double_idents,
    idents_by_place,
    section_idents,
)
from sallet.publish.pair_drawings import pair_figures
from sallet.publish.pair_naming import named_pairs
from sallet.publish.plates import plate_figures
from sallet.publish.prose import PAGE_END, Scribe
from sallet.publish.sheet import (
    CautionText,
    Double,
    FactRow,
    OrganTable,
    PartEaten,
    PartRemoved,
    Passage,
    SeasonRow,
    SelfCheck,
    Sheet,
    SourceText,
    SpellText,
)
from sallet.publish.strips import season_strip
from sallet.publish.values import Writer, explained
from sallet.season.looking import spell_words, spells
from sallet.season.reasons import rule_words, year_words
from sallet.season.strip import strip_name
from sallet.season.words import days_words, row_words, seen_words, when_words
from sallet.study.glossary import glossary

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence

    from sallet.findings import Finding
    from sallet.lesson.bank import Bank
    from sallet.lesson.model import (
        Caution,
        Citation,
        EdiblePart,
        Fact,
        Footnote,
        Lesson,
        LookAlike,
        Prose,
        Question,
        Section,
    )
    from sallet.publish.pair_drawings import PairFigure
    from sallet.publish.pair_naming import Pair
    from sallet.publish.photographs import Photograph
    from sallet.season.here import PlantYear, Row
    from sallet.season.telling import Telling
    from sallet.units import System

PLANTS: Final = "plants/"
"""The folder of the plants' pages."""
LIST_SECTIONS: Final = (
    "identification",
    "look-alikes",
    "season",
    "edible parts",
    "parts to remove",
    "questions",
    "pictures",
    "sources",
)
"""Sections that are set as lists and tables; what else stands in them goes above these."""
STAMPS: Final = {
    "unreviewed": "Not yet checked by a second reader",
    "from-memory": "Some statements are from memory (marked m)",
    "unsourced-claim": "Some statements have no source yet",
}
"""What a finding that does not stop puts on the page, by the check's id."""


@dataclass(frozen=True)
class Setting:
    """What the pages of a course have in common."""

    bank: Bank
    taught: Mapping[str, Lesson]
    """The lessons that have pages, by slug, in season order."""
    years: Mapping[str, PlantYear]
    """Every taught plant's year where the course meets, by slug."""
    units_first: System
    findings: tuple[Finding, ...] = ()
    tellings: Mapping[str, tuple[Telling, ...]] = field(default_factory=dict)
    """How each food plant is told from the grave plants it is taken for, by slug."""

    @cached_property
    def pairs(self) -> tuple[Pair, ...]:
        """Return the pairs of plants that have a page together."""
        return named_pairs(self.taught, self.bank)

    @cached_property
    def pair_paths(self) -> Mapping[tuple[str, int], str]:
        """Return the page of each look-alike with the plant it is taken for, by slug and place."""
        return {
            (naming.lesson.slug, naming.number): pair.path
            for pair in self.pairs
            for naming in pair.namings
        }

    @cached_property
    def places(self) -> Mapping[str, Mapping[str, str]]:
        """Return the ids of every plant's page by the headings of its lesson, by slug."""
        return {slug: idents_by_place(lesson) for slug, lesson in self.taught.items()}

    @cached_property
    def drawn(self) -> Mapping[str, Plant]:
        """Return what is recorded of every plant at hand and its figures, by slug."""
        return {
            lesson.slug: Plant(lesson.facts, figures(lesson.facts, self.bank.vocabulary))
            for lesson in self.bank.lessons
        }


def plant_sheet(lesson: Lesson, setting: Setting, photographs: Sequence[Photograph] = ()) -> Sheet:
    """Return the page of a plant."""
    return _SheetMaker(lesson, setting).sheet(photographs)


def cautions_elsewhere(lesson: Lesson, setting: Setting, plants: str) -> tuple[CautionText, ...]:
    """Return a plant's cautions for a page that is not its own; `plants` is the way to its folder."""
    return _SheetMaker(lesson, setting, plants).cautions()


def doubles_elsewhere(lesson: Lesson, setting: Setting, plants: str) -> tuple[Double, ...]:
    """Return a plant's look-alikes for a page that is not its own; `plants` as above."""
    return _SheetMaker(lesson, setting, plants).doubles()


def fact_setter(
    lesson: Lesson, setting: Setting, plants: str, *, explains: bool = True
) -> Callable[[Fact], FactRow]:
    """Return what sets the facts of a lesson on a page that is not its own; `plants` as above.

    Unless it `explains`, no word of theirs can be pressed. One that is not taught in the course has
    no page to lead to: its facts are set in bare words.
    """
    if lesson.slug not in setting.taught:
        return _bare_row
    return _SheetMaker(lesson, setting, plants, explains=explains).row


def _bare_row(fact: Fact) -> FactRow:
    return FactRow(escape(fact.label), escape(fact.text), Markup(), key=fact.key)


def spell_texts(telling: Telling, setting: Setting) -> tuple[SpellText, ...]:
    """Return in words what to look at when, to tell a food plant from one that harms."""
    about = setting.years[telling.food.slug].is_estimate
    return tuple(
        SpellText(
            when=when_words(spell.window, about=about),
            is_sure=spell.is_sure,
            words=spell_words(spell, setting.bank.vocabulary),
        )
        for spell in spells(telling)
    )


class _SheetMaker:
    """Holds what every part of one page needs."""

    def __init__(
        self, lesson: Lesson, setting: Setting, plants: str = "", *, explains: bool = True
    ) -> None:
        self.lesson = lesson
        self.bank = setting.bank
        self.taught = setting.taught
        self.year = setting.years[lesson.slug]
        self.findings = setting.findings
        self.drawn = setting.drawn
        self.setting = setting
        self.listed = tuple(_listed(lesson.footnotes))
        numbers = {note.key: i for i, note in enumerate(self.listed, 1)}
        self.scribe = Scribe(
            numbers,
            plants=plants,
            places=setting.places,
            here=lesson.slug,
            page=f"{plants}{lesson.slug}{PAGE_END}" if plants else "",
        )
        self.writer = Writer(setting.units_first, explains)

    def sheet(self, photographs: Sequence[Photograph]) -> Sheet:
        lesson = self.lesson
        rows = self.year.rows
        checks = {f.check for f in self.findings if f.file == lesson.source.path}
        return Sheet(
            lesson=lesson,
            intro=self.scribe.text(lesson.intro.text),
            doubles=self.doubles(drawn=True),
            key_rows=tuple(self.row(fact, with_organ=True) for fact in lesson.key_facts),
            organs=tuple(self._organs(lesson.facts)),
            plate=plate_figures(lesson.name, self.drawn[lesson.slug].figures),
            strip=season_strip(lesson.name, rows, f"strip-{lesson.slug}"),
            year_note=year_words(self.year),
            rule=rule_words([self.year]),
            not_sure=days_words(self.year.not_sure),
            season=tuple(map(self._season_row, rows)),
            eaten=tuple(map(self._eaten, lesson.edible_parts, self.year.eaten)),
            removed=tuple(self._removed()),
            cautions=self.cautions(),
            passages=tuple(self._passages()),
            questions=tuple(self._question(question) for question in lesson.questions),
            sources=tuple(self._sources()),
            words=glossary([lesson], self.bank.vocabulary),
            leads={name: self._lead(name) for name in LIST_SECTIONS},
            stamps=tuple(words for check, words in STAMPS.items() if check in checks),
            photographs=tuple(photographs),
            picture_notes={p.file.value: self.scribe.text(p.note.text) for p in lesson.pictures},
        )

    # -- facts -----------------------------------------------------------------------------

    def row(self, fact: Fact, *, with_organ: bool = False) -> FactRow:
        label = escape(fact.label)
        if fact.known and self.writer.explains:
            label = explained(fact.label, fact.subject, fact.label)
        value = self.writer.value(fact) + self._marks(fact.citations, fact.note)
        organ = fact.part or self.bank.vocabulary.subject(fact.subject).heading
        return FactRow(
            label=label,
            value=value,
            note=self.scribe.text(fact.note.text),
            key=fact.key,
            organ=organ if with_organ else "",
        )

    def _marks(self, citations: Iterable[Citation], note: Prose = NO_PROSE) -> Markup:
        # A citation inside the note is set there; only those of the value are set behind it.
        own = (c for c in citations if not note.span.start <= c.span.start < note.span.end)
        return self.scribe.marks([citation.key for citation in own])

    def _organs(self, facts: Iterable[Fact]) -> Iterator[OrganTable]:
        vocabulary = self.bank.vocabulary
        by_heading: dict[str, list[FactRow]] = {}
        for fact in facts:
            subject = vocabulary.subject(fact.subject)
            if subject.is_organ:
                heading = subject.heading if not fact.part else f"{subject.heading}: {fact.part}"
                by_heading.setdefault(heading, []).append(self.row(fact))
        yield from (OrganTable(heading, tuple(rows)) for heading, rows in by_heading.items())

    # -- what may be mistaken --------------------------------------------------------------

    def doubles(self, *, drawn: bool = False) -> tuple[Double, ...]:
        idents = enumerate(double_idents(self.lesson))
        return tuple(self._double(number, ident, drawn=drawn) for number, ident in idents)

    def _double(self, number: int, ident: str, *, drawn: bool) -> Double:
        look_alike = self.lesson.look_alikes[number]
        own = self.bank.lesson_of(look_alike)
        taught = own is not None and own.slug in self.taught
        scientific = own.front.scientific_name if own else look_alike.scientific_name
        prose = self.scribe.text(look_alike.prose.text)
        brief = look_alike.on_card or look_alike.prose.text
        return Double(
            name=look_alike.name.value,
            ident=ident,
            scientific_name=scientific,
            danger=danger_named(look_alike, self.bank),
            page=f"{self.scribe.plants}{own.slug}{PAGE_END}" if own and taught else "",
            tell=self.scribe.line(brief),
            prose=prose,
            settled_by=self.scribe.line(look_alike.settled_by),
            marks=self._marks(look_alike.citations),
            organs=tuple(self._organs(look_alike.facts)),
            figures=self._beside(look_alike, ident) if drawn else (),
            pair=self._pair(number),
            spells=self._spells(look_alike),
        )

    def _pair(self, number: int) -> str:
        """Return the way to the page of both plants; nothing where a lesson names itself."""
        path = self.setting.pair_paths.get((self.lesson.slug, number), "")
        root = self.scribe.plants.removesuffix(PLANTS) if self.scribe.plants else "../"
        return path and root + path

    def _spells(self, look_alike: LookAlike) -> tuple[SpellText, ...]:
        told = self.setting.tellings.get(self.lesson.slug, ())
        found = [telling for telling in told if telling.look is look_alike]
        return spell_texts(found[0], self.setting) if found else ()

    def _beside(self, look_alike: LookAlike, ident: str) -> tuple[PairFigure, ...]:
        vocabulary = self.bank.vocabulary
        own = self.bank.lesson_of(look_alike)
        if own and not look_alike.facts:
            that = self.drawn[own.slug]
        else:
            facts = self.bank.facts_of(look_alike)
            that = Plant(facts, figures(facts, vocabulary))
        this = (self.lesson.name, self.drawn[self.lesson.slug])
        return pair_figures(this, (look_alike.name.value, that), vocabulary, ident)

    # -- season and kitchen ----------------------------------------------------------------

    def _season_row(self, row: Row) -> SeasonRow:
        # What is said of an edible part stands with the part; here only its time is wanted.
        timing, bare = row.timing, row.kind == "eaten"
        return SeasonRow(
            name=strip_name(row),
            words=row_words(row),
            seen=seen_words(row),
            marks=Markup() if bare else self._marks(timing.citations, timing.note),
            note=Markup() if bare else self.scribe.text(timing.note.text),
        )

    def _eaten(self, part: EdiblePart, row: Row) -> PartEaten:
        timing = part.timing
        nested = {citation for fact in part.facts for citation in fact.citations}
        own = [c for c in timing.citations if c not in nested]
        return PartEaten(
            name=timing.name,
            when=row_words(row),
            seen=seen_words(row),
            ways=self.writer.items(part.ways, "edible parts", "preparation"),
            note=self.scribe.text(timing.note.text),
            rows=tuple(self.row(fact) for fact in part.facts),
            marks=self._marks(own, timing.note),
        )

    def _removed(self) -> Iterator[PartRemoved]:
        for removal in self.lesson.removals:
            yield PartRemoved(
                name=removal.name.value,
                reason=self.scribe.line(removal.reason.value),
                note=self.scribe.text(removal.note.text),
                marks=self._marks(removal.citations, removal.note),
            )

    def cautions(self) -> tuple[CautionText, ...]:
        return tuple(map(self._caution, self.lesson.cautions))

    def _caution(self, caution: Caution) -> CautionText:
        text = self.scribe.line(f"{caution.text.value.rstrip()} {caution.note.text}")
        kind = caution.kind
        return CautionText(kind, text + self._marks(caution.citations, caution.note))

    # -- prose, questions, sources ---------------------------------------------------------

    def _passages(self) -> Iterator[Passage]:
        order = (*PROSE_SECTIONS, "")
        placed = zip(self.lesson.sections, section_idents(self.lesson), strict=True)
        shown = [(section, ident) for section, ident in placed if section.name in order]
        for section, ident in sorted(shown, key=lambda pair: order.index(pair[0].name)):
            yield self._passage(section, ident)

    def _passage(self, section: Section, ident: str) -> Passage:
        facts = self.lesson.facts_of(section.name) if section.name else ()
        prose = section.lead.text if facts else section.prose.text
        return Passage(
            ident=ident,
            heading=section.heading.value,
            rows=tuple(self.row(fact) for fact in facts),
            prose=self.scribe.text(prose),
        )

    def _lead(self, name: str) -> Markup:
        section = self.lesson.section(name)
        return self.scribe.text(section.lead.text) if section else Markup()

    def _question(self, question: Question) -> SelfCheck:
        return SelfCheck(
            prompt=self.scribe.line(question.prompt.value),
            options=tuple((self.scribe.line(o.text.value), o.right) for o in question.options),
            feedback=self.scribe.text(question.feedback.text),
        )

    def _sources(self) -> Iterator[SourceText]:
        for number, note in enumerate(self.listed, 1):
            yield SourceText(f"source-{number}", str(number), self.scribe.line(note.text))
        for note in self.lesson.footnotes:
            if note.key == MEMORY:
                yield SourceText("source-memory", "m", self.scribe.line(note.text))


def _listed(footnotes: Iterable[Footnote]) -> Iterator[Footnote]:
    seen: set[str] = {MEMORY}
    for note in footnotes:
        if note.key not in seen:
            seen.add(note.key)
            yield note
