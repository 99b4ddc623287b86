"""The season map as drawings for paper."""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from datetime import date
from typing import TYPE_CHECKING

import pytest

from helpers.papers import demo_site
from helpers.years import year_of
from sallet.publish.map_shape import SHEET
from sallet.publish.paper_map import (
    MOST_LANES,
    SMALLEST,
    name_size,
    paper_maps,
    parts_of,
    style,
)
from sallet.publish.season_map import MOST, TALL, blocks_of, map_sheets

if TYPE_CHECKING:
    from sallet.season.here import PlantYear

SVG = "{http://www.w3.org/2000/svg}"
SESSIONS = (date(2027, 4, 3),)


def plants(count: int, parts: int = 1) -> tuple[PlantYear, ...]:
    """Return so many plants, each with so many lanes."""
    names = ("leaves", "flowers", "fruit", "seeds", "stem", "bark", "buds", "sap")[:parts]
    rows = "".join(f"- {name}: May\n" for name in names)
    return tuple(
        year_of(f"---\nname: Plant {number}\n---\n## Season\n{rows}") for number in range(count)
    )


def lanes(years: tuple[PlantYear, ...]) -> float:
    """Return how many lanes some plants take."""
    last = blocks_of(years, SHEET)[-1]
    return last.top + last.height


def test_the_smallest_letters_are_of_seven_points() -> None:
    assert pytest.approx(7 / 72) == SMALLEST / 25.4


@pytest.mark.parametrize("parts", [1, 3, 8])
@pytest.mark.parametrize("count", [1, 28, 40, 41, 90])
def test_every_sheet_lets_its_names_be_read_and_no_plant_is_lost(count: int, parts: int) -> None:
    years = plants(count, parts)
    sheets = parts_of(years)
    assert [year for sheet in sheets for year in sheet] == list(years)
    for sheet in sheets:
        assert len(sheet) <= MOST
        assert lanes(tuple(sheet)) <= MOST_LANES
        assert name_size(TALL / lanes(tuple(sheet))) >= SMALLEST


def test_there_are_no_more_sheets_than_needed() -> None:
    assert [len(sheet) for sheet in parts_of(plants(40))] == [40]
    assert [len(sheet) for sheet in parts_of(plants(41))] == [20, 21]
    assert [len(sheet) for sheet in parts_of(plants(40, 8))] == [13, 13, 14]


def test_a_course_without_plants_has_no_sheet() -> None:
    assert paper_maps((), SESSIONS, 277) == ()


def test_a_plant_of_more_lanes_than_a_sheet_has_gets_a_sheet_of_its_own() -> None:
    rows = "".join(f"- part {number}: May\n" for number in range(200))
    long = year_of(f"---\nname: Long\n---\n## Season\n{rows}")
    assert parts_of((long, long)) == ((long,), (long,))


def test_the_drawing_is_the_map_of_the_page_head_and_body() -> None:
    years = demo_site().years
    (sheet,) = paper_maps(years, SESSIONS, 277)
    drawn = ET.fromstring(sheet.drawing)  # noqa: S314
    head, body, _ = ET.fromstring(f"<div>{map_sheets(years, SESSIONS)[0]}</div>")  # noqa: S314
    texts = [node.text for part in (head, body) for node in part.iter("text")]
    shapes = [node.tag for part in (head, body) for node in part.iter()]
    assert [node.text for node in drawn.iter(f"{SVG}text")] == texts
    assert [n.tag.removeprefix(SVG) for n in drawn.iter()] == ["svg", "style", *shapes]


def test_what_cannot_be_seen_in_a_name_does_not_break_the_drawing() -> None:
    year = year_of('---\nname: "Ram\\asons\\u202E & <co>"\n---\n## Season\n- lea\x07ves: May\n')
    (only,) = paper_maps([year], SESSIONS, 277)
    words = "".join(ET.fromstring(only.drawing).itertext())  # noqa: S314
    assert "Ramsons & <co>" in words


def test_the_drawing_has_the_papers_width_and_tells_its_shape() -> None:
    (sheet,) = paper_maps(demo_site().years, SESSIONS, 259.4)
    drawn = ET.fromstring(sheet.drawing)  # noqa: S314
    left, top, width, height = map(float, drawn.attrib["viewBox"].split())
    assert (left, top, width) == (0, 0, 259.4)
    assert sheet.shape == pytest.approx(height / width, abs=1e-5)
    assert drawn.attrib["width"] == "259.400mm"


def test_the_key_has_the_words_of_the_pages_key_each_with_its_drawing() -> None:
    years = demo_site().years
    (sheet,) = paper_maps(years, SESSIONS, 277)
    _, _, key = ET.fromstring(f"<div>{map_sheets(years, SESSIONS)[0]}</div>")  # noqa: S314
    assert [words for _, words in sheet.key] == ["".join(i.itertext()).strip() for i in key]
    for drawing, _ in sheet.key:
        shapes = {node.tag for node in ET.fromstring(drawing).iter()}  # noqa: S314
        assert shapes & {f"{SVG}rect", f"{SVG}line"}


def test_the_style_names_only_what_the_engine_knows() -> None:
    rules = style(0.9)
    assert "var(" not in rules
    assert "min(" not in rules
    assert set(re.findall(r'font-family: "(.*?)"', rules)) == {"Libertinus Serif"}


def test_every_class_of_the_drawing_that_has_ink_has_a_rule() -> None:
    (sheet,) = paper_maps(demo_site().years, SESSIONS, 277)
    rules = style(0.9)
    drawings = [sheet.drawing, *(drawing for drawing, _ in sheet.key)]
    inked = {
        name
        for drawing in drawings
        for node in ET.fromstring(drawing).iter()  # noqa: S314
        if node.tag in {f"{SVG}rect", f"{SVG}line"}
        for name in node.attrib.get("class", "").split()
    }
    plain = {"eaten"}  # the edge in ink is all it has
    assert {name for name in inked if f".{name}" not in rules} == plain
