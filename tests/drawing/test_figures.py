"""Which figures a plant has."""

from __future__ import annotations

from helpers.drawings import facts_of
from sallet.drawing.figures import figures, organs_drawn
from sallet.drawing.kinds import KINDS
from sallet.lesson.vocabulary_file import load_vocabulary

VOCABULARY = load_vocabulary()
LEAF = "### Leaves\n- division: simple\n- shape: elliptic\n- margin: entire\n- tip: acute\n- base: rounded\n"


def words_of(identification: str) -> list[str]:
    """Return what is drawn."""
    return [figure.words for figure in figures(facts_of(identification), VOCABULARY)]


def test_nothing_recorded_is_nothing_drawn() -> None:
    assert words_of("### Leaves\n- smell when crushed: garlic\n") == []


def test_an_organ_is_drawn_once_where_it_is_the_same_everywhere() -> None:
    assert words_of(LEAF) == ["leaf"]


def test_lower_and_upper_leaves_are_drawn_side_by_side() -> None:
    text = LEAF + "- attachment: stalked (lower leaves), stalkless (upper leaves)\n"
    assert words_of(text) == ["leaf (lower)", "leaf (upper)"]


def test_a_place_of_which_the_drawing_shows_nothing_of_its_own_has_none() -> None:
    text = LEAF + "- smell when crushed: garlic (lower leaves), unscented (upper leaves)\n"
    assert words_of(text) == ["leaf"]


def test_places_that_look_the_same_are_drawn_once() -> None:
    text = LEAF + "- attachment: stalked (lower leaves), stalked (upper leaves)\n"
    assert words_of(text) == ["leaf (lower)"]


def test_exceptions_are_not_drawn() -> None:
    text = "### Leaves\n- arrangement: alternate, sometimes opposite (upper leaves)\n"
    assert words_of(text) == ["how the leaves are set"]


def test_the_whole_plant_stands_last_and_never_without_details() -> None:
    plant = (
        "### Whole plant\n- height: 40 cm\n### Stem\n- thickness: 4 mm\n- branching: unbranched\n"
        "- posture: erect\n"
    )
    leaves = "- arrangement: alternate\n- per stem: 9\n- length: 5 cm\n"
    words = words_of(plant + LEAF + leaves)
    assert words[-1] == "the whole plant"
    assert {"how the leaves are set", "leaf"} <= set(words)


def test_every_kind_is_of_an_organ_and_its_places_are_qualifiers() -> None:
    for kind in KINDS:
        assert VOCABULARY.subject(kind.organ).is_organ
        assert [place for place in kind.places if VOCABULARY.qualifier(place) is None] == []


def test_a_heading_that_names_a_kind_tells_it() -> None:
    assert words_of("### Bulb\n- length: 3 cm\n") == words_of(
        "### Roots\n- kind: bulb\n- length: 3 cm\n"
    )
    assert words_of("### Bulb\n- length: 3 cm\n") != []


def test_a_heading_that_names_a_piece_is_not_the_organ() -> None:
    assert words_of("### Leaf stalks\n- arrangement: alternate\n") == []


def test_leaves_of_spring_and_of_summer_are_drawn_side_by_side() -> None:
    text = LEAF.replace(
        "shape: elliptic", "shape: circular (spring leaves), elliptic (summer leaves)"
    )
    assert words_of(text) == ["leaf (spring)", "leaf (summer)"]


def test_the_organs_drawn_are_those_that_have_a_figure() -> None:
    facts = facts_of(LEAF + "### Stem\n- section: round\n### Flowers\n- scent: honey\n")
    drawn = {figure.organ for figure in figures(facts, VOCABULARY)}
    assert organs_drawn(facts, VOCABULARY) == drawn == {"leaves", "stem"}
