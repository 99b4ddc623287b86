"""Leaves in the tests: told in words, drawn, read back from their outlines."""

from __future__ import annotations

import re
from functools import cache
from typing import TYPE_CHECKING

import numpy as np
from shapely import LinearRing

from sallet.drawing.ink import Curve, Line, Path
from sallet.drawing.leaf.blade_form import BladeForm, blade_form
from sallet.drawing.told import Told, specimen
from sallet.lesson.vocabulary_file import load_vocabulary

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from sallet.drawing.example import Draw
    from sallet.drawing.sketch import Sketch
    from sallet.lesson.value import Item

VOCABULARY = load_vocabulary()
LEAVES = VOCABULARY.subject("leaves")
WHOLE = {
    "division": "simple", "shape": "elliptic", "margin": "entire", "tip": "acute",
    "base": "rounded",
}  # fmt: skip
"""A leaf of one piece of which all that an outline needs is recorded."""
NUMBERS = ("1", "2", "3", "4", "5", "7", "9", "12", "25", "3–7", "5–8", "many")
LENGTHS = ("4 mm", "2 cm", "3–5 cm", "10 cm", "25 cm", "1.2 m", "at most 50 cm")
_NUMBER = re.compile(r"-?(?:\d+\.?\d*|\.\d+)")
_COMMAND = re.compile(r"([Mlcz])([^Mlcz]*)")


@cache
def items_of(label: str, words: str) -> tuple[Item, ...]:
    """Return the values that a lesson's words give for a label of leaves."""
    return specimen(VOCABULARY, "leaves", **{label: words}).items[label]


def leaves_told(words: Mapping[str, str]) -> Told:
    """Return leaves told in the words of a lesson, by label."""
    return Told(LEAVES, {label: items_of(label, value) for label, value in words.items()})


def values_of(label: str) -> tuple[str, ...]:
    """Return what a lesson may record of a label of leaves: states, numbers or lengths."""
    known = LEAVES.label(label)
    assert known is not None, label
    if known.kind == "states":
        return tuple(state.name for state in known.states)
    return NUMBERS if known.kind == "count" else LENGTHS


def is_of_states(label: str) -> bool:
    """Return whether a label has states, not numbers or lengths."""
    known = LEAVES.label(label)
    assert known is not None, label
    return known.kind == "states"


def form_of(words: Mapping[str, str]) -> BladeForm:
    """Return the form of a blade told in words."""
    form = blade_form(leaves_told(words))
    assert form is not None
    return form


def ring(path: Path, steps: int = 16) -> LinearRing:
    """Return a closed path as a ring of many short lines."""
    assert path.closed
    points = np.asarray(path.points(steps), dtype=np.complex128)
    return LinearRing(points.view(np.float64).reshape(-1, 2))


def ratio_of_box(path: Path) -> float:
    """Return the height of a path divided by its width."""
    return ratio_of_ring(ring(path))


def ratio_of_ring(outline: LinearRing) -> float:
    """Return the height of a ring divided by its width."""
    left, low, right, high = outline.bounds
    return float((high - low) / (right - left))


def read_paths(data: str) -> list[Path]:
    """Return SVG path data as the paths it draws, y upwards again."""
    paths: list[Path] = []
    at = 0j
    for command, text in _COMMAND.findall(data):
        numbers = [float(n) for n in _NUMBER.findall(text)]
        pairs = [complex(x, -y) for x, y in zip(numbers[::2], numbers[1::2], strict=True)]
        if command == "M":
            (at,) = pairs
            paths.append(Path(at, ()))
        elif command == "z":
            paths[-1] = paths[-1].shut()
        steps = 3 if command == "c" else 1
        for first in range(0, len(pairs) if command in {"c", "l"} else 0, steps):
            *handles, end = (at + step for step in pairs[first : first + steps])
            piece = Curve(handles[0], handles[1], end) if handles else Line(end)
            paths[-1] = Path(paths[-1].start, (*paths[-1].pieces, piece))
            at = end
    return paths


def humps(values: Sequence[float], least: float) -> int:
    """Return how often values rise by `least` and fall by as much again."""
    count, low, high, rising = 0, values[0], values[0], True
    for value in values:
        low, high = min(low, value), max(high, value)
        if rising and value < high - least:
            count, rising, low = count + 1, False, value
        elif not rising and value > low + least:
            rising, high = True, value
    return count


def seen(sketch: Sketch | None) -> object:
    """Return all of a drawing that a reader sees: its ink and its scale."""
    return None if sketch is None else (sketch.ink, sketch.scale)


def faults_of(draw: Draw, words: Mapping[str, str], size: float = 200) -> list[str]:
    """Return where a drawing's words and its ink disagree.

    A label that is not among the words must leave the drawing as it is when it is dropped. One
    that is must change it; or else what it says goes without saying (a circle ends round, a
    number is the usual one), and then every other value that can be shown must change it.
    """
    told = leaves_told(words)
    sketch = draw(told, size)
    if sketch is None:
        return []
    shown = {character.label for character in sketch.shows}
    faults = [f"{label} shown, not recorded" for label in shown - set(words)]
    for label in words:
        changed = seen(draw(told.without(label), size)) != seen(sketch)
        if label not in shown:
            faults += [f"{label} drawn, not shown"] if changed else []
        elif not changed and not _matters(draw, told, label, sketch, size):
            faults.append(f"{label} shown, not drawn")
    return faults


def _matters(draw: Draw, told: Told, label: str, sketch: Sketch, size: float) -> bool:
    (here,) = {c.drawn for c in sketch.shows if c.label == label}
    others = []
    for value in values_of(label):
        other = draw(told.with_(label, items_of(label, value)), size)
        said = {c.drawn for c in other.shows if c.label == label} if other else set()
        if said and here not in said:
            others.append(seen(other) != seen(sketch))
    return all(others) if is_of_states(label) else any(others)
