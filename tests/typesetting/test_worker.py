"""The process that typesets: what it leaves in each job's folder, and the standards it keeps."""

from __future__ import annotations

import json
import subprocess
import sys
from typing import TYPE_CHECKING

import pikepdf
import pytest

from helpers.pdfs import (
    assert_is_sound,
    fonts_of,
    headings_of,
    info_of,
    metadata_of,
    page_sizes,
    structure_of,
    ua_finds,
)
from sallet.typesetting.jobs import FAILED, PDF, TOLD, Job, lay_out
from sallet.typesetting.worker import typeset_folder

if TYPE_CHECKING:
    from pathlib import Path

LEAF = b'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><path d="M1 1h7v7z"/></svg>'
TEMPLATES = {
    "card": """\
#let data = json(sys.inputs.data)
#set document(title: data.title, author: ("Maren Holloway",), keywords: ("ramsons",))
#set page(width: 105mm, height: 148mm, margin: 5mm, bleed: 3mm)
#set text(lang: "en", region: "GB")
= #data.title
Smells of garlic.
#figure(image("leaf.svg", alt: "a leaf"), alt: "a leaf")
== Eaten
#list[leaves][flowers]
#pdf.artifact(line(length: 10mm))
""",
    "told": "#let data = json(sys.inputs.data)\n#metadata((data.title, 1.5, none, true)) <told>",
    "broken": "#nowhere",
    "untitled": "= Words",
}


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """Return a folder of four jobs, the second and the fourth of which cannot be done."""
    templates = tmp_path / "templates"
    templates.mkdir()
    for name, text in TEMPLATES.items():
        (templates / f"{name}.typ").write_text(text, "utf-8")
    jobs = tmp_path / "jobs"
    jobs.mkdir()
    (jobs / "complaints.txt").touch()
    card = Job("card", {"title": "Bärlauch ❧"}, {"leaf.svg": LEAF})
    for number, job in enumerate(
        [
            card,
            Job("broken", {}),
            Job("told", {"title": "é"}, wanted="told"),
            Job("untitled", {}),
            card,
        ]
    ):
        lay_out(job, jobs / f"{number:04}", templates)
    return jobs


@pytest.fixture
def card(folder: Path) -> Path:
    """Return the PDF of the first job."""
    typeset_folder(folder)
    return folder / "0000" / PDF


def test_each_job_is_done_in_turn_and_said_as_soon_as_it_is(folder: Path) -> None:
    """A refused one keeps none of the others from being done."""
    command = [sys.executable, "-m", "sallet.typesetting.worker", str(folder)]
    done = subprocess.run(command, capture_output=True, text=True, check=True)
    assert (done.stdout.splitlines(), done.stderr) == (["0000", "0001", "0002", "0003", "0004"], "")
    left = {
        job.name: [name for name in (PDF, TOLD, FAILED) if (job / name).exists()]
        for job in folder.iterdir() if job.is_dir()
    }  # fmt: skip
    assert left == {
        "0000": [PDF],
        "0001": [FAILED],
        "0002": [TOLD],
        "0003": [FAILED],
        "0004": [PDF],
    }


def test_what_a_template_tells_is_kept_as_values(card: Path) -> None:
    told = (card.parents[1] / "0002" / TOLD).read_text("utf-8")
    assert json.loads(told) == ["é", 1.5, None, True]


def test_what_is_refused_is_kept_in_the_engine_s_words(card: Path) -> None:
    broken = json.loads((card.parents[1] / "0001" / FAILED).read_text("utf-8"))
    assert broken["message"] == "unknown variable: nowhere"
    assert "main.typ:1:1" in broken["details"]
    untitled = json.loads((card.parents[1] / "0003" / FAILED).read_text("utf-8"))
    assert "missing document title" in untitled["details"]


def test_the_same_job_gives_the_same_file(card: Path) -> None:
    assert card.read_bytes() == (card.parents[1] / "0004" / PDF).read_bytes()


# ---- the standards ------------------------------------------------------------------------


def test_a_document_says_that_it_is_pdf_a_2a_and_pdf_ua_1(card: Path) -> None:
    """Identification by ISO 19005-2 (6.6.4) and ISO 14289-1 (5), in the XMP."""
    told = metadata_of(card)
    assert (told["pdfaid:part"], told["pdfaid:conformance"]) == ("2", "A")
    assert told["pdfuaid:part"] == "1"
    assert told["dc:title"] == "Bärlauch ❧"
    assert told["xmp:CreateDate"] == told["xmp:ModifyDate"] == "2000-01-01T00:00:00+00:00"


def test_a_document_is_tagged_has_a_title_and_a_language(card: Path) -> None:
    """Asked of poppler and of pikepdf."""
    info = info_of(card)
    assert {name: info[name] for name in ("Title", "Author", "Tagged", "Encrypted", "JavaScript")} == {
        "Title": "Bärlauch ❧", "Author": "Maren Holloway", "Tagged": "yes", "Encrypted": "no",
        "JavaScript": "no",
    }  # fmt: skip
    with pikepdf.open(card) as document:
        assert str(document.Root.Lang) == "en-GB"
        assert bool(document.Root.ViewerPreferences.DisplayDocTitle)
        assert len(document.Root.OutputIntents) == 1
        assert bool(document.Root.MarkInfo.Marked)


def test_the_structure_is_told_in_its_order(card: Path) -> None:
    kinds = [kind for kind in structure_of(card) if kind in {"H1", "P", "Figure", "H2", "L"}]
    assert kinds == ["H1", "P", "Figure", "H2", "L"]
    assert headings_of(card) == [1, 2]


def test_a_checker_of_pdf_ua_finds_nothing(card: Path) -> None:
    """It covers 16 of the 106 failure conditions that a program can decide."""
    assert ua_finds(card) == []


def test_a_checker_of_files_finds_nothing(card: Path) -> None:
    assert_is_sound(card)


def test_all_letters_are_in_the_file(card: Path) -> None:
    assert fonts_of(card)
    assert all(embedded for _, embedded in fonts_of(card))


def test_a_page_is_as_large_as_the_template_says_with_its_bleed(card: Path) -> None:
    assert page_sizes(card) == [pytest.approx((111, 154), abs=0.01)]
