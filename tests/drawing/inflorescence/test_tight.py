"""Heads, globes, rings, knots, spikelets and single flowers."""

from __future__ import annotations

from itertools import combinations
from typing import Final

import pytest

from sallet.drawing.inflorescence.inflorescence import inflorescence
from sallet.drawing.ink import Box, Copy, Ink, box
from sallet.drawing.told import specimen
from sallet.lesson.vocabulary_file import load_vocabulary

VOCABULARY: Final = load_vocabulary()


def drawn(plan: str, **words: str) -> Ink:
    sketch = inflorescence(specimen(VOCABULARY, "flowers", inflorescence=plan, **words), 200)
    assert sketch is not None
    return sketch.ink


def copies(ink: Ink) -> tuple[Copy, ...]:
    return tuple(one for one in ink if isinstance(one, Copy))


def room(plan: str, **words: str) -> Box:
    return box(copies(drawn(plan, **words)))


def test_a_globe_is_as_high_as_wide_and_a_head_is_not() -> None:
    globe, head = room("globe"), room("head")
    assert globe.height == pytest.approx(globe.width, rel=0.08)
    assert head.height < 0.75 * head.width


def test_the_outlines_of_a_head_go_from_flat_to_tall() -> None:
    heights = [
        room("head", cluster_shape=shape).height for shape in ("flat", "domed", "cone", "cylinder")
    ]
    assert heights == sorted(heights)


def test_so_many_flowers_are_packed_that_nobody_counts_them() -> None:
    for plan in ("head", "globe"):
        assert len(copies(drawn(plan))) >= 60


def test_a_whorled_stem_goes_on_above_and_below() -> None:
    dotted = [one for one in drawn("whorls") if not isinstance(one, Copy) and one.pen == "dotted"]
    assert len(dotted) == 4


def test_the_flowers_of_a_knot_are_close_together() -> None:
    knot = room("cluster in the leaf axil", flowers_in_a_cluster="3")
    corymb = room("corymb", flowers_in_a_cluster="3")
    assert knot.width < corymb.width


def test_a_spikelet_has_two_empty_scales_at_its_foot() -> None:
    ink = copies(drawn("spikelet", flowers_in_a_cluster="4"))
    assert [one.part for one in ink] == ["flower"] * 4 + ["glume"] * 2


def test_a_single_flower_is_held_as_told() -> None:
    figures = [
        drawn("single", petals="5", posture=posture)
        for posture in ("upright", "facing outwards", "nodding", "hanging")
    ]
    assert all(a != b for a, b in combinations(figures, 2))
    turns = [copies(figure)[0].place.turn.real for figure in figures]
    assert turns[0] == pytest.approx(1, abs=0.05)
    assert turns[3] == pytest.approx(-1)


def test_flowers_in_pairs_stand_to_either_side() -> None:
    left, right = sorted(one.place.at.real for one in copies(drawn("in pairs")))
    assert left == pytest.approx(-right)
    assert right > 30
