"""The season map for the wall."""

from __future__ import annotations

import pytest

from helpers.courses import site_of
from helpers.papers import (
    HOSTILE,
    alternatives_of,
    assert_is_sound,
    bare,
    demo_site,
    heights_of,
    pdfs_of,
    sizes_of,
    words_of,
)
from helpers.years import year_of
from sallet.publish.paper_poster import alt_words, poster_papers, year_alt
from sallet.season.strip import strip_words

RAMSONS = """---
name: Ramsons
---
## Season
- leaves: March to June
## Edible parts
- leaves: March to May; raw
"""
COURSE = """title: Hedge and beck
place: {name: Askerby Bridge}
cards: {paper: PAPER}
emergency: [Ring 999 at once]
sessions:
  - {date: 2027-05-01, holds: 0}
  - {date: 2027-06-05, holds: 0}
"""
MANY = {f"p{n}.md": f"---\nname: Plant {n}\n---\n## Season\n- leaves: May\n" for n in range(50)}


# ---- in words -----------------------------------------------------------------------------


def test_a_plants_year_is_said_in_words() -> None:
    assert year_alt(year_of(RAMSONS)) == (
        "Ramsons (food): eat leaves: March to May; leaves: March to June."
    )


def test_a_plant_without_times_says_so() -> None:
    hemlock = "---\nname: Hemlock\ntaught as: look-alike\ndanger: deadly\n---\n"
    assert year_alt(year_of(hemlock)) == "Hemlock (deadly): times not known."


def test_the_words_of_a_sheet_are_its_plants_and_the_days_of_the_class() -> None:
    site = site_of({"course.yml": COURSE.replace("PAPER", "A4"), "ramsons.md": RAMSONS})
    assert alt_words(site.years, site) == (
        "The plants of the course through the year. "
        "Ramsons (food): eat leaves: March to May; leaves: March to June. "
        "The class meets on 1 May (1) and 5 June (2)."
    )


# ---- what the template is given -----------------------------------------------------------


def test_the_poster_as_its_template_is_given_it() -> None:
    site = site_of({"course.yml": COURSE.replace("PAPER", "A4"), "ramsons.md": RAMSONS})
    (_, small), (path, large) = poster_papers(site)
    (sheet,) = large.data["sheets"]
    assert path == "print/season-map-a3.pdf"
    assert large.data == {
        "title": "The year on a sheet, Askerby Bridge · Hedge and beck",
        "course": "Hedge and beck",
        "author": [],
        "language": "en",
        "paper": {"width": 297, "height": 420},
        "draft": False,
        "larger": 297 / 210,
        "margin": 10,
        "heading": "Hedge and beck, Askerby Bridge",
        "sheets": [sheet],
        "notes": list(site.year_notes),
        "notes_fit": True,
        "emergency": {
            "lines": ["Ring 999 at once"],
            "keep": "Keep the plant: nobody can name one by telephone.",
        },
    }
    assert (sheet["file"], sheet["alt"]) == ("sheet-1.svg", alt_words(site.years, site))
    assert [file for file, _ in sheet["key"]] == list(large.pictures)[1:]
    assert list(small.pictures) == list(large.pictures)


def test_a_course_without_plants_has_no_poster() -> None:
    assert list(poster_papers(site_of({"course.yml": COURSE.replace("PAPER", "A4")}))) == []


# ---- in print -----------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("paper", "sizes"),
    [
        ("A4", {"season-map-a4": (297, 210), "season-map-a3": (420, 297)}),
        ("Letter", {"season-map-letter": (279.4, 215.9), "season-map-tabloid": (431.8, 279.4)}),
    ],
)
def test_the_poster_lies_on_its_side_on_two_sizes_of_paper(
    paper: str, sizes: dict[str, tuple[float, float]]
) -> None:
    site = site_of({"course.yml": COURSE.replace("PAPER", paper), "ramsons.md": RAMSONS})
    pdfs = pdfs_of(poster_papers(site))
    assert {path: sizes_of(pdf) for path, pdf in pdfs.items()} == {
        f"print/{name}.pdf": [size] for name, size in sizes.items()
    }
    for pdf in pdfs.values():
        assert_is_sound(pdf)


def test_more_plants_than_a_sheet_holds_go_on_further_sheets_each_with_key_and_warning() -> None:
    site = site_of({"course.yml": COURSE.replace("PAPER", "A4"), **MANY})
    for pdf in pdfs_of(poster_papers(site)).values():
        words = words_of(pdf)
        assert len(sizes_of(pdf)) == 2
        for n in (1, 2):
            assert f"sheet {n} of 2" in words
        for told in ("Do not eat what you have not identified", "Ring 999", "thin hollow bar"):
            assert words.count(told) == 2
        for n in range(50):
            assert f"Plant {n} ❧ food" in words


def test_notes_too_long_for_a_sheet_have_a_page_of_their_own() -> None:
    seen = [
        text.replace(
            "---\n## S", f"seen at: {{latitude: {40 + int(n) / 2}, longitude: 1}}\n---\n## S"
        )
        for n, text in enumerate(MANY.values())
    ][:12]
    course = COURSE.replace("PAPER", "A4").replace(
        "Askerby Bridge}", "Askerby Bridge, latitude: 54, longitude: -2}"
    )
    site = site_of({"course.yml": course, **{f"p{n}.md": text for n, text in enumerate(seen)}})
    notes = site.year_notes
    assert sum(map(len, notes)) > 600
    for pdf in pdfs_of(poster_papers(site)).values():
        words = words_of(pdf)
        assert len(sizes_of(pdf)) == 2
        assert "Why the dates are what they are is told on the last page." in words
        for note in notes:
            assert bare(note) in bare(words)


def test_a_draft_says_so() -> None:
    files = {"course.yml": COURSE.replace("PAPER", "A4"), "ramsons.md": RAMSONS}
    for pdf in pdfs_of(poster_papers(site_of(files, draft=True))).values():
        assert "Draft. This course has faults that must be mended first." in words_of(pdf)


def test_names_are_never_read_as_commands() -> None:
    quoted = HOSTILE.replace("'", "''")
    course = COURSE.replace("PAPER", "A4").replace("Hedge and beck", f"'{quoted}'")
    ramsons = RAMSONS.replace("name: Ramsons", f"name: '{quoted}'")
    for pdf in pdfs_of(poster_papers(site_of({"course.yml": course, "r.md": ramsons}))).values():
        assert bare(words_of(pdf)).count(bare(HOSTILE)) >= 1


def test_the_same_course_gives_the_same_bytes() -> None:
    site = site_of({"course.yml": COURSE.replace("PAPER", "A4"), "ramsons.md": RAMSONS})
    assert pdfs_of(poster_papers(site)) == pdfs_of(poster_papers(site))


def test_the_poster_of_the_demo_course() -> None:
    """All names are text of seven points at least, and the drawing is told in words."""
    site = demo_site()
    small, large = pdfs_of(poster_papers(site)).values()
    for pdf in (small, large):
        assert_is_sound(pdf)
        assert len(sizes_of(pdf)) == 1
        words, told_of = words_of(pdf), alternatives_of(pdf)
        assert told_of == [alt_words(site.years, site)]
        for year in site.years:
            assert year.lesson.name in words
            assert strip_words(year.rows) in told_of[0]
        for told in (*site.year_notes, *site.course.emergency):
            assert bare(told) in bare(words)
    heights = heights_of(small)
    of_the_title, of_a_name = heights["Hedge,"], heights["Dandelion"]
    assert 16 * of_a_name / of_the_title >= 7
