"""The places of a lesson to which a link may lead."""

from __future__ import annotations

import pytest

from helpers.workshop import lesson_of
from sallet.lesson.places import place_named, places_of

TEXT = """
## Names & stories
### Inside
## Recipes
### Green oil
## Identification
### Leaves
- margin: entire
### Bulb
- colour: white
## Look-alikes
### Dog's mercury
"""


@pytest.mark.parametrize(
    ("heading", "place"),
    [("Edible parts", "edible-parts"), ("Dog’s mercury", "dogs-mercury"), ("Look-alikes!",
      "look-alikes"), ("Names & stories", "names-stories"), ("Bärlauch", "bärlauch"), ("…", "")],
)  # fmt: skip
def test_a_heading_is_a_place_in_small_letters_with_hyphens(heading: str, place: str) -> None:
    assert place_named(heading) == place


def test_sections_organs_look_alikes_and_recipes_are_places_by_either_name() -> None:
    assert places_of(lesson_of(TEXT)) == {
        "names-stories", "recipes", "preparation", "green-oil", "identification", "leaves",
        "roots", "bulb", "look-alikes", "dogs-mercury",
    }  # fmt: skip
