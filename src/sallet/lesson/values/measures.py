"""Measures: `10–25 cm`, `4–6 ft, at most 7 ft`, `1 1/2–4 in`, `about 12 mm`."""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING, Final

from sallet.lesson.model import Fault
from sallet.lesson.value import Item, Measure, Words
from sallet.lesson.values.pieces import COMMAS, DASH, adverbs, qualified, split_numbers
from sallet.source import Span
from sallet.units import UNITS, unit_named

if TYPE_CHECKING:
    from sallet.lesson.values.pieces import Piece
    from sallet.lesson.vocabulary import Vocabulary
    from sallet.source import Text
    from sallet.units import Unit

_NUMBER: Final = r"(?:\d{1,6}(?:\s+\d{1,4}/[1-9]\d?|[.]\d{1,6}|/[1-9]\d?)?\s*[½¼¾⅓⅔⅛]?|[½¼¾⅓⅔⅛])"
_UNIT: Final = r"""(?:[a-zA-Z]+|["'”’″′])"""
_MEASURE: Final = re.compile(
    rf"""^(?P<about>(?:about|around|ca?\.|circa|roughly|approx\.|approximately)\s+)?
         (?:\(\s?(?P<least>{_NUMBER})\s?{DASH}\s?\)\s?)?   # a flora's (2–)5–25(–30) mm
         (?P<low>{_NUMBER})\s?(?P<low_unit>{_UNIT})?
         (?:\s?(?:{DASH}|to)\s?(?P<high>{_NUMBER}))?\s?(?P<unit>{_UNIT})?
         (?:\s?\(\s?{DASH}\s?(?P<most>{_NUMBER})\s?\)\s?(?P<most_unit>{_UNIT})?)?$""",
    re.VERBOSE | re.IGNORECASE,
)
_EXTREME: Final = re.compile(
    rf"""^(?P<which>at\s+most|up\s+to|to|rarely\s+to|exceptionally|at\s+least|no\s+less\s+than)
         \s+(?P<about>about\s)?(?P<number>{_NUMBER})\s?(?P<unit>{_UNIT})?$""",
    re.VERBOSE | re.IGNORECASE,
)
_GLYPHS: Final = {
    "½": Fraction(1, 2), "¼": Fraction(1, 4), "¾": Fraction(3, 4),
    "⅓": Fraction(1, 3), "⅔": Fraction(2, 3), "⅛": Fraction(1, 8),
}  # fmt: skip


def read_measures(value: Text, vocabulary: Vocabulary) -> tuple[tuple[Item, ...], list[Fault]]:
    """Return the lengths of a value in millimetres; what cannot be read is kept as Words.

    An extreme (`at most 25 mm`) belongs to the length before it.
    """
    items: list[Item] = []
    faults: list[Fault] = []
    for piece in split_numbers(value, COMMAS):
        text, often = adverbs(piece.text, vocabulary)
        extreme = _EXTREME.match(piece.text.value) or _EXTREME.match(text.value)
        last = items[-1].value if items else None
        if extreme and isinstance(last, Measure) and not piece.qualifiers:
            merged = _with_extreme(last, extreme, piece, faults)
            items[-1] = Item(merged, f"{items[-1].text}, {piece.text}",
                             Span(items[-1].span.start, piece.span.end),
                             items[-1].qualifiers)  # fmt: skip
            continue
        read = _measure(text, faults)
        qualifiers = (*often, *qualified(piece.qualifiers, vocabulary))
        items.append(Item(read, piece.text.value, piece.span, qualifiers))
    return tuple(items), faults


def _measure(text: Text, faults: list[Fault]) -> Measure | Words:
    upper_only = _upper_only(text)
    match = _MEASURE.match(upper_only or text.value)
    fault = _fault(match, text)
    if match is None or fault:
        faults.append(fault or Fault("unreadable-measure", text.span, text.value))
        return Words(text.value, understood=False)
    written = match["unit"] or match["most_unit"] or match["low_unit"]
    unit = UNITS[_name(written)]
    low_unit = UNITS[_name(match["low_unit"] or written)]
    low = _number(match["low"]) * low_unit.millimetres
    high = _number(match["high"]) * unit.millimetres if match["high"] else low
    steps = [_step(match["low"]) * low_unit.millimetres]
    steps += [_step(match[n]) * unit.millimetres for n in ("high", "least", "most") if match[n]]
    measure = Measure(
        low=Fraction(0) if upper_only else low,
        high=high,
        unit=unit.name,
        least=_length(match["least"], low_unit),
        most=_length(match["most"], unit),
        about=bool(match["about"]),
        step=min(steps),
    )
    return _upright(measure, text, faults)


def _fault(match: re.Match[str] | None, text: Text) -> Fault | None:
    if match is None:
        return None
    named = [part for part in ("low_unit", "unit", "most_unit") if match[part]]
    if not named:
        return Fault("missing-unit", text.span, text.value, tuple(UNITS))
    for part in named:
        if unit_named(match[part]) is None:
            return _unknown_unit(match, part, text)
    return None


def _unknown_unit(match: re.Match[str], part: str, text: Text) -> Fault:
    start = text.span.start
    whole = match.string == text.value and len(text.value) == text.span.end - start
    span = Span(start + match.start(part), start + match.end(part)) if whole else text.span
    return Fault("unknown-unit", span, match[part], tuple(UNITS), text.value)


def _name(words: str) -> str:
    unit = unit_named(words)
    return unit.name if unit else words


def _upright(measure: Measure, text: Text, faults: list[Fault]) -> Measure:
    """Return a length with its ends in order; a fault where they were not."""
    ends = [end for end in (measure.least, measure.low, measure.high, measure.most)
            if end is not None]  # fmt: skip
    if ends == sorted(ends):
        return measure
    faults.append(Fault("range-upside-down", text.span, text.value))
    low, high = sorted((measure.low, measure.high))
    return replace(measure, low=low, high=high, least=None, most=None)


def _upper_only(text: Text) -> str | None:
    # `up to 25 cm` with no length before it: anything from nothing to the length.
    extreme = _EXTREME.match(text.value)
    if extreme is None or _is_least(extreme):
        return None
    return f"{extreme['about'] or ''}{extreme['number']} {extreme['unit'] or ''}".strip()


def _is_least(extreme: re.Match[str]) -> bool:
    return extreme["which"].lower().split()[-1] in {"least", "than"}


def _with_extreme(
    measure: Measure, match: re.Match[str], piece: Piece, faults: list[Fault]
) -> Measure:
    unit = unit_named(match["unit"]) if match["unit"] else UNITS[measure.unit]
    if unit is None:
        faults.append(_unknown_unit(match, "unit", piece.text))
        return measure
    length = _number(match["number"]) * unit.millimetres
    least = _is_least(match)
    upside_down = length > measure.low if least else length < measure.high
    if upside_down:
        faults.append(Fault("range-upside-down", piece.text.span, piece.text.value))
        return measure
    step = min(measure.step, _step(match["number"]) * unit.millimetres)
    if least:
        return replace(measure, least=length, step=step)
    return replace(measure, most=length, step=step)


def _length(words: str | None, unit: Unit) -> Fraction | None:
    return _number(words) * unit.millimetres if words else None


def _number(words: str) -> Fraction:
    total = Fraction(0)
    for word in re.findall(r"\d+/\d+|\d+[.]\d+|\d+|[½¼¾⅓⅔⅛]", words):
        total += _GLYPHS[word] if word in _GLYPHS else Fraction(word)
    return total


def _step(words: str) -> Fraction:
    """Return the finest step of a number as written: 1 for `25`, 1/10 for `2.5`, 1/2 for `1/2`."""
    steps = [Fraction(1)]
    steps += [Fraction(1, int(n)) for n in re.findall(r"/(\d+)", words)]
    steps += [Fraction(1, 10 ** len(digits)) for digits in re.findall(r"[.](\d+)", words)]
    steps += [Fraction(1, _GLYPHS[g].denominator) for g in words if g in _GLYPHS]
    return min(steps)
