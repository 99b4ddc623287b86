"""The field cards as they go to the printer, looked at with tools from outside: standards and words."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise
from typing import TYPE_CHECKING

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from helpers.cards import cards_of, drawn, setting_of
from helpers.lessons import LESSONS
from helpers.pdfs import (
    POINT,
    assert_is_sound,
    bare,
    cut_out,
    fonts_of,
    headings_of,
    info_of,
    metadata_of,
    pages_of,
    rasters_of,
    ua_finds,
    words_on,
)
from helpers.printed_cards import (
    BAND,
    PAPER_WHITE,
    SIZES,
    Shop,
    alphabet,
    assert_all_keeps_inside,
    demo,
    lying_singly,
    names,
)
from helpers.qr import read_qr
from helpers.turning import Rectangle
from sallet.cards.fitting import fit_cards
from sallet.cards.plain import runs
from sallet.cards.sizes import BLEED, CARD_SIZES, FLOOR
from sallet.checks import card_too_full, card_word_too_wide
from sallet.course.model import Printing
from sallet.lesson.dangers import DANGERS
from sallet.publish.card_files import SHEETS, SINGLE, card_jobs, card_path
from sallet.publish.prints import set_in_print

if TYPE_CHECKING:
    from collections.abc import Iterator

    from PIL import Image

    from sallet.course.printing import CardName
    from sallet.lesson.model import Lesson


@pytest.fixture(scope="module")
def shop(tmp_path_factory: pytest.TempPathFactory) -> Shop:
    """Return what typesets cards, each document once."""
    return Shop(tmp_path_factory.mktemp("cards"))


def test_every_card_of_the_demo_course_fits_on_its_size_and_on_4_by_6_inches() -> None:
    assert names(demo()) == [fitted.card.lesson.name for fitted in demo().fitted]
    assert len(names(demo())) == len(LESSONS) == len(names(demo("4×6 in")))


def test_every_card_of_plants_a_to_i_fits_on_every_size() -> None:
    assert {len(names(alphabet(size))) for size in SIZES} == {9}


# ---- the documents ------------------------------------------------------------------------

DOCUMENTS = [SHEETS, SINGLE, card_path("hemlock"), card_path("ramsons")]


@pytest.mark.parametrize("path", DOCUMENTS)
def test_a_document_is_sound_tagged_and_keeps_the_standards(shop: Shop, path: str) -> None:
    """The checker decides 16 of the 106 failure conditions of PDF/UA-1 that a program can decide."""
    pdf = shop.print(demo(), path)
    assert_is_sound(pdf)
    assert ua_finds(pdf) == []
    told = metadata_of(pdf)
    assert [told[name] for name in ("pdfaid:part", "pdfaid:conformance", "pdfuaid:part")] == [
        "2", "A", "1",
    ]  # fmt: skip
    info = info_of(pdf)
    assert (info["Tagged"], info["Author"]) == ("yes", "Maren Holloway")
    assert info["Title"].startswith("Field card")


@pytest.mark.parametrize("path", DOCUMENTS)
def test_all_letters_are_of_one_family_and_in_the_file(shop: Shop, path: str) -> None:
    found = fonts_of(shop.print(demo(), path))
    assert {name.split("-")[0] for name, _ in found} == {"LibertinusSerif"}
    assert all(embedded for _, embedded in found)


@pytest.mark.parametrize("path", DOCUMENTS)
def test_headings_begin_at_the_first_level_and_skip_none(shop: Shop, path: str) -> None:
    levels = headings_of(shop.print(demo(), path))
    assert levels[0] == 1
    assert all(after <= before + 1 for before, after in pairwise(levels))


def test_the_same_cards_give_the_same_bytes(shop: Shop) -> None:
    path = card_path("ramsons")
    jobs = dict(card_jobs(demo().fitted, demo().course, drawn))
    assert set_in_print({path: jobs[path]})[path] == shop.print(demo(), path).read_bytes()


# ---- every word ---------------------------------------------------------------------------


def words_in(markdown: str) -> str:
    """Return the words of a text as print has them."""
    return "".join(run.text for run in runs(markdown))


def must_stand(lesson: Lesson) -> Iterator[str]:
    """Yield what no card may lack, from the lesson itself: as worded for the card, or whole."""
    for caution in lesson.cautions:
        yield caution.kind
        yield words_in(caution.on_card or f"{caution.text.value}")
        yield words_in("" if caution.on_card else caution.note.text)
    for removal in lesson.removals if lesson.is_food else ():
        yield removal.name.value
        yield words_in(removal.on_card or removal.reason.value)
        yield words_in("" if removal.on_card else removal.note.text)
    for look in lesson.look_alikes:
        yield look.name.value
        yield words_in(look.on_card or look.prose.text)
    for fact in lesson.key_facts:
        yield fact.label
        yield words_in(fact.on_card or fact.note.text)
    for part in lesson.edible_parts if lesson.is_food else ():
        yield part.timing.name
        yield words_in(part.on_card or part.timing.note.text)


@pytest.mark.parametrize("number", range(len(LESSONS)))
def test_every_caution_removal_look_alike_and_key_feature_is_printed(
    shop: Shop, number: int
) -> None:
    """On the plant's own two pages; letters compared without blanks and hyphens."""
    card = demo().fitted[number].card
    pages = pages_of(shop.print(demo(), SINGLE))[2 * number : 2 * number + 2]
    letters = "".join(pages)
    assert [words for words in must_stand(card.lesson) if bare(words) not in letters] == []
    always = (*card.standing, *card.emergency, *card.stamps, card.lesson.front.scientific_name)
    assert [words for words in always if bare(words) not in letters] == []


@pytest.mark.parametrize("number", range(len(LESSONS)))
def test_both_sides_say_the_plant_its_danger_in_a_word_and_all_of_their_lines(
    shop: Shop, number: int
) -> None:
    """In the order in which they are to be read."""
    card = demo().fitted[number].card
    pages = pages_of(shop.print(demo(), SINGLE))[2 * number : 2 * number + 2]
    for side, page in zip(card.sides, pages, strict=True):
        assert bare(card.lesson.name) in page
        assert bare(" ".join(DANGERS[card.danger])) in page
        at = 0
        for line in side.lines:
            words = bare(line.text)
            assert words in page[at:]
            at = page.index(words, at) + len(words)


def test_a_plant_s_own_card_is_the_same_as_among_all(shop: Shop) -> None:
    all_pages = pages_of(shop.print(demo(), SINGLE))
    at = names(demo()).index("Ramsons")
    assert pages_of(shop.print(demo(), card_path("ramsons"))) == all_pages[2 * at : 2 * at + 2]


def test_the_sheets_hold_the_same_words_as_the_single_cards(shop: Shop) -> None:
    single = "".join(pages_of(shop.print(demo(), SINGLE)))
    sheets = "".join(pages_of(shop.print(demo(), SHEETS)))
    assert sorted(sheets) == sorted(single)


def height_of_letters(points: float) -> float:
    """Return how high poppler takes a word of so many points: 1.14 of it in this family."""
    return 1.14 * points * POINT


def test_no_letter_is_smaller_than_the_floor(shop: Shop) -> None:
    """7 pt: the floor for labels in the European readability guideline for medicines (2009)."""
    small = {
        word.text
        for page in words_on(shop.print(demo(), SINGLE))
        for word in page
        if word.bottom - word.top < height_of_letters(FLOOR) - 0.02
    }
    assert small == set()


# ---- the code -----------------------------------------------------------------------------


@pytest.mark.parametrize("number", [0, 5, 27])
def test_the_printed_code_says_the_address_and_has_its_quiet_zone(shop: Shop, number: int) -> None:
    """Four squares of bare paper all round (ISO/IEC 18004), read from a picture of the back."""
    address = demo().fitted[number].card.address
    assert address is not None
    dots, count = 600, len(address.squares)
    page = rasters_of(shop.print(demo(), card_path(demo().fitted[number].card.lesson.slug)), dots)[
        1
    ]
    size, margin = CARD_SIZES["A6"].trim, CARD_SIZES["A6"].margin
    right, bottom = BLEED + size.width - margin, BLEED + size.height - BAND
    dark = cut_out(page, Rectangle(right - 14, bottom - 40, right, bottom), dots).point(
        lambda grey: 255 if grey < PAPER_WHITE else 0
    )
    code = lowest_block(dark)
    side = (code[2] - code[0]) / count
    assert side == pytest.approx((code[3] - code[1]) / count, rel=0.02)
    assert side / dots * 25.4 >= 0.3
    quiet = dark.crop((code[0] - round(3.9 * side), code[1] - round(3.9 * side),
                       code[2] + round(3.9 * side), code[3] + round(3.9 * side)))  # fmt: skip
    assert quiet.getbbox() == tuple(
        round(3.9 * side) + at for at in (0, 0, code[2] - code[0], code[3] - code[1])
    )
    squares = [
        "".join("1" if dark.getpixel((round(code[0] + (c + 0.5) * side), round(code[1] + (r + 0.5) * side)))
                else "0" for c in range(count))
        for r in range(count)
    ]  # fmt: skip
    assert tuple(squares) == address.squares
    assert read_qr(squares) == address.url


def lowest_block(dark: Image.Image) -> tuple[int, int, int, int]:
    """Return what the lowest thing with paper above and below it covers."""
    rows = [dark.crop((0, y, dark.width, y + 1)).getbbox() is not None for y in range(dark.height)]
    last = max(y for y, inked in enumerate(rows) if inked)
    first = last
    while first and rows[first - 1]:
        first -= 1
    box = dark.crop((0, first, dark.width, last + 1)).getbbox()
    assert box is not None
    return box[0], first, box[2], last + 1


# ---- long texts ---------------------------------------------------------------------------

SENTENCES = st.lists(
    st.sampled_from(["wash", "never", "raw", "leaf", "of each", "plant", "twice", "thoroughly",
                     "and throw the water away,", "children", "Hemlockwaterdropwortlookalikes"]),
    min_size=1, max_size=45,
).map(" ".join)  # fmt: skip
CAUTIONS = st.lists(SENTENCES, min_size=1, max_size=14)


@settings(max_examples=30)
@given(CAUTIONS, CAUTIONS, st.sampled_from(SIZES))
def test_a_long_text_is_printed_whole_or_stops_the_course_and_is_never_shorter(
    tmp_path_factory: pytest.TempPathFactory,
    cautions: list[str],
    looks: list[str],
    size: CardName,
) -> None:
    text = "---\nname: Ramsons\n---\n## Cautions\n" + "".join(f"- law: {c}\n" for c in cautions)
    text += "## Look-alikes\n" + "".join(f"### Twin\n{look}\n\n" for look in looks)
    files = {"course.yml": "title: Walks\n", "ramsons.md": text}
    setting = setting_of(files)
    course = replace(setting.course, cards=Printing(size))
    (fitted,) = fit_cards(cards_of(files), size, "en")
    jobs = dict(card_jobs([fitted], course, drawn))
    found = [
        *card_too_full.check(fitted, setting.bank),
        *card_word_too_wide.check(fitted, setting.bank),
    ]
    assert bool(found) == (not fitted.fits) == (card_path("ramsons") not in jobs)
    if fitted.fits:
        path = card_path("ramsons")
        pdf = tmp_path_factory.mktemp("long") / "card.pdf"
        pdf.write_bytes(set_in_print({path: jobs[path]})[path])
        front, back = pages_of(pdf)
        assert "".join(f"law:{bare(c)}" for c in cautions) in back
        assert all(bare(look) in front for look in looks)
        assert_all_keeps_inside(pdf, list(lying_singly(1, CARD_SIZES[size].trim)), size)
