"""The whole plant, where enough is recorded of it."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from helpers.drawings import facts_of, parts_of, points_of
from sallet.drawing.habit import BRANCHES, LINES, SETTINGS, habit
from sallet.drawing.ink import Mark
from sallet.lesson.vocabulary_file import load_vocabulary

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.sketch import Sketch
    from sallet.lesson.vocabulary import State

VOCABULARY = load_vocabulary()
PLANT = {
    "whole plant": {"height": "40 cm"},
    "stem": {"thickness": "4 mm", "branching": "unbranched", "posture": "erect"},
    "leaves": {"arrangement": "alternate", "per stem": "9", "length": "5 cm"},
}
LEAF = {"division": "simple", "shape": "ovate", "margin": "serrate", "tip": "acute",
        "base": "rounded"}  # fmt: skip
NEEDED = [(organ, label) for organ, facts in PLANT.items() for label in facts]


def drawn(changes: Mapping[tuple[str, str], str | None]) -> Sketch | None:
    """Return the sketch of the plant with some facts changed, None for left out."""
    told = {organ: dict(facts) for organ, facts in PLANT.items()}
    for (organ, label), value in changes.items():
        told[organ].pop(label, None)
        if value is not None:
            told[organ][label] = value
    text = ""
    for organ, facts in told.items():
        text += f"### {organ.capitalize()}\n"
        text += "".join(f"- {label}: {value}\n" for label, value in facts.items())
    return habit(facts_of(text), VOCABULARY, 300)


def sketch_of(changes: Mapping[tuple[str, str], str | None]) -> Sketch:
    """Return the sketch of a plant of which enough is recorded."""
    sketch = drawn(changes)
    assert sketch is not None
    return sketch


def states(organ: str, label: str) -> tuple[State, ...]:
    """Return the states of a label."""
    return VOCABULARY.subject(organ).label(label).states  # type: ignore[union-attr]


@pytest.mark.parametrize("missing", NEEDED)
def test_nothing_is_drawn_where_anything_is_not_recorded(missing: tuple[str, str]) -> None:
    assert drawn({missing: None}) is None


def test_the_words_name_what_is_drawn() -> None:
    sketch = sketch_of({})
    assert [c.words for c in sketch.shows] == [
        "height: 40 cm", "thickness: 4 mm", "branching: unbranched", "posture: erect",
        "per stem: 9", "arrangement: alternate", "length: 5 cm",
    ]  # fmt: skip


def test_a_plant_is_as_high_as_recorded() -> None:
    sketch = sketch_of({})
    stem = [m for m in sketch.ink if isinstance(m, Mark) and m.part == "stem"]
    assert max(p.imag for m in stem for p in m.path.points()) == pytest.approx(300)
    assert sketch.scale == pytest.approx(300 / 400)


@pytest.mark.parametrize("setting", SETTINGS)
@pytest.mark.parametrize("number", ["1", "2", "7", "12"])
def test_the_leaves_are_as_many_as_recorded(setting: str, number: str) -> None:
    sketch = sketch_of({("leaves", "arrangement"): setting, ("leaves", "per stem"): number})
    assert parts_of(sketch.ink)["leaf"] == int(number)


@pytest.mark.parametrize("state", states("stem", "branching"), ids=lambda state: state.name)
def test_the_branches_are_those_of_the_word(state: State) -> None:
    sketch = sketch_of({("stem", "branching"): state.name})
    assert parts_of(sketch.ink)["branch"] == len(BRANCHES[state.draw["branches"]])


@pytest.mark.parametrize(
    ("organ", "state"),
    [
        (organ, state)
        for organ in ("stem", "whole plant")
        for state in states(organ, "posture")
        if state.draw.get("line") in LINES
    ],
    ids=lambda value: getattr(value, "name", value),
)
def test_no_stem_and_no_branch_goes_into_the_ground(organ: str, state: State) -> None:
    changes: dict[tuple[str, str], str | None] = {
        ("stem", "posture"): None,
        ("stem", "branching"): "branched throughout",
        (organ, "posture"): state.name,
    }
    sketch = sketch_of(changes)
    marks = [m for m in sketch.ink if isinstance(m, Mark) and m.part in {"stem", "branch"}]
    assert min(p.imag for m in marks for p in m.path.points()) > -3


def test_small_leaves_are_plain_signs_and_large_ones_have_their_shape() -> None:
    leaf = {("leaves", label): value for label, value in LEAF.items()}
    small = sketch_of({("leaves", "length"): "5 mm", **leaf})
    large = sketch_of(leaf)
    assert {"margin", "shape"} & {c.label for c in small.shows} == set()
    assert {"margin", "shape"} <= {c.label for c in large.shows}


def test_a_stem_s_own_posture_goes_before_that_of_the_plant() -> None:
    own = sketch_of({("whole plant", "posture"): "hanging"})
    assert own.ink == sketch_of({}).ink


def test_the_posture_of_the_plant_stands_in_for_that_of_the_stem() -> None:
    other = sketch_of({("stem", "posture"): None, ("whole plant", "posture"): "arching"})
    assert max(p.real for p in points_of(other.ink)) > 100
