"""How long rays can be beside the width of their umbel."""

from __future__ import annotations

import pytest

from sallet.drawing.inflorescence.rays import SIMPLE, can_rise, half_of_little


def test_rays_that_cannot_be_as_long_as_told_are_not_drawn_so() -> None:
    assert [can_rise(ratio, None) for ratio in (0.3, 0.6, 3.0)] == [False, True, False]
    assert [can_rise(ratio, 12) for ratio in (0.3, 0.6, 3.0)] == [False, True, False]


@pytest.mark.parametrize("count", [2, 5, 12, 40])
def test_little_umbels_of_many_rays_are_smaller_and_none_takes_more_than_its_share(
    count: int,
) -> None:
    assert half_of_little(count + 1) <= half_of_little(count) <= 0.15
    assert 0.5 - half_of_little(count) > 0.3


def test_an_umbel_of_single_flowers_reaches_less_far_than_its_width() -> None:
    assert SIMPLE < 0.5
