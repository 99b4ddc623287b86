"""The questions and answers of a key in words."""

from __future__ import annotations

import pytest

from helpers.courses import seen, site_of
from helpers.keys import lesson
from sallet.lesson.vocabulary_file import load_vocabulary
from sallet.publish.key_words import (
    Explainer,
    either,
    numbers_joined,
    organ_asked,
    state_asked,
)
from sallet.publish.values import explained
from sallet.study.plant_table import Asked

VOCABULARY = load_vocabulary()
ARRANGEMENT = VOCABULARY.label("leaves", "arrangement")
PETALS = VOCABULARY.label("flowers", "petals")
assert ARRANGEMENT
assert PETALS


def organ(name: str, *where: str, part: str = "") -> str:
    """Return the words for an organ, a piece of it and places on it."""
    assert ARRANGEMENT
    return organ_asked(Asked(name, part, ARRANGEMENT, frozenset(where)), VOCABULARY)


@pytest.mark.parametrize(
    ("name", "where", "words"),
    [
        ("leaves", (), "Leaves"),
        ("whole plant", (), "Whole plant"),
        ("leaves", ("lower",), "Lower leaves"),
        ("leaves", ("basal",), "Basal leaves"),
        ("leaves", ("stem",), "Stem leaves"),
        ("stem", ("upper",), "Upper stem"),
        ("stem", ("at the base",), "Stem, at the base"),
        ("stem", ("twigs",), "Stem, on the twigs"),
        ("leaves", ("short shoots",), "Leaves, on short shoots"),
        ("leaves", ("above", "lower"), "Lower leaves, above"),
        ("leaves", ("vigorous shoots", "beneath"), "Leaves, beneath, on vigorous shoots"),
    ],
)
def test_the_place_on_an_organ_is_told_in_words(
    name: str, where: tuple[str, ...], words: str
) -> None:
    assert organ(name, *where) == words


def test_another_word_for_a_place_is_read_as_the_place() -> None:
    assert organ("leaves", "lowest") == "Lower leaves"


def test_a_piece_of_an_organ_is_named_in_its_stead() -> None:
    assert organ("leaves", part="leaf stalks") == "Leaf stalks"
    assert organ("leaves", "lower", part="leaf stalks") == "Lower leaf stalks"


@pytest.mark.parametrize(
    ("words", "one"),
    [([], ""), (["a"], "a"), (["a", "b"], "a or b"), (["a", "b", "c"], "a\u2060, b or c")],
)
def test_of_several_words_one_holds(words: list[str], one: str) -> None:
    assert either(words) == one


def test_words_of_a_lesson_are_escaped() -> None:
    assert either(["<b>", "c"]) == "&lt;b&gt; or c"


@pytest.mark.parametrize(
    ("numbers", "joined"),
    [
        (["3", "4", "5–6", "8"], ["3–6", "8"]),
        (["none", "1", "2"], ["none", "1–2"]),
        (["1", "2–3", "4 or more"], ["1 or more"]),
        (["none", "4"], ["none", "4"]),
        (["6", "11 or more"], ["6", "11 or more"]),
        (["5"], ["5"]),
        ([], []),
    ],
)
def test_numbers_that_follow_each_other_are_one(numbers: list[str], joined: list[str]) -> None:
    assert numbers_joined(numbers) == joined


def test_an_option_stands_for_its_state() -> None:
    assert ARRANGEMENT
    state = state_asked("opposite", ARRANGEMENT)
    assert state
    assert state.name == "opposite"
    assert state_asked("none", ARRANGEMENT) is None


# ---- words that explain themselves --------------------------------------------------------

USED = site_of({
    "course.yml": "",
    "a.md": lesson("A", "Leaves arrangement: opposite", "Flowers petals: 5"),
}).words  # fmt: skip
EXPLAIN = Explainer(USED)


def test_a_word_that_the_words_page_has_explains_itself() -> None:
    assert ARRANGEMENT
    assert EXPLAIN.label(ARRANGEMENT) == explained("arrangement", "leaves", "arrangement")
    opposite = explained("opposite", "leaves", "arrangement", "opposite")
    assert EXPLAIN.options(["opposite"], ARRANGEMENT) == opposite


def test_a_word_that_it_does_not_have_is_only_a_word() -> None:
    assert ARRANGEMENT
    assert EXPLAIN.options(["alternate", "whorled"], ARRANGEMENT) == "alternate or whorled"
    assert Explainer(()).label(ARRANGEMENT) == "arrangement"
    assert Explainer(()).way(ARRANGEMENT) == ""


def test_numbers_need_no_explanation() -> None:
    assert PETALS
    assert EXPLAIN.options(["none", "4", "5"], PETALS) == "none or 4–5"


def test_the_way_to_a_characters_words() -> None:
    assert ARRANGEMENT
    assert EXPLAIN.way(ARRANGEMENT) == "words.html#leaves-arrangement"


def test_only_the_words_of_some_characters_are_kept() -> None:
    assert PETALS
    (flowers,) = EXPLAIN.narrowed([PETALS])
    assert flowers.subject.name == "flowers"
    assert [used.label.name for used in flowers.labels] == ["petals"]
    assert seen(EXPLAIN.label(PETALS)).text == "petals"
