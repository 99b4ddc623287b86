"""The format's section headings, their other names, and slips of the pen."""

from __future__ import annotations

import pytest

from sallet.lesson.sections import SECTIONS, nearest_sections, section_named


def test_the_sections_are_those_of_the_format() -> None:
    assert [name.capitalize() for name in SECTIONS] == [
        "Identification", "Look-alikes", "Season", "Edible parts", "Parts to remove",
        "Preparation", "Uses", "Cautions", "Habitat", "Range", "Harvest", "Growing",
        "Questions", "Pictures", "Sources",
    ]  # fmt: skip


def test_no_heading_means_two_sections() -> None:
    words = [word for name, also in SECTIONS.items() for word in (name, *also)]
    assert len(words) == len(set(words))
    for name, also in SECTIONS.items():
        assert {section_named(word) for word in (name, *also)} == {name}


@pytest.mark.parametrize(
    ("heading", "name"),
    [("LOOK ALIKES", "look-alikes"), ("Edible  Parts", "edible parts"), ("Cautions:", "cautions"),
     ("Caution", "cautions"), ("My cautions", ""), ("", "")],
)  # fmt: skip
def test_capitals_hyphens_blanks_and_a_colon_make_no_difference(heading: str, name: str) -> None:
    assert section_named(heading) == name


def test_a_slip_of_the_pen_is_near_a_section_and_another_word_is_not() -> None:
    assert nearest_sections("Cautoins") == ("cautions",)
    assert nearest_sections("Stories") == ()
