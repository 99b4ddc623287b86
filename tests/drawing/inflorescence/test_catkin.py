"""Catkins."""

from __future__ import annotations

from typing import Final

import pytest

from sallet.drawing.inflorescence.inflorescence import inflorescence
from sallet.drawing.ink import Box, Copy, box
from sallet.drawing.told import specimen
from sallet.lesson.vocabulary_file import load_vocabulary

VOCABULARY: Final = load_vocabulary()


def scales(**words: str) -> tuple[Copy, ...]:
    sketch = inflorescence(specimen(VOCABULARY, "flowers", inflorescence="catkin", **words), 200)
    assert sketch is not None
    return tuple(one for one in sketch.ink if isinstance(one, Copy) and one.part == "scale")


def room(**words: str) -> Box:
    return box(scales(**words))


def test_it_hangs_unless_it_is_told_to_stand() -> None:
    assert room().top < 5
    assert room(posture="hanging") == room()
    assert room(posture="upright").bottom > -5


@pytest.mark.parametrize("posture", ["upright", "hanging"])
def test_it_is_as_long_as_asked(posture: str) -> None:
    assert room(posture=posture).height == pytest.approx(200, rel=0.05)


def test_a_cone_is_broader_at_its_foot_than_a_cylinder() -> None:
    assert room(cluster_shape="cone").width > 1.3 * room(cluster_shape="cylinder").width


def test_scales_nearer_the_foot_lie_on_those_before_them() -> None:
    # A tile hides the top of the one below: it is laid down later.
    heights = [copy.place.at.imag for copy in scales()]
    assert heights == sorted(heights)


def test_all_scales_are_one_piece() -> None:
    assert len({copy.piece for copy in scales()}) == 1
