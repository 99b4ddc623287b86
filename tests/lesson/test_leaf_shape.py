"""Shapes by length and width.

The outside source is the table of Radford and others 1974, Vascular Plant Systematics,
chapter 6 (after Taxon 11, 1962), read in a copy of it.
"""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from sallet.lesson.leaf_shape import Ratio, hull, ratio_measured, ratio_of, shape_for, widened
from sallet.lesson.value import Measure
from sallet.lesson.vocabulary import State
from sallet.lesson.vocabulary_file import load_vocabulary

SHAPE = load_vocabulary().label("leaves", "shape")
assert SHAPE is not None


def shape(name: str) -> State:
    """Return a shape of the vocabulary."""
    assert SHAPE is not None
    state = SHAPE.state(name)
    assert state is not None
    return state


def with_ratio(words: str) -> State:
    """Return a shape of which only the ratio is known."""
    return State("any", "a shape", draw={"ratio": words})


TABLE = [
    ("linear", 12.0, None),
    ("narrowly elliptic", 3.0, 6.0), ("narrowly oblong", 3.0, 6.0),
    ("lanceolate", 3.0, 6.0), ("oblanceolate", 3.0, 6.0),
    ("elliptic", 1.5, 2.0), ("oblong", 1.5, 2.0), ("ovate", 1.5, 2.0), ("obovate", 1.5, 2.0),
    ("widely elliptic", 1.2, 1.2), ("circular", 1.0, 1.0), ("square", 1.0, 1.0),
]  # fmt: skip
"""Rows of Radford's table: length:width of >12:1, 6:1–3:1, 2:1–3:2, 6:5 and 1:1."""


@pytest.mark.parametrize(("name", "low", "high"), TABLE)
def test_the_vocabulary_holds_the_classes_of_the_table(
    name: str, low: float, high: float | None
) -> None:
    assert ratio_of(shape(name)) == Ratio(low, high)


@pytest.mark.parametrize(
    ("name", "widest"),
    [("elliptic", "middle"), ("oblong", "parallel"), ("ovate", "below"), ("obovate", "above")],
)
def test_the_vocabulary_holds_the_columns_of_the_table(name: str, widest: str) -> None:
    assert shape(name).draw["widest"] == widest


@pytest.mark.parametrize(
    ("number", "like", "name"),
    [(20, "elliptic", ""), (14, "oblong", "linear"), (4, "ovate", "lanceolate"),
     (4, "obovate", "oblanceolate"), (4, "elliptic", "narrowly elliptic"),
     (1.8, "lanceolate", "ovate"), (1.8, "oblanceolate", "obovate"),
     (1.2, "narrowly elliptic", "widely elliptic"), (1, "elliptic", "circular"),
     (0.6, "circular", "oblate"), (1.3, "lanceolate", "widely ovate")],
)  # fmt: skip
def test_a_measured_ratio_finds_its_class(number: float, like: str, name: str) -> None:
    assert SHAPE is not None
    assert shape_for(number, shape(like), SHAPE) == name


@pytest.mark.parametrize(
    ("written", "low", "high"),
    [("2–1.5", 1.2, 2.5),  # down to a quarter past 1.5, up to the middle of the gap 2–3
     ("6–3", 2.4, 9.0),  # a quarter past 3; the middle of the gap 6–12
     (">12", 9.0, None),
     ("1", 0.8, 1.25),
     ("1.2", 0.96, 1.5)],
)  # fmt: skip
def test_the_tie_rule(written: str, low: float, high: float | None) -> None:
    """Each class reaches to the middle of the gap, and at the least a quarter past its end."""
    ratio = ratio_of(with_ratio(written))
    assert ratio is not None
    found = widened(ratio)
    assert found.low == pytest.approx(low)
    assert found.high == (None if high is None else pytest.approx(high))


def test_several_shapes_allow_all_between_them() -> None:
    found = hull([shape("ovate"), shape("lanceolate")])
    assert found == Ratio(1.5, 6)
    assert found.holds(2.5)
    assert not found.holds(1)


def test_a_shape_without_a_ratio_allows_anything() -> None:
    assert hull([shape("ovate"), State("odd", "of no known ratio")]) is None


def test_middles_are_compared_and_extremes_left_out() -> None:
    length = Measure(Fraction(100), Fraction(200), "mm", most=Fraction(900))
    width = Measure(Fraction(20), Fraction(40), "mm")
    assert ratio_measured(length, width) == 5


def test_no_width_gives_no_ratio() -> None:
    nothing = Measure(Fraction(0), Fraction(0), "mm")
    assert ratio_measured(nothing, nothing) is None


@pytest.mark.parametrize("words", ["", "wide", "2-1", "1–", "–"])
def test_what_is_no_ratio_is_none(words: str) -> None:
    assert ratio_of(with_ratio(words)) is None


@given(st.floats(0.1, 40), st.floats(0.1, 40))
def test_the_tie_rule_only_widens(one: float, other: float) -> None:
    ratio = Ratio(min(one, other), max(one, other))
    wide = widened(ratio)
    assert wide.low < ratio.low
    assert wide.high is not None
    assert ratio.high is not None
    assert wide.high > ratio.high
