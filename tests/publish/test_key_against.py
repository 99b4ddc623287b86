"""What a plant at the end of a key must still be held against."""

from __future__ import annotations

import pytest

from helpers.courses import site_of
from helpers.keys import HEDGE, lesson
from helpers.workshop import lesson_of
from sallet.publish.key_against import Against, harms, look_alikes, page_way

SETTING = site_of(HEDGE).setting
TAUGHT = SETTING.taught


def against(slug: str) -> tuple[Against, ...]:
    """Return what a plant of the hedge is held against."""
    return look_alikes(TAUGHT[slug], SETTING)


def test_a_food_plant_is_held_against_all_that_may_kill_or_of_which_it_is_not_told() -> None:
    assert against("elder") == (
        Against("Dwarf elder", "poisonous", "pairs/elder-and-dwarf-elder.html"),
        Against("Yew", "deadly", "pairs/elder-and-yew.html"),
        Against("Danewort", "unknown", "pairs/elder-and-danewort.html"),
    )


def test_a_look_alike_that_only_the_poisonous_plants_lesson_names_counts_as_well() -> None:
    assert against("dock") == (Against("Hemlock", "deadly", "pairs/dock-and-hemlock.html"),)


def test_a_plant_to_keep_away_from_is_held_against_nothing() -> None:
    assert against("hemlock") == ()
    assert against("sorrel") == ()


def test_a_plant_that_is_not_taught_has_no_page_to_lead_to() -> None:
    files = {**HEDGE, "course.yml": "plants: [dock, sorrel]\n"}
    setting = site_of(files).setting
    assert look_alikes(setting.taught["dock"], setting) == (Against("Hemlock", "deadly", ""),)
    hemlock = next(one for one in setting.bank.lessons if one.slug == "hemlock")
    assert page_way(hemlock, setting) == Against("Hemlock", "deadly", "")


def test_the_way_to_a_plants_page() -> None:
    assert page_way(TAUGHT["elder"], SETTING) == Against("Elder", "food", "plants/elder.html")


@pytest.mark.parametrize(
    ("head", "does"),
    [
        ("taught as: look-alike\ndanger: deadly", True),
        ("taught as: look-alike\ndanger: poisonous", True),
        ("taught as: look-alike\ndanger: harmful", True),
        ("taught as: look-alike", True),
        ("taught as: look-alike\ndanger: harmless", False),
        ("taught as: food", False),
        ("taught as: food\ndanger: harmful", False),
        ("taught as: food\ndanger: deadly", True),
    ],
)
def test_what_is_not_told_harmless_harms(head: str, *, does: bool) -> None:
    assert harms(lesson_of(lesson("A", head=head))) is does
