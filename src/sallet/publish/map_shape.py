"""The measures of the season map that its parts have in common."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final


@dataclass(frozen=True)
class Layout:
    """How the map is set, on a screen or on a sheet of paper."""

    kind: str
    """The class of the drawing."""
    names: int
    """Percent of the width that the plants' names take; the year has the rest."""
    letters: tuple[tuple[str, int], ...]
    """Letters that have room in a line of the names, by the class of the screens that show it."""
    line: float
    """Height of a line of the names, in lanes."""
    desc: str


SCREEN: Final = Layout(
    kind="screen",
    names=30,
    letters=(("narrow", 12), ("wide", 30)),
    line=0.72,
    desc="The same stands in words in the table below.",
)
SHEET: Final = Layout(
    kind="sheet",
    names=22,
    letters=(("sheet", 36),),
    line=2.9,
    desc="The page Season has the same in words.",
)
