"""A course from the disk to its folder of pages."""

from __future__ import annotations

import io
import shutil
from typing import TYPE_CHECKING

import pytest
from PIL import Image

from helpers.courses import seen
from sallet.folder import read_path
from sallet.lesson.values.times import MONTHS
from sallet.lesson.vocabulary_file import load_vocabulary
from sallet.publish import assembling
from sallet.publish.assembling import (
    Checked,
    LinksLost,
    assemble,
    look_through,
    output_folder,
    site_files,
)
from sallet.publish.links import LostLink
from sallet.publish.writer import NotOurs, Written

if TYPE_CHECKING:
    from pathlib import Path

    from sallet.folder import Folder

COURSE = "title: Hedge\nplants: all\ninto: out\nabout: Two plants.\n"
RAMSONS = """---
name: Ramsons
---
See [the yew](yew.md#season).

## Pictures
### My leaf.jpg
- shows: one leaf
- credit: Ann Wright
- licence: CC0
### lost.jpg
- shows: nothing
"""
KEYS = tuple(f"keys/{name}.html" for name in ("year", *(month.lower() for month in MONTHS)))
YEW = "---\nname: Yew\ntaught as: look-alike\ndanger: deadly\n---\n## Season\n- leaves: all year\n"


@pytest.fixture
def home(tmp_path: Path) -> Path:
    """Return the folder of a course with two lessons and a photograph."""
    home = tmp_path / "course"
    for name, text in {"course.yml": COURSE, "lessons/ramsons.md": RAMSONS,
                       "lessons/yew.md": YEW}.items():  # fmt: skip
        (home / name).parent.mkdir(parents=True, exist_ok=True)
        (home / name).write_text(text, "utf-8")
    held = io.BytesIO()
    Image.linear_gradient("L").resize((600, 400)).save(held, "JPEG")
    (home / "pictures").mkdir()
    (home / "pictures" / "My leaf.jpg").write_bytes(held.getvalue())
    return home


def read(home: Path) -> Folder:
    """Return a course as it lies on the disk."""
    return read_path(home, load_vocabulary())


def assembled(home: Path, *, draft: bool = False) -> Written:
    """Assemble a course, whatever is found in it."""
    folder = read(home)
    assert folder.course is not None
    checked = Checked(folder, folder.course, tuple(folder.findings()), folder.measured(), draft)
    return assemble(checked)


def files_in(folder: Path) -> dict[str, bytes]:
    """Return all files below a folder, by path."""
    files = (path for path in sorted(folder.rglob("*")) if path.is_file())
    return {path.relative_to(folder).as_posix(): path.read_bytes() for path in files}


def test_a_course_becomes_pages_a_style_sheet_and_copies_of_its_photographs(home: Path) -> None:
    told = assembled(home)
    found = files_in(home / "out")
    pictures = [path for path in found if path.startswith("pictures/")]
    assert sorted(found) == sorted([
        "index.html", "syllabus.html", "season.html", "poster.html", "papers.html", "look-alikes.html",
        "families.html", "words.html", "sources.html", "safety.html", "plants/ramsons.html",
        "plants/yew.html", "style.css", "season.js", "pairs.js", "key.js",
        "made-by-sallet.json", "key.html", "print/field-cards.pdf", "print/field-cards-single.pdf",
        "print/cards/ramsons.pdf", "print/cards/yew.pdf", "print/season-map-a4.pdf",
        "print/season-map-a3.pdf", *KEYS, *pictures,
    ])  # fmt: skip
    assert [p.split("-")[-1] for p in pictures] == ["480.jpg", "480.webp", "600.jpg", "600.webp"]
    assert told == Written(tuple(sorted(set(found) - {"made-by-sallet.json"})), (), (), (), ())


def test_a_calendar_keeps_the_line_ends_of_its_standard(home: Path) -> None:
    """CR LF, whatever the machine writes (RFC 5545, 3.1)."""
    with (home / "course.yml").open("a") as course:
        course.write("sessions:\n  - {date: 2027-04-03, starts: '10:00'}\n")
    assembled(home)
    data = (home / "out" / "sessions.ics").read_bytes()
    assert data.startswith(b"BEGIN:VCALENDAR\r\n")
    assert data.count(b"\n") == data.count(b"\r\n")
    assert b"\r\r" not in data


def test_a_photograph_that_is_not_at_hand_is_left_out(home: Path) -> None:
    assembled(home)
    page = seen((home / "out" / "plants" / "ramsons.html").read_text("utf-8"))
    assert [image.attributes["alt"] for image in page.all("img")] == ["one leaf"]


def test_the_output_folder_is_told_from_course_yml(home: Path) -> None:
    (home / "course.yml").write_text("into: ../public/site\n")
    folder = read(home)
    assert folder.course is not None
    assert output_folder(folder, folder.course) == home.parent / "public" / "site"


def test_two_runs_from_nothing_give_the_same_bytes(home: Path) -> None:
    """Wherever the course lies: no clock, no path and no order of a disk shows in the pages."""
    other = home.parent / "elsewhere" / "deeper"
    shutil.copytree(home, other)
    assembled(home)
    assembled(other)
    assert files_in(home / "out") == files_in(other / "out")


def test_an_unchanged_course_rewrites_nothing(home: Path) -> None:
    first = assembled(home)
    before = {path: (home / "out" / path).stat() for path in files_in(home / "out")}
    assert assembled(home) == Written((), (), first.new, (), ())
    after = {path: (home / "out" / path).stat() for path in files_in(home / "out")}
    assert {path: (s.st_ino, s.st_mtime_ns) for path, s in after.items()} == {
        path: (s.st_ino, s.st_mtime_ns) for path, s in before.items()
    }


def test_a_changed_lesson_rewrites_only_what_shows_it(home: Path) -> None:
    assembled(home)
    with (home / "lessons" / "yew.md").open("a") as lesson:
        lesson.write("## Cautions\n- dogs: deadly to them.\n")
    assert assembled(home).changed == (
        "plants/yew.html", "print/cards/yew.pdf", "print/field-cards-single.pdf",
        "print/field-cards.pdf",
    )  # fmt: skip


def test_a_photograph_is_not_drawn_twice(home: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    assembled(home)
    monkeypatch.setattr(assembling, "make_copies", None)
    assert assembled(home).changed == ()


def test_a_copy_that_someone_changed_is_drawn_anew(home: Path) -> None:
    assembled(home)
    before = files_in(home / "out")
    copy = next((home / "out" / "pictures").iterdir())
    copy.write_bytes(b"defaced")
    assert assembled(home).changed == (f"pictures/{copy.name}",)
    assert files_in(home / "out") == before


def test_the_copies_of_a_photograph_that_is_gone_go_too(home: Path) -> None:
    assembled(home)
    (home / "pictures" / "My leaf.jpg").unlink()
    told = assembled(home)
    assert len(told.removed) == 4
    assert not (home / "out" / "pictures").exists()


@pytest.mark.parametrize("draft", [True, False])
def test_a_draft_is_stamped_on_every_page(home: Path, draft: bool) -> None:  # noqa: FBT001
    assembled(home, draft=draft)
    pages = {path: data for path, data in files_in(home / "out").items() if path.endswith("html")}
    stamped = [path for path, data in pages.items() if "Draft." in seen(data.decode()).text]
    assert len(pages) == 13 + len(KEYS)
    assert stamped == (sorted(pages) if draft else [])


# ---- when it cannot be done ---------------------------------------------------------------


def test_links_that_lead_nowhere_leave_the_old_course_as_it_was(home: Path) -> None:
    assembled(home)
    before = files_in(home / "out")
    (home / "course.yml").write_text(f"{COURSE}licence: x\nteacher: A\n".replace(
        "Two plants.", "See [this](nowhere.html)."))  # fmt: skip
    with pytest.raises(LinksLost) as lost:
        assembled(home)
    assert str(lost.value) == "1 link of the pages leads nowhere"
    assert lost.value.lost == (LostLink("index.html", "nowhere.html"),)
    assert files_in(home / "out") == before


@pytest.mark.parametrize("step", ["build_pages", "make_copies", "lost_links", "write_site"])
def test_a_step_that_fails_leaves_the_old_course_as_it_was(
    home: Path, monkeypatch: pytest.MonkeyPatch, step: str
) -> None:
    assembled(home)
    before = files_in(home / "out")
    (home / "lessons" / "ramsons.md").write_text(RAMSONS.replace("one leaf", "two leaves"))
    (home / "pictures" / "My leaf.jpg").write_bytes(
        (home / "pictures" / "My leaf.jpg").read_bytes() + b"\0"
    )

    def fail(*_: object, **__: object) -> None:
        raise MemoryError

    monkeypatch.setattr(assembling, step, fail)
    with pytest.raises(MemoryError):
        assembled(home)
    assert files_in(home / "out") == before
    assert sorted(path.name for path in home.iterdir()) == [
        "course.yml", "lessons", "out", "pictures",
    ]  # fmt: skip


def test_a_folder_of_other_things_is_refused_before_any_work(
    home: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (home / "course.yml").write_text("into: lessons\n")
    monkeypatch.setattr(assembling, "build_pages", None)
    with pytest.raises(NotOurs):
        assembled(home)
    assert sorted(files_in(home / "lessons")) == ["ramsons.md", "yew.md"]


def test_the_files_can_be_had_without_writing_them(home: Path) -> None:
    folder = read(home)
    assert folder.course is not None
    files = site_files(look_through(folder, folder.course), home / "out")
    assert not (home / "out").exists()
    assembled(home)
    written = files_in(home / "out")
    written.pop("made-by-sallet.json")
    assert files == written
