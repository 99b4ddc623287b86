"""Cautions: `- kind: text`, or free text; and the look-alikes."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final, get_args

from sallet.lesson.blocks import joined
from sallet.lesson.citations import without_citations
from sallet.lesson.identification import read_organs
from sallet.lesson.model import (
    NO_PROSE,
    Caution,
    Citation,
    Danger,
    Fault,
    LookAlike,
    Prose,
)
from sallet.lesson.wording import ON_THE_CARD, card_text, card_wording, whole_note, whole_text
from sallet.source import Text

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from sallet.lesson.blocks import Bullet, Part
    from sallet.lesson.vocabulary import Vocabulary

CAUTIONS: Final = "cautions"
_SLIP: Final = 0.8
"""How like a kind must be spelt to be taken for a slip of the pen: free text is allowed."""
DANGERS: Final[tuple[Danger, ...]] = get_args(Danger)


def read_cautions(
    bullets: Iterable[Bullet],
    texts: Iterable[tuple[Prose, tuple[Citation, ...]]],
    vocabulary: Vocabulary,
    faults: list[Fault],
) -> tuple[Caution, ...]:
    """Return the cautions in their order: each bullet, and each paragraph between them.

    One whose kind is not known is kept whole, as free text.
    """
    found = [_caution(bullet, vocabulary, faults) for bullet in bullets]
    found += [_free_text(text, citations) for text, citations in texts]
    return tuple(sorted(found, key=lambda caution: caution.span))


def _caution(bullet: Bullet, vocabulary: Vocabulary, faults: list[Fault]) -> Caution:
    subject = vocabulary.subject(CAUTIONS)
    label = subject.label(bullet.label.value) if bullet.label else None
    note = whole_note(bullet)
    if bullet.label and label is None:
        words = bullet.label.value
        nearest = subject.nearest(words, cutoff=_SLIP)
        faults.append(Fault("unknown-caution-kind", bullet.label.span, words, nearest))
    if not bullet.value.value.strip() and not note:
        at = bullet.label or bullet.line
        faults.append(Fault("empty-value", at.span, at.value))
    on_card = card_wording(bullet, faults)
    return Caution(
        kind=label.name if label else "",
        text=bullet.value if label else _whole(bullet),
        note=note,
        on_card=on_card.value,
        citations=bullet.citations,
        span=bullet.span,
        card_span=on_card.span,
    )


def _whole(bullet: Bullet) -> Text:
    return Text(without_citations(bullet.line.value), bullet.line.span)


def _free_text(prose: Prose, citations: tuple[Citation, ...]) -> Caution:
    return Caution(
        kind="",
        text=Text(without_citations(prose.text), prose.span),
        note=NO_PROSE,
        on_card="",
        citations=citations,
        span=prose.span,
    )


def read_look_alikes(
    parts: Iterable[Part], vocabulary: Vocabulary, faults: list[Fault]
) -> Iterator[LookAlike]:
    """Yield the look-alikes, each a `###` under Look-alikes."""
    for part in parts:
        told = {b.label.value.casefold(): b for b in part.bullets if b.label}
        others = [bullet for bullet in part.bullets if not bullet.is_labelled(_TOLD)]
        faults.extend(not_told(bullet) for bullet in others)
        more = [Prose(bullet.written, bullet.span) for bullet in others]
        more += [text for organ in part.inner for text in organ.every_text(steps=False)]
        facts = tuple(read_organs(part.inner, vocabulary, faults))
        on_card = card_text(part.bullets)
        yield LookAlike(
            name=part.heading,
            prose=joined([*part.texts, *part.steps, *more], part.heading.span.end),
            scientific_name=_told(told, "scientific name"),
            danger=_danger(told.get("danger"), faults),
            settled_by=_told(told, "settled by"),
            on_card=on_card.value,
            facts=facts,
            citations=tuple(c for b in part.bullets for c in b.citations),
            span=part.span,
            card_span=on_card.span,
        )


_TOLD: Final = ("scientific name", "danger", "settled by", ON_THE_CARD)


def not_told(bullet: Bullet) -> Fault:
    """Return the fault of a bullet that says nothing a look-alike has a place for."""
    at = bullet.label or bullet.line
    return Fault("look-alike-bullet", at.span, at.value, _TOLD)


def _told(told: dict[str, Bullet], name: str) -> str:
    return whole_text(told[name]) if name in told else ""


def _danger(bullet: Bullet | None, faults: list[Fault]) -> Danger | None:
    if bullet is None:
        return None
    words = bullet.value.value.strip().casefold()
    danger = next((danger for danger in DANGERS if danger == words), None)
    if danger is None:
        faults.append(Fault("unknown-danger", bullet.value.span, bullet.value.value, DANGERS))
    return danger
