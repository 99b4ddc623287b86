"""Which of the things that can be seen each plant allows, and what is never asked."""

from __future__ import annotations

from dataclasses import replace
from itertools import combinations
from typing import TYPE_CHECKING

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from helpers.lessons import LESSONS, VOCABULARY, identified, label_of
from sallet.study.contrast import contrasts
from sallet.study.plant_table import Asked, plant_table
from sallet.study.table import Character

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from sallet.lesson.model import Fact, Lesson
    from sallet.lesson.vocabulary import Label, Vocabulary
    from sallet.study.contrast import Where
    from sallet.study.plant_table import Seen
    from sallet.study.table import Table

EVERYWHERE: Where = frozenset()


def always(_slug: str, _organ: str, _part: str, _where: Where) -> float:
    """Say that everything can be looked at on all days."""
    return 1.0


def table_of(*plants: str, seen: Seen = always, least: float = 0.0) -> Table:
    """Return the table of plants of which only leaves are told, lines divided by a bar."""
    lessons = [
        identified(f"{chr(97 + at)}.md", {"Leaves": plant.split(" | ")})
        for at, plant in enumerate(plants)
    ]
    return plant_table(lessons, VOCABULARY, seen, least=least)


def read(table: Table) -> list[list[str]]:
    """Return for each character in words what is shown of each plant, `?` where nothing is told."""
    return [
        [
            "?" if shown is None else ", ".join(c.options[o] for o in sorted(shown))
            for c in [c]
            for shown in c.shown
        ]
        for c in table.characters
    ]


def asked_of(table: Table) -> list[tuple[str, str, str, set[str]]]:
    """Return what is asked: organ, kind or piece, label, place."""
    asked = (c.name for c in table.characters)
    return [(a.organ, a.part, a.label.name, set(a.where)) for a in asked if isinstance(a, Asked)]


# ---- columns -------------------------------------------------------------------------------


def test_a_character_is_a_label_with_the_states_that_are_recorded() -> None:
    label = label_of("leaves", "arrangement")
    table = table_of("arrangement: opposite", "arrangement: alternate", "attachment: stalked")
    alternate, opposite = frozenset({0}), frozenset({1})
    assert table.characters == (
        Character(
            name=Asked("leaves", "", label, EVERYWHERE),
            options=("alternate", "opposite"),
            shown=(opposite, alternate, None),
            excluded=(opposite, alternate),
            kind="arrangement of the leaves",
        ),
    )
    assert table.plants == ("a", "b", "c")


def test_plants_for_the_pot_and_plants_that_harm_are_known() -> None:
    heads = ("taught as: food", "danger: deadly\ntaught as: look-alike",
             "danger: harmful\ntaught as: look-alike", "danger: poisonous")  # fmt: skip
    lessons = [identified(f"{at}.md", {}, head) for at, head in enumerate(heads)]
    table = plant_table(lessons, VOCABULARY, always)
    assert (table.food, table.grave) == (frozenset({0, 3}), frozenset({1, 3}))


def test_a_plant_shows_all_that_is_recorded_of_it() -> None:
    assert read(table_of("arrangement: opposite, sometimes whorled", "arrangement: alternate")) == [
        ["opposite, whorled", "alternate"]
    ]


def test_a_range_shows_what_lies_between_its_ends() -> None:
    (shape,) = table_of(
        "shape: linear to circular", "shape: kidney-shaped", "shape: linear"
    ).characters
    names = [state.name for state in label_of("leaves", "shape").states]
    begin, end = sorted(map(names.index, ("linear", "circular")))
    between = names[begin : end + 1]
    assert shape.shown[0] == frozenset(shape.options.index(name) for name in between)
    assert len(between) > 2


def test_none_is_an_option_and_a_word_for_nothing_is_not_against_it() -> None:
    table = table_of("stipules: none", "stipules: absent", "stipules: papery tube")
    (stipules,) = table.characters
    assert read(table) == [["none", "absent", "papery tube"]]
    pairs = (0, 1), (0, 2), (1, 2)
    assert [stipules.separates(*pair) for pair in pairs] == [False, True, True]


def test_numbers_are_cut_where_a_recorded_one_begins_or_ends() -> None:
    table = table_of("leaflets: 3–5", "leaflets: 5–7", "leaflets: 9 or more", "leaflets: 1")
    assert read(table) == [["3–4, 5", "5, 6–7", "9 or more", "1"]]
    (leaflets,) = table.characters
    assert (leaflets.options, leaflets.is_ordered) == (("1", "3–4", "5", "6–7", "9 or more"), True)


def test_about_reaches_a_quarter_to_either_side() -> None:
    """About 16 is 12 to 20, and about 24 18 to 30; about 8 ends at 10."""
    assert read(table_of("leaflets: about 16", "leaflets: about 24", "leaflets: about 8")) == [
        ["12–17, 18–20", "18–20, 21–30", "6–10"]
    ]


def test_what_parts_no_two_plants_is_not_asked() -> None:
    assert (
        table_of("arrangement: opposite", "arrangement: opposite, rarely whorled").characters == ()
    )


@pytest.mark.parametrize(
    ("organ", "this", "that"),
    [
        ("Leaves", "length: 2–3 cm", "length: 10–12 cm"),
        ("Leaves", "taste: sour", "taste: bitter"),
        ("Roots", "kind: bulb", "kind: taproot"),
        ("Leaves", "in winter: evergreen", "in winter: falls"),
    ],
)
def test_nobody_is_asked_to_measure_taste_dig_or_wait(organ: str, this: str, that: str) -> None:
    """Each of these is a contrast; none stands in a key."""
    vocabulary = excluding("leaves", "taste", "sour", "bitter")
    one, other = (identified(f"{line}.md", {organ: [line]}) for line in (this, that))
    assert contrasts(one.facts, other.facts, vocabulary)
    assert plant_table([one, other], vocabulary, always).characters == ()


def excluding(organ: str, label: str, one: str, other: str) -> Vocabulary:
    """Return the vocabulary with a state of a label that excludes another."""

    def changed(old: Label) -> Label:
        states = (
            replace(s, excludes=s.excludes | {other}) if s.name == one else s for s in old.states
        )
        return replace(old, states=tuple(states)) if old.name == label else old

    subjects = (
        replace(s, labels=tuple(map(changed, s.labels))) if s.name == organ else s
        for s in VOCABULARY.subjects
    )
    return replace(VOCABULARY, subjects=tuple(subjects))


# ---- what leaves something open ------------------------------------------------------------


@pytest.mark.parametrize("told", ["often hairy", "sometimes hairy", "hairy as if by magic", ""])
def test_what_leaves_anything_open_is_as_if_it_were_not_told(told: str) -> None:
    table = table_of(f"surface: {told}", "surface: hairless", "surface: hairy")
    assert [row[0] for row in read(table)] == ["?"]


def test_a_place_is_asked_for_where_plants_tell_of_it() -> None:
    table = table_of("arrangement: opposite (lower), alternate (upper)", "arrangement: alternate")
    assert list(zip(asked_of(table), read(table), strict=True)) == [
        (("leaves", "", "arrangement", {"lower"}), ["opposite", "alternate"])
    ]


def test_what_is_told_without_a_place_may_be_met_at_one_that_is_told() -> None:
    """`Opposite, alternate (upper)`: somebody may take a leaf in the middle for an upper one."""
    table = table_of("arrangement: opposite, alternate (upper)", "arrangement: whorled (upper)")
    assert list(zip(asked_of(table), read(table), strict=True)) == [
        (("leaves", "", "arrangement", {"upper"}), ["alternate, opposite", "whorled"])
    ]


def test_what_is_told_beside_a_place_is_no_statement_about_another_place() -> None:
    """Basal leaves are lower leaves: `pinnate, simple (lower)` does not make basal ones pinnate."""
    table = table_of("division: pinnate, simple (lower)", "division: simple (basal)")
    assert table.characters == ()


def test_of_the_whole_organ_all_is_told_that_is_told_of_any_place() -> None:
    table = table_of("arrangement: opposite, alternate (upper)", "arrangement: whorled")
    assert list(zip(asked_of(table), read(table), strict=True)) == [
        (("leaves", "", "arrangement", set()), ["alternate, opposite", "whorled"])
    ]


@pytest.mark.parametrize("when", ["young", "spring", "in wet years"])
def test_nobody_is_asked_what_it_was_when_or_in_a_writer_s_own_words(when: str) -> None:
    table = table_of(f"arrangement: opposite ({when})", "arrangement: alternate")
    assert table.characters == ()


def test_a_place_at_which_all_is_as_elsewhere_is_not_asked_for_again() -> None:
    table = table_of("arrangement: opposite, opposite (upper)", "arrangement: alternate")
    assert asked_of(table) == [("leaves", "", "arrangement", set())]


# ---- what can be seen, and what it costs ---------------------------------------------------


def on_part_of_the_days(share: float, slug: str) -> Seen:
    """Say that one plant's organs can be looked at on a part of the days, the others' on all."""
    return lambda one, _organ, _part, _where: share if one == slug else 1.0


def test_what_can_be_looked_at_too_seldom_is_as_if_it_were_not_told() -> None:
    plants = "arrangement: opposite", "arrangement: alternate", "arrangement: whorled"
    table = table_of(*plants, seen=on_part_of_the_days(0.4, "b"), least=0.5)
    assert read(table) == [["opposite", "?", "whorled"]]
    assert read(table_of(*plants, seen=on_part_of_the_days(0.5, "b"), least=0.5)) == [
        ["opposite", "alternate", "whorled"]
    ]


def test_what_is_out_of_sight_on_some_days_costs_more() -> None:
    plants = "arrangement: opposite", "arrangement: alternate"
    assert [c.cost for c in table_of(*plants, seen=on_part_of_the_days(0.5, "b")).characters] == [
        pytest.approx(1.0 + 0.6 / 4)
    ]


@pytest.mark.parametrize(
    ("organ", "this", "that", "cost"),
    [
        ("Leaves", "arrangement: opposite", "arrangement: alternate", 1.0),
        ("Leaves", "arrangement: opposite (upper)", "arrangement: alternate (upper)", 1.0 + 0.1),
        ("Stem", "interior: solid", "interior: hollow", 1.0 + 0.1),
        ("Leaves", "shape: linear", "shape: kidney-shaped", 1.3),
        ("Leaves", "surface: hairless", "surface: hairy", 1.3 + 0.5),
        ("Leaves", "colour: red", "colour: blue", 2.5),
    ],
)
def test_what_is_firm_and_seen_at_once_costs_least(
    organ: str, this: str, that: str, cost: float
) -> None:
    """More costs a place to be looked for, an organ further off, a lens, and what may mislead."""
    lessons = [identified(f"{line}.md", {organ: [line]}) for line in (this, that)]
    (found,) = plant_table(lessons, VOCABULARY, always).characters
    assert found.cost == pytest.approx(cost)
    assert (found.is_reliable, found.is_weak) == (cost < 1.3, cost == 2.5)


# ---- nothing is separated that contrasts do not separate -----------------------------------


def told_there(facts: Iterable[Fact], where: Where) -> tuple[Fact, ...]:
    """Return facts with what is told of a place and of no place; with all where it is asked of none."""
    if not where:
        return tuple(facts)
    here = (
        replace(f, items=tuple(item for item in f.items if item.where in {where, EVERYWHERE}))
        for f in facts
    )
    return tuple(fact for fact in here if fact.items)


def unfounded(lessons: Sequence[Lesson]) -> list[str]:
    """Return each separation of a table that is no contrast of what is told at the place."""
    table = plant_table(lessons, VOCABULARY, always)
    found = []
    for one, other in combinations(range(len(lessons)), 2):
        apart = [c.name for c in table.separating(one, other) if isinstance(c.name, Asked)]
        for where in {asked.where for asked in apart}:
            told = contrasts(
                told_there(lessons[one].facts, where),
                told_there(lessons[other].facts, where),
                VOCABULARY,
            )
            labels = {(c.this.subject, c.this.part, c.label.name) for c in told}
            asked_here = (a for a in apart if a.where == where)
            found += [a for a in asked_here if (a.organ, a.part, a.label.name) not in labels]
    return [f"{asked.organ} {asked.label.name} {set(asked.where)}" for asked in found]


def test_the_table_of_the_lessons_separates_nothing_that_contrasts_do_not() -> None:
    assert len(LESSONS) >= 28
    assert unfounded(LESSONS) == []


_OFTEN = ["", "", "", "", "usually ", "sometimes ", "rarely "]
_WHERE = ["", "", "", "", " (lower)", " (upper)", " (basal)", " (young)", " (in odd years)"]
_VALUES = {
    "arrangement": ["alternate", "opposite", "whorled", "basal", "gibberish"],
    "surface": [
        "none",
        "hairless",
        "hairy",
        "downy",
        "nearly hairless",
        "matt",
        "glossy",
        "felted",
    ],
    "leaflets": ["none", "1", "3", "3–5", "4", "about 4", "about 8", "6–10", "9 or more", "many"],
}


@st.composite
def _lines(draw: st.DrawFn) -> list[str]:
    lines = []
    for label, values in _VALUES.items():
        piece = st.tuples(*(st.sampled_from(words) for words in (_OFTEN, values, _WHERE)))
        pieces = draw(st.lists(piece.map("".join), max_size=3))
        lines += [f"{label}: {', '.join(pieces)}"] if pieces else []
    return lines


@settings(max_examples=200)
@given(st.lists(_lines(), min_size=2, max_size=4))
def test_no_table_separates_what_contrasts_do_not(plants: list[list[str]]) -> None:
    lessons = [identified(f"{at}.md", {"Leaves": lines}) for at, lines in enumerate(plants)]
    assert unfounded(lessons) == []
