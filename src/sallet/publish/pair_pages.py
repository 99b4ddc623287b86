"""What stands on the page of two plants that are taken for each other, ready to be set."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property
from typing import TYPE_CHECKING, Final

from sallet.lesson.dangers import danger_of
from sallet.publish.pair_drawings import pair_figures
from sallet.publish.pair_table import key_of, pair_groups
from sallet.publish.prose import PAGE_END
from sallet.publish.sheets import PLANTS, doubles_elsewhere, fact_setter, spell_texts
from sallet.publish.strips import season_strip
from sallet.season.looking import features_named, sure_days
from sallet.season.move import windows_of
from sallet.season.teachable import days_of
from sallet.season.words import days_words
from sallet.study.contrast import tell_apart
from sallet.study.glossary import glossary

if TYPE_CHECKING:
    from collections.abc import Callable, Collection, Iterable, Iterator, Mapping, Sequence

    from markupsafe import Markup

    from sallet.lesson.model import Fact, Lesson
    from sallet.lesson.value import Window
    from sallet.publish.pair_comparing import Comparer
    from sallet.publish.pair_drawings import PairFigure
    from sallet.publish.pair_naming import Naming, Pair
    from sallet.publish.pair_table import Key, PairGroup, Written
    from sallet.publish.sheet import Double, FactRow, Sheet, SpellText
    from sallet.season.here import Row
    from sallet.season.telling import Telling
    from sallet.study.contrast import Contrast
    from sallet.study.glossary import UsedSubject

HERE: Final = f"../{PLANTS}"
"""The way from the page of two plants to the folder of the plants' pages."""


@dataclass(frozen=True)
class LessonText:
    """What a lesson says of the other plant."""

    lesson: Lesson
    double: Double
    card: bool
    """Whether the lesson has a wording for the card."""


@dataclass(frozen=True)
class Through:
    """Whether a food plant is surely told from one that harms, through the year."""

    strip: Markup
    spells: tuple[SpellText, ...]
    gathered: str
    """When the one is gathered while the other may be about; nothing if that is never."""
    unsure: str
    """When it is not surely told; nothing if it always is."""
    settled_by: str
    """How it is settled then; nothing where the lesson is silent."""


@dataclass(frozen=True)
class PairPage:
    """The page of two plants."""

    pair: Pair
    danger: str
    """How the first plant is marked."""
    other_page: str
    """The way to the other plant's page; nothing where it has none."""
    texts: tuple[LessonText, ...]
    through: Through | None
    """None where no plant for the pot is set against one that is poisonous or deadly."""
    features: str
    """What tells the two apart and can be looked for; nothing where nothing recorded does."""
    suffices: bool
    """Whether all of it together suffices to tell them apart."""
    sure: tuple[Window, ...]
    """The days of the year on which what can be seen on the first plant suffices."""
    groups: tuple[PairGroup, ...]
    figures: tuple[PairFigure, ...]
    words: tuple[UsedSubject, ...]

    @property
    def recorded(self) -> int:
        """Return how many characters are recorded of either plant."""
        return sum(len(group.rows) for group in self.groups)

    @property
    def telling(self) -> int:
        """Return how many of them are not the same on both."""
        return sum(bool(row.telling) for group in self.groups for row in group.rows)


class PairMaker:
    """Makes the pages of pairs, and holds what they have in common."""

    def __init__(self, comparer: Comparer) -> None:
        self.comparer = comparer
        self.setting = comparer.setting
        self.vocabulary = comparer.vocabulary

    def pages(self, sheets: Iterable[Sheet]) -> tuple[PairPage, ...]:
        """Return the pages of all pairs; their drawings come from the plants' sheets where there."""
        drawn = {sheet.lesson.slug: sheet for sheet in sheets}
        return tuple(self._page(pair, drawn) for pair in self.setting.pairs)

    def _page(self, pair: Pair, drawn: Mapping[str, Sheet]) -> PairPage:
        found = self.comparer.contrasts(pair)
        telling = self.comparer.telling(pair)
        tests = [contrast for contrast in found if contrast.is_test]
        told = telling or self.comparer.told_all_year(pair, tests)
        return PairPage(
            pair=pair,
            danger=danger_of(pair.this),
            other_page=self._page_of(pair.other),
            texts=tuple(map(self._text, pair.namings)),
            through=self._through(pair, telling) if telling else None,
            features=features_named(tests, self.vocabulary),
            suffices=tell_apart(tests),
            sure=windows_of(sure_days(told)),
            groups=self._groups(pair, found),
            figures=self._figures(pair, drawn),
            words=self._words(pair, found),
        )

    def _page_of(self, lesson: Lesson | None) -> str:
        taught = lesson is not None and lesson.slug in self.setting.taught
        return f"{HERE}{lesson.slug}{PAGE_END}" if lesson and taught else ""

    # -- through the year ------------------------------------------------------------------

    def _through(self, pair: Pair, telling: Telling) -> Through:
        ident = pair.path.rpartition("/")[2].removesuffix(".html")
        return Through(
            strip=season_strip(
                f"{pair.this.name} and {pair.name}",
                tuple(self._strip_rows(pair, telling)),
                f"strip-{ident}",
            ),
            spells=spell_texts(telling, self.setting),
            gathered=days_words(telling.gathered),
            unsure=days_words(telling.unsure),
            settled_by=telling.settled_by,
        )

    def _strip_rows(self, pair: Pair, telling: Telling) -> Iterator[Row]:
        """Yield what is eaten of the one, with the doubts of this pair only, and the other's year."""
        years = self.comparer.years
        for row in years[pair.this.slug].eaten:
            yield replace(row, not_sure=days_of([row]) & telling.unsure)
        if pair.other:
            yield from years[pair.other.slug].seen

    # -- as it is set ----------------------------------------------------------------------

    def _text(self, naming: Naming) -> LessonText:
        lesson = naming.lesson
        if lesson.slug not in self._doubles:
            self._doubles[lesson.slug] = doubles_elsewhere(lesson, self.setting, HERE)
        double = self._doubles[lesson.slug][naming.number]
        return LessonText(lesson, double, card=bool(naming.look.on_card))

    @cached_property
    def _doubles(self) -> dict[str, tuple[Double, ...]]:
        return {}

    def _groups(self, pair: Pair, found: Sequence[Contrast]) -> tuple[PairGroup, ...]:
        telling = {key_of(contrast.this) for contrast in found}
        in_place = [fact for naming in pair.own for fact in naming.look.facts]
        theirs = self._own(pair.other, telling) if pair.other else ()
        those = (*self._set(in_place, pair.this, telling), *theirs)
        looks = self.comparer.looks(pair, found)
        return pair_groups(self._own(pair.this, telling), those, looks, self.vocabulary)

    def _own(self, lesson: Lesson, telling: Collection[Key]) -> tuple[Written, ...]:
        return tuple(self._set(lesson.facts, lesson, telling))

    def _set(
        self, facts: Iterable[Fact], lesson: Lesson, telling: Collection[Key]
    ) -> Iterator[Written]:
        """Yield facts as they are set: only words of what tells the plants apart can be pressed."""
        for fact in facts:
            if fact.subject in self.vocabulary.organ_headings:
                yield fact, self._row(fact, lesson, explains=key_of(fact) in telling)

    def _row(self, fact: Fact, lesson: Lesson, *, explains: bool) -> FactRow:
        # A fact stands in the tables of many pairs, and is set once.
        key = id(fact), explains
        if key not in self._rows:
            self._rows[key] = self._setter(lesson, explains=explains)(fact)
        return self._rows[key]

    def _setter(self, lesson: Lesson, *, explains: bool) -> Callable[[Fact], FactRow]:
        key = lesson.slug, explains
        if key not in self._setters:
            self._setters[key] = fact_setter(lesson, self.setting, HERE, explains=explains)
        return self._setters[key]

    @cached_property
    def _rows(self) -> dict[tuple[int, bool], FactRow]:
        return {}

    @cached_property
    def _setters(self) -> dict[tuple[str, bool], Callable[[Fact], FactRow]]:
        return {}

    def _figures(self, pair: Pair, drawn: Mapping[str, Sheet]) -> tuple[PairFigure, ...]:
        if pair.own:
            return drawn[pair.this.slug].doubles[pair.own[0].number].figures
        that = self.setting.drawn[pair.namings[0].lesson.slug]
        this = self.setting.drawn[pair.this.slug]
        return pair_figures((pair.this.name, this), (pair.name, that), self.vocabulary, "beside")

    def _words(self, pair: Pair, found: Iterable[Contrast]) -> tuple[UsedSubject, ...]:
        """Return the words of what tells them apart; of a plant without a page none is explained."""
        telling = {key_of(contrast.this) for contrast in found}
        in_place = (fact for naming in pair.own for fact in naming.look.facts)
        theirs = pair.other.facts if pair.other and self._page_of(pair.other) else ()
        facts = tuple(f for f in (*pair.this.facts, *in_place, *theirs) if key_of(f) in telling)
        shown = replace(pair.this, facts=facts, look_alikes=(), edible_parts=())
        return glossary([shown], self.vocabulary)
