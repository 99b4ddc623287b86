"""Paragraphs and bullets of a run of text."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from sallet.lesson.passages import passages
from sallet.source import Source, Span


def cut(text: str) -> list[tuple[str, str]]:
    """Return each passage with the outermost bullet or paragraph that it stands in."""
    source = Source("lesson.md", text)
    found = passages(source, Span(0, len(text)))
    return [(p.text.value, source.words(p.whole)) for p in found]


def test_paragraphs_part_at_empty_lines_and_headings() -> None:
    assert [text for text, _ in cut("one\nstill one\n\n### Two\nthree\n")] == [
        "one\nstill one",
        "three",
    ]


def test_each_bullet_is_a_passage_with_its_further_lines() -> None:
    assert [text for text, _ in cut("- one\n  still one\n- two\n1. three\n")] == [
        "- one\n  still one",
        "- two",
        "1. three",
    ]


def test_a_nested_bullet_stands_in_its_outermost_one() -> None:
    text = "- one\n  - inner\n\n  more of one\n- two"
    whole = "- one\n  - inner\n\n  more of one"
    assert cut(text) == [
        ("- one", whole),
        ("  - inner", whole),
        ("  more of one", whole),
        ("- two", "- two"),
    ]


def test_places_are_those_of_the_source() -> None:
    source = Source("lesson.md", "before\n\n- one\n- two\n")
    found = list(passages(source, Span(8, 19)))
    assert [source.words(p.text.span) for p in found] == ["- one", "- two"]


def test_a_run_that_begins_behind_an_indent_takes_its_first_line_whole() -> None:
    source = Source("lesson.md", "  - one\n")
    assert [p.text.value for p in passages(source, Span(2, 7))] == ["  - one"]


@given(st.text(alphabet="a -*1.#\n\t", max_size=60))
def test_no_word_is_lost_and_none_is_told_twice(text: str) -> None:
    words = [line.strip() for line in text.split("\n")]
    kept = [line.strip() for passage, _ in cut(text) for line in passage.split("\n")]
    headings = [word for word in words if word.startswith("#")]
    assert [w for w in words if w and w not in headings] == [w for w in kept if w not in headings]
