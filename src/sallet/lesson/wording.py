"""The words of a bullet, and the shorter wording that it carries for the field card."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.lesson.blocks import joined
from sallet.lesson.model import NOWHERE, Fault, Prose
from sallet.source import Span, Text

if TYPE_CHECKING:
    from collections.abc import Iterable

    from sallet.lesson.blocks import Bullet, Part

ON_THE_CARD: Final = "on the card"
"""The label of a bullet that holds a shorter wording for the field card."""
NO_WORDING: Final = Text("", NOWHERE)
WORDED_WHOLE: Final = ("preparation", "harvest")
"""Sections with one wording for all of their prose, as a bullet of the section itself."""


def is_for_the_card(bullet: Bullet) -> bool:
    """Return whether a bullet is a wording for the field card, and nothing of the page's."""
    return bullet.is_labelled({ON_THE_CARD})


def whole_note(bullet: Bullet) -> Prose:
    """Return a bullet's note with all that stands inside the bullet and is no card wording."""
    others = [inner for inner in bullet.inner if not is_for_the_card(inner)]
    kept = [Prose(inner.written, inner.span) for inner in others]
    return joined([bullet.note, bullet.quote, *kept])


def whole_text(bullet: Bullet) -> str:
    """Return a bullet's value and note as one run of words."""
    return " ".join(f"{bullet.value.value} {whole_note(bullet).text}".split())


def card_text(bullets: Iterable[Bullet]) -> Text:
    """Return the wording for the card among some bullets, with its place in the text.

    Several are one, so that no caution is lost. One without words is none: the whole words stand.
    """
    worded = [bullet for bullet in bullets if is_for_the_card(bullet) and whole_text(bullet)]
    if not worded:
        return NO_WORDING
    place = Span(_first_word(worded[0]), worded[-1].span.end)
    return Text(" ".join(map(whole_text, worded)), place)


def _first_word(bullet: Bullet) -> int:
    has_value = bool(bullet.value.value.strip())
    return bullet.value.span.start if has_value else whole_note(bullet).span.start


def card_wording(bullet: Bullet, faults: list[Fault]) -> Text:
    """Return the nested bullet `on the card`; other nested bullets are faults."""
    for inner in bullet.inner:
        if not is_for_the_card(inner):
            at = inner.label or inner.line
            faults.append(Fault("nested-bullet", at.span, at.value, (ON_THE_CARD,)))
    return card_text(bullet.inner)


def section_wordings(name: str, part: Part) -> tuple[Bullet, ...]:
    """Return the bullets that are a section's own wording for the card; most sections have none.

    One below an inner heading is not the section's.
    """
    return tuple(filter(is_for_the_card, part.bullets)) if name in WORDED_WHOLE else ()
