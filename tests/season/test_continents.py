"""On which continent a place lies.

The outside check: `zone.tab` of the time zone database (public domain; its places carry their
coordinates as ISO 6709 writes them), read from the package `tzdata`. Each zone is named for a
continent or an ocean. Towns, capes and islands further down are from memory.
"""

from __future__ import annotations

import re
from importlib.resources import files
from itertools import combinations, pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from sallet.season.continents import OUTLINES, Continent, continent, is_within

Point = tuple[float, float]
Side = tuple[Point, Point]

SOUTH_AMERICA = frozenset(
    ["AR", "BO", "BR", "CL", "CO", "EC", "GF", "GY", "PE", "PY", "SR", "UY", "VE"]
)
"""The countries of zone.tab, by ISO 3166, whose zones of `America` lie in the south of it."""
OCEANS = frozenset({"Arctic", "Atlantic", "Indian", "Pacific"})
DIFFERENT: dict[str, tuple[Continent | None, str]] = {
    "America/Aruba": ("South America", "28 km from Venezuela"),
    "America/Curacao": ("South America", "65 km from Venezuela"),
    "America/Kralendijk": ("South America", "80 km from Venezuela"),
    "America/Noronha": (None, "350 km from Brazil, in the open ocean"),
    "America/Port_of_Spain": ("South America", "Trinidad, 11 km from Venezuela"),
    "Antarctica/Macquarie": (None, "halfway between New Zealand and Antarctica"),
    "Arctic/Longyearbyen": ("Europe", "Svalbard, on the shelf of Norway"),
    "Asia/Jayapura": ("Australia", "on New Guinea"),
    "Asia/Oral": ("Europe", "on the right bank of the river Ural"),
    "Atlantic/Canary": ("Africa", "100 km from Morocco"),
    "Atlantic/Faroe": ("Europe", "floras count them there"),
    "Atlantic/Reykjavik": ("Europe", "floras count Iceland there"),
    "Atlantic/Stanley": ("South America", "the Falklands, on the shelf of Patagonia"),
    "Australia/Lord_Howe": (None, "600 km from Australia, in the open ocean"),
    "Indian/Antananarivo": ("Africa", "Madagascar"),
    "Indian/Comoro": ("Africa", "between Madagascar and Mozambique"),
    "Indian/Maldives": ("Asia", "a chain that goes on from the Laccadives"),
    "Indian/Mayotte": ("Africa", "between Madagascar and Mozambique"),
    "Pacific/Auckland": ("Australia", "New Zealand, counted with Australasia"),
    "Pacific/Port_Moresby": ("Australia", "New Guinea, on the shelf of Australia"),
}
"""Where a place does not lie on the continent for which its zone is named; the others of the
zones named for an ocean lie far out in it, on none. The reasons are from memory."""


def degrees(iso: str) -> float:
    """Return degrees of `±DDMM`, `±DDDMM` and the same with seconds."""
    whole = 2 if len(iso) in {5, 7} else 3
    digits = iso[1:]
    minutes, seconds = digits[whole : whole + 2], digits[whole + 2 :] or "0"
    value = int(digits[:whole]) + int(minutes) / 60 + int(seconds) / 3600
    return -value if iso.startswith("-") else value


def zones() -> list[tuple[str, str, float, float]]:
    """Return the rows of zone.tab: country, zone, latitude and longitude."""
    text = files("tzdata").joinpath("zoneinfo", "zone.tab").read_text("utf-8")
    row = re.compile(r"^([A-Z]{2})\t([+-]\d+)([+-]\d+)\t([^\t\n]+)", re.MULTILINE)
    found = row.finditer(text)
    return [(at[1], at[4], degrees(at[2]), degrees(at[3])) for at in found]


def by_name(code: str, zone: str) -> str | None:
    """Return the continent for which a zone is named, America split by country; None for oceans."""
    area = zone.partition("/")[0]
    if area == "America":
        return "South America" if code in SOUTH_AMERICA else "North America"
    return None if area in OCEANS else area


def test_every_place_of_the_time_zone_database_lies_where_its_zone_says_or_is_listed() -> None:
    found = zones()
    assert len(found) > 400  # of 418 in the edition of 2026
    told = {zone: by_name(code, zone) for code, zone, _, _ in found}
    told |= {zone: answer for zone, (answer, _) in DIFFERENT.items()}
    assert {zone: continent(north, east) for _, zone, north, east in found} == told


def test_no_place_is_listed_that_lies_where_its_zone_says() -> None:
    codes = {zone: code for code, zone, _, _ in zones()}
    same = [zone for zone, (answer, _) in DIFFERENT.items() if by_name(codes[zone], zone) == answer]
    assert same == []


def test_coordinates_are_read_as_iso_6709_writes_them() -> None:
    """The examples: minutes, and seconds, with two and three digits of degrees."""
    found = [degrees(iso) for iso in ("+4230", "-00131", "-690022", "+0393524")]
    assert found == pytest.approx([42.5, -1.516667, -69.006111, 39.59])


@pytest.mark.parametrize(
    ("name", "north", "south", "east", "west"),
    [("Europe", (71.17, 25.78), (36.01, -5.6), (67.5, 64.05), (52.14, -10.27)),
     ("Asia", (77.72, 104.26), (1.29, 103.85), (66.08, -169.65), (40.15, 26.41)),
     ("Africa", (37.27, 9.87), (-34.83, 20), (10.42, 51.27), (14.69, -17.45)),
     ("North America", (82.5, -62.35), (7.52, -78.16), (47.52, -52.62), (52.9, 172.9)),
     ("South America", (12.45, -71.67), (-54.93, -67.6), (-7.15, -34.8), (-4.68, -81.33)),
     ("Australia", (-10.58, 142.22), (-46.6, 168.34), (-38.66, 178.02), (-24.88, 113.66)),
     ("Antarctica", (-63.4, -57), (-90, 0), (-67.6, 179.9), (-77.85, -180))],
)  # fmt: skip
def test_a_continent_reaches_to_its_farthest_places(
    name: Continent, north: Point, south: Point, east: Point, west: Point
) -> None:
    """Of Europe, say: North Cape, Tarifa, Vorkuta and Dingle."""
    assert [continent(*place) for place in (north, south, east, west)] == [name] * 4


@pytest.mark.parametrize(
    ("name", "places"),
    [("Europe", {"Edinburgh": (55.95, -3.19), "Galway": (53.27, -9.05), "Lerwick": (60.15, -1.14),
                 "Catania": (37.5, 15.09), "Heraklion": (35.34, 25.13), "Valletta": (35.9, 14.51),
                 "Palma": (39.57, 2.65), "Akureyri": (65.68, -18.09), "Visby": (57.63, 18.3)}),
     ("Asia", {"Sapporo": (43.06, 141.35), "Naha": (26.21, 127.68), "Davao": (7.07, 125.61),
               "Galle": (6.05, 80.22), "Kupang": (-10.18, 123.6), "Ambon": (-3.7, 128.18),
               "Port Blair": (11.67, 92.74), "Larnaca": (34.92, 33.63), "Taipei": (25.03, 121.57)}),
     ("Africa", {"Toamasina": (-18.15, 49.4), "Zanzibar": (-6.16, 39.19), "Malabo": (3.75, 8.78),
                 "Las Palmas": (28.1, -15.42), "Melilla": (35.29, -2.94)}),
     ("North America", {"St. John's": (47.56, -52.71), "Nuuk": (64.18, -51.72),
                        "Tasiilaq": (65.61, -37.64), "Havana": (23.13, -82.38),
                        "Bridgetown": (13.1, -59.62), "Kodiak": (57.79, -152.41),
                        "Victoria": (48.43, -123.37), "Unalaska": (53.87, -166.53)}),
     ("South America", {"Stanley": (-51.7, -57.85), "Castro": (-42.48, -73.76),
                        "Porlamar": (10.95, -63.85), "Belém": (-1.46, -48.5)}),
     ("Australia", {"Launceston": (-41.44, 147.14), "Rabaul": (-4.2, 152.17),
                    "Sorong": (-0.88, 131.26), "Dunedin": (-45.87, 170.5)})],
)  # fmt: skip
def test_islands_near_a_coast_belong_to_its_continent(
    name: Continent, places: dict[str, Point]
) -> None:
    assert {town: continent(*place) for town, place in places.items()} == dict.fromkeys(
        places, name
    )


@pytest.mark.parametrize(
    ("here", "there", "names"),
    [((58.01, 56.25), (56.84, 60.6), ("Europe", "Asia")),  # Perm, Yekaterinburg
     ((67.5, 64.05), (66.53, 66.6), ("Europe", "Asia")),  # Vorkuta, Salekhard
     ((59.41, 56.8), (59.6, 60.57), ("Europe", "Asia")),  # Berezniki, Serov
     ((58.3, 57.82), (57.92, 59.97), ("Europe", "Asia")),  # Chusovoy, Nizhny Tagil
     ((55.17, 59.65), (55.05, 60.1), ("Europe", "Asia")),  # Zlatoust, Miass
     ((51.77, 55.1), (51.16, 54.99), ("Europe", "Asia")),  # Orenburg, Sol-Iletsk
     ((46.35, 48.04), (43.65, 51.17), ("Europe", "Asia")),  # Astrakhan, Aktau
     ((43.02, 44.68), (41.72, 44.79), ("Europe", "Asia")),  # Vladikavkaz, Tbilisi
     ((43.6, 39.73), (43, 41.02), ("Europe", "Asia")),  # Sochi, Sukhumi
     ((41.04, 28.99), (41.02, 29.02), ("Europe", "Asia")),  # Beyoğlu, Üsküdar
     ((40.18, 26.36), (40.15, 26.41), ("Europe", "Asia")),  # Eceabat, Çanakkale
     ((39.11, 26.55), (39.32, 26.69), ("Europe", "Asia")),  # Mytilene, Ayvalık
     ((36.89, 27.29), (37.03, 27.43), ("Europe", "Asia")),  # Kos, Bodrum
     ((36.45, 28.22), (36.85, 28.27), ("Europe", "Asia")),  # Rhodes, Marmaris
     ((36.14, -5.35), (35.89, -5.31), ("Europe", "Africa")),  # Gibraltar, Ceuta
     ((36.83, 11.95), (36.85, 11.09), ("Europe", "Africa")),  # Pantelleria, Kelibia
     ((30.6, 32.27), (30.85, 32.32), ("Africa", "Asia")),  # Ismailia, El Qantara's eastern half
     ((27.26, 33.81), (27.92, 34.33), ("Africa", "Asia")),  # Hurghada, Sharm el-Sheikh
     ((11.59, 43.15), (12.79, 45.02), ("Africa", "Asia")),  # Djibouti, Aden
     ((8.16, -77.69), (8.09, -76.73), ("North America", "South America")),  # Yaviza, Turbo
     ((12.05, -61.75), (11.18, -60.74), ("North America", "South America")),  # Grenada, Tobago
     ((65.75, -168.93), (65.78, -169.06), ("North America", "Asia")),  # the two Diomedes
     ((-12.46, 130.84), (-8.56, 125.57), ("Australia", "Asia"))],  # Darwin, Dili
)  # fmt: skip
def test_places_on_either_side_of_a_border_lie_on_two_continents(
    here: Point, there: Point, names: tuple[Continent, Continent]
) -> None:
    assert (continent(*here), continent(*there)) == names


@pytest.mark.parametrize(
    "place",
    [(21.31, -157.86), (32.3, -64.78), (37.74, -25.67), (32.65, -16.91), (12.65, 54.02),
     (-20.16, 57.5), (-18.14, 178.44), (-16.85, -179.97), (-0.74, -90.31), (-27.15, -109.43),
     (-54.28, -36.51), (13.47, 144.75), (-22.28, 166.46), (-43.95, -176.56), (70.92, -8.72),
     (0, 0), (40, -40), (0, -140), (40, 170), (-30, 80), (-45, 90), (-40, 160), (90, 0)],
)  # fmt: skip
def test_far_islands_and_the_open_sea_lie_on_no_continent(place: Point) -> None:
    """First Hawaii, Bermuda, Azores, Madeira, Socotra, Mauritius, and Fiji on both sides of 180°."""
    assert continent(*place) is None


@pytest.mark.parametrize(
    ("place", "name"),
    [((66, 179.9), "Asia"), ((66, 180), "Asia"), ((66, -180), "Asia"), ((66, -179.9), "Asia"),
     ((51.9, 179.6), "North America"), ((51.9, 180), "North America"),
     ((51.9, -179.6), "North America"), ((-80, 180), "Antarctica"), ((-17, 180), None)],
)  # fmt: skip
def test_a_continent_goes_on_over_the_date_line(place: Point, name: Continent | None) -> None:
    assert continent(*place) == name


CORNERS = [corner for _, outline in OUTLINES for corner in outline]
LATITUDES = st.integers(-90_000, 90_000).map(lambda thousandths: thousandths / 1000)
LONGITUDES = st.integers(-180_000, 180_000).map(lambda thousandths: thousandths / 1000)


@given(LATITUDES, LONGITUDES, st.integers(-5, 5))
def test_whole_turns_about_the_earth_change_nothing(north: float, east: float, turns: int) -> None:
    assert continent(north, east + 360 * turns) == continent(north, east)


def test_on_the_very_corners_too_a_turn_changes_nothing() -> None:
    moved = [
        (north, east, turn)
        for north, east in CORNERS
        for turn in (-360, 360)
        if continent(north, east + turn) != continent(north, east)
    ]
    assert moved == []


@pytest.mark.parametrize(
    ("north", "east"),
    [(float("nan"), 0), (50, float("nan")), (50, float("inf")), (float("-inf"), 0), (91, 0),
     (-90.5, 0)],
)  # fmt: skip
def test_what_is_no_place_lies_on_no_continent(north: float, east: float) -> None:
    assert continent(north, east) is None


def holders(north: float, east: float) -> list[str]:
    """Return the continent of every outline in which a place lies."""
    return [name for name, outline in OUTLINES if is_within(outline, north, east)]


def test_no_place_of_a_grid_lies_in_two_outlines() -> None:
    grid = [(north, east) for north in range(-90, 91, 3) for east in range(-180, 180, 3)]
    assert [place for place in grid if len(holders(*place)) > 1] == []


@given(LATITUDES, LONGITUDES.filter(lambda east: east < 180))
def test_no_place_lies_in_two_outlines(north: float, east: float) -> None:
    assert len(holders(north, east)) <= 1


def test_no_corner_lies_in_two_outlines() -> None:
    assert [corner for corner in CORNERS if len(holders(*corner)) > 1] == []


def sides() -> list[Side]:
    """Return every side of every outline."""
    rings = [(*outline, outline[0]) for _, outline in OUTLINES]
    return [side for ring in rings for side in pairwise(ring)]


def cross(one: Side, other: Side) -> bool:
    """Return whether two sides cross; to touch, or to be the same border, is not to cross."""

    def parts(side: Side, ends: Side) -> bool:
        (south, west), (north, east) = side
        a, b = ((north - south) * (y - west) - (east - west) * (x - south) for x, y in ends)
        return a * b < 0

    return parts(one, other) and parts(other, one)


def test_crossing_is_told_from_touching() -> None:
    assert cross(((0, 0), (2, 2)), ((0, 2), (2, 0)))
    assert not cross(((0, 0), (2, 2)), ((2, 2), (4, 0)))
    assert not cross(((0, 0), (2, 2)), ((2, 2), (0, 0)))
    assert not cross(((0, 0), (1, 1)), ((0, 4), (4, 0)))


def test_no_side_crosses_another() -> None:
    assert [pair for pair in combinations(sides(), 2) if cross(*pair)] == []


@pytest.mark.parametrize(
    ("norths", "easts", "names"),
    [((480, 680), (400, 750), {"Europe", "Asia"}),
     ((300, 312), (318, 330), {"Africa", "Asia"}),
     ((72, 82), (-780, -770), {"North America", "South America"})],
)  # fmt: skip
def test_a_border_on_land_leaves_no_gap(
    norths: tuple[int, int], easts: tuple[int, int], names: set[str]
) -> None:
    """Tenths of degrees: from Moscow to Omsk, along the Suez Canal, and the south of Panama."""
    step = 1 if norths[1] - norths[0] < 100 else 5
    grid = [(n / 10, e / 10) for n in range(*norths, step) for e in range(*easts, step)]
    assert {continent(*place) for place in grid} == names
