"""The tops of umbels and the length of their rays."""

from __future__ import annotations

import itertools
import math
from typing import Final

import pytest

from sallet.drawing.inflorescence.inflorescence import inflorescence
from sallet.drawing.inflorescence.rays import can_rise
from sallet.drawing.inflorescence.umbels import TOPS, ends
from sallet.drawing.ink import Mark
from sallet.drawing.told import specimen
from sallet.lesson.vocabulary_file import load_vocabulary

VOCABULARY: Final = load_vocabulary()


def heights(top: str) -> list[float]:
    """Return how high rays end, from the middle to the edge."""
    tips = sorted(ends(20, TOPS[top], 100), key=lambda tip: math.hypot(tip.x, tip.y))
    return [tip.z for tip in tips]


def ray_lengths(**words: str) -> float:
    sketch = inflorescence(
        specimen(VOCABULARY, "flowers", inflorescence="umbel", rays="9", **words), 200
    )
    assert sketch is not None
    rays = [m.path for m in sketch.ink if isinstance(m, Mark) and m.part == "ray"]
    return max(abs(path.end - path.start) for path in rays)


def test_a_flat_top_is_level_a_domed_one_higher_and_a_hollow_one_lower_in_the_middle() -> None:
    assert len(set(heights("flat"))) == 1
    assert heights("domed") == sorted(heights("domed"), reverse=True)
    assert heights("hollow") == sorted(heights("hollow"))


def test_a_dome_is_rounder_than_a_top_of_no_recorded_outline() -> None:
    assert max(heights("domed")) - min(heights("domed")) > max(heights("")) - min(heights(""))


def test_the_rays_of_a_ball_are_all_of_one_length_and_reach_below_the_middle() -> None:
    tips = ends(30, TOPS["ball"], 100)
    assert {round(tip.length, 6) for tip in tips} == {100}
    assert min(tip.z for tip in tips) < -50


@pytest.mark.parametrize("top", ["", "flat", "domed", "hollow"])
def test_an_umbel_is_as_wide_as_asked(top: str) -> None:
    assert max(abs(tip.x) for tip in ends(12, TOPS[top], 100)) == pytest.approx(100)


def test_longer_rays_beside_the_width_make_a_steeper_umbel() -> None:
    lengths = [ray_lengths(cluster_width="6 cm", ray_length=f"{ray} mm") for ray in (35, 42, 50)]
    assert lengths == sorted(lengths)
    assert len(set(lengths)) == 3


def test_rays_that_cannot_be_as_long_as_told_are_not_drawn_so() -> None:
    assert [can_rise(ratio, None) for ratio in (0.3, 0.6, 3.0)] == [False, True, False]
    assert [can_rise(ratio, 12) for ratio in (0.3, 0.6, 3.0)] == [False, True, False]
    told = {"cluster_width": "6 cm"}
    assert ray_lengths(**told, ray_length="30 cm") == ray_lengths(**told)


def test_every_outline_differs() -> None:
    assert all(ends(9, a, 1) != ends(9, b, 1) for a, b in itertools.combinations(TOPS.values(), 2))
