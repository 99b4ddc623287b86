"""What to look at on which days: spells of the gathering time, and how they are said."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from helpers.workshop import bank_of
from sallet.folder import read_path
from sallet.lesson.value import Window
from sallet.lesson.values.times import YEAR, day_of_year
from sallet.lesson.vocabulary_file import load_vocabulary
from sallet.season.here import plant_year
from sallet.season.hopkins import spot_of
from sallet.season.looking import (
    features_named,
    months_words,
    spell_words,
    spells,
    sure_days,
)
from sallet.season.telling import tellings, week_of
from sallet.season.words import days_words, in_a_row, when_words
from sallet.study.contrast import tell_apart

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.season.looking import Spell
    from sallet.season.telling import Telling

PROJECT = Path(__file__).resolve().parents[2]
WORDS = load_vocabulary()


def lesson(eaten: str, facts: str, theirs: str, flowers: str = "May") -> str:
    """Return a plant for the pot with one deadly look-alike, described in place."""
    return f"""---
name: Ramsons
taught as: food
---
## Identification
{facts}
## Look-alikes
### Lily
- danger: deadly
{theirs}
## Season
- leaves: April to May
- flowers: {flowers}

## Edible parts
- leaves: {eaten}; raw
"""


GLOSS = "### Leaves\n- gloss: glossy above matt beneath\n"
MATT = "#### Leaves\n- gloss: matt above glossy beneath\n"
UMBEL = "### Flowers\n- inflorescence: umbel\n"
RACEME = "#### Flowers\n- inflorescence: one-sided raceme\n"


def told(text: str) -> Telling:
    """Return how the only plant of a bank is told from its only look-alike."""
    bank = bank_of({"a.md": text})
    years = {one.slug: plant_year(one, None) for one in bank.lessons}
    (found,) = tellings(bank.lessons[0], years, bank)
    return found


def plain(found: tuple[Spell, ...]) -> list[tuple[str, bool, list[str]]]:
    """Return spells as when they are, whether they are sure, and what can be looked at."""
    return [
        (when_words(one.window), one.is_sure, [c.label.name for c in one.seen]) for one in found
    ]


def real() -> Iterator[Telling]:
    """Yield how every food plant of the lessons at hand is told from what it is taken for."""
    bank = read_path(PROJECT / "lessons", WORDS).bank
    years = {one.slug: plant_year(one, spot_of(one.front.seen_at)) for one in bank.lessons}
    for one in bank.lessons:
        yield from tellings(one, years, bank)


# ---- spells -------------------------------------------------------------------------------


def test_a_week_of_which_one_day_is_not_sure_shows_what_all_its_days_show() -> None:
    """Flowers in May are certain from 6 to 26 May; weeks begin on 30 April and on 21 May."""
    telling = told(lesson("April to May", GLOSS + UMBEL, MATT + RACEME))
    assert plain(spells(telling)) == [
        ("April to 6 May", False, ["gloss"]),
        ("7–20 May", True, ["inflorescence", "gloss"]),
        ("late May", False, ["gloss"]),
    ]


def test_what_is_reliable_is_named_first() -> None:
    (spell,) = spells(told(lesson("10–11 May", GLOSS + UMBEL, MATT + RACEME)))
    assert [contrast.is_reliable for contrast in spell.seen] == [True, False]


def test_a_plant_that_is_not_gathered_has_no_spells() -> None:
    assert spells(told(lesson("when young", GLOSS, MATT))) == ()


def test_spells_over_the_new_year_stand_in_the_order_of_gathering() -> None:
    telling = told(lesson("December to January", GLOSS + UMBEL, MATT + RACEME, "all year"))
    assert plain(spells(telling)) == [
        ("December to January", True, ["inflorescence", "gloss"]),
    ]
    flowers = told(lesson("December to January", GLOSS + UMBEL, MATT + RACEME, "January"))
    assert plain(spells(flowers)) == [
        ("December to 7 January", False, ["gloss"]),
        ("8–21 January", True, ["inflorescence", "gloss"]),
        ("22–31 January", False, ["gloss"]),
    ]


def test_the_spells_of_the_lessons_hold_every_day_of_gathering_once() -> None:
    for telling in real():
        days = [day for spell in spells(telling) for day in spell.window.days]
        assert sorted(days) == sorted(telling.gathered)


def test_a_spell_of_the_lessons_is_sure_where_its_features_suffice_and_nowhere_else() -> None:
    count = 0
    for telling in real():
        for spell in spells(telling):
            count += 1
            assert spell.is_sure == tell_apart(spell.seen)
            assert spell.is_sure != (telling.unsure >= set(spell.window.days))
            assert all(set(spell.seen) <= set(telling.on(day)) for day in spell.window.days)
    assert count > 50


# ---- in words -----------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("facts", "theirs", "words"),
    [
        ("### Leaves\n- margin: entire\n", "#### Leaves\n- margin: entire\n",
         "not yet sure: nothing recorded that can be seen then tells them apart"),
        ("### Leaves\n- attachment: stalked\n", "#### Leaves\n- attachment: stalkless\n",
         "not yet sure: only leaves: attachment"),
        (GLOSS, MATT, "not yet sure: only leaves: gloss, not to be trusted by itself"),
        (GLOSS + "- length: 2 cm\n", MATT + "- length: 20 cm\n",
         "not yet sure: only leaves: gloss, length, none of them to be trusted by itself"),
        ("### Stem\n- juice: milky white\n### Leaves\n- latex: white\n",
         "#### Stem\n- juice: clear\n#### Leaves\n- latex: none\n",
         "not yet sure: only leaves: latex"),
        (GLOSS + UMBEL, MATT + RACEME,
         "sure by flowers: inflorescence; less sure: leaves: gloss"),
    ],
)  # fmt: skip
def test_a_spell_says_why_it_is_sure_or_not(facts: str, theirs: str, words: str) -> None:
    flowers = "April to June" if "inflorescence" in facts else "July"
    (spell,) = spells(told(lesson("10–11 May", facts, theirs, flowers)))
    assert spell_words(spell, WORDS) == words


def test_what_tells_of_one_and_the_same_thing_is_said_to() -> None:
    facts, theirs = ("Flowers\n- sepals: 4\n- stamens: 4\n", "Flowers\n- sepals: 3\n- stamens: 9\n")
    (spell,) = spells(told(lesson("10–11 May", f"### {facts}", f"#### {theirs}", "April to June")))
    assert spell_words(spell, WORDS) == (
        "not yet sure: only flowers: sepals, stamens, which tell of one and the same thing"
    )


def test_features_are_gathered_by_organ_and_those_not_sure_by_themselves_come_last() -> None:
    facts = GLOSS + "- attachment: stalked\n- division: simple\n" + UMBEL
    theirs = MATT + "- attachment: stalkless\n- division: pinnate\n" + RACEME
    found = [sign.contrast for sign in told(lesson("10–11 May", facts, theirs)).signs]
    assert features_named(found, WORDS) == (
        "leaves: attachment, division; flowers: inflorescence; less sure: leaves: gloss"
    )
    assert features_named(found[:1], WORDS) == "leaves: gloss"
    assert features_named([], WORDS) == ""


def test_days_are_said_as_about_where_they_are_estimates() -> None:
    assert when_words(Window(day_of_year(3, 1), day_of_year(4, 22))) == "March to 22 April"
    assert when_words(Window(day_of_year(3, 1), day_of_year(4, 22)), about=True) == (
        "about early March to late April"
    )
    assert days_words(frozenset({1, 2, 40})) == "1–2 January and 9 February"
    assert days_words(frozenset()) == ""


@pytest.mark.parametrize(
    ("months", "words"),
    [
        ([], ""),
        ([4], "April"),
        ([3, 4], "March and April"),
        ([3, 4, 6], "March, April and June"),
        ([3, 4, 5, 8], "March to May and August"),
        ([1, 11, 12], "November to January"),
        ([1, 12], "December and January"),
        (range(1, 13), "all year"),
    ],
)
def test_months_are_told_as_runs(months: list[int], words: str) -> None:
    assert months_words(frozenset(day_of_year(month, 9) for month in months)) == words


def test_words_in_a_row_end_with_and() -> None:
    assert [in_a_row(list("abc"[:n])) for n in range(4)] == ["", "a", "a and b", "a, b and c"]


# ---- the whole year -----------------------------------------------------------------------


def test_outside_the_time_of_gathering_each_day_counts_for_itself() -> None:
    telling = told(lesson("20–31 May", GLOSS + UMBEL, MATT + RACEME))
    sure = sure_days(telling)
    assert sure == frozenset(range(day_of_year(5, 6), day_of_year(5, 20) + 1))
    assert telling.is_sure(day_of_year(5, 26))


def test_the_sure_days_of_the_lessons_are_those_that_suffice_but_for_unsure_weeks() -> None:
    for telling in real():
        sure = sure_days(telling)
        wanted = {day for day in range(1, YEAR + 1) if telling.is_sure(day)}
        unsure = {week_of(day) for day in telling.unsure}
        assert sure == frozenset(wanted) - telling.unsure
        assert {week_of(day) for day in sure & telling.gathered} & unsure == set()
