"""Organs and the facts below them."""

from __future__ import annotations

from helpers.workshop import lesson_of


def test_a_heading_names_an_organ_or_a_kind_or_piece_of_it() -> None:
    text = "## Identification\n### Leaf\n- tip: acute\n#### Leaf stalks\n- colour: red\n### Bulb\n"
    lesson = lesson_of(f"{text}- colour: white\n")
    assert [(f.subject, f.part) for f in lesson.facts] == [
        ("leaves", ""), ("leaves", "leaf stalks"), ("roots", "bulb"),
    ]  # fmt: skip


def test_facts_above_the_first_organ_are_about_the_whole_plant() -> None:
    lesson = lesson_of("## Identification\n- height: 20–45 cm\n")
    assert [(f.subject, f.label) for f in lesson.facts] == [("whole plant", "height")]


def test_a_slip_of_the_pen_is_reported_and_read_as_what_it_comes_nearest_to() -> None:
    lesson = lesson_of("## Identification\n### Leavs\n- tip: acute\n### Flowers\n- petals: 6\n")
    assert [fact.subject for fact in lesson.facts] == ["leaves", "flowers"]
    (fault,) = lesson.faults_of("unknown-organ")
    assert (fault.words, fault.nearest, fault.detail) == ("Leavs", ("Leaves",), "")


def test_an_organ_like_no_other_hides_none() -> None:
    lesson = lesson_of("## Identification\n### Zzz\n- tip: acute\n### Flowers\n- petals: 6\n")
    assert [fact.subject for fact in lesson.facts] == ["flowers"]
    (fault,) = lesson.faults_of("unknown-organ")
    assert (fault.words, fault.nearest, fault.detail) == ("Zzz", (), "")
