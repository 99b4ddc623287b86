"""On which continent a place lies, for a rule that counts longitude within one continent only.

Outlines are coarse and drawn a little out to sea, so that coasts and the islands near them belong
to their continent. They are from memory, with some corners mended after a comparison with the
coasts and borders of Natural Earth (public domain, 1:10 million). Europe ends at the Urals, the
river Ural, the Caspian, the crest of the Caucasus, the Bosporus and the Aegean; Africa at the Suez
Canal; North America where Panama does; Asia before New Guinea. Trinidad, Tobago, Margarita, Aruba,
Curaçao and Bonaire lie close to South America and belong to it, the other Caribbean islands to
North America. Iceland and the Faroes belong to Europe, as floras count them.

An island far out in an ocean (Hawaii, Bermuda, the Azores, Mauritius, Fiji) belongs to none, and so
does one that some count here and some there (Madeira, Socotra): leaving longitude out makes an
estimate coarser, counting it over an ocean makes it wrong.
"""

from __future__ import annotations

from itertools import pairwise
from typing import Final, Literal

Continent = Literal[
    "Europe", "Asia", "Africa", "North America", "South America", "Australia", "Antarctica"
]
"""`Australia` stands for Australasia: with Tasmania, New Guinea and New Zealand.

Floras count these lands together (from memory), and with no continent at all two places in New
Zealand could not be compared by longitude.
"""
Outline = tuple[tuple[float, float], ...]
"""Corners, each degrees of latitude and longitude; the last is joined to the first."""

# A border stands once and is used by both its neighbours, so that they leave no gap between them.
_URALS: Final[Outline] = (
    (82.5, 71), (77.2, 71), (73, 63.5), (70, 63.5), (69.2, 65), (67.9, 66.2), (66.8, 65.4),
    (65, 61.8), (64.3, 59.6), (61.5, 59.3), (58.5, 59.2), (56.9, 59.85), (55.2, 59.75),
    (54.6, 59.4), (53.4, 59), (51.2, 58.55), (51.05, 57.5), (51.35, 56.3), (51.7, 55.1),
    (51.5, 53.4), (51.15, 51.4), (50.2, 51.25), (48.5, 51.75), (47.1, 51.9), (46.8, 51.6),
)  # fmt: skip
_CAUCASUS: Final[Outline] = (
    (45.2, 49.5), (43, 49.8), (41, 50.3), (40.65, 49.5), (41, 48.3), (41.2, 47.8), (41.9, 46.3),
    (42.5, 45.6), (42.6, 44.4), (43, 43.1), (43.2, 42.4), (43.5, 41), (43.4, 40),
)  # fmt: skip
_BOSPORUS: Final[Outline] = (
    (43, 38), (43, 33), (42.6, 30), (41.3, 29.15), (41.1, 29.06), (41.02, 29), (40.9, 28.9),
    (40.8, 28), (40.5, 26.95), (40.38, 26.69), (40.2, 26.39), (40.14, 26.38), (40.03, 26.17),
)  # fmt: skip
_AEGEAN: Final[Outline] = (
    (39.9, 25.95), (39.7, 25.95), (39.42, 26), (39.4, 26.45), (39.1, 26.68), (38.95, 26.65),
    (38.7, 26.3), (38.55, 26.32), (38.33, 26.2), (38.1, 26.2), (37.9, 26.7), (37.83, 27.1),
    (37.75, 27.08), (37.705, 27.06), (37.7, 27), (37.62, 27), (37.4, 27.15), (37.2, 27.15),
    (37, 27.2), (36.94, 27.24), (36.92, 27.37), (36.8, 27.4), (36.72, 27.33), (36.63, 27.36),
    (36.62, 27.65), (36.68, 27.8), (36.64, 27.93), (36.55, 27.95), (36.5, 28.25), (36.3, 28.5),
    (35.9, 28.5),
)  # fmt: skip
_RED_SEA: Final[Outline] = (
    (31.6, 32.35), (31.26, 32.315), (30.58, 32.32), (29.93, 32.57), (29.6, 32.5), (29, 32.9),
    (28.3, 33.35), (27.55, 34.2), (27, 34.6), (24, 36.3), (21, 38), (18.5, 39.5), (16.5, 41),
    (15, 42), (13.7, 42.4), (13.3, 43), (12.75, 43.25), (12.55, 43.38), (12.4, 43.6),
)  # fmt: skip
_BERING_STRAIT: Final[Outline] = ((67, -168.98), (65.5, -168.98), (64.1, -172), (62.5, -174.5))
_PANAMA: Final[Outline] = (
    (7, -78.2), (7.22, -77.89), (7.48, -77.82), (7.71, -77.75), (7.64, -77.67), (7.54, -77.58),
    (7.75, -77.36), (7.93, -77.22), (8.02, -77.21), (8.3, -77.36), (8.47, -77.47), (8.65, -77.39),
    (9.2, -77), (12.8, -75), (13, -70.5), (12.9, -67), (12.3, -64), (11.65, -62.5), (11.65, -60),
)  # fmt: skip
_ARAFURA_SEA: Final[Outline] = (
    (2, 129.8), (0.4, 129.8), (-0.8, 129.55), (-2.4, 129.2), (-2.5, 130.7), (-3.2, 131.6),
    (-4.75, 133.2), (-4.9, 135.2), (-7.3, 135.2), (-9.3, 132.3), (-10, 128), (-11.6, 124.2),
    (-11.7, 122),
)  # fmt: skip

_EUROPE: Final[Outline] = (
    (62.9, -8.6), (64.5, 5), (68.5, 9), (75.5, 9), (81.2, 8), (82.5, 30),
    *_URALS, *_CAUCASUS, *_BOSPORUS, *_AEGEAN,
    (34.4, 27), (34.4, 23.5), (35.2, 19), (35.3, 14.8), (35.3, 12.3), (36.6, 11.6), (37.5, 11.5),
    (38.1, 9.5), (38.1, 8), (37.4, 3.5), (36.5, -0.5), (36.1, -2.5), (36, -5), (35.97, -5.6),
    (35.9, -6.2), (36.3, -10.3), (43.8, -10.5), (49, -7.5), (50.8, -11.2), (54.5, -11),
    (57.5, -9.5), (58.5, -9.5), (61.2, -8.6),
)  # fmt: skip
_ICELAND: Final[Outline] = (
    (63, -24.5), (65.5, -25.3), (66.8, -23.5), (66.9, -15), (65.5, -12.8), (64, -13.5), (63, -18.5),
)  # fmt: skip
_ASIA: Final[Outline] = (
    *reversed((*_URALS, *_CAUCASUS, *_BOSPORUS, *_AEGEAN)),
    (82.5, 108), (78, 115), (77.5, 145), (77.8, 160), (72.5, 180), (61, 180), (54, 169.5),
    (50, 158.5), (46, 154), (43, 148), (41.5, 146), (39, 143.2), (35.5, 141.7), (32, 140.6),
    (30, 132.2), (25.2, 132), (23.2, 125.5), (19, 123.2), (14.5, 125.2), (11, 126.7), (7, 127.5),
    (4, 128.5), *_ARAFURA_SEA,
    (-11.4, 121), (-10.8, 118), (-9.6, 114), (-9, 110), (-8.2, 105), (-6.4, 101.8), (-2.5, 98),
    (2, 94.8), (6.3, 92.8), (14.5, 91.5), (8, 83.5), (5, 82.5), (5, 79), (-1.2, 74.5), (-1.2, 72),
    (12, 70), (20, 60.5), (17, 57.5), (14.5, 53), (12, 46), *reversed(_RED_SEA),
    (33.5, 31.5), (35.6, 29.5),
)  # fmt: skip
_CHUKOTKA: Final[Outline] = (
    (72.5, -180), (71.7, -175), (68.5, -171), *_BERING_STRAIT, (61, -180),
)  # fmt: skip
_AFRICA: Final[Outline] = (
    *_RED_SEA,
    (11.5, 43.6), (11, 46), (11.6, 49), (12.2, 51.6), (10.3, 51.9), (6, 50), (2, 46.3),
    (-1.8, 42.3), (-4.5, 40.4), (-8, 40.5), (-10.8, 42.5), (-11, 44), (-11.5, 50), (-15.3, 51.3),
    (-26.5, 48), (-26.5, 43), (-25.5, 35.8), (-27, 33.7), (-31.5, 30.8), (-34.6, 27), (-35.4, 20),
    (-35.3, 18.3), (-33, 17.2), (-27, 14.3), (-17, 11), (-6, 11.3), (-2, 5.2), (3.6, 5), (4, -2),
    (3.8, -7.5), (4, -9.5), (9, -14.4), (12, -17.6), (14.8, -18.3), (21, -18.2), (25.5, -16),
    (27.2, -18.6), (29.2, -18.8), (29.8, -13), (33.5, -9), (35.85, -6.1), (35.94, -5.6),
    (35.93, -5), (35.6, -4), (35.75, -2.5), (36.3, 0), (37.1, 3.5), (37.2, 6), (37.7, 8.5),
    (37.75, 9.5), (37.3, 11.3), (35.9, 11.6), (34.5, 12), (33.5, 15), (31.5, 18), (33, 19),
    (33.3, 22), (32.2, 25.5), (31.9, 30),
)  # fmt: skip
_NORTH_AMERICA: Final[Outline] = (
    *_BERING_STRAIT,
    (60, -174.5), (56.5, -171.5), (53.5, -171), (52.9, -180), (50.8, -180), (51.5, -174),
    (52, -168.5), (53.7, -162), (55.5, -156), (56.5, -151.2), (59, -148), (58.5, -139), (55, -135),
    (53.2, -134), (51.5, -131.5), (49.8, -129), (48, -126), (43, -125.6), (40.3, -125.5),
    (37.5, -123.9), (34, -121.3), (32.3, -120), (28.5, -119), (24, -113.2), (22.3, -110.5),
    (19, -106.3), (16.8, -101), (14.8, -94), (13, -90.5), (12, -88), (10.5, -86.6), (8.2, -84.3),
    (7, -82.5), (6.9, -80), *_PANAMA,
    (12.7, -58.8), (13.6, -58.9), (16.8, -60.3), (18.8, -62.2), (19.6, -65), (20.5, -69), (22, -70),
    (24.8, -73.2), (27.3, -76.3), (28, -79), (31, -79.8), (33.2, -77.5), (34.8, -74.8),
    (38, -73.7), (40.7, -68.8), (42.8, -66.5), (43.3, -59.2), (44.6, -58.5), (46, -52.2),
    (47.5, -51.8), (51.5, -54.2), (54, -55), (59.2, -46), (59.2, -42.5), (65, -36), (67, -31),
    (69.3, -22.5), (70.5, -20.8), (75, -16), (80, -10.5), (82, -10.5), (84, -25), (84, -70),
    (82, -95), (79.5, -112), (76.5, -125.5), (72, -127), (70.5, -130), (71, -142), (72, -156),
    (69.2, -167.8),
)  # fmt: skip
_WESTERN_ALEUTIANS: Final[Outline] = (
    (53.6, 171.8), (53.6, 174.5), (53, 180), (50.8, 180), (51.5, 176), (52, 171.8),
)  # fmt: skip
_SOUTH_AMERICA: Final[Outline] = (
    *_PANAMA,
    (8.8, -58.8), (6.5, -56), (6.6, -54), (5, -50.8), (2.5, -48.8), (0.3, -46.5), (-1.8, -43),
    (-2.2, -40), (-4.6, -35), (-7.5, -34.2), (-9.5, -34.8), (-13, -37.9), (-17, -38.2),
    (-21, -39.8), (-23.6, -41), (-24.5, -45), (-28.5, -47.8), (-33.5, -51.8), (-35.5, -54),
    (-38.8, -56.5), (-42, -62), (-47.7, -65), (-50.5, -62), (-50.5, -57), (-53, -57),
    (-54.9, -62.8), (-56.5, -66.5), (-57, -69), (-54, -74.8), (-51, -76.3), (-46.8, -76.5),
    (-43, -75.5), (-38, -74.5), (-33, -73), (-27, -72), (-18.8, -71.5), (-17, -73), (-15.5, -76.2),
    (-12.3, -78), (-6.5, -81.6), (-4.5, -82), (-1, -81.8), (1, -80.5), (3, -78.9), (6, -78.3),
)  # fmt: skip
_AUSTRALIA: Final[Outline] = (
    *reversed(_ARAFURA_SEA),
    (1.3, 131.5), (1.2, 135), (-0.3, 137.5), (-0.8, 143), (-1, 150), (-3.3, 153.8), (-4.3, 153.95),
    (-5, 153.4), (-8.6, 153.3), (-11.2, 154.7), (-12.2, 154.2), (-11.5, 149.5), (-11.3, 146),
    (-16.5, 147), (-19, 150.5), (-21.5, 153), (-24.5, 153.9), (-28.5, 154.3), (-32.5, 153.5),
    (-37.5, 150.8), (-40, 149.3), (-43.5, 148.9), (-44.2, 147), (-43.5, 145), (-39.3, 142.5),
    (-38.6, 140), (-36.5, 135.8), (-35.5, 134.8), (-33, 131.5), (-32.7, 126.5), (-34.8, 123.5),
    (-36, 117.5), (-35.2, 114.3), (-28.5, 112.9), (-26, 112.3), (-21.5, 113.2), (-19.3, 117.5),
    (-17, 121), (-13, 121.8),
)  # fmt: skip
_NEW_ZEALAND: Final[Outline] = (
    (-33.8, 171.8), (-33.8, 173.5), (-36, 176.3), (-37.2, 179.2), (-39.5, 178.6), (-42, 176),
    (-44.5, 173.8), (-46.5, 171.3), (-47.8, 168.7), (-47.8, 166.5), (-45.5, 165.8), (-40.5, 171),
    (-38.8, 173.2), (-36, 173.2),
)  # fmt: skip
_ANTARCTICA: Final[Outline] = ((-90, -180), (-60, -180), (-60, 180), (-90, 180))

OUTLINES: Final[tuple[tuple[Continent, Outline], ...]] = (
    ("Europe", _EUROPE),
    ("Europe", _ICELAND),
    ("Asia", _ASIA),
    ("Asia", _CHUKOTKA),
    ("Africa", _AFRICA),
    ("North America", _NORTH_AMERICA),
    ("North America", _WESTERN_ALEUTIANS),
    ("South America", _SOUTH_AMERICA),
    ("Australia", _AUSTRALIA),
    ("Australia", _NEW_ZEALAND),
    ("Antarctica", _ANTARCTICA),
)
"""Every outline lies between 180° W and 180° E: what reaches over that line is drawn in two."""
_FINEST: Final = 9
"""Decimals of a degree that count: a turn about the earth would blur what is finer."""


def continent(latitude: float, longitude: float) -> Continent | None:
    """Return the continent on which a place lies; None at sea and on an island that has none.

    Degrees, north and east positive; a longitude may be any number of turns too great or small.
    """
    east = (round(longitude % 360, _FINEST) + 180) % 360 - 180
    for name, outline in OUTLINES:
        if is_within(outline, latitude, east):
            return name
    return None


def is_within(outline: Outline, latitude: float, longitude: float) -> bool:
    """Return whether a place lies within an outline: an odd number of its sides lies to the east."""
    sides = pairwise((*outline, outline[0]))
    return sum(_lies_east(sorted(side), latitude, longitude) for side in sides) % 2 == 1


def _lies_east(side: list[tuple[float, float]], latitude: float, longitude: float) -> bool:
    # From south to north, whichever way it was drawn: both neighbours of a border reckon alike.
    (south, at_south), (north, at_north) = side
    if not south <= latitude < north:
        return False
    return longitude < at_south + (at_north - at_south) * (latitude - south) / (north - south)
