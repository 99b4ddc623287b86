"""The bars: certain days full, uncertain ones low, and none outside the year."""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from helpers.workshop import lesson_of
from sallet.lesson.value import Item, Window
from sallet.publish.map_bars import along, firm_runs, full_bar, lane_bars, soft_runs, thin_bar
from sallet.publish.map_lanes import lanes_of
from sallet.publish.map_parts import LOOKS
from sallet.season.here import Stretch, plant_year
from sallet.source import Span

DAYS = st.integers(1, 365)


def stretch_of(first: int, last: int, soft: tuple[int, int] = (0, 0)) -> Stretch:
    """Return a stretch of the year with its uncertain days."""
    return Stretch(Item(Window(first, last), "", Span(0, 0)), Window(first, last), soft)


def bars_of(text: str) -> list[ET.Element]:
    """Return what is drawn in the first lane of a lesson, parsed as XML."""
    lane = lanes_of(plant_year(lesson_of(text), None))[0]
    return list(ET.fromstring(f"<svg>{lane_bars(lane)}</svg>"))  # noqa: S314


def test_certain_days_begin_behind_and_end_before_the_uncertain_ones() -> None:
    stretch = stretch_of(100, 200, (5, 8))
    assert firm_runs(stretch) == ((105, 192),)
    assert soft_runs(stretch) == ((95, 104), (193, 208))


def test_both_run_over_the_new_year() -> None:
    stretch = stretch_of(300, 30, (5, 5))
    assert firm_runs(stretch) == ((305, 365), (1, 25))
    assert soft_runs(stretch_of(3, 363, (5, 5))) == ((363, 365), (1, 7), (359, 365), (1, 3))


def test_the_whole_year_has_no_uncertain_ends() -> None:
    bars = bars_of("## Season\n- leaves: all year\n")
    assert [(b.attrib["class"], b.attrib["x"], b.attrib["width"]) for b in bars] == [
        ("edge seen", "0.000%", "100.000%")
    ]


def test_what_could_not_be_read_is_not_drawn() -> None:
    stretch = Stretch(Item(Window(1, 2), "", Span(0, 0)))
    assert firm_runs(stretch) == soft_runs(stretch) == ()


@given(DAYS, DAYS, st.integers(0, 200), st.integers(0, 200))
def test_certain_days_are_in_the_window_and_no_run_leaves_the_year(
    first: int, last: int, before: int, after: int
) -> None:
    window = Window(first, last)
    most = (len(window.days) - 1) // 2
    stretch = stretch_of(first, last, (min(before, most), min(after, most)))
    firm = [day for a, b in firm_runs(stretch) for day in range(a, b + 1)]
    assert firm
    assert all(day in window for day in firm)
    assert all(1 <= a <= b <= 365 for a, b in (*firm_runs(stretch), *soft_runs(stretch)))


@pytest.mark.parametrize(("days", "written"), [(0, "0.000%"), (365, "100.000%"), (73, "20.000%")])
def test_days_are_parts_of_the_year(days: int, written: str) -> None:
    assert along(days) == written


def test_what_is_seen_is_thin_and_what_is_eaten_full_and_lies_upon_it() -> None:
    bars = bars_of("## Season\n- flowers: May\n\n## Edible parts\n- flowers: May; raw\n")
    firm = [bar for bar in bars if bar.attrib.get("class") != "soft"]
    assert [(bar.tag, bar.attrib["height"]) for bar in firm] == [("rect", "40%"), ("svg", "84%")]


def test_uncertain_days_are_half_as_high_without_an_edge_and_have_a_line_in_ink() -> None:
    bars = bars_of("## Edible parts\n- flowers: May; raw\n")
    soft = [
        (bar.tag, bar.attrib.get("height")) for bar in bars if bar.attrib.get("class") == "soft"
    ]
    assert soft == [("rect", "42%"), ("line", None)] * 2


def test_a_part_to_eat_has_its_colour_its_pattern_and_an_edge() -> None:
    bar = full_bar("eaten", LOOKS[1], (1, 31))
    assert re.findall(r'fill="([^"]+)"', bar) == ["#cc79a7", "none"]
    assert bar.count('stroke="#000000"') == 2
    assert 'class="edge eaten"' in bar


def test_what_harms_is_striped_and_its_edge_is_another() -> None:
    bar = full_bar("harm", LOOKS[0], (1, 31))
    assert re.findall(r'fill="([^"]+)"', bar) == ["#009e73", "none"]
    assert re.findall(r'class="([^"]+)"', bar) == ["rim", "stripe", "edge harm"]


def test_a_hollow_bar_has_no_colour() -> None:
    assert 'class="edge seen" fill="none"' in thin_bar((1, 31))


def test_what_is_eaten_but_not_yet_sure_is_a_high_hollow_bar() -> None:
    year = plant_year(
        lesson_of("## Season\n- leaves: May\n## Edible parts\n- leaves: all year; raw\n"), None
    )
    eaten = replace(year.eaten[0], not_sure=frozenset(range(1, 101)))
    lane = lanes_of(replace(year, rows=(eaten,)))[0]
    bars = list(ET.fromstring(f"<svg>{lane_bars(lane)}</svg>"))  # noqa: S314
    assert [(b.tag, b.attrib.get("class"), b.attrib["x"], b.attrib["width"]) for b in bars] == [
        ("rect", "edge doubt", "0.000%", along(100)),
        ("svg", None, along(100), along(265)),
    ]
    assert bars[0].attrib["height"] == bars[1].attrib["height"]
