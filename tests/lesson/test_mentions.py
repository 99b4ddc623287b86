"""Whether a text speaks of a part."""

from __future__ import annotations

import pytest

from sallet.lesson.mentions import is_mentioned, named_parts, singular, words_for
from sallet.lesson.vocabulary_file import load_vocabulary

VOCABULARY = load_vocabulary()


def speaks(name: str, text: str, *, organ_too: bool = False) -> bool:
    """Return whether a text speaks of a part of the vocabulary."""
    return is_mentioned(words_for(name, VOCABULARY, organ_too=organ_too), text)


@pytest.mark.parametrize(
    ("many", "one"),
    [("leaves", "leaf"), ("berries", "berry"), ("branches", "branch"), ("hips", "hip"),
     ("grass", "grass"), ("calyxes", "calyx"), ("leaf", "leaf"), ("pies", "pie")],
)  # fmt: skip
def test_singular(many: str, one: str) -> None:
    assert singular(many) == one


def test_one_leaf_speaks_of_the_leaves() -> None:
    assert speaks("leaves", "Wash leaf by leaf, turning each one over.")


def test_another_word_for_the_part_will_do() -> None:
    assert speaks("leaf stalks", "Pull out the petioles.")
    assert speaks("leaf stalks", "Trim the stalks.")


def test_a_word_is_found_whole_only() -> None:
    assert not speaks("hips", "Ship it whipped.")


def test_hyphens_capitals_and_bent_apostrophes_make_no_difference() -> None:
    assert speaks("leaf stalks", "Leaf-stalks go on the heap.")


def test_a_source_named_after_a_part_does_not_speak_of_it() -> None:
    assert not speaks("leaves", "Wash them well.[^leaf]")


def test_a_part_that_is_eaten_may_go_by_its_organ() -> None:
    assert speaks("young leaves", "Wash the leaves.", organ_too=True)


def test_a_part_that_is_cut_away_may_not() -> None:
    """`Wash the leaves` does not tell anybody to leave the old ones out."""
    assert not speaks("old leaves", "Wash the leaves.")
    assert not speaks("leaf stalks", "Wash the leaves.")
    assert not speaks("green fruit", "Crush the berries.")
    assert speaks("old leaves", "Leave out the older leaves.")


def test_what_stands_behind_the_noun_is_no_part_of_it() -> None:
    assert speaks("stones inside the haw", "Keep back every stone.")


def test_a_part_that_the_vocabulary_lacks_goes_by_its_noun() -> None:
    assert speaks("doubtful trumpets", "Throw away each trumpet.")
    assert not speaks("doubtful trumpets", "Throw away each drum.")


def test_a_list_names_each_of_its_parts() -> None:
    assert named_parts("stems and old leaves", VOCABULARY) == ("stems", "old leaves")


def test_adjectives_in_a_list_are_no_parts() -> None:
    assert named_parts("green or shrivelled berries", VOCABULARY) == ("shrivelled berries",)


def test_a_name_that_the_vocabulary_holds_whole_is_no_list() -> None:
    assert named_parts("tops and leaves", VOCABULARY) == ("tops and leaves",)


@pytest.mark.parametrize("name", ["", " ", ",", "and", "("])
def test_a_name_without_a_noun_is_not_spoken_of(name: str) -> None:
    assert not speaks(name, "Wash the leaves.")
