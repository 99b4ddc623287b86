"""The strip of a card: bars as parts of the year, in rows, with words that say the same."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise
from typing import TYPE_CHECKING, Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from helpers.rows import not_sure_from, row_of, stretch_of
from sallet.cards.strip import strip_data
from sallet.lesson.value import Window
from sallet.season.strip import NOT_SURE, strip_words

if TYPE_CHECKING:
    from sallet.season.here import Kind, Row

DAYS = st.integers(1, 365)
SOFT = st.tuples(st.integers(0, 182), st.integers(0, 182))


def days_of(bars: list[dict[str, Any]], look: str) -> list[tuple[int, int]]:
    """Return the bars of a look, from their first to their last day."""
    found = [(bar["from"] * 365 + 1, bar["to"] * 365) for bar in bars if bar["look"] == look]
    days = [(round(first), round(last)) for first, last in found]
    assert [day for pair in days for day in pair] == pytest.approx(
        [d for pair in found for d in pair]
    )
    return days


def bars_of(row: Row) -> list[dict[str, Any]]:
    """Return the bars of a row that stands alone."""
    bars = strip_data([row])["rows"][0]["bars"]
    assert isinstance(bars, list)
    return bars


@pytest.mark.parametrize(
    ("window", "days"),
    [(Window(1, 365), [(1, 365)]),
     (Window(152, 181), [(152, 181)]),
     (Window(274, 90), [(274, 365), (1, 90)]),
     (Window(365, 1), [(365, 365), (1, 1)])],
)  # fmt: skip
def test_a_bar_reaches_from_the_first_day_to_the_end_of_the_last(
    window: Window, days: list[tuple[int, int]]
) -> None:
    assert days_of(bars_of(row_of("leaves", "eaten", stretch_of(window))), "eaten") == days


@pytest.mark.parametrize("kind", ["eaten", "seen", "harm"])
def test_each_kind_has_a_look_of_its_own(kind: Kind) -> None:
    assert {bar["look"] for bar in bars_of(row_of("x", kind, stretch_of(Window(9, 99))))} == {kind}


def test_uncertain_days_are_soft_at_either_end_of_a_shorter_firm_bar() -> None:
    bars = bars_of(row_of("leaves", "seen", stretch_of(Window(60, 151), (5, 5))))
    assert days_of(bars, "seen") == [(65, 146)]
    assert days_of(bars, "soft") == [(55, 64), (147, 156)]


def test_days_that_are_not_sure_break_the_bar_and_have_crosses_below_what_is_eaten() -> None:
    eaten = not_sure_from(row_of("leaves", "eaten", stretch_of(Window(60, 151))), 60, 105)
    roots = row_of("roots", "eaten", stretch_of(Window(305, 31)))
    flowers = row_of("flowers", "seen", stretch_of(Window(110, 160)))
    rows = strip_data([eaten, flowers, roots])["rows"]
    assert [row["name"] for row in rows] == ["eat leaves", "eat roots", NOT_SURE, "flowers"]
    assert days_of(rows[0]["bars"], "doubt") == [(60, 105)]
    assert days_of(rows[0]["bars"], "eaten") == [(106, 151)]
    assert days_of(rows[2]["bars"], "cross") == [(60, 105)]


def test_days_that_are_taken_out_have_their_crosses_though_no_bar_is_left() -> None:
    taken_out = not_sure_from(row_of("roots", "eaten"), 335, 365)
    data = strip_data([taken_out, row_of("flowers", "seen", stretch_of(Window(121, 151)))])
    assert [row["name"] for row in data["rows"]] == [NOT_SURE, "flowers"]
    assert days_of(data["rows"][0]["bars"], "cross") == [(335, 365)]
    assert data["words"] == "flowers: May; not yet sure: December."


def test_crosses_run_over_the_new_year_in_two_pieces() -> None:
    row = not_sure_from(row_of("roots", "eaten", stretch_of(Window(305, 60))), 1, 10)
    late = not_sure_from(row_of("buds", "eaten", stretch_of(Window(305, 60))), 360, 365)
    crosses = strip_data([row, late])["rows"][2]["bars"]
    assert days_of(crosses, "cross") == [(360, 365), (1, 10)]


def test_what_cannot_be_read_has_no_row_and_no_bar() -> None:
    both = row_of("leaves", "seen", stretch_of(None), stretch_of(Window(60, 90)))
    rows = strip_data([row_of("flowers", "seen", stretch_of(None)), both])["rows"]
    assert [(row["name"], len(row["bars"])) for row in rows] == [("leaves", 1)]


def test_the_months_are_as_long_as_they_are_and_fill_the_year() -> None:
    months = strip_data([])["months"]
    assert "".join(letter for letter, _ in months) == "JFMAMJJASOND"
    lengths = [round(share * 365) for _, share in months]
    assert lengths == [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]
    assert sum(share for _, share in months) == pytest.approx(1)


def test_the_words_are_those_of_the_page_s_strip() -> None:
    rows = [row_of("leaves", "eaten", stretch_of(Window(60, 151)))]
    assert strip_data(rows)["words"] == strip_words(rows) == "eat leaves: March to May."


@given(DAYS, DAYS, SOFT, st.sampled_from(["seen", "eaten", "harm"]), st.frozensets(DAYS))
def test_firm_bars_lie_in_the_year_and_overlap_nowhere(
    first: int, last: int, soft: tuple[int, int], kind: Kind, doubt: frozenset[int]
) -> None:
    window = Window(first, last)
    most = (len(window.days) - 1) // 2
    stretch = stretch_of(window, (min(soft[0], most), min(soft[1], most)))
    row = replace(
        row_of("leaves", kind, stretch), not_sure=doubt if kind == "eaten" else frozenset()
    )
    bars = next(r["bars"] for r in strip_data([row])["rows"] if r["name"] != NOT_SURE)
    assert all(0 <= bar["from"] < bar["to"] <= 1 for bar in bars)
    firm = sorted((bar["from"], bar["to"]) for bar in bars if bar["look"] != "soft")
    assert all(a[1] <= b[0] for a, b in pairwise(firm))
    shown = {d for look in (kind, "doubt") for a, b in days_of(bars, look) for d in range(a, b + 1)}
    assert shown == set((stretch.firm or window).days)
