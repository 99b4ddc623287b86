"""Lessons in the tests: those of the course at hand, and made-up ones of which little is told."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Final

from helpers.workshop import lesson_of
from sallet.lesson.bank import Bank
from sallet.lesson.vocabulary_file import load_vocabulary

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from sallet.lesson.model import Lesson
    from sallet.lesson.vocabulary import Label

VOCABULARY: Final = load_vocabulary()
LESSONS: Final = tuple(
    lesson_of(path.read_text("utf-8"), path.name)
    for path in sorted((Path(__file__).parents[2] / "lessons").glob("*.md"))
)
"""The lessons that come with the project."""
BANK: Final = Bank(LESSONS, VOCABULARY)


def label_of(organ: str, name: str) -> Label:
    """Return a label of the vocabulary."""
    label = VOCABULARY.label(organ, name)
    assert label is not None, name
    return label


def identified(
    path: str, organs: Mapping[str, Sequence[str]], head: str = "", more: str = ""
) -> Lesson:
    """Return a lesson: facts by organ, the lines of its head, further sections."""
    facts = "".join(
        f"### {organ}\n" + "".join(f"- {line}\n" for line in lines)
        for organ, lines in organs.items()
    )
    return lesson_of(f"---\n{head}\n---\n## Identification\n{facts}\n{more}", path)
