"""Measures: the format's examples, floras' ways of writing them, exact lengths, wrong units."""

from __future__ import annotations

import time
from fractions import Fraction as F  # noqa: N817 - a table of lengths wants a short name
from typing import TYPE_CHECKING

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from helpers.values import (
    START,
    VALUES,
    VOCABULARY,
    faults_of,
    hold_to_the_text,
    qualifiers_of,
    text_of,
    values_of,
)
from sallet.lesson.value import Measure, Words
from sallet.lesson.values.measures import read_measures
from sallet.source import Span
from sallet.units import UNITS

if TYPE_CHECKING:
    from sallet.units import Unit

INCH = F("25.4")
FOOT = 12 * INCH


def measure(words: str) -> Measure:
    """Return the one length of a value in which nothing is wrong."""
    assert faults_of(read_measures, words) == []
    (value,) = values_of(read_measures, words)
    assert isinstance(value, Measure)
    return value


@pytest.mark.parametrize(
    ("words", "expected"),
    [("10–25 cm", Measure(F(100), F(250), "cm", step=F(10))),
     ("4–6 ft, at most 7 ft", Measure(4 * FOOT, 6 * FOOT, "ft", most=7 * FOOT, step=FOOT)),
     ("1 1/2–4 in", Measure(F(3, 2) * INCH, 4 * INCH, "in", step=INCH / 2)),
     ("about 12 mm", Measure(F(12), F(12), "mm", about=True)),
     ("12–20 mm, at most 25 mm", Measure(F(12), F(20), "mm", most=F(25)))],
)  # fmt: skip
def test_the_measures_of_the_format_page(words: str, expected: Measure) -> None:
    assert measure(words) == expected


@pytest.mark.parametrize(
    ("words", "low", "high"),
    [("5 mm", F(5), F(5)), ("2.5 cm", F(25), F(25)), ("10 cm – 2 m", F(100), F(2000)),
     ("10 to 25 cm", F(100), F(250)), ("10-25cm", F(100), F(250)), ("10 − 25 CM", F(100), F(250)),
     ("3 cm–7", F(30), F(70)), ("½ in", INCH / 2, INCH / 2), ("1½ in", 3 * INCH / 2, 3 * INCH / 2),
     ("1 1/16 in", 17 * INCH / 16, 17 * INCH / 16), ('4"', 4 * INCH, 4 * INCH),
     ("4″", 4 * INCH, 4 * INCH), ("6'", 6 * FOOT, 6 * FOOT), ("6′–7′", 6 * FOOT, 7 * FOOT),
     ("up to 7 cm", F(0), F(70)), ("at most 7 cm", F(0), F(70)), ("0 mm", F(0), F(0)),
     ("10–25 centimetres", F(100), F(250)), ("4 inches", 4 * INCH, 4 * INCH)],
)  # fmt: skip
def test_lengths_are_exact_in_millimetres(words: str, low: F, high: F) -> None:
    assert (measure(words).low, measure(words).high) == (low, high)


@pytest.mark.parametrize("word", ["about", "About", "around", "c.", "ca.", "circa", "roughly",
                                  "approx.", "approximately"])  # fmt: skip
def test_a_length_may_be_about_so_much(word: str) -> None:
    assert measure(f"{word} 12 mm") == Measure(F(12), F(12), "mm", about=True)


@pytest.mark.parametrize(
    ("words", "least", "most"),
    [("(2–)5–25(–30) mm", F(2), F(30)), ("(2-) 5-25 mm", F(2), None), ("5(–30) mm", None, F(30)),
     ("5–25 mm, up to 30 mm", None, F(30)), ("5–25 mm, rarely to 3 cm", None, F(30)),
     ("5–25 mm, at least 2 mm", F(2), None), ("5–25 mm, at least 2, at most 30", F(2), F(30)),
     ("5–25 mm; exceptionally 30 mm", None, F(30))],
)  # fmt: skip
def test_extremes_belong_to_the_length_before_them(
    words: str, least: F | None, most: F | None
) -> None:
    found = measure(words)
    assert (found.least, found.most) == (least, most)
    assert found.smallest == (found.low if least is None else least)
    assert found.largest == (found.high if most is None else most)


@pytest.mark.parametrize(
    ("words", "step"),
    [("10–25 cm", F(10)), ("10–25.5 cm", F(1)), ("1 1/2 in", INCH / 2), ("1¾ in", INCH / 4),
     ("10 cm–2 m", F(10)), ("5–25 mm, at most 27.5 mm", F(1, 10)), ("(2.5–)5 mm", F(1, 10)),
     ("2–3 m, at most 350 cm", F(10))],
)  # fmt: skip
def test_the_step_is_the_finest_the_writer_used(words: str, step: F) -> None:
    assert measure(words).step == step


def test_several_lengths_each_with_its_qualifiers() -> None:
    words = "3–5 cm (upper leaves), usually 10–12 cm (lower leaves)"
    assert [v.low for v in values_of(read_measures, words) if isinstance(v, Measure)] == [30, 100]
    assert qualifiers_of(read_measures, words) == [["upper leaves"], ["usually", "lower leaves"]]


def test_an_extreme_with_a_qualifier_is_a_length_of_its_own() -> None:
    values = values_of(read_measures, "3–5 cm, at most 9 cm (in shade)")
    assert values == [
        Measure(F(30), F(50), "cm", step=F(10)),
        Measure(F(0), F(90), "cm", step=F(10)),
    ]


def test_an_item_reaches_from_its_length_to_its_last_extreme() -> None:
    words = "12–20 mm, at most 25 mm"
    (item,) = read_measures(text_of(words), VOCABULARY)[0]
    assert (item.text, item.span) == (words, Span(START, START + len(words)))


@pytest.mark.parametrize(
    ("words", "faults"),
    [("10–25", [("missing-unit", "10–25")]),
     ("2,5 cm", [("missing-unit", "2")]),
     ("10–25 cubits", [("unknown-unit", "cubits")]),
     ("3 hands–7 cm", [("unknown-unit", "hands")]),
     ("3 cm, at most 2 hands", [("unknown-unit", "hands")]),
     ("usually 3 hands", [("unknown-unit", "hands")]),
     ("at most 2 hands", [("unknown-unit", "at most 2 hands")]),
     ("a hand", [("unreadable-measure", "a hand")]),
     ("at least 3 cm", [("unreadable-measure", "at least 3 cm")]),
     ("1/0 in", [("unreadable-measure", "1/0 in")]),
     ("3 cm x 4 cm", [("unreadable-measure", "3 cm x 4 cm")]),
     ("25–10 cm", [("range-upside-down", "25–10 cm")]),
     ("1 m–2 cm", [("range-upside-down", "1 m–2 cm")]),
     ("3–7 cm, at most 5 cm", [("range-upside-down", "at most 5 cm")]),
     ("3–7 cm, at least 5 cm", [("range-upside-down", "at least 5 cm")]),
     ("(7–)5–25 mm", [("range-upside-down", "(7–)5–25 mm")]),
     ("5–25(–20) mm", [("range-upside-down", "5–25(–20) mm")]),
     ("x, 10, 3 hands, 7–3 cm", [("unreadable-measure", "x"), ("missing-unit", "10"),
      ("unknown-unit", "hands"), ("range-upside-down", "7–3 cm")])],
)  # fmt: skip
def test_each_fault_is_named_at_its_place(words: str, faults: list[tuple[str, str]]) -> None:
    assert faults_of(read_measures, words) == faults


def test_what_cannot_be_read_is_kept_as_words() -> None:
    assert values_of(read_measures, "a hand") == [Words("a hand", understood=False)]


def test_a_range_upside_down_is_kept_the_right_way_up() -> None:
    assert values_of(read_measures, "25–10 cm") == [Measure(F(100), F(250), "cm", step=F(10))]


@pytest.mark.parametrize("filling", [" ", "(1 ", "1/", "1 ", "½", "–", "about ", "'"])
def test_a_very_long_value_takes_no_very_long_time(filling: str) -> None:
    started = time.monotonic()
    read_measures(text_of("1" + filling * 20_000 + "cm"), VOCABULARY)
    assert time.monotonic() - started < 5


NUMBERS = st.integers(0, 9999)


@settings(max_examples=150, deadline=None)
@given(NUMBERS, NUMBERS, st.sampled_from(list(UNITS.values())), st.sampled_from(["–", "-", " to "]))
def test_whole_numbers_come_back_as_they_were_written(
    a: int, b: int, unit: Unit, dash: str
) -> None:
    low, high = sorted((a, b))
    found = measure(f"{low}{dash}{high} {unit.name}")
    assert [found.low, found.high] == [low * unit.millimetres, high * unit.millimetres]
    assert (found.unit, found.step) == (unit.name, unit.millimetres)


@settings(max_examples=100, deadline=None)
@given(NUMBERS, st.integers(1, 15), st.sampled_from([2, 4, 8, 16]))
def test_fractions_of_an_inch_are_exact(whole: int, numerator: int, denominator: int) -> None:
    expected = (whole + F(numerator, denominator)) * INCH
    assert measure(f"{whole} {numerator}/{denominator} in").low == expected


@settings(max_examples=200, deadline=None)
@given(VALUES)
def test_no_value_raises_or_loses_its_words(words: str) -> None:
    hold_to_the_text(read_measures, words)


@settings(max_examples=200, deadline=None)
@given(VALUES)
def test_whatever_is_read_runs_from_the_smaller_to_the_greater(words: str) -> None:
    for value in values_of(read_measures, words):
        if isinstance(value, Measure):
            assert 0 <= value.smallest <= value.low <= value.high <= value.largest
            assert value.step > 0
