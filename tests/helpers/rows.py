"""Rows of a plant's year in the tests, without a lesson behind them."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from sallet.lesson.model import NO_PROSE, NOWHERE, Timing
from sallet.lesson.value import Item, Window
from sallet.season.here import Row, Stretch

if TYPE_CHECKING:
    from sallet.season.here import Kind

RAMSONS = """---
name: Ramsons
seen at: {latitude: 54.4, longitude: -2.6, elevation: 150 m}
---
## Season
- leaves: late February to mid June
- flowers: when warm
- seeds: June, August

## Edible parts
- leaves: March to May; raw
"""
"""A lesson with times that can be read, one that cannot, and one in two pieces."""


def stretch_of(window: Window | None, soft: tuple[int, int] = (0, 0)) -> Stretch:
    """Return a time of the year with its uncertain days."""
    return Stretch(Item(Window(1, 1), "when warm", NOWHERE), window, soft)


def row_of(name: str, kind: Kind, *stretches: Stretch) -> Row:
    """Return a row of a plant's year."""
    timing = Timing(name, "", (), "", NO_PROSE, (), NOWHERE, NOWHERE, NOWHERE)
    return Row(timing, kind, stretches)


def not_sure_from(row: Row, first: int, last: int) -> Row:
    """Return a row of what is eaten, some days of which are not sure."""
    return replace(row, not_sure=frozenset(range(first, last + 1)))
