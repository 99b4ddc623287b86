"""A path cut at heights."""

from __future__ import annotations

import pytest

from sallet.drawing.curves import circle, straight
from sallet.drawing.leaf.cutting import parted


def test_a_circle_is_parted_into_what_lies_between_two_heights_and_what_does_not() -> None:
    inner, outer = parted(circle(0j, 10), -5, 5)
    assert all(-5.001 <= p.imag <= 5.001 for path in inner for p in path.points())
    assert all(abs(p.imag) >= 4.999 for path in outer for p in path.points())
    assert all(abs(abs(p) - 10) < 0.01 for path in (*inner, *outer) for p in path.points())


def test_the_parts_together_are_the_whole() -> None:
    path = straight(0j, 10j, 10 + 10j, 10 + 0j)
    inner, outer = parted(path, 2, 8)
    length = sum(abs(p.end - p.start) for p in (*inner, *outer) if len(p.pieces) == 1)
    ends = [point for path in inner for point in (path.start, path.end)]
    assert ends == pytest.approx([2j, 8j, 10 + 8j, 10 + 2j])
    assert length + 14 == pytest.approx(30)


def test_a_path_between_the_heights_stays_whole() -> None:
    path = straight(0j, 1 + 1j, 2 + 0j)
    assert parted(path, -1, 2) == ([path], [])
