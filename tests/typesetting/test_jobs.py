"""A job in its folder: what the engine gets to see, and what is taken from it."""

from __future__ import annotations

import json
from typing import TYPE_CHECKING

import pytest
from hypothesis import given
from hypothesis import strategies as st

from sallet.typesetting.jobs import (
    DATA,
    FAILED,
    MAIN,
    ORDER,
    PDF,
    TOLD,
    Job,
    Untypeset,
    lay_out,
    made,
)
from sallet.typesetting.words import all_printable

if TYPE_CHECKING:
    from pathlib import Path


@pytest.fixture
def templates(tmp_path: Path) -> Path:
    """Return a folder of two templates and a file that is none."""
    folder = tmp_path / "templates"
    folder.mkdir()
    (folder / "common.typ").write_text("#let ink = black", "utf-8")
    (folder / "card.typ").write_text("Karte: é", "utf-8")
    (folder / "notes.txt").write_text("private", "utf-8")
    return folder


def test_a_folder_holds_the_templates_the_values_and_the_pictures_and_no_more(
    tmp_path: Path, templates: Path
) -> None:
    job = Job("card", {"name": "Séneçon ▲"}, {"leaf.svg": b"<svg/>"}, wanted="told")
    folder = tmp_path / "0000"
    lay_out(job, folder, templates)
    assert sorted(path.name for path in folder.iterdir()) == sorted(
        [MAIN, "card.typ", "common.typ", DATA, ORDER, "leaf.svg"]
    )
    assert (folder / MAIN).read_text("utf-8") == "Karte: é"
    assert (folder / "leaf.svg").read_bytes() == b"<svg/>"
    assert json.loads((folder / ORDER).read_text("utf-8")) == {"wanted": "told"}


WORDS = st.text(st.characters(codec="utf-8"), max_size=20)
VALUES = st.recursive(
    WORDS | st.integers(-(10**6), 10**6) | st.booleans() | st.none(),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(WORDS, inner, max_size=3),
    max_leaves=8,
)


@given(st.dictionaries(WORDS, VALUES, max_size=4))
def test_values_arrive_whatever_words_they_hold_without_what_is_no_part_of_print(
    tmp_path_factory: pytest.TempPathFactory, data: dict[str, object]
) -> None:
    base = tmp_path_factory.mktemp("jobs")
    (base / "card.typ").touch()
    lay_out(Job("card", data), base / "0000", base)
    assert json.loads((base / "0000" / DATA).read_text("utf-8")) == all_printable(data)


def test_a_folder_is_made_anew_and_never_filled_twice(tmp_path: Path, templates: Path) -> None:
    folder = tmp_path / "0000"
    lay_out(Job("card", {}), folder, templates)
    with pytest.raises(FileExistsError):
        lay_out(Job("card", {}), folder, templates)


def test_what_was_made_is_the_bytes_of_a_pdf_or_what_was_told(tmp_path: Path) -> None:
    (tmp_path / PDF).write_bytes(b"%PDF-1.7")
    (tmp_path / TOLD).write_text('[{"fits": true}]', "utf-8")
    assert made(Job("card", {}), tmp_path) == b"%PDF-1.7"
    assert made(Job("fit", {}, wanted="told"), tmp_path) == [{"fits": True}]


def test_a_refused_document_is_told_with_its_template_and_the_engine_s_own_words(
    tmp_path: Path,
) -> None:
    """Even if a file was made before."""
    (tmp_path / PDF).write_bytes(b"%PDF-1.7")
    told = {"message": "missing document title", "details": "error: missing\n  ┌─ main.typ:1:1"}
    (tmp_path / FAILED).write_text(json.dumps(told), "utf-8")
    with pytest.raises(Untypeset) as refused:
        made(Job("card", {}), tmp_path)
    assert str(refused.value) == "the template `card` could not be typeset: missing document title"
    assert refused.value.template == "card"
    assert refused.value.details == "error: missing\n  ┌─ main.typ:1:1"
