"""Lengths in both systems.

Sources: the inch is 25.4 mm and the foot 0.3048 m exactly by the international yard and pound
agreement of 1 July 1959; the fractions of an inch are the marks of a common ruler.
"""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from sallet.lesson.value import Measure
from sallet.lesson.values.measures import read_measures
from sallet.lesson.vocabulary_file import load_vocabulary
from sallet.measures import both_systems, written
from sallet.source import Span, Text
from sallet.units import UNITS

VOCABULARY = load_vocabulary()


def measure(words: str) -> Measure:
    """Return the length that a lesson would hold for some words."""
    items, faults = read_measures(Text(words, Span(0, len(words))), VOCABULARY)
    assert faults == []
    (item,) = items
    assert isinstance(item.value, Measure)
    return item.value


def plain(words: str) -> str:
    """Return words with plain spaces in place of those that do not break."""
    return words.replace("\u00a0", " ")


@pytest.mark.parametrize(
    ("words", "own", "other"),
    [("10–25 cm", "10–25 cm", "4–10 in"),
     ("20–50 cm", "20–50 cm", "8–20 in"),
     ("3–7 cm", "3–7 cm", "1–3 in"),
     ("30 cm", "30 cm", "12 in"),
     ("12 mm", "12 mm", "1/2 in"),
     ("about 12 mm", "about 12 mm", "about 1/2 in"),
     ("12–20 mm, at most 25 mm", "12–20 mm, at most 25 mm", "1/2–13/16 in, at most 1 in"),
     ("(2–)5–25(–30) mm", "5–25 mm, at least 2 mm, at most 30 mm",
      "3/16–1 in, at least 1/16 in, at most 1 3/16 in"),
     ("up to 25 cm", "up to 25 cm", "up to 10 in"),
     ("1–2 m", "1–2 m", "3–6 ft"),
     ("1.5 m", "1.5 m", "5 ft"),
     ("0.125 mm", "0.125 mm", "under 1/16 in"),
     ("0.3–0.8 mm", "0.3–0.8 mm", "up to 1/16 in"),
     ("⅓ cm", "0.33 cm", "1/8 in"),
     ("0.2 m", "0.2 m", "8 in")],
)  # fmt: skip
def test_a_metric_length_in_inches_and_feet(words: str, own: str, other: str) -> None:
    assert tuple(map(plain, both_systems(measure(words), "metric"))) == (own, other)


@pytest.mark.parametrize(
    ("words", "own", "other"),
    [("4–6 ft, at most 7 ft", "4–6 ft, at most 7 ft", "1.2–1.8 m, at most 2.1 m"),
     ("1 1/2–4 in", "1 1/2–4 in", "4–10 cm"),
     ("1/4 in", "1/4 in", "6 mm"),
     ('2½"', "2 1/2 in", "6 cm"),
     ("12 in", "12 in", "30 cm"),
     ("6'", "6 ft", "2 m"),
     ("100 ft", "100 ft", "30 m")],
)  # fmt: skip
def test_an_imperial_length_in_millimetres_centimetres_and_metres(
    words: str, own: str, other: str
) -> None:
    assert tuple(map(plain, both_systems(measure(words), "imperial"))) == (own, other)


@pytest.mark.parametrize(
    ("words", "other"),
    [("1 in", "3 cm"), ("1/4 in", "6 mm"), ("1 ft", "30 cm"), ("5 ft", "1.5 m"),
     ("15 in", "40 cm"), ("1 cm", "3/8 in"), ("5–20 m", "15–66 ft")],
)  # fmt: skip
def test_a_length_is_never_rounded_to_half_or_twice_itself(words: str, other: str) -> None:
    """A whole inch is no matter of whole fives of centimetres, though those are coarser."""
    read = measure(words)
    assert plain(both_systems(read, UNITS[read.unit].system)[1]) == other


def test_the_courses_own_system_stands_first() -> None:
    assert both_systems(measure("10 cm"), "metric") == ("10\u00a0cm", "4\u00a0in")
    assert both_systems(measure("10 cm"), "imperial") == ("4\u00a0in", "10\u00a0cm")
    assert both_systems(measure("4 in"), "metric") == ("10\u00a0cm", "4\u00a0in")
    assert both_systems(measure("4 in"), "imperial") == ("4\u00a0in", "10\u00a0cm")


@pytest.mark.parametrize(
    ("words", "unit", "exact"),
    [("1 in", "mm", "25.4 mm"), ("1 ft", "m", "0.3048 m"), ("1 ft", "in", "12 in"),
     ("1 m", "mm", "1000 mm"), ("10 in", "cm", "25.4 cm"), ("10 ft", "cm", "304.8 cm")],
)  # fmt: skip
def test_inch_and_foot_are_exact(words: str, unit: str, exact: str) -> None:
    """Source: the international yard and pound agreement, in force since 1 July 1959."""
    assert plain(written(measure(words), UNITS[unit], Fraction(1, 10))) == exact


@pytest.mark.parametrize(
    ("at", "step", "words"),
    [("2.75 in", "1/2", "3 in"), ("2.5 in", "1", "3 in"), ("2.4 in", "1", "2 in"),
     ("1 1/16 in", "1/8", "1 1/8 in"), ("3 in", "6", "6 in")],
)  # fmt: skip
def test_halves_are_rounded_up(at: str, step: str, words: str) -> None:
    inches = Fraction(step) * UNITS["in"].millimetres
    assert plain(written(measure(at), UNITS["in"], inches)) == words


# ---- for every length ---------------------------------------------------------------------

FINENESS = {
    "mm": ("1/10", "1"), "cm": ("1/10", "1"), "m": ("1/100", "1/10", "1"),
    "in": ("1/16", "1/8", "1/4", "1/2", "1"), "ft": ("1/2", "1"),
}  # fmt: skip
USUAL = {
    "in": ("1/16", "1/8", "1/4", "1/2", "1", "2", "4", "10"),
    "ft": ("1/2", "1", "3", "10", "30", "100"),
    "mm": ("1/10", "1/2", "1", "5", "10"),
    "cm": ("1/10", "1/2", "1", "5", "10", "50"),
    "m": ("1/20", "1/10", "1/2", "1", "5", "10", "50"),
}
"""The steps in which people read a ruler or pace a height."""


@st.composite
def measures(draw: st.DrawFn) -> Measure:
    """Return a length as writers give it: two centimetres at the least, in metres one metre."""
    unit = UNITS[draw(st.sampled_from(sorted(FINENESS)))]
    step = Fraction(draw(st.sampled_from(FINENESS[unit.name]))) * unit.millimetres
    least = -(-(1000 if unit.name == "m" else 20) // step)
    numbers = sorted(draw(st.lists(st.integers(least, least + 400), min_size=4, max_size=4)))
    extremes = draw(st.tuples(st.booleans(), st.booleans()))
    lengths = [number * step for number in numbers]
    return Measure(
        low=lengths[1],
        high=lengths[2],
        unit=unit.name,
        least=lengths[0] if extremes[0] else None,
        most=lengths[3] if extremes[1] else None,
        about=draw(st.booleans()),
        step=step,
    )


def lengths_of(read: Measure) -> list[Fraction]:
    """Return all lengths of a measure, from small to large."""
    given = [read.least, read.low, read.high, read.most]
    return [length for length in given if length is not None]


def nearest(length: Fraction, step: Fraction) -> Fraction:
    """Return a length at the nearest step, halves up."""
    return step * ((length + step / 2) // step)


def spoils(read: Measure, step: Fraction) -> bool:
    """Return whether a step makes nothing of a length, one length of two, or is a fifth off."""
    true = sorted(set(lengths_of(read)))
    shown = [nearest(length, step) for length in true]
    far = any(abs(a - b) * 5 > a for a, b in zip(true, shown, strict=True))
    return far or shown[0] == 0 or any(a == b for a, b in pairwise(shown))


def other_of(read: Measure) -> Measure:
    """Return the length as the other system's words say it."""
    return measure(both_systems(read, UNITS[read.unit].system)[1])


@given(measures())
def test_the_writers_own_system_says_what_was_written(read: Measure) -> None:
    own = measure(both_systems(read, UNITS[read.unit].system)[0])
    assert (lengths_of(own), own.about, own.unit) == (lengths_of(read), read.about, read.unit)


@given(measures())
def test_the_other_system_is_no_finer_than_the_writer(read: Measure) -> None:
    """But where the finest step that is not finer would spoil the length, a finer one is taken."""
    other = other_of(read)
    steps = [Fraction(step) * UNITS[other.unit].millimetres for step in USUAL[other.unit]]
    shown = [s for s in steps if all(length % s == 0 for length in lengths_of(other))][-1]
    allowed = next((s for s in steps if s >= read.step * Fraction(9, 10)), steps[-1])
    assert shown >= allowed or spoils(read, allowed)


@given(measures())
def test_the_other_system_is_right_to_a_fifth(read: Measure) -> None:
    other = other_of(read)
    pairs = zip(lengths_of(read), lengths_of(other), strict=True)
    assert [(a, b) for a, b in pairs if abs(a - b) * 5 > a] == []
    assert UNITS[other.unit].system != UNITS[read.unit].system
    assert other.about == read.about
