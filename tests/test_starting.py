"""A new course and a new lesson."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest
from hypothesis import given
from hypothesis import strategies as st

from helpers.workshop import lesson_of
from sallet.checks.still_to_fill import DRAFTED
from sallet.course.reading import read_course
from sallet.source import Source
from sallet.starting import InTheWay, new_course, new_lesson, write_new

if TYPE_CHECKING:
    from pathlib import Path

NAMES = st.text(st.characters(exclude_categories=("C", "Z")), min_size=1, max_size=30)


@given(NAMES)
def test_a_plants_name_stands_in_the_head_as_it_was_given(name: str) -> None:
    """YAML signs in a name, and names such as `No`, come back unchanged."""
    file, text = new_lesson(name, "food")
    lesson = lesson_of(text)
    assert lesson.front.name == name
    assert list(lesson.faults_of("front-matter")) == []
    assert file.endswith(".md")


@given(NAMES)
def test_a_courses_title_stands_in_course_yml_as_it_was_given(title: str) -> None:
    course = read_course(Source("course.yml", new_course(title)["course.yml"]))
    assert course.title == title
    assert (course.broken, course.wrong) == ((), ())


def test_a_look_alike_is_drafted_without_edible_parts() -> None:
    lesson = lesson_of(new_lesson("Hemlock", "look-alike")[1])
    assert lesson.front.taught_as == "look-alike"
    assert lesson.section("edible parts") is None
    assert lesson.section("cautions") is not None


@pytest.mark.parametrize("taught_as", ["food", "look-alike"])
def test_every_sentence_of_a_draft_is_known_to_the_check_that_finds_it_again(
    taught_as: str,
) -> None:
    """Whatever line of a draft is no heading of the format, bullet to fill or head, is listed."""
    text = new_lesson("Hemlock", "food" if taught_as == "food" else "look-alike")[1]
    body = text.split("---\n", 2)[2]
    for sentence in DRAFTED:
        body = body.replace(sentence, "")
    left = [
        line.strip(" #>123456789.[]x-")
        for line in body.splitlines()
        if not line.startswith("[^memory]")
    ]
    words = [line for line in left if line and not line.endswith(":")]
    assert [w for w in words if w[0].isupper() and w.count(" ") > 2] == []


def test_every_sentence_the_check_knows_is_in_a_draft() -> None:
    drafts = new_lesson("Hemlock", "food")[1] + new_lesson("Hemlock", "look-alike")[1]
    assert [sentence for sentence in DRAFTED if sentence not in drafts] == []


def test_nothing_is_written_over(tmp_path: Path) -> None:
    (tmp_path / "b.md").write_text("mine")
    with pytest.raises(InTheWay, match=r"b\.md` is there already; nothing was written$"):
        write_new(tmp_path, {"a.md": "new", "b.md": "new"})
    assert sorted(p.name for p in tmp_path.iterdir()) == ["b.md"]
    assert (tmp_path / "b.md").read_text() == "mine"


def test_folders_are_made(tmp_path: Path) -> None:
    write_new(tmp_path / "course", {"lessons/": "", "pictures/": "", "course.yml": "title: x\n"})
    assert sorted(p.name for p in (tmp_path / "course").iterdir()) == [
        "course.yml",
        "lessons",
        "pictures",
    ]
