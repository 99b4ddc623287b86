"""Hardiness zones: `4–8`, `7a to 9b`. Zones of the 2012 map run from 1a to 13b."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from sallet.lesson.model import Fault
from sallet.lesson.value import Item, Words, Zones
from sallet.lesson.values.pieces import COMMAS, DASH, qualified, split

if TYPE_CHECKING:
    from sallet.lesson.vocabulary import Vocabulary
    from sallet.source import Text

_ZONE: Final = r"(?:1[0-3]|[1-9])[ab]?"
_ZONES: Final = re.compile(
    rf"^(?:USDA\s+)?(?:zones?\s+)?(?P<low>{_ZONE})(?:\s*(?:{DASH}|to)\s*(?P<high>{_ZONE}))?$",
    re.IGNORECASE,
)


def read_zones(value: Text, vocabulary: Vocabulary) -> tuple[tuple[Item, ...], list[Fault]]:
    """Return the zones of a value; what cannot be read is kept as Words."""
    items: list[Item] = []
    faults: list[Fault] = []
    for piece in split(value, COMMAS):
        match = _ZONES.match(piece.text.value)
        read: Zones | Words = Words(piece.text.value, understood=False)
        if match is None:
            faults.append(Fault("unreadable-zones", piece.text.span, piece.text.value))
        else:
            low, high = match["low"].lower(), (match["high"] or match["low"]).lower()
            if rank(low, -1) > rank(high, 1):
                faults.append(Fault("range-upside-down", piece.text.span, piece.text.value))
                low, high = high, low
            read = Zones(low, high)
        qualifiers = qualified(piece.qualifiers, vocabulary)
        items.append(Item(read, piece.text.value, piece.span, qualifiers))
    return tuple(items), faults


def rank(zone: str, side: int) -> int:
    """Return the half zone's place, 0 for 1a; a whole zone is its lower (-1) or upper half (1)."""
    number = int(zone.rstrip("ab"))
    half = 1 if zone.endswith("b") or (zone[-1].isdigit() and side > 0) else 0
    return 2 * (number - 1) + half
