"""Hopkins' bioclimatic law: by how many days spring and autumn move from one place to another.

Spring and early summer come 4 days later for each degree of latitude towards the pole, for each
5 degrees of longitude eastward and for each 400 feet upward; late summer and autumn come earlier
by as much (Hopkins 1918, Monthly Weather Review, Supplement 9; from quotations of it). Hopkins
wrote `eastward`; Richardson and others 2019 (Applications in Plant Sciences 7(3): e01228) print
`west`: we keep to Hopkins. He spoke of temperate North America, other things being equal. In 65
deciduous woods the law held, in grassland and evergreen wood it did not (Richardson); in the
Alps the difference between high and low has shrunk by a third since the 1960s (Vitasse and
others 2018, PNAS 115: 1004). What it gives is an estimate and must be shown as one.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final, Literal

from sallet.season.continents import continent

if TYPE_CHECKING:
    from sallet.course.model import Place
    from sallet.lesson.model import SeenAt

DAYS: Final = 4.0
"""Days for each of the three steps below."""
DEGREES_OF_LATITUDE: Final = 1.0
DEGREES_OF_LONGITUDE: Final = 5.0
METRES_UPWARD: Final = 400 * 0.3048
FARTHEST: Final = 60.0
"""Days beyond which nothing is moved: the law was never meant to reach from one climate into another.

No source draws this line; it is ours, and holds for England against the north of Lapland."""

LeftOut = Literal[
    "no place seen", "no place here", "elevation", "other continent", "no continent", "too far"
]
"""What keeps the law, or one of its three parts, from being used."""


@dataclass(frozen=True)
class Spot:
    """A place on the earth. Degrees, north and east positive; metres above the sea."""

    latitude: float
    longitude: float
    elevation: float | None = None

    @property
    def is_southern(self) -> bool:
        """Whether the seasons are those of the southern half of the earth."""
        return self.latitude < 0


@dataclass(frozen=True)
class Shift:
    """How the year at one place differs from that at another, in days, by the law's three parts.

    Positive: spring is later and autumn earlier than where the lesson was seen.
    """

    latitude: float = 0.0
    longitude: float = 0.0
    elevation: float = 0.0
    left_out: tuple[LeftOut, ...] = ()
    origin: Spot | None = None
    here: Spot | None = None

    @property
    def by_law(self) -> float:
        """Return what the law gives, whether or not it is used."""
        return self.latitude + self.longitude + self.elevation

    @property
    def days(self) -> float:
        """Return the days by which the year is moved."""
        return 0.0 if "too far" in self.left_out else self.by_law


def spot_of(place: Place | SeenAt | None) -> Spot | None:
    """Return where a course meets or a lesson was seen; None where that is not told."""
    if place is None or place.latitude is None or place.longitude is None:
        return None
    return Spot(place.latitude, place.longitude, place.elevation)


def shift_between(origin: Spot | None, here: Spot | None) -> Shift:
    """Return the shift from where a lesson was seen to where a course meets."""
    if origin is None or here is None:
        return Shift(left_out=("no place seen" if origin is None else "no place here",))
    left_out: list[LeftOut] = []
    shift = Shift(
        latitude=DAYS * (abs(here.latitude) - abs(origin.latitude)) / DEGREES_OF_LATITUDE,
        longitude=_by_longitude(origin, here, left_out),
        elevation=_by_elevation(origin, here, left_out),
        origin=origin,
        here=here,
    )
    if abs(shift.by_law) > FARTHEST:
        left_out.append("too far")
    return Shift(shift.latitude, shift.longitude, shift.elevation, tuple(left_out), origin, here)


def _by_longitude(origin: Spot, here: Spot, left_out: list[LeftOut]) -> float:
    # Between continents lies an ocean, which has a climate of its own.
    east = (here.longitude - origin.longitude + 180) % 360 - 180
    if east == 0:
        return 0.0
    lands = [continent(spot.latitude, spot.longitude) for spot in (origin, here)]
    if None in lands:
        left_out.append("no continent")
    elif lands[0] != lands[1]:
        left_out.append("other continent")
    else:
        return DAYS * east / DEGREES_OF_LONGITUDE
    return 0.0


def _by_elevation(origin: Spot, here: Spot, left_out: list[LeftOut]) -> float:
    if origin == here:
        return 0.0  # the same place, though nobody told how high it lies
    if origin.elevation is None or here.elevation is None:
        left_out.append("elevation")
        return 0.0
    return DAYS * (here.elevation - origin.elevation) / METRES_UPWARD
