"""The season map: all plants of a course through the year, in one drawing.

It has no fixed width: lengths across are in percent, lengths downward in `em`, where one em is
the height of a lane. So the same drawing serves a telephone (tall lanes, words in them), a wide
screen and a sheet of paper (lanes of a millimetre), and the style sheet sets the em.

The head with the months is a drawing of its own, so that it can stay in sight above a long map.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import accumulate, pairwise
from math import ceil
from typing import TYPE_CHECKING, Final

from markupsafe import Markup

from sallet.lesson.dangers import DANGERS, danger_of
from sallet.publish.map_bars import along, firm_runs, lane_bars
from sallet.publish.map_head import month_lines, season_head, session_lines
from sallet.publish.map_key import map_key
from sallet.publish.map_lanes import lanes_of, lines_of
from sallet.publish.map_parts import em
from sallet.publish.map_shape import SCREEN, SHEET, Layout

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence
    from datetime import date

    from sallet.publish.map_lanes import Lane
    from sallet.season.here import PlantYear

MOST: Final = 40
"""Plants on one sheet of paper."""
_APART: Final = 0.6
"""Room between two plants."""
_CUT: Final = 18
"""Letters of a part's name that have room in a lane of a telephone."""
_NO_TIMES: Final = Markup(
    '<text class="part none" x="0" y="50%" dx=".3em" dominant-baseline="central">'
    "times not known</text>"
)
"""What stands in the place of lanes: an empty row would say that the plant is never there."""
_MIDSUMMER: Final = 183
_FIRST: Final = 0.95
_LINE: Final = 1.12
"""Down to the first line of a name, and from one to the next, in em of its own letters."""
_TALLEST: Final = 5.0
"""Millimetres of a lane on a sheet with few plants."""
TALL: Final = 131.0
"""Millimetres of the drawing on a sheet: A4 on its side, less margins, heading and key."""


@dataclass(frozen=True)
class Block:
    """A plant's place on the map: its lanes one below the other, in em from the top."""

    year: PlantYear
    lanes: tuple[Lane, ...]
    top: float
    height: float


def season_map(years: Sequence[PlantYear], sessions: Sequence[date], ident: str) -> Markup:
    """Return the map for a screen; `ident` makes its ids its own on the page."""
    return _map(years, sessions, ident, SCREEN)


def map_sheets(years: Sequence[PlantYear], sessions: Sequence[date]) -> tuple[Markup, ...]:
    """Return the map for the wall, on as few sheets of like length as it needs, each with its key."""
    count = ceil(len(years) / MOST)
    ends = [ceil(len(years) * number / count) for number in range(count + 1)] if count else [0]
    parts = [years[first:last] for first, last in pairwise(ends)]
    return tuple(
        _map(part, sessions, f"sheet-{number}", SHEET) + map_key(part, on_paper=True)
        for number, part in enumerate(parts, 1)
    )


def blocks_of(years: Sequence[PlantYear], layout: Layout) -> tuple[Block, ...]:
    """Return the places of all plants; each is high enough for its lanes and for its name."""
    lanes = [lanes_of(year) for year in years]
    heights = [
        max(len(own), layout.line * max(len(name_lines(year, n)) for _, n in layout.letters))
        + _APART
        for year, own in zip(years, lanes, strict=True)
    ]
    tops = accumulate(heights, initial=0.0)
    return tuple(map(Block, years, lanes, tops, heights))


def name_lines(year: PlantYear, letters: int) -> tuple[tuple[str, str], ...]:
    """Return a plant's name and its danger in lines: in each what is of the name, and of the danger."""
    mark = " ".join(DANGERS[danger_of(year.lesson)])
    name = lines_of(year.lesson.name, letters)
    if len(name) == 1 and len(name[0]) + 1 + len(mark) <= letters:
        return ((f"{name[0]} ", mark),)
    return (*((line, "") for line in name), *(("", line) for line in lines_of(mark, letters)))


def _map(
    years: Sequence[PlantYear], sessions: Sequence[date], ident: str, layout: Layout
) -> Markup:
    blocks = blocks_of(years, layout)
    height = blocks[-1].top + blocks[-1].height if blocks else 1.0
    size = Markup(' font-size="{}mm"').format(f"{min(TALL / height, _TALLEST):.3f}")
    body = Markup(
        '<svg class="season-map {kind}" role="img" aria-labelledby="{ident}-title {ident}-desc" '
        'width="100%" height="{height}"{size} data-from="{names}">'
        '<title id="{ident}-title">The plants of the course through the year</title>'
        '<desc id="{ident}-desc">{desc}</desc>{rest}</svg>'
    ).format(
        kind=layout.kind, ident=ident, height=em(height), names=layout.names, desc=layout.desc,
        size=size if layout is SHEET else "",
        rest=Markup("").join(_layers(blocks, sessions, layout)),
    )  # fmt: skip
    return season_head(sessions, layout) + body


def _layers(blocks: Sequence[Block], sessions: Sequence[date], layout: Layout) -> Iterator[Markup]:
    names = layout.names
    yield month_lines(names, "0", "100%")
    yield from (_between(block) for block in blocks)
    yield from (_lane(block, at, names, lane_bars(lane)) for block, at, lane in _lanes(blocks))
    yield session_lines(sessions, names, "0", "100%")
    yield from (_lane(block, at, names, _word(lane)) for block, at, lane in _lanes(blocks))
    yield from (_lane(block, 0, names, _NO_TIMES) for block in blocks if not block.lanes)
    yield from (_names(block, kind, n, names) for block in blocks for kind, n in layout.letters)


def _lanes(blocks: Sequence[Block]) -> Iterator[tuple[Block, int, Lane]]:
    return ((block, at, lane) for block in blocks for at, lane in enumerate(block.lanes))


def _between(block: Block) -> Markup:
    y = em(block.top + block.height)
    return Markup('<line class="between" x1="0" y1="{}" x2="100%" y2="{}"/>').format(y, y)


def _lane(block: Block, at: int, names: int, inside: Markup) -> Markup:
    return Markup(
        '<svg class="lane" x="{}%" y="{}" width="{}%" height="1em" overflow="visible">{}</svg>'
    ).format(names, em(block.top + _APART / 2 + at), 100 - names, inside)


def _word(lane: Lane) -> Markup:
    """Return a part's word at its longest bar, on the side where there is more room."""
    found = (run for stretch in lane.rows[-1].stretches for run in firm_runs(stretch))
    first, last = max(found, key=lambda run: run[1] - run[0])
    name = lane.name if len(lane.name) <= _CUT else f"{lane.name[: _CUT - 1]}…"
    early = first + last <= 2 * _MIDSUMMER
    return Markup(
        '<text class="part" x="{}" y="50%" dx="{}" text-anchor="{}" dominant-baseline="central">'
        "{}</text>"
    ).format(
        *((along(first - 1), ".3em", "start") if early else (along(last), "-.3em", "end")), name
    )


def _names(block: Block, kind: str, letters: int, wide: int) -> Markup:
    danger = danger_of(block.year.lesson)
    lines = (
        Markup('<text y="{}">{}<tspan class="{}">{}</tspan></text>').format(
            em(_FIRST + _LINE * at), name, danger, mark
        )
        for at, (name, mark) in enumerate(name_lines(block.year, letters))
    )
    return Markup(
        '<svg class="name {}" y="{}" width="{}%" height="{}" overflow="visible">{}</svg>'
    ).format(kind, em(block.top + _APART / 4), wide, em(block.height), Markup("").join(lines))
