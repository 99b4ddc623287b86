"""A fact's values as words on a page: terms explain themselves, lengths and cold in both systems."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from markupsafe import Markup, escape

from sallet.hardiness import zone_words
from sallet.lesson.value import Measure, StateRange, Zones
from sallet.measures import both_systems
from sallet.study.glossary import anchor

if TYPE_CHECKING:
    from collections.abc import Iterable

    from sallet.lesson.model import Fact
    from sallet.lesson.value import Item, Term
    from sallet.units import System


_COMMA: Final = Markup("\u2060, ")
"""The joiner keeps a line from breaking between a word that can be pressed and its comma."""


@dataclass(frozen=True)
class Writer:
    """Writes values for the pages of a course."""

    units_first: System
    explains: bool = True
    """Whether a term can be pressed to see its meaning."""

    def value(self, fact: Fact) -> Markup:
        """Return the values of a fact."""
        return self.items(fact.items, fact.subject, fact.label if fact.known else "")

    def items(self, items: Iterable[Item], subject: str, label: str) -> Markup:
        """Return values of a label, with their qualifiers."""
        return _COMMA.join(self._item(item, subject, label) for item in items)

    def _item(self, item: Item, subject: str, label: str) -> Markup:
        # What is not written anew keeps the adverb that stands in its own words.
        own = [] if isinstance(item.value, StateRange | Measure | Zones) else item.text.split()
        often = [q.words for q in item.qualifiers if q.kind == "frequency"]
        lead = "".join(f"{word} " for word in often if word not in own)
        where = ", ".join(q.words for q in item.qualifiers if q.kind != "frequency")
        tail = f" ({where})" if where else ""
        return escape(lead) + self._bare(item, subject, label) + escape(tail)

    def _bare(self, item: Item, subject: str, label: str) -> Markup:
        if isinstance(item.value, StateRange):
            ends = (self._term(end, subject, label) for end in item.value.ends)
            return Markup(" to ").join(ends)
        if isinstance(item.value, Measure):
            return _both(*both_systems(item.value, self.units_first))
        if isinstance(item.value, Zones):
            return _both(*zone_words(item.value, self.units_first))
        return escape(item.text)

    def _term(self, term: Term, subject: str, label: str) -> Markup:
        return term_button(term, subject, label) if self.explains else escape(term.words)


def _both(own: str, other: str) -> Markup:
    return Markup('{} <span class="other-units">({})</span>').format(own, other)


def term_button(term: Term, subject: str, label: str) -> Markup:
    """Return a word that shows its meaning when it is pressed."""
    return explained(term.words, subject, label, term.name)


def explained(words: str, *names: str) -> Markup:
    """Return words whose meaning stands in the slip for the word of these names."""
    return Markup('<button type="button" class="term" popovertarget="word-{}">{}</button>').format(
        anchor(*names), words
    )
