"""The season map as a drawing: places, names, ids, sheets."""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from datetime import date
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from helpers.workshop import lesson_of
from sallet.publish.map_shape import SCREEN, SHEET
from sallet.publish.season_map import MOST, TALL, blocks_of, map_sheets, name_lines, season_map
from sallet.season.here import PlantYear, plant_year

SVG = "{http://www.w3.org/2000/svg}"
SESSIONS = (date(2027, 4, 3), date(2027, 5, 1))


def year_of(name: str, rest: str = "", body: str = "## Season\n- leaves: May\n") -> PlantYear:
    """Return the year of a plant by its name."""
    return plant_year(lesson_of(f"---\nname: {name}\n{rest}\n---\n{body}"), None)


RAMSONS = year_of(
    "Ramsons", body="## Season\n- leaves: March to June\n\n## Edible parts\n- leaves: May; raw\n"
)
HEMLOCK = year_of("Hemlock", "taught as: look-alike\ndanger: deadly")
NO_TIMES = year_of("Moss", body="")


def body_of(*years: PlantYear) -> ET.Element:
    """Return the drawing below the head, parsed as XML."""
    drawn = str(season_map(years, SESSIONS, "map"))
    text = drawn.replace("<svg ", '<svg xmlns="http://www.w3.org/2000/svg" ')
    return list(ET.fromstring(f"<div>{text}</div>"))[1]  # noqa: S314


def test_the_drawing_has_a_title_and_says_where_its_words_are() -> None:
    svg = body_of(RAMSONS)
    title, desc = svg.find(f"{SVG}title"), svg.find(f"{SVG}desc")
    assert title is not None
    assert desc is not None
    assert svg.attrib["role"] == "img"
    assert svg.attrib["aria-labelledby"].split() == [title.attrib["id"], desc.attrib["id"]]
    assert desc.text == "The same stands in words in the table below."


def test_widths_are_in_percent_and_heights_in_lanes() -> None:
    svg = body_of(RAMSONS, HEMLOCK)
    assert "viewBox" not in svg.attrib
    assert svg.attrib["width"] == "100%"
    across = [n.attrib[a] for n in svg.iter() for a in ("x", "width") if a in n.attrib]
    assert {x for x in across if not x.endswith("%")} <= {"0"}
    assert svg.attrib["height"].endswith("em")


def test_nothing_needs_a_style_of_its_own() -> None:
    """The pages' policy lets no style attribute through."""
    drawn = season_map([RAMSONS, HEMLOCK], SESSIONS, "map")
    assert "style=" not in drawn
    assert set(re.findall(r"<([a-z]+)", drawn)) == {
        "svg", "title", "desc", "rect", "line", "text", "tspan",
    }  # fmt: skip


def test_a_plant_has_the_shape_and_the_word_of_its_danger() -> None:
    assert name_lines(HEMLOCK, 30) == (("Hemlock ", "▲▲ deadly"),)
    assert name_lines(RAMSONS, 30) == (("Ramsons ", "❧ food"),)


def test_on_a_telephone_the_danger_has_a_line_of_its_own() -> None:
    assert name_lines(HEMLOCK, 12) == (("Hemlock", ""), ("", "▲▲ deadly"))


def test_a_danger_that_is_not_stated_is_said_in_full() -> None:
    unknown = year_of("Hemlock water-dropwort", "taught as: look-alike")
    assert name_lines(unknown, 12) == (
        ("Hemlock", ""), ("water-", ""), ("dropwort", ""), ("", "▲ danger not"), ("", "stated"),
    )  # fmt: skip


@given(st.text(alphabet="abc d-", min_size=1, max_size=80), st.integers(6, 60))
def test_no_line_of_a_name_is_too_long(name: str, letters: int) -> None:
    lines = name_lines(year_of(f'"{name}x"', "taught as: look-alike\ndanger: deadly"), letters)
    assert all(len(words + mark) <= letters for words, mark in lines)
    assert "".join(mark for _, mark in lines).replace(" ", "") == "▲▲deadly"


@given(st.lists(st.sampled_from([RAMSONS, HEMLOCK, NO_TIMES]), max_size=12))
def test_plants_stand_below_each_other_with_room_for_lanes_and_name(
    years: list[PlantYear],
) -> None:
    for layout in (SCREEN, SHEET):
        blocks = blocks_of(years, layout)
        assert [block.year for block in blocks] == years
        assert all(block.height > len(block.lanes) for block in blocks)
        assert all(a.top + a.height == pytest.approx(b.top) for a, b in pairwise(blocks))


def test_every_lane_has_the_word_of_its_part() -> None:
    words = [t.text for t in body_of(RAMSONS, HEMLOCK).iter(f"{SVG}text") if "y" in t.attrib]
    assert [word for word in words if word == "leaves"] == ["leaves", "leaves"]


def test_a_plant_without_times_says_so() -> None:
    """An empty row would say that the plant is never there."""
    texts = [t.text for t in body_of(NO_TIMES).iter(f"{SVG}text")]
    assert "times not known" in texts


def test_a_long_word_is_cut_on_the_map() -> None:
    part = "the youngest side shoots of all"
    year = year_of("Ramsons", body=f"## Season\n- {part}: May\n")
    assert "the youngest side…" in [t.text for t in body_of(year).iter(f"{SVG}text")]


def test_words_lean_away_from_the_near_edge() -> None:
    early = body_of(year_of("A", body="## Season\n- leaves: January\n"))
    late = body_of(year_of("A", body="## Season\n- leaves: December\n"))
    anchors = [
        [t.attrib["text-anchor"] for t in svg.iter(f"{SVG}text") if t.text == "leaves"]
        for svg in (early, late)
    ]
    assert anchors == [["start"], ["end"]]


def test_ids_are_the_drawings_own() -> None:
    drawn = season_map([RAMSONS, HEMLOCK], SESSIONS, "one")
    made = re.findall(r' id="([^"]+)"', drawn)
    assert len(made) == len(set(made))
    assert all(name.startswith("one-") for name in made)
    assert len(made) == 2


def test_names_are_escaped() -> None:
    drawn = season_map([year_of('"<b>&\'"')], (), "map")
    assert "<b>" not in drawn
    assert "&lt;b&gt;" in drawn


def test_a_course_without_plants_has_a_map_and_no_sheet() -> None:
    assert season_map((), (), "map").count("<svg ") >= 2
    assert map_sheets((), ()) == ()


@pytest.mark.parametrize(
    ("plants", "sheets"),
    [(1, [1]), (40, [40]), (41, [21, 20]), (45, [23, 22]), (81, [27, 27, 27]), (136, [34] * 4)],
)
def test_plants_are_shared_out_on_as_few_sheets_as_hold_them(
    plants: int, sheets: list[int]
) -> None:
    found = map_sheets([RAMSONS] * plants, SESSIONS)
    assert [sheet.count('class="between"') for sheet in found] == sheets
    assert max(sheets) <= MOST


def test_no_two_sheets_share_an_id() -> None:
    made = re.findall(r' id="([^"]+)"', "".join(map_sheets([RAMSONS, HEMLOCK] * 30, SESSIONS)))
    assert len(made) == len(set(made))


@pytest.mark.parametrize("plants", [1, 5, 22, 40])
def test_a_sheet_is_no_higher_than_the_paper_has_room(plants: int) -> None:
    sheet = map_sheets([RAMSONS, HEMLOCK, *[RAMSONS] * plants][:plants], SESSIONS)[0]
    found = re.search(r'height="([\d.]+)em" font-size="([\d.]+)mm"', sheet)
    assert found
    assert float(found[1]) * float(found[2]) <= TALL + 0.5
    assert float(found[2]) <= 5


def test_only_a_sheet_sets_its_own_size() -> None:
    assert "font-size" not in season_map([RAMSONS], SESSIONS, "map")
