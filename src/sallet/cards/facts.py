"""Facts as a card says them: in plain words, lengths in both systems."""

from __future__ import annotations

from typing import TYPE_CHECKING

from sallet.cards.plain import Run, plain, runs, sentences
from sallet.lesson.value import Measure
from sallet.measures import both_systems

if TYPE_CHECKING:
    from collections.abc import Iterable

    from sallet.lesson.model import Caution, Fact
    from sallet.lesson.value import Item
    from sallet.units import System


def value_words(items: Iterable[Item], first: System) -> str:
    """Return values in a row with their qualifiers; `first` is the system that stands first."""
    return ", ".join(_item_words(item, first) for item in items)


def fact_runs(fact: Fact, first: System) -> tuple[Run, ...]:
    """Return a fact's wording for the card, or without one its value and its note."""
    if fact.on_card:
        return runs(fact.on_card)
    value = plain(value_words(fact.items, first))
    return sentences(value, runs(fact.note.text))


def caution_runs(caution: Caution) -> tuple[Run, ...]:
    """Return a caution whole: its words and its note."""
    return sentences(runs(caution.text.value), runs(caution.note.text))


def _item_words(item: Item, first: System) -> str:
    words = _bare(item, first)
    often = [q.words for q in item.qualifiers if q.kind == "frequency"]
    where = [q.words for q in item.qualifiers if q.kind != "frequency"]
    lead = [word for word in often if word not in words.split()]
    tail = [f"({', '.join(where)})"] if where else []
    return " ".join([*lead, words, *tail])


def _bare(item: Item, first: System) -> str:
    if isinstance(item.value, Measure):
        return "{} ({})".format(*both_systems(item.value, first))
    return item.text
