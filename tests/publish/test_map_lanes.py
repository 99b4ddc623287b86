"""The lanes: what is eaten lies on what can be seen of the same part, and is never guessed."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from helpers.workshop import lesson_of
from sallet.publish.map_lanes import lanes_of, lines_of
from sallet.season.here import plant_year

Pair = tuple[str | None, str | None]


def lanes(season: list[str], eaten: list[str], head: str = "name: Ramsons") -> list[Pair]:
    """Return a plant's lanes, each as the names of what is eaten and what is seen."""
    text = f"---\n{head}\n---\n## Season\n"
    text += "".join(f"- {part}: May to June\n" for part in season)
    text += "\n## Edible parts\n" + "".join(f"- {part}: May; raw\n" for part in eaten)
    found = lanes_of(plant_year(lesson_of(text), None))
    return [(x.eaten.name if x.eaten else None, x.seen.name if x.seen else None) for x in found]


@pytest.mark.parametrize(
    ("season", "eaten", "expected"),
    [(["leaves", "flowers"], ["leaves"], [("leaves", "leaves"), (None, "flowers")]),
     (["Young-leaves", "leaves"], ["young leaves"],
      [("young leaves", "Young-leaves"), (None, "leaves")]),
     (["leaves"], ["young leaves"], [("young leaves", "leaves")]),
     (["haws", "green fruit"], ["haw"], [("haw", "haws"), (None, "green fruit")]),
     (["flowers"], ["petals", "flowers"], [("petals", None), ("flowers", "flowers")]),
     (["leaves", "old leaves"], ["young leaves"],
      [("young leaves", None), (None, "leaves"), (None, "old leaves")]),
     (["leaves"], ["nuts"], [("nuts", None), (None, "leaves")]),
     (["wibbles"], ["wobbles"], [("wobbles", None), (None, "wibbles")]),
     (["leaves"], ["young leaves", "leaf stalks"], [("young leaves", "leaves"), ("leaf stalks", None)]),
     ([], [], [])],
)  # fmt: skip
def test_lanes(season: list[str], eaten: list[str], expected: list[Pair]) -> None:
    assert lanes(season, eaten) == expected


def test_a_plant_to_keep_away_from_has_a_lane_for_each_part() -> None:
    head = "name: Hemlock\ntaught as: look-alike"
    assert lanes(["leaves", "stem"], [], head) == [(None, "leaves"), (None, "stem")]


def test_what_has_no_time_that_could_be_read_has_no_lane() -> None:
    lesson = lesson_of("## Season\n- leaves: when warm\n- flowers: May\n")
    assert [lane.name for lane in lanes_of(plant_year(lesson, None))] == ["flowers"]


def test_a_lane_is_called_and_drawn_by_what_is_eaten() -> None:
    lesson = lesson_of("## Season\n- fruit: May to June\n\n## Edible parts\n- nuts: June; raw\n")
    lane = lanes_of(plant_year(lesson, None))[0]
    assert (lane.name, lane.look.key) == ("nuts", "seeds")
    assert [row.kind for row in lane.rows] == ["seen", "eaten"]


PARTS = st.lists(
    st.sampled_from(["leaves", "young leaves", "flowers", "petals", "fruit", "haws", "wibbles"]),
    unique=True,
)


@given(PARTS, PARTS)
def test_nothing_is_lost_and_nothing_drawn_twice(season: list[str], eaten: list[str]) -> None:
    found = lanes(season, eaten)
    assert [e for e, _ in found if e] == eaten
    assert sorted(s for _, s in found if s) == sorted(season)


@pytest.mark.parametrize(
    ("words", "letters", "lines"),
    [("Hemlock water-dropwort", 12, ("Hemlock", "water-", "dropwort")),
     ("Ramsons", 12, ("Ramsons",)),
     ("Rhabarberbarbara", 12, ("Rhabarberbar", "bara")),
     ("", 12, ())],
)  # fmt: skip
def test_a_name_is_broken_into_lines(words: str, letters: int, lines: tuple[str, ...]) -> None:
    assert lines_of(words, letters) == lines


@given(st.text(alphabet="ab -é", max_size=60), st.integers(1, 30))
def test_no_line_is_too_long_and_no_letter_lost(words: str, letters: int) -> None:
    lines = lines_of(words, letters)
    assert all(len(line) <= letters for line in lines)
    assert "".join("".join(lines).split()) == "".join(words.split())
