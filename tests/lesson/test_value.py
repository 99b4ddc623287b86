"""Values: what they hold and how far they reach."""

from __future__ import annotations

import itertools
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from sallet.lesson.value import Item, Measure, Qualified, StateRange, Term, Window, Words
from sallet.source import Span

DAYS = st.integers(1, 365)


@given(DAYS, DAYS, DAYS)
def test_a_window_holds_the_days_it_lists_and_no_others(first: int, last: int, day: int) -> None:
    window = Window(first, last)
    assert (day in window) == (day in window.days)


@given(DAYS, DAYS)
def test_a_windows_days_run_from_its_first_to_its_last_across_the_new_year_if_need_be(
    first: int, last: int
) -> None:
    days = Window(first, last).days
    assert (days[0], days[-1]) == (first, last)
    assert all(b == a % 365 + 1 for a, b in itertools.pairwise(days))


def test_october_to_march_holds_new_years_day_and_not_midsummer() -> None:
    window = Window(274, 90)
    assert 1 in window
    assert 365 in window
    assert 172 not in window


@pytest.mark.parametrize(
    ("least", "most", "reach"),
    [(None, None, (10, 25)), (2, None, (2, 25)), (None, 30, (10, 30)), (2, 30, (2, 30))],
)
def test_a_measure_reaches_to_its_extremes(
    least: int | None, most: int | None, reach: tuple[int, int]
) -> None:
    low, high = Fraction(10), Fraction(25)
    ends = [None if end is None else Fraction(end) for end in (least, most)]
    measure = Measure(low, high, "mm", least=ends[0], most=ends[1])
    assert (measure.smallest, measure.largest) == tuple(map(Fraction, reach))


def test_a_range_has_two_ends_and_a_state_one() -> None:
    ovate, elliptic = Term("ovate", "egg-shaped"), Term("elliptic", "elliptic")
    assert not StateRange(("ovate",), (ovate,)).is_range
    assert StateRange(("elliptic", "ovate"), (elliptic, ovate)).is_range


def test_where_a_value_holds_leaves_out_how_often() -> None:
    qualifiers = (
        Qualified("lower leaves", "lower", "place"),
        Qualified("sometimes", "sometimes", "frequency"),
        Qualified("in odd Years"),
    )
    item = Item(Words("x"), "x", Span(0, 1), qualifiers)
    assert item.where == {"lower", "in odd years"}
    assert item.qualifier_names == {"lower", "sometimes"}
