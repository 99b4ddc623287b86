"""Cautions: `- kind: text`, or free text; and the look-alikes."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final, get_args

from sallet.lesson.facts import card_wording, whole_text
from sallet.lesson.identification import read_organs
from sallet.lesson.model import Caution, Danger, Fault, LookAlike
from sallet.source import Span, Text

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from sallet.lesson.outline import Bullet, Part
    from sallet.lesson.vocabulary import Vocabulary

CAUTIONS: Final = "cautions"
DANGERS: Final[tuple[str, ...]] = get_args(Danger)


def read_cautions(
    bullets: Iterable[Bullet], vocabulary: Vocabulary, faults: list[Fault]
) -> Iterator[Caution]:
    """Yield the cautions; one whose kind is not known is kept whole, as free text."""
    subject = vocabulary.subject(CAUTIONS)
    for bullet in bullets:
        label = subject.label(bullet.label.value) if bullet.label else None
        if bullet.label and label is None:
            nearest = subject.nearest(bullet.label.value)
            fault = Fault("unknown-caution-kind", bullet.label.span, bullet.label.value, nearest)
            faults.append(fault)
        if label and not bullet.value.value.strip() and not bullet.note:
            faults.append(Fault("empty-value", bullet.span, label.name))
        yield Caution(
            kind=label.name if label else "",
            text=bullet.value if label else _whole(bullet),
            note=bullet.note,
            on_card=card_wording(bullet, faults),
            citations=bullet.citations,
            span=bullet.span,
        )


def _whole(bullet: Bullet) -> Text:
    if bullet.label is None:
        return bullet.value
    words = f"{bullet.label.value}: {bullet.value.value}"
    return Text(words, Span(bullet.label.span.start, bullet.value.span.end))


def read_look_alikes(
    parts: Iterable[Part], vocabulary: Vocabulary, faults: list[Fault]
) -> Iterator[LookAlike]:
    """Yield the look-alikes, each a `###` under Look-alikes."""
    for part in parts:
        told = {b.label.value.casefold(): b for b in part.bullets if b.label}
        _report_others(part.bullets, faults)
        facts = tuple(read_organs(part.inner, vocabulary, faults))
        yield LookAlike(
            name=part.heading,
            prose=part.lead,
            scientific_name=_told(told, "scientific name"),
            danger=_danger(told.get("danger"), faults),
            settled_by=_told(told, "settled by"),
            on_card=_told(told, "on the card"),
            facts=facts,
            citations=tuple(c for b in part.bullets for c in b.citations),
            span=part.span,
            facts_written=bool(part.inner),
        )


_TOLD: Final = ("scientific name", "danger", "settled by", "on the card")


def _report_others(bullets: Iterable[Bullet], faults: list[Fault]) -> None:
    for bullet in bullets:
        if bullet.label is None or bullet.label.value.casefold() not in _TOLD:
            at = bullet.label or bullet.value
            faults.append(Fault("look-alike-bullet", at.span, at.value, _TOLD))


def _told(told: dict[str, Bullet], name: str) -> str:
    return whole_text(told[name]) if name in told else ""


def _danger(bullet: Bullet | None, faults: list[Fault]) -> Danger | None:
    if bullet is None:
        return None
    words = bullet.value.value.strip().casefold()
    for danger in get_args(Danger):
        if words == danger:
            return danger  # type: ignore[no-any-return]
    faults.append(Fault("unknown-danger", bullet.value.span, bullet.value.value, DANGERS))
    return None
