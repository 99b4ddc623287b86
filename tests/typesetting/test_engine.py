"""Typesetting as a whole: order, bounds, failures, and that words never become anything else."""

from __future__ import annotations

import re
import socket
import sys
import tempfile
from itertools import pairwise
from typing import TYPE_CHECKING

import pikepdf
import pytest
from hypothesis import given
from hypothesis import strategies as st

from helpers.pdfs import fonts_of, words_on
from helpers.prints import ECHO, echo_data, use_templates
from sallet.shipped import templates_folder
from sallet.typesetting.engine import CARDS_AT_ONCE, EngineDied, batches, typeset
from sallet.typesetting.jobs import Job, Untypeset

if TYPE_CHECKING:
    from pathlib import Path

TEMPLATES = {
    "echo": ECHO,
    "told": '#import "common.typ": data\n#metadata((title: data.title, sign: "é")) <told>',
    "broken": '#set document(title: "Broken")\n#nowhere',
    "picture": '#set document(title: "x")\n#image("leaf.svg", alt: "a leaf")',
}
LEAF = b'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><path d="M1 1h7v7z"/></svg>'


@pytest.fixture(autouse=True)
def room(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Return the folder in which the engine makes its own, once the templates above are in use."""
    use_templates(tmp_path / "templates", monkeypatch, TEMPLATES)
    folder = tmp_path / "room"
    folder.mkdir()
    monkeypatch.setattr(tempfile, "tempdir", str(folder))
    return folder


def echo(title: str, cards: int = 1) -> Job:
    """Return a job that sets a title."""
    return Job("echo", echo_data(title=title), cards=cards)


def title_of(pdf: bytes, folder: Path) -> str:
    """Return the title of a document."""
    (folder / "one.pdf").write_bytes(pdf)
    with pikepdf.open(folder / "one.pdf") as document:
        return str(document.docinfo["/Title"])


# ---- what becomes of jobs -----------------------------------------------------------------


def test_each_job_gives_its_own_in_the_order_of_the_jobs(tmp_path: Path) -> None:
    """In one process or in several."""
    titles = [f"Card {number}" for number in range(5)]
    jobs = [echo(title, cards=CARDS_AT_ONCE // 2) for title in titles]
    asked = Job("told", {"title": "Told"}, wanted="told")
    first, told, *others = typeset([jobs[0], asked, *jobs[1:]])
    assert told == {"title": "Told", "sign": "é"}
    assert [title_of(pdf, tmp_path) for pdf in (first, *others)] == titles


def test_without_jobs_there_is_nothing_and_no_process() -> None:
    assert list(typeset([], progress=lambda *_: pytest.fail("told of nothing"))) == []


def test_progress_is_told_after_each_job(tmp_path: Path) -> None:
    seen: list[tuple[int, int]] = []
    jobs = [echo("a"), Job("told", {"title": "b"}, wanted="told"), echo("c", CARDS_AT_ONCE)]
    made = list(typeset(jobs, lambda done, of: seen.append((done, of))))
    assert seen == [(1, 3), (2, 3), (3, 3)]
    assert title_of(made[2], tmp_path) == "c"


WEIGHTS = st.lists(st.integers(1, 2 * CARDS_AT_ONCE), max_size=30)


@given(WEIGHTS)
def test_no_process_sets_more_cards_than_fit_unless_they_are_a_single_job_s(
    weights: list[int],
) -> None:
    jobs = [Job("echo", {"number": number}, cards=cards) for number, cards in enumerate(weights)]
    found = list(batches(jobs))
    assert [job for batch in found for job in batch] == jobs
    for batch in found:
        assert len(batch) == 1 or sum(job.cards for job in batch) <= CARDS_AT_ONCE
    for batch, after in pairwise(found):
        assert sum(job.cards for job in (*batch, after[0])) > CARDS_AT_ONCE


# ---- failures -----------------------------------------------------------------------------


def test_a_refused_document_is_told_in_the_engine_s_words_and_those_before_it_are_made(
    tmp_path: Path,
) -> None:
    made = typeset([echo("before"), Job("broken", {}), echo("behind")])
    assert title_of(next(made), tmp_path) == "before"
    with pytest.raises(Untypeset) as refused:
        next(made)
    assert str(refused.value) == (
        "the template `broken` could not be typeset: unknown variable: nowhere"
    )
    assert "main.typ:2:1" in refused.value.details


def test_a_document_without_a_title_is_refused(tmp_path: Path) -> None:
    (tmp_path / "templates" / "print" / "bare.typ").write_text("Bare", "utf-8")
    with pytest.raises(Untypeset, match="missing document title"):
        list(typeset([Job("bare", {})]))


def test_a_picture_without_words_is_refused(tmp_path: Path) -> None:
    text = '#set document(title: "x")\n#image("leaf.svg")'
    (tmp_path / "templates" / "print" / "mute.typ").write_text(text, "utf-8")
    with pytest.raises(Untypeset, match="missing alt text"):
        list(typeset([Job("mute", {}, {"leaf.svg": LEAF})]))


@pytest.mark.parametrize(
    ("script", "message"),
    [("echo 'memory is short' >&2; exit 3", "typesetting failed: memory is short"),
     ("echo 'first' >&2; echo 'last' >&2; exit 1", "typesetting failed: last"),
     ("exit 3", "typesetting failed: its process ended with 3"),
     ("kill -9 $$", "typesetting failed: its process ended with -9")],
)  # fmt: skip
def test_a_process_that_dies_is_told_in_a_sentence(
    script: str, message: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    python = tmp_path / "python"
    python.write_text(f"#!/bin/sh\n{script}\n", "utf-8")
    python.chmod(0o755)
    monkeypatch.setattr(sys, "executable", str(python))
    with pytest.raises(EngineDied) as died:
        list(typeset([echo("a")]))
    assert str(died.value) == message


def test_much_said_on_the_way_to_an_end_holds_up_nothing(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """More than a pipe holds."""
    python = tmp_path / "python"
    python.write_text("#!/bin/sh\nseq 1 99999 >&2\nexit 1\n", "utf-8")
    python.chmod(0o755)
    monkeypatch.setattr(sys, "executable", str(python))
    with pytest.raises(EngineDied, match=r"^typesetting failed: 99999$"):
        list(typeset([echo("a")]))


class StoppedError(Exception):
    """Somebody stops in the middle."""


def stop(done: int, of: int) -> None:
    """Stop as soon as anything is told."""
    raise StoppedError(done, of)


def test_nothing_is_left_behind_however_it_ends(room: Path) -> None:
    list(typeset([echo("a")]))
    assert list(room.iterdir()) == []
    with pytest.raises(Untypeset):
        list(typeset([Job("broken", {})]))
    assert list(room.iterdir()) == []
    with pytest.raises(StoppedError):
        list(typeset([echo("a"), echo("b")], stop))
    assert list(room.iterdir()) == []
    made = typeset([echo("a"), echo("b")])
    next(made)
    assert len(list(room.iterdir())) == 1
    made.close()  # type: ignore[attr-defined]
    assert list(room.iterdir()) == []


def test_nothing_is_left_behind_when_the_process_dies(
    room: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(sys, "executable", "/bin/false")
    with pytest.raises(EngineDied):
        list(typeset([echo("a")]))
    assert list(room.iterdir()) == []


# ---- words stay words ---------------------------------------------------------------------

MARKUP = [
    '#read("data.json")', '#import "@preview/x:0.1.0": *', "#include sys", "#{1 + 1}", "$x^2$",
    r"\u{41}", r"\ ", "*b*", "_b_", "@label", "<label>", "`code`", "```typ #x```", "// no", "/* no */",
    "= h", "- b", "+ n", "/ t: d", "~", "--", "...", "'q' \"q\"", "https://example.org/a_b", "#", "]", "[x]",
]  # fmt: skip


def test_every_mark_of_the_engine_is_printed_as_it_stands(tmp_path: Path) -> None:
    """In a text, in a title, in bold and slanted letters."""
    (made,) = typeset([Job("echo", echo_data(*MARKUP, title=" ".join(MARKUP)))])
    assert title_of(made, tmp_path) == " ".join(MARKUP)
    found = "".join(word.text for page in words_on(tmp_path / "one.pdf") for word in page)
    title = "".join(MARKUP).replace(" ", "")
    lines = "".join(3 * mark for mark in MARKUP).replace(" ", "")
    assert found == title + lines


SHIPPED = sorted((templates_folder() / "print").glob("*.typ"))


@pytest.mark.parametrize("path", SHIPPED, ids=lambda path: path.stem)
def test_a_template_imports_only_its_neighbours_and_reads_only_its_values(path: Path) -> None:
    """None evaluates words as markup, and none asks for a package."""
    text = re.sub(r"//.*", "", path.read_text("utf-8"))
    imported = re.findall(r"#?(?:import|include)\b[^\n]*?\"([^\"]*)\"", text)
    assert set(imported) <= {other.name for other in SHIPPED}
    assert len(imported) == len(re.findall(r"\b(?:import|include)\b", text))
    assert re.findall(r"\b(?:eval|plugin|read|csv|yaml|toml|xml|cbor|bibliography)\(", text) == []
    assert set(re.findall(r"\bjson\([^)]*\)", text)) <= {"json(sys.inputs.data)"}


@pytest.mark.parametrize(
    "file", ["/etc/hostname", "../templates/print/echo.typ", "../../../../../../etc/hostname",
             "../0000/data.json", "/../0000/data.json", "../0001/data.json"],
)  # fmt: skip
def test_nothing_outside_a_job_s_own_folder_can_be_read(file: str, tmp_path: Path) -> None:
    """Not by a template either, nor what another job of the same process holds."""
    text = f'#set document(title: "x")\n#raw(read("{file}"))'
    (tmp_path / "templates" / "print" / "spy.typ").write_text(text, "utf-8")
    with pytest.raises(Untypeset, match=r"file not found|escape the project root") as refused:
        list(typeset([Job("spy", {}), echo("secret")]))
    assert "secret" not in refused.value.details


@pytest.mark.parametrize("package", ["@preview/x:0.1.0", "@local/x:0.1.0"])
def test_no_package_is_found_and_nobody_is_asked_for_one(
    package: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    text = f'#set document(title: "x")\n#import "{package}": *'
    (tmp_path / "templates" / "print" / "guest.typ").write_text(text, "utf-8")
    with socket.create_server(("127.0.0.1", 0)) as listening:
        listening.settimeout(0)
        port = listening.getsockname()[1]
        for name in ("https_proxy", "HTTPS_PROXY", "all_proxy", "ALL_PROXY"):
            monkeypatch.setenv(name, f"http://127.0.0.1:{port}")
        with pytest.raises(Untypeset, match="package"):
            list(typeset([Job("guest", {})]))
        with pytest.raises(BlockingIOError):
            listening.accept()


# ---- fonts and bytes ----------------------------------------------------------------------


def test_only_the_engine_s_own_letters_are_used_and_all_are_in_the_file(tmp_path: Path) -> None:
    """Not those of the computer, which differ from one to the next, even if a template asks."""
    text = ECHO.replace(
        "#document-text", '#show heading: set text(font: "DejaVu Sans")\n#document-text'
    )
    (tmp_path / "templates" / "print" / "other.typ").write_text(text, "utf-8")
    for template in ("echo", "other"):
        (made,) = typeset([Job(template, echo_data("Séneçon ▲▲ △ ○ ❧"))])
        (tmp_path / "one.pdf").write_bytes(made)
        found = fonts_of(tmp_path / "one.pdf")
        assert {name.split("-")[0] for name, _ in found} == {"LibertinusSerif"}
        assert all(embedded for _, embedded in found)


def test_the_same_words_give_the_same_bytes_in_any_folder(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    jobs = [echo("Card"), Job("picture", {}, {"leaf.svg": LEAF})]
    first = list(typeset(jobs))
    other = tmp_path / "a much longer name of a folder, é"
    other.mkdir()
    monkeypatch.setattr(tempfile, "tempdir", str(other))
    monkeypatch.chdir(other)
    monkeypatch.setenv("TZ", "Pacific/Auckland")
    assert list(typeset(jobs)) == first
    assert list(typeset(jobs[::-1])) == first[::-1]
    assert list(typeset([jobs[0]])) == first[:1]
