"""The pages of two plants and the tables of all pairs in a browser: today, widths, keys, paper."""

from __future__ import annotations

from datetime import date, timedelta
from pathlib import Path
from typing import TYPE_CHECKING, Any, Final

import pytest

from helpers.browsers import axe_finds
from helpers.courses import site_of
from helpers.pairs import FILES
from sallet.folder import read_path
from sallet.lesson.values.times import MONTHS, YEAR, day_of_year
from sallet.lesson.vocabulary_file import load_vocabulary
from sallet.publish.pages import build_pages
from sallet.publish.site import Site

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from playwright.sync_api import Browser, Page

    from sallet.publish.pair_pages import PairPage
    from sallet.publish.pair_table import PairRow

PROJECT = Path(__file__).resolve().parents[2]
FOLDER = read_path(PROJECT / "demo_course", load_vocabulary())
PAIR: Final = "pairs/ramsons-and-lily-of-the-valley.html"
WATCHED: Final = (
    PAIR,
    "pairs/ramsons-and-few-flowered-garlic.html",
    "pairs/dandelion-and-common-ragwort.html",
    "pairs/watercress-and-hemlock-water-dropwort.html",
)
"""Pairs with a time over the new year and without one, described in place and in two lessons."""
LOOK_ALIKES: Final = "look-alikes.html"


def demo_site() -> Site:
    """Return the demo course as its pages show it."""
    assert FOLDER.course is not None
    return Site(FOLDER.course, FOLDER.bank, FOLDER.lessons, (), {})


def opened(browser: Browser, folder: Path, path: str, **how: Any) -> Page:
    """Return a page of a course, on 1 May 2027."""
    page = browser.new_context(**how).new_page()
    page.clock.set_fixed_time("2027-05-01T09:00:00")
    page.goto((folder / path).as_uri())
    return page


# ---- today --------------------------------------------------------------------------------


def is_seen(row: PairRow, day: int) -> bool:
    """Return whether a row can be looked at on a day of the year."""
    return any(day in window for window in row.windows)


def named(rows: Iterable[PairRow]) -> str:
    """Return features by organ: `leaves: gloss, tip; flowers: petals`."""
    organs: dict[str, list[str]] = {}
    for row in rows:
        organs.setdefault(row.organ, []).append(row.name)
    return "; ".join(f"{organ}: {', '.join(names)}" for organ, names in organs.items())


def sentence(page: PairPage, when: date) -> str:
    """Return what the page says of a day."""
    day = day_of_year(when.month, when.day)
    rows = [row for group in page.groups for row in group.rows if is_seen(row, day)]
    firm, others = (named(r for r in rows if r.telling == kind) for kind in ("firm", "other"))
    names = f"{firm}; less sure: {others}" if firm and others else firm or others
    today = f"Today, {when.day} {MONTHS[when.month - 1]}"
    if any(day in window for window in page.sure):
        return f"{today}: look at {names}."
    none = f"{today}, nothing that can be seen tells them apart surely."
    return f"{none} To be seen: {names}." if names else none


EVERY_DAY: Final = """async days => {
    const found = [];
    for (const day of days) {
        window.__day = day;
        dispatchEvent(new PageTransitionEvent("pageshow"));
        const marked = [...document.querySelectorAll("tr.seen-now")];
        found.push([document.getElementById("today").textContent,
                    marked.map(row => row.dataset.label),
                    marked.filter(row => row.querySelectorAll(".now").length !== 1).length]);
    }
    return found;
}"""
"""The page's own script on every day, one after the other: `Date` is set by the test."""
SET_DATE: Final = """(() => {
    const Real = Date;
    window.__day = "2027-01-01";
    window.Date = class extends Real {
        constructor(...args) { super(...(args.length ? args : [window.__day + "T09:00:00"])); }
    };
})()"""


def test_what_is_marked_today_is_what_python_computes_on_every_day_of_two_years(
    demo: Path, chromium: Browser
) -> None:
    """A leap year is among them: 29 February is the 28th there."""
    first = date(2027, 1, 1)
    days = [first + timedelta(days=ahead) for ahead in range(YEAR + 366)]
    pages = {page.pair.path: page for page in demo_site().pairs}
    verdicts = set()
    for path in WATCHED:
        shown = chromium.new_context().new_page()
        shown.add_init_script(SET_DATE)
        shown.goto((demo / path).as_uri())
        found = shown.evaluate(EVERY_DAY, [day.isoformat() for day in days])
        shown.context.close()
        wanted = [_wanted(pages[path], day) for day in days]
        assert [(said, marked) for said, marked, _ in found] == wanted
        assert {wrong for _, _, wrong in found} == {0}
        verdicts |= {"nothing that can be seen" in said for said, _ in wanted}
    assert verdicts == {True, False}


def _wanted(page: PairPage, when: date) -> tuple[str, list[str]]:
    day = day_of_year(when.month, when.day)
    rows = [row for group in page.groups for row in group.rows if is_seen(row, day)]
    return sentence(page, when), [row.name for row in rows]


def test_a_day_that_is_not_sure_looks_otherwise_and_says_so(demo: Path, chromium: Browser) -> None:
    page = opened(chromium, demo, PAIR)
    page.clock.set_fixed_time("2027-01-10T09:00:00")
    page.evaluate("dispatchEvent(new PageTransitionEvent('pageshow'))")
    line = page.locator("#today")
    said, kind = line.inner_text(), line.get_attribute("class")
    page.context.close()
    assert said == "Today, 10 January, nothing that can be seen tells them apart surely."
    assert kind == "today doubt"


def test_without_the_script_nothing_is_lost_but_today(demo: Path, chromium: Browser) -> None:
    page = opened(chromium, demo, PAIR, java_script_enabled=False)
    seen = [
        page.locator(name).first.is_visible() for name in ("#today", "table tr.firm", ".spells")
    ]
    page.context.close()
    assert seen == [False, True, True]


# ---- the table ----------------------------------------------------------------------------


def test_what_tells_apart_is_all_that_is_shown_until_one_asks_for_the_rest(
    demo: Path, chromium: Browser
) -> None:
    page = opened(chromium, demo, PAIR)
    plain, telling = page.locator("tr.plain"), page.locator("tr.firm, tr.other")
    before = plain.first.is_visible(), telling.first.is_visible()
    page.get_by_role("checkbox").press("Space")
    after = plain.first.is_visible(), telling.first.is_visible()
    count = plain.count()
    page.context.close()
    assert (before, after) == ((False, True), (True, True))
    assert count > 20


def test_on_a_small_telephone_the_first_feature_stands_before_the_drawings(
    demo: Path, chromium: Browser
) -> None:
    page = opened(chromium, demo, PAIR, viewport={"width": 360, "height": 640})
    tops = [
        page.locator(name).first.evaluate("e => e.getBoundingClientRect().top + scrollY")
        for name in ("#today", ".spells li", "tr.firm", "figure.beside", "#told")
    ]
    page.context.close()
    assert tops == sorted(tops)
    assert tops[0] < 400


def test_on_a_small_telephone_the_plants_names_stay_in_sight(demo: Path, chromium: Browser) -> None:
    page = opened(chromium, demo, PAIR, viewport={"width": 360, "height": 640})
    page.locator("tr.other").last.scroll_into_view_if_needed()
    head = page.locator(".beside-table thead").bounding_box()
    page.context.close()
    assert head
    assert 0 <= head["y"] < 640


@pytest.mark.parametrize("path", [*WATCHED, LOOK_ALIKES])
@pytest.mark.parametrize("width", [320, 360, 1280])
def test_nothing_is_wider_than_the_screen(
    demo: Path, chromium: Browser, path: str, width: int
) -> None:
    page = opened(chromium, demo, path, viewport={"width": width, "height": 740})
    wide = page.evaluate("document.documentElement.scrollWidth")
    page.context.close()
    assert wide <= width


@pytest.mark.parametrize("path", [PAIR, LOOK_ALIKES])
@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_axe_finds_nothing_on_a_small_telephone(
    demo: Path, chromium: Browser, axe: str, path: str, scheme: Any
) -> None:
    """Source: axe-core's rules for WCAG 2.2 A and AA and its best practices."""
    how = {"width": 360, "height": 740}
    page = opened(chromium, demo, path, color_scheme=scheme, viewport=how)
    found = axe_finds(page, axe)
    page.context.close()
    assert found == []


@pytest.mark.parametrize("path", [PAIR, LOOK_ALIKES])
def test_a_page_breaks_no_rule_of_its_own_security_policy(
    demo: Path, chromium: Browser, path: str
) -> None:
    said: list[str] = []
    page = chromium.new_context().new_page()
    page.on("console", lambda message: said.append(message.text))
    page.on("pageerror", lambda error: said.append(str(error)))
    page.goto((demo / path).as_uri())
    page.wait_for_load_state("networkidle")
    page.context.close()
    assert said == []


# ---- all pairs ----------------------------------------------------------------------------


def test_the_heads_of_a_table_stay_in_sight_and_it_moves_by_the_keys(
    demo: Path, chromium: Browser
) -> None:
    page = opened(chromium, demo, LOOK_ALIKES, viewport={"width": 360, "height": 640})
    box = page.locator(".matrix").first
    box.focus()
    for key in ("ArrowRight", "ArrowDown"):
        for _ in range(6):
            page.keyboard.press(key)
    page.wait_for_timeout(300)
    moved = box.evaluate("e => [e.scrollLeft, e.scrollTop]")
    edges = box.evaluate(
        """e => { const b = e.getBoundingClientRect();
            const last = e.querySelector('tbody tr:last-child th').getBoundingClientRect();
            const head = e.querySelector('thead th:last-child').getBoundingClientRect();
            return [last.left - b.left, head.top - b.top]; }"""
    )
    page.context.close()
    assert min(moved) > 20
    assert edges == [0, 0]


def test_every_link_of_a_table_is_large_enough_for_a_finger(demo: Path, chromium: Browser) -> None:
    """Source: WCAG 2.2, 2.5.8: 24 by 24 pixels."""
    page = opened(chromium, demo, LOOK_ALIKES, viewport={"width": 360, "height": 640})
    small = page.locator(".matrix td a").evaluate_all(
        "all => all.map(a => a.getBoundingClientRect()).filter(b => b.width < 24 || b.height < 24).length"
    )
    count = page.locator(".matrix td a").count()
    page.context.close()
    assert small == 0
    assert count > 10


def written(target: Path, files: Mapping[str, str]) -> Path:
    """Write the pages of a course."""
    for page in build_pages(site_of(files)):
        path = target / page.path
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(page.text, "utf-8")
    return target


def test_on_paper_all_characters_stand_and_no_table_is_cut(
    tmp_path: Path, chromium: Browser
) -> None:
    """A table of as many columns as one has is no wider than the paper."""
    many = {
        f"{n}.md": f"---\nname: Some plant {n}\ntaught as: food\n---\n" for n in range(30)
    }  # fmt: skip
    folder = written(tmp_path, {**FILES, **many})
    page = opened(chromium, folder, PAIR)
    page.emulate_media(media="print")
    assert page.locator("tr.plain").first.is_visible()
    assert not page.locator("#today").is_visible()
    page.set_viewport_size({"width": 680, "height": 900})  # A4 less its margins, at 96 to the inch
    page.goto((folder / LOOK_ALIKES).as_uri())
    widest = page.locator(".matrix table").evaluate_all(
        "all => Math.max(...all.map(t => t.getBoundingClientRect().width))"
    )
    page.context.close()
    assert widest <= 680
