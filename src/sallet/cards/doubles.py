"""The plants that a plant is taken for, as lines of its card: none is left out, the worst first."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.cards.model import Line
from sallet.cards.plain import Run, joined, plain, runs, sentences
from sallet.lesson.dangers import danger_named
from sallet.season.looking import features_named
from sallet.season.words import days_words
from sallet.study.contrast import contrasts, reliable_first

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.cards.setting import CardSetting
    from sallet.lesson.model import Lesson, LookAlike
    from sallet.season.telling import Telling

WORST_FIRST: Final = ("deadly", "poisonous", "unknown", "harmful", "harmless", "food")
"""In this order look-alikes stand on the card of a plant for the pot."""
EATEN_FIRST: Final = ("food", "harmless", "harmful", "unknown", "poisonous", "deadly")
"""In this order on that of a plant that harms: whoever takes it for food is in danger."""
NOTHING_TELLS: Final = "nothing recorded tells them apart: leave both"


def double_lines(lesson: Lesson, setting: CardSetting) -> tuple[Line, ...]:
    """Return a line for each plant that this one may be taken for, the most dangerous mistake first."""
    lines = (*_named(lesson, setting), *_named_by_others(lesson, setting))
    order = WORST_FIRST if lesson.is_food else EATEN_FIRST
    return tuple(sorted(lines, key=lambda line: order.index(line.danger)))


def _named(lesson: Lesson, setting: CardSetting) -> Iterator[Line]:
    told = {id(t.look): t for t in setting.tellings.get(lesson.slug, ()) if t.look}
    for look in lesson.look_alikes:
        own = setting.bank.lesson_of(look)
        yield Line(
            _with_doubt(_tell(lesson, look, setting), told.get(id(look)), setting),
            label=look.name.value,
            danger=danger_named(look, setting.bank),
            scientific=own.front.scientific_name if own else look.scientific_name,
            what=f"the look-alike `{look.name.value}`",
            span=look.card_span if look.on_card else look.prose.span if look.prose else look.name.span,
            can_be_worded=not look.on_card,
        )  # fmt: skip


def _tell(lesson: Lesson, look: LookAlike, setting: CardSetting) -> tuple[Run, ...]:
    """Return what tells a look-alike apart: the card's wording, the prose, or the features."""
    if look.on_card or look.prose:
        return runs(look.on_card or look.prose.text)
    found = contrasts(lesson.facts, setting.bank.facts_of(look), setting.bank.vocabulary)
    named = features_named(reliable_first(c for c in found if c.is_test), setting.bank.vocabulary)
    return plain(f"see {named}" if named else NOTHING_TELLS)


def _named_by_others(lesson: Lesson, setting: CardSetting) -> Iterator[Line]:
    """Yield the plants that harm and name this one, where its own lesson does not name them."""
    for telling in setting.tellings.get(lesson.slug, ()):
        if telling.look is None and telling.other:
            seen = features_named(
                reliable_first(sign.contrast for sign in telling.signs), setting.bank.vocabulary
            )
            yield Line(
                _with_doubt(plain(f"see {seen}" if seen else NOTHING_TELLS), telling, setting),
                label=telling.name,
                danger=telling.danger,
                scientific=telling.other.front.scientific_name,
                what=f"the look-alike `{telling.name}`",
                span=lesson.where("look-alikes"),
            )  # fmt: skip


def _with_doubt(
    tell: tuple[Run, ...], telling: Telling | None, setting: CardSetting
) -> tuple[Run, ...]:
    """Add on which days of gathering a plant is not surely told from another, and what settles it."""
    if telling is None or not telling.unsure:
        return tell
    about = setting.years[telling.food.slug].is_estimate
    settled = f"made sure by {telling.settled_by}" if telling.settled_by else "pick none then"
    doubt = (
        Run("Not yet sure", "strong"),
        *runs(f"{days_words(telling.unsure, about=about)}: {settled}"),
    )
    return sentences(tell, joined([doubt[:1], doubt[1:]], Run(" ")))
