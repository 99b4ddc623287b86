"""Numbers that a drawing can show."""

from __future__ import annotations

import pytest

from helpers.leaves import leaves_told
from sallet.drawing.leaf.counts import fitting


def is_odd(number: int) -> bool:
    """Return whether a number is odd."""
    return number % 2 == 1


@pytest.mark.parametrize(
    ("recorded", "drawn"),
    [("5–7", "5"), ("5–8", "7"), ("4–8", "5"), ("7", "7"), ("6", None), ("many", None)],
)
def test_the_recorded_number_that_fits_nearest_the_middle_is_drawn(
    recorded: str, drawn: str | None
) -> None:
    shown = fitting(leaves_told({"leaflets": recorded}), "leaflets", is_odd)
    assert (shown.character.drawn if shown else None) == drawn
    if shown:
        assert str(shown.value) == drawn
        assert shown.character.told == recorded


def test_many_is_drawn_where_it_fits() -> None:
    shown = fitting(leaves_told({"leaflets": "many"}), "leaflets", lambda number: number > 9)
    assert shown is not None
    assert shown.character.drawn == "many"


def test_no_number_recorded_is_none() -> None:
    assert fitting(leaves_told({}), "leaflets", is_odd) is None
