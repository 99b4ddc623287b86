"""The words that lessons use."""

from __future__ import annotations

import pytest

from helpers.workshop import lesson_of
from sallet.lesson.vocabulary_file import load_vocabulary
from sallet.study.glossary import anchor, facts_with_words, glossary

VOCABULARY = load_vocabulary()
LESSON = lesson_of("""---
name: Ramsons
---
## Identification
### Leaves
- **shape**: elliptic to ovate
- margin: entyre
- length: 10–25 cm
- sparkle: yes
### Flowers
- colour: white

## Look-alikes
### Lords-and-ladies
#### Leaves
- shape: arrow-shaped

## Edible parts
- leaves: March; raw, cooked
  - taste: garlic

## Habitat
- moisture: damp to waterlogged
""")
LABELS = {
    subject.subject.name: {
        used.label.name: [s.name for s in used.states] for used in subject.labels
    }
    for subject in glossary([LESSON], VOCABULARY)
}


def test_the_words_come_by_subject_label_and_state() -> None:
    assert LABELS == {
        "edible parts": {"preparation": ["raw", "cooked"], "taste": ["garlic"]},
        "flowers": {"colour": ["white"]},
        "habitat": {"moisture": ["damp", "wet", "waterlogged"]},
        "leaves": {"shape": ["elliptic", "ovate", "arrow-shaped"], "margin": [], "length": []},
    }


def test_the_words_stand_in_the_order_of_the_vocabulary() -> None:
    """Whatever the order in which the lesson tells its facts."""
    turned = lesson_of("## Identification\n### Leaves\n- margin: serrate, entire\n- shape: ovate\n")
    (leaves,) = glossary([turned], VOCABULARY)
    order = [label.name for label in VOCABULARY.subject("leaves").labels]
    used = [x.label.name for x in leaves.labels]
    assert used == sorted(["shape", "margin"], key=order.index)
    margin = next(x for x in leaves.labels if x.label.name == "margin")
    assert [state.name for state in margin.states] == ["entire", "serrate"]


def test_a_word_that_two_lessons_use_is_told_once() -> None:
    assert glossary([LESSON, LESSON], VOCABULARY) == glossary([LESSON], VOCABULARY)


def test_without_lessons_there_are_no_words() -> None:
    assert glossary([], VOCABULARY) == ()


def test_every_fact_is_looked_at() -> None:
    assert [fact.label for fact in facts_with_words(LESSON)] == [
        "shape", "margin", "length", "sparkle", "colour", "moisture", "shape", "taste",
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("names", "place"),
    [(("leaves", "margin", "entire"), "leaves-margin-entire"),
     (("Whole plant",), "whole-plant"),
     (("flowers", "colour", "blue-black"), "flowers-colour-blue-black"),
     (("leaves", "3-lobed (lower)"), "leaves-3-lobed-lower")],
)  # fmt: skip
def test_a_words_place_on_its_page(names: tuple[str, ...], place: str) -> None:
    assert anchor(*names) == place


def test_no_two_words_of_the_vocabulary_share_a_place() -> None:
    """A slip of another word would explain the wrong thing."""
    names: list[tuple[str, ...]] = [(s.name,) for s in VOCABULARY.subjects]
    labels = [label for subject in VOCABULARY.subjects for label in subject.labels]
    names += [(label.subject, label.name) for label in labels]
    names += [(label.subject, label.name, s.name) for label in labels for s in label.states]
    places: dict[str, list[tuple[str, ...]]] = {}
    for name in names:
        places.setdefault(anchor(*name), []).append(name)
    assert [found for found in places.values() if len(found) > 1] == []
