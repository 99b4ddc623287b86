"""How leaves without stalks hold their stems."""

from __future__ import annotations

import pytest

from helpers.drawings import points_of
from sallet.drawing.ink import plain
from sallet.drawing.leaf.holds import HOLDS


@pytest.mark.parametrize("kind", HOLDS)
def test_a_hold_lies_about_the_foot_of_the_blade(kind: str) -> None:
    held = HOLDS[kind](200)
    points = points_of((*held.behind, *held.before))
    assert all(abs(point) < 0.62 * 200 for point in points)
    assert min(p.imag for p in points) < 0


@pytest.mark.parametrize(
    ("kind", "before"), [("clasp", True), ("pierced", True), ("decurrent", False)]
)
def test_what_comes_before_the_blade_hides_it(kind: str, before: bool) -> None:  # noqa: FBT001
    held = HOLDS[kind](200)
    assert bool(held.before) == before
    if before:
        assert next(iter(plain(held.before))).pen == "paper"


def test_a_joined_pair_is_the_same_left_and_right() -> None:
    held = HOLDS["joined"](200)
    for mark in plain((*held.behind, *held.before)):
        if mark.path.closed:
            across = [p.real for p in mark.path.points()]
            assert max(across) == pytest.approx(-min(across))
    ends = [
        round(m.path.end.real, 6) for m in plain((*held.behind, *held.before)) if not m.path.closed
    ]
    assert sorted(ends) == sorted(-x for x in ends)
    assert len(ends) == 4
