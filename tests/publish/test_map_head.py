"""The head of the map: months, weeks and sessions at their days."""

from __future__ import annotations

import re
from datetime import date, timedelta
from itertools import pairwise

from hypothesis import given
from hypothesis import strategies as st

from sallet.publish.map_head import month_lines, season_head, session_lines
from sallet.publish.map_shape import SCREEN, SHEET


def lines(drawn: str, kind: str) -> list[float]:
    """Return where lines of a kind stand, in percent of the year."""
    return [float(x) for x in re.findall(rf'<line class="{kind}" x1="([\d.]+)%"', drawn)]


def words(drawn: str, kind: str) -> list[str]:
    """Return the words of a kind, in their order."""
    return re.findall(rf'<text class="{kind}"[^>]*>([^<]+)', drawn)


def test_months_have_thirteen_lines_from_edge_to_edge() -> None:
    found = lines(month_lines(30, "0", "100%"), "month")
    assert (len(found), found[0], found[-1]) == (13, 0, 100)
    assert round(found[1] * 3.65) == 31


def test_months_are_named_short_on_a_telephone_and_longer_on_a_wide_screen() -> None:
    head = season_head((), SCREEN)
    assert "".join(words(head, "month narrow")) == "JFMAMJJASOND"
    assert words(head, "month wide")[:3] == ["Jan", "Feb", "Mar"]
    assert words(season_head((), SHEET), "month sheet")[-1] == "Dec"


def test_a_week_begins_every_seventh_day() -> None:
    weeks = lines(season_head((), SCREEN), "week")
    assert len(weeks) == 52
    assert [round(x * 3.65) for x in weeks] == list(range(7, 365, 7))


def test_a_session_has_a_line_at_its_day_whatever_the_year() -> None:
    drawn = session_lines(
        [date(2027, 1, 1), date(2028, 2, 29), date(2029, 12, 31)], 30, "0", "100%"
    )
    assert [round(x * 3.65) for x in lines(drawn, "session")] == [0, 58, 364]


def test_sessions_are_numbered_in_their_order() -> None:
    days = [date(2027, 3, 1), date(2027, 6, 1), date(2027, 9, 1)]
    assert words(season_head(days, SCREEN), "session narrow") == ["1", "2", "3"]


def test_the_head_is_not_read_aloud() -> None:
    assert 'aria-hidden="true"' in season_head((), SCREEN)


@given(st.lists(st.dates(date(2027, 1, 1), date(2027, 12, 31)), max_size=40))
def test_numbers_keep_their_distance_and_the_first_in_the_year_is_there(days: list[date]) -> None:
    head = season_head(days, SCREEN)
    spots = [float(x) for x in re.findall(r'<text class="session narrow" x="([\d.]+)%', head)]
    assert all(right - left >= 7 for left, right in pairwise(spots))
    assert len(lines(head, "session")) == len(days)
    first = min(days, default=None)
    if first:
        assert round(spots[0] * 3.65) == (first - date(2027, 1, 1)) // timedelta(1)
