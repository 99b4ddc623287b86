"""Two plants side by side, organ by organ: what tells them apart first, then what does not."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final, Literal

from sallet.season.move import windows_of
from sallet.season.words import days_words
from sallet.study.features import organ_words

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from markupsafe import Markup

    from sallet.lesson.model import Fact
    from sallet.lesson.value import Window
    from sallet.lesson.vocabulary import Vocabulary
    from sallet.publish.sheet import FactRow
    from sallet.season.visible import Days
    from sallet.study.contrast import Contrast

Telling = Literal["firm", "other", "untested", ""]
"""Whether a row tells two plants apart: surely, not by itself, by what is no test, or not."""
MARKS: Final[Mapping[Telling, tuple[str, str]]] = {
    "firm": ("◆", "tells apart"),
    "other": ("◇", "tells apart, not sure by itself"),
    "untested": ("·", "differs, but cannot be tested on a day"),
    "": ("", ""),
}
"""Each kind of row by its shape and its words; neither stands without the other."""
_UNDERGROUND: Final = "roots"
Written = tuple["Fact", "FactRow"]
"""A fact and how it is set."""


@dataclass(frozen=True)
class PairRow:
    """A character of two plants."""

    name: str
    label: Markup
    """Its name, which explains itself where it is pressed."""
    this: tuple[FactRow, ...]
    """What is recorded of the first plant; nothing where it is not."""
    that: tuple[FactRow, ...]
    telling: Telling
    caveat: str = ""
    """Why it may not be trusted by itself."""
    organ: str = ""
    """The organ as it is named inside a sentence."""
    seen: str = ""
    """When it can be looked at on either plant; nothing for what is no test."""
    windows: tuple[Window, ...] = ()
    """When it can be looked at on the first plant."""

    @property
    def mark(self) -> tuple[str, str]:
        """Return the row's shape and words."""
        return MARKS[self.telling]


@dataclass(frozen=True)
class PairGroup:
    """The characters of an organ, or of a kind or piece of it."""

    subject: str
    heading: str
    rows: tuple[PairRow, ...]

    @property
    def tells(self) -> bool:
        """Whether any of them tells the plants apart, or differs."""
        return any(row.telling for row in self.rows)


@dataclass(frozen=True)
class Look:
    """What tells two plants apart, and when it can be looked at on each of them.

    No days stand for a plant whose year is not known.
    """

    contrast: Contrast
    this: tuple[str, Days | None, bool]
    """The first plant's name, the days, and whether these are estimates."""
    that: tuple[str, Days | None, bool]


Key = tuple[str, str, str]
"""Organ, kind or piece of it, label."""


def key_of(fact: Fact) -> Key:
    """Return the character that a fact tells of."""
    return fact.subject, fact.part, fact.label


def pair_groups(
    these: Iterable[Written], those: Iterable[Written], looks: Iterable[Look], words: Vocabulary
) -> tuple[PairGroup, ...]:
    """Return every recorded character of the organs of two plants, what tells apart first."""
    ours, theirs = _by_key(these), _by_key(those)
    found = {key_of(look.contrast.this): look for look in looks}
    groups: dict[tuple[str, str], list[PairRow]] = {}
    for key in {**ours, **theirs}:
        row = _row(ours.get(key, ()), theirs.get(key, ()), found.get(key), words)
        groups.setdefault(key[:2], []).append(row)
    sorted_groups = [
        PairGroup(at[0], _heading(at, ours, theirs, words), tuple(sorted(rows, key=_rank)))
        for at, rows in groups.items()
    ]
    return tuple(sorted(sorted_groups, key=_place))


_ORDER: Final[tuple[Telling, ...]] = ("firm", "other", "untested", "")
_PLAIN: Final = len(_ORDER) - 1


def _place(group: PairGroup) -> tuple[int, bool]:
    """Return the place of a group: what nobody digs up to look at comes after the others."""
    return min(_rank(group.rows[0]), _PLAIN), group.subject == _UNDERGROUND


def _rank(row: PairRow) -> int:
    """Return the place of a row in its group; what is recorded of one plant only comes last."""
    both = bool(row.this and row.that)
    return _ORDER.index(row.telling) + (not both)


def _by_key(written: Iterable[Written]) -> dict[Key, tuple[Written, ...]]:
    found: dict[Key, dict[str, Written]] = {}
    for fact, row in written:
        # What is told in place and in the plant's own lesson in the same words stands once.
        found.setdefault(key_of(fact), {}).setdefault(fact.text, (fact, row))
    return {key: tuple(rows.values()) for key, rows in found.items()}


def _heading(
    at: tuple[str, str],
    ours: Mapping[Key, tuple[Written, ...]],
    theirs: Mapping[Key, tuple[Written, ...]],
    words: Vocabulary,
) -> str:
    fact = next(rows[0][0] for key, rows in {**theirs, **ours}.items() if key[:2] == at)
    return organ_words(fact, words)


def _row(
    ours: tuple[Written, ...], theirs: tuple[Written, ...], look: Look | None, words: Vocabulary
) -> PairRow:
    fact, first = (*ours, *theirs)[0]
    this, that = (tuple(row for _, row in side) for side in (ours, theirs))
    if look is None:
        return PairRow(fact.label, first.label, this, that, "")
    organ, tests = organ_words(fact, words), look.contrast.is_test
    return PairRow(
        name=fact.label,
        label=first.label,
        this=this,
        that=that,
        telling=_telling(look.contrast),
        caveat=look.contrast.label.caveat if not look.contrast.is_reliable else "",
        organ=organ[:1].lower() + organ[1:],
        seen=_seen(look, fact) if tests else "",
        windows=windows_of(look.this[1] or ()) if tests else (),
    )


def _telling(contrast: Contrast) -> Telling:
    if not contrast.is_test:
        return "untested"
    return "firm" if contrast.is_reliable else "other"


def _seen(look: Look, fact: Fact) -> str:
    """Return as a sentence when a feature can be looked at."""
    when = {
        name: _when(days, fact, about=about)
        for name, days, about in (look.this, look.that)
        if days is not None
    }
    if len(when) > 1 and len({*when.values()}) == 1:
        return f"To be seen on both {next(iter(when.values()))}."
    return f"To be seen {', '.join(f'on {name} {words}' for name, words in when.items())}."


def _when(days: Days, fact: Fact, *, about: bool) -> str:
    if days:
        return days_words(days, about=about)
    return "only when dug up" if fact.subject == _UNDERGROUND else "at no time that is told"
