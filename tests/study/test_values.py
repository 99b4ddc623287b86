"""Whether two values of one character can be met on the same plant."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from sallet.lesson.value import Absent, Count, Measure, StateRange, Term, Value, Words
from sallet.lesson.vocabulary import Label, State
from sallet.study.values import can_both_hold

COLOUR = Label(
    "flowers", "colour", "states", "the colour", "colour",
    states=(
        State("white", "white", excludes=frozenset({"red"})),
        State("pink", "pink"),
        State("red", "red", excludes=frozenset({"white"})),
        State("unmarked", "without marks"),
    ),
)  # fmt: skip


def states(*names: str) -> StateRange:
    """Return a state, or the range from the first to the last."""
    ends = (names[0], names[-1]) if len(names) > 1 else names
    return StateRange(names, tuple(Term(name, name) for name in ends))


def millimetres(low: int, high: int, *, about: bool = False, most: int | None = None) -> Measure:
    """Return a length."""
    longest = None if most is None else Fraction(most)
    return Measure(Fraction(low), Fraction(high), "mm", most=longest, about=about)


@pytest.mark.parametrize(
    ("one", "other", "both"),
    [
        (states("white"), states("red"), False),
        (states("white"), states("white"), True),
        (states("white"), states("pink"), True),
        (states("white", "red"), states("pink"), True),
        (states("green"), states("white"), True),
        (Absent(), states("white"), False),
        (Absent(), states("unmarked"), True),
        (Absent(), Absent(), True),
        (Absent(), Count(5, 5), False),
        (Absent(), Count(0, 3), True),
        (Absent(), Words("some"), True),
        (Absent(), millimetres(1, 2), False),
        (Count(3, 5), Count(5, 7), True),
        (Count(3, 4), Count(5, None), False),
        (Count(11, None), Count(20, None), True),
        (Count(20, 20, about=True), Count(24, 24), True),
        (millimetres(1, 2), millimetres(2, 3), True),
        (millimetres(1, 2), millimetres(3, 4), False),
        (millimetres(1, 2, most=3), millimetres(3, 4), True),
        (millimetres(12, 12, about=True), millimetres(14, 15), True),
        (millimetres(12, 12, about=True), millimetres(16, 17), False),
        (Words("anything"), states("white"), True),
        (states("white"), Count(1, 1), True),
    ],
)
def test_values_that_can_and_cannot_meet(one: Value, other: Value, both: bool) -> None:  # noqa: FBT001
    assert can_both_hold(one, other, COLOUR) is both
    assert can_both_hold(other, one, COLOUR) is both


_lengths = st.tuples(st.integers(0, 50), st.integers(0, 50)).map(
    lambda pair: millimetres(min(pair), max(pair))
)


@given(_lengths, _lengths)
def test_lengths_that_share_a_point_can_meet(one: Measure, other: Measure) -> None:
    share = max(one.low, other.low) <= min(one.high, other.high)
    assert can_both_hold(one, other, COLOUR) is share
