"""Panicles and tassels."""

from __future__ import annotations

from typing import Final

import pytest

from sallet.drawing.inflorescence.branched import BREADTHS
from sallet.drawing.inflorescence.inflorescence import inflorescence
from sallet.drawing.ink import Ink, Mark, plain
from sallet.drawing.told import specimen
from sallet.lesson.vocabulary_file import load_vocabulary

VOCABULARY: Final = load_vocabulary()


def drawn(plan: str, **words: str) -> Ink:
    sketch = inflorescence(specimen(VOCABULARY, "flowers", inflorescence=plan, **words), 200)
    assert sketch is not None
    return sketch.ink


def reach(ink: Ink) -> list[float]:
    """Return how far each branch reaches aside, from the lowest to the highest."""
    paths = [one.path for one in ink if isinstance(one, Mark) and one.part == "branch"]
    paths.sort(key=lambda path: path.start.imag)
    return [abs(path.end.real - path.start.real) for path in paths]


def test_a_cone_narrows_upwards_and_a_cylinder_does_not() -> None:
    cone = reach(drawn("panicle", main_branches="14", cluster_shape="cone"))
    assert max(cone[:5]) > 3 * max(cone[-3:])
    cylinder = reach(drawn("panicle", main_branches="14", cluster_shape="cylinder"))
    assert max(cylinder[:5]) < 1.3 * max(cylinder[-5:])


def test_every_outline_has_its_own_breadths() -> None:
    assert len(set(BREADTHS.values())) == len(BREADTHS)


@pytest.mark.parametrize("plan", ["panicle", "branched spike"])
def test_branches_are_dotted_only_where_their_number_is_not_recorded(plan: str) -> None:
    for words, pen in (({"main branches": "6"}, "line"), ({}, "dotted")):
        marks = [one for one in drawn(plan, **words) if isinstance(one, Mark)]
        assert {one.pen for one in marks if one.part == "branch"} == {pen}


def test_a_tassel_has_too_many_flowers_to_count() -> None:
    assert sum(mark.path.closed for mark in plain(drawn("branched spike", main_branches="3"))) > 30
