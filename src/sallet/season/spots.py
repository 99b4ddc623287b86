"""A place given on the command line: `57.4,-2.6,450`."""

from __future__ import annotations

import re
from typing import Final

from sallet.course.model import Place
from sallet.lesson.front_matter import elevation

_NUMBER: Final = r"[+\-\u2212]?\d+(?:\.\d+)?"
_SPOT: Final = re.compile(
    rf"^\s*(?P<north>{_NUMBER})\s*,\s*(?P<east>{_NUMBER})\s*(?:,\s*(?P<up>\S.*?)\s*)?$"
)
_POLE: Final = 90
_DATE_LINE: Final = 180
_DEEPEST, _HIGHEST = -450, 9000
"""The shore of the Dead Sea and the highest mountain, in metres, with a little to spare."""


def place_at(words: str) -> Place:
    """Return the place of `LAT,LON` or `LAT,LON,ELEV`; the height in metres unless it says feet.

    Raises ValueError, saying what was expected.
    """
    match = _SPOT.match(words)
    if match is None:
        message = "expected degrees north, degrees east and the height, such as 57.4,-2.6,450"
        raise ValueError(message)
    north, east = _number(match["north"]), _number(match["east"])
    if abs(north) > _POLE:
        raise ValueError(f"{match['north']} is no latitude, expected -90 to 90")
    if abs(east) > _DATE_LINE:
        raise ValueError(f"{match['east']} is no longitude, expected -180 to 180")
    return Place("", north, east, _height(match["up"]) if match["up"] else None)


def _height(words: str) -> float:
    plain = f"{words} m" if re.fullmatch(_NUMBER, words) else words
    metres = float(elevation(plain.replace("\u2212", "-")))
    if not _DEEPEST <= metres <= _HIGHEST:
        raise ValueError(f"{words} is no height above the sea, expected {_DEEPEST} to {_HIGHEST} m")
    return metres


def _number(words: str) -> float:
    return float(words.replace("\u2212", "-"))
