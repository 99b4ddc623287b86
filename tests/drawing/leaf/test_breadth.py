"""Half the width of an outline by height: one home for all that draw within a blade."""

from __future__ import annotations

import pytest

from sallet.drawing.leaf.breadth import Breadth, breadth
from sallet.drawing.leaf.run import Run

LOBED = Breadth([0j, 4 - 2j, 10 + 0j, 10 + 6j, 5 + 7j, 8 + 8j, 16j])


@pytest.mark.parametrize(
    ("height", "half"), [(-3, 0), (-1, 7), (0, 10), (3, 10), (6.5, 7.5), (7, 5), (12, 4), (17, 0)]
)
def test_the_outermost_edge_counts_at_every_height(height: float, half: float) -> None:
    assert LOBED.at(height) == pytest.approx(half)


def test_its_ends_and_its_greatest_width() -> None:
    assert (LOBED.low, LOBED.top, LOBED.wide) == (-2, 16, 10)


def test_it_rises_to_a_share_of_its_width() -> None:
    triangle = Breadth([0j, 10 + 10j, 20j])
    assert triangle.rises_to(0.5) == pytest.approx(5, abs=0.2)
    assert triangle.rises_to(2) == 0


def test_runs_join_to_one_half() -> None:
    runs = (Run((0j, 4 + 2j)), Run((4 + 2j, 6j)))
    assert [breadth(runs).at(y) for y in (1, 2, 4)] == [2, 4, 2]
