"""The shorter wordings for the field card: where they may stand, and that the page has none."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from helpers.workshop import as_lines, findings_of, lesson_of
from sallet.lesson.model import NOWHERE
from sallet.source import Span

if TYPE_CHECKING:
    from sallet.lesson.model import (
        Caution,
        EdiblePart,
        Fact,
        Lesson,
        LookAlike,
        Removal,
        Section,
    )

    Carrier = Fact | LookAlike | EdiblePart | Removal | Caution | Section

WORDED = """---
name: x
---
## Identification
### Leaves
- margin: entire
  - on the card: no teeth[^a]
- tip: acute
## Look-alikes
### Hemlock
Spots.[^a]
- on the card: purple blotches on
  the stem
### Lily
Two leaves.[^a]
## Edible parts
- leaves: March; raw[^a]
  - on the card: leaves before the flowers
- flowers: May; raw[^a]
## Parts to remove
- stalks: stringy[^a]
  - on the card:
    from May
- roots: tough[^a]
## Preparation
Wash the leaves and flowers. Cut off the stalks and roots.
- on the card: Wash; cut off stalks and roots.
## Cautions
- dogs: keep them away from it[^a]
  - on the card: not for dogs
- quantity: a handful[^a]
"""


def section_of(text: str, name: str) -> Section:
    """Return a section of the lesson that a text holds."""
    found = lesson_of(text).section(name)
    assert found is not None
    return found


def wordings(lesson: Lesson) -> list[tuple[str, Span]]:
    """Return the wording for the card, and its place, of all that may carry one."""
    carriers: list[Carrier] = [*lesson.facts, *lesson.look_alikes, *lesson.edible_parts]
    carriers += [*lesson.removals, *lesson.cautions, *lesson.sections]
    return [(carrier.on_card, carrier.card_span) for carrier in carriers]


# ---- what carries one ---------------------------------------------------------------------


def test_each_wording_is_found_at_its_place_and_without_one_there_is_no_place() -> None:
    lesson = lesson_of(WORDED)
    worded = [found for found in wordings(lesson) if found[0]]
    assert [words for words, _ in worded] == [
        "no teeth", "purple blotches on the stem", "leaves before the flowers", "from May",
        "not for dogs", "Wash; cut off stalks and roots.",
    ]  # fmt: skip
    assert [lesson.source.words(span) for _, span in worded] == [
        "no teeth[^a]", "purple blotches on\n  the stem", "leaves before the flowers", "from May",
        "not for dogs", "Wash; cut off stalks and roots.",
    ]  # fmt: skip
    assert {span for words, span in wordings(lesson) if not words} == {NOWHERE}
    assert lesson.faults == ()


@pytest.mark.parametrize(
    "text",
    ["## Cautions\n- dogs: no\n  - on the card: never\n  - on the card: nor cats\n",
     "## Look-alikes\n### Lily\nx\n- on the card: never\n- on the card: nor cats\n",
     "## Edible parts\n- leaves: May\n  - on the card: never\n  - on the card: nor cats\n",
     "## Harvest\n- on the card: never\n\nText.\n\n- on the card: nor cats\n"],
)  # fmt: skip
def test_of_two_wordings_neither_is_lost(text: str) -> None:
    (worded,) = [found for found in wordings(lesson_of(text)) if found[0]]
    words, span = worded
    assert words == "never nor cats"
    assert span == Span(text.index("never"), len(text) - 1)


@pytest.mark.parametrize(
    ("before", "after"),
    [("## Cautions\n- dogs: no\n  - ", ""), ("## Look-alikes\n### Lily\nx\n- ", ""),
     ("## Edible parts\n- leaves: May\n  - ", ""), ("## Parts to remove\n- pith: dry\n  - ", ""),
     ("---\nname: x\n---\n## Identification\n### Leaves\n- tip: acute\n  - ", ""),
     ("## Preparation\nWash.\n- ", "### Soup\n"), ("## Harvest\n- ", "- tool: knife\n")],
)  # fmt: skip
def test_a_wording_left_open_is_no_fault_and_none(before: str, after: str) -> None:
    lesson = lesson_of(f"{before}on the card:\n{after}")
    assert list(lesson.faults_of("empty-value")) == []
    assert {found for found in wordings(lesson) if found[0] or found[1] != NOWHERE} == set()


# ---- a section's own wording --------------------------------------------------------------


@pytest.mark.parametrize(
    ("body", "prose"),
    [("Wash.\n- on the card: Brief.\n", "Wash."),
     ("- on the card: Brief.\n\nWash.\n", "Wash."),
     ("Wash.\n\n- **On the card**: Brief.\n\nCook.\n", "Wash.\n\nCook."),
     ("- one\n- on the card: Brief.\n- two\n  more\n", "- one\n- two\n  more"),
     ("- one\n\n- on the card: Brief.\n", "- one"),
     ("Wash.\n- on the card: Brief.\n### Soup\n1. Cook.\n", "Wash.\n\n### Soup\n\n1. Cook."),
     ("- on the card: Brief.\n", "")],
)  # fmt: skip
def test_the_wording_of_preparation_stands_anywhere_among_its_text_and_is_none_of_it(
    body: str, prose: str
) -> None:
    section = section_of(f"## Preparation\n{body}", "preparation")
    assert (section.on_card, section.prose.text) == ("Brief.", prose)
    assert "Brief" not in section.lead.text


def test_the_wording_of_harvest_is_neither_a_fact_nor_text() -> None:
    text = (
        "---\nname: x\n---\n"
        "## Harvest\n- tool: knife\n- on the card: One in ten.\n- weather: dry\n\nSlowly.\n"
    )
    lesson = lesson_of(text)
    section = section_of(text, "harvest")
    assert [fact.label for fact in lesson.facts_of("harvest")] == ["tool", "weather"]
    assert lesson.faults == ()
    assert (section.on_card, section.lead.text) == ("One in ten.", "Slowly.")
    assert section.prose.text == "- tool: knife\n- weather: dry\n\nSlowly."


def test_a_fact_of_harvest_keeps_its_own_wording() -> None:
    text = "## Harvest\n- tool: knife, sharp\n  - on the card: a knife\n"
    (tool,) = lesson_of(text).facts_of("harvest")
    assert (tool.on_card, section_of(text, "harvest").on_card) == ("a knife", "")


def test_a_heading_spelt_by_a_slip_of_the_pen_hides_no_wording() -> None:
    section = section_of("## Preparaton\nWash.\n- on the card: Brief.\n", "preparation")
    assert (section.on_card, section.prose.text) == ("Brief.", "Wash.")


def test_below_an_inner_heading_it_is_not_the_sections() -> None:
    text = "## Preparation\nWash.\n### Soup\n- on the card: Cook.\n"
    section = section_of(text, "preparation")
    assert (section.on_card, section.card_span) == ("", NOWHERE)
    assert section.prose.text == "Wash.\n\n### Soup\n\n- on the card: Cook."
    found = lesson_of("## Harvest\n### Law\n- on the card: Ask.\n").faults_of("unknown-label")
    assert [(fault.span, fault.words) for fault in found] == [(Span(21, 32), "on the card")]


@pytest.mark.parametrize("heading", ["Habitat", "Range", "Uses", "Growing"])
def test_no_other_section_has_one(heading: str) -> None:
    text = f"## {heading}\nText.\n- on the card: Brief.\n"
    section = section_of(text, heading.casefold())
    assert (section.on_card, section.card_span) == ("", NOWHERE)
    assert [f.words for f in lesson_of(text).faults_of("unknown-label")] == ["on the card"]


def test_parts_named_on_the_card_alone_are_not_named_in_preparation() -> None:
    text = (
        "## Edible parts\n- flowers: May; raw\n## Parts to remove\n- leaf stalks: stringy\n"
        "## Preparation\nWash.\n- on the card: Cut the leaf stalks off, scatter the flowers.\n"
    )
    found = findings_of({"lesson.md": text})
    kitchen = [f for f in found if f.check.endswith("-not-in-preparation")]
    assert as_lines(kitchen) == (
        "lesson.md:2:3: stop: Preparation does not speak of the edible part `flowers`\n"
        "    → say under Preparation what is done with it: name the flowers\n"
        "lesson.md:4:3: stop: Preparation does not speak of the part to remove `leaf stalks`\n"
        "    → say under Preparation when it is taken away: name the leaf stalks"
    )
