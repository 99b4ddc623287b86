"""A new course and a new lesson, to be filled in: what `sallet check` finds is what is missing."""

from __future__ import annotations

import json
import re
from typing import TYPE_CHECKING, Final

from jinja2 import Environment, FileSystemLoader, StrictUndefined

from sallet.folder import COURSE_FILE
from sallet.lesson.reading import hyphened
from sallet.shipped import templates_folder

if TYPE_CHECKING:
    from collections.abc import Mapping
    from pathlib import Path

    from sallet.lesson.model import TaughtAs

_FORMS: Final[Mapping[TaughtAs, str]] = {"food": "food.md", "look-alike": "look-alike.md"}
_PLAIN: Final = re.compile(r"[^\W\d_][\w' .’-]*")
"""A name that YAML reads as it stands."""
_WORDS_OF_YAML: Final = {"yes", "no", "on", "off", "true", "false", "null", "y", "n"}


class InTheWay(Exception):
    """A file that would have to be written over."""


def new_course(title: str) -> dict[str, str]:
    """Return the files of a new course, by path; folders that are to be there end in a slash."""
    return {
        COURSE_FILE: _filled(COURSE_FILE, title=_scalar(title)),
        "lessons/": "",
        "pictures/": "",
    }


def new_lesson(name: str, taught_as: TaughtAs) -> tuple[str, str]:
    """Return the file name and the text of a new lesson."""
    return f"{hyphened(name)}.md", _filled(_FORMS[taught_as], name=_scalar(name))


def write_new(folder: Path, files: Mapping[str, str]) -> None:
    """Write files where none stand yet. Raises InTheWay before anything is written."""
    for path in files:
        if not path.endswith("/") and (folder / path).exists():
            raise InTheWay(f"`{folder / path}` is there already; nothing was written")
    for path, text in files.items():
        target = folder / path
        (target if path.endswith("/") else target.parent).mkdir(parents=True, exist_ok=True)
        if not path.endswith("/"):
            target.write_text(text, "utf-8")


def _filled(template: str, **words: str) -> str:
    folder = FileSystemLoader(templates_folder() / "starter")
    # Plain text: what is filled in is quoted for YAML, not escaped for HTML.
    environment = Environment(loader=folder, undefined=StrictUndefined, keep_trailing_newline=True)  # noqa: S701
    return environment.get_template(template).render(words)


def _scalar(words: str) -> str:
    """Return words as YAML reads them back unchanged."""
    words = " ".join(words.split())
    if _PLAIN.fullmatch(words) and words.casefold() not in _WORDS_OF_YAML:
        return words
    return json.dumps(words, ensure_ascii=False)
