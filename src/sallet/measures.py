"""A length in both systems, rounded no finer than its writer did.

The other system's step is the finest of its usual steps that is not finer than the
writer's; only where that would make nothing of a length, one length of two, or a length that
is more than a fifth off, a finer one is taken.
"""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise
from typing import TYPE_CHECKING, Final

from sallet.units import UNITS, System, Unit

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from sallet.lesson.value import Measure

# Steps in which people read a ruler or pace a height, in the unit itself.
_STEPS: Final[dict[str, tuple[Fraction, ...]]] = {
    "in": tuple(map(Fraction, ("1/16", "1/8", "1/4", "1/2", "1", "2", "4", "10"))),
    "ft": tuple(map(Fraction, ("1/2", "1", "3", "10", "30", "100"))),
    "mm": tuple(map(Fraction, ("1/10", "1/2", "1", "5", "10"))),
    "cm": tuple(map(Fraction, ("1/10", "1/2", "1", "5", "10", "50"))),
    "m": tuple(map(Fraction, ("1/20", "1/10", "1/2", "1", "5", "10", "50"))),
}
_SLACK: Final = Fraction(9, 10)
"""A yard is taken for as coarse as a metre."""
_COARSER: Final = (10, 5)
_OFF: Final = Fraction(1, 5)
"""How far off, of the length itself: an inch is not `5 cm`, though that is coarser than an inch."""


def both_systems(measure: Measure, first: System) -> tuple[str, str]:
    """Return a length as written in its own system and in the other, `first` first."""
    own = written(measure, UNITS[measure.unit], measure.step)
    other_unit = _other_unit(measure)
    other = written(measure, other_unit, _step(measure, other_unit))
    return (own, other) if UNITS[measure.unit].system == first else (other, own)


def written(measure: Measure, unit: Unit, step: Fraction) -> str:
    """Return a length in a unit, rounded to a step in millimetres: `10–25 cm, at most 30 cm`."""
    low, high = (_number(end, unit, step) for end in (measure.low, measure.high))
    words = f"{low}–{high}" if low != high else low
    about = "about " if measure.about else ""
    text = f"{about}{words}\u00a0{unit.name}"
    if _rounded(measure.low, step) == 0 < _rounded(measure.high, step):
        text = f"up to {about}{high}\u00a0{unit.name}"
    if measure.least is not None:
        text += f", at least {_number(measure.least, unit, step)}\u00a0{unit.name}"
    if measure.most is not None:
        text += f", at most {_number(measure.most, unit, step)}\u00a0{unit.name}"
    return text


def _other_unit(measure: Measure) -> Unit:
    """Return the unit of the other system in which people give such a length."""
    two_centimetres, a_quarter, two_feet, a_metre, a_metre_and_a_half = 20, 250, 609, 1000, 1500
    if UNITS[measure.unit].system == "metric":
        return UNITS["ft" if measure.unit == "m" and measure.high >= a_metre else "in"]
    if measure.high <= two_centimetres:
        return UNITS["mm"]
    if 0 < measure.smallest < a_quarter:
        return UNITS["cm"]  # metres would make too little of it
    small = two_feet if measure.unit == "ft" else a_metre_and_a_half
    return UNITS["cm" if measure.high <= small else "m"]


def _step(measure: Measure, unit: Unit) -> Fraction:
    steps = [s * unit.millimetres for s in _STEPS[unit.name]]
    wanted = _meant_step(measure) * _SLACK
    fitting = next((i for i, step in enumerate(steps) if step >= wanted), len(steps) - 1)
    for index in range(fitting, -1, -1):
        if _tells_apart(measure, steps[index]) and _is_near(measure, steps[index]):
            return steps[index]
    return steps[0]


def _meant_step(measure: Measure) -> Fraction:
    """Return the step the writer had in mind: `20–50 cm` is a matter of tens."""
    lengths = _lengths(measure)
    for coarser in _COARSER:
        if all((length / (measure.step * coarser)).denominator == 1 for length in lengths):
            return measure.step * coarser
    return measure.step


def _tells_apart(measure: Measure, step: Fraction) -> bool:
    rounded = [_rounded(length, step) for length in _lengths(measure)]
    shortest = rounded[1] if measure.smallest == 0 and len(rounded) > 1 else rounded[0]
    return shortest > 0 and all(a < b for a, b in pairwise(rounded))


def _is_near(measure: Measure, step: Fraction) -> bool:
    lengths = _lengths(measure)
    return all(abs(_rounded(length, step) - length) <= length * _OFF for length in lengths)


def _lengths(measure: Measure) -> Sequence[Fraction]:
    return sorted(set(_given(measure)))


def _given(measure: Measure) -> Iterator[Fraction]:
    yield from (measure.low, measure.high)
    yield from (end for end in (measure.least, measure.most) if end is not None)


def _rounded(length: Fraction, step: Fraction) -> Fraction:
    """Return a length at the nearest step; halves go up, as people round."""
    return step * ((length / step + Fraction(1, 2)).__floor__())


def _number(length: Fraction, unit: Unit, step: Fraction) -> str:
    value = _rounded(length, step) / unit.millimetres
    if value == 0 and length > 0:
        return f"under {_plain(step / unit.millimetres, unit)}"
    return _plain(value, unit)


def _plain(value: Fraction, unit: Unit) -> str:
    if value.denominator == 1:
        return str(value.numerator)
    if unit.system == "metric":
        return f"{float(value):.6f}".rstrip("0") if _is_decimal(value) else f"{float(value):.2f}"
    whole, rest = divmod(value, 1)
    return f"{whole}\u00a0{rest}" if whole else str(rest)


def _is_decimal(value: Fraction) -> bool:
    """Return whether a number, a third perhaps, can be written with as many digits as are read."""
    return (value * 10**6).denominator == 1
