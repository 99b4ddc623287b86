"""Counts: `5`, `4–6`, `many`, `12 or more`."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from sallet.lesson.model import Absent, Count, Fault, Item, Words
from sallet.lesson.values.pieces import adverbs, qualified, split

if TYPE_CHECKING:
    from sallet.lesson.vocabulary import Vocabulary
    from sallet.source import Text

MANY: Final = 11
"""The least number that a flora calls `many` or `numerous`: more than ten (common practice)."""
_COUNT: Final = re.compile(
    r"""^(?P<about>(?:about|around|ca?\.|roughly)\s+)?(?P<low>\d{1,6}|[a-z]+)
         (?:\s*(?:–|-|—|to|or)\s*(?P<high>\d{1,6}|[a-z]+))?(?P<more>\+)?$""",
    re.VERBOSE,
)
_WORDS: Final = {
    word: number
    for number, word in enumerate(
        ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
         "eleven", "twelve"]
    )
} | {"single": 1, "many": MANY, "numerous": MANY, "more": MANY}  # fmt: skip
_COMMAS: Final = re.compile(r"\s*[,;]\s*(?:or\s+)?")


def read_counts(value: Text, vocabulary: Vocabulary) -> tuple[tuple[Item, ...], list[Fault]]:
    """Return the counts of a value; what cannot be read is kept as Words."""
    items: list[Item] = []
    faults: list[Fault] = []
    for piece in split(value, _COMMAS):
        text, often = adverbs(piece.text, vocabulary)
        read = _count(text, faults)
        qualifiers = (*often, *qualified(piece.qualifiers, vocabulary))
        items.append(Item(read, piece.text.value, piece.span, qualifiers))
    return tuple(items), faults


def _count(text: Text, faults: list[Fault]) -> Absent | Count | Words:
    words = text.value.casefold()
    if words in {"none", "0"}:
        return Absent()
    match = _COUNT.match(words)
    low = _number(match["low"]) if match else None
    high = _number(match["high"]) if match and match["high"] else low
    if match is None or low is None or high is None:
        faults.append(Fault("unreadable-count", text.span, text.value))
        return Words(text.value, understood=False)
    open_end = bool(match["more"]) or "many" in words or "numerous" in words or "more" in words
    if low > high and not open_end:
        faults.append(Fault("range-upside-down", text.span, text.value))
        low, high = high, low
    return Count(low, None if open_end else high, bool(match["about"]))


def _number(word: str) -> int | None:
    return int(word) if word.isdecimal() else _WORDS.get(word)
