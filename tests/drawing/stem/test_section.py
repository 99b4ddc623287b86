"""Stems and leaf stalks cut across."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

import pytest
from hypothesis import given, settings
from shapely import Polygon

from helpers.drawings import parts_of
from helpers.stems import (
    crossing_outlines,
    faults_of,
    labels_shown,
    sketch_of,
    told_of,
    values_of,
    words_about,
)  # fmt: skip
from sallet.drawing.curves import walk
from sallet.drawing.ink import Mark, plain
from sallet.drawing.stem.section import PITHS, stalk_section, stem_section

if TYPE_CHECKING:
    from sallet.drawing.ink import Ink

STEM: Final = (
    "section", "ridges", "interior", "pith width", "hair arrangement", "inner thread",
    "thickness",
)  # fmt: skip
STALK: Final = ("stalk section", "stalk interior")
CORNERS: Final = {"round": 0, "two-angled": 2, "triangular": 3, "square": 4, "five-angled": 5}
HOLLOWS: Final = ("narrowly hollow", "hollow", "wide hollow")


def outline_of(ink: Ink) -> Mark:
    (outline,) = (mark for mark in plain(ink) if mark.part == "outline")
    return outline


def area_of(mark: Mark) -> float:
    return float(Polygon([(p.real, p.imag) for p in mark.path.points(24)]).area)


def corners_of(mark: Mark) -> int:
    """Count the places where an outline turns by more than thirty degrees at once."""
    points = mark.path.points(24)
    way = walk([*points, points[0]])
    step = way.length / 300
    sharp = []
    for number in range(300):
        before = way.heading((number - 5) * step % way.length)
        behind = way.heading((number + 5) * step % way.length)
        sharp.append((before.conjugate() * behind).real < 0.8)
    return sum(here and not there for there, here in zip([sharp[-1], *sharp], sharp, strict=False))


@pytest.mark.parametrize(("section", "corners"), CORNERS.items())
def test_a_section_has_the_corners_that_are_recorded(section: str, corners: int) -> None:
    sketch = sketch_of(stem_section, "stem", {"section": section})
    assert corners_of(outline_of(sketch.ink)) == corners


@pytest.mark.parametrize("section", values_of("stem", "section"))
def test_a_section_is_as_broad_as_asked(section: str) -> None:
    sketch = sketch_of(stem_section, "stem", {"section": section}, 100)
    assert sketch.box.width - 1.6 == pytest.approx(100, abs=0.3)


@pytest.mark.parametrize("section", ["angled", "winged"])
def test_corners_of_no_recorded_number_are_not_drawn_all_round(section: str) -> None:
    counts = parts_of(sketch_of(stem_section, "stem", {"section": section}).ink)
    assert counts["dotted"] == 1


def test_an_outline_that_is_not_recorded_is_dotted() -> None:
    pens = {
        words: outline_of(sketch_of(stem_section, "stem", dict(words)).ink).pen
        for words in ((("interior", "hollow"),), (("interior", "hollow"), ("section", "round")))
    }
    assert list(pens.values()) == ["dotted", "line"]


def test_nothing_is_drawn_of_which_neither_outline_nor_inside_is_recorded() -> None:
    assert stem_section(told_of("stem", {"ridges": "grooved", "thickness": "4 mm"}), 100) is None
    assert stalk_section(told_of("leaves", {"stalk length": "4 cm"}), 100) is None


@pytest.mark.parametrize("section", values_of("stem", "section"))
def test_hollows_widen_with_their_words_and_lie_within_the_outline(section: str) -> None:
    areas = []
    for interior in HOLLOWS:
        ink = sketch_of(stem_section, "stem", {"section": section, "interior": interior}).ink
        (hollow,) = (mark for mark in plain(ink) if mark.part == "hollow")
        areas.append(area_of(hollow))
        edge = next(mark for mark in plain(ink) if mark.path.closed)
        inner = Polygon([(p.real, p.imag) for p in hollow.path.points(24)])
        assert Polygon([(p.real, p.imag) for p in edge.path.points(24)]).contains(inner)
    assert areas == sorted(areas)


def test_pith_takes_the_share_of_the_stem_that_its_word_means() -> None:
    bounds = {"narrow": (0, 0.25), "middling": (0.25, 0.5), "wide": (0.5, 1)}
    for width, (low, high) in bounds.items():
        words = {"section": "round", "interior": "pithy", "pith width": width}
        ink = sketch_of(stem_section, "stem", words, 100).ink
        (pith,) = (mark for mark in plain(ink) if mark.part == "pith")
        across = [p.real for p in pith.path.points()]
        share = (max(across) - min(across)) / 100
        assert share == pytest.approx(PITHS[width])
        assert low < share < high


def test_pith_of_no_recorded_width_is_dotted() -> None:
    ink = sketch_of(stem_section, "stem", {"section": "round", "interior": "pithy"}).ink
    assert [mark.pen for mark in plain(ink) if mark.part == "pith"] == ["dotted"]


def test_cross_walls_are_shown_by_a_piece_cut_lengthwise() -> None:
    whole = parts_of(
        sketch_of(stem_section, "stem", {"section": "round", "interior": "hollow"}).ink
    )
    words = {"section": "round", "interior": "hollow between the nodes"}
    walled = parts_of(sketch_of(stem_section, "stem", words).ink)
    assert (whole["room"], walled["room"], walled["side"]) == (0, 3, 2)


def test_only_a_stretchy_thread_holds_the_halves_together() -> None:
    counts = {
        thread: parts_of(
            sketch_of(stem_section, "stem", {"section": "round", "inner thread": thread}).ink
        )
        for thread in ("stretchy thread", "no thread")
    }
    assert {t: (c["half"], c["thread"]) for t, c in counts.items()} == {
        "stretchy thread": (2, 1),
        "no thread": (2, 0),
    }


def test_the_scale_is_that_of_the_recorded_thickness() -> None:
    words = {"section": "round", "thickness": "3–5 mm"}
    assert sketch_of(stem_section, "stem", words, 100).scale == 25
    assert sketch_of(stem_section, "stem", {"section": "round"}, 100).scale is None


def test_what_is_drawn_is_said_in_words() -> None:
    words = {"section": "square", "interior": "hollow", "colour": "green"}
    sketch = sketch_of(stem_section, "stem", words)
    assert [c.words for c in sketch.shows] == ["section: square", "interior: hollow"]
    assert sketch.wants == ("ridges", "thickness")


def test_the_groove_of_a_leaf_stalk_is_on_its_upper_side() -> None:
    ink = sketch_of(stalk_section, "leaves", {"stalk section": "grooved above"}, 100).ink
    near = [p.imag for p in outline_of(ink).path.points(8) if abs(p.real) < 3]
    assert (round(min(y for y in near if y > 0)), round(min(near))) == (33, -50)


def test_a_winged_leaf_stalk_has_two_wings_to_its_sides() -> None:
    outline = outline_of(sketch_of(stalk_section, "leaves", {"stalk section": "winged"}, 100).ink)
    far = [p.real for p in outline.path.points(8) if abs(p.real) > 30]
    assert (sum(x > 0 for x in far) > 0, sum(x < 0 for x in far) > 0) == (True, True)
    assert min(p.imag for p in outline.path.points(8) if abs(p.real) > 30) > 0


@settings(max_examples=120, deadline=None)
@given(words_about("stem", STEM))
def test_a_stem_section_shows_exactly_what_it_says(words: dict[str, str]) -> None:
    assert faults_of(stem_section, "stem", words) == []


@settings(max_examples=60, deadline=None)
@given(words_about("leaves", STALK))
def test_a_stalk_section_shows_exactly_what_it_says(words: dict[str, str]) -> None:
    assert faults_of(stalk_section, "leaves", words) == []


@settings(max_examples=120, deadline=None)
@given(words_about("stem", STEM, ("section",)))
def test_no_outline_crosses_itself_and_drawing_twice_gives_the_same(words: dict[str, str]) -> None:
    told = told_of("stem", words)
    first, second = stem_section(told, 220), stem_section(told, 220)
    assert first == second
    assert first is not None
    assert crossing_outlines(first.ink) == []


def test_labels_that_no_section_shows_are_never_said_to_be_shown() -> None:
    words = {"section": "round", "posture": "erect", "colour": "green", "thorns": "prickles"}
    assert labels_shown(stem_section(told_of("stem", words), 100)) == {"section"}
