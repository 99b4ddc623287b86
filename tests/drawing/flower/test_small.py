"""Flowers of a cluster are small, and have as many petals as recorded."""

from __future__ import annotations

from itertools import product
from typing import TYPE_CHECKING, Final

import pytest

from sallet.drawing.flower.flower import small_flower
from sallet.drawing.flower.tables import PLANS
from sallet.drawing.ink import plain
from sallet.drawing.svg import ink_svg
from sallet.drawing.told import specimen
from sallet.lesson.vocabulary_file import load_vocabulary

if TYPE_CHECKING:
    from collections.abc import Mapping

    from sallet.drawing.ink import Ink

VOCABULARY: Final = load_vocabulary()
TILTS: Final = range(4)
SHAPES: Final = tuple(
    product(
        ("round", "lance-shaped", "heart-shaped"),
        ("rounded", "pointed", "notched", "split almost to the base", "fringed"),
    )
)


def small(tilt: int, words: Mapping[str, str], size: float = 26) -> Ink | None:
    return small_flower(specimen(VOCABULARY, "flowers", **words), size, tilt)


def drawn(tilt: int, words: Mapping[str, str]) -> Ink:
    ink = small(tilt, words)
    assert ink is not None
    return ink


def petals(ink: Ink) -> int:
    return sum(mark.part == "petal" for mark in plain(ink))


@pytest.mark.parametrize("tilt", range(3))
@pytest.mark.parametrize("count", range(1, 7))
def test_as_many_petals_as_recorded(count: int, tilt: int) -> None:
    assert petals(drawn(tilt, {"petals": str(count)})) == count


@pytest.mark.parametrize("tilt", TILTS)
@pytest.mark.parametrize("count", ["1", "3", "5", "6", "7", "12", "40"])
def test_a_small_flower_takes_few_bytes(count: str, tilt: int) -> None:
    for shape, tip in SHAPES:
        ink = drawn(tilt, {"petals": count, "petal shape": shape, "petal tip": tip})
        assert len(ink_svg(ink, "x")) <= (600 if int(count) <= 12 else 1000)


@pytest.mark.parametrize("tilt", TILTS)
@pytest.mark.parametrize("shape", PLANS)
def test_every_shape_takes_few_bytes(shape: str, tilt: int) -> None:
    ink = small(tilt, {"shape": shape, "petals": "5", "ray florets": "13"})
    assert (ink is None) == (shape in {"catkin flower", "no petals to see"})
    assert ink is None or len(ink_svg(ink, "x")) <= 600


@pytest.mark.parametrize("tilt", range(3))
@pytest.mark.parametrize(
    "words",
    [
        {},
        {"petals": "none"},
        {"petals": "many"},
        {"petals": "5", "symmetry": "two-sided"},
        {"shape": "star"},
        {"shape": "daisy"},
        {"florets": "all straps", "ray florets": "none"},
    ],
    ids=str,
)
def test_nothing_is_guessed(words: dict[str, str], tilt: int) -> None:
    assert small(tilt, words) is None


@pytest.mark.parametrize("shape", [shape for shape, plan in PLANS.items() if plan != "face"])
def test_a_flower_drawn_larger_is_larger_by_as_much(shape: str) -> None:
    for tilt in TILTS:
        words = {"shape": shape, "petals": "5", "ray florets": "13"}
        one, two = small(tilt, words, 10), small(tilt, words, 20)
        if one and two:
            ends = [[p for m in plain(ink) for p in m.path.points()] for ink in (one, two)]
            assert ends[1] == pytest.approx([2 * p for p in ends[0]])


@pytest.mark.parametrize("tilt", TILTS)
def test_the_four_sides_differ(tilt: int) -> None:
    others = [drawn(other, {"petals": "5"}) for other in TILTS if other != tilt]
    assert drawn(tilt, {"petals": "5"}) not in others
