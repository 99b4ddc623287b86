"""What tells two plants apart, and above all what does not."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from helpers.workshop import lesson_of
from sallet.lesson.vocabulary_file import load_vocabulary
from sallet.study.contrast import (
    Contrast,
    contrasts,
    one_of_each_kind,
    places_apart,
    reliable_first,
    tell_apart,
)

if TYPE_CHECKING:
    from sallet.lesson.model import Fact

VOCABULARY = load_vocabulary()


def facts(*lines: str, organ: str = "Leaves") -> tuple[Fact, ...]:
    """Return the facts of an organ, given as lines of a lesson."""
    body = "\n".join(f"- {line}" for line in lines)
    return lesson_of(f"## Identification\n### {organ}\n{body}\n").facts


def between(this: str, that: str, organ: str = "Leaves") -> list[str]:
    """Return the labels that tell two plants of one fact each apart."""
    found = contrasts(facts(this, organ=organ), facts(that, organ=organ), VOCABULARY)
    return [contrast.label.name for contrast in found]


@pytest.mark.parametrize(
    ("this", "that"),
    [
        ("arrangement: alternate", "arrangement: opposite"),
        ("arrangement: opposite or whorled", "arrangement: alternate"),
        ("stipules: none", "stipules: papery tube"),
        ("length: 2–3 cm", "length: 4–6 cm"),
        ("length: 2–3 cm", "length: 4–6 in"),
        ("leaflets: 3", "leaflets: 5–7"),
        ("leaflets: 3–5", "leaflets: many"),
        ("stalk length: at most 3 cm", "stalk length: 5–9 cm"),
    ],
)
def test_values_that_cannot_meet_tell_apart(this: str, that: str) -> None:
    assert between(this, that) == [this.split(":", maxsplit=1)[0]]


@pytest.mark.parametrize(
    ("this", "that"),
    [
        ("arrangement: alternate", "arrangement: alternate or opposite"),
        ("arrangement: alternate", "arrangement: basal"),  # neighbours that may meet
        ("stipules: none", "stipules: none"),
        ("length: 2–3 cm", "length: 3–6 cm"),
        ("length: 2–3 cm, at most 5 cm", "length: 4–6 cm"),
        ("length: 5–6 cm", "length: 8–9 cm, at least 6 cm"),
        ("stalk length: at most 6 cm", "stalk length: 2–3 cm"),
        ("leaflets: 3–5", "leaflets: 5–7"),
        ("leaflets: many", "leaflets: 20–30"),
        ("length: about 10 cm", "length: 12 cm"),
    ],
)
def test_values_that_may_meet_do_not(this: str, that: str) -> None:
    assert between(this, that) == []


def test_silence_separates_nothing() -> None:
    assert between("arrangement: alternate", "attachment: stalked") == []


def test_a_word_that_could_not_be_read_may_mean_anything() -> None:
    assert between("arrangement: alternate", "arrangement: all anyhow") == []


def test_a_label_that_is_not_known_is_not_compared() -> None:
    assert between("bounce: high", "bounce: low") == []


def test_free_words_are_not_compared() -> None:
    assert between("moisture: dry", "moisture: wet", organ="Habitat") == []


@pytest.mark.parametrize("often", ["sometimes", "rarely", "often", "usually"])
def test_what_happens_now_and_then_is_possible(often: str) -> None:
    assert between(f"arrangement: alternate, {often} opposite", "arrangement: opposite") == []


@pytest.mark.parametrize("often", ["sometimes", "rarely", "often", "usually", "mostly"])
def test_what_is_not_said_of_every_plant_leaves_the_others_open(often: str) -> None:
    """Leaves that are often spotted are now and then not spotted."""
    assert between(f"markings: {often} purple-spotted", "markings: none") == []


def test_usual_and_unusual_values_together_leave_nothing_open() -> None:
    assert between("leaflets: usually 5, rarely 7", "leaflets: 3") == ["leaflets"]
    assert between("leaflets: sometimes 5, rarely 7", "leaflets: 3") == []


@pytest.mark.parametrize(
    ("state", "label"),
    [("absent", "stipules"), ("no sheath", "sheath"), ("unmarked", "markings"),
     ("unlobed", "lobing"), ("hairless", "surface")],
)  # fmt: skip
def test_none_and_a_word_for_nothing_are_the_same(state: str, label: str) -> None:
    assert between(f"{label}: none", f"{label}: {state}") == []


def test_a_range_between_exclusive_ends_takes_in_what_lies_between() -> None:
    """Between linear and circular lies every other shape, also where no order is told."""
    assert between("shape: linear to circular", "shape: kidney-shaped") == []
    assert between("shape: linear", "shape: kidney-shaped") == ["shape"]


# ---- where and when ------------------------------------------------------------------------


def test_like_is_compared_with_like() -> None:
    this = "arrangement: opposite (lower), alternate (upper)"
    that = "arrangement: alternate (lower), opposite (upper)"
    assert between(this, that) == ["arrangement"]


def test_one_place_in_which_they_agree_is_enough_to_be_mistaken() -> None:
    this = "arrangement: opposite (lower), alternate (upper)"
    that = "arrangement: alternate (lower), alternate (upper)"
    assert between(this, that) == []


def test_different_places_are_not_compared() -> None:
    assert between("arrangement: opposite (lower)", "arrangement: alternate (upper)") == []


def test_a_place_that_only_one_plant_tells_of_counts_against() -> None:
    this = "arrangement: opposite (lower), alternate (upper)"
    assert between(this, "arrangement: alternate (lower)") == []


def test_what_is_said_of_the_whole_plant_is_compared_with_each_place() -> None:
    whole = "arrangement: alternate"
    assert between(whole, "arrangement: opposite (lower), whorled (upper)") == ["arrangement"]
    assert between(whole, "arrangement: opposite (lower), alternate (upper)") == []


def test_the_rest_beside_a_place_is_no_statement_about_another_place() -> None:
    this = "surface: hairless, hairy (underside)"
    assert between(this, "surface: downy (young)") == []


def test_qualifiers_in_the_writers_own_words_are_places_too() -> None:
    this = "arrangement: opposite (in wet years)"
    assert between(this, "arrangement: alternate (in dry years)") == []
    assert between(this, "arrangement: alternate (in wet years)") == ["arrangement"]


def test_a_piece_of_an_organ_is_not_compared_with_the_organ() -> None:
    stalks = facts("length: 20–30 cm", organ="Leaf stalks")
    assert contrasts(stalks, facts("length: 2–3 cm"), VOCABULARY) == ()


# ---- all facts of two plants ---------------------------------------------------------------


def test_a_character_told_twice_is_all_that_either_says() -> None:
    twice = (*facts("arrangement: opposite"), *facts("arrangement: alternate"))
    assert contrasts(facts("arrangement: alternate"), twice, VOCABULARY) == ()
    assert contrasts(twice, facts("arrangement: whorled"), VOCABULARY) != ()


def test_a_contrast_holds_both_facts_and_says_how_far_to_trust_it() -> None:
    this, that = facts("arrangement: alternate"), facts("arrangement: opposite")
    label = VOCABULARY.label("leaves", "arrangement")
    assert label is not None
    assert contrasts(this, that, VOCABULARY) == (Contrast(this[0], that[0], label),)
    assert Contrast(this[0], that[0], label).reliability == "firm"


def test_contrasts_stand_in_the_order_of_the_first_plant() -> None:
    this = facts("attachment: stalked", "arrangement: alternate")
    that = facts("arrangement: opposite", "attachment: stalkless")
    found = contrasts(this, that, VOCABULARY)
    assert [c.label.name for c in found] == ["attachment", "arrangement"]


def places_of(this: str, that: str) -> list[set[str]]:
    """Return the places of the first plant of which the one contrast is told."""
    (contrast,) = contrasts(facts(this), facts(that), VOCABULARY)
    return [set(where) for where in contrast.places]


@pytest.mark.parametrize(
    ("this", "that", "places"),
    [
        ("arrangement: alternate", "arrangement: opposite", [set()]),
        ("arrangement: alternate (upper)", "arrangement: opposite (upper)", [{"upper"}]),
        ("arrangement: alternate (upper)", "arrangement: opposite", [{"upper"}]),
        ("arrangement: alternate", "arrangement: opposite (upper)", [set()]),
        ("arrangement: opposite (lower), alternate (upper)",
         "arrangement: alternate (lower), opposite (upper)", [{"lower"}, {"upper"}]),
        ("arrangement: alternate (upper, in flower)", "arrangement: opposite",
         [{"upper", "in flower"}]),
    ],
)  # fmt: skip
def test_a_contrast_says_at_which_places_of_the_first_plant_it_is_to_be_looked_for(
    this: str, that: str, places: list[set[str]]
) -> None:
    assert places_of(this, that) == places


def test_values_of_a_label_are_apart_from_either_side() -> None:
    label = VOCABULARY.label("leaves", "arrangement")
    assert label is not None
    this, that, both = (
        facts(f"arrangement: {w}") for w in ("alternate", "opposite", "alternate or opposite")
    )
    assert [bool(places_apart(*pair, label)) for pair in ((this, that), (that, this), (this, both))] == [
        True, True, False,
    ]  # fmt: skip


# ---- when contrasts suffice ----------------------------------------------------------------


def two_plants(*lines: tuple[str, str, str]) -> tuple[Contrast, ...]:
    """Return the contrasts between two plants of which organs, values and values are told."""
    this = [fact for organ, one, _ in lines for fact in facts(one, organ=organ)]
    that = [fact for organ, _, other in lines for fact in facts(other, organ=organ)]
    found = contrasts(this, that, VOCABULARY)
    assert len(found) == len(lines)
    return found


FIRM = ("Leaves", "arrangement: alternate", "arrangement: opposite")
FIRM_TOO = ("Stem", "interior: solid", "interior: hollow")
FAIR = ("Leaves", "shape: linear", "shape: kidney-shaped")
WEAK = ("Leaves", "colour: red", "colour: blue")
HAIRS = ("Leaves", "surface: hairless", "surface: hairy")
HAIRS_OF_STEM = ("Stem", "surface: hairless", "surface: hairy")
SMALL = ("Leaves", "length: 2–3 cm", "length: 10–12 cm")
NARROW = ("Leaves", "width: 2–3 cm", "width: 10–12 cm")
WATCHED = ("Leaves", "in winter: evergreen", "in winter: falls")


@pytest.mark.parametrize(
    ("found", "suffice"),
    [
        ([], False),
        ([FIRM], False),
        ([FIRM, FIRM_TOO], True),
        ([FIRM, FAIR], True),
        ([FIRM, WEAK], True),
        ([FAIR, WEAK], False),
        ([FAIR, HAIRS, SMALL, WEAK], False),  # four, and none that may be trusted by itself
        ([HAIRS, HAIRS_OF_STEM], False),
        ([FIRM, SMALL, NARROW], True),
        ([FIRM, WATCHED], False),
    ],
)
def test_two_contrasts_of_different_kinds_suffice_if_one_is_reliable(
    found: list[tuple[str, str, str]], *, suffice: bool
) -> None:
    assert tell_apart(two_plants(*found)) is suffice


@pytest.mark.parametrize(
    ("one", "other", "alike"),
    [(HAIRS, HAIRS_OF_STEM, True), (SMALL, NARROW, True), (FIRM, FAIR, False),
     (FIRM, FIRM_TOO, False), (SMALL, WEAK, False)],
)  # fmt: skip
def test_contrasts_that_tell_of_the_same_are_one_piece_of_evidence(
    one: tuple[str, str, str], other: tuple[str, str, str], *, alike: bool
) -> None:
    """Hairs on the leaf and on the stem; length and width. A form is a kind of its own."""
    first, second = two_plants(one, other)
    assert (first.kind == second.kind) is alike


@pytest.mark.parametrize("aspect", ["taste", "harm", "use"])
def test_what_is_tasted_or_hurts_is_no_test(aspect: str) -> None:
    """However much may be trusted in it: a label of leaves is made one of taste here."""
    firm, second = two_plants(FIRM, FIRM_TOO)
    tasted = replace(second, label=replace(second.label, aspect=aspect))
    assert (second.is_test, tasted.is_test) == (True, False)
    assert not tell_apart([firm, tasted])


def test_what_shows_over_weeks_only_is_no_test() -> None:
    assert [contrast.is_test for contrast in two_plants(FIRM, WATCHED)] == [True, False]


# ---- laws ----------------------------------------------------------------------------------

_ARRANGEMENTS = ["alternate", "opposite", "whorled", "basal", "crossed pairs", "none", "gibberish"]
_PLACES = ["", " (lower)", " (upper)", " (young)", " (in odd years)"]
_OFTEN = ["", "sometimes ", "usually ", "rarely "]


@st.composite
def _arrangements(draw: st.DrawFn) -> str:
    pieces = draw(
        st.lists(
            st.tuples(
                st.sampled_from(_OFTEN), st.sampled_from(_ARRANGEMENTS), st.sampled_from(_PLACES)
            ),
            min_size=1,
            max_size=3,
        )
    )
    return "arrangement: " + ", ".join("".join(piece) for piece in pieces)


@st.composite
def _lengths(draw: st.DrawFn) -> str:
    low, more = draw(st.integers(1, 40)), draw(st.integers(0, 20))
    about = draw(st.sampled_from(["", "about "]))
    most = draw(st.sampled_from(["", f", at most {low + more + 5} cm"]))
    return f"length: {about}{low}–{low + more} cm{most}"


_plants = st.tuples(_arrangements(), _lengths()).map(lambda lines: facts(*lines))


@settings(max_examples=150, deadline=None)
@given(_plants, _plants)
def test_two_plants_are_told_apart_from_either_side(
    this: tuple[Fact, ...], that: tuple[Fact, ...]
) -> None:
    there = {(c.this, c.that, c.label) for c in contrasts(this, that, VOCABULARY)}
    back = {(c.that, c.this, c.label) for c in contrasts(that, this, VOCABULARY)}
    assert there == back


@settings(max_examples=60, deadline=None)
@given(_plants)
def test_no_plant_is_told_apart_from_itself(this: tuple[Fact, ...]) -> None:
    assert contrasts(this, this, VOCABULARY) == ()


_told_of_the_whole_plant = st.tuples(
    st.tuples(st.sampled_from(_OFTEN), st.sampled_from(_ARRANGEMENTS)).map(
        lambda words: f"arrangement: {words[0]}{words[1]}"
    ),
    _lengths(),
).map(lambda lines: facts(*lines))


@settings(max_examples=60, deadline=None)
@given(_plants, _told_of_the_whole_plant, _plants)
def test_knowing_more_of_what_is_possible_never_adds_a_contrast(
    this: tuple[Fact, ...], that: tuple[Fact, ...], more: tuple[Fact, ...]
) -> None:
    """What is told of another place may add one: that is news of another place."""
    before = {c.label for c in contrasts(this, that, VOCABULARY)}
    after = {c.label for c in contrasts(this, (*that, *more), VOCABULARY)}
    assert after <= before


def test_what_is_reliable_comes_first_and_one_of_each_kind_is_the_first_of_it() -> None:
    this = facts("surface: downy\n- length: 10 cm\n- width: 5 cm\n- attachment: stalked")
    that = facts("surface: hairless\n- length: 30 cm\n- width: 9 cm\n- attachment: stalkless")
    found = contrasts(this, that, VOCABULARY)
    names = [contrast.label.name for contrast in found]
    assert names == ["surface", "length", "width", "attachment"]
    ordered = [contrast.label.name for contrast in reliable_first(found)]
    assert ordered == ["attachment", "surface", "length", "width"]
    kinds = [contrast.label.name for contrast in one_of_each_kind(found)]
    assert kinds == ["surface", "length", "attachment"]
