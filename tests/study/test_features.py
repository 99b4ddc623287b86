"""A contrast in words."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from helpers.lessons import VOCABULARY, identified, label_of
from sallet.study.contrast import contrasts
from sallet.study.features import Feature, feature_of, feature_words, organ_words

if TYPE_CHECKING:
    from sallet.study.contrast import Contrast


def between(organ: str, this: str, that: str) -> Contrast:
    """Return the one contrast between two plants of a fact each."""
    one, other = (identified("x.md", {organ: [line]}) for line in (this, that))
    (contrast,) = contrasts(one.facts, other.facts, VOCABULARY)
    return contrast


def test_a_feature_has_both_plants_values_as_their_lessons_have_them() -> None:
    contrast = between("Leaves", "arrangement: Opposite or whorled", "arrangement: alternate[^a]")
    assert feature_of(contrast, VOCABULARY) == Feature(
        organ="Leaves",
        label="arrangement",
        this="Opposite or whorled",
        that="alternate",
        is_reliable=True,
        caveat="",
    )


def test_what_may_not_be_trusted_by_itself_says_why() -> None:
    feature = feature_of(between("Leaves", "colour: red", "colour: blue"), VOCABULARY)
    assert (feature.is_reliable, feature.caveat) == (False, label_of("leaves", "colour").caveat)
    assert feature.caveat


@pytest.mark.parametrize(
    ("heading", "organ"),
    [("Leaves", "Leaves"), ("Leaf stalks", "Leaf stalks"), ("Bulb", "Bulb"), ("Stem", "Stem")],
)
def test_an_organ_is_named_by_the_piece_that_is_meant(heading: str, organ: str) -> None:
    (fact,) = identified("x.md", {heading: ["length: 3 cm"]}).facts
    assert organ_words(fact, VOCABULARY) == organ


def test_a_feature_as_a_line_names_the_other_plant_once() -> None:
    feature = Feature("Leaves", "gloss", "glossy above", "matt above", is_reliable=True, caveat="")
    assert feature_words(feature, "Lily of the valley") == (
        "Leaves, gloss: glossy above; Lily of the valley: matt above"
    )
