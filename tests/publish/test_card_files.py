"""The documents of the field cards: which there are, and what is given to each."""

from __future__ import annotations

import io
from typing import TYPE_CHECKING, Any

import pytest
from PIL import Image

from helpers.cards import cards_of, drawn, setting_of
from helpers.pdfs import printed
from sallet.cards.fitting import Fitted, SideFit, fit_cards
from sallet.cards.photograph import FINEST_NEEDED, INCH
from sallet.cards.sizes import BLEED, CARD_SIZES
from sallet.publish import card_files
from sallet.publish.card_files import FINEST, card_jobs, is_card_file
from sallet.typesetting.engine import typeset

if TYPE_CHECKING:
    from pathlib import Path

    from sallet.typesetting.jobs import Job

COURSE = "title: Walks\nteacher: Ann Wright\nlanguage: en-GB\n"
NAMES = ("Ash", "Elm", "Oak")
FILES = {"course.yml": COURSE} | {f"{n.casefold()}.md": f"---\nname: {n}\n---\n" for n in NAMES}
LEAF = """---
name: Ash
---
## Identification
### Leaves
- **shape**: ovate
- division: simple
- margin: entire
- attachment: stalked
"""
PICTURE = "## Pictures\n### leaf.jpg\n- shows: one leaf\n- credit: Ann Bell\n- licence: CC0\n"


def jobs_of(files: dict[str, str]) -> dict[str, Job]:
    """Return the documents of a course's cards by path."""
    setting = setting_of(files)
    course = setting.course
    fitted = fit_cards(cards_of(files), course.cards.size, course.language)
    return dict(card_jobs(fitted, course, drawn))


def card_in(job: Job) -> dict[str, Any]:
    """Return the values of the first card of a document."""
    card: dict[str, Any] = job.data["cards"][0]
    return card


def test_there_is_a_file_for_the_printer_one_for_the_shop_and_one_for_each_plant() -> None:
    jobs = jobs_of(FILES)
    assert {path: (job.template, job.cards) for path, job in jobs.items()} == {
        "print/field-cards.pdf": ("sheets", 3),
        "print/field-cards-single.pdf": ("single", 3),
        "print/cards/ash.pdf": ("single", 1),
        "print/cards/elm.pdf": ("single", 1),
        "print/cards/oak.pdf": ("single", 1),
    }
    assert all(map(is_card_file, jobs))


@pytest.mark.parametrize(
    "path", ["index.html", "print/walks/2027-04-03.pdf", "print/test-paper.pdf", "plates/ash.svg"]
)
def test_other_files_are_no_cards(path: str) -> None:
    assert not is_card_file(path)


def test_more_cards_than_one_process_sets_go_into_several_files(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(card_files, "CARDS_AT_ONCE", 2)
    jobs = jobs_of(FILES)
    names = {path: [card["name"] for card in job.data["cards"]] for path, job in jobs.items()}
    assert {path: names[path] for path in names if not path.startswith("print/cards/")} == {
        "print/field-cards.pdf": ["Ash", "Elm"],
        "print/field-cards-single.pdf": ["Ash", "Elm"],
        "print/field-cards-2.pdf": ["Oak"],
        "print/field-cards-single-2.pdf": ["Oak"],
    }
    assert all(map(is_card_file, jobs))


def test_a_card_that_does_not_fit_is_in_no_file() -> None:
    side = SideFit(7, fits=False, over=3, height=143)
    setting = setting_of(FILES)
    fitted = [Fitted(card, "A6", {"front": side, "back": side}) for card in cards_of(FILES)]
    assert list(card_jobs(fitted, setting.course, drawn)) == []


def test_the_documents_have_title_author_language_and_size() -> None:
    jobs = jobs_of(FILES)
    told = [jobs[path].data["title"] for path in ("print/field-cards.pdf", "print/cards/elm.pdf")]
    assert told == ["Field cards: Walks", "Field card: Elm"]
    data = jobs["print/field-cards-single.pdf"].data
    assert (data["author"], data["language"], data["bleed"]) == (["Ann Wright"], "en-GB", BLEED)
    assert data["size"] == {"width": 105, "height": 148, "margin": 4, "picture": 28}


def test_the_sheets_have_fronts_and_their_backs_for_the_courses_paper() -> None:
    letter = COURSE + "cards: {size: 4x6 in, paper: Letter, duplex: short edge}\n"
    sheet = jobs_of({**FILES, "course.yml": letter})["print/field-cards.pdf"].data["sheet"]
    assert (sheet["width"], sheet["height"], sheet["bleed"]) == (279.4, 215.9, BLEED)
    assert [page["back"] for page in sheet["pages"]] == [False, True, False, True]
    assert [[spot["card"] for spot in page["spots"]] for page in sheet["pages"]] == [
        [0, 2], [0, 2], [1], [1],
    ]  # fmt: skip


def test_the_drawing_fills_the_room_that_the_words_leave() -> None:
    files = {"course.yml": COURSE, "ash.md": LEAF}
    job = jobs_of(files)["print/cards/ash.pdf"]
    card = card_in(job)
    assert card["room"] >= CARD_SIZES["A6"].picture
    assert [figure["words"] for row in card["drawing"] for figure in row] == ["leaf"]
    assert card["drawing"][0][0]["alt"] == "Drawing of Ash: leaf"
    assert list(job.pictures) == ["ash-1.svg"]
    assert card["photograph"] is None


def test_where_nothing_can_be_drawn_there_is_no_drawing() -> None:
    card = card_in(jobs_of(FILES)["print/cards/ash.pdf"])
    assert (card["drawing"], card["photograph"]) == ([], None)


@pytest.mark.parametrize("size", [(640, 480), (4000, 3000)])
def test_a_photograph_takes_the_drawings_place_in_pixels_enough_for_print(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, size: tuple[int, int]
) -> None:
    monkeypatch.chdir(tmp_path)
    Image.linear_gradient("L").resize(size).save(tmp_path / "leaf.jpg")
    files = {"course.yml": COURSE, "ash.md": LEAF + PICTURE, "leaf.jpg": f"{size[0]}x{size[1]}"}
    job = jobs_of(files)["print/cards/ash.pdf"]
    card = card_in(job)
    assert card["drawing"] == []
    assert card["credit"] == "Photograph: Ann Bell, CC0"
    shown = card["photograph"]
    assert (shown["file"], shown["alt"]) == ("ash.jpg", "one leaf")
    with Image.open(io.BytesIO(job.pictures["ash.jpg"])) as image:
        fineness = image.width / (shown["width"] / INCH)
        assert image.format == "JPEG"
        assert dict(image.getexif()) == {}
    assert FINEST_NEEDED - 1 <= fineness <= max(FINEST + 1, FINEST_NEEDED + 1)
    assert shown["height"] <= card["room"] + 1e-6


@pytest.mark.parametrize("size", [(640, 480), (500, 900), (4000, 3000)])
@pytest.mark.parametrize("card", ["A6", "A7", "4x6 in", "3x5 in"])
def test_in_the_pdf_a_photograph_has_300_pixels_to_the_inch_and_its_shape(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, size: tuple[int, int], card: str
) -> None:
    monkeypatch.chdir(tmp_path)
    Image.linear_gradient("L").resize(size).save(tmp_path / "leaf.jpg")
    course = COURSE + f"cards: {{size: {card}}}\n"
    files = {"course.yml": course, "ash.md": LEAF + PICTURE, "leaf.jpg": f"{size[0]}x{size[1]}"}
    (tmp_path / "card.pdf").write_bytes(next(typeset([jobs_of(files)["print/cards/ash.pdf"]])))
    _, _, only = printed("pdfimages", "-list", tmp_path / "card.pdf").strip().split("\n")
    kind, width, height, across, down = (only.split()[at] for at in (2, 3, 4, 12, 13))
    assert kind == "image"
    assert min(int(across), int(down)) >= FINEST_NEEDED
    assert int(width) / int(height) == pytest.approx(size[0] / size[1], rel=0.01)
