"""The page of all that is there on paper."""

from __future__ import annotations

from dataclasses import replace

from helpers.cards import setting_of
from helpers.courses import seen, site_of
from sallet.cards.printed import measure_print
from sallet.publish import card_files
from sallet.publish.pages import build_pages
from sallet.publish.papers_page import FULL_SIZE, STACK, Paper, Papers, papers, walk_sheets
from sallet.publish.prints import print_jobs

FILES = {
    "course.yml": (
        "title: Walks\nemergency: [Ring 999]\n"
        "sessions: [{date: 2027-04-03, title: Leaves}, {date: 2027-04-17}]\n"
    ),
    "ash.md": "---\nname: Ash\n---\n## Season\n- leaves: May\n",
    "oak.md": "---\nname: Oak\n---\n",
}
SITE = replace(site_of(FILES), printed=measure_print(setting_of(FILES)))
PRINTS = print_jobs(SITE)


def test_every_file_is_named_once_with_how_to_print_it() -> None:
    found = papers(SITE, PRINTS)
    assert found[0] == Papers(
        "Field cards for your printer",
        (
            (
                "4 cards of A6 on a sheet of A4, with shared cuts, without bleed. Print on both sides, "
                "turned over the long edge, on card of 200 to 300 g."
            ),
            FULL_SIZE,
            STACK,
        ),
        (Paper("print/field-cards.pdf", "All cards on A4"),),
    )
    assert [kind.title for kind in found] == [
        "Field cards for your printer", "Field cards for a print shop", "A card by itself",
        "Walk sheets", "The year on a sheet",
    ]  # fmt: skip
    paths = [paper.path for kind in found for paper in kind.files]
    assert sorted(paths) == sorted(PRINTS)


def test_files_are_called_by_plant_date_and_paper() -> None:
    names = {kind.title: [paper.name for paper in kind.files] for kind in papers(SITE, PRINTS)}
    assert names["A card by itself"] == ["Ash", "Oak"]
    assert names["Walk sheets"] == ["Saturday 3 April 2027: Leaves", "Saturday 17 April 2027"]
    assert names["The year on a sheet"] == ["On A4", "On A3"]


def test_another_size_and_paper_are_told_with_their_bleed() -> None:
    site = replace(SITE, course=replace(SITE.course, cards=replace(
        SITE.course.cards, size="3×5 in", paper="Letter", duplex="short edge")))  # fmt: skip
    about = papers(site, PRINTS)[0].about[0]
    assert about.startswith("4 cards of 3×5 in on a sheet of Letter, with 3 mm of bleed. ")
    assert "turned over the short edge" in about


def test_cards_in_several_files_are_told_as_parts() -> None:
    made = dict.fromkeys(["print/field-cards.pdf", "print/field-cards-2.pdf",
                          "print/field-cards-single.pdf"])  # fmt: skip
    kinds = {kind.title: kind.files for kind in papers(SITE, made)}
    assert kinds["Field cards for your printer"] == (
        Paper("print/field-cards.pdf", "All cards on A4, part 1"),
        Paper("print/field-cards-2.pdf", "All cards on A4, part 2"),
    )
    assert [paper.path for paper in kinds["Field cards for a print shop"]] == [card_files.SINGLE]


def test_each_session_has_its_walk_sheet() -> None:
    assert walk_sheets(SITE, PRINTS) == {
        1: "print/walks/2027-04-03.pdf",
        2: "print/walks/2027-04-17.pdf",
    }


def test_the_pages_lead_to_the_papers() -> None:
    pages = {page.path: page.text for page in build_pages(SITE, PRINTS)}
    links = {path: [a.attributes["href"] for a in seen(text).all("a")] for path, text in pages.items()
             if path.endswith(".html")}  # fmt: skip
    assert "../print/cards/ash.pdf" in links["plants/ash.html"]
    assert "print/walks/2027-04-03.pdf" in links["syllabus.html"]
    assert {path for path in links["papers.html"] if path.startswith("print/")} == set(PRINTS)


def test_without_print_no_page_leads_to_a_paper() -> None:
    pages = {page.path: page.text for page in build_pages(site_of(FILES))}
    assert not [path for path, text in pages.items() if "print/" in text and path.endswith("html")]
    assert "This course has nothing to print yet." in pages["papers.html"]
