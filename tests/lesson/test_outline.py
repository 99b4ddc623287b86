"""The parts of a lesson, each block at its place, whatever the kind of block."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from sallet.lesson.outline import Outline
from sallet.source import Source, decode

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.blocks import Bullet, Part
    from sallet.source import Span


def outline(text: str, start: int = 0) -> Outline:
    """Return the outline of a text whose body begins at an offset."""
    return Outline(Source("a.md", text), start)


def parts(text: str) -> tuple[Part, ...]:
    """Return the parts of a text."""
    return outline(text).parts()


def tree(found: tuple[Part, ...]) -> list[object]:
    """Return headings with the headings inside them."""
    return [[p.heading.value, *tree(p.inner)] if p.inner else p.heading.value for p in found]


# ---- headings -----------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("text", "expected"),
    [("## A\n### B\n#### C\n### D\n## E\n", [["A", ["B", "C"], "D"], "E"]),
     ("## A\n#### C\n### B\n", [["A", "C", "B"]]),
     ("### B\n## A\n", ["B", "A"]),
     ("A\n---\n### B\n", [["A", "B"]]),
     ("## A ##\n##\n", ["A", ""]),
     ("# Cautions\n### B\n# Season\n## C\n", [["Cautions", "B"], "Season", "C"]),
     ("## A\n- x: y\n  ## not\n", ["A"]),
     ("text only", [])],
)  # fmt: skip
def test_headings_hold_those_of_lower_rank(text: str, expected: list[object]) -> None:
    assert tree(parts(text)) == expected


def test_a_title_above_the_sections_swallows_none_of_them() -> None:
    text = "Before.\n\n# Ramsons\n\nA bulb.\n\n## Identification\n### Leaves\n"
    assert tree(parts(text)) == [["Identification", "Leaves"]]
    assert outline(text).intro().text == "Before.\n\nA bulb."


def test_the_introduction_ends_at_the_first_section() -> None:
    assert outline("One.\n\nTwo.\n\n## A\nThree.\n").intro().text == "One.\n\nTwo."
    assert not outline("## A\n").intro()


def test_headings_know_their_places() -> None:
    text = "x\n\n##   Edible parts  ##\n\nSeason\n------\n"
    for part in parts(text):
        assert text[part.heading.span.start : part.heading.span.end] == part.heading.value


def test_a_part_reaches_to_the_end_of_what_is_below_it() -> None:
    text = "## A\n\n- x: y\n\n### B\n\nEnd.\n\n## C\n"
    part = parts(text)[0]
    assert text[part.span.start : part.span.end] == "A\n\n- x: y\n\n### B\n\nEnd."


def test_front_matter_moves_no_offset() -> None:
    text = "---\nname: x\n---\n## A\n- x: y\n"
    (part,) = outline(text, text.index("## A")).parts()
    label = part.bullets[0].label
    assert label is not None
    assert text[label.span.start :] == "x: y\n"


# ---- bullets ------------------------------------------------------------------------------


def only(text: str) -> Bullet:
    """Return the only bullet below the only heading."""
    ((bullet,),) = [part.bullets for part in parts(text)]
    return bullet


def test_a_bullet_is_taken_apart_at_its_colon() -> None:
    text = "## A\n\n* **margin**: entire[^a], toothed[^b]\n"
    bullet = only(text)
    assert bullet.label is not None
    assert (bullet.label.value, bullet.bold) == ("margin", True)
    assert bullet.value.value == "entire    , toothed"
    assert bullet.line.value == "**margin**: entire[^a], toothed[^b]"
    assert [c.key for c in bullet.citations] == ["a", "b"]
    assert text[bullet.value.span.start : bullet.value.span.end] == "entire[^a], toothed[^b]"


def test_what_follows_inside_a_bullet_is_its_note() -> None:
    text = "## A\n- x: y\n  one\n  two\n\n  three\n\n  1. four\n"
    note = only(text).note
    assert note.text == "one\ntwo\n\nthree\n\n1. four"
    assert text[note.span.start : note.span.end].split() == note.text.split()


def test_bullets_and_quotations_inside_a_bullet() -> None:
    text = "## A\n- x: y\n  - on the card: z\n    - deep: w\n  > one\n  > two\n  >\n  > - three\n"
    bullet = only(text)
    ((card,), quote) = (bullet.inner, bullet.quote)
    assert card.is_labelled({"on the card"})
    assert card.inner[0].value.value == "w"
    assert quote.text == "one\ntwo\n\n- three"
    assert card.written == "- on the card: z\n  - deep: w"
    assert text[card.span.start : card.span.end] == "- on the card: z\n    - deep: w"


@pytest.mark.parametrize(
    "text",
    ["## A\n-\tx: y\n\tnote\n", "## A\n+   x: y\n    note\n", "## A\n - x: y\n   note\n",
     "## A\n- x: y\nnote\n", "## A\r\n- x: y\r\n  note\r\n"],
    ids=["tabs", "wide indent", "indented", "lazy", "CRLF"],
)  # fmt: skip
def test_however_it_is_indented_the_words_are_found_at_their_places(text: str) -> None:
    text = decode(text.encode())
    bullet = only(text)
    assert bullet.label is not None
    assert (bullet.label.value, bullet.value.value, bullet.note.text) == ("x", "y", "note")
    assert text[bullet.label.span.start] == "x"
    assert text[bullet.value.span.start] == "y"
    assert text[bullet.note.span.start : bullet.note.span.end] == "note"


@pytest.mark.parametrize("text", ["## A\n-\n", "## A\n-\n  \n", "## A\n- \n\n"])
def test_an_empty_bullet_is_a_bullet(text: str) -> None:
    bullet = only(text)
    assert (bullet.label, bullet.value.value, bool(bullet.note)) == (None, "", False)
    assert bullet.span.start == text.index("-")


def test_a_bullet_that_begins_with_no_paragraph_keeps_what_it_holds() -> None:
    bullet = only("## A\n- ```\n  code\n  ```\n")
    assert (bullet.label, bullet.line.value) == (None, "")
    assert "code" in bullet.note.text


def test_bullets_and_numbers_stand_in_their_order() -> None:
    (part,) = parts("## A\n1. a: b\n\n- c: d\n\n2. e: f\n")
    assert [bullet.line.value for bullet in part.listed] == ["a: b", "c: d", "e: f"]
    assert [bullet.line.value for bullet in part.bullets] == ["c: d"]


# ---- text ---------------------------------------------------------------------------------


def test_text_before_between_and_after_the_bullets_is_kept() -> None:
    (part,) = parts("## A\nOne.\n- x: y\n\nTwo.\n\n1. three\n\n| t |\n|---|\n\n> q\n\n    code\n")
    assert part.lead.text == "One.\n\nTwo.\n\n1. three\n\n| t |\n|---|\n\n> q\n\ncode"
    assert [text.text for text in part.every_text(steps=False)] == [
        "One.", "Two.", "| t |\n|---|", "> q", "code",
    ]  # fmt: skip


def test_an_inner_heading_comes_with_its_text_and_not_without() -> None:
    (part,) = parts("## A\nOne.\n### B\n- x: y\n### C\nTwo.\n#### D\nThree.\n")
    texts = [text.text for text in part.every_text(steps=True)]
    assert texts == ["One.", "### C", "Two.", "#### D", "Three."]


def test_definitions_of_sources_are_no_text() -> None:
    (part,) = parts("## A\nOne.\n\n[^a]: Hess.\n\nTwo.\n")
    assert part.lead.text == "One.\n\nTwo."


# ---- anything at all ----------------------------------------------------------------------

PIECES = st.sampled_from(
    ["a", "word", " ", "  ", "    ", "\n", "\n\n", "- ", "* ", "1. ", "## ", "### ", "# ", "> ",
     ": ", "**", "`", "```\n", "[^a]", "[^a]: ", "[l](x.md)", "<b>", "<!-- ", "| a |", "|---|",
     "---\n", "\t", "é", "[ ] ", "[x] ", "![p](q)", "\\", "\u200b", "\x0b", "&amp;", "on the card: "]
)  # fmt: skip
MARKDOWN = st.lists(PIECES, max_size=30).map("".join)


@settings(max_examples=200, deadline=None)
@given(MARKDOWN)
def test_no_text_raises_and_every_place_lies_in_the_text(text: str) -> None:
    found = outline(text)
    spans = [found.intro().span, *(span for part in found.parts() for span in spans_of(part))]
    spans += [note.span for note in found.footnotes()]
    spans += [link.span for link in found.links()]
    spans += [html.span for html in found.raw_html()]
    for span in spans:
        assert 0 <= span.start <= span.end <= len(text)


@settings(max_examples=200, deadline=None)
@given(MARKDOWN)
def test_labels_and_values_are_found_where_they_were_written(text: str) -> None:
    for part in outline(text).parts():
        for bullet in bullets_of(part):
            written = text[bullet.value.span.start : bullet.value.span.end]
            assert written.startswith(bullet.value.value.split(" ", 1)[0])
            if bullet.label:
                assert text[bullet.label.span.start : bullet.label.span.end] == bullet.label.value


@pytest.mark.parametrize("text", ["> " * 500 + "a", "- " * 500 + "a", "[" * 500, "*" * 500 + "a"])
def test_deep_nesting_is_read_or_left(text: str) -> None:
    assert outline(f"## A\n{text}\n").parts()[0].heading.value == "A"


def spans_of(part: Part) -> Iterator[Span]:
    """Yield the spans of a part and of all inside it."""
    yield from (part.span, part.heading.span, part.lead.span, part.rest.span)
    for bullet in bullets_of(part):
        yield from (bullet.span, bullet.value.span, bullet.note.span, bullet.quote.span)
    for inner in part.inner:
        yield from spans_of(inner)


def bullets_of(part: Part) -> Iterator[Bullet]:
    """Yield the bullets of a part and those inside them."""
    waiting = list(part.listed)
    while waiting:
        bullet = waiting.pop()
        yield bullet
        waiting.extend(bullet.inner)
