"""Tables of plants and characters in the tests, and keys walked with a specimen in hand."""

from __future__ import annotations

import csv
from collections import Counter
from functools import cache
from itertools import product
from pathlib import Path
from typing import TYPE_CHECKING

from hypothesis import strategies as st

from sallet.study.couplets import Couplet, End
from sallet.study.table import Character, Table

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping, Sequence

    from sallet.study.couplets import Key
    from sallet.study.table import Plants

FLAVIA = Path(__file__).parents[1] / "study" / "flavia.csv"
"""32 species of trees and shrubs by eight nominal characters of their leaves: the published Flavia
leaf set, as `leaf_id_flavia` of the package modeldata, one row a species (the characters do not
vary within any)."""
NOT_TOLD = "-"


def column(told: str, **more: bool | str) -> Character:
    """Return a character from each plant's answers: `a`, `ab` for a plant that varies, or `-`."""
    answers = told.split()
    options = tuple(sorted({letter for answer in answers for letter in answer} - {NOT_TOLD}))
    shown = tuple(
        None if answer == NOT_TOLD else frozenset(options.index(letter) for letter in answer)
        for answer in answers
    )
    return Character(told, options, shown, **more)  # type: ignore[arg-type]


def table_of(*characters: Character, food: str = "", grave: str = "") -> Table:
    """Return the table of some characters; its plants are called A, B, C … in order."""
    plants = tuple("ABCDEFGHIJKLMNOPQRSTUVWXYZ"[: len(characters[0].shown)])
    sides = [frozenset(plants.index(name) for name in names) for names in (food, grave)]
    return Table(plants, characters, *sides)


def one_character(number: int) -> Table:
    """Return a table of plants of which each has an option of its own."""
    shown = tuple(frozenset({plant}) for plant in range(number))
    options = tuple(map(str, range(number)))
    return Table(tuple(range(number)), (Character("which", options, shown),))


@cache
def flavia() -> Table:
    """Return the table of the Flavia leaf set."""
    rows = list(csv.DictReader(FLAVIA.read_text("utf-8").splitlines()))
    names = [name for name in rows[0] if name != "species"]
    columns = (_plain(name, [row[name] for row in rows]) for name in names)
    return Table(tuple(row["species"] for row in rows), tuple(columns))


def _plain(name: str, answers: Sequence[str]) -> Character:
    options = tuple(sorted(set(answers)))
    return Character(name, options, tuple(frozenset({options.index(a)}) for a in answers))


def some_of(table: Table, plants: Sequence[int], characters: Sequence[int]) -> Table:
    """Return a table of some plants and some characters of another."""
    columns = (table.characters[at] for at in characters)
    return Table(
        tuple(table.plants[p] for p in plants),
        tuple(Character(c.name, c.options, tuple(c.shown[p] for p in plants)) for c in columns),
    )


def profiles_of(table: Table) -> Counter[object]:
    """Return how many plants share each set of answers."""
    return Counter(
        tuple(c.shown[plant] for c in table.characters) for plant in range(len(table.plants))
    )


# ---- keys -----------------------------------------------------------------------------------


def paths_of(
    key: Key, so_far: tuple[tuple[Couplet, int], ...] = ()
) -> Iterator[tuple[tuple[tuple[Couplet, int], ...], End]]:
    """Yield every end with the couplets before it, and which of their leads (0 or 1) was taken."""
    if isinstance(key, End):
        yield so_far, key
        return
    for side, lead in enumerate(key.leads):
        yield from paths_of(lead.goes_to, (*so_far, (key, side)))


def couplets_of(key: Key) -> Iterator[Couplet]:
    """Yield every couplet of a key."""
    if isinstance(key, Couplet):
        yield key
        for lead in key.leads:
            yield from couplets_of(lead.goes_to)


def specimens_of(table: Table, plant: int) -> Iterator[Mapping[int, int]]:
    """Yield every specimen of a plant that its recorded answers allow: an option by character."""
    told = [(at, shown) for at, c in enumerate(table.characters) if (shown := c.shown[plant])]
    for options in product(*(sorted(shown) for _, shown in told)):
        yield dict(zip((at for at, _ in told), options, strict=True))


def reached(key: Key, specimen: Mapping[int, int]) -> Iterator[Plants]:
    """Yield the ends that a specimen comes to; where no lead, or neither, speaks of it, by both."""
    if isinstance(key, End):
        yield key.plants
        return
    option = specimen.get(key.character)
    fitting = [lead for lead in key.leads if option in lead.options] or list(key.leads)
    for lead in fitting:
        yield from reached(lead.goes_to, specimen)


# ---- made-up tables -------------------------------------------------------------------------


def answers(options: int, *, varying: bool) -> st.SearchStrategy[frozenset[int] | None]:
    """Draw what is recorded of a plant: mostly one option, sometimes several, now and then nothing."""
    which = st.integers(0, options - 1)
    one = which.map(lambda option: frozenset({option}))
    several = st.frozensets(which, min_size=2, max_size=3)
    return st.one_of(one, one, one, several, st.none()) if varying else one


@st.composite
def characters(draw: st.DrawFn, plants: int, *, varying: bool = True) -> Character:
    """Draw a character of some plants, its options all apart, or in order, or some of them alike."""
    number = draw(st.integers(2, 5))
    told = st.lists(answers(number, varying=varying), min_size=plants, max_size=plants)
    ordered = draw(st.booleans())
    return Character(
        name=draw(st.integers()),
        options=tuple(map(str, range(number))),
        shown=tuple(draw(told)),
        excluded=() if ordered or not varying else draw(exclusions(number)),
        kind=draw(st.sampled_from(["", "milk", "hairs"])),
        is_ordered=ordered,
        cost=draw(st.sampled_from([1.0, 1.3, 2.5])),
        is_reliable=draw(st.booleans()),
        is_weak=draw(st.booleans()),
    )


@st.composite
def exclusions(draw: st.DrawFn, number: int) -> tuple[frozenset[int], ...]:
    """Draw which options exclude which others, the same seen from either: most pairs do."""
    pairs = [(one, other) for one in range(number) for other in range(one)]
    alike = draw(st.sets(st.sampled_from(pairs), max_size=3))
    return tuple(
        frozenset(
            other
            for other in range(number)
            if one != other and not {(one, other), (other, one)} & alike
        )
        for one in range(number)
    )


@st.composite
def tables(draw: st.DrawFn, *, varying: bool = True) -> Table:
    """Draw a table; some plants are for the pot, some harm, some both, some neither."""
    number = draw(st.sampled_from([1, 2, 3, 4, 5, 6, 6, 7, 7, 8, 8]))
    columns = draw(st.lists(characters(number, varying=varying), min_size=1, max_size=4))
    some = st.frozensets(st.integers(0, number - 1), min_size=number // 3)
    return Table(tuple(range(number)), tuple(columns), draw(some), draw(some))
