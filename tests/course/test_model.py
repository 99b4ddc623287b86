"""A course: where its values stand in course.yml."""

from __future__ import annotations

import pytest

from sallet.course.model import SeenOn
from sallet.course.reading import read_course
from sallet.source import Source

COURSE = read_course(
    Source("course.yml", "title: Hedge\nteacher:\nplants: [Elder, Yew]\nplace: {name: A}\n")
)


@pytest.mark.parametrize(
    ("path", "words"),
    [(("title",), "Hedge"), (("plants", 1), "Yew"), (("place", "name"), "A"),
     (("place", "latitude"), "{name: A}"), (("plants", 7), "[Elder, Yew]")],
)  # fmt: skip
def test_a_value_is_found_by_its_path_or_what_is_above_it(
    path: tuple[str | int, ...], words: str
) -> None:
    assert COURSE.source.words(COURSE.where(*path)).strip() == words


def test_a_day_on_which_something_was_seen_is_told_with_its_year_if_it_has_one() -> None:
    assert (SeenOn(5, 2, 2026).words, SeenOn(5, 2).words) == ("2 May 2026", "2 May")
