"""What is measured of a course before anything is printed."""

from __future__ import annotations

from helpers.cards import setting_of
from helpers.workshop import lesson_of
from sallet.cards.printed import measure_print, printed_text

SOURCES = """---
name: Ramsons
---
Garlic of the woods ☠.[^one] More.

[^two]: 中国

## Cautions
- law: Ask.

## Sources
[^one]: 植物志 ✓
"""


def test_every_card_is_measured_and_every_text_is_searched_for_letters() -> None:
    files = {"course.yml": "title: Walks ✓\n", "a.md": SOURCES, "b.md": "---\nname: Hazel\n---\n"}
    printed = measure_print(setting_of(files))
    assert {one.card.lesson.name for one in printed.fitted} == {"Ramsons", "Hazel"}
    assert printed.missing == {"☠", "✓"}
    assert sorted(source.path for source, _ in printed.texts) == ["a.md", "b.md", "course.yml"]


def test_the_size_of_the_course_is_measured() -> None:
    files = {"course.yml": "cards: {size: A7}\n", "a.md": "---\nname: Hazel\n---\n"}
    assert [one.size for one in measure_print(setting_of(files)).fitted] == ["A7"]


def test_sources_are_blanks_in_what_is_printed_and_offsets_hold() -> None:
    text = printed_text(lesson_of(SOURCES))
    assert len(text) == len(SOURCES)
    assert "中" not in text
    assert "植" not in text
    assert text.index("Ask") == SOURCES.index("Ask")
    assert text.index("☠") == SOURCES.index("☠")
    assert [n for n, c in enumerate(text) if c == "\n"] == [
        n for n, c in enumerate(SOURCES) if c == "\n"
    ]
