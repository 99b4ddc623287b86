"""Whether two plants resemble each other on record."""

from __future__ import annotations

from pathlib import Path

import pytest

from helpers.workshop import bank_of, lesson_of
from sallet.lesson.vocabulary_file import load_vocabulary
from sallet.study.resemblance import likeness, resemble

VOCABULARY = load_vocabulary()
LESSONS = Path(__file__).parents[2] / "lessons"


def bank_file(name: str) -> str:
    """Return the text of a lesson of the bank."""
    return (LESSONS / f"{name}.md").read_text("utf-8")


@pytest.mark.parametrize(
    ("one", "other", "alike"),
    [("Apiaceae", "Apiaceae", True), ("Apiaceae", "Umbelliferae", True),
     ("Apiaceae", "Asteraceae", False), ("", "", False)],
)  # fmt: skip
def test_plants_of_one_family_resemble_each_other_by_either_of_its_names(
    one: str, other: str, *, alike: bool
) -> None:
    lessons = [lesson_of(f"---\nname: X\nfamily: {family}\n---\n") for family in (one, other)]
    assert resemble(lessons[0], lessons[1], VOCABULARY) is alike


def test_likeness_counts_states_that_are_told_of_both() -> None:
    """No sizes, no tastes, nothing that takes watching, nothing of the kitchen."""
    one = """## Identification
### Leaves
- division: simple
- margin: entire, wavy
- length: 10 cm
- taste: sweet
### Whole plant
- spreads by: seed
## Habitat
- light: shade
"""
    other = one.replace("entire, wavy", "wavy or toothed").replace("simple", "palmate")
    assert likeness(lesson_of(one), lesson_of(other), VOCABULARY) == (1, 2)


@pytest.mark.parametrize(
    ("one", "other", "alike"),
    [("elder", "dwarf-elder", True), ("sweet-cicely", "hemlock", True),
     ("ground-elder", "dwarf-elder", True), ("beech", "common-ragwort", False),
     ("hawthorn", "hemlock", False), ("ramsons", "foxglove", False)],
)  # fmt: skip
def test_in_the_bank_doubles_resemble_each_other_and_strangers_do_not(
    one: str, other: str, *, alike: bool
) -> None:
    """Common practice of teachers, no published list: which of them a beginner takes for another."""
    bank = bank_of({f"{name}.md": bank_file(name) for name in (one, other)})
    this, that = bank.lessons
    assert resemble(this, that, VOCABULARY) is alike
    assert resemble(that, this, VOCABULARY) is alike
