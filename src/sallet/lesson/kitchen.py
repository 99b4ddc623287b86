"""Season, Edible parts and Parts to remove: what there is, when, and what is cut away."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.lesson.blocks import joined
from sallet.lesson.facts import empty_bullet, read_facts, without_label
from sallet.lesson.model import EdiblePart, Fault, Removal, Timing
from sallet.lesson.values.states import read_states
from sallet.lesson.values.times import read_times
from sallet.lesson.wording import card_text, card_wording, is_for_the_card, whole_note
from sallet.source import Span, Text

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from sallet.lesson.blocks import Bullet
    from sallet.lesson.model import Prose
    from sallet.lesson.value import Item
    from sallet.lesson.vocabulary import Subject, Vocabulary

EDIBLE: Final = "edible parts"
WAYS: Final = "preparation"
"""The label of the vocabulary that holds raw, cooked and the like."""


def read_season(
    bullets: Iterable[Bullet], vocabulary: Vocabulary, faults: list[Fault]
) -> Iterator[Timing]:
    """Yield the rows of Season."""
    for bullet in bullets:
        timing = _timing(bullet, bullet.value, whole_note(bullet), vocabulary, faults)
        if timing:
            card_wording(bullet, faults)
            yield timing


def _timing(
    bullet: Bullet, when: Text, note: Prose, vocabulary: Vocabulary, faults: list[Fault]
) -> Timing | None:
    if bullet.label is None:
        faults.append(without_label(bullet, "a part of the plant"))
        return None
    items, wrong = read_times(when, vocabulary)
    if not when.value.strip():
        wrong.append(Fault("empty-value", bullet.label.span, bullet.label.value))
    faults.extend(wrong)
    found = vocabulary.organ(bullet.label.value)
    if found is None:
        nearest = vocabulary.nearest_organs(bullet.label.value)
        faults.append(Fault("unknown-part", bullet.label.span, bullet.label.value, nearest))
    organ, part = found or (None, None)
    return Timing(
        name=bullet.label.value,
        organ=organ.name if organ else "",
        part=part.name if part else "",
        items=items,
        text=" ".join(when.value.split()),
        note=note,
        citations=bullet.citations,
        span=bullet.span,
        label_span=bullet.label.span,
        value_span=when.span,
    )


def read_edible_parts(
    bullets: Iterable[Bullet], vocabulary: Vocabulary, faults: list[Fault]
) -> Iterator[EdiblePart]:
    """Yield the edible parts: `part: when; how`, with what is said of it in nested bullets."""
    subject = vocabulary.subject(EDIBLE)
    for bullet in bullets:
        when, how = _at_semicolon(bullet.value)
        note = joined([bullet.note, bullet.quote])
        timing = _timing(bullet, when, note, vocabulary, faults)
        if timing is None:
            continue
        on_card = card_text(bullet.inner)
        told = [inner for inner in bullet.inner if not is_for_the_card(inner)]
        yield EdiblePart(
            timing=timing,
            ways=_ways(how, subject, vocabulary, faults),
            facts=tuple(read_facts(told, subject, timing.part, vocabulary, faults)),
            on_card=on_card.value,
            card_span=on_card.span,
        )


def _at_semicolon(value: Text) -> tuple[Text, Text]:
    at = value.value.find(";")
    at = len(value.value) if at < 0 else at
    start = value.span.start
    when = value.value[:at].rstrip()
    rest = value.value[at + 1 :]
    lead = at + 1 + len(rest) - len(rest.lstrip())
    how = rest.strip()
    return (
        Text(when, Span(start, start + len(when))),
        Text(how, Span(start + lead, start + lead + len(how))),
    )


def _ways(
    how: Text, subject: Subject, vocabulary: Vocabulary, faults: list[Fault]
) -> tuple[Item, ...]:
    label = subject.label(WAYS)
    if label is None or not how.value:
        return ()
    items, wrong = read_states(how, label, vocabulary)
    faults.extend(wrong)
    return items


def read_removals(bullets: Iterable[Bullet], faults: list[Fault]) -> Iterator[Removal]:
    """Yield the parts to remove: `part: reason`."""
    for bullet in bullets:
        if not bullet.line:
            faults.append(empty_bullet(bullet))
        on_card = card_wording(bullet, faults)
        yield Removal(
            name=bullet.label or bullet.value,
            reason=bullet.value if bullet.label else Text("", Span(*[bullet.value.span.end] * 2)),
            note=whole_note(bullet),
            on_card=on_card.value,
            citations=bullet.citations,
            span=bullet.span,
            card_span=on_card.span,
        )
