"""Plants that no lesson names as look-alikes, and that too little is written of to tell apart."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from sallet.publish.pair_comparing import is_grave
from sallet.season.looking import features_named, months_words, spells

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.model import Lesson
    from sallet.publish.pair_comparing import Comparer


@dataclass(frozen=True)
class Reason:
    """Plants that harm from which a food plant is not surely told at some time, and why not."""

    words: str
    """`April: nothing recorded tells it from`."""
    others: tuple[Lesson, ...]


@dataclass(frozen=True)
class Untold:
    """A food plant with the grave plants from which it is not told at all times of gathering."""

    food: Lesson
    reasons: tuple[Reason, ...]


def untold(comparer: Comparer) -> tuple[Untold, ...]:
    """Return what no lesson of a course names and what is recorded does not always tell apart."""
    lessons = sorted(comparer.setting.taught.values(), key=lambda x: (x.name.casefold(), x.slug))
    found = (Untold(one, _reasons(one, lessons, comparer)) for one in lessons)
    return tuple(one for one in found if one.reasons)


def _reasons(food: Lesson, lessons: list[Lesson], comparer: Comparer) -> tuple[Reason, ...]:
    alike: dict[str, list[Lesson]] = {}
    for that in lessons:
        named = frozenset({food.slug, that.slug}) in comparer.named
        if that is not food and is_grave(food, that) and not named:
            for words in _words(food, that, comparer):
                alike.setdefault(words, []).append(that)
    return tuple(Reason(words, tuple(others)) for words, others in alike.items())


def _words(food: Lesson, that: Lesson, comparer: Comparer) -> Iterator[str]:
    days: dict[tuple[int, str], set[int]] = {}
    for spell in spells(comparer.told(food, that)):
        if not spell.is_sure:
            seen = len(spell.seen), features_named(spell.seen, comparer.vocabulary)
            days.setdefault(seen, set()).update(spell.window.days)
    for (count, names), when in days.items():
        yield f"{months_words(frozenset(when))}: {_only(count, names)} it from"


def _only(count: int, names: str) -> str:
    if not count:
        return "nothing recorded tells"
    return f"only {names} {'tells' if count == 1 else 'tell'}"
