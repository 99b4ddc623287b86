"""Cautions and look-alikes: none is shortened, none is lost."""

from __future__ import annotations

import pytest

from helpers.workshop import lesson_of


@pytest.mark.parametrize(
    ("bullet", "kind", "words"),
    [("- dogs: keep away", "dogs", "keep away"),
     ("- Dogs: keep away", "dogs", "keep away"),
     ("- **dogs**: keep away", "dogs", "keep away"),
     ("- **dogs: keep away**", "dogs", "keep away"),
     ("- thick fog: stay at home", "", "thick fog: stay at home"),
     ("- never by the handful", "", "never by the handful"),
     ("- at 10:30: go", "", "at 10:30: go"),
     ("- see https://example.org/", "", "see https://example.org/")],
)  # fmt: skip
def test_a_caution_has_a_kind_or_is_free_text_kept_whole(
    bullet: str, kind: str, words: str
) -> None:
    (caution,) = lesson_of(f"## Cautions\n{bullet}\n").cautions
    assert (caution.kind, caution.text.value) == (kind, words)


def test_only_a_slip_of_the_pen_is_taken_for_a_known_kind() -> None:
    faults = list(lesson_of("## Cautions\n- alergy: x\n- fog: x\n- dogs: x\n").faults_of(
        "unknown-caution-kind"))  # fmt: skip
    assert [(f.words, f.nearest) for f in faults] == [("alergy", ("allergy",)), ("fog", ())]


def test_a_look_alike_holds_what_is_told_of_it() -> None:
    text = """## Look-alikes
### Hemlock
Spots.

- danger: Deadly
- Settled by: a marked
  patch
- scientific name: Conium maculatum L.

More.
#### Stem
Hollow.
- interior: hollow
"""
    (hemlock,) = lesson_of(text).look_alikes
    assert (hemlock.danger, hemlock.settled_by) == ("deadly", "a marked patch")
    assert hemlock.scientific_name == "Conium maculatum L."
    assert hemlock.prose.text.startswith("Spots.\n\nMore.")
    assert "Hollow." in hemlock.prose.text
    assert [(f.subject, f.label) for f in hemlock.facts] == [("stem", "interior")]


def test_an_unknown_danger_is_no_danger_and_is_named() -> None:
    lesson = lesson_of("## Look-alikes\n### A\n- danger: deadly!\n")
    assert lesson.look_alikes[0].danger is None
    assert [fault.words for fault in lesson.faults_of("unknown-danger")] == ["deadly!"]
