"""Shapes of blades by their length against their width.

The classes are those of Radford and others 1974, Vascular Plant Systematics, chapter 6. The
table leaves gaps (what is 2.5 times as long as wide?), and floras use the words more freely
than it does. So a tie rule is needed, and this is ours: a class reaches to the middle of the
gap beside it, and at the least a quarter past its own end.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

if TYPE_CHECKING:
    from collections.abc import Iterable

    from sallet.lesson.value import Measure
    from sallet.lesson.vocabulary import Label, State

CLASSES: Final = (
    (0.5, 2 / 3), (5 / 6, 5 / 6), (1.0, 1.0), (1.2, 1.2), (1.5, 2.0), (3.0, 6.0), (12.0, None),
)  # fmt: skip
"""The ends of Radford's classes, length divided by width, from the broadest to the narrowest."""
BEYOND: Final = 1.25
"""A quarter past its own end: 1.2, the measured ratio of many a leaf that every flora calls
ovate, still counts with the 1.5 at which the class begins."""
_RATIO: Final = re.compile(r"^(>?)(\d{1,3}(?:\.\d{1,3})?)(?:\s*–\s*(\d{1,3}(?:\.\d{1,3})?))?$")


@dataclass(frozen=True)
class Ratio:
    """Length divided by width, from and to; `high` None has no upper end."""

    low: float
    high: float | None

    def holds(self, number: float) -> bool:
        """Return whether a number lies between the ends."""
        return self.low <= number and (self.high is None or number <= self.high)


def ratio_of(state: State) -> Ratio | None:
    """Return the ratio that the vocabulary gives for a shape (`2–1.5`, `>12`), if any."""
    match = _RATIO.match(state.draw.get("ratio", ""))
    if match is None:
        return None
    first = float(match[2])
    last = float(match[3]) if match[3] else first
    return Ratio(min(first, last), None if match[1] else max(first, last))


def widened(ratio: Ratio) -> Ratio:
    """Return a class with what the tie rule adds at either end."""
    high = ratio.high
    return Ratio(
        low=min(_middle_below(ratio.low), ratio.low / BEYOND),
        high=None if high is None else max(_middle_above(high), high * BEYOND),
    )


def _middle_below(low: float) -> float:
    """Return the middle of the gap below an end; the end itself where it bounds no class."""
    if not any(_same(low, begins) for begins, _ in CLASSES):
        return low
    ends = [end for _, end in CLASSES if end is not None and end < low and not _same(end, low)]
    return (low + max(ends)) / 2 if ends else low


def _middle_above(high: float) -> float:
    if not any(_is_end(high, end) for _, end in CLASSES):
        return high
    begins = [begin for begin, _ in CLASSES if begin > high and not _same(begin, high)]
    return (high + min(begins)) / 2 if begins else high


def _same(one: float, other: float) -> bool:
    # The vocabulary writes 5/6 as 0.83.
    near = 0.005
    return abs(one - other) < near


def hull(states: Iterable[State]) -> Ratio | None:
    """Return the ratios that some shapes together allow; None where one of them tells none."""
    ratios = [ratio_of(state) for state in states]
    known = [ratio for ratio in ratios if ratio]
    if not known or len(known) < len(ratios):
        return None
    highs = [ratio.high for ratio in known if ratio.high is not None]
    return Ratio(
        low=min(ratio.low for ratio in known),
        high=max(highs) if len(highs) == len(known) else None,
    )


def ratio_measured(length: Measure, width: Measure) -> float | None:
    """Return the middle length divided by the middle width; extremes are left out."""
    wide = width.low + width.high
    return float((length.low + length.high) / wide) if wide else None


def shape_for(number: float, like: State, label: Label) -> str:
    """Return the shape of the table, widest where another is, that a measured ratio fits best."""
    place = like.draw.get("widest")
    fitting = [
        (abs(number - _middle(ratio)), state.name)
        for state in label.states
        if state.draw.get("widest") == place
        and (ratio := ratio_of(state))
        and _is_of_the_table(ratio)
        and widened(ratio).holds(number)
    ]
    # Of equals the first stays first: the vocabulary lists the plain shapes before the odd ones.
    return min(fitting, key=lambda pair: pair[0], default=(0, ""))[1]


def _is_of_the_table(ratio: Ratio) -> bool:
    """Return whether a ratio is one of Radford's classes, or two neighbours taken together."""
    for index, (begin, _) in enumerate(CLASSES):
        if _same(ratio.low, begin):
            return any(_is_end(ratio.high, end) for _, end in CLASSES[index : index + 2])
    return False


def _is_end(high: float | None, end: float | None) -> bool:
    return high is end is None or (high is not None and end is not None and _same(high, end))


def _middle(ratio: Ratio) -> float:
    return ratio.low if ratio.high is None else (ratio.low + ratio.high) / 2
