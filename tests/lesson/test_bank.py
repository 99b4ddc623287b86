"""All lessons at hand, and how a plant is found among them."""

from __future__ import annotations

import pytest

from helpers.workshop import bank_of
from sallet.lesson.bank import PictureFile, binomial

RAMSONS = """---
name: Ramsons
also called: [wild garlic, bear's garlic]
scientific name: Allium ursinum L.
---
## Look-alikes
### Wood lily
- scientific name: Convallaria majalis L.
#### Leaves
- attachment: sheathing
### Lords-and-ladies
- danger: harmful
### Fairy's garlic
- danger: harmless
## Identification
### Leaves
- attachment: stalked
"""
LILY = """---
name: Lily of the valley
scientific name: Convallaria majalis L.
taught as: look-alike
danger: poisonous
---
## Identification
### Leaves
- tip: acute
"""
ARUM = """---
name: Lords-and-ladies
scientific name: Arum maculatum L.
taught as: look-alike
---
"""
BANK = bank_of({"ramsons.md": RAMSONS, "may-lily.md": LILY, "lords-and-ladies.md": ARUM})
WOOD_LILY, LORDS, FAIRY = BANK.lessons[0].look_alikes


@pytest.mark.parametrize(
    "name",
    ["Ramsons", "RAMSONS", "wild garlic", "Wild-Garlic", "bear’s garlic", "Allium ursinum",
     "allium  ursinum"],
)  # fmt: skip
def test_a_plant_is_found_by_each_of_its_names(name: str) -> None:
    assert BANK.find(name) is BANK.lessons[0]


def test_a_plant_is_found_by_the_name_of_its_file() -> None:
    assert BANK.find("may-lily") is BANK.lessons[1]


@pytest.mark.parametrize("name", ["", " ", "Allium", "garlic", "ramsons.md"])
def test_what_names_no_plant_finds_none(name: str) -> None:
    assert BANK.find(name) is None


def test_a_plants_own_name_goes_before_another_name_of_another_plant() -> None:
    """`Wild garlic` is another name of ramsons, until a lesson has it as its own."""
    bank = bank_of({"ramsons.md": RAMSONS, "a.md": "---\nname: Wild garlic\n---\n"})
    assert bank.find("wild garlic") is bank.lessons[1]


def test_of_two_plants_of_one_name_the_first_is_found() -> None:
    bank = bank_of({"a.md": "---\nname: Garlic\n---\n", "b.md": "---\nname: Garlic\n---\n"})
    assert bank.find("garlic") is bank.lessons[0]


def test_a_look_alike_is_found_by_its_heading_else_by_its_scientific_name() -> None:
    assert BANK.lesson_of(LORDS) is BANK.lessons[2]
    assert BANK.lesson_of(WOOD_LILY) is BANK.lessons[1]
    assert BANK.lesson_of(FAIRY) is None


def test_what_is_recorded_of_a_look_alike_stands_in_place_and_in_its_lesson() -> None:
    assert [(f.label, f.text) for f in BANK.facts_of(WOOD_LILY)] == [
        ("attachment", "sheathing"), ("tip", "acute"),
    ]  # fmt: skip
    assert BANK.facts_of(FAIRY) == ()


def test_a_look_alikes_danger_comes_from_its_lesson_first() -> None:
    assert BANK.danger_of(WOOD_LILY) == "poisonous"
    assert BANK.danger_of(LORDS) == "harmful"  # its lesson does not say
    assert BANK.danger_of(FAIRY) == "harmless"


def test_a_milder_word_in_place_does_not_hide_the_danger_of_the_lesson() -> None:
    told = RAMSONS.replace("### Wood lily\n", "### Wood lily\n- danger: harmless\n")
    bank = bank_of({"ramsons.md": told, "may-lily.md": LILY})
    assert bank.danger_of(bank.lessons[0].look_alikes[0]) == "poisonous"


@pytest.mark.parametrize(
    ("name", "short"),
    [("Allium ursinum L.", "Allium ursinum"),
     ("Rosa canina agg.", "Rosa canina"),
     ("Salix × capreola J.Kern. ex Andersson", "Salix capreola"),
     ("×Agropogon littoralis (Sm.) C.E.Hubb.", "Agropogon littoralis"),
     ("Mentha x piperita L.", "Mentha piperita"),
     ("Rubus", "Rubus"),
     ("", "")],
)  # fmt: skip
def test_a_binomial_is_genus_and_epithet(name: str, short: str) -> None:
    assert binomial(name) == short


def test_pictures_lie_at_hand_by_name() -> None:
    bank = bank_of({"ramsons.md": RAMSONS, "pictures/leaf.jpg": "1200x800"})
    assert bank.pictures == {"leaf.jpg": PictureFile("pictures/leaf.jpg", 1200, 800)}


def test_a_lesson_says_where_it_names_another() -> None:
    """By its own name for it, or by the scientific one."""
    bank = bank_of({"ramsons.md": RAMSONS, "lily.md": LILY, "arum.md": ARUM})
    by_name = {lesson.name: lesson for lesson in bank.lessons}
    ramsons, lily = by_name["Ramsons"], by_name["Lily of the valley"]
    assert bank.naming(ramsons, lily) == 0
    assert bank.naming(ramsons, by_name["Lords-and-ladies"]) == 1
    assert bank.naming(lily, ramsons) is None
