"""The parts under the soil."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

import pytest
from hypothesis import given, settings

from helpers.drawings import parts_of
from helpers.stems import crossing_outlines, faults_of, sketch_of, told_of, values_of, words_about
from sallet.drawing.ink import plain
from sallet.drawing.underground.form import USES
from sallet.drawing.underground.underground import PLANS, underground

if TYPE_CHECKING:
    from sallet.drawing.ink import Ink

LABELS: Final = (
    "shape", "surface", "coat", "interior", "scales", "rootlets", "course", "number of tubers",
    "length", "width", "depth",
)  # fmt: skip
CLUSTER: Final = "cluster of tubers"


def pens_of(ink: Ink, part: str) -> set[str]:
    return {mark.pen for mark in plain(ink) if mark.part == part}


def test_every_kind_has_a_drawing_of_its_own() -> None:
    kinds = values_of("roots", "kind")
    assert set(kinds) == set(PLANS) == set(USES)
    inks = [sketch_of(underground, "roots", {"kind": kind}).ink for kind in kinds]
    assert len(set(inks)) == len(kinds)


@pytest.mark.parametrize(
    ("told", "sure", "more"),
    [("1", 1, 0), ("2", 2, 0), ("5", 5, 0), ("5+", 5, 2), ("4–6", 5, 0), ("8", 8, 0), ("14", 12, 1)],
)  # fmt: skip
def test_as_many_tubers_are_drawn_as_are_recorded(told: str, sure: int, more: int) -> None:
    words = {"kind": CLUSTER, "number of tubers": told}
    counts = parts_of(sketch_of(underground, "roots", words).ink)
    assert (counts["tuber"], min(counts["more"], 1 if told == "14" else 2)) == (sure, more)


def test_a_number_with_no_upper_end_is_told_as_one() -> None:
    words = {"kind": CLUSTER, "number of tubers": "5+"}
    sketch = sketch_of(underground, "roots", words)
    said = [c.words for c in sketch.shows]
    assert said == ["kind: cluster of tubers", "number of tubers: 5 or more (recorded: 5+)"]


def test_tubers_of_no_recorded_number_are_several_and_the_rest_dotted() -> None:
    counts = parts_of(sketch_of(underground, "roots", {"kind": CLUSTER}).ink)
    assert (counts["tuber"], counts["more"]) == (3, 4)


def test_beads_are_counted_too() -> None:
    words = {"kind": "string of tubers", "number of tubers": "5"}
    counts = parts_of(sketch_of(underground, "roots", words).ink)
    assert (counts["tuber"], counts["more"]) == (5, 0)


def test_a_bulb_is_layered_and_a_corm_is_not() -> None:
    counts = {
        kind: parts_of(sketch_of(underground, "roots", {"kind": kind}).ink)
        for kind in ("bulb", "corm")
    }
    assert {k: (c["layer"], c["plate"], c["ring"]) for k, c in counts.items()} == {
        "bulb": (8, 2, 0),
        "corm": (0, 0, 3),
    }


def dots_of(words: dict[str, str]) -> int:
    ink = sketch_of(underground, "roots", words).ink
    return sum(abs(m.path.end - m.path.start) < 0.5 and not m.path.closed for m in plain(ink))


def test_a_cut_is_stippled_only_where_its_inside_is_recorded() -> None:
    for kind, inside in (("bulb", "layered"), ("corm", "solid")):
        words = {"kind": kind, "shape": "round"}
        assert dots_of(words) == 0
        assert dots_of(words | {"interior": inside}) > 20


def test_the_cut_stands_beside_the_whole_at_the_same_scale() -> None:
    words = {"kind": "tuber", "shape": "egg-shaped", "interior": "solid"}
    marks = [
        m for m in plain(sketch_of(underground, "roots", words).ink) if m.part in {"tuber", "cut"}
    ]
    rooms = []
    for mark in marks:
        points = mark.path.points()
        across = [p.real for p in points]
        up = [p.imag for p in points]
        rooms.append((min(across), max(across), max(across) - min(across), max(up) - min(up)))
    whole, cut = rooms
    assert whole[2:] == pytest.approx(cut[2:])
    assert cut[0] > whole[1]


@pytest.mark.parametrize("kind", ["bulb", "corm", "tuber"])
def test_a_store_of_no_recorded_shape_is_dotted(kind: str) -> None:
    assert pens_of(sketch_of(underground, "roots", {"kind": kind}).ink, kind) == {"dotted"}
    words = {"kind": kind, "shape": "round"}
    assert pens_of(sketch_of(underground, "roots", words).ink, kind) == {"line"}


def test_a_coat_does_not_make_a_shape_known() -> None:
    words = {"kind": "corm", "coat": "leathery"}
    assert pens_of(sketch_of(underground, "roots", words).ink, "coat") == {"dotted", "line"}
    words |= {"shape": "round"}
    assert pens_of(sketch_of(underground, "roots", words).ink, "coat") == {"line"}


def test_a_store_of_no_recorded_depth_lies_below_dotted_ground() -> None:
    words = {"kind": "bulb", "shape": "round", "length": "4 cm"}
    assert pens_of(sketch_of(underground, "roots", words).ink, "ground") == {"dotted"}
    deep = sketch_of(underground, "roots", words | {"depth": "6 cm"}, 100)
    assert pens_of(deep.ink, "ground") == {"thin"}
    (bulb,) = (m for m in plain(deep.ink) if m.part == "bulb")
    # 6 cm of soil and 4 cm of bulb are a hundred units.
    assert deep.scale == pytest.approx(1.0)
    assert min(p.imag for p in bulb.path.points()) == pytest.approx(-100, abs=0.5)


def test_the_scale_is_that_of_the_recorded_length() -> None:
    taproot = sketch_of(underground, "roots", {"kind": "taproot", "length": "20 cm"}, 100)
    assert taproot.scale == 0.5
    short = sketch_of(underground, "roots", {"kind": "taproot", "length": "at most 50 cm"}, 100)
    assert short.scale is None


def test_length_and_width_give_a_taproot_its_true_breadth() -> None:
    words = {"kind": "taproot", "length": "20 cm", "width": "4 cm"}
    ink = sketch_of(underground, "roots", words, 100).ink
    (root,) = (mark for mark in plain(ink) if mark.part == "root")
    across = [p.real for p in root.path.points()]
    assert max(across) - min(across) == pytest.approx(20, abs=1.2)


def test_a_taproot_is_one_root() -> None:
    for kind in ("taproot", "slender taproot", "stout taproot"):
        counts = parts_of(sketch_of(underground, "roots", {"kind": kind}).ink)
        assert (counts["root"], counts["tuber"], counts["ground"]) == (1, 0, 1)


def test_stouter_taproots_are_broader() -> None:
    breadths = []
    for kind in ("slender taproot", "taproot", "stout taproot"):
        ink = sketch_of(underground, "roots", {"kind": kind}, 100).ink
        (root,) = (mark for mark in plain(ink) if mark.part == "root")
        across = [p.real for p in root.path.points()]
        breadths.append(max(across) - min(across))
    assert breadths == sorted(breadths)
    assert breadths[2] > 2 * breadths[0]


def test_thin_roots_are_drawn_only_where_they_are_recorded() -> None:
    base = {"kind": "bulb", "shape": "round"}
    counts = {
        where: parts_of(sketch_of(underground, "roots", base | {"rootlets": where}).ink)["root"]
        for where in ("from the base", "all over", "few")
    }
    bare = parts_of(sketch_of(underground, "roots", base).ink)["root"]
    assert (bare, counts) == (0, {"from the base": 11, "all over": 11, "few": 3})


def test_rhizomes_run_below_the_ground_and_their_shoots_are_dotted() -> None:
    ink = sketch_of(underground, "roots", {"kind": "rhizome"}, 100).ink
    (body,) = (mark for mark in plain(ink) if mark.part == "rhizome")
    points = body.path.points()
    assert max(p.imag for p in points) < 0
    across = max(p.real for p in points) - min(p.real for p in points)
    assert across > 6 * (max(p.imag for p in points) - min(p.imag for p in points)) / 2
    assert {m.pen for m in plain(ink) if max(p.imag for p in m.path.points()) > 1} == {"dotted"}


def test_scales_clasp_a_rhizome_where_they_are_recorded() -> None:
    counts = {
        scales: parts_of(
            sketch_of(underground, "roots", {"kind": "rhizome", "scales": scales}).ink
        )["scale"]
        for scales in ("absent", "pale scales", "brown scales", "fleshy scales")
    }
    assert counts == {"absent": 0, "pale scales": 5, "brown scales": 5, "fleshy scales": 5}


def test_nothing_is_drawn_of_roots_of_no_recorded_kind() -> None:
    assert underground(told_of("roots", {"shape": "round", "number of tubers": "5"}), 100) is None


def test_the_drawing_asks_for_what_would_let_more_be_drawn() -> None:
    words = {"kind": "bulb", "length": "4 cm"}
    wants = sketch_of(underground, "roots", words).wants
    assert wants == ("shape", "width", "depth", "coat", "interior")


@settings(max_examples=200, deadline=None)
@given(words_about("roots", LABELS, ("kind",)))
def test_the_parts_under_the_soil_show_exactly_what_they_say(words: dict[str, str]) -> None:
    assert faults_of(underground, "roots", words) == []


@settings(max_examples=150, deadline=None)
@given(words_about("roots", LABELS, ("kind",)))
def test_no_outline_crosses_itself_and_drawing_twice_gives_the_same(words: dict[str, str]) -> None:
    told = told_of("roots", words)
    first, second = underground(told, 220), underground(told, 220)
    assert first == second
    assert first is not None
    assert crossing_outlines(first.ink) == []
