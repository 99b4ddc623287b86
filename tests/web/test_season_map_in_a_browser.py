"""The season page and the sheet for the wall in a browser: today, its lists, widths, paper."""

from __future__ import annotations

import random
import shutil
import subprocess
from dataclasses import dataclass
from datetime import date
from itertools import pairwise
from pathlib import Path
from types import SimpleNamespace
from typing import TYPE_CHECKING, Any, Final

import pytest

from helpers.workshop import lesson_of
from sallet.folder import read_path
from sallet.lesson.dangers import DANGERS, danger_of
from sallet.lesson.values.times import MONTHS, YEAR, day_of_year
from sallet.lesson.vocabulary_file import load_vocabulary
from sallet.publish.map_key import map_key
from sallet.publish.palette import DARK, LIGHT
from sallet.publish.season_map import map_sheets, season_map
from sallet.publish.templates import site_templates
from sallet.season.gathering import all_tellings, gathered_surely
from sallet.season.here import plant_year
from sallet.season.hopkins import Spot
from sallet.season.order import in_season_order
from sallet.season.words import days_words, row_words, seen_words

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from playwright.sync_api import Browser, Page

    from sallet.course.model import Course
    from sallet.season.here import PlantYear, Row

PROJECT = Path(__file__).resolve().parents[2]
FOLDER = read_path(PROJECT / "demo_course", load_vocabulary())
HIGHLAND: Final = Spot(57.0, -4.0, 300.0)
"""A place at which every plant's year is another than in its lesson."""
RAW = {lesson.slug: plant_year(lesson, HIGHLAND) for lesson in FOLDER.bank.lessons}
TOLD = all_tellings(RAW, FOLDER.bank)
DEMO = in_season_order(gathered_surely(RAW[slug], TOLD.get(slug, ())) for slug in RAW)
SOON: Final = 14
DATES = [
    date(2027, 1, 1), date(2027, 2, 28), date(2028, 2, 29), date(2027, 3, 1), date(2027, 5, 3),
    date(2027, 8, 20), date(2027, 10, 1), date(2027, 12, 18), date(2027, 12, 31),
]  # fmt: skip
FLOWERING: Final = (2, 3, 12, 19, 42, 39, 15, 2, 2)
"""How many of 136 plants begin to flower in each month from January to September."""
LASTING: Final = {1: 4, 2: 46, 3: 47, 4: 23, 5: 8, 6: 3, 7: 2, 8: 1, 12: 2}
"""How many of them flower for so many months.

Both are the counts of the data set plantTraits of R's package `cluster`, whose units are not
stated there. They serve as a load of a likely shape only.
"""


def course() -> Course:
    """Return the demo course."""
    assert FOLDER.course is not None
    return FOLDER.course


def write(target: Path, years: Sequence[PlantYear]) -> Path:
    """Write the season page and the sheets of some plants, under the pages' own policy."""
    days = [session.date for session in course().sessions]
    site = SimpleNamespace(
        years=years, season_map=season_map(years, days, "map"), map_key=map_key(years),
        map_sheets=map_sheets(years, days), draft=True,
        year_notes=("Dates with “about” are estimates for another place.",) * 4,
    )  # fmt: skip
    templates = site_templates()
    values = {
        "site": site, "course": course(), "root": "", "dangers": DANGERS, "danger_of": danger_of,
        "row_words": row_words, "seen_words": seen_words, "days_words": days_words,
        "on_paper": False,
    }  # fmt: skip
    season = templates.get_template("season.html")
    sheet = "".join(season.blocks["sheet"](season.new_context(values)))
    head = (
        "<!doctype html><html lang=en><meta charset=utf-8><title>Season</title>"
        '<meta name=viewport content="width=device-width, initial-scale=1">'
        '<meta http-equiv="Content-Security-Policy" '
        "content=\"default-src 'none'; style-src 'self'; script-src 'self'\">"
        "<link rel=stylesheet href=style.css>"
    )
    style = templates.get_template("style.css").render(light=LIGHT, dark=DARK)
    (target / "style.css").write_text(style, "utf-8")
    (target / "season.js").write_text(templates.get_template("season.js").render(), "utf-8")
    (target / "season.html").write_text(f"{head}<body><main>{sheet}</main>", "utf-8")
    poster = templates.get_template("poster.html").render(values)
    (target / "poster.html").write_text(poster, "utf-8")
    return target


def made_up(count: int) -> tuple[PlantYear, ...]:
    """Return plants that nobody has seen, the same ones in every run."""
    chance = random.Random(1918)  # noqa: S311
    return tuple(_plant(chance, number) for number in range(count))


def _plant(chance: random.Random, number: int) -> PlantYear:
    first = chance.choices(range(9), FLOWERING)[0]
    lasts = chance.choices(list(LASTING), list(LASTING.values()))[0]
    flowers = "all year" if lasts == len(MONTHS) else _months(first, lasts)
    leaves = _months(chance.randrange(12), chance.randint(2, 11))
    name = " ".join(chance.choices(["Hoary", "Lesser", "water-dropwort", "nettle", "Wych"], k=3))
    food = chance.random() < 0.7
    kind = "food" if food else "look-alike\ndanger: deadly"
    text = f"---\nname: {name} {number}\ntaught as: {kind}\n---\n## Season\n"
    text += f"- leaves: {leaves}\n- flowers: {flowers}\n- roots: all year\n"
    text += f"\n## Edible parts\n- leaves: {leaves}; raw\n" if food else ""
    return plant_year(lesson_of(text, f"plant-{number}.md"), HIGHLAND)


def _months(first: int, lasts: int) -> str:
    return f"{MONTHS[first]} to {MONTHS[(first + lasts - 1) % 12]}"


LOAD = made_up(136)


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return the pages of the demo's plants."""
    return write(tmp_path_factory.mktemp("season"), DEMO)


@pytest.fixture(scope="module")
def load(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return the pages of the made-up plants."""
    return write(tmp_path_factory.mktemp("load"), LOAD)


def opened(
    browser: Browser, folder: Path, day: date, path: str = "season.html", **how: Any
) -> tuple[Page, list[str]]:
    """Return a page as it is on a day, and what the browser complains of."""
    page = browser.new_context(timezone_id="Europe/London", **how).new_page()
    said: list[str] = []
    page.on("console", lambda message: said.append(message.text))
    page.on("pageerror", lambda error: said.append(str(error)))
    page.clock.set_fixed_time(f"{day}T12:00:00")
    page.goto((folder / path).as_uri())
    return page, said


# ---- the lists of today -------------------------------------------------------------------


@dataclass(frozen=True)
class Now:
    """What Python makes of the rows on a day: each list as plant and parts."""

    food: list[tuple[str, str]]
    soon: list[tuple[str, str]]
    harm: list[tuple[str, str]]


def now_of(years: Iterable[PlantYear], day: int) -> Now:
    """Return the three lists of a day of the year."""
    lists = Now([], [], [])
    for year in years:
        now = {row: words for row in year.rows if (words := _words_now(row, day))}
        soon = [row for row in year.rows if row not in now and _begins_soon(row, day)]
        _note(lists.food, year, _to_eat([now[row] for row in now if row.kind == "eaten"]))
        _note(lists.soon, year, _to_eat(_names(soon, "eaten")))
        harm = [now[row] for row in now if row.kind == "harm"]
        _note(lists.harm, year, _harm_words(harm, _names(soon, "harm")))
    return lists


def _words_now(row: Row, day: int) -> str:
    if row.kind == "harm":
        unsure = f"perhaps {row.name}" if row.is_unsure_on(day) else ""
        return row.name if row.is_on(day) else unsure
    doubt = " (not yet sure)" * (day in row.not_sure)
    return ("perhaps " * row.is_unsure_on(day) + row.name + doubt) if row.is_on(day) else ""


def _note(into: list[tuple[str, str]], year: PlantYear, words: str) -> None:
    if words:
        into.append((year.lesson.name, words))


def _begins_soon(row: Row, day: int) -> bool:
    coming = {(day + ahead - 1) % YEAR + 1 for ahead in range(1, SOON + 1)}
    return any(window.first in coming for window in row.windows)


def _names(rows: Iterable[Row], kind: str) -> list[str]:
    return [row.name for row in rows if row.kind == kind]


def _and(words: Sequence[str]) -> str:
    return " and ".join([", ".join(words[:-1]), words[-1]] if len(words) > 1 else words)


def _to_eat(parts: Sequence[str]) -> str:
    return f"{_and(parts)} to eat" if parts else ""


def _harm_words(now: Sequence[str], soon: Sequence[str]) -> str:
    said = [("", _and(now)), ("soon ", _and(soon))]
    return "; ".join(before + names for before, names in said if names)


def listed(page: Page, ident: str) -> list[tuple[str, str]]:
    """Return a list of the page as plant and parts."""
    items: list[tuple[str, str]] = page.locator(f"#{ident} li:has(a)").evaluate_all(
        "items => items.map(i => [i.querySelector('a').textContent, i.textContent])"
    )
    return [(name, text.split(": ", 1)[1]) for name, text in items]


@pytest.mark.parametrize("day", DATES, ids=str)
def test_the_lists_of_today_are_what_python_computes(
    folder: Path, chromium: Browser, day: date
) -> None:
    page, said = opened(chromium, folder, day)
    found = Now(*(listed(page, ident) for ident in ("now-food", "soon-food", "now-harm")))
    page.context.close()
    assert said == []
    assert found == now_of(DEMO, day_of_year(day.month, day.day))


@pytest.mark.parametrize("day", DATES, ids=str)
def test_the_lists_hold_for_made_up_plants_too(load: Path, chromium: Browser, day: date) -> None:
    page, said = opened(chromium, load, day)
    found = Now(*(listed(page, ident) for ident in ("now-food", "soon-food", "now-harm")))
    page.context.close()
    assert said == []
    assert found == now_of(LOAD, day_of_year(day.month, day.day))
    assert found.food
    assert found.harm


def test_a_plant_to_keep_away_from_has_its_danger_in_the_list(
    folder: Path, chromium: Browser
) -> None:
    page, _ = opened(chromium, folder, date(2027, 5, 3))
    hemlock = page.locator("#now-harm li", has_text="Hemlock").first.inner_text()
    page.context.close()
    assert hemlock.startswith("Hemlock ▲▲ deadly: ")


def test_a_list_without_plants_says_so(tmp_path: Path, chromium: Browser) -> None:
    june = lesson_of("---\nname: Ramsons\n---\n## Season\n- flowers: June\n")
    page, _ = opened(chromium, write(tmp_path, [plant_year(june, None)]), date(2027, 1, 1))
    said = [page.locator(f"#{name}").inner_text() for name in ("now-food", "now-harm")]
    page.context.close()
    assert said == ["none of the plants of this course"] * 2


def test_a_page_left_open_over_midnight_shows_the_new_day(folder: Path, chromium: Browser) -> None:
    page, _ = opened(chromium, folder, date(2027, 1, 1))
    page.clock.set_fixed_time("2027-06-12T00:01:00")
    page.evaluate("dispatchEvent(new PageTransitionEvent('pageshow'))")
    found = listed(page, "now-food")
    drawings, lines = (page.locator(f"svg.season-map{x}").count() for x in ("", " line.today"))
    page.context.close()
    assert found == now_of(DEMO, day_of_year(6, 12)).food
    # The sheets for the wall, and their heads, tell no day.
    assert (drawings, lines) == (4, 2)


def test_without_the_script_the_lists_are_not_shown(folder: Path, chromium: Browser) -> None:
    page, _ = opened(chromium, folder, date(2027, 5, 3), java_script_enabled=False)
    seen = page.locator("#now").is_visible(), page.locator("#season-table").is_visible()
    page.context.close()
    assert seen == (False, True)


def test_the_script_does_nothing_where_its_page_is_another(
    tmp_path: Path, chromium: Browser
) -> None:
    write(tmp_path, DEMO[:2])
    page = "<!doctype html><title>x</title><script src=season.js></script><p>Nothing"
    (tmp_path / "other.html").write_text(page, "utf-8")
    shown, said = opened(chromium, tmp_path, date(2027, 5, 3), "other.html")
    text = shown.locator("body").inner_text()
    shown.context.close()
    assert (text, said) == ("Nothing", [])


# ---- the drawing --------------------------------------------------------------------------


@pytest.mark.parametrize("width", [360, 1280])
@pytest.mark.parametrize("day", DATES, ids=str)
def test_the_line_of_today_stands_at_its_day(
    folder: Path, chromium: Browser, day: date, width: int
) -> None:
    page, _ = opened(chromium, folder, day, viewport={"width": width, "height": 740})
    for drawing in page.locator("svg.season-map:not(.sheet)").all():
        box = drawing.bounding_box()
        line = drawing.locator("line.today").evaluate("e => e.getBoundingClientRect().x")
        assert box
        gone = (day_of_year(day.month, day.day) - 1) / YEAR
        assert abs(line - box["x"] - box["width"] * (0.3 + 0.7 * gone)) <= 1
    page.context.close()


@pytest.mark.parametrize("path", ["season.html", "poster.html"])
@pytest.mark.parametrize("width", [320, 360, 1280])
def test_no_page_is_wider_than_the_screen(
    folder: Path, load: Path, chromium: Browser, path: str, width: int
) -> None:
    for pages in (folder, load):
        how = {"width": width, "height": 740}
        page, said = opened(chromium, pages, date(2027, 5, 3), path, viewport=how)
        wide = page.evaluate("document.documentElement.scrollWidth")
        page.context.close()
        assert said == []
        assert wide <= width


BOXES: Final = """kind => [...document.querySelectorAll(kind)].map(e => e.getBoundingClientRect())
    .filter(b => b.width || b.height).map(b => [b.left, b.top, b.right, b.bottom])"""


def boxes(page: Page, kind: str) -> list[tuple[float, float, float, float]]:
    """Return the boxes of all that is shown of a kind: left, top, right, bottom."""
    found: list[tuple[float, float, float, float]] = page.evaluate(BOXES, kind)
    return found


@pytest.mark.parametrize("width", [320, 360, 768, 1280])
def test_all_lanes_words_and_names_lie_inside_the_drawing(
    folder: Path, load: Path, chromium: Browser, width: int
) -> None:
    for pages in (folder, load):
        how = {"width": width, "height": 740}
        page, _ = opened(chromium, pages, date(2027, 5, 3), viewport=how)
        left, top, right, bottom = boxes(page, "svg.season-map:not(.head)")[0]
        drawn = boxes(
            page, ".season-map .lane rect, .season-map .lane text, .season-map .name text"
        )
        head = boxes(page, ".season-map.head")[0][3]
        page.context.close()
        assert len(drawn) > 200
        assert head <= top + 1
        outside = [
            b for b in drawn
            if b[0] < left - 1 or b[1] < top - 1 or b[2] > right + 1 or b[3] > bottom + 1
        ]  # fmt: skip
        assert outside == []


@pytest.mark.parametrize("width", [320, 360, 768, 1280])
def test_no_two_names_overlap_and_none_reaches_into_the_year(
    folder: Path, load: Path, chromium: Browser, width: int
) -> None:
    for pages in (folder, load):
        how = {"width": width, "height": 740}
        page, _ = opened(chromium, pages, date(2027, 5, 3), viewport=how)
        names = sorted(boxes(page, ".season-map .name text"), key=lambda box: box[1])
        year = min(box[0] for box in boxes(page, ".season-map:not(.head) line.month"))
        page.context.close()
        assert len(names) >= 28
        # Boxes of letters hold room for accents and tails: lines may share two pixels of it.
        assert [b for a, b in pairwise(names) if b[1] < a[3] - 2.5] == []
        assert [box for box in names if box[2] > year + 1] == []


# ---- on paper -----------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("plants", "pages"), [(1, 1), (22, 1), (40, 1), (41, 2), (45, 2), (136, 4)]
)
def test_a_sheet_is_one_page_of_a4_on_its_side(
    tmp_path: Path, chromium: Browser, plants: int, pages: int
) -> None:
    """Printed by the browser, and measured by poppler's pdfinfo."""
    years = DEMO[:plants] if plants <= len(DEMO) else LOAD[:plants]
    page, _ = opened(chromium, write(tmp_path, years), date(2027, 5, 3), "poster.html")
    page.pdf(path=tmp_path / "poster.pdf", prefer_css_page_size=True)
    page.context.close()
    command = [str(shutil.which("pdfinfo")), str(tmp_path / "poster.pdf")]
    told = subprocess.run(command, capture_output=True, text=True, check=True, timeout=60).stdout
    facts = dict(line.split(":", 1) for line in told.splitlines() if ":" in line)
    wide, _, high = facts["Page size"].split()[:3]
    assert int(facts["Pages"]) == pages
    assert (round(float(wide)), round(float(high))) == (842, 595)


def test_on_every_sheet_stand_the_emergency_lines_and_the_names(
    tmp_path: Path, chromium: Browser, pdf_reader: str
) -> None:
    page, _ = opened(chromium, write(tmp_path, LOAD[:45]), date(2027, 5, 3), "poster.html")
    page.pdf(path=tmp_path / "poster.pdf", prefer_css_page_size=True)
    page.context.close()
    command = [pdf_reader, "-raw", str(tmp_path / "poster.pdf"), "-"]
    read = subprocess.run(command, capture_output=True, text=True, check=True, timeout=60)
    printed = ["".join(page.split()) for page in read.stdout.split("\f")[:2]]
    for text, years in zip(printed, (LOAD[:23], LOAD[23:45]), strict=True):
        assert [x for x in course().emergency if "".join(x.split()) not in text] == []
        assert "Donoteatwhatyouhavenotidentifiedwithcertainty." in text
        assert [y for y in years if "".join(y.lesson.name.split()) not in text] == []


def test_on_a_sheet_no_two_names_overlap(load: Path, chromium: Browser) -> None:
    page, _ = opened(chromium, load, date(2027, 5, 3), "poster.html")
    page.emulate_media(media="print")
    names = sorted(boxes(page, ".poster-sheet .name text"), key=lambda b: b[1])
    year = min(box[0] for box in boxes(page, ".season-map.sheet:not(.head) line.month"))
    page.context.close()
    assert len(names) >= len(LOAD)
    assert [b for a, b in pairwise(names) if b[1] < a[3] - 2.5] == []
    assert [box for box in names if box[2] > year + 1] == []
