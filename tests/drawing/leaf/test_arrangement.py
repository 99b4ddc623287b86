"""How leaves are set on the stem, counted back from the drawing."""

from __future__ import annotations

from itertools import pairwise, product

import pytest

from helpers.drawings import parts_of
from helpers.leaves import NUMBERS, faults_of, leaves_told, values_of
from sallet.drawing.ink import Copy
from sallet.drawing.leaf.arrangement import POSTURES, WAYS, leaf_set


def copies(words: dict[str, str]) -> list[Copy]:
    """Return the leaves of a drawing, where they are put."""
    sketch = leaf_set(leaves_told(words), 150)
    assert sketch is not None
    return [one for one in sketch.ink if isinstance(one, Copy) and one.part == "leaf"]


def nodes(words: dict[str, str]) -> dict[float, int]:
    """Return how many leaves stand at each height of the stem."""
    heights = [round(one.place.at.imag, 3) for one in copies(words)]
    return {height: heights.count(height) for height in sorted(heights)}


def test_every_word_is_drawn() -> None:
    assert set(WAYS) == set(values_of("arrangement"))
    assert set(POSTURES) == set(values_of("posture")) - {"flat on the ground"}


@pytest.mark.parametrize(
    ("way", "at_a_node"),
    [("alternate", 1), ("two-ranked", 1), ("opposite", 2), ("crossed pairs", 2)],
)
def test_leaves_at_a_node_are_as_many_as_the_word_says(way: str, at_a_node: int) -> None:
    found = nodes({"arrangement": way})
    assert len(found) > 2
    assert set(found.values()) == {at_a_node}


def test_of_a_whorl_whose_number_is_not_recorded_two_leaves_are_sure() -> None:
    sketch = leaf_set(leaves_told({"arrangement": "whorled"}), 150)
    assert sketch is not None
    parts = parts_of(sketch.ink)
    assert (parts["leaf"], parts["unknown"]) == (6, 6)


@pytest.mark.parametrize("number", [3, 4, 5, 6, 8, 12])
def test_a_whorl_has_as_many_leaves_as_recorded(number: int) -> None:
    words = {"arrangement": "whorled", "leaves to a node": str(number)}
    assert set(nodes(words).values()) == {number}
    sketch = leaf_set(leaves_told(words), 150)
    assert sketch is not None
    assert parts_of(sketch.ink)["leaf"] == 3 * number


def test_opposite_leaves_stand_on_both_sides_and_alternate_ones_change_sides() -> None:
    def sides(way: str) -> list[bool]:
        leaves = sorted(copies({"arrangement": way}), key=lambda one: one.place.at.imag)
        return [one.place.put(10j).real > 0 for one in leaves]

    assert sides("two-ranked") == [False, True, False, True, False]
    assert all(one != other for one, other in zip(*[iter(sides("opposite"))] * 2, strict=True))
    assert 0 < sum(sides("alternate")) < 5


def test_nearly_opposite_leaves_stand_a_little_apart() -> None:
    heights = sorted(nodes({"arrangement": "nearly opposite"}))
    gaps = [b - a for a, b in pairwise(heights)]
    assert max(gaps[::2]) < 15 < min(gaps[1::2])


@pytest.mark.parametrize("way", ["basal", "rosette", "fanned"])
def test_ground_leaves_rise_at_the_ground(way: str) -> None:
    assert set(nodes({"arrangement": way})) == {0.0}
    sketch = leaf_set(leaves_told({"arrangement": way}), 150)
    assert sketch is not None
    assert parts_of(sketch.ink)["ground"] == 1


def test_leaves_crowded_at_the_top_stand_there() -> None:
    assert min(nodes({"arrangement": "crowded at the top"})) > 0.7 * 150


def test_leaves_are_held_at_the_angle_of_their_posture() -> None:
    def rise(posture: str) -> float:
        leaf = copies({"arrangement": "opposite", "posture": posture})[0]
        return (leaf.place.put(10j) - leaf.place.at).imag

    order = ["erect", "rising", "arching", "spreading", "bent back", "drooping"]
    rises = [rise(posture) for posture in order]
    assert rises == sorted(rises, reverse=True)
    assert rises[0] > 8
    assert rises[-1] < -8


def test_what_is_shown_is_what_is_said() -> None:
    postures, numbers = (*values_of("posture"), None), (*NUMBERS, None)
    for way, posture, number in product(values_of("arrangement"), postures, numbers):
        if number and posture and number != "5":
            continue
        words = {"arrangement": way, "posture": posture, "leaves to a node": number}
        assert faults_of(leaf_set, {k: v for k, v in words.items() if v}, 150) == []


def test_without_a_word_for_it_nothing_is_drawn() -> None:
    assert leaf_set(leaves_told({"posture": "erect"}), 150) is None
