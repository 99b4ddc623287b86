"""A fact's value in the words of a card: the same as on the plant's page."""

from __future__ import annotations

import re
from html import unescape
from typing import TYPE_CHECKING, get_args

import pytest

from helpers.lessons import LESSONS
from helpers.workshop import lesson_of
from sallet.cards.facts import fact_runs, value_words
from sallet.cards.plain import Run
from sallet.publish.values import Writer
from sallet.units import System

if TYPE_CHECKING:
    from sallet.lesson.model import Fact, Lesson

SYSTEMS: tuple[System, ...] = get_args(System)


def fact_of(bullet: str, organ: str = "Leaves") -> Fact:
    """Return the fact of a bullet."""
    (fact,) = lesson_of(f"## Identification\n### {organ}\n- {bullet}\n").facts
    return fact


def words(bullet: str, first: System = "metric", organ: str = "Leaves") -> str:
    """Return the values of a bullet, no-break spaces as blanks."""
    return value_words(fact_of(bullet, organ).items, first).replace("\u00a0", " ")


@pytest.mark.parametrize(
    ("bullet", "told"),
    [("margin: entire to serrate", "entire to serrate"),
     ("margin: entire or serrate", "entire, serrate"),
     ("margin: smooth-edged", "smooth-edged"),
     ("margin: usually entire", "usually entire"),
     ("margin: entire (rarely)", "rarely entire"),
     ("margin: entire[^memory] (lower leaves), serrate (upper leaves, on shoots)[^memory]",
      "entire (lower leaves), serrate (upper leaves, on shoots)"),
     ("margin: none", "none"),
     ("margin: wobbly <b>", "wobbly <b>"),
     ("sparkle: a *lot*", "a *lot*")],
)  # fmt: skip
def test_values_stand_in_a_row_with_where_they_hold(bullet: str, told: str) -> None:
    assert words(bullet) == told


@pytest.mark.parametrize(
    ("bullet", "told"),
    [("petals: 5", "5"), ("petals: usually 5", "usually 5"), ("petals: 5, rarely 6", "5, rarely 6"),
     ("petals: rarely a few", "rarely a few"), ("petals: many", "many")],
)  # fmt: skip
def test_counts_stand_as_written(bullet: str, told: str) -> None:
    assert words(bullet, organ="Flowers") == told


@pytest.mark.parametrize(
    ("first", "told"),
    [("metric", "usually 10–25 cm (4–10 in) (young)"),
     ("imperial", "usually 4–10 in (10–25 cm) (young)")],
)  # fmt: skip
def test_lengths_stand_in_both_systems_the_course_s_own_first(first: System, told: str) -> None:
    assert words("length: usually 10–25 cm (young)", first) == told


def test_a_number_is_held_to_its_unit() -> None:
    assert value_words(fact_of("length: 10 cm").items, "metric") == "10\u00a0cm (4\u00a0in)"


@pytest.mark.parametrize("first", SYSTEMS)
def test_hardiness_zones_stand_as_written(first: System) -> None:
    """A card has no room for the cold of each; the page tells it."""
    (fact,) = lesson_of("## Range\n- hardiness zones: USDA 8 (usually, in shade)\n").facts
    assert value_words(fact.items, first) == "usually USDA 8 (in shade)"


def as_on_the_page(fact: Fact, first: System) -> str:
    """Return the words of a fact's values on the page of its plant."""
    html = Writer(first, explains=False).value(fact)
    return unescape(re.sub("<[^>]+>", "", html)).replace("\u2060", "")


@pytest.mark.parametrize("lesson", LESSONS, ids=lambda lesson: lesson.slug)
@pytest.mark.parametrize("first", SYSTEMS)
def test_a_card_says_of_every_fact_what_the_page_says(lesson: Lesson, first: System) -> None:
    all_facts = (*lesson.facts, *(f for part in lesson.edible_parts for f in part.facts))
    facts = [fact for fact in all_facts if fact.label != "hardiness zones"]
    told = [value_words(fact.items, first) for fact in facts]
    assert told == [as_on_the_page(fact, first) for fact in facts]


def test_without_a_wording_a_fact_is_its_value_and_all_of_its_note() -> None:
    fact = fact_of("**surface**: hairless[^memory]\n  Shiny *above*.[^memory]\n\n  Dull below.\n")
    assert fact_runs(fact, "metric") == (
        Run("hairless. Shiny "), Run("above", "emphasis"), Run(". Dull below."),
    )  # fmt: skip
    assert fact_runs(fact_of("surface: hairless"), "metric") == (Run("hairless"),)


def test_the_wording_for_the_card_stands_in_place_of_value_and_note() -> None:
    fact = fact_of(
        "surface: hairless\n  Shiny.\n  - on the card: hairless and **shiny**[^memory]\n"
    )
    assert fact_runs(fact, "metric") == (Run("hairless and "), Run("shiny", "strong"))


def test_a_value_is_no_markdown_but_its_note_is() -> None:
    """As on the page, where the value's own marks stand as written."""
    assert fact_runs(fact_of("sparkle: a *lot*\n  and *more*"), "metric") == (
        Run("a *lot*. and "), Run("more", "emphasis"),
    )  # fmt: skip
