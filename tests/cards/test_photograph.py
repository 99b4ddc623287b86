"""Photographs on cards: which, how large, and never coarser than 300 pixels to the inch."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from helpers.cards import cards_of
from helpers.workshop import bank_of
from sallet.cards.model import Photograph
from sallet.cards.photograph import (
    FINEST_NEEDED,
    INCH,
    first_photograph,
    is_coarse,
    pixels_wanted,
    printed_size,
)
from sallet.cards.sizes import CARD_SIZES
from sallet.lesson.bank import PictureFile

RIGHTS = "- credit: Ann Bell\n- licence: CC BY 4.0\n"
LESSON = f"""---
name: Ramsons
---
## Pictures
### lost.jpg
- shows: nothing
{RIGHTS}### leaf.jpg
- shows: a leaf
{RIGHTS}### flower.jpg
- shows: a flower
{RIGHTS}"""
FILES = {"ramsons.md": LESSON, "leaf.jpg": "2400x1600", "flower.jpg": "1600x2400"}
PIXELS = st.integers(1, 9000)


def test_the_first_picture_at_hand_is_the_cards() -> None:
    bank = bank_of(FILES)
    found = first_photograph(bank.lessons[0], bank)
    assert found is not None
    assert (found.picture.shows, found.file) == ("a leaf", PictureFile("leaf.jpg", 2400, 1600))
    assert found.credit == "Ann Bell, CC BY 4.0"


def test_a_lesson_without_pictures_has_none() -> None:
    bank = bank_of({"ramsons.md": "---\nname: Ramsons\n---\n"})
    assert first_photograph(bank.lessons[0], bank) is None


@pytest.mark.parametrize(("size", "taken"), [("2400x1600", True), ("240x160", False)])
def test_a_coarse_photograph_gives_way_to_the_drawing(size: str, taken: bool) -> None:  # noqa: FBT001
    card = cards_of({"course.yml": "title: Walks\n", **FILES, "leaf.jpg": size})[0]
    assert isinstance(card.photograph, Photograph) == taken


def test_the_pixels_wanted_fill_the_least_room_at_300_to_the_inch() -> None:
    """A6: 23 mm high without the line of the credit; 23 mm / 25.4 × 300 = 272."""
    assert pixels_wanted(PictureFile("x", 300, 200), CARD_SIZES["A6"]) == (407, 272)
    assert pixels_wanted(PictureFile("x", 200, 300), CARD_SIZES["A6"]) == (181, 272)


@given(PIXELS, PIXELS, st.floats(5, 150), st.floats(5, 150))
def test_a_photograph_keeps_its_shape_its_room_and_300_pixels_to_the_inch(
    across: int, down: int, width: float, height: float
) -> None:
    file = PictureFile("x", across, down)
    wide, high = printed_size(file, width, height)
    assert wide <= width + 1e-6
    assert high <= height + 1e-6
    assert wide / high == pytest.approx(across / down)
    assert across / (wide / INCH) >= FINEST_NEEDED - 1e-6
    assert down / (high / INCH) >= FINEST_NEEDED - 1e-6


@given(PIXELS, PIXELS)
def test_what_is_not_coarse_fills_the_least_room(across: int, down: int) -> None:
    file, size = PictureFile("x", across, down), CARD_SIZES["A6"]
    wanted = pixels_wanted(file, size)
    assert is_coarse(file, size) == (across < wanted[0] or down < wanted[1])
