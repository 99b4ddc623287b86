"""Bullets → facts: the label looked up, the value read by the grammar of the label's kind."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from sallet.lesson.blocks import joined
from sallet.lesson.model import Fact, Fault, Prose
from sallet.lesson.value import Item, Words
from sallet.lesson.values.counts import read_counts
from sallet.lesson.values.measures import read_measures
from sallet.lesson.values.states import read_states
from sallet.lesson.values.times import read_times
from sallet.lesson.values.zones import read_zones

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from sallet.lesson.blocks import Bullet
    from sallet.lesson.vocabulary import Label, Subject, Vocabulary
    from sallet.source import Text

ON_THE_CARD: Final = "on the card"
"""The label of a nested bullet that holds a shorter wording for the field card."""


def read_facts(
    bullets: Iterable[Bullet], subject: Subject, part: str, vocabulary: Vocabulary,
    faults: list[Fault],
) -> Iterator[Fact]:  # fmt: skip
    """Yield the facts of an organ or section; what is wrong with them goes into `faults`."""
    for bullet in bullets:
        fact = read_fact(bullet, subject, part, vocabulary, faults)
        if fact:
            yield fact


def read_fact(
    bullet: Bullet, subject: Subject, part: str, vocabulary: Vocabulary, faults: list[Fault]
) -> Fact | None:
    """Return the fact of a bullet; None where no label stands before a colon."""
    if bullet.label is None:
        faults.append(without_label(bullet, "a label"))
        return None
    label = subject.label(bullet.label.value)
    if label is None:
        nearest = subject.nearest(bullet.label.value)
        fault = Fault("unknown-label", bullet.label.span, bullet.label.value, nearest,
                      subject.heading)  # fmt: skip
        faults.append(fault)
    items, wrong = read_value(bullet.value, label, vocabulary)
    if not bullet.value.value.strip():
        wrong.append(Fault("empty-value", bullet.label.span, bullet.label.value))
    faults.extend(wrong)
    return Fact(
        subject=subject.name,
        part=part,
        label=label.name if label else bullet.label.value,
        known=label is not None,
        key=bullet.bold,
        items=items,
        text=_as_written(bullet.value),
        note=whole_note(bullet),
        on_card=card_wording(bullet, faults),
        citations=bullet.citations,
        span=bullet.span,
        label_span=bullet.label.span,
        value_span=bullet.value.span,
    )


def _as_written(value: Text) -> str:
    """Return a value on one line; citations are gone, and leave no blank before a comma."""
    return re.sub(r"\s+([,;])", r"\1", " ".join(value.value.split()))


def read_value(
    value: Text, label: Label | None, vocabulary: Vocabulary
) -> tuple[tuple[Item, ...], list[Fault]]:
    """Return the items of a value by the grammar of its label's kind; no label, mere words."""
    match label.kind if label else "words":
        case "states" if label:
            return read_states(value, label, vocabulary)
        case "measure":
            return read_measures(value, vocabulary)
        case "count":
            return read_counts(value, vocabulary)
        case "times":
            return read_times(value, vocabulary)
        case "zones":
            return read_zones(value, vocabulary)
    words = " ".join(value.value.split())
    return ((Item(Words(words), words, value.span),) if words else ()), []


def without_label(bullet: Bullet, expected: str) -> Fault:
    """Return the fault of a bullet with no colon behind its first words."""
    if not bullet.line:
        return empty_bullet(bullet)
    return Fault("bullet-without-label", bullet.line.span, bullet.line.value, (), expected)


def empty_bullet(bullet: Bullet) -> Fault:
    """Return the fault of a bullet with nothing on its first line."""
    return Fault("empty-value", bullet.span, "")


def card_wording(bullet: Bullet, faults: list[Fault]) -> str:
    """Return the nested bullet `on the card`; other nested bullets are faults."""
    found = ""
    for inner in bullet.inner:
        if inner.is_labelled({ON_THE_CARD}):
            found = whole_text(inner)
        else:
            at = inner.label or inner.line
            faults.append(Fault("nested-bullet", at.span, at.value, (ON_THE_CARD,)))
    return found


def whole_note(bullet: Bullet) -> Prose:
    """Return a bullet's note with all that stands inside the bullet and is no card wording."""
    others = [inner for inner in bullet.inner if not inner.is_labelled({ON_THE_CARD})]
    kept = [Prose(inner.written, inner.span) for inner in others]
    return joined([bullet.note, bullet.quote, *kept])


def whole_text(bullet: Bullet) -> str:
    """Return a bullet's value and note as one run of words."""
    return " ".join(f"{bullet.value.value} {whole_note(bullet).text}".split())
