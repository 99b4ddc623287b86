"""The questions and answers of a key in words: whose organ, where on it, which of the states."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from functools import cached_property
from typing import TYPE_CHECKING, Final

from markupsafe import Markup, escape

from sallet.publish.values import explained
from sallet.study.glossary import anchor

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from sallet.lesson.vocabulary import Label, State, Vocabulary
    from sallet.study.glossary import UsedLabel, UsedSubject
    from sallet.study.plant_table import Asked

_BEFORE: Final = frozenset(
    {"lower", "upper", "middle", "basal", "stem", "inner", "outer", "terminal", "side"}
)
"""Places that stand before their organ: lower leaves."""
_BEHIND: Final = {
    "sterile shoots": "on sterile shoots",
    "flowering shoots": "on flowering shoots",
    "vigorous shoots": "on vigorous shoots",
    "short shoots": "on short shoots",
    "trunk": "on the trunk",
    "twigs": "on the twigs",
}
"""Places that need a word before them, where they stand behind their organ: leaves, on short shoots."""
_NUMBERS: Final = re.compile(r"(\d+)(?:–(\d+)| or more)?$")


def organ_asked(asked: Asked, vocabulary: Vocabulary) -> str:
    """Return what a question is about: `Leaves`, `Lower leaves`, `Stem, at the base`."""
    noun = asked.part or vocabulary.subject(asked.organ).heading
    places = sorted(_name(word, vocabulary) for word in asked.where)
    before = [place for place in places if place in _BEFORE]
    behind = [_BEHIND.get(place, place) for place in places if place not in _BEFORE]
    named = " ".join([*before, noun.lower() if before else noun])
    return ", ".join([named[:1].upper() + named[1:], *behind])


def _name(word: str, vocabulary: Vocabulary) -> str:
    found = vocabulary.qualifier(word)
    return found.name if found else word


def either(words: Sequence[str]) -> Markup:
    """Return words of which one holds: `a, b or c`."""
    if len(words) < 2:  # noqa: PLR2004 - nothing to join
        return escape(words[0] if words else "")
    # The joiner keeps a line from breaking between a word that can be pressed and its comma.
    return Markup("{} or {}").format(Markup("\u2060, ").join(words[:-1]), words[-1])


def numbers_joined(words: Iterable[str]) -> list[str]:
    """Return numbers with those that follow each other as one: `3, 4, 5–6, 8` → `3–6, 8`."""
    joined: list[tuple[str, int, int | None]] = []
    for word in words:
        found = _NUMBERS.match(word)
        low = int(found[1]) if found else -1
        high = None if word.endswith(" or more") else int(found[2] or low) if found else -1
        if found and joined and joined[-1][2] == low - 1 and joined[-1][1] >= 0:
            first = joined.pop()[1]
            joined.append((_range(first, high), first, high))
        else:
            joined.append((word, low, high))
    return [word for word, _, _ in joined]


def _range(low: int, high: int | None) -> str:
    return f"{low} or more" if high is None else f"{low}–{high}"


def state_asked(words: str, label: Label) -> State | None:
    """Return the state that an option stands for; None for a number or `none`."""
    return next((s for s in label.states if words in {s.lead, s.name}), None)


@dataclass(frozen=True)
class Explainer:
    """Sets the words of keys so that they explain themselves where the words page does."""

    used: tuple[UsedSubject, ...]
    """The words that the course's lessons use."""

    def label(self, label: Label) -> Markup:
        """Return the name of a character."""
        return self._explained(label.name, label.subject, label.name)

    def option(self, words: str, label: Label) -> Markup:
        """Return an option of a character."""
        state = state_asked(words, label)
        return self._explained(words, label.subject, label.name, state.name if state else "none")

    def options(self, words: Sequence[str], label: Label) -> Markup:
        """Return options of which one holds."""
        if label.kind == "count":
            return either(numbers_joined(words))
        return either([self.option(word, label) for word in words])

    def way(self, label: Label) -> str:
        """Return the way from the site's root to a character's words, or nothing."""
        place = anchor(label.subject, label.name)
        return f"words.html#{place}" if place in self._places else ""

    def _explained(self, words: str, *names: str) -> Markup:
        return explained(words, *names) if anchor(*names) in self._places else escape(words)

    @cached_property
    def _places(self) -> frozenset[str]:
        return frozenset(_places(self.used))

    def narrowed(self, labels: Iterable[Label]) -> tuple[UsedSubject, ...]:
        """Return those of the words that belong to some characters."""
        wanted = {(label.subject, label.name) for label in labels}
        kept = (replace(used, labels=tuple(_of(used, wanted))) for used in self.used)
        return tuple(used for used in kept if used.labels)


def _of(used: UsedSubject, wanted: set[tuple[str, str]]) -> Iterator[UsedLabel]:
    for label in used.labels:
        if (used.subject.name, label.label.name) in wanted:
            yield label


def _places(used: Iterable[UsedSubject]) -> Iterator[str]:
    for subject in used:
        for label in subject.labels:
            yield anchor(subject.subject.name, label.label.name)
            for state in label.states:
                yield anchor(subject.subject.name, label.label.name, state.name)
