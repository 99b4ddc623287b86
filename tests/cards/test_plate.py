"""The drawing of a card: what is chosen, that it lies in its room, that its bars are true."""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from functools import cache
from typing import TYPE_CHECKING

import pytest
from hypothesis import given
from hypothesis import strategies as st

from helpers.lessons import LESSONS, VOCABULARY
from sallet.cards.plate import BELOW, GAP, LARGEST, PEN, DrawnFigure, card_plate
from sallet.cards.sizes import CARD_SIZES
from sallet.drawing.figures import Figure, figures
from sallet.drawing.ink import WIDTHS, Box

if TYPE_CHECKING:
    from sallet.cards.plate import Rows

FINEST = 0.1
"""Millimetres of the thinnest line that is meant; a printer of 600 dots to the inch shows 0.04."""
NEAR = 1e-6
UNITS = {"mm": 1.0, "cm": 10.0, "m": 1000.0}
BY_SLUG = {lesson.slug: lesson for lesson in LESSONS}
ROOMS = [
    (size.text_width, height)
    for size in CARD_SIZES.values()
    for height in (size.picture, size.picture + 20, size.text_height / 2)
]
"""Rooms that cards may leave, from the least up, in millimetres."""


@cache
def figures_of(slug: str) -> tuple[Figure, ...]:
    """Return the figures of a lesson that comes with the project."""
    return figures(BY_SLUG[slug].facts, VOCABULARY)


def plate_of(slug: str, room: tuple[float, float]) -> Rows:
    """Return the figures that a lesson's card shows in some room."""
    return card_plate(BY_SLUG[slug], figures_of(slug), *room)


def shown_in(rows: Rows) -> list[DrawnFigure]:
    """Return the figures of a plate."""
    return [figure for row in rows for figure in row]


SLUG = st.sampled_from(sorted(BY_SLUG))
ROOM = st.sampled_from(ROOMS) | st.tuples(st.floats(50, 100), st.floats(18, 90))


@given(SLUG, ROOM)
def test_every_row_lies_within_the_width_and_all_rows_within_the_height(
    slug: str, room: tuple[float, float]
) -> None:
    width, height = room
    rows = plate_of(slug, room)
    for row in rows:
        assert sum(figure.room for figure in row) + GAP * (len(row) - 1) <= width + NEAR
    assert sum(max(f.height for f in row) + BELOW for row in rows) <= height + NEAR


@given(SLUG, ROOM)
def test_something_is_shown_where_anything_can_be_drawn(
    slug: str, room: tuple[float, float]
) -> None:
    assert len(shown_in(plate_of(slug, room))) >= 1


def test_where_nothing_can_be_drawn_nothing_is_shown() -> None:
    assert card_plate(LESSONS[0], (), 90, 40) == ()


@given(SLUG, ROOM)
def test_figures_keep_the_order_of_the_plate_and_none_stands_twice(
    slug: str, room: tuple[float, float]
) -> None:
    every = [figure.words for figure in figures_of(slug)]
    shown = [figure.words for figure in shown_in(plate_of(slug, room))]
    assert shown == [words for words in every if words in shown]


@given(SLUG, ROOM)
def test_the_organ_of_the_first_key_feature_that_is_drawn_is_shown(
    slug: str, room: tuple[float, float]
) -> None:
    organs = [fact.subject for fact in BY_SLUG[slug].key_facts]
    drawn = {figure.organ for figure in figures_of(slug)}
    first = next((organ for organ in organs if organ in drawn), None)
    shown = {figure.words for figure in shown_in(plate_of(slug, room))}
    of_first = {figure.words for figure in figures_of(slug) if figure.organ == first}
    assert not of_first or shown & of_first


def view_of(figure: DrawnFigure) -> tuple[Box, float]:
    """Return the part of a drawing that is shown, in units, and its millimetres to a unit."""
    (told,) = re.findall(r'viewBox="([^"]+)"', figure.svg)
    left, top, width, height = map(float, told.split())
    assert figure.width / width == pytest.approx(figure.height / height)  # else it would be cropped
    return Box(left, -top - height, left + width, -top), figure.width / width


def pens_of(figure: DrawnFigure) -> list[float]:
    """Return how broad the pens of a drawing are, in its units: line, thin, fine, dotted."""
    return [float(n) for n in re.findall(r"stroke-width:([\d.]+)", figure.svg)]


@given(SLUG, ROOM)
def test_a_figure_is_shown_whole_with_its_pens_and_no_larger_than_it_is_worth(
    slug: str, room: tuple[float, float]
) -> None:
    sketches = {f.words: f.sketch for f in figures_of(slug)}
    for figure in shown_in(plate_of(slug, room)):
        view, scale = view_of(figure)
        ink, half = sketches[figure.words].box, max(pens_of(figure)) / 2 - 0.01
        assert scale <= LARGEST + NEAR
        assert view.left <= ink.left - half
        assert view.right >= ink.right + half
        assert view.bottom <= ink.bottom - half
        assert view.top >= ink.top + half


@given(SLUG, ROOM)
def test_no_pen_is_finer_than_a_tenth_of_a_millimetre(slug: str, room: tuple[float, float]) -> None:
    for figure in shown_in(plate_of(slug, room)):
        _, scale = view_of(figure)
        assert len(pens_of(figure)) == 4
        assert min(pens_of(figure)) * scale >= FINEST


@given(SLUG, ROOM)
def test_a_bar_is_as_long_as_it_says(slug: str, room: tuple[float, float]) -> None:
    """A thing of four centimetres is printed twice as long as a bar of two."""
    sketches = {f.words: f.sketch for f in figures_of(slug)}
    for figure in shown_in(plate_of(slug, room)):
        in_life = sketches[figure.words].scale
        assert (figure.bar is None) == (in_life is None)
        if figure.bar and in_life:
            length, words = figure.bar
            number, unit = words.split("\u00a0")
            _, scale = view_of(figure)
            assert length == pytest.approx(float(number) * UNITS[unit] * in_life * scale)


@pytest.mark.parametrize("slug", sorted(BY_SLUG))
def test_a_figure_is_an_svg_of_black_ink_that_stands_alone(slug: str) -> None:
    for figure in shown_in(plate_of(slug, (95, 60))):
        root = ET.fromstring(figure.svg)  # noqa: S314 - our own SVG
        assert root.tag == "{http://www.w3.org/2000/svg}svg"
        assert "stroke:#000" in figure.svg
        assert "var(" not in figure.svg
        assert set(re.findall(r"#[0-9a-f]{3,6}\b", figure.svg)) == {"#000", "#fff"}


def test_more_room_never_shows_fewer_figures() -> None:
    for slug in BY_SLUG:
        small, large = (len(shown_in(plate_of(slug, (95, high)))) for high in (28, 60))
        assert small <= large


def test_the_finest_pen_of_a_large_figure_is_as_it_was_meant() -> None:
    assert WIDTHS["fine"] * PEN >= FINEST
