"""Reads a course folder, a folder of lessons or one lesson from the disk."""

from __future__ import annotations

import os
from dataclasses import dataclass, field
from pathlib import Path
from typing import TYPE_CHECKING, Final

from PIL import Image

from sallet.cards.printed import measure_print
from sallet.cards.setting import card_setting
from sallet.checks.running import run_checks, run_print_checks
from sallet.course.reading import read_course
from sallet.course.teaching import taught_lessons
from sallet.findings import Finding, Severity, in_order
from sallet.lesson.bank import Bank, PictureFile
from sallet.lesson.reading import read_lesson
from sallet.source import Source, Unreadable, decode

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from sallet.cards.printed import Printed
    from sallet.course.model import Course
    from sallet.lesson.model import Lesson
    from sallet.lesson.vocabulary import Vocabulary
    from sallet.typesetting.engine import Progress

COURSE_FILE: Final = "course.yml"
REFUSED: Final = "refused-file"
"""The check of a file that cannot be read as text at all: found here, before any lesson is."""
REFUSED_ABOUT: Final = """A file that cannot be opened, or cannot be read as text.

Lessons and course.yml are plain text in UTF-8, of at most one mebibyte. Save the file again
from a text editor, with UTF-8 as its encoding.
"""
PICTURES: Final = "pictures"
_PICTURE_ENDS: Final = (".jpg", ".jpeg", ".png", ".webp", ".tif", ".tiff")
_SIDEWAYS: Final = (5, 6, 7, 8)
"""EXIF orientations in which width and height change places."""


class NotFound(Exception):
    """A path that names no course and no lesson; the message says what was expected."""


@dataclass(frozen=True)
class Folder:
    """What was read from the disk."""

    bank: Bank
    lessons: tuple[Lesson, ...]
    """The lessons asked for: those that the course teaches, or those at the path."""
    course: Course | None = None
    home: Path = Path()
    """The folder of course.yml."""
    refused: tuple[Finding, ...] = ()
    sources: dict[str, Source] = field(default_factory=dict)
    """By the path that findings name."""

    def findings(self) -> list[Finding]:
        """Return all that is found in the lessons asked for and in the course."""
        return in_order([*self.refused, *run_checks(self.bank, self.lessons, self.course)])

    def measured(self, progress: Progress | None = None, *, draft: bool = False) -> Printed | None:
        """Return what is measured of the field cards of the course; None without a course."""
        if self.course is None:
            return None
        setting = card_setting(self.course, self.bank, self.lessons, draft=draft)
        return measure_print(setting, progress)

    def print_findings(self, printed: Printed) -> list[Finding]:
        """Return what is found in cards that were measured."""
        return run_print_checks(printed, self.course, self.bank) if self.course else []


def read_path(path: Path, vocabulary: Vocabulary) -> Folder:
    """Return the course, the folder of lessons or the lesson that lies at a path.

    Raises NotFound where there is none of them.
    """
    if path.is_dir() and (path / COURSE_FILE).is_file():
        return _course_folder(path, vocabulary)
    if path.is_file() and path.name == COURSE_FILE:
        return _course_folder(path.parent, vocabulary)
    if path.is_dir() and _lesson_files(path):
        return _lessons_folder(path, _lesson_files(path), vocabulary)
    if path.is_file() and path.suffix == ".md":
        return _lessons_folder(path.parent, [path], vocabulary)
    raise NotFound(_what_is_there(path))


def lessons_folder(path: Path) -> Path:
    """Return the folder of the lessons of the course at a path; raises NotFound without one."""
    if not (path / COURSE_FILE).is_file():
        raise NotFound(_what_is_there(path))
    source, _ = _source(path / COURSE_FILE)
    return path / read_course(source).lessons


def _what_is_there(path: Path) -> str:
    if not path.exists():
        return f"there is no `{path}`; expected a course folder or a lesson file"
    if path.is_dir():
        return f"`{path}` holds neither a {COURSE_FILE} nor a lesson (a file ending in .md)"
    return f"`{path}` is neither a {COURSE_FILE} nor a lesson (a file ending in .md)"


def _course_folder(home: Path, vocabulary: Vocabulary) -> Folder:
    source, refused = _source(home / COURSE_FILE)
    course = read_course(source)
    folder = home / course.lessons
    if not folder.is_dir():
        found = _refusal(source, f"there is no folder `{course.lessons}`", "mend the line `lessons:`",
                         course.where("lessons").start)  # fmt: skip
        refused = [*refused, found]
    bank, sources, more = _bank(folder, [home / PICTURES], vocabulary)
    return Folder(
        bank=bank,
        lessons=taught_lessons(course, bank),
        course=course,
        home=home,
        refused=(*refused, *more),
        sources=sources | {source.path: source},
    )


def _lessons_folder(home: Path, paths: Iterable[Path], vocabulary: Vocabulary) -> Folder:
    bank, sources, refused = _bank(home, [home / PICTURES], vocabulary)
    wanted = {_shown(path) for path in paths}
    return Folder(
        bank=bank,
        lessons=tuple(lesson for lesson in bank.lessons if lesson.source.path in wanted),
        home=home,
        refused=tuple(finding for finding in refused if finding.file in wanted),
        sources=sources,
    )


def _bank(
    folder: Path, pictures: Iterable[Path], vocabulary: Vocabulary
) -> tuple[Bank, dict[str, Source], list[Finding]]:
    lessons: list[Lesson] = []
    sources: dict[str, Source] = {}
    refused: list[Finding] = []
    for path in _lesson_files(folder):
        source, found = _source(path)
        sources[source.path] = source
        refused += found
        if not found:
            lessons.append(read_lesson(source, vocabulary))
    at_hand = {p.path.rsplit("/", 1)[-1]: p for at in (*pictures, folder) for p in _pictures(at)}
    return Bank(tuple(lessons), vocabulary, at_hand), sources, refused


def _lesson_files(folder: Path) -> list[Path]:
    return sorted(path for path in folder.glob("*.md") if not path.is_dir())


def _pictures(folder: Path) -> Iterator[PictureFile]:
    for path in sorted(folder.glob("*")):
        if path.suffix.casefold() in _PICTURE_ENDS:
            size = _size(path)
            if size:
                yield PictureFile(path.as_posix(), *size)


def _size(path: Path) -> tuple[int, int] | None:
    try:
        with Image.open(path) as image:
            width, height = image.size
            turned = image.getexif().get(0x0112) in _SIDEWAYS
            return (height, width) if turned else (width, height)
    except (OSError, Image.DecompressionBombError, SyntaxError, ValueError):
        return None  # no picture that can be read: the check `picture-file` says so


def _source(path: Path) -> tuple[Source, list[Finding]]:
    shown = _shown(path)
    try:
        return Source(shown, decode(path.read_bytes())), []
    except OSError as error:
        message = f"the file cannot be opened: {error.strerror or error}"
        hint = "see whether the file is still there and whether you may read it"
        return Source(shown, ""), [_refusal(Source(shown, ""), message, hint, 0)]
    except Unreadable as refusal:
        at = refusal.position
        found = Finding(shown, at.line, at.column, REFUSED, Severity.STOP, refusal.message,
                        refusal.hint)  # fmt: skip
        return Source(shown, ""), [found]


def _refusal(source: Source, message: str, hint: str, offset: int) -> Finding:
    at = source.position(offset)
    return Finding(source.path, at.line, at.column, REFUSED, Severity.STOP, message, hint)


def _shown(path: Path) -> str:
    """Return a path as its reader would type it: from here where it lies below."""
    try:
        # A link is shown by its own name: that is the one its writer knows.
        return Path(os.path.normpath(Path.cwd() / path)).relative_to(Path.cwd()).as_posix()
    except ValueError:
        return path.as_posix()
