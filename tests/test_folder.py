"""What is read from the disk, and what is refused."""

from __future__ import annotations

import io
import re
from typing import TYPE_CHECKING

import pytest
from PIL import Image

from sallet.findings import Finding, Severity
from sallet.folder import NotFound, lessons_folder, read_path
from sallet.lesson.bank import PictureFile
from sallet.lesson.vocabulary_file import load_vocabulary

if TYPE_CHECKING:
    from collections.abc import Mapping
    from pathlib import Path

    from sallet.folder import Folder

VOCABULARY = load_vocabulary()
LESSONS = {
    "lessons/ramsons.md": "---\nname: Ramsons\n---\n",
    "lessons/elder.md": "---\nname: Elder\n---\n",
    "lessons/lily.md": "---\nname: Lily of the valley\n---\n",
}


@pytest.fixture
def here(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Return an empty folder that is the working directory."""
    monkeypatch.chdir(tmp_path)
    return tmp_path


def lay_out(folder: Path, files: Mapping[str, str | bytes]) -> None:
    """Write files, by path."""
    for name, content in files.items():
        path = folder / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(content.encode() if isinstance(content, str) else content)


def read(folder: Path, name: str = ".") -> Folder:
    """Return what lies at a path."""
    return read_path(folder / name, VOCABULARY)


def names(folder: Folder) -> list[str]:
    """Return the plants asked for."""
    return [lesson.name for lesson in folder.lessons]


# ---- a course, a folder of lessons, a lesson ----------------------------------------------


@pytest.mark.parametrize("path", [".", "course.yml"])
def test_a_course_is_found_by_its_folder_and_by_its_file(here: Path, path: str) -> None:
    lay_out(here, {"course.yml": "title: Hedge\n", **LESSONS})
    found = read(here, path)
    assert found.course is not None
    assert found.course.title == "Hedge"
    assert names(found) == ["Elder", "Lily of the valley", "Ramsons"]
    assert found.home == here
    assert sorted(found.sources) == ["course.yml", *sorted(LESSONS)]
    assert found.refused == ()


def test_a_course_teaches_the_plants_it_names_in_its_list_and_in_its_sessions(here: Path) -> None:
    text = "plants: [Ramsons]\nsessions:\n  - {date: 2027-03-06, plants: [elder, Ramsons, Yew]}\n"
    lay_out(here, {"course.yml": text, **LESSONS})
    found = read(here)
    assert names(found) == ["Ramsons", "Elder"]
    assert [x.name for x in found.bank.lessons] == ["Elder", "Lily of the valley", "Ramsons"]


def test_the_lessons_of_a_course_may_lie_elsewhere(here: Path) -> None:
    lay_out(here, {"spring/course.yml": "lessons: ../bank\n", "bank/yew.md": "", "bank/a.txt": ""})
    assert names(read(here, "spring")) == ["yew"]


def test_a_folder_of_lessons_is_read_without_a_course(here: Path) -> None:
    lay_out(here, LESSONS)
    found = read(here, "lessons")
    assert found.course is None
    assert names(found) == ["Elder", "Lily of the valley", "Ramsons"]


def test_one_lesson_is_read_with_its_neighbours_in_the_bank(here: Path) -> None:
    """Its look-alikes may have lessons beside it."""
    lay_out(here, LESSONS)
    found = read(here, "lessons/elder.md")
    assert names(found) == ["Elder"]
    assert len(found.bank.lessons) == 3
    assert {finding.file for finding in found.findings()} == {"lessons/elder.md"}


def test_files_below_the_working_folder_are_shown_from_there(
    here: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    lay_out(here, {"course.yml": "", **LESSONS})
    monkeypatch.chdir(here / "lessons")
    shown = sorted(read(here).sources)
    assert shown == [(here / "course.yml").as_posix(), "elder.md", "lily.md", "ramsons.md"]


@pytest.mark.parametrize(
    ("path", "message"),
    [
        ("nowhere", "there is no `{}/nowhere`; expected a course folder or a lesson file"),
        ("empty", "`{}/empty` holds neither a course.yml nor a lesson (a file ending in .md)"),
        ("a.txt", "`{}/a.txt` is neither a course.yml nor a lesson (a file ending in .md)"),
    ],
)
def test_where_nothing_is_to_be_read_it_says_what_was_expected(
    here: Path, path: str, message: str
) -> None:
    lay_out(here, {"a.txt": "", "empty/b.txt": ""})
    with pytest.raises(NotFound, match=f"^{re.escape(message.format(here))}$"):
        read(here, path)


def test_the_folder_of_lessons_is_the_one_that_course_yml_names(here: Path) -> None:
    lay_out(here, {"course.yml": "lessons: bank\n", "empty/a.txt": ""})
    assert lessons_folder(here) == here / "bank"
    with pytest.raises(NotFound, match=re.escape(f"`{here / 'empty'}` holds neither a course.yml")):
        lessons_folder(here / "empty")


# ---- what is refused ----------------------------------------------------------------------

REFUSED = [
    ("name: Bärlauch\n".encode("utf-16"), (1, 1), "the file is UTF-16; expected UTF-8",
     "save it again with the encoding UTF-8"),
    ("---\nname: Bärlauch\n".encode("latin-1"), (2, 8), "the byte 0xe4 is not UTF-8",
     "save the file again with the encoding UTF-8"),
    (b"---\nna\0me: x\n", (2, 3), "the file holds a NUL character; expected text",
     "delete the character, or save the file again as plain text"),
    (b"x" * (1024 * 1024 + 1), (1, 1), "the file is 1,048,577 bytes; expected at most 1,048,576",
     "keep one plant in a file, and pictures in files of their own"),
]  # fmt: skip


@pytest.mark.parametrize(("data", "at", "message", "hint"), REFUSED)
def test_a_file_that_is_no_text_is_refused_and_the_others_are_read(
    here: Path, data: bytes, at: tuple[int, int], message: str, hint: str
) -> None:
    lay_out(here, {"course.yml": "", **LESSONS, "lessons/bad.md": data})
    found = read(here)
    finding = Finding("lessons/bad.md", *at, "refused-file", Severity.STOP, message, hint)
    assert found.refused == (finding,)
    assert finding in found.findings()
    assert names(found) == ["Elder", "Lily of the valley", "Ramsons"]


def test_a_file_that_cannot_be_opened_is_refused_and_the_others_are_read(here: Path) -> None:
    """Such as a link to a file that was moved away."""
    lay_out(here, {"course.yml": "", **LESSONS})
    (here / "lessons" / "lost.md").symlink_to(here / "moved.md")
    found = read(here)
    message = "the file cannot be opened: No such file or directory"
    hint = "see whether the file is still there and whether you may read it"
    finding = Finding("lessons/lost.md", 1, 1, "refused-file", Severity.STOP, message, hint)
    assert found.refused == (finding,)
    assert names(found) == ["Elder", "Lily of the valley", "Ramsons"]


def test_a_folder_whose_name_ends_like_a_lessons_is_none(here: Path) -> None:
    lay_out(here, {"course.yml": "", **LESSONS, "lessons/drafts.md/yew.md": b""})
    found = read(here)
    assert found.refused == ()
    assert names(found) == ["Elder", "Lily of the valley", "Ramsons"]


def test_a_file_of_exactly_a_mebibyte_with_bom_and_crlf_is_read(here: Path) -> None:
    head = b"\xef\xbb\xbf---\r\nname: Yew\r\n---\r\n"
    lay_out(here, {"yew.md": head + b" " * (1024 * 1024 - len(head))})
    found = read(here, "yew.md")
    assert found.refused == ()
    assert names(found) == ["Yew"]


def test_a_refused_neighbour_of_one_lesson_is_not_its_fault(here: Path) -> None:
    lay_out(here, {**LESSONS, "lessons/bad.md": b"\0"})
    assert read(here, "lessons/elder.md").refused == ()
    assert [f.file for f in read(here, "lessons").refused] == ["lessons/bad.md"]


def test_a_refused_course_yml_is_a_finding_too(here: Path) -> None:
    lay_out(here, {"course.yml": b"\xff\xfet\0", **LESSONS})
    found = read(here)
    assert [(f.file, f.message) for f in found.refused] == [
        ("course.yml", "the file is UTF-16; expected UTF-8")
    ]
    assert names(found) == ["Elder", "Lily of the valley", "Ramsons"]


def test_a_missing_folder_of_lessons_is_found_where_it_is_named(here: Path) -> None:
    lay_out(here, {"course.yml": "title: Hedge\nlessons: bank\n"})
    found = read(here)
    assert found.refused == (
        Finding("course.yml", 2, 10, "refused-file", Severity.STOP,
                "there is no folder `bank`", "mend the line `lessons:`"),
    )  # fmt: skip
    assert found.lessons == ()


# ---- pictures -----------------------------------------------------------------------------


def photograph(orientation: int | None, form: str = "JPEG") -> bytes:
    """Return a picture 60 pixels wide and 40 high, with or without an EXIF orientation."""
    exif = Image.Exif()
    if orientation:
        exif[0x0112] = orientation
    held = io.BytesIO()
    Image.new("RGB", (60, 40), "green").save(held, form, exif=exif)
    return held.getvalue()


@pytest.mark.parametrize(
    ("orientation", "width", "height"),
    [(None, 60, 40), (1, 60, 40), (2, 60, 40), (3, 60, 40), (4, 60, 40), (5, 40, 60), (6, 40, 60),
     (7, 40, 60), (8, 40, 60)],
)  # fmt: skip
def test_a_picture_is_as_wide_as_it_is_to_be_seen(
    here: Path, orientation: int | None, width: int, height: int
) -> None:
    """Source: the EXIF standard's orientations; 5 to 8 lie on their sides."""
    lay_out(here, {"yew.md": "", "leaf.jpg": photograph(orientation)})
    path = (here / "leaf.jpg").as_posix()
    assert read(here).bank.pictures == {"leaf.jpg": PictureFile(path, width, height)}


def test_pictures_lie_beside_the_lessons_or_in_the_courses_folder(here: Path) -> None:
    lay_out(here, {
        "course.yml": "", **LESSONS,
        "pictures/a.png": photograph(None, "PNG"),
        "pictures/b.jpg": photograph(None),
        "lessons/b.jpg": photograph(6),
        "lessons/c.webp": photograph(None, "WEBP"),
    })  # fmt: skip
    found = {name: p.path for name, p in read(here).bank.pictures.items()}
    assert found == {
        "a.png": (here / "pictures/a.png").as_posix(),
        "b.jpg": (here / "lessons/b.jpg").as_posix(),  # the nearer of two
        "c.webp": (here / "lessons/c.webp").as_posix(),
    }


@pytest.mark.parametrize("data", [b"", b"no picture", photograph(None)[:30]])
def test_a_file_that_is_no_picture_is_not_at_hand(here: Path, data: bytes) -> None:
    lay_out(here, {"yew.md": "", "leaf.jpg": data})
    assert read(here).bank.pictures == {}
