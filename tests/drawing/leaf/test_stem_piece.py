"""The piece of stem that carries a leaf."""

from __future__ import annotations

import pytest

from sallet.drawing.ink import Mark, plain
from sallet.drawing.leaf.stem_piece import LEAN, stem_piece


def test_a_stem_hides_what_lies_behind_it_and_is_open_at_both_ends() -> None:
    ink = stem_piece(3 + 4j, 100)
    assert [mark.pen for mark in ink if isinstance(mark, Mark)] == ["paper", "line", "line"]
    sides = [mark.path for mark in plain(ink) if mark.pen == "line"]
    assert [path.closed for path in sides] == [False, False]
    for path in sides:
        way = path.end - path.start
        assert way / abs(way) == pytest.approx(LEAN)
    middle = sum(path.start + path.end for path in sides) / 4
    assert middle == pytest.approx(3 + 4j)


def test_its_length_is_a_share_of_the_blade() -> None:
    (one, _) = (m.path for m in plain(stem_piece(0j, 100, 0.4)) if m.pen == "line")
    assert abs(one.end - one.start) == pytest.approx(80)
