"""Bullets → facts: the label looked up, the value read by the grammar of the label's kind."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from sallet.lesson.model import Fact, Fault
from sallet.lesson.value import Item, Words
from sallet.lesson.values.counts import read_counts
from sallet.lesson.values.measures import read_measures
from sallet.lesson.values.states import read_states
from sallet.lesson.values.times import read_times
from sallet.lesson.values.zones import read_zones
from sallet.lesson.wording import card_wording, whole_note

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from sallet.lesson.blocks import Bullet
    from sallet.lesson.vocabulary import Label, Subject, Vocabulary
    from sallet.source import Text


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
    on_card = card_wording(bullet, faults)
    return Fact(
        subject=subject.name,
        part=part,
        label=label.name if label else bullet.label.value,
        known=label is not None,
        key=bullet.bold,
        items=items,
        text=_as_written(bullet.value),
        note=whole_note(bullet),
        on_card=on_card.value,
        citations=bullet.citations,
        span=bullet.span,
        label_span=bullet.label.span,
        value_span=bullet.value.span,
        card_span=on_card.span,
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
