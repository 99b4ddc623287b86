"""The season strip: a plant's year as one small drawing, twelve months across.

Every bar carries its meaning in three ways: a word at its left, a shape and a colour. What
can be seen is a hollow bar, what is eaten a full one, what harms a hatched one.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final, Literal

from markupsafe import Markup

from sallet.lesson.values.times import LENGTHS, MONTHS, YEAR
from sallet.season.words import window_words

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from sallet.lesson.model import Lesson
    from sallet.lesson.value import Window

Kind = Literal["seen", "eaten", "harm"]

WIDTH: Final = 344
"""All lengths are in units of the drawing; a phone shows about one to a pixel."""
NAMES: Final = 114
ROW: Final = 20
BAR: Final = 11
HEAD: Final = 18
FOOT: Final = 4
_APART: Final = 6
"""From one stroke of a hatched bar to the next."""
_DAY: Final = (WIDTH - NAMES - 2) / YEAR
_LONGEST: Final = 17
"""Letters of a row's name that have room at its left."""


@dataclass(frozen=True)
class Row:
    """One organ or edible part through the year."""

    name: str
    kind: Kind
    windows: tuple[Window, ...]

    @property
    def words(self) -> str:
        """Return the row's windows in words."""
        return " and ".join(window_words(window) for window in self.windows)


def strip_rows(lesson: Lesson) -> tuple[Row, ...]:
    """Return the rows of a plant: what is eaten first, then what can be seen."""
    seen: Kind = "seen" if lesson.is_food else "harm"
    eaten = [Row(f"eat {p.timing.name}", "eaten", p.timing.windows) for p in lesson.edible_parts]
    rows = [*eaten, *(Row(t.name, seen, t.windows) for t in lesson.season)]
    return tuple(row for row in rows if row.windows)


def season_strip(name: str, rows: Sequence[Row], ident: str) -> Markup:
    """Return the drawing of a plant's year; `ident` makes its ids its own on the page."""
    height = HEAD + ROW * len(rows) + FOOT
    return Markup(
        '<svg class="strip" viewBox="0 0 {width} {height}" role="img" '
        'aria-labelledby="{ident}-title {ident}-words">'
        '<title id="{ident}-title">{name} through the year</title>'
        '<desc id="{ident}-words">{words}</desc>{months}{rows}</svg>'
    ).format(
        width=WIDTH, height=height, ident=ident, name=name, words=_in_words(rows),
        months=Markup("").join(_months(height)),
        rows=Markup("").join(_row(row, HEAD + ROW * i) for i, row in enumerate(rows)),
    )  # fmt: skip


def _in_words(rows: Sequence[Row]) -> str:
    return "; ".join(f"{row.name}: {row.words}" for row in rows) + "."


def _x(day: float) -> str:
    return f"{NAMES + day * _DAY:.1f}"


def _months(height: int) -> Iterator[Markup]:
    day = 0
    for month, length in zip(MONTHS, LENGTHS, strict=True):
        yield Markup('<path class="month" d="M{} {}V{}"/>').format(_x(day), HEAD - 4, height)
        yield Markup('<text class="month" x="{}" y="12" text-anchor="middle">{}</text>').format(
            _x(day + length / 2), month[0]
        )
        day += length
    yield Markup('<path class="month" d="M{} {}V{}"/>').format(_x(day), HEAD - 4, height)


def _row(row: Row, top: int) -> Markup:
    name = row.name if len(row.name) <= _LONGEST else f"{row.name[: _LONGEST - 1]}…"
    text = Markup('<text class="row {}" x="0" y="{}">{}</text>').format(
        row.kind, top + BAR + 2, name
    )
    bars = (_bar(row.kind, run, top + 3) for window in row.windows for run in _runs(window))
    return text + Markup("").join(bars)


def _runs(window: Window) -> tuple[tuple[int, int], ...]:
    """Return a window as runs from and to that do not cross the new year."""
    if window.first <= window.last:
        return ((window.first, window.last),)
    return ((window.first, YEAR), (1, window.last))


def _bar(kind: Kind, run: tuple[int, int], top: int) -> Markup:
    left, right = NAMES + (run[0] - 1) * _DAY, NAMES + run[1] * _DAY
    bar = Markup('<rect class="{}" x="{}" y="{}" width="{}" height="{}"/>').format(
        kind, f"{left:.1f}", top, f"{right - left:.1f}", BAR
    )
    return bar + _hatch(left, right, top) if kind == "harm" else bar


def _hatch(left: float, right: float, top: int) -> Markup:
    """Return slanting strokes that fill a bar from edge to edge."""
    rise, strokes = BAR - 2, []
    for number in range(int((right - left + rise) / _APART) + 1):
        foot = left + 1 - rise + number * _APART
        begin, end = max(foot, left + 1), min(foot + rise, right - 1)
        if begin < end:
            height = top + BAR - 1 - (begin - foot)
            strokes.append(f"M{begin:.1f} {height:.1f}l{end - begin:.1f}-{end - begin:.1f}")
    return Markup('<path class="harm" d="{}"/>').format("".join(strokes)) if strokes else Markup()
