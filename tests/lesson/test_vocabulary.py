"""How the words of the vocabulary are found."""

from __future__ import annotations

import pytest

from sallet.lesson.vocabulary import Label, Part, Qualifier, State, Subject, Vocabulary, normal
from sallet.lesson.vocabulary_file import load_vocabulary

DRY, DAMP, WET = (State(name, f"a soil that is {name}") for name in ("dry", "damp", "wet"))
ENTIRE = State("entire", "without teeth", also=("smooth-edged",))
SAW = State("finely serrate", "with small teeth", also=("fine-toothed", "finely toothed"))
MARGIN = Label("leaves", "margin", "states", "the edge", "form", also=("leaf edge",),
               states=(ENTIRE, SAW))  # fmt: skip
STALK = Part("leaves", "leaf stalks", "what carries the blade", also=("petioles",))
LEAVES = Subject("leaves", "Leaves", is_organ=True, definition="green parts", also=("foliage",),
                 parts=(STALK,), labels=(MARGIN,))  # fmt: skip
ROOTS = Subject("roots", "Roots", is_organ=True, definition="in the soil",
                parts=(Part("roots", "foliage", "a trap"),))  # fmt: skip
HABITAT = Subject("habitat", "Habitat", is_organ=False, definition="where it grows")
LOWER = Qualifier("lower", "place", "low down", also=("at the bottom",))
ABOVE = Qualifier("above", "place", "on top", also=("upper surface",))
VOCABULARY = Vocabulary((LEAVES, ROOTS, HABITAT), (LOWER, ABOVE))


@pytest.mark.parametrize(
    "words", ["Leaf-Stalks", " leaf  stalks ", "LEAF\u00a0STALKS", "leaf_stalks", "leaf\nstalks"]
)
def test_capitals_hyphens_and_spaces_make_no_difference(words: str) -> None:
    assert normal(words) == "leaf stalks"
    assert VOCABULARY.organ(words) == (LEAVES, STALK)


def test_a_bent_apostrophe_is_an_apostrophe() -> None:
    assert normal("Dog’s mercury") == "dog's mercury"


@pytest.mark.parametrize("words", ["entire", "ENTIRE", "smooth edged", "Smooth-Edged"])
def test_a_state_is_found_by_name_and_synonym(words: str) -> None:
    assert MARGIN.state(words) is ENTIRE


def test_a_name_goes_before_a_synonym_of_another() -> None:
    label = Label("leaves", "edge", "states", "the edge", "form",
                  states=(State("smooth", "without teeth"), State("even", "level", ("smooth",))))  # fmt: skip
    assert label.state("smooth") is label.states[0]
    assert VOCABULARY.organ("foliage") == (LEAVES, None)


@pytest.mark.parametrize("words", ["", "entir", "entire leaf", "without teeth"])
def test_what_is_no_name_is_no_state(words: str) -> None:
    assert MARGIN.state(words) is None


@pytest.mark.parametrize("words", ["Margin", "leaf-edge"])
def test_a_label_is_found_by_its_subject_and_by_the_vocabulary(words: str) -> None:
    assert LEAVES.label(words) is MARGIN
    assert VOCABULARY.label("leaves", words) is MARGIN


def test_a_label_of_another_subject_or_of_none_is_not_found() -> None:
    assert VOCABULARY.label("roots", "margin") is None
    assert VOCABULARY.label("wings", "margin") is None


def test_a_section_is_no_organ() -> None:
    assert VOCABULARY.organs == (LEAVES, ROOTS)
    assert VOCABULARY.organ("habitat") is None


def test_a_subject_goes_by_its_own_name_only() -> None:
    assert VOCABULARY.subject("habitat") is HABITAT
    with pytest.raises(KeyError):
        VOCABULARY.subject("foliage")


@pytest.mark.parametrize("words", ["Lower", "lower leaves", "at the bottom", "lower stems"])
def test_a_qualifier_is_found_with_and_without_its_noun(words: str) -> None:
    assert VOCABULARY.qualifier(words) is LOWER


def test_a_noun_that_belongs_to_the_synonym_is_kept() -> None:
    assert VOCABULARY.qualifier("upper surface") is ABOVE
    assert VOCABULARY.qualifier("upper leaves") is None


def test_the_nearest_names_are_given_once_and_by_name() -> None:
    """Both synonyms are near `fine tothed`; their state is offered by its name."""
    assert MARGIN.nearest("entyre") == ("entire",)
    assert MARGIN.nearest("fine tothed") == ("finely serrate",)
    assert LEAVES.nearest("margine") == ("margin",)
    assert VOCABULARY.nearest_organs("leavs") == ("Leaves",)
    assert VOCABULARY.nearest_organs("petiols") == ("leaf stalks",)


def test_no_more_are_offered_than_asked_for_the_nearest_first() -> None:
    label = Label("leaves", "edge", "states", "the edge", "form",
                  states=tuple(State(f"wavy{n}", "an edge") for n in "abcde"))  # fmt: skip
    assert label.nearest("wavyc", most=1) == ("wavyc",)
    assert len(label.nearest("wavyx")) == 3


def test_where_nothing_is_near_nothing_is_offered() -> None:
    assert MARGIN.nearest("purple") == ()
    assert LEAVES.nearest("purple") == ()
    assert VOCABULARY.nearest_organs("xyz") == ()


@pytest.mark.parametrize(("low", "high"), [(DRY, WET), (WET, DRY)])
def test_between_two_ordered_states_lie_all_the_others(low: State, high: State) -> None:
    """Whichever end is named first, the states keep the order of the vocabulary."""
    label = Label("habitat", "moisture", "states", "how wet", "place", ordered=True,
                  states=(DRY, DAMP, WET))  # fmt: skip
    assert label.between(low, high) == (DRY, DAMP, WET)


def test_between_neighbours_and_from_a_state_to_itself_lies_nothing_else() -> None:
    label = Label("habitat", "moisture", "states", "how wet", "place", ordered=True,
                  states=(DRY, DAMP, WET))  # fmt: skip
    assert label.between(DAMP, WET) == (DAMP, WET)
    assert label.between(DAMP, DAMP) == (DAMP,)


def test_between_states_without_an_order_lies_nothing() -> None:
    label = Label("habitat", "soil", "states", "what soil", "place", states=(DRY, DAMP, WET))
    assert label.between(WET, DRY) == (WET, DRY)


@pytest.mark.parametrize(
    ("organ", "one", "other", "alike"),
    [("leaves", "margin", "arrangement", False), ("leaves", "length", "width", True),
     ("leaves", "attachment", "stalk length", True), ("flowers", "petals", "sepals", False),
     ("flowers", "stamens", "styles", True), ("leaves", "division", "leaflets", True)],
)  # fmt: skip
def test_what_tells_of_the_same_thing_is_of_one_kind(
    organ: str, one: str, other: str, *, alike: bool
) -> None:
    """Forms are each a kind of their own; the numbers and the sizes of an organ are one."""
    first, second = (load_vocabulary().label(organ, name) for name in (one, other))
    assert first is not None
    assert second is not None
    assert (first.character_kind == second.character_kind) is alike


def test_a_kind_may_reach_over_several_organs() -> None:
    vocabulary = load_vocabulary()
    labels = [("stem", "surface"), ("leaves", "surface"), ("leaves", "stalk surface")]
    found = [vocabulary.label(organ, name) for organ, name in labels]
    assert {label.character_kind for label in found if label} == {"hairs"}
