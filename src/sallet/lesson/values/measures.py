"""Measures: `10–25 cm`, `4–6 ft, at most 7 ft`, `1 1/2–4 in`, `about 12 mm`."""

from __future__ import annotations

import re
from fractions import Fraction
from typing import TYPE_CHECKING, Final

from sallet.lesson.model import Fault, Item, Measure, Words
from sallet.lesson.values.pieces import COMMAS, adverbs, qualified, split
from sallet.units import UNITS, unit_named

if TYPE_CHECKING:
    from sallet.lesson.values.pieces import Piece
    from sallet.lesson.vocabulary import Vocabulary
    from sallet.source import Text

_NUMBER: Final = r"(?:\d{1,6}(?:\s+\d{1,4}/[1-9]\d?|[.]\d{1,6}|/[1-9]\d?)?\s*[½¼¾⅓⅔⅛]?|[½¼¾⅓⅔⅛])"
_UNIT: Final = r"""(?:[a-zA-Z]+|["'”’″′])"""
_MEASURE: Final = re.compile(
    rf"""^(?P<about>(?:about|around|ca?\.|roughly|circa)\s+)?
         (?:\((?P<least>{_NUMBER})\s*[–-]\s*\))?   # a flora's (2–)5–25(–30) mm
         (?P<low>{_NUMBER})\s*(?P<low_unit>{_UNIT})?
         (?:\s*(?:–|-|—|to)\s*(?P<high>{_NUMBER}))?\s*(?P<unit>{_UNIT})?
         (?:\s*\([–-]\s*(?P<most>{_NUMBER})\s*\)\s*(?P<most_unit>{_UNIT})?)?$""",
    re.VERBOSE,
)
_EXTREME: Final = re.compile(
    rf"""^(?P<which>at\s+most|up\s+to|to|rarely\s+to|exceptionally|at\s+least|no\s+less\s+than)
         \s+(?P<number>{_NUMBER})\s*(?P<unit>{_UNIT})?$""",
    re.VERBOSE | re.IGNORECASE,
)
_GLYPHS: Final = {
    "½": Fraction(1, 2), "¼": Fraction(1, 4), "¾": Fraction(3, 4),
    "⅓": Fraction(1, 3), "⅔": Fraction(2, 3), "⅛": Fraction(1, 8),
}  # fmt: skip
_FLORA: Final = re.compile(r"\(\s*([–-]?\s*[\d.½¼¾/ ]+\s*[–-]?)\s*\)")


def read_measures(value: Text, vocabulary: Vocabulary) -> tuple[tuple[Item, ...], list[Fault]]:
    """Return the lengths of a value in millimetres; what cannot be read is kept as Words.

    An extreme (`at most 25 mm`) belongs to the length before it.
    """
    items: list[Item] = []
    faults: list[Fault] = []
    for piece in _pieces(value):
        text, often = adverbs(piece.text, vocabulary)
        extreme = _EXTREME.match(text.value)
        last = items[-1].value if items else None
        if extreme and isinstance(last, Measure) and not piece.qualifiers:
            merged = _with_extreme(last, extreme, piece, faults)
            items[-1] = Item(merged, f"{items[-1].text}, {piece.text}", items[-1].span,
                             items[-1].qualifiers)  # fmt: skip
            continue
        read = _measure(text, faults)
        qualifiers = (*often, *qualified(piece.qualifiers, vocabulary))
        items.append(Item(read, piece.text.value, piece.span, qualifiers))
    return tuple(items), faults


def _pieces(value: Text) -> tuple[Piece, ...]:
    # A flora's brackets round a number are no qualifier: hide them from the splitting.
    hidden = _FLORA.sub(lambda m: f"\2{m[1]}\3", value.value)
    if hidden == value.value:
        return split(value, COMMAS)
    pieces = split(type(value)(hidden, value.span), COMMAS)
    return tuple(
        type(piece)(
            type(value)(piece.text.value.replace("\2", "(").replace("\3", ")"), piece.text.span),
            piece.qualifiers,
        )
        for piece in pieces
    )


def _measure(text: Text, faults: list[Fault]) -> Measure | Words:
    upper_only = _upper_only(text)
    match = _MEASURE.match(upper_only or text.value)
    if match is None:
        faults.append(Fault("unreadable-measure", text.span, text.value))
        return Words(text.value, understood=False)
    words = match.groupdict()
    written = words.get("unit") or words.get("most_unit") or words.get("low_unit")
    unit = unit_named(written) if written else None
    if unit is None:
        kind = "unknown-unit" if written else "missing-unit"
        faults.append(Fault(kind, text.span, text.value, tuple(UNITS), written or ""))
        return Words(text.value, understood=False)
    low_unit = unit_named(words["low_unit"]) if words.get("low_unit") else unit
    low = _number(words["low"]) * (low_unit or unit).millimetres
    high = _number(words["high"]) * unit.millimetres if words.get("high") else low
    low = Fraction(0) if upper_only else low
    if low > high:
        faults.append(Fault("range-upside-down", text.span, text.value))
        low, high = high, low
    return Measure(
        low=low,
        high=high,
        unit=unit.name,
        least=_length(words.get("least"), unit.millimetres),
        most=_length(words.get("most"), unit.millimetres),
        about=bool(words.get("about")),
        step=_step([words["low"], words.get("high") or ""]) * unit.millimetres,
    )


def _upper_only(text: Text) -> str | None:
    # `up to 25 cm` with no length before it: anything from nothing to the length.
    extreme = _EXTREME.match(text.value)
    if extreme is None or _is_least(extreme):
        return None
    return f"{extreme['number']} {extreme['unit'] or ''}".strip()


def _is_least(extreme: re.Match[str]) -> bool:
    return extreme["which"].lower().split()[-1] in {"least", "than"}


def _with_extreme(
    measure: Measure, match: re.Match[str], piece: Piece, faults: list[Fault]
) -> Measure:
    unit = unit_named(match["unit"]) if match["unit"] else UNITS[measure.unit]
    if unit is None:
        fault = Fault("unknown-unit", piece.span, piece.text.value, tuple(UNITS), match["unit"])
        faults.append(fault)
        return measure
    length = _number(match["number"]) * unit.millimetres
    least = _is_least(match)
    upside_down = length > measure.low if least else length < measure.high
    if upside_down:
        faults.append(Fault("range-upside-down", piece.span, piece.text.value))
        return measure
    return Measure(
        measure.low, measure.high, measure.unit,
        least=length if least else measure.least,
        most=measure.most if least else length,
        about=measure.about, step=measure.step,
    )  # fmt: skip


def _length(words: str | None, millimetres: Fraction) -> Fraction | None:
    return _number(words) * millimetres if words else None


def _number(words: str) -> Fraction:
    total = Fraction(0)
    for word in re.findall(r"\d+/\d+|\d+[.]\d+|\d+|[½¼¾⅓⅔⅛]", words):
        total += _GLYPHS[word] if word in _GLYPHS else Fraction(word)
    return total


def _step(numbers: list[str]) -> Fraction:
    """Return the finest step of numbers as written: 1 for `25`, 1/10 for `2.5`, 1/2 for `1 1/2`."""
    steps = [Fraction(1)]
    for words in numbers:
        steps += [Fraction(1, int(n)) for n in re.findall(r"/(\d+)", words) if int(n)]
        steps += [Fraction(1, 10 ** len(digits)) for digits in re.findall(r"[.](\d+)", words)]
        steps += [Fraction(1, _GLYPHS[g].denominator) for g in words if g in _GLYPHS]
    return min(steps)
