"""All figures of a plant: which organ is drawn where it differs, how large, in which order."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.drawing.habit import habit
from sallet.drawing.kinds import HABIT, KINDS
from sallet.drawing.told import Told, places_told, told

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.drawing.kinds import Kind
    from sallet.drawing.sketch import Sketch
    from sallet.lesson.model import Fact
    from sallet.lesson.vocabulary import Vocabulary


MOST: Final = 3
"""An organ is drawn in so many places at most."""


@dataclass(frozen=True)
class Figure:
    """One figure of a plant."""

    organ: str
    sketch: Sketch
    kind: Kind | None
    """None for the whole plant, which is no single organ."""
    told: Told

    @property
    def words(self) -> str:
        """Return what is drawn and where: `leaf (lower)`."""
        return f"{self.sketch.title} ({self.told.where})" if self.told.where else self.sketch.title


def figures(facts: tuple[Fact, ...], vocabulary: Vocabulary) -> tuple[Figure, ...]:
    """Return the figures that the facts of a plant allow, in the order of a plate."""
    details: list[Figure] = []
    for kind in KINDS:
        # How a plant grows is told of its stem or of the whole: one drawing of it is enough.
        if all(figure.kind is None or figure.kind.name != kind.name for figure in details):
            details += _of_kind(kind, facts, vocabulary)
    whole = habit(facts, vocabulary, HABIT.size) if details else None
    if whole:
        plant = vocabulary.subject("whole plant")
        details.append(Figure(plant.name, whole, None, told(facts, plant)))
    return tuple(details)


def organs_drawn(facts: tuple[Fact, ...], vocabulary: Vocabulary) -> frozenset[str]:
    """Return the organs of which the facts of a plant allow any figure."""
    found: set[str] = set()
    for kind in KINDS:
        # The first figure is enough: the rest would be drawn for nothing.
        if kind.organ not in found and next(_of_kind(kind, facts, vocabulary), None):
            found.add(kind.organ)
    return frozenset(found)


def _of_kind(kind: Kind, facts: tuple[Fact, ...], vocabulary: Vocabulary) -> Iterator[Figure]:
    """Yield a figure for every place of which the drawing shows something of its own."""
    subject = vocabulary.subject(kind.organ)
    drawn: list[Figure] = []
    for where in (*_places(kind, facts), ""):
        if len(drawn) == MOST or (drawn and not where):
            return
        about = told(facts, subject, where)
        sketch = kind.draw(about, kind.size)
        if sketch is None or any(figure.sketch.ink == sketch.ink for figure in drawn):
            continue
        if not where or _shows_its_own(sketch, facts, kind, where):
            drawn.append(Figure(kind.organ, sketch, kind, about))
            yield drawn[-1]


def _places(kind: Kind, facts: tuple[Fact, ...]) -> tuple[str, ...]:
    labels = {fact.label for fact in facts if fact.subject == kind.organ}
    found = set(places_told(facts, kind.organ, labels))
    return tuple(place for place in kind.places if place in found)


def _shows_its_own(sketch: Sketch, facts: tuple[Fact, ...], kind: Kind, where: str) -> bool:
    labels = {character.label for character in sketch.shows}
    return where in places_told(facts, kind.organ, labels)
