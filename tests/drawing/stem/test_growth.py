"""How stems and whole plants grow."""

from __future__ import annotations

from typing import Final

import pytest
from hypothesis import given, settings

from helpers.drawings import parts_of
from helpers.stems import crossing_outlines, faults_of, sketch_of, told_of, values_of, words_about
from sallet.drawing.ink import plain
from sallet.drawing.stem.growth import growth
from sallet.drawing.stem.growth_lines import WAYS

STEM: Final = ("posture", "branching", "rooting", "runners", "twining direction")
PLANT: Final = ("posture", "branching", "stems from the base")


@pytest.mark.parametrize("organ", ["stem", "whole plant"])
def test_every_posture_has_a_line_of_its_own(organ: str) -> None:
    states = values_of(organ, "posture")
    assert set(states) <= set(WAYS)
    inks = [sketch_of(growth, organ, {"posture": state}).ink for state in states]
    assert len(set(inks)) == len(states)


def test_where_the_posture_is_not_recorded_the_ground_is_dotted() -> None:
    def ground(words: dict[str, str]) -> list[str]:
        ink = sketch_of(growth, "stem", words).ink
        return [mark.pen for mark in plain(ink) if mark.part == "ground"]

    assert ground({"branching": "forked"}) == ["dotted"]
    assert ground({"branching": "forked", "posture": "erect"}) == ["thin"]


@pytest.mark.parametrize(
    ("stems", "number"), [("one stem", 1), ("few stems", 3), ("many stems", 13)]
)
def test_as_many_stems_rise_as_are_recorded(stems: str, number: int) -> None:
    words = {"posture": "upright", "branching": "unbranched", "stems from the base": stems}
    assert parts_of(sketch_of(growth, "whole plant", words).ink)["stem"] == number


def test_a_plant_without_a_stem_has_leaves_and_a_stalk_from_the_ground() -> None:
    words = {"stems from the base": "no stem", "posture": "upright", "branching": "unbranched"}
    sketch = sketch_of(growth, "whole plant", words)
    counts = parts_of(sketch.ink)
    assert (counts["stem"], counts["leaf"], counts["stalk"]) == (0, 4, 1)
    assert [c.words for c in sketch.shows] == ["stems from the base: no stem"]


def test_branches_stand_in_pairs_or_singly_as_recorded() -> None:
    def heights(branching: str) -> list[int]:
        ink = sketch_of(growth, "stem", {"posture": "erect", "branching": branching}).ink
        starts = [round(m.path.start.imag) for m in plain(ink) if m.part == "branch"]
        return [starts.count(height) for height in sorted(set(starts))]

    assert set(heights("opposite branches")) == {2}
    assert set(heights("alternate branches")) == {1}
    assert heights("unbranched") == []


def test_branches_begin_where_they_are_recorded() -> None:
    def lowest_and_highest(branching: str) -> tuple[bool, bool]:
        ink = sketch_of(growth, "stem", {"posture": "erect", "branching": branching}, 100).ink
        starts = [m.path.start.imag for m in plain(ink) if m.part == "branch"]
        return min(starts) > 50, max(starts) < 20

    assert lowest_and_highest("branched from the base") == (False, True)
    assert lowest_and_highest("branched above") == (True, False)
    assert lowest_and_highest("branched throughout") == (False, False)


def test_a_stem_that_lies_keeps_its_branches_in_a_drawing_beside_it() -> None:
    lying = sketch_of(growth, "stem", {"posture": "lying"}, 100)
    both = sketch_of(growth, "stem", {"posture": "lying", "branching": "forked"}, 100)
    assert both.ink[: len(lying.ink)] == lying.ink
    assert both.box.right > lying.box.right + 30


def test_creeping_stems_root_and_lying_ones_do_not() -> None:
    roots = {
        posture: parts_of(sketch_of(growth, "stem", {"posture": posture}).ink)["root"]
        for posture in ("creeping", "lying")
    }
    assert roots == {"creeping": 7, "lying": 0}
    words = {"posture": "lying", "rooting": "at the nodes"}
    assert parts_of(sketch_of(growth, "stem", words).ink)["root"] == 7


def test_an_arching_stem_roots_with_its_tip_where_that_is_recorded() -> None:
    words = {"posture": "arching", "rooting": "at the tips"}
    ink = sketch_of(growth, "stem", words, 100).ink
    feet = [mark.path.start for mark in plain(ink) if mark.part == "root"]
    assert {round(foot.imag) for foot in feet} == {0}
    assert min(foot.real for foot in feet) > 90


def test_long_runners_root_and_short_ones_do_not() -> None:
    counts = {
        kind: parts_of(sketch_of(growth, "stem", {"runners": f"{kind} runners"}).ink)
        for kind in ("short", "long")
    }
    assert {k: (c["runner"], c["root"]) for k, c in counts.items()} == {
        "short": (2, 0),
        "long": (2, 6),
    }


def test_a_twining_stem_of_no_recorded_hand_leans_to_neither_side() -> None:
    ink = sketch_of(growth, "stem", {"posture": "twining"}).ink
    level = [m.path for m in plain(ink) if m.part == "stem"]
    assert {abs(path.start.imag - path.end.imag) for path in level} == {0.0}
    assert {m.pen for m in plain(ink) if m.part == "stem"} == {"dotted"}


def test_nothing_is_drawn_where_nothing_is_recorded_of_how_it_grows() -> None:
    assert growth(told_of("stem", {"rooting": "at the nodes", "colour": "green"}), 100) is None


@settings(max_examples=120, deadline=None)
@given(words_about("stem", STEM))
def test_a_stem_shows_exactly_what_it_says(words: dict[str, str]) -> None:
    assert faults_of(growth, "stem", words) == []


@settings(max_examples=120, deadline=None)
@given(words_about("whole plant", PLANT))
def test_a_whole_plant_shows_exactly_what_it_says(words: dict[str, str]) -> None:
    assert faults_of(growth, "whole plant", words) == []


@settings(max_examples=60, deadline=None)
@given(words_about("stem", STEM, ("posture",)))
def test_no_outline_crosses_itself_and_drawing_twice_gives_the_same(words: dict[str, str]) -> None:
    told = told_of("stem", words)
    first, second = growth(told, 150), growth(told, 150)
    assert first == second
    assert first is not None
    assert crossing_outlines(first.ink) == []
