"""The sizes of cards and sheets against the standards that name them."""

from __future__ import annotations

from itertools import pairwise
from typing import get_args

import pytest

from sallet.cards.sizes import CARD_SIZES, COMFORTABLE, FLOOR, PAPERS, STEP, CardSize, Size, points
from sallet.course.printing import CardName, PaperName

INCH = 25.4
"""Millimetres, exactly: international yard and pound agreement, 1 July 1959."""
ISO_216 = {"A4": (210, 297), "A6": (105, 148), "A7": (74, 105)}
"""Trimmed sizes of ISO 216:2007, in millimetres."""


@pytest.mark.parametrize("name", ["A6", "A7"])
def test_a_sizes_of_cards_are_those_of_iso_216(name: CardName) -> None:
    trim = CARD_SIZES[name].trim
    assert (trim.width, trim.height) == ISO_216[name]


@pytest.mark.parametrize(("name", "inches"), [("4×6 in", (4, 6)), ("3×5 in", (3, 5))])
def test_cards_in_inches_are_exact(name: CardName, inches: tuple[int, int]) -> None:
    trim = CARD_SIZES[name].trim
    assert (trim.width, trim.height) == pytest.approx([inch * INCH for inch in inches], abs=1e-9)


def test_papers_are_those_of_the_standards() -> None:
    """Letter is 8.5 × 11 in (size A of ANSI/ASME Y14.1)."""
    assert (PAPERS["A4"].width, PAPERS["A4"].height) == ISO_216["A4"]
    letter = (PAPERS["Letter"].width, PAPERS["Letter"].height)
    assert letter == pytest.approx((8.5 * INCH, 11 * INCH), abs=1e-9)


def test_every_name_that_course_yml_knows_has_its_size() -> None:
    assert set(CARD_SIZES) == set(get_args(CardName))
    assert set(PAPERS) == set(get_args(PaperName))


def test_a_size_lying_on_its_side_has_width_and_height_changed() -> None:
    assert Size(105, 148).turned == Size(148, 105)


def test_the_text_has_what_the_margins_leave() -> None:
    size = CardSize(Size(100, 150), margin=6, picture=30)
    assert (size.text_width, size.text_height) == (88, 138)


@pytest.mark.parametrize("name", sorted(CARD_SIZES))
def test_every_card_has_margins_and_room_for_text_and_picture(name: CardName) -> None:
    size = CARD_SIZES[name]
    assert 3 <= size.margin <= 6
    assert 0 < size.picture < size.text_height / 2


def test_text_is_tried_from_comfortable_down_to_the_floor_and_no_smaller() -> None:
    """7 pt: the floor for labels in the European readability guideline for medicines (2009)."""
    tried = points()
    assert (tried[0], tried[-1]) == (COMFORTABLE, FLOOR) == (10, 7)
    assert {a - b for a, b in pairwise(tried)} == {STEP}
