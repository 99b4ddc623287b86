"""The season strip: bars where the windows are, words beside them."""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from typing import TYPE_CHECKING

import pytest
from hypothesis import given
from hypothesis import strategies as st

from helpers.rows import RAMSONS, not_sure_from, row_of, stretch_of
from helpers.years import year_at, year_of
from sallet.lesson.value import Window
from sallet.publish.strips import NAMES, WIDTH, season_strip
from sallet.season.hopkins import Spot
from sallet.season.strip import NOT_SURE

if TYPE_CHECKING:
    from sallet.season.here import Kind, Row

DAYS = st.integers(1, 365)
SOFT = st.tuples(st.integers(0, 182), st.integers(0, 182))
SVG = "{http://www.w3.org/2000/svg}"


def drawing(*rows: Row, name: str = "Ramsons") -> ET.Element:
    """Return a strip, parsed as XML."""
    text = str(season_strip(name, rows, "strip"))
    return ET.fromstring(text.replace("<svg ", '<svg xmlns="http://www.w3.org/2000/svg" ', 1))  # noqa: S314


def bars(row: Row, kind: str) -> list[tuple[int, int]]:
    """Return the left and right end of each bar of a class, in days of the year."""
    day = (WIDTH - NAMES - 2) / 365
    rects = [r.attrib for r in drawing(row).iter(f"{SVG}rect") if r.attrib["class"] == kind]
    found = [(float(r["x"]), float(r["width"])) for r in rects]
    return [(round((x - NAMES) / day), round((x + width - NAMES) / day)) for x, width in found]


def words_of(svg: ET.Element) -> str | None:
    """Return what is told to those who do not see the drawing."""
    words = svg.find(f"{SVG}desc")
    assert words is not None
    return words.text


def test_what_cannot_be_read_is_left_out_of_the_drawing() -> None:
    shown = [t.text for t in drawing(*year_of(RAMSONS).rows).iter(f"{SVG}text")]
    assert shown[12:] == ["eat leaves", "leaves", "seeds"]


def test_what_can_be_seen_of_a_plant_to_keep_away_from_is_harm() -> None:
    (row,) = year_of("---\ntaught as: look-alike\n---\n## Season\n- leaves: May\n").rows
    assert bars(row, "harm") == [(125, 146)]
    assert bars(row, "seen") == []


def test_the_drawing_is_told_in_words_for_those_who_do_not_see_it() -> None:
    svg = drawing(*year_of(RAMSONS).rows)
    assert svg.attrib["role"] == "img"
    title, words = svg.find(f"{SVG}title"), svg.find(f"{SVG}desc")
    assert title is not None
    assert words is not None
    assert svg.attrib["aria-labelledby"].split() == [title.attrib["id"], words.attrib["id"]]
    assert title.text == "Ramsons through the year"
    assert words.text == (
        "eat leaves: March to May; leaves: late February to mid June; seeds: June, August."
    )


def test_elsewhere_the_words_say_that_it_is_an_estimate() -> None:
    north = year_at(RAMSONS, Spot(57.4, -2.6, 150)).rows
    assert words_of(drawing(*north)) == (
        "eat leaves: about mid March to mid June; leaves: about early March to early July; "
        "seeds: about mid June to early July, about late July to mid August."
    )


# ---- bars ---------------------------------------------------------------------------------


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
    assert bars(row_of("leaves", "eaten", stretch_of(window)), "eaten") == ends


def test_uncertain_days_are_a_thin_bar_at_either_end_of_a_shorter_full_one() -> None:
    """March to May, both ends uncertain by five days before and behind."""
    row = row_of("leaves", "seen", stretch_of(Window(60, 151), (5, 5)))
    assert bars(row, "seen") == [(64, 146)]
    assert bars(row, "soft seen") == [(54, 64), (146, 156)]


def test_uncertain_days_run_over_the_new_year() -> None:
    row = row_of("roots", "seen", stretch_of(Window(3, 363), (5, 5)))
    assert bars(row, "seen") == [(7, 358)]
    assert bars(row, "soft seen") == [(362, 365), (0, 7), (358, 365), (0, 3)]


def test_a_thin_bar_is_lower_than_a_full_one_and_in_its_middle() -> None:
    svg = drawing(row_of("leaves", "seen", stretch_of(Window(60, 151), (5, 5))))
    box = {
        r.attrib["class"]: (float(r.attrib["y"]), float(r.attrib["height"]))
        for r in svg.iter(f"{SVG}rect")
    }
    (top, height), (soft_top, soft_height) = box["seen"], box["soft seen"]
    assert soft_height < height / 2
    assert soft_top + soft_height / 2 == top + height / 2


@given(DAYS, DAYS, SOFT, st.sampled_from(["seen", "eaten", "harm"]))
def test_every_bar_lies_inside_the_drawing(
    first: int, last: int, soft: tuple[int, int], kind: Kind
) -> None:
    window = Window(first, last)
    most = (len(window.days) - 1) // 2
    ends = (min(soft[0], most), min(soft[1], most))
    svg = drawing(row_of("leaves", kind, stretch_of(window, ends)))
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
    rows = [row_of("leaves", kind, stretch_of(Window(100, 200))) for kind in kinds]
    svg = drawing(*rows)
    assert [bar.attrib["class"] for bar in svg.iter(f"{SVG}rect")] == ["seen", "eaten", "harm"]
    hatched = [p.attrib["class"] for p in svg.iter(f"{SVG}path") if p.attrib["class"] != "month"]
    assert hatched == ["harm"]


def test_twelve_months_stand_between_thirteen_lines() -> None:
    svg = drawing(row_of("leaves", "seen", stretch_of(Window(1, 365))))
    letters = [t.text for t in svg.iter(f"{SVG}text") if t.attrib["class"] == "month"]
    lines = [float(m[1]) for p in svg.iter(f"{SVG}path")
             if (m := re.match(r"M([\d.]+) ", p.attrib["d"]))]  # fmt: skip
    assert "".join(filter(None, letters)) == "JFMAMJJASOND"
    assert len(lines) == 13
    assert lines == sorted(lines)


def test_a_long_name_is_cut_in_the_drawing_but_not_in_its_words() -> None:
    svg = drawing(row_of("youngest side shoots", "eaten", stretch_of(Window(1, 365))))
    shown = [t.text for t in svg.iter(f"{SVG}text") if t.attrib["class"] != "month"]
    assert shown == ["eat youngest sid…"]
    assert words_of(svg) == "eat youngest side shoots: all year."


def test_names_are_escaped() -> None:
    row = row_of("<b>&amp;", "seen", stretch_of(Window(1, 365)))
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


# ---- what is not yet sure -----------------------------------------------------------------


def test_days_that_are_not_sure_break_the_bar_and_have_a_row_of_crosses_below_what_is_eaten() -> (
    None
):
    eaten = not_sure_from(row_of("leaves", "eaten", stretch_of(Window(60, 151))), 60, 105)
    svg = drawing(eaten, row_of("flowers", "seen", stretch_of(Window(110, 160))))
    assert bars(eaten, "doubt") == [(59, 105)]
    assert bars(eaten, "eaten") == [(105, 151)]
    names = [e.text for e in svg.iter(f"{SVG}text") if "row" in e.attrib["class"]]
    assert sorted(names, key=str) == ["eat leaves", "flowers", NOT_SURE]
    heights = {e.text: float(e.attrib["y"]) for e in svg.iter(f"{SVG}text")}
    assert heights["eat leaves"] < heights[NOT_SURE] < heights["flowers"]
    [crosses] = [e for e in svg.iter(f"{SVG}path") if e.attrib["class"] == "doubt"]
    assert crosses.attrib["d"].count("M") == 6


def test_the_words_of_the_strip_say_when_it_is_not_sure() -> None:
    eaten = not_sure_from(row_of("leaves", "eaten", stretch_of(Window(60, 151))), 60, 105)
    [words] = [e.text for e in drawing(eaten).iter(f"{SVG}desc")]
    assert words == "eat leaves: March to May; not yet sure: March to 15 April."


def test_weeks_that_are_taken_out_have_their_crosses_too() -> None:
    """Though there is no bar left."""
    withheld = not_sure_from(row_of("leaves", "eaten"), 350, 365)
    svg = drawing(withheld, row_of("flowers", "seen", stretch_of(Window(110, 160))))
    assert [e.text for e in svg.iter(f"{SVG}text") if "row" in e.attrib["class"]] == [
        "flowers",
        NOT_SURE,
    ]
    assert words_of(svg) == "flowers: 20 April to 9 June; not yet sure: 16–31 December."


def test_without_a_doubt_nothing_is_said_of_one() -> None:
    assert NOT_SURE not in str(season_strip("X", [row_of("leaves", "eaten")], "x"))
