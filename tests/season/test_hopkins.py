"""Hopkins' law against its published constants and worked figures.

The constants: 4 days for 1 degree of latitude, 5 degrees of longitude, 400 feet (Hopkins 1918,
Monthly Weather Review, Supplement 9, as quoted by Aldo Leopold and by Richardson and others
2019, Applications in Plant Sciences 7(3): e01228). The foot is 0.3048 m exactly.
"""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from sallet.course.model import Place
from sallet.lesson.model import SeenAt
from sallet.season.hopkins import FARTHEST, Spot, shift_between, spot_of

FEET = 0.3048
ENGLAND = Spot(54.4, -2.6, 150.0)


@pytest.mark.parametrize(
    ("here", "days"),
    [(Spot(51, 0, 0), 4), (Spot(49, 0, 0), -4), (Spot(50, 5, 0), 4), (Spot(50, -5, 0), -4),
     (Spot(50, 0, 400 * FEET), 4), (Spot(50, 0, -400 * FEET), -4), (Spot(50, 0, 0), 0)],
)  # fmt: skip
def test_each_step_northward_eastward_and_upward_is_four_days(here: Spot, days: float) -> None:
    assert shift_between(Spot(50, 0, 0), here).days == pytest.approx(days)


def test_the_worked_figure_two_and_a_half_degrees_north_three_west_800_feet_up() -> None:
    """10 − 2.4 + 8 = 15.6 days; worked from the constants, no example of Hopkins' own is known."""
    shift = shift_between(Spot(50, 0, 0), Spot(52.5, -3, 800 * FEET))
    assert (shift.latitude, shift.longitude, shift.elevation) == pytest.approx((10, -2.4, 8))
    assert shift.days == pytest.approx(15.6)
    assert shift.left_out == ()


@pytest.mark.parametrize(("metres", "days"), [(100, 3.281), (1000, 32.81)])
def test_height_in_metres(metres: float, days: float) -> None:
    """From the definitions of the foot and the law: 3.281 days for 100 m, 32.81 for 1000 m."""
    shift = shift_between(Spot(47, 8, 500), Spot(47, 8, 500 + metres))
    assert shift.days == pytest.approx(days, abs=0.005)


def test_three_degrees_north_and_three_hundred_metres_up_is_three_weeks() -> None:
    shift = shift_between(ENGLAND, Spot(57.4, -2.6, 450))
    assert (shift.latitude, shift.elevation) == pytest.approx((12, 9.8425), abs=1e-3)


def test_towards_the_south_pole_is_as_towards_the_north_pole() -> None:
    assert shift_between(Spot(-38, 145, 0), Spot(-42, 145, 0)).latitude == pytest.approx(16)
    assert shift_between(Spot(38, 15, 0), Spot(-42, 15, 0)).latitude == pytest.approx(16)


def test_longitude_is_left_out_between_continents() -> None:
    shift = shift_between(ENGLAND, Spot(54.4, -105, 150))
    assert (shift.days, shift.left_out) == (0, ("other continent",))


def test_longitude_is_left_out_where_a_place_lies_on_no_continent() -> None:
    shift = shift_between(ENGLAND, Spot(54.4, -30, 150))
    assert (shift.days, shift.left_out) == (0, ("no continent",))


def test_on_the_same_meridian_no_continent_is_asked_for() -> None:
    assert shift_between(Spot(0, -30, 0), Spot(2, -30, 0)).left_out == ()


def test_degrees_are_counted_the_short_way_round_the_earth() -> None:
    shift = shift_between(Spot(66, 179, 0), Spot(66, -179, 0))
    assert shift.longitude == pytest.approx(1.6)
    assert shift.left_out == ()


@pytest.mark.parametrize(
    ("origin", "here"),
    [(Spot(54, -2), ENGLAND), (ENGLAND, Spot(54, -2)), (Spot(54, -2), Spot(55, -2))],
)
def test_a_height_that_is_not_told_is_left_out(origin: Spot, here: Spot) -> None:
    shift = shift_between(origin, here)
    assert (shift.elevation, shift.left_out) == (0, ("elevation",))


def test_at_the_same_place_no_height_need_be_told() -> None:
    assert shift_between(Spot(54, -2), Spot(54, -2)).left_out == ()


@pytest.mark.parametrize(
    ("origin", "here", "reason"),
    [
        (None, ENGLAND, "no place seen"),
        (ENGLAND, None, "no place here"),
        (None, None, "no place seen"),
    ],
)
def test_without_one_of_the_places_nothing_is_moved(
    origin: Spot | None, here: Spot | None, reason: str
) -> None:
    shift = shift_between(origin, here)
    assert (shift.days, shift.left_out) == (0, (reason,))


def test_beyond_sixty_days_nothing_is_moved_and_the_reason_is_told() -> None:
    shift = shift_between(ENGLAND, Spot(36.0, -2.6, 150))
    assert shift.by_law == pytest.approx(-73.6)
    assert shift.days == 0
    assert shift.left_out == ("too far",)
    assert shift_between(Spot(50, 10, 0), Spot(50 + FARTHEST / 4, 10, 0)).left_out == ()


DEGREES = st.floats(1, 60)
HEIGHTS = st.floats(0, 1500)


@given(DEGREES, HEIGHTS, DEGREES, HEIGHTS)
def test_there_and_back_is_nothing(north: float, high: float, north2: float, high2: float) -> None:
    one, other = Spot(north, 20, high), Spot(north2, 20, high2)
    assert shift_between(one, other).by_law == pytest.approx(-shift_between(other, one).by_law)


def test_a_place_without_degrees_is_no_spot() -> None:
    assert spot_of(Place("Askerby Bridge")) is None
    assert spot_of(Place("Askerby Bridge", 54.4, None, 150)) is None
    assert spot_of(None) is None
    assert spot_of(Place("Askerby Bridge", 54.4, -2.6, 150.0)) == ENGLAND
    assert spot_of(SeenAt(54.4, -2.6, None)) == Spot(54.4, -2.6)


def test_the_shift_knows_its_two_places() -> None:
    there = Spot(55.4, -2.6, 150.0)
    shift = shift_between(ENGLAND, there)
    assert (shift.origin, shift.here) == (ENGLAND, there)
