"""A link that leads nowhere, or where no page should lead.

A link may lead to another lesson by its file, `ramsons.md`, with or without a heading behind a
`#`; to a heading of this lesson, `#parts-to-remove`; to an address on the web with `https://`
in front; to a letter box, `mailto:`, or a telephone, `tel:`. A link to anything else is dead on
the page, and `javascript:` would be a trap.
"""

from __future__ import annotations

from difflib import get_close_matches
from typing import TYPE_CHECKING, Final
from urllib.parse import unquote, urlsplit

from sallet.checks.problem import Problem
from sallet.checks.words import did_you_mean, shown
from sallet.findings import Severity
from sallet.lesson.places import place_named, places_of

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "broken-link"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = {
    "lesson.md": "See [ramsons](ramsons.md#leaves).\n",
    "ramsons.md": "## Identification\n### Leaves\n- margin: entire\n",
}
BAD = {"lesson.md": "See [ramsons](ramson.md).\n", "ramsons.md": "## Identification\n"}

SCHEMES: Final = ("http", "https", "mailto", "tel")


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:
    """Yield each link that leads to no page and no place."""
    for link in lesson.links:
        wrong = None if link.is_picture else _wrong(link.target, lesson, bank)
        if wrong:
            yield Problem(link.span, *wrong)


def _wrong(target: str, lesson: Lesson, bank: Bank) -> tuple[str, str] | None:
    """Return the message and the hint for a target, or None where all is well."""
    try:
        parts = urlsplit(target)
    except ValueError:
        return f"{shown(target)} is no address", "write it as in the browser's address line"
    if parts.scheme in SCHEMES and (parts.netloc or not parts.scheme.startswith("http")):
        return None
    if parts.scheme or parts.netloc:
        return (
            f"{shown(target)} is no address that a page may lead to",
            "write `https://` and the address, or the file of a lesson such as `ramsons.md`",
        )
    return _wrong_inside(unquote(parts.path), unquote(parts.fragment), lesson, bank)


def _wrong_inside(path: str, place: str, lesson: Lesson, bank: Bank) -> tuple[str, str] | None:
    if not path and not place:
        return "the link leads nowhere", "write the file of a lesson, or an address"
    files = {name: other for other in bank.lessons for name in _names(other)}
    other = files.get(path.removeprefix("./")) if path else lesson
    if other is None:
        near = get_close_matches(path, [name for name in files if name.endswith(".md")], cutoff=0.7)
        return f"there is no lesson {shown(path)}", did_you_mean(near, "correct the file's name")
    if not place or place in places_of(other):
        return None
    near = [
        f"#{name}" for name in get_close_matches(place_named(place), places_of(other), cutoff=0.7)
    ]
    otherwise = "write a heading in small letters, with hyphens for blanks"
    return f"{shown('#' + place)} is no heading of {shown(other.name)}", did_you_mean(
        near, otherwise
    )


def _names(lesson: Lesson) -> tuple[str, str]:
    return lesson.source.path.rpartition("/")[2], f"{lesson.slug}.html"
