"""Compares the plants of a course two by two, each pair once for all pages that want it."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

from sallet.lesson.model import GRAVE
from sallet.publish.pair_table import Look, key_of
from sallet.season.teachable import days_of
from sallet.season.telling import Sign, Telling
from sallet.season.visible import Visible
from sallet.study.contrast import characters, contrasts_of

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Mapping

    from sallet.lesson.model import Lesson
    from sallet.publish.pair_naming import Pair
    from sallet.publish.sheets import Setting
    from sallet.season.here import PlantYear
    from sallet.season.visible import Days
    from sallet.study.contrast import Characters, Contrast

Slugs = tuple[str, str]


class Comparer:
    """Holds what is known of each plant, and what was found of each pair."""

    def __init__(self, setting: Setting, years: Mapping[str, PlantYear]) -> None:
        """Take the years of all plants at hand, with the weeks in them that are not sure."""
        self.setting = setting
        self.years = years
        self.vocabulary = setting.bank.vocabulary
        self._tests: dict[Slugs, tuple[Contrast, ...]] = {}
        self._told: dict[Slugs, Telling] = {}

    # -- pairs that a lesson names ---------------------------------------------------------

    @cached_property
    def named(self) -> Mapping[frozenset[str], Pair]:
        """Return the pairs of lessons that have a page together, by their slugs."""
        return {
            frozenset({pair.this.slug, pair.other.slug}): pair
            for pair in self.setting.pairs
            if pair.other
        }

    def contrasts(self, pair: Pair) -> tuple[Contrast, ...]:
        """Return what tells a pair apart, in the order of the first plant's facts."""
        return contrasts_of(self._characters[pair.this.slug], self._those(pair), self.vocabulary)

    def telling(self, pair: Pair) -> Telling | None:
        """Return how a food plant is told from one that harms gravely; None for other pairs."""
        looks = [naming.look for naming in pair.own]
        found = [
            telling
            for telling in self.setting.tellings.get(pair.this.slug, ())
            if (telling.look in looks if telling.look else telling.other is pair.other)
        ]
        # Under two headings one plant may be described in two ways: the less sure one counts.
        return max(found, key=lambda telling: len(telling.unsure), default=None)

    def told_all_year(self, pair: Pair, tests: Iterable[Contrast]) -> Telling:
        """Return how any two plants are told apart, without a time of gathering."""
        seen = self._visible[pair.this.slug]
        signs = tuple(Sign(contrast, seen.days_of(contrast)) for contrast in tests)
        return Telling(pair.this, pair.name, pair.danger, pair.other, signs, frozenset())

    def looks(self, pair: Pair, found: Iterable[Contrast]) -> Iterator[Look]:
        """Yield when each contrast of a pair can be looked at on either plant."""
        back = contrasts_of(self._those(pair), self._characters[pair.this.slug], self.vocabulary)
        mirrored = {key_of(contrast.this): contrast for contrast in back}
        for contrast in found:
            that = mirrored.get(key_of(contrast.this))
            yield Look(
                contrast,
                (pair.this.name, *self._days(pair.this, contrast)),
                (pair.name, *self._days(pair.other, that)),
            )

    # -- any two plants --------------------------------------------------------------------

    def tests(self, one: Lesson, other: Lesson) -> tuple[Contrast, ...]:
        """Return what tells two plants apart and can be looked for."""
        key = one.slug, other.slug
        if key not in self._tests:
            pair = self.named.get(frozenset(key))
            found = self.contrasts(pair) if pair else self._contrasts(*key)
            self._tests[key] = tuple(contrast for contrast in found if contrast.is_test)
        return self._tests[key]

    def told(self, food: Lesson, that: Lesson) -> Telling:
        """Return how a food plant is told from one that harms gravely, named or not."""
        key = food.slug, that.slug
        if key not in self._told:
            pair = self.named.get(frozenset(key))
            named = self.telling(pair) if pair and pair.this is food else None
            self._told[key] = named or self._unnamed(food, that)
        return self._told[key]

    def _unnamed(self, food: Lesson, that: Lesson) -> Telling:
        """Return what `telling_of` does, from what is known of either plant already.

        Weeks that nothing settles are no weeks of gathering here: nobody gathers then.
        """
        visible = self._visible_here[food.slug]
        signs = tuple(Sign(test, visible.days_of(test)) for test in self.tests(food, that))
        days = self._gathered[food.slug] & self.setting.years[that.slug].days_about
        return Telling(food, that.name, that.front.danger or "", that, signs, days)

    # -- what is known of each plant -------------------------------------------------------

    @cached_property
    def _characters(self) -> Mapping[str, Characters]:
        return {lesson.slug: characters(lesson.facts) for lesson in self.setting.bank.lessons}

    @cached_property
    def _visible(self) -> Mapping[str, Visible]:
        return {slug: Visible(year, self.vocabulary) for slug, year in self.years.items()}

    @cached_property
    def _visible_here(self) -> Mapping[str, Visible]:
        years = self.setting.years
        return {slug: Visible(year, self.vocabulary) for slug, year in years.items()}

    @cached_property
    def _gathered(self) -> Mapping[str, Days]:
        return {slug: days_of(year.eaten) for slug, year in self.setting.years.items()}

    def _contrasts(self, one: str, other: str) -> tuple[Contrast, ...]:
        return contrasts_of(self._characters[one], self._characters[other], self.vocabulary)

    def _those(self, pair: Pair) -> Characters:
        in_place = any(naming.look.facts for naming in pair.own)
        if pair.other and not in_place:
            return self._characters[pair.other.slug]
        return characters(pair.those)

    def _days(self, lesson: Lesson | None, contrast: Contrast | None) -> tuple[Days | None, bool]:
        if lesson is None or contrast is None:
            return None, False
        return self._visible[lesson.slug].days_of(contrast), self.years[lesson.slug].is_estimate


def is_grave(food: Lesson, that: Lesson) -> bool:
    """Return whether one plant is for the pot and the other one that harms gravely."""
    return food.is_food and that.front.danger in GRAVE
