"""What to look at on which days: the time of gathering as spells in which the same can be seen."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.lesson.values.times import MONTHS, YEAR, month_and_day
from sallet.season.move import windows_of
from sallet.season.telling import week_of
from sallet.season.words import in_a_row
from sallet.study.contrast import FEWEST_KINDS, reliable_first
from sallet.study.features import organ_words

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Mapping, Sequence

    from sallet.lesson.value import Window
    from sallet.lesson.vocabulary import Vocabulary
    from sallet.season.telling import Telling
    from sallet.season.visible import Days
    from sallet.study.contrast import Contrast

LEAST_RUN: Final = 3
"""So many months at the least are told by the first and the last of them."""
Seen = tuple[int, ...]
"""Which of a telling's signs can be looked at, by their places in it."""


@dataclass(frozen=True)
class Spell:
    """Days of gathering that run on, with what tells two plants apart on each of them."""

    window: Window
    is_sure: bool
    seen: tuple[Contrast, ...]
    """What can be looked at, what is reliable first."""


def spells(telling: Telling) -> tuple[Spell, ...]:
    """Return the time of gathering as spells, in its order; none where the plants never meet.

    A week is not sure if one of its days is not: in such a week only that counts which can be
    looked at on every day on which the plant is gathered.
    """
    alike: dict[tuple[bool, Seen], list[int]] = {}
    for day, seen in _seen_by_day(telling).items():
        alike.setdefault((day not in telling.unsure, seen), []).append(day)
    found = [
        Spell(window, is_sure, _contrasts(telling, seen))
        for (is_sure, seen), days in alike.items()
        for window in windows_of(days)
    ]
    order = [day for window in windows_of(telling.gathered) for day in window.days]
    return tuple(sorted(found, key=lambda spell: order.index(spell.window.first)))


def _seen_by_day(telling: Telling) -> Mapping[int, Seen]:
    seen = {day: _on(telling, [day]) for day in sorted(telling.gathered)}
    weeks: dict[int, list[int]] = {}
    for day in sorted(telling.unsure):
        weeks.setdefault(week_of(day), []).append(day)
    return seen | {day: _on(telling, days) for days in weeks.values() for day in days}


def _on(telling: Telling, days: Iterable[int]) -> Seen:
    """Return the signs that can be looked at on every one of some days."""
    wanted = set(days)
    return tuple(at for at, sign in enumerate(telling.signs) if wanted <= sign.days)


def _contrasts(telling: Telling, seen: Seen) -> tuple[Contrast, ...]:
    return reliable_first(telling.signs[at].contrast for at in seen)


# ---- in words -----------------------------------------------------------------------------


def spell_words(spell: Spell, vocabulary: Vocabulary) -> str:
    """Return what a spell tells: `sure by leaves: attachment; flowers: petals`, or why it is not."""
    names = features_named(spell.seen, vocabulary)
    if spell.is_sure:
        return f"sure by {names}"
    if not spell.seen:
        return "not yet sure: nothing recorded that can be seen then tells them apart"
    return f"not yet sure: only {names}{_why(spell.seen)}"


def _why(seen: tuple[Contrast, ...]) -> str:
    if len(seen) == 1:
        return "" if seen[0].is_reliable else ", not to be trusted by itself"
    if not any(contrast.is_reliable for contrast in seen):
        return ", none of them to be trusted by itself"
    if len({contrast.kind for contrast in seen}) < FEWEST_KINDS:
        return ", which tell of one and the same thing"
    return ""


def features_named(found: Iterable[Contrast], vocabulary: Vocabulary) -> str:
    """Return features by organ, the reliable first: `stem: section; less sure: leaves: gloss`."""
    found = tuple(found)
    firm = "; ".join(_by_organ((c for c in found if c.is_reliable), vocabulary))
    others = "; ".join(_by_organ((c for c in found if not c.is_reliable), vocabulary))
    return f"{firm}; less sure: {others}" if firm and others else firm or others


def _by_organ(found: Iterable[Contrast], vocabulary: Vocabulary) -> Iterator[str]:
    organs: dict[str, list[str]] = {}
    for contrast in found:
        organ = organ_words(contrast.this, vocabulary)
        organs.setdefault(organ[:1].lower() + organ[1:], []).append(contrast.label.name)
    yield from (f"{organ}: {', '.join(labels)}" for organ, labels in organs.items())


# ---- the whole year -----------------------------------------------------------------------


def sure_days(telling: Telling) -> Days:
    """Return the days of the year (1–365) on which what can be seen tells the plants apart.

    Of the time of gathering only the weeks that are sure as a whole are among them.
    """
    return telling.sure_among(range(1, YEAR + 1)) - telling.unsure


def months_words(days: Days) -> str:
    """Return the months in which some days of the year lie: `April`, `March to May and July`."""
    months = sorted({month_and_day(day)[0] for day in days})
    runs: list[list[int]] = []
    for month in months:
        if runs and runs[-1][-1] == month - 1:
            runs[-1].append(month)
        else:
            runs.append([month])
    if len(runs) > 1 and runs[0][0] == 1 and runs[-1][-1] == len(MONTHS):
        runs.append([*runs.pop(), *runs.pop(0)])
    return in_a_row([words for run in runs for words in _months(run)])


def _months(run: Sequence[int]) -> Sequence[str]:
    names = [MONTHS[month - 1] for month in run]
    if len(names) == len(MONTHS):
        return ["all year"]
    return names if len(names) < LEAST_RUN else [f"{names[0]} to {names[-1]}"]
