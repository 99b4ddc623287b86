"""All pairs of a course as tables: how many characters tell two plants apart, and how surely.

Every pair stands once: the plants for the pot against those that harm, and either kind among itself.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final, Literal

from sallet.lesson.dangers import DANGERS, danger_of
from sallet.publish.pair_comparing import is_grave
from sallet.study.contrast import tell_apart

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping, Sequence

    from sallet.lesson.model import Lesson
    from sallet.publish.pair_comparing import Comparer
    from sallet.study.contrast import Contrast

COLUMNS: Final = 24
"""So many columns go on a sheet of paper; more of them stand in a further table."""
Doubt = Literal["", "some", "all", "none"]
DOUBTS: Final[Mapping[Doubt, tuple[str, str]]] = {
    "": ("", ""),
    "some": ("◐", "not sure in some weeks of gathering"),
    "all": ("●", "not surely told apart by what is recorded"),
    "none": ("✕", "nothing recorded tells them apart"),
}
"""How far two plants are not surely told apart: a shape and its words."""


@dataclass(frozen=True)
class Cell:
    """Two plants, where the row of the one and the column of the other meet."""

    count: int
    """How many characters that can be looked for tell the two apart."""
    doubt: Doubt
    page: str
    """The way to their page, if a lesson names them as look-alikes; else nothing."""

    @property
    def shape(self) -> str:
        """Return the shape of what is not sure."""
        return DOUBTS[self.doubt][0]

    @property
    def words(self) -> str:
        """Return what the cell tells, behind its number."""
        features = " feature" if self.count == 1 else " features"
        named = "named as look-alikes" if self.page else ""
        return "; ".join(filter(None, [features, named, DOUBTS[self.doubt][1]]))


@dataclass(frozen=True)
class MatrixRow:
    """A plant against the plants of the columns."""

    lesson: Lesson
    cells: tuple[Cell, ...]
    rest: int
    """The columns that are left, whose pairs stand in another row."""


@dataclass(frozen=True)
class Matrix:
    """A table of pairs."""

    title: str
    columns: tuple[Lesson, ...]
    rows: tuple[MatrixRow, ...]


@dataclass(frozen=True)
class Matrices:
    """The pairs of a course."""

    tables: tuple[Matrix, ...]
    pairs: int

    @property
    def doubts(self) -> tuple[tuple[str, str], ...]:
        """Return what the shapes of the cells mean."""
        return tuple(meaning for doubt, meaning in DOUBTS.items() if doubt)


def matrices(comparer: Comparer) -> Matrices:
    """Return the tables of all pairs of the plants taught in a course."""
    lessons = sorted(comparer.setting.taught.values(), key=lambda x: (x.name.casefold(), x.slug))
    count = len(lessons)
    return Matrices(tuple(_tables(lessons, comparer)), count * (count - 1) // 2)


def _tables(lessons: Sequence[Lesson], comparer: Comparer) -> Iterator[Matrix]:
    dangers = [*DANGERS]
    food = [lesson for lesson in lessons if lesson.is_food]
    harm = [lesson for lesson in lessons if not lesson.is_food]
    harm.sort(key=lambda lesson: dangers.index(danger_of(lesson)))
    for at in range(0, len(harm) if food else 0, COLUMNS):
        columns = tuple(harm[at : at + COLUMNS])
        rows = (MatrixRow(one, _cells(one, columns, comparer), 0) for one in food)
        yield Matrix("Food against plants that harm", columns, tuple(rows))
    yield from _among("Food against food", food, comparer)
    yield from _among("Plants that harm against each other", harm, comparer)


def _among(title: str, lessons: Sequence[Lesson], comparer: Comparer) -> Iterator[Matrix]:
    """Yield the tables of some plants against each other, each pair once."""
    for at in range(0, len(lessons) - 1, COLUMNS):
        columns = tuple(lessons[at : min(at + COLUMNS, len(lessons) - 1)])
        rows = []
        for number in range(at + 1, len(lessons)):
            cells = _cells(lessons[number], columns[: number - at], comparer)
            rows.append(MatrixRow(lessons[number], cells, len(columns) - len(cells)))
        yield Matrix(title, columns, tuple(rows))


def _cells(one: Lesson, others: Sequence[Lesson], comparer: Comparer) -> tuple[Cell, ...]:
    return tuple(_cell(one, other, comparer) for other in others)


def _cell(one: Lesson, other: Lesson, comparer: Comparer) -> Cell:
    pair = comparer.named.get(frozenset({one.slug, other.slug}))
    food, that = (one, other) if is_grave(one, other) else (other, one)
    tests = comparer.tests(food, that)
    doubt = _doubt(food, that, tests, comparer)
    return Cell(len(tests), doubt, pair.path if pair else "")


def _doubt(food: Lesson, that: Lesson, tests: Sequence[Contrast], comparer: Comparer) -> Doubt:
    if not tell_apart(tests):
        return "all" if tests else "none"
    telling = comparer.told(food, that) if is_grave(food, that) else None
    if telling is None or not telling.unsure:
        return ""
    return "all" if telling.unsure == telling.gathered else "some"
