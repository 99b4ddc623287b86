"""A fact's values as words on a page."""

from __future__ import annotations

import pytest
from markupsafe import Markup

from helpers.workshop import lesson_of
from sallet.lesson.value import Term
from sallet.publish.values import Writer, explained, term_button

METRIC = Writer("metric")


def value(bullet: str, organ: str = "Leaves", writer: Writer = METRIC) -> str:
    """Return the values of one fact."""
    (fact,) = lesson_of(f"## Identification\n### {organ}\n- {bullet}\n").facts
    return writer.value(fact).replace("\u00a0", " ")


def button(words: str, place: str) -> str:
    """Return a word that shows its meaning when it is pressed."""
    return f'<button type="button" class="term" popovertarget="word-{place}">{words}</button>'


def length(own: str, other: str) -> str:
    """Return a length in both systems."""
    return f'{own} <span class="other-units">({other})</span>'


COMMA = "\u2060, "
"""With a joiner, so that no line breaks before it."""
ENTIRE = button("entire", "leaves-margin-entire")
SERRATE = button("serrate", "leaves-margin-serrate")


@pytest.mark.parametrize(
    ("bullet", "html"),
    [("margin: entire", ENTIRE),
     ("margin: entire to serrate", f"{ENTIRE} to {SERRATE}"),
     ("margin: entire, serrate", f"{ENTIRE}{COMMA}{SERRATE}"),
     ("margin: entire or serrate", f"{ENTIRE}{COMMA}{SERRATE}"),
     ("margin: smooth-edged", button("smooth-edged", "leaves-margin-entire")),
     ("margin: entire (lower leaves), serrate (upper leaves, on shoots)",
      f"{ENTIRE} (lower leaves){COMMA}{SERRATE} (upper leaves, on shoots)"),
     ("margin: usually entire", f"usually {ENTIRE}"),
     ("margin: entire (rarely)", f"rarely {ENTIRE}"),
     ("margin: none", "none"),
     ("margin: <b>", "&lt;b&gt;"),
     ("sparkle: a <i>lot</i>", "a &lt;i&gt;lot&lt;/i&gt;")],
)  # fmt: skip
def test_states_explain_themselves_and_other_words_stand_as_written(bullet: str, html: str) -> None:
    assert value(bullet) == html


@pytest.mark.parametrize(
    ("bullet", "html"),
    [("length: 10–25 cm", length("10–25 cm", "4–10 in")),
     ("length: 10 cm (young), 25 cm (old)",
      f"{length('10 cm', '4 in')} (young){COMMA}{length('25 cm', '10 in')} (old)"),
     ("length: usually 10 cm", f"usually {length('10 cm', '4 in')}"),
     ("length: long", "long")],
)  # fmt: skip
def test_lengths_stand_in_both_systems(bullet: str, html: str) -> None:
    assert value(bullet) == html


def test_the_courses_own_units_stand_first() -> None:
    html = value("length: 10 cm", writer=Writer("imperial"))
    assert html == length("4 in", "10 cm")


def zones(bullet: str, writer: Writer = METRIC) -> str:
    """Return the hardiness zones of a lesson."""
    (fact,) = lesson_of(f"## Range\n- hardiness zones: {bullet}\n").facts
    return writer.value(fact).replace("\u00a0", " ")


COLD = "coldest night of a usual year"
EIGHT = length(f"zone 8: {COLD} −12.2 to −6.7 °C", "10 to 20 °F")


@pytest.mark.parametrize(
    ("written", "html"),
    [("4–8", length(f"zones 4–8: {COLD} −34.4 to −6.7 °C", "−30 to 20 °F")),
     ("USDA 8", EIGHT),
     ("8 (usually, in shade)", f"usually {EIGHT} (in shade)"),
     ("8, 13b", f"{EIGHT}{COMMA}{length(f'zone 13b: {COLD} 18.3 to 21.1 °C', '65 to 70 °F')}"),
     ("8–14", "8–14"), ("<b>mild</b>", "&lt;b&gt;mild&lt;/b&gt;"), ("none", "none")],
)  # fmt: skip
def test_hardiness_zones_say_how_cold_they_are_in_both_scales(written: str, html: str) -> None:
    assert zones(written) == html


def test_the_cold_of_a_zone_stands_first_in_the_courses_own_units() -> None:
    html = zones("8", Writer("imperial"))
    assert html == length(f"zone 8: {COLD} 10 to 20 °F", "−12.2 to −6.7 °C")


@pytest.mark.parametrize(
    ("bullet", "words"),
    [("petals: 5", "5"), ("petals: 4–6", "4–6"), ("petals: many", "many"),
     ("petals: usually 5", "usually 5"), ("petals: 5 (rarely)", "rarely 5"),
     ("petals: 5, rarely 6", f"5{COMMA}rarely 6"), ("petals: rarely a few", "rarely a few")],
)  # fmt: skip
def test_a_count_stands_as_written(bullet: str, words: str) -> None:
    assert value(bullet, "Flowers") == words


def test_a_qualifier_is_escaped() -> None:
    assert value("margin: entire (in <b>)") == f"{ENTIRE} (in &lt;b&gt;)"


def test_a_term_shows_its_meaning_under_the_name_of_the_vocabulary() -> None:
    term = Term("entire", "<smooth>")
    assert term_button(term, "leaves", "margin") == button("&lt;smooth&gt;", "leaves-margin-entire")
    assert isinstance(explained("margin", "leaves", "margin"), Markup)


def test_where_nothing_is_explained_terms_are_words_and_lengths_keep_both_systems() -> None:
    lesson = lesson_of(
        "## Identification\n### Leaves\n- shape: ovate to elliptic\n- length: 10–20 cm\n"
    )
    bare = Writer("metric", explains=False)
    shape, length = (bare.value(fact) for fact in lesson.facts)
    assert shape == "ovate to elliptic"
    assert length == Writer("metric").value(lesson.facts[1])
