"""Questions with their options and feedback; pictures with their pins."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from sallet.lesson.model import Fault, Option, Picture, Pin, Question
from sallet.lesson.wording import whole_note, whole_text
from sallet.source import Span, Text

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from sallet.lesson.blocks import Bullet, Part

_BOX: Final = re.compile(r"^\[(?P<mark>[ xX])\](?:\s+|$)(?P<words>.*)$")
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
    words = f"{bullet.line} {bullet.note.text}"
    end = bullet.note.span.end if bullet.note else bullet.line.span.end
    return Text(" ".join(words.split()), Span(bullet.line.span.start, end))


def _options(bullet: Bullet, faults: list[Fault]) -> Iterator[Option]:
    for inner in bullet.inner:
        box = _BOX.match(inner.line.value)
        if box is None:
            faults.append(Fault("option-without-box", inner.line.span, inner.line.value))
            continue
        start = inner.line.span.start + box.start("words")
        words = " ".join(f"{box['words']} {whole_note(inner).text}".split())
        if not words:
            faults.append(Fault("empty-value", inner.line.span, inner.line.value))
        yield Option(Text(words, Span(start, inner.line.span.end)), box["mark"] != " ")


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
            at = bullet.label or bullet.line
            faults.append(Fault("picture-bullet", at.span, at.value))
