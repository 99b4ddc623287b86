"""The plants that a plant is taken for, on its card: all of them, in the order of the danger."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from helpers.cards import cards_of
from sallet.cards.doubles import EATEN_FIRST, WORST_FIRST
from sallet.cards.plain import Run
from sallet.lesson.dangers import DANGERS

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.cards.model import Card, Line

COURSE = "title: Walks\nplants: all\n"
LEAVES = "## Season\n- leaves: April to June\n## Edible parts\n- leaves: April to May; raw\n"


def lesson(name: str, looks: str = "", *, head: str = "", facts: str = "", more: str = "") -> str:
    """Return a lesson with its look-alikes, the lines of its head, its facts of the leaves."""
    identified = f"## Identification\n### Leaves\n{facts}\n" if facts else ""
    return f"---\nname: {name}\n{head}\n---\n{identified}## Look-alikes\n{looks}\n{more}"


HARM = "taught as: look-alike\nscientific name: Arum maculatum L.\ndanger: "


def card_named(name: str, files: Mapping[str, str], course: str = COURSE) -> Card:
    """Return the card of one of some plants."""
    cards = cards_of({"course.yml": course, **files})
    return next(card for card in cards if card.lesson.name == name)


def doubles(card: Card) -> list[Line]:
    """Return the lines of the plants that a plant is taken for."""
    titles = ("Tell it from", "It is mistaken for")
    return [line for block in card.front.blocks if block.title in titles for line in block.lines]


def told(card: Card) -> list[str]:
    """Return the same as words: danger, name, scientific name, and what is said."""
    return [f"{x.danger} | {x.label} | {x.scientific} | {x.text}" for x in doubles(card)]


def only(looks: str, **more: str) -> list[str]:
    """Return what the card of the only lesson of a course tells of its doubles."""
    return told(card_named("Ramsons", {"ramsons.md": lesson("Ramsons", looks, **more)}))


# ---- which, and in which order ------------------------------------------------------------

ALL = "".join(
    f"### {name}\nx\n{f'- danger: {danger}' if danger else ''}\n\n"
    for name, danger in [("A", "harmless"), ("B", ""), ("C", "deadly"), ("D", "harmful"),
                         ("E", "poisonous"), ("F", "deadly")]
)  # fmt: skip
POT = {"food.md": lesson("Dock", head="taught as: food")}


def test_on_a_food_s_card_the_worst_stand_first_and_none_is_left_out() -> None:
    """Of one danger in the order written; a danger that is not told counts as grave."""
    files = {"ramsons.md": lesson("Ramsons", ALL + "### Dock\nx\n"), **POT}
    found = [(x.danger, x.label) for x in doubles(card_named("Ramsons", files))]
    assert found == [
        ("deadly", "C"), ("deadly", "F"), ("poisonous", "E"), ("unknown", "B"), ("harmful", "D"),
        ("harmless", "A"), ("food", "Dock"),
    ]  # fmt: skip


def test_on_the_card_of_a_plant_that_harms_stands_first_what_is_eaten() -> None:
    """Whoever takes it for that is in danger."""
    files = {"arum.md": lesson("Arum", ALL + "### Dock\nx\n", head=HARM + "deadly"), **POT}
    found = [(x.danger, x.label) for x in doubles(card_named("Arum", files))]
    assert found == [
        ("food", "Dock"), ("harmless", "A"), ("harmful", "D"), ("unknown", "B"), ("poisonous", "E"),
        ("deadly", "C"), ("deadly", "F"),
    ]  # fmt: skip


def test_both_orders_hold_every_danger_that_is_marked_anywhere() -> None:
    assert set(WORST_FIRST) == set(EATEN_FIRST) == set(DANGERS)


def test_a_plant_with_a_lesson_of_its_own_has_its_danger_and_its_scientific_name() -> None:
    """The worse of two dangers, where the lessons differ; the name from its own."""
    looks = "### Arum\nx\n- danger: harmful\n- scientific name: Arum italicum Mill.\n"
    files = {
        "ramsons.md": lesson("Ramsons", looks),
        "arum.md": lesson("Arum", head=HARM + "poisonous"),
    }
    assert told(card_named("Ramsons", files)) == ["poisonous | Arum | Arum maculatum L. | x"]


def test_without_look_alikes_there_is_no_block_of_them() -> None:
    card = card_named("Ramsons", {"ramsons.md": lesson("Ramsons")})
    assert [block.title for block in card.front.blocks] == []


# ---- what is said of each -----------------------------------------------------------------


def test_the_wording_for_the_card_goes_before_the_text_and_loses_no_mark() -> None:
    looks = "### Arum\nLong text.\n- on the card: *arrow* leaf[^memory]\n"
    files = {"ramsons.md": lesson("Ramsons", looks)}
    (line,) = doubles(card_named("Ramsons", files))
    assert line.runs == (Run("arrow", "emphasis"), Run(" leaf"))
    assert not line.can_be_worded


def test_without_a_wording_the_whole_text_stands_paragraphs_and_bullets_too() -> None:
    looks = "### Arum\nLeaf **arrow-shaped**.[^a]\n\nIts veins join.\n- odd: a bullet\n\n#### Leaves\nShiny.\n"
    (words,) = only(looks)
    assert words == "unknown | Arum |  | Leaf arrow-shaped. Its veins join. odd: a bullet Shiny."


FACTS = "- margin: entire\n- arrangement: basal"
TWIN = "#### Leaves\n- margin: serrate\n- arrangement: opposite\n"


def test_without_a_text_the_features_stand_that_part_the_two() -> None:
    (words,) = only(f"### Arum\n{TWIN}", facts=FACTS)
    assert words == "unknown | Arum |  | see leaves: arrangement; less sure: leaves: margin"


def test_where_nothing_tells_the_two_apart_the_card_says_to_leave_both() -> None:
    assert only("### Arum\n- danger: harmless\n", facts=FACTS) == [
        "harmless | Arum |  | nothing recorded tells them apart: leave both"
    ]


# ---- days on which it is not sure ---------------------------------------------------------

ARUM = "### Arum\nLeaf arrow-shaped.\n- danger: deadly\n"


def test_days_on_which_nothing_settles_it_say_to_pick_none() -> None:
    (words,) = only(ARUM, more=LEAVES)
    assert words == (
        "deadly | Arum |  | Leaf arrow-shaped. Not yet sure April to May: pick none then"
    )


def test_days_on_which_something_settles_it_say_what() -> None:
    looks = ARUM + "- settled by: the *veins* of every leaf[^memory]\n- on the card: arrow leaf\n"
    (words,) = only(looks, more=LEAVES)
    assert words == (
        "deadly | Arum |  | arrow leaf. Not yet sure April to May: "
        "made sure by the veins of every leaf"
    )


def test_not_yet_sure_stands_out() -> None:
    files = {"ramsons.md": lesson("Ramsons", ARUM, more=LEAVES)}
    (line,) = doubles(card_named("Ramsons", files))
    assert [run.text for run in line.runs if run.style == "strong"] == ["Not yet sure"]


def test_where_two_reliable_features_part_them_nothing_is_unsure() -> None:
    facts = "- arrangement: basal\n- division: simple\n- margin: entire"
    looks = ARUM + "#### Leaves\n- arrangement: opposite\n- division: pinnate\n- margin: serrate\n"
    (words,) = only(looks, facts=facts, more=LEAVES)
    assert words == "deadly | Arum |  | Leaf arrow-shaped."


def test_a_plant_that_does_little_harm_has_no_such_days() -> None:
    (words,) = only(ARUM.replace("deadly", "harmful"), more=LEAVES)
    assert words == "harmful | Arum |  | Leaf arrow-shaped."


def test_elsewhere_the_days_are_an_estimate_and_say_so() -> None:
    there = "seen at: {latitude: 50, longitude: -2.6, elevation: 150 m}"
    course = COURSE + "place: {name: A, latitude: 54.4, longitude: -2.6, elevation: 150 m}\n"
    files = {"ramsons.md": lesson("Ramsons", ARUM, head=there, more=LEAVES)}
    (words,) = told(card_named("Ramsons", files, course))
    assert words.endswith("Not yet sure about mid April to mid June: pick none then")


# ---- plants that only the other lesson names ----------------------------------------------

NAMES_BACK = "### Ramsons\nTaken for it.\n"


def two(food: str, harm: str, **food_more: str) -> dict[str, str]:
    """Return a food and a plant that harms, each with its look-alikes."""
    return {
        "ramsons.md": lesson("Ramsons", food, more=LEAVES, **food_more),
        "arum.md": lesson("Arum", harm, head=HARM + "deadly", facts="- margin: serrate",
                          more="## Season\n- leaves: all year\n"),
    }  # fmt: skip


def test_a_grave_plant_that_only_its_own_lesson_names_stands_on_the_food_s_card() -> None:
    files = two("", NAMES_BACK + "- settled by: the tuber\n", facts="- margin: entire")
    (words,) = told(card_named("Ramsons", files))
    assert words == (
        "deadly | Arum | Arum maculatum L. | see leaves: margin. "
        "Not yet sure April to May: made sure by the tuber"
    )


def test_where_nothing_is_recorded_of_the_two_that_is_said() -> None:
    (words,) = told(card_named("Ramsons", two("", NAMES_BACK)))
    assert words == (
        "deadly | Arum | Arum maculatum L. | nothing recorded tells them apart: leave both. "
        "Not yet sure April to May: pick none then"
    )


def test_a_plant_that_both_lessons_name_stands_once() -> None:
    files = two("### Arum\nArrow leaf.\n", NAMES_BACK)
    assert [line.label for line in doubles(card_named("Ramsons", files))] == ["Arum"]


def test_a_plant_that_no_lesson_names_is_no_double() -> None:
    assert told(card_named("Ramsons", two("", ""))) == []


def test_a_line_leads_to_where_its_words_are_written() -> None:
    looks = "### Arum\nArrow leaf.\n- on the card: arrow\n### Grass\nNarrow leaf.\n### Dock\n"
    text = lesson("Ramsons", looks)
    lines = doubles(card_named("Ramsons", {"ramsons.md": text}))
    assert [text[line.span.start : line.span.end].strip() for line in lines] == [
        "arrow", "Narrow leaf.", "Dock",
    ]  # fmt: skip
    assert [line.what for line in lines] == [
        "the look-alike `Arum`", "the look-alike `Grass`", "the look-alike `Dock`",
    ]  # fmt: skip


def test_a_line_of_a_plant_that_the_other_lesson_names_leads_to_the_look_alikes() -> None:
    files = two("", NAMES_BACK)
    (line,) = doubles(card_named("Ramsons", files))
    assert files["ramsons.md"][line.span.start : line.span.end] == "Look-alikes"
    assert (line.what, line.can_be_worded) == ("the look-alike `Arum`", False)


@pytest.mark.parametrize("ending", [".", "!", "?", "…", ".[^memory]", "*soft.*"])
def test_the_days_begin_a_sentence_behind_any_ending(ending: str) -> None:
    (words,) = only(ARUM.replace("arrow-shaped.", f"arrow {ending}"), more=LEAVES)
    assert ".." not in words
    assert (
        ". Not yet" in words or "! Not yet" in words or "? Not yet" in words or "… Not yet" in words
    )
