"""The season strip: a plant's year as one small drawing, twelve months across.

Every bar carries its meaning in three ways: a word at its left, a shape and a colour. What
can be seen is a hollow bar, what is eaten a full one, what harms a hatched one. Days that are
uncertain are a thin bar at either end. Where what is gathered is not surely told from a plant that
harms, the bar is broken, and crosses stand in a row of their own.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from markupsafe import Markup

from sallet.lesson.values.times import LENGTHS, MONTHS, YEAR
from sallet.season.strip import (
    NOT_SURE,
    bars,
    doubts_of,
    runs_of,
    strip_name,
    strip_rows,
    strip_words,
)

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from sallet.season.here import Kind, Row
    from sallet.season.strip import Look, Run

WIDTH: Final = 344
"""All lengths are in units of the drawing; a phone shows about one to a pixel."""
NAMES: Final = 114
ROW: Final = 20
BAR: Final = 11
HEAD: Final = 18
FOOT: Final = 4
_CROSS: Final = 8
"""From one cross to the next."""
_ARM: Final = 3.2
"""Half a cross, across."""
_APART: Final = 6
"""From one stroke of a hatched bar to the next."""
_THIN: Final = 3
"""The height of a bar of uncertain days."""
_DAY: Final = (WIDTH - NAMES - 2) / YEAR
_LONGEST: Final = 17
"""Letters of a row's name that have room at its left."""


def season_strip(name: str, rows: Sequence[Row], ident: str) -> Markup:
    """Return the drawing of a plant's year; `ident` makes its ids its own on the page."""
    drawn = strip_rows(rows)
    eaten = [row for row in drawn if row.kind == "eaten"]
    doubt = doubts_of(rows)
    height = HEAD + ROW * (len(drawn) + bool(doubt)) + FOOT
    return Markup(
        '<svg class="strip" viewBox="0 0 {width} {height}" role="img" '
        'aria-labelledby="{ident}-title {ident}-words">'
        '<title id="{ident}-title">{name} through the year</title>'
        '<desc id="{ident}-words">{words}</desc>{months}{rows}</svg>'
    ).format(
        width=WIDTH, height=height, ident=ident, name=name, words=strip_words(rows),
        months=Markup("").join(_months(height)),
        rows=Markup("").join(_rows(drawn, len(eaten), doubt)),
    )  # fmt: skip


def _rows(drawn: Sequence[Row], eaten: int, doubt: frozenset[int]) -> Iterator[Markup]:
    """Yield the rows; what is not sure stands right below what is eaten."""
    shift = bool(doubt)
    for at, row in enumerate(drawn):
        yield _row(row, HEAD + ROW * (at + (shift and at >= eaten)))
    if doubt:
        yield _doubt(doubt, HEAD + ROW * eaten)


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
    called = strip_name(row)
    name = called if len(called) <= _LONGEST else f"{called[: _LONGEST - 1]}…"
    text = Markup('<text class="row {}" x="0" y="{}">{}</text>').format(
        row.kind, top + BAR + 2, name
    )
    drawn = (_bar(row.kind, look, run, top + 3) for run, look in bars(row))
    return text + Markup("").join(drawn)


def _bar(kind: Kind, look: Look, run: Run, top: int) -> Markup:
    return _soft(kind, run, top) if look == "soft" else _certain(look, run, top)


def _doubt(days: frozenset[int], top: int) -> Markup:
    text = Markup('<text class="row doubt" x="0" y="{}">{}</text>').format(top + BAR + 2, NOT_SURE)
    ends = map(_ends, runs_of(days))
    return text + Markup("").join(_crosses(left, right, top + 3) for left, right in ends)


def _crosses(left: float, right: float, top: int) -> Markup:
    """Return crosses from edge to edge, one at the least."""
    count = max(1, int((right - left) / _CROSS))
    apart = (right - left) / count
    strokes = []
    for number in range(count):
        middle = left + apart * (number + 0.5)
        a, b, up, down = middle - _ARM, middle + _ARM, top + BAR / 2 - _ARM, top + BAR / 2 + _ARM
        strokes.append(f"M{a:.1f} {up:.1f}L{b:.1f} {down:.1f}M{a:.1f} {down:.1f}L{b:.1f} {up:.1f}")
    return Markup('<path class="doubt" d="{}"/>').format("".join(strokes))


def _soft(kind: Kind, run: Run, top: int) -> Markup:
    left, right = _ends(run)
    return Markup('<rect class="soft {}" x="{}" y="{}" width="{}" height="{}"/>').format(
        kind, f"{left:.1f}", top + (BAR - _THIN) / 2, f"{right - left:.1f}", _THIN
    )


def _ends(run: Run) -> tuple[float, float]:
    return NAMES + (run[0] - 1) * _DAY, NAMES + run[1] * _DAY


def _certain(look: Look, run: Run, top: int) -> Markup:
    left, right = _ends(run)
    bar = Markup('<rect class="{}" x="{}" y="{}" width="{}" height="{}"/>').format(
        look, f"{left:.1f}", top, f"{right - left:.1f}", BAR
    )
    return bar + _hatch(left, right, top) if look == "harm" else bar


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
