"""Where the cards lie on paper, looked at with tools from outside: sizes, backs behind fronts, margins."""

from __future__ import annotations

from itertools import product
from typing import TYPE_CHECKING

import pytest
from PIL import ImageChops, ImageFilter, ImageStat

from helpers.lessons import LESSONS
from helpers.pdfs import cut_out, darkest, page_boxes, page_sizes, rasters_of, words_on
from helpers.printed_cards import (
    DUPLEXES,
    HARMING,
    LETTERS,
    PAPER_NAMES,
    PAPER_WHITE,
    SIZES,
    Shop,
    alphabet,
    assert_all_keeps_inside,
    demo,
    layout_of,
    lying_on_sheets,
    lying_singly,
    names,
)
from helpers.turning import Rectangle
from sallet.cards.imposing import crop_marks, layout_for
from sallet.cards.sizes import BLEED, CARD_SIZES, PAPERS
from sallet.publish.card_files import SHEETS, SINGLE

if TYPE_CHECKING:
    from PIL import Image

    from helpers.pdfs import Word
    from sallet.course.printing import CardName, Duplex, PaperName

PLACES = list(product(SIZES, PAPER_NAMES))
WAYS = list(product(SIZES, PAPER_NAMES, DUPLEXES))
TENTH = 0.1
"""Millimetres."""
DOTS = 150
"""To the inch, where pictures of pages are compared."""


@pytest.fixture(scope="module")
def shop(tmp_path_factory: pytest.TempPathFactory) -> Shop:
    """Return what typesets cards, each document once."""
    return Shop(tmp_path_factory.mktemp("cards"))


# ---- page sizes ---------------------------------------------------------------------------


@pytest.mark.parametrize("size", SIZES)
def test_single_cards_have_their_trimmed_size_and_three_millimetres_of_bleed(
    shop: Shop, size: CardName
) -> None:
    """The boxes of ISO 32000-1 (14.11.2): what is left when cut, and what is printed beyond it."""
    boxes = page_boxes(shop.print(alphabet(size), SINGLE))
    trim = CARD_SIZES[size].trim
    whole = (0, 0, trim.width + 2 * BLEED, trim.height + 2 * BLEED)
    cut = (BLEED, BLEED, trim.width + BLEED, trim.height + BLEED)
    for name, expected in (("MediaBox", whole), ("BleedBox", whole), ("TrimBox", cut)):
        assert boxes[name] == 18 * [pytest.approx(expected, abs=TENTH)]


@pytest.mark.parametrize(("size", "paper"), PLACES)
def test_sheets_have_the_size_of_the_printer_s_paper_upright_or_lying(
    shop: Shop, size: CardName, paper: PaperName
) -> None:
    """A front and a back for each sheet; no page is larger or smaller."""
    layout = layout_for(CARD_SIZES[size].trim, PAPERS[paper])
    sizes = page_sizes(shop.print(alphabet(size), SHEETS, paper))
    sheet = (layout.sheet.width, layout.sheet.height)
    assert sorted(sheet) == pytest.approx(sorted((PAPERS[paper].width, PAPERS[paper].height)))
    assert sizes == 2 * -(-9 // layout.up) * [pytest.approx(sheet, abs=TENTH)]


# ---- margins ------------------------------------------------------------------------------


@pytest.mark.parametrize("size", SIZES)
def test_no_word_and_no_ink_of_a_single_card_leaves_its_room(shop: Shop, size: CardName) -> None:
    pdf = shop.print(alphabet(size), SINGLE)
    assert_all_keeps_inside(pdf, list(lying_singly(9, CARD_SIZES[size].trim)), size)


def test_no_word_and_no_ink_of_the_demo_course_s_cards_leaves_its_room(shop: Shop) -> None:
    single = list(lying_singly(len(LESSONS), CARD_SIZES["A6"].trim))
    assert_all_keeps_inside(shop.print(demo(), SINGLE), single, "A6")
    sheets = list(lying_on_sheets(len(LESSONS), layout_of(demo(), "A4"), "long edge"))
    assert_all_keeps_inside(shop.print(demo(), SHEETS), sheets, "A6")


@pytest.mark.parametrize(("size", "paper", "duplex"), WAYS)
def test_no_word_and_no_ink_of_a_card_on_a_sheet_leaves_its_room(
    shop: Shop, size: CardName, paper: PaperName, duplex: Duplex
) -> None:
    """Of cards on their heads too."""
    lying = list(lying_on_sheets(9, layout_of(alphabet(size), paper), duplex))
    assert_all_keeps_inside(shop.print(alphabet(size), SHEETS, paper, duplex), lying, size)


def blurred(side: Image.Image) -> Image.Image:
    """Return a picture in which letters are grey lines: half a dot to one side does not matter."""
    return side.filter(ImageFilter.GaussianBlur(4))


def difference(one: Image.Image, other: Image.Image) -> float:
    """Return how far two blurred pictures differ, in greys on the average."""
    both = ImageChops.difference(one.resize(other.size), other)
    return float(ImageStat.Stat(both).mean[0])


@pytest.mark.parametrize(("size", "paper", "duplex"), WAYS)
def test_each_back_lies_behind_its_front(
    shop: Shop, size: CardName, paper: PaperName, duplex: Duplex
) -> None:
    """Told by the words that stand where the back must be when the sheet is turned over."""
    cards = alphabet(size)
    pages = words_on(shop.print(cards, SHEETS, paper, duplex))
    for one in lying_on_sheets(9, layout_of(cards, paper), duplex):
        words = {word.text for word in pages[one.page] if is_inside(word, one.at)}
        name, side = names(cards)[one.number], ("front", "back")[one.side]
        assert name in words
        assert {word for word in words if word.endswith(("front", "back"))} == {f"{name[0]}{side}"}


def is_inside(word: Word, part: Rectangle) -> bool:
    """Return whether a word lies in part of a page."""
    across = part.left < word.left and word.right < part.right
    return across and part.top < word.top and word.bottom < part.bottom


@pytest.mark.parametrize(("size", "paper", "duplex"), WAYS)
def test_each_side_on_a_sheet_looks_as_it_does_singly_and_reads_upright_when_turned(
    shop: Shop, size: CardName, paper: PaperName, duplex: Duplex
) -> None:
    """Compared as a picture with every side of every card, and with itself on its head."""
    cards, inside = alphabet(size), CARD_SIZES[size].margin - 0.5
    pages = rasters_of(shop.print(cards, SHEETS, paper, duplex), DOTS)
    sides = single_sides(shop, size)
    for one in lying_on_sheets(9, layout_of(cards, paper), duplex):
        shown = cut_out(pages[one.page], one.at.inside(inside), DOTS)
        upright = blurred(shown.rotate(180) if one.turned else shown)
        apart = {key: difference(upright, side) for key, side in sides.items()}
        own = one.number, one.side
        assert min(apart, key=apart.__getitem__) == own
        assert 2 * apart[own] < difference(upright.rotate(180), sides[own])


def single_sides(shop: Shop, size: CardName) -> dict[tuple[int, int], Image.Image]:
    """Return the pictures of the sides of single cards, inside their margins."""
    pages = rasters_of(shop.print(alphabet(size), SINGLE), DOTS)
    lying = lying_singly(9, CARD_SIZES[size].trim)
    inside = CARD_SIZES[size].margin - 0.5
    return {
        (one.number, one.side): blurred(cut_out(pages[one.page], one.at.inside(inside), DOTS))
        for one in lying
    }


@pytest.mark.parametrize(("size", "paper"), PLACES)
def test_the_crop_marks_are_printed_on_front_and_back(
    shop: Shop, size: CardName, paper: PaperName
) -> None:
    pages = rasters_of(shop.print(alphabet(size), SHEETS, paper), 300)
    for page, mark in product(pages[:2], crop_marks(layout_of(alphabet(size), paper))):
        x, y = mark.x + mark.across / 2, mark.y + mark.down / 2
        assert darkest(cut_out(page, Rectangle(x, y, x, y).inside(-0.15), 300)) < PAPER_WHITE


@pytest.mark.parametrize("size", SIZES)
def test_a_plant_that_harms_has_a_band_that_runs_into_the_bleed_and_a_food_has_none(
    shop: Shop, size: CardName
) -> None:
    pages = rasters_of(shop.print(alphabet(size), SINGLE), DOTS)
    order = names(alphabet(size))
    at = [order.index(f"{LETTERS[number]}-plant") for number in HARMING]
    harm = {2 * number + side for number, side in product(at, (0, 1))}
    for number, page in enumerate(pages):
        corner = cut_out(page, Rectangle(0, 0, BLEED + 1, BLEED + 1), DOTS)
        lightest, darkest_dot = corner.getextrema()[::-1]
        if number in harm:
            assert lightest < PAPER_WHITE  # type: ignore[operator]
        else:
            assert darkest_dot == 255
