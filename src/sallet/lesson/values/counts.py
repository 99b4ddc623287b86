"""Counts: `5`, `4–6`, `many`, `12 or more`."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from sallet.lesson.model import Fault
from sallet.lesson.value import Absent, Count, Item, Words
from sallet.lesson.values.pieces import COMMAS_OR, DASH, adverbs, qualified, split_numbers

if TYPE_CHECKING:
    from sallet.lesson.vocabulary import Vocabulary
    from sallet.source import Text

MANY: Final = 11
"""The least number that a flora calls `many` or `numerous`: more than ten (common practice)."""
_OPEN: Final = {"many": MANY, "numerous": MANY}
_WORDS: Final = {
    word: number
    for number, word in enumerate(
        ["none", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
         "eleven", "twelve"]
    )
} | {"no": 0, "zero": 0, "single": 1} | _OPEN  # fmt: skip
_COUNT: Final = re.compile(
    rf"""^(?P<about>(?:about|around|ca?\.|roughly)\s+)?
         (?:\((?P<least>\d{{1,6}}){DASH}\)\s?)?                # a flora's (2–)5–7(–9)
         (?P<low>\d{{1,6}}|[a-z]+)
         (?:\s*(?:{DASH}|to|or)\s*(?P<high>\d{{1,6}}|[a-z]+))?
         (?P<more>\s*\+)?
         (?:\s?\({DASH}(?P<most>\d{{1,6}})\))?$""",
    re.VERBOSE,
)


def read_counts(value: Text, vocabulary: Vocabulary) -> tuple[tuple[Item, ...], list[Fault]]:
    """Return the counts of a value; what cannot be read is kept as Words."""
    items: list[Item] = []
    faults: list[Fault] = []
    for piece in split_numbers(value, COMMAS_OR):
        text, often = adverbs(piece.text, vocabulary)
        read = _count(text, faults)
        qualifiers = (*often, *qualified(piece.qualifiers, vocabulary))
        items.append(Item(read, piece.text.value, piece.span, qualifiers))
    return tuple(items), faults


def _count(text: Text, faults: list[Fault]) -> Absent | Count | Words:
    words = text.value.casefold()
    if words in {"none", "no", "zero", "0"}:
        return Absent()
    match = _COUNT.match(words)
    ends = _ends(match) if match else None
    if match is None or ends is None:
        faults.append(Fault("unreadable-count", text.span, text.value))
        return Words(text.value, understood=False)
    low, high = ends
    low, high = _with_extremes(match, low, high)
    if high is not None and low > high:
        faults.append(Fault("range-upside-down", text.span, text.value))
        low, high = high, None if match["low"] in _OPEN else low
    return Count(low, high, bool(match["about"]))


def _ends(match: re.Match[str]) -> tuple[int, int | None] | None:
    """Return the least and the greatest number, None for no upper end; None where unreadable."""
    low = _number(match["low"])
    last = match["high"] or match["low"]
    high = low if last == "more" else _number(last)
    if low is None or high is None:
        return None
    is_open = bool(match["more"]) or last in {"more", *_OPEN}
    return low, None if is_open else high


def _with_extremes(match: re.Match[str], low: int, high: int | None) -> tuple[int, int | None]:
    # What is rare is possible: a plant with 3 petals is not ruled out by `(3–)5–7`.
    numbers = [int(match[part]) for part in ("least", "most") if match[part]]
    return min([low, *numbers]), None if high is None else max([high, *numbers])


def _number(word: str) -> int | None:
    return int(word) if word.isdecimal() else _WORDS.get(word)
