"""Questions with their options and feedback; pictures with their pins."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from sallet.lesson.facts import whole_text
from sallet.lesson.model import Fault, Option, Picture, Pin, Question
from sallet.source import Span, Text

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from sallet.lesson.outline import Bullet, Part

_BOX: Final = re.compile(r"^\[([ xX])\]\s+(.*)$")
_PIN: Final = re.compile(r"^pin\s+(\d{1,3})$", re.IGNORECASE)
_POINT: Final = re.compile(
    r"^(\d{1,3}(?:\.\d{1,3})?)\s*%[,\s]\s*(\d{1,3}(?:\.\d{1,3})?)\s*%,?\s*(.*)$"
)
_TOLD: Final = ("shows", "credit", "licence", "license")


def read_questions(numbered: Iterable[Bullet], faults: list[Fault]) -> Iterator[Question]:
    """Yield the questions of a numbered list."""
    for bullet in numbered:
        options = tuple(_options(bullet, faults))
        yield Question(_prompt(bullet), options, bullet.quote, bullet.span)


def _prompt(bullet: Bullet) -> Text:
    first = bullet.label or bullet.value
    start = first.span.start
    words = bullet.value.value
    if bullet.label:
        words = f"{bullet.label.value}: {words}"
    if bullet.note:
        words = f"{words} {bullet.note.text}"
    return Text(" ".join(words.split()), Span(start, bullet.value.span.end))


def _options(bullet: Bullet, faults: list[Fault]) -> Iterator[Option]:
    for inner in bullet.inner:
        text = _prompt(inner)
        box = _BOX.match(text.value)
        if box is None:
            faults.append(Fault("option-without-box", inner.span, text.value))
            continue
        yield Option(Text(box[2], inner.span), box[1] != " ")


def read_pictures(parts: Iterable[Part], faults: list[Fault]) -> Iterator[Picture]:
    """Yield the pictures, each a `###` that names its file."""
    for part in parts:
        told = {b.label.value.casefold(): whole_text(b) for b in part.bullets if b.label}
        yield Picture(
            file=part.heading,
            shows=told.get("shows", ""),
            credit=told.get("credit", ""),
            licence=told.get("licence") or told.get("license", ""),
            pins=tuple(_pins(part.bullets, faults)),
            note=part.lead,
            span=part.span,
        )


def _pins(bullets: Iterable[Bullet], faults: list[Fault]) -> Iterator[Pin]:
    for bullet in bullets:
        label = bullet.label.value if bullet.label else ""
        number = _PIN.match(label)
        point = _POINT.match(bullet.value.value.strip())
        if number and point:
            yield Pin(int(number[1]), float(point[1]), float(point[2]), point[3], bullet.span)
        elif number or label.casefold() not in _TOLD:
            faults.append(Fault("picture-bullet", bullet.span, label or bullet.value.value))
