"""The bar that says how long things are in life."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from sallet.drawing.scale_bar import Bar, scale_bar


@pytest.mark.parametrize(
    ("scale", "bar"),
    [
        (1.0, Bar(50.0, "5\u00a0cm")),
        (2.0, Bar(40.0, "2\u00a0cm")),
        (10.0, Bar(50.0, "5\u00a0mm")),
        (0.1, Bar(50.0, "50\u00a0cm")),
        (62.0, Bar(62.0, "1\u00a0mm")),
    ],
)
def test_a_bar_is_one_two_or_five_of_something_and_fits(scale: float, bar: Bar) -> None:
    assert scale_bar(scale).units == pytest.approx(bar.units)
    assert scale_bar(scale).words == bar.words


@given(scale=st.floats(0.002, 3000))
def test_a_bar_is_never_too_long_nor_too_short_to_read(scale: float) -> None:
    assert 62 / 2.5 - 1e-6 <= scale_bar(scale).units <= 62
