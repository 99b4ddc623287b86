"""A piece of stem from the side."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

import pytest
from hypothesis import given, settings

from helpers.drawings import parts_of
from helpers.stems import crossing_outlines, faults_of, sketch_of, told_of, values_of, words_about
from sallet.drawing.ink import plain
from sallet.drawing.stem.body import HALF, JOINT
from sallet.drawing.stem.hairs import HAIRS
from sallet.drawing.stem.side import stem_piece
from sallet.drawing.told import specimen
from sallet.lesson.vocabulary_file import load_vocabulary

if TYPE_CHECKING:
    from sallet.drawing.ink import Ink

LABELS: Final = (
    "nodes", "ridges", "markings", "surface", "hair arrangement", "thorns", "thorn shape",
    "thorn density", "rooting", "tendrils",
)  # fmt: skip
SIZE: Final = 220.0
NEGATIVE: Final = {"unmarked", "unarmed", "not ridged", "not rooting", "hairless", "no hairs"}


def hair_feet(words: dict[str, str]) -> list[complex]:
    """Return where hairs stand, as shares of half the breadth and of the height."""
    plain_piece = set(sketch_of(stem_piece, "stem", {"nodes": "not swollen"}, SIZE).ink)
    ink = sketch_of(stem_piece, "stem", words | {"nodes": "not swollen"}, SIZE).ink
    feet = [mark.path.start for mark in plain(ink) if mark not in plain_piece]
    return [complex(p.real / (HALF * SIZE), p.imag / SIZE) for p in feet]


def test_hairs_in_one_line_change_sides_at_the_joint() -> None:
    feet = hair_feet({"hair arrangement": "in one line"})
    assert {(p.real > 0) for p in feet if p.imag > JOINT} == {True}
    assert {(p.real < 0) for p in feet if p.imag < JOINT} == {True}


def test_hairs_in_two_lines_stand_on_the_edges_alone() -> None:
    feet = hair_feet({"hair arrangement": "in two lines"})
    assert {round(p.real, 6) for p in feet} == {-1, 1}


@pytest.mark.parametrize(
    ("where", "low", "high"),
    [("at the nodes only", 0.46, 0.54), ("at the base only", 0, 0.3), ("towards the top only", 0.7, 1)],
)  # fmt: skip
def test_hairs_stand_only_where_they_are_recorded(where: str, low: float, high: float) -> None:
    feet = hair_feet({"hair arrangement": where})
    assert feet
    assert all(low <= p.imag <= high for p in feet)


def test_hairs_of_two_kinds_are_both_drawn() -> None:
    words = {"surface": "stinging, downy"}
    sketch = sketch_of(stem_piece, "stem", words, SIZE)
    assert [c.drawn for c in sketch.shows] == ["stinging", "downy"]
    alone = parts_of(sketch_of(stem_piece, "stem", {"surface": "stinging"}, SIZE).ink)
    assert parts_of(sketch.ink)["sting"] == alone["sting"] > 0


def test_hairs_that_are_seldom_there_are_not_drawn_beside_the_usual() -> None:
    usual = sketch_of(stem_piece, "stem", {"surface": "downy"}, SIZE)
    sketch = sketch_of(stem_piece, "stem", {"surface": "downy, sometimes stinging"}, SIZE)
    assert sketch.ink == usual.ink
    told = ["surface: downy (recorded: downy, sometimes stinging)"]
    assert [c.words for c in sketch.shows] == told


def test_hairs_that_alternate_with_none_are_not_drawn() -> None:
    assert stem_piece(told_of("stem", {"surface": "hairless or cobwebby"}), SIZE) is None


@pytest.mark.parametrize("label", LABELS)
def test_what_is_absent_is_drawn_as_what_is_not_recorded(label: str) -> None:
    bare = sketch_of(stem_piece, "stem", {"nodes": "not swollen"}, SIZE)
    for value in set(values_of("stem", label)) & NEGATIVE:
        sketch = sketch_of(stem_piece, "stem", {"nodes": "not swollen", label: value}, SIZE)
        assert (sketch.ink, sketch.shows) == (bare.ink, bare.shows)


@pytest.mark.parametrize(
    ("markings", "part"),
    [("spotted", "spot"), ("blotched", "blotch"), ("striped", "stripe"), ("ringed", "band"), ("pale pores", "pore")],
)  # fmt: skip
def test_every_marking_is_of_its_own_kind(markings: str, part: str) -> None:
    counts = parts_of(sketch_of(stem_piece, "stem", {"markings": markings}, SIZE).ink)
    kinds = {"spot", "blotch", "stripe", "band", "pore"}
    assert {kind for kind in kinds if counts[kind]} == {part}


def thorns(ink: Ink) -> int:
    return parts_of(ink)["thorn"]


def test_more_thorns_are_drawn_the_nearer_they_are_said_to_stand() -> None:
    counts = [
        thorns(
            sketch_of(stem_piece, "stem", {"thorns": "hooked prickles", "thorn density": d}, SIZE).ink
        )
        for d in ("few", "middling", "crowded")
    ]  # fmt: skip
    assert counts == [2, 9, 26]


def test_prickles_of_no_recorded_shape_are_dotted() -> None:
    def pens(words: dict[str, str]) -> set[str]:
        ink = sketch_of(stem_piece, "stem", words, SIZE).ink
        bare = set(sketch_of(stem_piece, "stem", {"nodes": "not swollen"}, SIZE).ink)
        return {mark.pen for mark in plain(ink) if mark not in bare and mark.path.closed}

    base = {"nodes": "not swollen", "thorns": "prickles"}
    assert pens(base) == {"dotted"}
    assert pens(base | {"thorn shape": "hooked"}) == {"line"}


def test_hooked_points_bend_towards_the_foot_of_the_stem() -> None:
    words = {"thorns": "hooked prickles"}
    ink = sketch_of(stem_piece, "stem", words, SIZE).ink
    points = [mark.path for mark in plain(ink) if mark.path.closed and mark.pen == "line"]
    assert len(points) == 5
    for path in points:
        tip = max((path.start, *(p.end for p in path.pieces)), key=lambda p: abs(p.real))
        assert tip.imag < path.start.imag


def test_every_kind_of_hair_has_a_drawing_of_its_own() -> None:
    inks = {name: sketch_of(stem_piece, "stem", {"surface": name}, SIZE).ink for name in HAIRS}
    assert len(set(inks.values())) == len(HAIRS)


def test_every_kind_of_hair_is_a_word_of_the_vocabulary() -> None:
    assert set(HAIRS) <= set(values_of("stem", "surface"))


def test_a_joint_that_is_not_recorded_is_dotted() -> None:
    told = specimen(load_vocabulary(), "stem", markings="spotted")
    sketch = stem_piece(told, SIZE)
    assert sketch is not None
    assert [m.pen for m in plain(sketch.ink) if m.part == "node"] == ["dotted"]
    assert sketch.wants == ("nodes", "ridges", "surface")


def test_nothing_is_drawn_of_a_stem_of_which_nothing_leaves_ink() -> None:
    assert stem_piece(told_of("stem", {"colour": "green", "markings": "unmarked"}), SIZE) is None


@settings(max_examples=150, deadline=None)
@given(words_about("stem", LABELS))
def test_a_piece_of_stem_shows_exactly_what_it_says(words: dict[str, str]) -> None:
    assert faults_of(stem_piece, "stem", words) == []


@settings(max_examples=80, deadline=None)
@given(words_about("stem", LABELS, ("nodes",)))
def test_no_outline_crosses_itself_and_drawing_twice_gives_the_same(words: dict[str, str]) -> None:
    told = told_of("stem", words)
    first, second = stem_piece(told, SIZE), stem_piece(told, SIZE)
    assert first == second
    assert first is not None
    assert crossing_outlines(first.ink) == []
