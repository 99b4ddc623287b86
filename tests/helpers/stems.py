"""Stems, whole plants and roots in the tests: told in words; what holds of every drawing."""

from __future__ import annotations

from functools import cache
from typing import TYPE_CHECKING, Final

from hypothesis import strategies as st
from shapely import LinearRing

from sallet.drawing.ink import plain
from sallet.drawing.told import Told, specimen
from sallet.lesson.vocabulary_file import load_vocabulary

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from sallet.drawing.example import Draw
    from sallet.drawing.ink import Ink
    from sallet.drawing.sketch import Sketch
    from sallet.lesson.value import Item

VOCABULARY: Final = load_vocabulary()
NUMBERS: Final = ("none", "1", "2", "3", "5", "5+", "4–6", "8", "14", "many")
LENGTHS: Final = ("2 cm", "4–6 cm", "30 cm", "at most 50 cm")
WIDTHS: Final = ("4 mm", "1.1 cm", "2–4 cm", "at most 3 cm")
"""No breadth goes with a length as drawings take it anyhow: every recorded one changes ink."""


@cache
def items_of(organ: str, label: str, words: str) -> tuple[Item, ...]:
    """Return the values that a lesson's words give for a label."""
    return specimen(VOCABULARY, organ, **{label: words}).items[label]


def told_of(organ: str, words: Mapping[str, str]) -> Told:
    """Return an organ told in the words of a lesson, by label."""
    subject = VOCABULARY.subject(organ)
    return Told(subject, {label: items_of(organ, label, value) for label, value in words.items()})


def sketch_of(draw: Draw, organ: str, words: Mapping[str, str], size: float = 100) -> Sketch:
    """Return the drawing of an organ told in words."""
    sketch = draw(told_of(organ, words), size)
    assert sketch is not None
    return sketch


def values_of(organ: str, label: str) -> tuple[str, ...]:
    """Return what a lesson may record of a label: states, numbers or lengths."""
    known = VOCABULARY.subject(organ).label(label)
    assert known is not None, label
    if known.kind == "states":
        return tuple(state.name for state in known.states)
    if known.kind == "count":
        return NUMBERS
    return WIDTHS if label in {"width", "thickness"} else LENGTHS


def labels_of(organ: str) -> tuple[str, ...]:
    """Return all labels of an organ that have states, numbers or lengths."""
    kinds = {"states", "count", "measure"}
    return tuple(label.name for label in VOCABULARY.subject(organ).labels if label.kind in kinds)


def words_about(
    organ: str, labels: Iterable[str], always: Iterable[str] = ()
) -> st.SearchStrategy[dict[str, str]]:
    """Draw what a lesson may say of some labels, and of others in any case."""

    def value(label: str) -> st.SearchStrategy[str]:
        return st.sampled_from(values_of(organ, label))

    given = {label: value(label) for label in always}
    more = {label: value(label) for label in labels if label not in given}
    return st.fixed_dictionaries(given, optional=more)


def seen(sketch: Sketch | None) -> object:
    """Return all of a drawing that a reader sees: its ink and its scale."""
    return None if sketch is None else (sketch.ink, sketch.scale)


def labels_shown(sketch: Sketch | None) -> set[str]:
    """Return the labels that a drawing says it shows."""
    return {character.label for character in sketch.shows} if sketch else set()


def faults_of(draw: Draw, organ: str, words: Mapping[str, str], size: float = 100) -> list[str]:
    """Return where a drawing's words and its ink disagree.

    A label that is not shown leaves the drawing as it is when it is dropped. One that is shown
    changes it, unless another label then says the same.
    """
    told = told_of(organ, words)
    sketch = draw(told, size)
    shown = labels_shown(sketch)
    faults = [f"{label} shown, not recorded" for label in shown - set(words)]
    for label in words:
        other = draw(told.without(label), size)
        changed = seen(other) != seen(sketch)
        if label not in shown:
            faults += [f"{label} drawn, not shown"] if changed else []
        elif not changed and not labels_shown(other) - shown:
            faults.append(f"{label} shown, not drawn")
    return faults


def crossing_outlines(ink: Ink) -> list[str]:
    """Return the parts whose closed outlines cross themselves."""
    found = []
    for mark in plain(ink):
        if mark.path.closed and mark.pen != "paper":
            ring = LinearRing([(p.real, p.imag) for p in mark.path.points(16)])
            if not ring.is_simple:
                found.append(mark.part or mark.pen)
    return found
