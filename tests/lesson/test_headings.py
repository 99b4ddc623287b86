"""Which section a heading opens, and which headings would lose the facts below them."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from helpers.values import VOCABULARY
from sallet.lesson.headings import bullets_of, name_parts, text_of
from sallet.lesson.outline import Outline
from sallet.source import Source

if TYPE_CHECKING:
    from sallet.lesson.model import Fault


def read(text: str) -> tuple[list[str], list[tuple[str, str]]]:
    """Return the sections of a text by name, and the kind and words of each fault."""
    faults: list[Fault] = []
    named = name_parts(Outline(Source("a.md", text), 0).parts(), VOCABULARY, faults)
    return [name for name, _ in named], [(fault.kind, fault.words) for fault in faults]


def only(text: str) -> tuple[list[str], str]:
    """Return the bullets read in the only section of a text, and its running text."""
    faults: list[Fault] = []
    ((name, part),) = name_parts(Outline(Source("a.md", text), 0).parts(), VOCABULARY, faults)
    return [b.line.value for b in bullets_of(name, part)], text_of(name, part).text


@pytest.mark.parametrize(
    ("heading", "name"),
    [("Cautions", "cautions"), ("CAUTION:", "cautions"), ("Look-alikes", "look-alikes"),
     ("lookalike", "look-alikes"), ("Recipes", "preparation"), ("My stories", "")],
)  # fmt: skip
def test_a_section_is_found_by_its_heading(heading: str, name: str) -> None:
    assert read(f"## {heading}\n") == ([name], [])


def test_the_second_of_two_sections_is_kept_without_a_name() -> None:
    assert read("## Cautions\n## Warnings\n") == (["cautions", ""], [("section-twice", "Warnings")])


@pytest.mark.parametrize(
    ("text", "faults"),
    [("## Cautoins\n", [("unknown-section", "Cautoins")]),
     ("## Leaves\n- margin: entire\n", [("misplaced-heading", "Leaves")]),
     ("## Leaves\nAre eaten by slugs.\n", []),
     ("## Harvest\n### Cautions\nGloves.\n", [("misplaced-heading", "Cautions")]),
     ("## Look-alikes\n### Season\n- leaves: May\n", [("misplaced-heading", "Season")]),
     ("## Growing\n### When\nIn May.\n", []),
     ("## Cautions\n### Dogs\n- never\n", [("inner-heading", "Dogs")]),
     ("## Stories\n### One\n#### Look-alikes\n- x: y\n", [("misplaced-heading", "Look-alikes")]),
     ("## Identification\n### Season\n- leaves: May\n", [])],
)  # fmt: skip
def test_headings_that_lose_something_are_named(text: str, faults: list[tuple[str, str]]) -> None:
    assert read(text)[1] == faults


def test_in_a_list_of_facts_numbers_and_inner_headings_count_too() -> None:
    bullets, text = only("## Cautions\nOne.\n- a: b\n\n1. c: d\n### Dogs\n- e: f\n\nTwo.\n")
    assert bullets == ["a: b", "c: d", "e: f"]
    assert text == "One.\n\n### Dogs\n\nTwo."


def test_what_belongs_to_another_section_is_not_read_as_this_ones() -> None:
    """A part to remove that were read as an edible part would be the worst of mistakes."""
    bullets, _ = only("## Edible parts\n- leaves: May\n### Parts to remove\n- stalks: poisonous\n")
    assert bullets == ["leaves: May"]


def test_where_steps_are_prose_they_are_kept_as_prose() -> None:
    bullets, text = only("## Harvest\n- season: May\n\n1. Take one leaf.\n### Later\nRest.\n")
    assert bullets == ["season: May"]
    assert text == "1. Take one leaf.\n\n### Later\n\nRest."


def test_things_of_their_own_are_no_text_of_their_section() -> None:
    assert only("## Look-alikes\nAll look alike.\n### Hemlock\nSpots.\n")[1] == "All look alike."
