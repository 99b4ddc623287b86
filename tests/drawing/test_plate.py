"""Figures arranged on a sheet."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from sallet.drawing.curves import straight
from sallet.drawing.figures import Figure
from sallet.drawing.ink import Mark
from sallet.drawing.plate import FOOT, GAP, lettered, plate
from sallet.drawing.sketch import Sketch
from sallet.drawing.told import Told
from sallet.lesson.vocabulary_file import load_vocabulary

LEAVES = load_vocabulary().subject("leaves")
SIZES = st.lists(st.tuples(st.integers(10, 300), st.integers(10, 300)), min_size=1, max_size=30)


def figure(width: float, height: float, scale: float | None = None) -> Figure:
    """Return a figure that takes so much room, its foot at the origin."""
    ink = (Mark(straight(0j, complex(width, 0), complex(width, height), closed=True)),)
    return Figure("leaves", Sketch("leaf", ink, (), scale), None, Told(LEAVES, {}))


def test_letters_go_from_a_to_z_and_then_double() -> None:
    letters = [letter for letter, _ in lettered([figure(10, 10)] * 28)]
    assert letters[:2] == ["a", "b"]
    assert letters[25:] == ["z", "aa", "bb"]


@given(SIZES)
def test_no_figure_covers_another_or_leaves_the_sheet(sizes: list[tuple[int, int]]) -> None:
    sheet = plate([figure(*size) for size in sizes], 400)
    boxes = []
    for cell in sheet.cells:
        room = cell.figure.sketch.box
        left, right = cell.at.real + room.left, cell.at.real + room.right
        low, high = cell.at.imag + room.bottom, cell.at.imag + room.top
        assert left >= -0.01
        assert right <= 400.01
        assert -sheet.height - 0.01 <= low - FOOT
        assert high <= 0.01
        boxes.append((left, right, low - FOOT, high))
    for index, one in enumerate(boxes):
        for other in boxes[index + 1 :]:
            beside = one[1] <= other[0] + 0.01 or other[1] <= one[0] + 0.01
            above = one[2] >= other[3] - 0.01 or other[2] >= one[3] - 0.01
            assert beside or above


@given(SIZES)
def test_the_order_is_that_of_reading(sizes: list[tuple[int, int]]) -> None:
    cells = plate([figure(*size) for size in sizes], 400).cells
    for one, other in pairwise(cells):
        assert other.foot.imag < one.foot.imag or other.foot.real > one.foot.real


def test_a_row_stands_on_one_line() -> None:
    cells = plate([figure(50, 40), figure(50, 200)], 400).cells
    assert cells[0].foot.imag == pytest.approx(cells[1].foot.imag)


def test_what_does_not_fit_beside_goes_below() -> None:
    cells = plate([figure(200, 40), figure(200, 40)], 400 + GAP - 1).cells
    assert cells[1].foot.imag == pytest.approx(cells[0].foot.imag - 41.6 - FOOT - GAP / 2)


def test_a_figure_of_known_size_has_a_bar() -> None:
    cells = plate([figure(50, 40), figure(50, 40, scale=2.0)], 400).cells
    assert cells[0].bar is None
    assert cells[1].bar is not None
    assert (cells[1].bar.units, cells[1].bar.words) == (40.0, "2\u00a0cm")


def test_no_figures_make_an_empty_sheet() -> None:
    assert plate([], 400).cells == ()


def test_letters_and_bars_of_neighbours_do_not_meet() -> None:
    cells = plate([figure(20, 40, scale=30.0)] * 12, 400).cells
    for one, other in pairwise(cells):
        if one.letter_at.imag == other.letter_at.imag:
            assert one.bar is not None
            end = one.bar_at.real + one.bar.units + 6 * len(one.bar.words)
            assert end < other.letter_at.real - 4
