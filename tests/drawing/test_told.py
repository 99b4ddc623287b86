"""What is told of one organ, one typical value to each character."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import pytest

from helpers.drawings import facts_of
from helpers.leaves import LEAVES, VOCABULARY, leaves_told
from sallet.drawing.told import (
    MANY,
    Character,
    Shown,
    Told,
    beside,
    characters,
    millimetres,
    places_told,
    some,
    specimen,
    told,
    value_of,
)


def told_of(lines: str, where: str = "", part: str = "") -> Told:
    """Return what facts about leaves tell."""
    return told(facts_of(f"### Leaves\n{lines}"), LEAVES, where, part)


def drawn(shown: Shown[Any] | None) -> str | None:
    """Return what is drawn of a character."""
    return shown.character.drawn if shown else None


@pytest.mark.parametrize(
    ("value", "state"),
    [
        ("ovate", "ovate"),
        ("ovate, elliptic", "ovate"),
        ("ovate to elliptic", "ovate"),
        ("sometimes ovate, elliptic", "elliptic"),
        ("rarely ovate, sometimes elliptic, linear", "linear"),
        ("usually ovate, elliptic", "ovate"),
    ],
)
def test_the_first_state_that_is_no_exception_is_drawn(value: str, state: str) -> None:
    assert drawn(told_of(f"- shape: {value}\n").state("shape")) == state


@pytest.mark.parametrize(
    ("value", "number", "words"),
    [
        ("5", 5, "5"), ("5–7", 6, "6"), ("5–8", 7, "7"), ("(3–)5–7(–9)", 6, "6"),
        ("many", MANY, "many"), ("sometimes 3, 5", 5, "5"), ("5+", 5, "5 or more"),
        ("12 or more", MANY, "many"), ("40", 40, "40"), ("500", MANY, "many"),
        ("1–900", MANY, "many"),
    ],
)  # fmt: skip
def test_the_middle_of_a_number_is_drawn(value: str, number: int, words: str) -> None:
    count = told_of(f"- leaflets: {value}\n").count("leaflets")
    assert count is not None
    assert (count.value, count.character.drawn) == (number, words)


@pytest.mark.parametrize(
    ("value", "length", "words"),
    [
        ("4 cm", 40, "4 cm"), ("3–5 cm", 40, "4 cm"), ("8 mm", 8, "8 mm"),
        ("1–2 m", 1500, "1.5 m"), ("(2–)4–6(–9) cm", 50, "5 cm"),
    ],
)  # fmt: skip
def test_the_middle_of_a_length_is_drawn(value: str, length: float, words: str) -> None:
    shown = told_of(f"- length: {value}\n").length("length")
    assert shown is not None
    assert (shown.value, shown.character.drawn) == (length, words)


def test_a_length_told_by_its_end_alone_is_none() -> None:
    assert told_of("- length: at most 50 cm\n").length("length") is None


def test_the_words_say_what_is_drawn_and_what_else_is_recorded() -> None:
    leaf = told_of("- leaflets: 5–7\n- shape: ovate, sometimes elliptic\n- margin: entire\n")
    count, shape, margin = leaf.count("leaflets"), leaf.state("shape"), leaf.state("margin")
    assert count is not None
    assert shape is not None
    assert margin is not None
    assert count.character.words == "leaflets: 6 (recorded: 5–7)"
    assert shape.character.words == "shape: ovate (recorded: ovate, sometimes elliptic)"
    assert margin.character.words == "margin: entire"


LOWER = "- attachment: stalked (lower leaves), stalkless (upper leaves)\n- shape: ovate\n"


@pytest.mark.parametrize(
    ("where", "state"), [("lower", "stalked"), ("upper", "stalkless"), ("", None), ("basal", None)]
)
def test_what_holds_in_a_place_is_told_there_only(where: str, state: str | None) -> None:
    assert drawn(told_of(LOWER, where).state("attachment")) == state
    assert drawn(told_of(LOWER, where).state("shape")) == "ovate"


def test_a_place_has_its_own_before_the_general() -> None:
    lines = "- shape: ovate, linear (upper leaves)\n"
    assert drawn(told_of(lines, "upper").state("shape")) == "linear"
    assert drawn(told_of(lines).state("shape")) == "ovate"


def test_exceptions_give_no_place() -> None:
    lines = "- shape: ovate, sometimes linear (upper leaves)\n"
    assert drawn(told_of(lines, "upper").state("shape")) == "ovate"
    assert list(places_told(facts_of(f"### Leaves\n{lines}"), "leaves", ["shape"])) == []


def test_places_told_are_those_of_the_labels_asked_for() -> None:
    facts = facts_of(f"### Leaves\n{LOWER}")
    assert list(places_told(facts, "leaves", ["attachment"])) == ["lower", "upper"]
    assert list(places_told(facts, "leaves", ["shape"])) == []


def test_a_part_has_facts_of_its_own() -> None:
    text = "### Leaves\n- shape: ovate\n"
    assert told(facts_of(text), LEAVES, "", "young leaves").items == {}


def test_hints_numbers_and_tables_are_looked_up_by_the_state_drawn() -> None:
    leaf = leaves_told({"attachment": "stalked", "stalk against blade": "longer", "tip": "acute"})
    hint = leaf.hint("attachment", "stalk")
    number = leaf.hint_number("stalk against blade", "stalk")
    picked = leaf.pick("tip", {"acute": 60})
    assert hint is not None
    assert number is not None
    assert picked is not None
    assert (hint.value, number.value, picked.value) == ("long", 1.5, 60)
    assert leaf.hint("attachment", "base") is None
    assert leaf.hint_number("attachment", "stalk") is None
    assert leaf.pick("tip", {"obtuse": 110}) is None
    assert leaf.pick("shape", {"ovate": 1}) is None


def test_none_is_told_apart_from_not_recorded() -> None:
    leaf = told_of("- stipules: none\n- shape: ovate\n")
    absent = leaf.is_none("stipules")
    assert drawn(absent) in {None, "none"}
    assert leaf.is_none("shape") is None
    assert leaf.is_none("sheath") is None


def test_several_states_may_hold_together() -> None:
    assert [drawn(s) for s in told_of("- tip: acute, obtuse\n").states("tip")] == [
        "acute", "obtuse",
    ]  # fmt: skip


def test_labels_are_added_and_dropped() -> None:
    leaf = leaves_told({"shape": "ovate", "tip": "acute"})
    assert set(leaf.without("tip").items) == {"shape"}
    assert leaf.without("tip").with_("tip", leaf.items["tip"]) == leaf
    assert leaf.organ == "leaves"
    assert value_of(leaf, "margin") is None
    assert value_of(leaf, "tip") == leaf.items["tip"][0].value


@pytest.mark.parametrize("words", [{"shapes of clouds": "ovate"}, {"shape": "cloudy"}])
def test_a_specimen_knows_no_words_but_the_vocabulary(words: dict[str, str]) -> None:
    with pytest.raises(KeyError):
        specimen(VOCABULARY, "leaves", **words)


@pytest.mark.parametrize(
    ("length", "words"),
    [(0.5, "0.5 mm"), (8, "8 mm"), (19, "19 mm"), (20, "2 cm"), (155, "15.5 cm"), (1500, "1.5 m")],
)
def test_lengths_in_words(length: float, words: str) -> None:
    assert millimetres(length) == words


@dataclass(frozen=True)
class Inner:
    """A form within a form."""

    tip: Shown[int] | None


@dataclass(frozen=True)
class Outer:
    """A form."""

    shape: Shown[int]
    inner: Inner
    other: Shown[int]
    number: int = 3


def test_the_characters_of_a_form_are_those_of_its_fields_and_inner_forms_each_once() -> None:
    shape, tip = Character("shape", "ovate", "ovate"), Character("tip", "acute", "acute")
    form = Outer(Shown(1, shape), Inner(Shown(2, tip)), Shown(3, shape))
    assert characters(form) == (shape, tip)
    assert characters(Inner(None)) == ()
    assert Shown(1, shape).as_("x") == Shown("x", shape)


def test_an_exception_alone_is_not_drawn() -> None:
    assert told_of("- shape: rarely ovate\n").state("shape") is None


@pytest.mark.parametrize(
    ("one", "other", "both"),
    [("2 cm", "1 cm", True), ("1 cm", "70 cm", True), ("1 cm", "90 cm", False),
     ("90 cm", "1 cm", False)],
)  # fmt: skip
def test_two_lengths_that_no_drawing_could_hold_are_not_both_drawn(
    one: str,
    other: str,
    both: bool,  # noqa: FBT001
) -> None:
    lengths = told_of(f"- length: {one}\n- width: {other}\n")
    length, width = lengths.length("length"), lengths.length("width")
    assert beside(length, width) == (length, width if both else None)


def test_of_one_length_alone_nothing_is_dropped() -> None:
    length = told_of("- length: 2 cm\n").length("length")
    assert beside(length, None) == (length, None)
    assert beside(None, length) == (None, length)


@pytest.mark.parametrize(("count", "kept"), [(0, False), (1, True)])
def test_a_number_of_none_is_none(count: int, kept: bool) -> None:  # noqa: FBT001
    shown = Shown(count, Character("stones", str(count), str(count)))
    assert some(shown) == (shown if kept else None)
    assert some(None) is None


def test_only_what_is_asked_for_is_kept_and_exceptions_go() -> None:
    leaves = told_of("- shape: ovate, sometimes linear\n- margin: entire\n")
    assert set(leaves.only({"margin"}).items) == {"margin"}
    assert [s.value.name for s in leaves.usual("shape").states("shape")] == ["ovate"]


def test_what_is_told_of_the_full_grown_is_told_where_nothing_else_is() -> None:
    grown = told_of("- shape: ovate (mature)\n").state("shape")
    assert drawn(grown) == "ovate"
    assert grown is not None
    assert grown.character.words == "shape: ovate (recorded: ovate (mature))"
    assert drawn(told_of("- shape: ovate (mature), linear\n").state("shape")) == "linear"
