"""The numbered keys as pages: one for the whole year, one for each month."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.publish.key_couplets import Ending, Printer
from sallet.publish.key_words import Explainer
from sallet.season.keying import key_table, month_name
from sallet.study.couplets import Couplet, build_key
from sallet.study.lengths import mean_steps, plants_of, shortest_mean, ways_of

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from sallet.lesson.model import Lesson
    from sallet.publish.key_couplets import CoupletLines
    from sallet.publish.sheets import Setting
    from sallet.season.here import PlantYear
    from sallet.study.couplets import Key
    from sallet.study.glossary import UsedSubject

KEYS: Final = "keys/"
"""The folder of the numbered keys."""
_MONTHS: Final = range(1, 13)


@dataclass(frozen=True)
class KeyLength:
    """How long a key is."""

    plants: int
    ends: int
    groups: int
    """How many ends name more than one plant."""
    mean: str
    """The mean number of couplets to a plant."""
    least: str
    """The least mean of any key that tells so many plants apart (Osborne 1963)."""


@dataclass(frozen=True)
class KeyPage:
    """A numbered key."""

    path: str
    name: str
    """`April`, or `the whole year`."""
    month: str
    """The month, or nothing for the whole year."""
    plants: tuple[Lesson, ...]
    couplets: tuple[CoupletLines, ...]
    only: Ending | None
    """What stands in a key's place where there is nothing to part."""
    left_out: tuple[Lesson, ...]
    """The plants of which nothing can be seen in the month."""
    length: KeyLength
    words: tuple[UsedSubject, ...]
    """The words that the couplets explain."""


def key_pages(
    years: Sequence[PlantYear], setting: Setting, used: tuple[UsedSubject, ...]
) -> tuple[KeyPage, ...]:
    """Return the keys to the plants of a course: the whole year's, then January's to December's.

    `used` are the words that the words page explains. Without plants there are no keys.
    """
    return tuple(_pages(years, setting, Explainer(used))) if years else ()


def _pages(years: Sequence[PlantYear], setting: Setting, explain: Explainer) -> Iterator[KeyPage]:
    for month in (None, *_MONTHS):
        table = key_table(years, setting.bank.vocabulary, month)
        yield _page(Printer(table, setting, explain), build_key(table), month)


def _page(printer: Printer, key: Key, month: int | None) -> KeyPage:
    name = month_name(month) if month else ""
    couplets = printer.couplets(key)
    met = {str(plant) for plant in printer.table.plants}
    taught = printer.setting.taught.items()
    return KeyPage(
        path=f"{KEYS}{name.lower() or 'year'}.html",
        name=name or "the whole year",
        month=name,
        plants=tuple(lesson for slug, lesson in taught if slug in met),
        couplets=couplets,
        only=None if isinstance(key, Couplet) else printer.ending(key),
        left_out=tuple(lesson for slug, lesson in taught if slug not in met),
        length=_length(key),
        words=printer.explain.narrowed(couplet.character for couplet in couplets),
    )


def _length(key: Key) -> KeyLength:
    ways, plants = ways_of(key), len(plants_of(key))
    return KeyLength(
        plants=plants,
        ends=len(ways),
        groups=sum(len(way.plants) > 1 for way in ways),
        mean=f"{mean_steps(key):.1f}",
        least=f"{shortest_mean(plants):.1f}",
    )
