"""Season, Edible parts and Parts to remove."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from helpers.workshop import lesson_of
from sallet.lesson.value import Window

if TYPE_CHECKING:
    from sallet.lesson.model import EdiblePart


def part(bullet: str) -> EdiblePart:
    """Return the one edible part of a lesson."""
    (found,) = lesson_of(f"## Edible parts\n{bullet}").edible_parts
    return found


@pytest.mark.parametrize(
    ("bullet", "windows", "ways"),
    [("- leaves: March to May; raw, cooked\n", 1, ["raw", "cooked"]),
     ("- leaves: March to May, September ;  raw\n", 2, ["raw"]),
     ("- leaves: March to May\n", 1, []),
     ("- leaves: March to May;\n", 1, []),
     ("- leaves: ; raw\n", 0, ["raw"])],
)  # fmt: skip
def test_what_is_eaten_when_and_how(bullet: str, windows: int, ways: list[str]) -> None:
    found = part(bullet)
    assert len(found.timing.windows) == windows
    assert [way.text for way in found.ways] == ways


def test_when_and_how_know_their_places() -> None:
    lesson = lesson_of("## Edible parts\n- leaves: March to May[^a] ;  raw, cooked[^b]\n")
    found = lesson.edible_parts[0]
    assert lesson.source.words(found.timing.items[0].span) == "March to May"
    assert [lesson.source.words(way.span) for way in found.ways] == ["raw", "cooked"]


def test_what_is_said_of_an_edible_part_stands_inside_it() -> None:
    text = "- young leaves: March; raw\n  Pick dry.\n  - taste: garlic\n  - on the card: Young!\n"
    found = part(text)
    assert (found.timing.organ, found.timing.part) == ("leaves", "young leaves")
    assert [(f.label, f.part) for f in found.facts] == [("taste", "young leaves")]
    assert (found.timing.note.text, found.on_card) == ("Pick dry.", "Young!")


def test_an_unknown_part_is_kept_with_its_time() -> None:
    lesson = lesson_of("## Season\n- leevs: March\n- leaves: May\n")
    assert [(t.name, t.organ) for t in lesson.season] == [("leevs", ""), ("leaves", "leaves")]
    assert lesson.season[0].windows == (Window(60, 90),)
    assert [fault.words for fault in lesson.faults_of("unknown-part")] == ["leevs"]


def test_a_season_keeps_its_notes_and_its_citations() -> None:
    (leaves,) = lesson_of("## Season\n- leaves: March[^a]\n  Early in 1999.\n").season
    assert (leaves.text, leaves.note.text) == ("March", "Early in 1999.")
    assert [citation.key for citation in leaves.citations] == ["a"]


def test_what_is_removed_and_why_with_or_without_a_reason() -> None:
    text = "- stalks: stringy[^a]\n  From May.\n  - on the card: no stalks\n- pith\n"
    stalks, pith = lesson_of(f"## Parts to remove\n{text}").removals
    assert (stalks.name.value, stalks.reason.value) == ("stalks", "stringy")
    assert (stalks.note.text, stalks.on_card) == ("From May.", "no stalks")
    assert (pith.name.value, pith.reason.value) == ("pith", "")
