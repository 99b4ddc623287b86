"""Fruits: what is recorded is drawn, nothing else, and it can be counted back."""

from __future__ import annotations

import re
from collections import Counter
from functools import cache
from itertools import combinations
from typing import TYPE_CHECKING
from xml.etree import ElementTree as ET

import pytest
from shapely.geometry import Polygon
from shapely.validation import explain_validity

from sallet.drawing.fruit.examples import EXAMPLES
from sallet.drawing.fruit.form import fruit_form
from sallet.drawing.fruit.fruit import fruit
from sallet.drawing.fruit.words import (
    HUSKS_OF,
    OPENINGS,
    REMAINS,
    RIBS,
    STYLES,
    SURFACES,
    USES,
)
from sallet.drawing.ink import box, plain
from sallet.drawing.svg import ink_svg
from sallet.drawing.told import MANY, Told, specimen
from sallet.lesson.vocabulary_file import load_vocabulary

if TYPE_CHECKING:
    from sallet.drawing.example import Example
    from sallet.drawing.sketch import Sketch
    from sallet.lesson.vocabulary import Vocabulary

KINDS = tuple(kind for kind in USES if kind)
SIZE = 150.0
NUMBERS = {"count": ("3", "5", "1", "many", "2"), "measure": ("7 mm", "11 mm", "4 mm")}


@cache
def vocabulary() -> Vocabulary:
    return load_vocabulary()


def states(label: str) -> tuple[str, ...]:
    found = vocabulary().subject("fruit").label(label)
    assert found is not None
    return tuple(state.name for state in found.states)


def told_of(**values: str) -> Told:
    return specimen(vocabulary(), "fruit", **values)


def drawn(**values: str) -> Sketch:
    sketch = fruit(told_of(**values), SIZE)
    assert sketch is not None
    return sketch


def parts(sketch: Sketch) -> Counter[str]:
    """Count the elements of an SVG by the last word of their class, copies where they stand."""
    svg = f'<svg xmlns="s">{ink_svg(sketch.ink, "x")}</svg>'
    root = ET.fromstring(svg)  # noqa: S314 - our own text
    tags = {tag.get("id", ""): tag for tag in root.iter("{s}g") if tag.get("id")}
    found: Counter[str] = Counter()

    def visit(element: ET.Element) -> None:
        for child in element:
            if child.tag == "{s}defs":
                continue
            found[child.get("class", "").split(" ")[-1]] += 1
            target = tags.get(child.get("href", "").removeprefix("#"))
            visit(target if target is not None else child)

    visit(root)
    return found


def variants(label: str, kind: str) -> tuple[str, ...]:
    if kind == "count":
        return NUMBERS["count"]
    if kind == "measure":
        # Lengths and widths differ, so that no ratio is one that is drawn anyway.
        return ("7.3 mm", "9.1 mm") if label == "width" else ("8.7 mm", "5.9 mm", "13.1 mm")
    return states(label)


@cache
def labels() -> dict[str, tuple[str, ...]]:
    """Return every label of fruits that is not the kind, with values to try."""
    subject = vocabulary().subject("fruit")
    return {
        label.name: variants(label.name, label.kind)
        for label in subject.labels
        if label.name != "kind" and (label.kind in NUMBERS or label.name in _all_drawn())
    }


@cache
def _all_drawn() -> frozenset[str]:
    return frozenset().union(*USES.values())


def full(kind: str, turn: int) -> dict[str, str]:
    """Return a kind with a value for every label, other ones at every turn."""
    values = {"kind": kind} if kind else {}
    for n, (label, options) in enumerate(labels().items()):
        values[label] = options[(turn * (n % 5 + 1) + n) % len(options)]
    return values


def result(values: dict[str, str]) -> tuple[object, object, tuple[object, ...]]:
    sketch = fruit(told_of(**values), SIZE)
    return (sketch.ink, sketch.scale, sketch.shows) if sketch else (None, None, ())


def shown(values: dict[str, str]) -> set[str]:
    form = fruit(told_of(**values), SIZE)
    return {character.label for character in form.shows} if form else set()


@pytest.mark.parametrize("kind", USES)
def test_what_is_said_to_be_drawn_changes_the_drawing_and_nothing_else_does(kind: str) -> None:
    for turn in range(9):
        values = full(kind, turn)
        if turn % 2:
            values = dict(list(values.items())[:: 2 + turn % 3]) | ({"kind": kind} if kind else {})
        said = shown(values)
        before = result(values)[:2]
        for label in values:
            less = {k: v for k, v in values.items() if k != label}
            same = result(less)[:2] == before
            if same and label in said:
                # Another label says the same in its own words, and is now the one that is shown.
                assert shown(less) - said, (turn, label, values, said)
            else:
                assert same is (label not in said), (turn, label, values, said)


@pytest.mark.parametrize("kind", USES)
def test_one_character_beside_the_kind_is_said_exactly_when_it_is_drawn(kind: str) -> None:
    base = {"kind": kind} if kind else {"shape": "round"}
    bare = result(base)[:2]
    for label, options in labels().items():
        if label in base:
            continue
        for value in options:
            values = base | {label: value}
            assert (result(values)[:2] != bare) is (label in shown(values)), (label, value)


def test_without_kind_and_shape_nothing_is_drawn() -> None:
    assert fruit(told_of(surface="hairy", length="3 mm"), SIZE) is None


@pytest.mark.parametrize("kind", KINDS)
def test_outlines_do_not_cross_themselves(kind: str) -> None:
    for turn in range(7):
        sketch = fruit(told_of(**full(kind, turn)), SIZE)
        assert sketch is not None
        for mark in plain(sketch.ink):
            if mark.path.closed:
                polygon = Polygon([(p.real, p.imag) for p in mark.path.points()])
                assert explain_validity(polygon) == "Valid Geometry", (turn, mark.part)


@pytest.mark.parametrize("kind", KINDS)
def test_a_fruit_drawn_twice_is_the_same(kind: str) -> None:
    for turn in range(4):
        told = told_of(**full(kind, turn))
        assert fruit(told, SIZE) == fruit(told, SIZE)


@pytest.mark.parametrize("example", EXAMPLES, ids=lambda example: example.label)
def test_states_of_one_label_that_can_be_drawn_differ(example: Example) -> None:
    one = example
    label = vocabulary().subject("fruit").label(one.label)
    assert label is not None
    inks = {}
    for state in label.states:
        base = {**one.base, one.label: state.name}
        sketch = one.draw(specimen(vocabulary(), "fruit", **base), SIZE)
        if sketch and one.label in {c.label for c in sketch.shows}:
            inks[state.name] = sketch.ink
        assert not state.draw or state.name in inks
    same = {(a, b) for a, b in combinations(inks, 2) if inks[a] == inks[b]}
    assert same == set()
    assert len(inks) > 1


@pytest.mark.parametrize("number", range(1, 11))
def test_stones_are_counted_back(number: int) -> None:
    for kind in ("drupe", "haw", "berry"):
        counted = parts(drawn(kind=kind, stones=str(number)))
        assert counted["stone"] == number


@pytest.mark.parametrize("number", [1, 2, 4, 6, 10, 17])
def test_seeds_are_counted_back(number: int) -> None:
    for kind in ("berry", "hip", "pome"):
        assert parts(drawn(kind=kind, seeds=str(number)))["seed"] == number
    assert parts(drawn(kind="pea pod", seeds=str(number)))["seed"] == number


def test_many_seeds_are_more_than_anyone_counts() -> None:
    assert parts(drawn(kind="berry", seeds="many"))["seed"] == MANY
    assert parts(drawn(kind="berry", inside="many small seeds"))["seed"] == MANY


@pytest.mark.parametrize("number", range(1, 8))
def test_chambers_valves_and_nuts_are_counted_back(number: int) -> None:
    text = str(number)
    assert parts(drawn(kind="berry", chambers=text))["chamber"] == number
    assert parts(drawn(kind="capsule", chambers=text))["chamber"] == number
    assert parts(drawn(kind="capsule", valves=text))["valve"] == number
    assert parts(drawn(kind="nut in a husk", nuts_together=text))["nut"] == number
    assert parts(drawn(kind="nuts in a prickly cup", nuts_together=text))["nut"] == number


def test_flaps_without_a_number_are_dotted_and_none_is_a_valve() -> None:
    counted = parts(drawn(kind="capsule", opening="by flaps"))
    assert counted["valve"] == 0
    marks = [m for m in plain(drawn(kind="capsule", opening="by flaps").ink) if m.part == "valves"]
    assert {m.pen for m in marks} == {"dotted"}


def test_warts_wings_halves_nutlets_and_styles_are_as_many_as_their_words_say() -> None:
    plainly = {"without warts": 0, "one wart": 1, "three warts": 3, "toothed": 0}
    for words, number in plainly.items():
        sketch = drawn(kind="winged three-angled nut", wing_surface=words)
        assert (parts(sketch)["wart"], parts(sketch)["wing"]) == (number, 3)
    assert parts(drawn(kind="double samara"))["wing"] == 2
    assert parts(drawn(kind="four nutlets"))["nutlet"] == 4
    assert parts(drawn(kind="pair of hairy lobes"))["fruit"] == 2
    assert parts(drawn(kind="three-lobed capsule"))["fruit"] == 3
    assert parts(drawn(kind="schizocarp"))["half"] == 2
    for words in ("bent styles", "upright styles"):
        assert parts(drawn(kind="schizocarp", remains_of_the_flower=words))["style"] == 2


def test_the_scale_is_that_of_the_length_or_else_of_the_width() -> None:
    assert drawn(kind="berry", shape="round", length="10 mm").scale == SIZE / 10
    assert drawn(kind="berry", shape="round", width="5–10 mm").scale == SIZE / 7.5
    assert drawn(kind="berry", shape="round").scale is None
    broad = drawn(kind="berry", shape="round", length="5 mm", width="10 mm")
    assert broad.scale == SIZE / 10


def test_length_and_width_set_the_proportions() -> None:
    told = told_of(kind="schizocarp", shape="long and narrow", length="20 mm", width="4 mm")
    sketch = fruit(told, SIZE)
    assert sketch is not None
    halves = tuple(m for m in plain(sketch.ink) if m.part == "half")
    room = box(halves)
    assert room.height - 1.6 == pytest.approx(SIZE)
    assert room.width - 1.6 == pytest.approx(SIZE / 5, rel=0.04)


def test_styles_are_drawn_at_the_scale_of_their_fruit() -> None:
    base = {"kind": "schizocarp", "shape": "cylindrical", "remains_of_the_flower": "upright styles"}
    sketch = drawn(**base, length="5 mm", style_length_on_the_fruit="2–3 mm")
    style = next(m.path for m in plain(sketch.ink) if m.part == "style")
    assert abs(style.end - style.start) == pytest.approx(0.5 * SIZE, rel=0.02)
    bare = fruit_form(told_of(**base, style_length_on_the_fruit="2–3 mm"))
    assert bare is not None
    assert bare.styles is None


def test_a_body_is_dotted_until_its_shape_is_recorded() -> None:
    for kind in ("berry", "drupe", "capsule", "nut", "achene"):
        pens = {m.pen for m in plain(drawn(kind=kind).ink) if m.part == "fruit"}
        assert pens == {"dotted"}
        pens = {m.pen for m in plain(drawn(kind=kind, shape="round").ink) if m.part == "fruit"}
        assert pens == {"line"}


def test_a_capsule_that_opens_by_a_lid_has_lost_it() -> None:
    assert parts(drawn(kind="capsule with a lid"))["lid"] == 0
    assert parts(drawn(kind="capsule with a lid", opening="by a lid"))["lid"] == 1


def test_a_core_left_on_the_plant_is_drawn_beside_a_hollow_fruit() -> None:
    left = parts(drawn(kind="aggregate", core="on the plant"))
    kept = parts(drawn(kind="aggregate", core="in the fruit"))
    assert (left["core"], left["hollow"]) == (1, 1)
    assert (kept["core"], kept["hollow"]) == (1, 0)


@pytest.mark.parametrize("ribs", sorted(RIBS))
def test_every_sort_of_rib_draws_as_many_ribs(ribs: str) -> None:
    assert parts(drawn(kind="schizocarp", shape="egg-shaped", ribs=ribs))["rib"] == 4


def test_pairs_of_words_for_the_ridged_pair_differ_in_ink() -> None:
    shapes = ("roundish", "egg-shaped", "cylindrical", "long and narrow")
    styles = ("bent styles", "upright styles")
    inks = {
        drawn(kind="schizocarp", shape=s, ribs=r, remains_of_the_flower=t).ink
        for s in shapes for r in sorted(RIBS) for t in styles
    }  # fmt: skip
    assert len(inks) == len(shapes) * len(RIBS) * len(styles)


def test_what_is_still_missing_is_asked_for() -> None:
    assert drawn(kind="berry", shape="round", length="8 mm").wants == (
        "width", "surface", "ribs", "remains of the flower", "stones", "seeds", "chambers",
        "inside", "posture", "stalk",
    )  # fmt: skip
    assert "kind" in drawn(shape="round").wants


def test_an_ordinary_figure_is_small() -> None:
    for size in (100, 220):
        for kind in KINDS:
            sketch = fruit(told_of(kind=kind), size)
            assert sketch is not None
            assert len(ink_svg(sketch.ink, "x")) <= 4096, (kind, size)


def test_the_tables_name_words_of_the_vocabulary() -> None:
    every = {
        "kind": set(KINDS), "surface": SURFACES, "ribs": RIBS, "remains of the flower": REMAINS,
        "husk": frozenset().union(*HUSKS_OF.values()),
        "opening": frozenset().union(*OPENINGS.values()),
    }  # fmt: skip
    for label, words in every.items():
        assert set(words) <= set(states(label)), label
    assert set(states("kind")) == set(KINDS)
    assert _all_drawn() <= set(labels()) | {"kind"}
    assert vocabulary().subject("fruit").label(STYLES) is not None
    assert re.fullmatch(r"[a-z ]+", STYLES)
