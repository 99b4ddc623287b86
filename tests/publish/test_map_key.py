"""The key: every pattern that is drawn, and no other, with its words."""

from __future__ import annotations

import re
from dataclasses import replace

from helpers.workshop import lesson_of
from sallet.publish.map_key import looks_in, map_key
from sallet.season.here import PlantYear, plant_year

MEANINGS = [
    "full bar: to eat", "thin hollow bar: to be seen, not to eat",
    "striped bar: part of a plant to keep away from", "low pale end: these days are uncertain",
    "broken line: the class meets, by its number", "thick line: today",
]  # fmt: skip


def year_of(text: str) -> PlantYear:
    """Return the year of a lesson where it was written."""
    return plant_year(lesson_of(text), None)


FOOD = year_of("## Season\n- leaves: May\n- fruit: June\n\n## Edible parts\n- petals: May; raw\n")
HARM = year_of("---\ntaught as: look-alike\n---\n## Season\n- roots: May\n")


def words(key: str) -> list[str]:
    """Return the words of a key's items."""
    return re.findall(r"</svg> ([^<]+)</li>", key)


def test_only_what_is_drawn_in_colour_is_explained() -> None:
    assert [look.key for look in looks_in([FOOD])] == ["flowers"]
    assert [look.key for look in looks_in([HARM, FOOD])] == ["flowers", "roots"]
    assert words(map_key([HARM, FOOD])) == ["flowers", "roots, bulbs", *MEANINGS]


def test_on_paper_there_is_no_today() -> None:
    assert words(map_key([FOOD], on_paper=True)) == ["flowers", *MEANINGS[:-1]]


def test_without_plants_the_meanings_are_there() -> None:
    assert words(map_key([])) == MEANINGS


def test_the_key_has_no_ids_so_that_every_sheet_can_have_one() -> None:
    assert "id=" not in map_key([FOOD, HARM])


def test_swatches_are_not_read_aloud() -> None:
    key = map_key([FOOD])
    assert key.count('<svg class="swatch" aria-hidden="true"') == key.count("<li>")


def test_what_is_not_yet_sure_is_explained_where_it_is_drawn() -> None:
    eaten = replace(FOOD.eaten[0], not_sure=frozenset({130}))
    doubtful = replace(FOOD, rows=(eaten, *FOOD.seen))
    assert words(map_key([doubtful])) == [
        "flowers", MEANINGS[0], "high hollow bar, broken edge: to eat, but not yet sure",
        *MEANINGS[1:],
    ]  # fmt: skip
