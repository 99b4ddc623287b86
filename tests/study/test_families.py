"""What the plants of one family share, and above all what they do not."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from helpers.workshop import lesson_of
from sallet.lesson.vocabulary_file import load_vocabulary
from sallet.study.families import families

if TYPE_CHECKING:
    from sallet.lesson.model import Lesson

VOCABULARY = load_vocabulary()


def plant(*lines: str, organ: str = "Leaves", family: str = "Rosaceae") -> Lesson:
    """Return a lesson with facts of one organ, given as lines."""
    body = "\n".join(f"- {line}" for line in lines)
    return lesson_of(f"---\nfamily: {family}\n---\n## Identification\n### {organ}\n{body}\n")


def shared(*lessons: Lesson) -> list[tuple[str, str, str, list[str]]]:
    """Return what the lessons of a single family share: organ, part, label, values as written."""
    (family,) = families(lessons, VOCABULARY)
    return [(f.subject, f.part, f.label, [i.text for i in f.items]) for f in family.shared]


def share(this: str, that: str, organ: str = "Leaves") -> bool:
    """Return whether two plants of one fact each share it."""
    return shared(plant(this, organ=organ), plant(that, organ=organ)) != []


# ---- who belongs together -----------------------------------------------------------------


def test_lessons_stand_by_family_in_the_order_given_and_those_of_no_family_last() -> None:
    names = ["Rosaceae", "", "Apiaceae", "Rosaceae Juss.", "Umbelliferae", "rosaceae", ""]
    lessons = [lesson_of(f"---\nname: P{n}\nfamily: {f}\n---\n") for n, f in enumerate(names)]
    found = families(lessons, VOCABULARY)
    assert [(f.name, [lesson.name for lesson in f.lessons]) for f in found] == [
        ("Apiaceae", ["P2", "P4"]), ("Rosaceae", ["P0", "P3", "P5"]), ("", ["P1", "P6"]),
    ]  # fmt: skip


def test_without_lessons_there_are_no_families() -> None:
    assert families([], VOCABULARY) == ()


def test_a_plant_alone_in_its_family_shares_nothing() -> None:
    assert shared(plant("margin: entire")) == []


def test_plants_whose_family_is_not_told_are_no_family() -> None:
    lesson = plant("margin: entire", family="")
    assert shared(lesson, lesson) == []


# ---- what is the same ---------------------------------------------------------------------


@pytest.mark.parametrize(
    ("this", "that"),
    [
        ("margin: entire", "margin: smooth-edged"),  # a synonym
        ("margin: entire, serrate", "margin: serrate or entire"),
        ("shape: ovate to elliptic", "shape: elliptic to ovate"),
        ("margin: entire (lower leaves)", "margin: entire (lower)"),
        ("margin: entire (lower), serrate (upper)", "margin: serrate (upper), entire (lower)"),
        ("margin: always entire", "margin: entire"),
        ("surface: slightly downy", "surface: slightly downy"),
        ("stipules: none", "stipules: none"),
        ("leaflets: 5", "leaflets: 5"),
        ("leaflets: 5–7", "leaflets: 5 to 7"),
        ("leaflets: many", "leaflets: many"),
    ],
)
def test_the_same_states_and_numbers_in_the_same_places_are_shared(this: str, that: str) -> None:
    assert share(this, that)


@pytest.mark.parametrize(
    ("this", "that"),
    [
        ("margin: entire", "margin: serrate"),
        ("margin: entire", "margin: entire, serrate"),
        ("shape: ovate to elliptic", "shape: ovate, elliptic"),
        ("margin: entire (lower)", "margin: entire (upper)"),
        ("margin: entire (lower)", "margin: entire"),
        ("surface: slightly downy", "surface: downy"),
        ("surface: none", "surface: hairless"),
        ("leaflets: 5", "leaflets: 5–7"),
        ("leaflets: many", "leaflets: 20–30"),
    ],
)
def test_what_differs_in_any_way_is_not(this: str, that: str) -> None:
    assert not share(this, that)


@pytest.mark.parametrize("often", ["usually", "mostly", "often", "sometimes", "rarely"])
def test_what_is_not_said_of_every_plant_is_not_shared(often: str) -> None:
    hedged = f"margin: {often} entire"
    assert not share(hedged, hedged)
    assert not share(hedged, "margin: entire")
    assert not share(f"margin: entire, {often} serrate", f"margin: entire, {often} serrate")
    assert not share(f"leaflets: {often} 5", f"leaflets: {often} 5")


def test_every_word_for_how_often_leaves_a_doubt_but_three() -> None:
    often = [q.name for q in VOCABULARY.qualifiers if q.kind == "frequency"]
    sure = [name for name in often if share(*[f"margin: entire ({name})"] * 2)]
    assert sure == ["always", "slightly", "strongly"]


@pytest.mark.parametrize(
    "line",
    [
        "margin: entire (in most gardens)",  # the writer's own words may hedge
        "margin: entyre",
        "margin: entire, entyre",
        "leaflets: about 5",
        "leaflets: a few",
        "length: 5 cm",
        "length: 5–10 cm",
        "sparkle: much",
    ],
)
def test_what_may_mean_something_else_and_lengths_are_never_shared(line: str) -> None:
    assert not share(line, line)


def test_only_characters_of_organs_are_shared() -> None:
    lesson = lesson_of("---\nfamily: Rosaceae\n---\n## Habitat\n- moisture: damp\n")
    assert shared(lesson, lesson) == []


def test_what_is_said_of_a_look_alike_is_not_said_of_the_plant() -> None:
    double = lesson_of(
        "---\nfamily: Rosaceae\n---\n## Look-alikes\n### Yew\n#### Leaves\n- margin: entire\n"
    )
    assert shared(double, plant("margin: entire")) == []


# ---- all members, all facts ---------------------------------------------------------------


def test_silence_shares_nothing() -> None:
    one = plant("margin: entire", "arrangement: alternate")
    assert shared(one, one, plant("arrangement: alternate")) == [
        ("leaves", "", "arrangement", ["alternate"])
    ]


def test_a_label_without_a_value_is_silence() -> None:
    assert not share("margin:", "margin:")


def test_a_character_told_twice_is_all_that_either_says() -> None:
    twice = plant("margin: entire", "margin: serrate")
    assert shared(twice, plant("margin: entire")) == []
    assert shared(twice, plant("margin: entire, serrate")) == [
        ("leaves", "", "margin", ["entire", "serrate"])
    ]
    assert shared(plant("margin: entire", "margin: entyre"), plant("margin: entire")) == []


def test_a_piece_of_an_organ_is_not_the_organ() -> None:
    stalks = plant("surface: downy", organ="Leaf stalks")
    assert shared(stalks, plant("surface: downy")) == []
    assert shared(stalks, stalks) == [("leaves", "leaf stalks", "surface", ["downy"])]


def test_shared_features_stand_in_the_order_of_the_vocabulary() -> None:
    text = """---
family: Rosaceae
---
## Identification
### Flowers
- petals: 5
### Leaf stalks
- surface: downy
### Leaves
- surface: downy
- arrangement: alternate
"""
    found = [(s, part, label) for s, part, label, _ in shared(lesson_of(text), lesson_of(text))]
    assert found == [
        ("leaves", "", "arrangement"), ("leaves", "", "surface"),
        ("leaves", "leaf stalks", "surface"), ("flowers", "", "petals"),
    ]  # fmt: skip


def test_the_values_stand_in_the_words_of_the_first_member() -> None:
    first, second = plant("margin: smooth-edged"), plant("margin: entire")
    assert shared(first, second)[0][3] == ["smooth-edged"]
    assert shared(second, first)[0][3] == ["entire"]


# ---- laws ---------------------------------------------------------------------------------

_VALUES = ["entire", "serrate", "entire to serrate", "none", "entyre", "usually entire"]
_PLACES = ["", " (lower)", " (in odd years)"]
_plants = st.lists(
    st.tuples(st.sampled_from(_VALUES), st.sampled_from(_PLACES)), min_size=1, max_size=2
).map(lambda pieces: plant("margin: " + ", ".join(map("".join, pieces)), "arrangement: alternate"))


@settings(max_examples=80, deadline=None)
@given(
    st.lists(_plants, min_size=2, max_size=4).flatmap(
        lambda x: st.tuples(st.just(x), st.permutations(x))
    )
)
def test_the_order_of_the_members_changes_no_character(
    orders: tuple[list[Lesson], list[Lesson]],
) -> None:
    one, other = ([row[:3] for row in shared(*order)] for order in orders)
    assert one == other


@settings(max_examples=80, deadline=None)
@given(st.lists(_plants, min_size=2, max_size=3), _plants)
def test_another_member_never_adds_what_is_shared(members: list[Lesson], more: Lesson) -> None:
    before = [row[:3] for row in shared(*members)]
    after = [row[:3] for row in shared(*members, more)]
    assert [row for row in after if row not in before] == []
