"""The bars of a lane of the season map: hollow, filled or striped, with soft ends.

Lengths along the year are in percent of the year's width, heights in percent of the lane's.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from markupsafe import Markup

from sallet.lesson.values.times import YEAR
from sallet.publish.map_parts import fill_of, marks, stripes
from sallet.season.strip import runs, split

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.publish.map_lanes import Lane
    from sallet.publish.map_parts import Look
    from sallet.season.here import Kind, Row, Stretch
    from sallet.season.strip import Run

THIN: Final = ("30%", "40%")
"""Top and height of what can be seen."""
FULL: Final = ("8%", "84%")
"""Top and height of what is eaten and of what harms."""
LOW: Final[dict[Kind, tuple[str, str]]] = {
    "seen": ("40%", "20%"),
    "eaten": ("29%", "42%"),
    "harm": ("29%", "42%"),
}
"""Top and height of the uncertain days: half as high as the bar."""


def lane_bars(lane: Lane) -> Markup:
    """Return the bars of a lane."""
    rows = (_row(row, lane.look) for row in lane.rows)
    return Markup("").join(bar for row in rows for bar in row)


def _row(row: Row, look: Look) -> Iterator[Markup]:
    for stretch in row.stretches:
        yield from (soft_bar(row.kind, look, run) for run in soft_runs(stretch))
    for stretch in row.stretches:
        for run in firm_runs(stretch):
            yield from _certain(row, look, run)


def _certain(row: Row, look: Look, run: Run) -> Iterator[Markup]:
    if row.kind == "seen":
        yield thin_bar(run)
        return
    for part, unsure in split(run, row.not_sure):
        yield doubt_bar(part) if unsure else full_bar(row.kind, look, part)


def firm_runs(stretch: Stretch) -> tuple[Run, ...]:
    """Return the days that are certain, as runs that do not cross the new year."""
    return runs(stretch.firm) if stretch.firm else ()


def soft_runs(stretch: Stretch) -> tuple[Run, ...]:
    """Return the uncertain days round both ends, as runs that do not cross the new year."""
    return tuple(run for end in stretch.unsure for run in runs(end))


def along(days: float) -> str:
    """Return a number of days in percent of the year."""
    return f"{100 * days / YEAR:.3f}%"


def thin_bar(run: Run) -> Markup:
    """Return the hollow bar of what can be seen."""
    return _rect("edge seen", "none", run, THIN)


def doubt_bar(run: Run) -> Markup:
    """Return the high hollow bar of what is gathered, but not surely told from what harms."""
    return _rect("edge doubt", "none", run, FULL)


def soft_bar(kind: Kind, look: Look, run: Run) -> Markup:
    """Return the low pale bar of uncertain days."""
    # Pale colour alone would not be seen on every paper: the line in ink will.
    left, right = along(run[0] - 1), along(run[1])
    line = Markup('<line class="soft" x1="{}" y1="50%" x2="{}" y2="50%"/>').format(left, right)
    fill = "none" if kind == "seen" else fill_of(look)
    return _rect("soft", fill, run, LOW[kind]) + line


def full_bar(kind: Kind, look: Look, run: Run) -> Markup:
    """Return the bar of what is eaten, or the striped one of what harms."""
    fill = Markup('<rect width="100%" height="100%" fill="{}"/>').format(fill_of(look))
    edge = Markup('<rect class="edge {}" width="100%" height="100%" fill="none"/>').format(kind)
    over = stripes() if kind == "harm" else Markup()
    # A drawing of its own: so the marks begin where the bar does.
    return Markup('<svg x="{}" y="{}" width="{}" height="{}" overflow="visible">{}</svg>').format(
        along(run[0] - 1), FULL[0], along(run[1] - run[0] + 1), FULL[1],
        fill + marks(look) + over + edge,
    )  # fmt: skip


def _rect(name: str, fill: str, run: Run, tall: tuple[str, str]) -> Markup:
    return Markup('<rect class="{}" fill="{}" x="{}" y="{}" width="{}" height="{}"/>').format(
        name, fill, along(run[0] - 1), tall[0], along(run[1] - run[0] + 1), tall[1]
    )
