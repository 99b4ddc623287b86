"""Builds lessons, banks and findings from texts given by file name."""

from __future__ import annotations

from pathlib import PurePosixPath
from typing import TYPE_CHECKING

from sallet.cards.printed import measure_print
from sallet.cards.setting import card_setting
from sallet.checks import CHECKS
from sallet.checks.running import run_checks, run_print_checks
from sallet.course.reading import read_course
from sallet.lesson.bank import Bank, PictureFile
from sallet.lesson.reading import read_lesson
from sallet.lesson.vocabulary_file import load_vocabulary
from sallet.source import Source

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from sallet.findings import Finding
    from sallet.lesson.model import Lesson

LESSON = "lesson.md"
IN_PRINT = {module.ID for module in CHECKS if module.LOOKS_AT in {"card", "print"}}


def lesson_of(text: str, path: str = LESSON) -> Lesson:
    """Return the lesson that a text holds."""
    return read_lesson(Source(path, text), load_vocabulary())


def files_of(snippet: str | Mapping[str, str]) -> Mapping[str, str]:
    """Return a snippet as files by name: a bare text is one lesson."""
    return {LESSON: snippet} if isinstance(snippet, str) else snippet


def bank_of(files: Mapping[str, str]) -> Bank:
    """Return the bank of all `.md` files; a picture is given by its size, `1200x800`."""
    lessons = tuple(lesson_of(text, path) for path, text in files.items() if path.endswith(".md"))
    pictures = {
        PurePosixPath(path).name: PictureFile(path, *map(int, size.split("x")))
        for path, size in files.items()
        if path.endswith((".jpg", ".png"))
    }
    return Bank(lessons, load_vocabulary(), pictures)


def findings_of(files: Mapping[str, str], check: str = "") -> list[Finding]:
    """Return what is found in some files, or only what one check finds."""
    bank = bank_of(files)
    text = files.get("course.yml")
    course = None if text is None else read_course(Source("course.yml", text))
    found = run_checks(bank, bank.lessons, course)
    if course and check in IN_PRINT:
        printed = measure_print(card_setting(course, bank, bank.lessons))
        found += run_print_checks(printed, course, bank)
    return [f for f in found if not check or f.check == check]


def as_lines(findings: Iterable[Finding]) -> str:
    """Return findings whole, as the fixtures write them."""
    return "\n".join(
        f"{f.file}:{f.line}:{f.column}: {f.severity.value}: {f.message}\n    → {f.hint}"
        for f in findings
    )
