"""Places given on the command line."""

from __future__ import annotations

import pytest

from sallet.course.model import Place
from sallet.season.spots import place_at


@pytest.mark.parametrize(
    ("words", "place"),
    [("57.4,-2.6,450", Place("", 57.4, -2.6, 450)),
     (" 57.4 , -2.6 , 450 m ", Place("", 57.4, -2.6, 450)),
     ("57.4,−2.6,−3", Place("", 57.4, -2.6, -3)),
     ("-33.9,151.2", Place("", -33.9, 151.2)),
     ("47,8,1000 ft", Place("", 47, 8, 304.8)),
     ("+90,-180,0", Place("", 90, -180, 0))],
)  # fmt: skip
def test_a_place_is_degrees_north_degrees_east_and_a_height(words: str, place: Place) -> None:
    assert place_at(words) == place


@pytest.mark.parametrize(
    ("words", "expected"),
    [("", "expected degrees north, degrees east and the height, such as 57.4,-2.6,450"),
     ("57.4", "expected degrees north, degrees east and the height, such as 57.4,-2.6,450"),
     ("57.4;-2.6", "expected degrees north, degrees east and the height, such as 57.4,-2.6,450"),
     ("57.4 N,2.6 W", "expected degrees north, degrees east and the height, such as 57.4,-2.6,450"),
     ("91,0", "91 is no latitude, expected -90 to 90"),
     ("0,-181", "-181 is no longitude, expected -180 to 180"),
     ("54,-2,high", "expected a height such as `180 m` or `590 ft`"),
     ("54,-2,1,2", "expected a height such as `180 m` or `590 ft`"),
     ("54,-2,9999", "9999 is no height above the sea, expected -450 to 9000 m")],
)  # fmt: skip
def test_what_is_no_place_is_told(words: str, expected: str) -> None:
    with pytest.raises(ValueError) as refused:  # noqa: PT011 - the message is compared whole
        place_at(words)
    assert str(refused.value) == expected
