"""The kinds of figures, and what their words for writers promise."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from helpers.workshop import lesson_of
from sallet.drawing.figures import figures
from sallet.drawing.kinds import HABIT, KINDS, Kind
from sallet.drawing.svg import ink_svg
from sallet.drawing.told import Told, specimen
from sallet.drawing.words import EXAMPLES
from sallet.lesson.vocabulary_file import load_vocabulary

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.drawing.ink import Ink
    from sallet.lesson.value import Item

VOCABULARY = load_vocabulary()
LESSONS = sorted((Path(__file__).parents[2] / "lessons").glob("*.md"))


@pytest.mark.parametrize("kind", KINDS, ids=lambda kind: f"{kind.name}, {kind.organ}")
def test_every_label_named_is_one_of_the_organ(kind: Kind) -> None:
    subject = VOCABULARY.subject(kind.organ)
    assert [label for label in kind.shows if subject.label(label) is None] == []


def test_a_whole_plant_shows_its_leaves() -> None:
    subject = VOCABULARY.subject("leaves")
    assert [label for label in HABIT.shows if subject.label(label) is None] == []


@pytest.mark.parametrize("path", LESSONS, ids=lambda path: path.stem)
def test_the_words_of_a_lesson_s_figures_name_exactly_what_is_drawn(path: Path) -> None:
    """Whatever is named is seen: another value is drawn otherwise. What is not named is not seen."""
    lesson = lesson_of(path.read_text(encoding="utf-8"), path.name)
    for figure in figures(lesson.facts, VOCABULARY):
        assert figure.kind is not None
        shown = {character.label for character in figure.sketch.shows}
        for label in figure.told.items:
            seen = any(
                _as_drawn(figure.kind, other) != _as_drawn(figure.kind, figure.told)
                for other in _others(figure.told, label, only_without=label not in shown)
            )
            assert (figure.words, label, seen) == (figure.words, label, label in shown)


def _as_drawn(kind: Kind, told: Told) -> tuple[Ink, float | None] | None:
    sketch = kind.draw(told, kind.size)
    return None if sketch is None else (sketch.ink, sketch.scale)


def _others(told: Told, label: str, *, only_without: bool) -> Iterator[Told]:
    """Yield what is told with nothing, and with something else, told of one label."""
    yield told.without(label)
    known = told.subject.label(label)
    assert known is not None
    for state in () if only_without else known.states:
        other = specimen(VOCABULARY, told.organ, **{label: state.name})
        yield told.with_(label, other.items[label])


@pytest.mark.parametrize("kind", KINDS, ids=lambda kind: f"{kind.name}, {kind.organ}")
def test_nothing_is_drawn_of_nothing(kind: Kind) -> None:
    assert kind.draw(Told(VOCABULARY.subject(kind.organ), {}), kind.size) is None


@pytest.mark.parametrize("path", LESSONS, ids=lambda path: path.stem)
def test_a_lesson_s_figures_show_only_labels_that_are_named(path: Path) -> None:
    lesson = lesson_of(path.read_text(encoding="utf-8"), path.name)
    for figure in figures(lesson.facts, VOCABULARY):
        shows = HABIT.shows if figure.kind is None else figure.kind.shows
        assert [c.label for c in figure.sketch.shows if c.label not in shows] == []


@pytest.mark.parametrize("kind", KINDS, ids=lambda kind: f"{kind.name}, {kind.organ}")
def test_specimens_show_only_labels_that_are_named(kind: Kind) -> None:
    for example in EXAMPLES:
        label = VOCABULARY.subject(example.organ).label(example.label)
        if example.organ != kind.organ or label is None:
            continue
        for state in label.states:
            words = {**example.base, example.label: state.name}
            sketch = kind.draw(specimen(VOCABULARY, kind.organ, **words), kind.size)
            shown = [c.label for c in sketch.shows] if sketch else []
            assert [name for name in shown if name not in kind.shows] == []


def test_the_main_kinds_are_of_different_organs() -> None:
    organs = [kind.organ for kind in KINDS if kind.main]
    assert len(organs) == len(set(organs))


NUMBERS = ("1", "2", "3", "5", "12", "500", "100000", "many", "1–900", "none", "3+")
LENGTHS = ("1 mm", "0.01 mm", "5 m", "3–4 cm", "at most 2 cm", "1000 m", "0 mm")


@st.composite
def recorded(draw: st.DrawFn, kind: Kind) -> Told:
    """Draw an organ of which anything may be recorded, sense or nonsense, some of it twice."""
    subject = VOCABULARY.subject(kind.organ)
    items: dict[str, tuple[Item, ...]] = {}
    for name in draw(st.lists(st.sampled_from(kind.shows), unique=True)):
        label = subject.label(name)
        assert label is not None
        values = {"count": NUMBERS, "measure": LENGTHS}.get(
            label.kind, tuple(state.name for state in label.states)
        )
        chosen = draw(st.lists(st.sampled_from(values), min_size=1, max_size=3))
        read = [_item(kind.organ, name, value) for value in chosen]
        items[name] = tuple(item for found in read for item in found)
    return Told(subject, items)


def _item(organ: str, label: str, value: str) -> tuple[Item, ...]:
    """Return a value as it is read; one that cannot be, such as nought millimetres, tells nothing."""
    try:
        return specimen(VOCABULARY, organ, **{label: value}).items[label]
    except KeyError:
        return ()


@settings(max_examples=60, deadline=None)
@pytest.mark.parametrize("kind", KINDS, ids=lambda kind: f"{kind.name}, {kind.organ}")
@given(data=st.data())
def test_whatever_is_recorded_a_drawing_neither_fails_nor_swells(
    kind: Kind, data: st.DataObject
) -> None:
    sketch = kind.draw(data.draw(recorded(kind)), kind.size)
    if sketch:
        text = ink_svg(sketch.ink, "x")
        assert len(text) < 30_000
        assert "nan" not in text
        assert "inf" not in text
        assert max(sketch.box.width, sketch.box.height) < 12 * kind.size
