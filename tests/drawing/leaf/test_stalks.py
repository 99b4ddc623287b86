"""How a leaf is carried: stalks as long as recorded."""

from __future__ import annotations

import pytest

from helpers.drawings import parts_of, points_of
from helpers.leaves import LEAVES, WHOLE, leaves_told
from sallet.drawing.leaf.holds import HOLDS
from sallet.drawing.leaf.leaf import leaf
from sallet.drawing.leaf.stalks import LONGEST, STALKS, WAYS, FootForm, foot, foot_form


def depth(words: dict[str, str]) -> float:
    """Return how far a leaf reaches below its blade, in lengths of the blade."""
    sketch = leaf(leaves_told(WHOLE | words), 200)
    assert sketch is not None
    return -min(p.imag for p in points_of(sketch.ink)) / 200


def test_every_hint_is_drawn() -> None:
    label = LEAVES.label("attachment")
    assert label is not None
    assert set(WAYS) == {s.draw["stalk"] for s in label.states if s.draw} - {"none"}
    assert set(WAYS) == set(STALKS)
    assert set(HOLDS) == {s.draw["base"] for s in label.states if "base" in s.draw}


@pytest.mark.parametrize(
    ("words", "share"),
    [
        ({"attachment": "stalked"}, 0.4),
        ({"attachment": "short-stalked"}, 0.12),
        ({"attachment": "stalked", "stalk against blade": "as long"}, 1.0),
        ({"attachment": "stalked", "stalk against blade": "much shorter"}, 0.3),
        ({"attachment": "stalked", "stalk length": "5 cm", "length": "10 cm"}, 0.5),
        ({"attachment": "stalked", "stalk length": "10 cm", "length": "10 cm",
          "stalk against blade": "much shorter"}, 1.0),
        ({"attachment": "winged stalk", "stalk length": "5 cm", "length": "10 cm"}, 0.5),
    ],
)  # fmt: skip
def test_a_stalk_is_as_long_as_recorded(words: dict[str, str], share: float) -> None:
    assert depth(words) == pytest.approx(share, abs=0.01)


def test_a_very_long_stalk_is_broken_and_says_so() -> None:
    long = {"attachment": "stalked", "stalk length": "30 cm", "length": "10 cm"}
    sketch = leaf(leaves_told(WHOLE | long), 200)
    assert sketch is not None
    assert parts_of(sketch.ink)["break"] == 2
    assert LONGEST < depth(long) < 3
    longer = long | {"stalk length": "38 cm"}
    assert depth(longer) > depth(long)


def test_a_stalk_length_without_the_length_of_the_blade_draws_nothing() -> None:
    told = leaves_told({"attachment": "stalked", "stalk length": "5 cm"})
    assert foot_form(told, None).share is None


def test_what_carries_the_blade_is_dotted_where_it_is_not_recorded() -> None:
    (mark,) = foot(FootForm(), 200).behind
    assert getattr(mark, "pen", "") == "dotted"


@pytest.mark.parametrize(
    ("attachment", "part", "number"),
    [
        ("stalked", "stalk", 1), ("winged stalk", "wing", 1), ("sheathing", "sheath", 1),
        ("shield-like", "stalk", 2), ("clasping", "ears", 1), ("running down the stem", "wing", 2),
        ("pierced by the stem", "hole", 1), ("joined in pairs", "hole", 1), ("stalkless", "stalk", 0),
    ],
)  # fmt: skip
def test_parts_are_those_of_the_word(attachment: str, part: str, number: int) -> None:
    sketch = leaf(leaves_told(WHOLE | {"attachment": attachment}), 200)
    assert sketch is not None
    assert parts_of(sketch.ink)[part] == number
