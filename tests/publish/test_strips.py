"""The season strip: bars where the windows are, words beside them."""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from typing import TYPE_CHECKING

import pytest
from hypothesis import given
from hypothesis import strategies as st

from helpers.workshop import lesson_of
from sallet.lesson.value import Window
from sallet.publish.strips import NAMES, WIDTH, Row, season_strip, strip_rows

if TYPE_CHECKING:
    from sallet.publish.strips import Kind

RAMSONS = lesson_of("""---
name: Ramsons
---
## Season
- leaves: late February to mid June
- flowers: when warm
- seeds: June, August

## Edible parts
- leaves: March to May; raw
""")
SVG = "{http://www.w3.org/2000/svg}"


def drawing(*rows: Row, name: str = "Ramsons") -> ET.Element:
    """Return a strip, parsed as XML."""
    text = str(season_strip(name, rows, "strip"))
    return ET.fromstring(text.replace("<svg ", '<svg xmlns="http://www.w3.org/2000/svg" ', 1))  # noqa: S314


def bars(row: Row) -> list[tuple[float, float]]:
    """Return the left and right end of each bar of a row, in days of the year."""
    day = (WIDTH - NAMES - 2) / 365
    found = [
        (float(r.attrib["x"]), float(r.attrib["width"])) for r in drawing(row).iter(f"{SVG}rect")
    ]
    return [(round((x - NAMES) / day), round((x + width - NAMES) / day)) for x, width in found]


def test_what_is_eaten_comes_first_and_what_cannot_be_read_is_left_out() -> None:
    assert strip_rows(RAMSONS) == (
        Row("eat leaves", "eaten", (Window(60, 151),)),
        Row("leaves", "seen", (Window(52, 171),)),
        Row("seeds", "seen", (Window(152, 181), Window(213, 243))),
    )


def test_what_can_be_seen_of_a_plant_to_keep_away_from_is_harm() -> None:
    lesson = lesson_of("---\ntaught as: look-alike\n---\n## Season\n- leaves: May\n")
    assert strip_rows(lesson) == (Row("leaves", "harm", (Window(121, 151),)),)


def test_a_row_says_its_windows_in_words() -> None:
    assert strip_rows(RAMSONS)[2].words == "June and August"


def test_the_drawing_is_told_in_words_for_those_who_do_not_see_it() -> None:
    svg = drawing(*strip_rows(RAMSONS))
    assert svg.attrib["role"] == "img"
    title, words = svg.find(f"{SVG}title"), svg.find(f"{SVG}desc")
    assert title is not None
    assert words is not None
    assert svg.attrib["aria-labelledby"].split() == [title.attrib["id"], words.attrib["id"]]
    assert title.text == "Ramsons through the year"
    assert words.text == (
        "eat leaves: March to May; leaves: late February to mid June; seeds: June and August."
    )


@pytest.mark.parametrize(
    ("window", "ends"),
    [(Window(1, 365), [(0, 365)]),
     (Window(152, 181), [(151, 181)]),
     (Window(274, 90), [(273, 365), (0, 90)]),
     (Window(365, 1), [(364, 365), (0, 1)])],
)  # fmt: skip
def test_a_bar_reaches_from_the_first_day_to_the_end_of_the_last(
    window: Window, ends: list[tuple[int, int]]
) -> None:
    assert bars(Row("leaves", "eaten", (window,))) == ends


@given(st.integers(1, 365), st.integers(1, 365), st.sampled_from(["seen", "eaten", "harm"]))
def test_every_bar_lies_inside_the_drawing(first: int, last: int, kind: Kind) -> None:
    svg = drawing(Row("leaves", kind, (Window(first, last),)))
    _, _, width, height = map(float, svg.attrib["viewBox"].split())
    for bar in svg.iter(f"{SVG}rect"):
        x, y = float(bar.attrib["x"]), float(bar.attrib["y"])
        assert x >= NAMES
        assert x + float(bar.attrib["width"]) <= width
        assert 0 <= y < y + float(bar.attrib["height"]) <= height
        assert float(bar.attrib["width"]) > 0


def test_each_kind_has_its_own_class_and_harm_is_hatched() -> None:
    """A word, a shape and a colour: what harms is told apart without colours too."""
    kinds: tuple[Kind, ...] = ("seen", "eaten", "harm")
    rows = [Row("leaves", kind, (Window(100, 200),)) for kind in kinds]
    svg = drawing(*rows)
    assert [bar.attrib["class"] for bar in svg.iter(f"{SVG}rect")] == ["seen", "eaten", "harm"]
    hatched = [p.attrib["class"] for p in svg.iter(f"{SVG}path") if p.attrib["class"] != "month"]
    assert hatched == ["harm"]


def test_twelve_months_stand_between_thirteen_lines() -> None:
    svg = drawing(Row("leaves", "seen", (Window(1, 365),)))
    letters = [t.text for t in svg.iter(f"{SVG}text") if t.attrib["class"] == "month"]
    lines = [float(m[1]) for p in svg.iter(f"{SVG}path")
             if (m := re.match(r"M([\d.]+) ", p.attrib["d"]))]  # fmt: skip
    assert "".join(filter(None, letters)) == "JFMAMJJASOND"
    assert len(lines) == 13
    assert lines == sorted(lines)


def test_a_long_name_is_cut_in_the_drawing_but_not_in_its_words() -> None:
    svg = drawing(Row("eat the youngest side shoots", "eaten", (Window(1, 365),)))
    shown = [t.text for t in svg.iter(f"{SVG}text") if t.attrib["class"] != "month"]
    words = svg.find(f"{SVG}desc")
    assert shown == ["eat the youngest…"]
    assert words is not None
    assert words.text == "eat the youngest side shoots: all year."


def test_names_are_escaped() -> None:
    row = Row("<b>&amp;", "seen", (Window(1, 365),))
    text = season_strip('"><script>', [row], "strip")
    assert "<script>" not in text
    assert "<b>" not in text
    title = drawing(row, name='"><script>').find(f"{SVG}title")
    assert title is not None
    assert title.text == '"><script> through the year'


def test_without_rows_there_are_only_the_months() -> None:
    svg = drawing()
    assert list(svg.iter(f"{SVG}rect")) == []
    assert len(list(svg.iter(f"{SVG}path"))) == 13
