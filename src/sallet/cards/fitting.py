"""Whether cards hold what stands on them, and at which size of text: measured by the engine itself.

Each side is measured at the comfortable size, then smaller by quarter points down to the floor.
Nothing is left out to make it fit.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING, Any, Final

from sallet.cards.data import card_data, size_data
from sallet.cards.sizes import CARD_SIZES, FLOOR, points
from sallet.typesetting.engine import typeset
from sallet.typesetting.jobs import Job

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Mapping, Sequence

    from sallet.cards.model import Card, SideName
    from sallet.course.printing import CardName
    from sallet.typesetting.engine import Progress

AT_ONCE: Final = 12
"""Cards measured in one document."""
_WEIGHT: Final = 5
"""Measuring a card takes so many times the memory of setting one."""
_LONG: Final = 18
"""Words of so many letters are measured by themselves."""


@dataclass(frozen=True)
class SideFit:
    """What was measured of a side."""

    points: float
    """The size of its text; the smallest where it does not fit."""
    fits: bool
    over: float
    """Millimetres that it is too tall at that size."""
    height: float
    """Millimetres that its words take at that size."""


@dataclass(frozen=True)
class Fitted:
    """A card and how it fits."""

    card: Card
    size: CardName
    sides: Mapping[SideName, SideFit]
    wide: tuple[tuple[str, float], ...] = ()
    """Words that are wider than the card at the smallest size, with their width in millimetres."""
    larger: tuple[CardName, ...] = field(default=())
    """Where it does not fit: the larger cards on which it would."""

    @property
    def fits(self) -> bool:
        """Whether all that stands on it is to be seen."""
        return not self.wide and all(side.fits for side in self.sides.values())


def fit_cards(
    cards: Sequence[Card], size: CardName, language: str, progress: Progress | None = None
) -> tuple[Fitted, ...]:
    """Return how each card fits on a size."""
    found = [
        Fitted(card, size, _sides(told), tuple((word, width) for word, width in told["wide"]))
        for card, told in zip(
            cards, _measured(cards, size, points(), language, progress), strict=True
        )
    ]
    failing = [fitted.card for fitted in found if not fitted.fits]
    larger = _larger(failing, size, language) if failing else {}
    return tuple(replace(one, larger=larger.get(one.card.lesson.slug, ())) for one in found)


def _sides(told: Mapping[str, Any]) -> Mapping[SideName, SideFit]:
    return {"front": SideFit(**told["front"]), "back": SideFit(**told["back"])}


def _larger(
    cards: Sequence[Card], size: CardName, language: str
) -> Mapping[str, tuple[CardName, ...]]:
    """Return the larger sizes that hold each card at the smallest text, by slug."""
    own = CARD_SIZES[size].trim
    sizes = [
        name for name, other in CARD_SIZES.items()
        if other.trim.width * other.trim.height > own.width * own.height
    ]  # fmt: skip
    fitting: dict[str, tuple[CardName, ...]] = {card.lesson.slug: () for card in cards}
    for name in sizes:
        for card, told in zip(cards, _measured(cards, name, (FLOOR,), language), strict=True):
            if told["front"]["fits"] and told["back"]["fits"] and not told["wide"]:
                fitting[card.lesson.slug] += (name,)
    return fitting


def _measured(
    cards: Sequence[Card],
    size: CardName,
    sizes: Sequence[float],
    language: str,
    progress: Progress | None = None,
) -> Iterator[dict[str, Any]]:
    batches = [cards[start : start + AT_ONCE] for start in range(0, len(cards), AT_ONCE)]
    jobs = [
        Job(
            "fit",
            {
                "language": language,
                "size": size_data(CARD_SIZES[size]),
                "points": sizes,
                "cards": [card_data(card) | _words(card) for card in batch],
            },
            wanted="told",
            cards=_WEIGHT * len(batch),
        )
        for batch in batches
    ]
    for told in typeset(jobs, progress and _in_cards(progress, len(cards))):
        yield from told


def _in_cards(progress: Progress, count: int) -> Progress:
    """Return what tells of cards where it is told of documents."""
    return lambda done, _: progress(min(done * AT_ONCE, count), count)


def _words(card: Card) -> dict[str, list[str]]:
    texts = [*(f"{line.label} {line.text}" for side in card.sides for line in side.lines)]
    texts += [
        card.course,
        *card.emergency,
        *(line.scientific for side in card.sides for line in side.lines),
    ]
    front = card.lesson.front
    texts += [front.scientific_name, front.family, *front.also_called]
    return {"words": sorted(_long(texts)), "title-words": card.lesson.name.split()}


def _long(texts: Iterable[str]) -> set[str]:
    return {word for text in texts for word in text.split() if len(word) >= _LONG}
