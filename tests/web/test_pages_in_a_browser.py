"""The pages as a browser and the outside checkers see them."""

from __future__ import annotations

import re
import subprocess
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest

from helpers.browsers import axe_finds
from sallet.folder import read_path
from sallet.lesson.vocabulary_file import load_vocabulary

if TYPE_CHECKING:
    from collections.abc import Iterator

    from playwright.sync_api import Browser, Page, Request

    from sallet.lesson.model import Lesson

PROJECT = Path(__file__).resolve().parents[2]

KINDS = [
    "index.html",
    "syllabus.html",
    "season.html",
    "poster.html",
    "plants/ramsons.html",
    "plants/meadow-saffron.html",
    "look-alikes.html",
    "pairs/ramsons-and-lily-of-the-valley.html",
    "key.html",
    "keys/april.html",
    "families.html",
    "words.html",
    "sources.html",
    "safety.html",
]
"""One page of each kind; a poisonous plant's page is a kind of its own."""


def _open(browser: Browser, demo: Path, path: str, **how: Any) -> Page:
    page = browser.new_context(**how).new_page()
    page.goto((demo / path).as_uri())
    return page


def test_every_page_passes_the_nu_html_checker(demo: Path, html_checker: list[str]) -> None:
    """Source: the Nu HTML checker of the W3C, against the HTML standard."""
    command = [*html_checker, "--errors-only", "--skip-non-html", str(demo)]
    run = subprocess.run(command, capture_output=True, text=True, check=False, timeout=300)
    assert run.stderr == ""
    assert run.returncode == 0
    assert len(list(demo.rglob("*.html"))) > 30


@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("path", KINDS)
def test_axe_finds_nothing(demo: Path, chromium: Browser, axe: str, path: str, scheme: Any) -> None:
    """Source: axe-core's rules for WCAG 2.2 A and AA and its best practices."""
    page = _open(chromium, demo, path, color_scheme=scheme)
    found = axe_finds(page, axe)
    page.context.close()
    assert found == []


@pytest.mark.parametrize("path", KINDS)
def test_a_page_asks_nobody_for_anything_but_the_course_itself(
    demo: Path, chromium: Browser, path: str
) -> None:
    asked: list[str] = []
    page = chromium.new_context().new_page()

    def note(request: Request) -> None:
        asked.append(request.url)

    page.on("request", note)
    page.goto((demo / path).as_uri())
    page.wait_for_load_state("networkidle")
    page.context.close()
    assert asked
    assert [url for url in asked if not url.startswith(demo.as_uri())] == []


@pytest.mark.parametrize("path", KINDS)
def test_a_page_breaks_no_rule_of_its_own_security_policy(
    demo: Path, chromium: Browser, path: str
) -> None:
    said: list[str] = []
    page = chromium.new_context().new_page()
    page.on("console", lambda message: said.append(message.text))
    page.goto((demo / path).as_uri())
    style = page.evaluate("getComputedStyle(document.querySelector('main')).borderTopStyle")
    page.context.close()
    assert said == []
    assert style == "solid"  # the style sheet was let through


@pytest.mark.parametrize("path", KINDS)
@pytest.mark.parametrize("width", [320, 360, 1280])
def test_nothing_is_wider_than_the_screen(
    demo: Path, chromium: Browser, path: str, width: int
) -> None:
    page = _open(chromium, demo, path, viewport={"width": width, "height": 740})
    wide = page.evaluate("document.documentElement.scrollWidth")
    page.context.close()
    assert wide <= width


def test_the_look_alikes_are_on_the_first_screen_of_a_small_telephone(
    demo: Path, chromium: Browser
) -> None:
    """The first double's name and danger are seen without scrolling, on every food plant."""
    page = chromium.new_context(viewport={"width": 360, "height": 640}).new_page()
    low = {}
    for path in sorted((demo / "plants").glob("*.html")):
        page.goto(path.as_uri())
        first = page.locator(".doubles li").first
        if first.count():
            box = first.bounding_box()
            low[path.stem] = box["y"] + min(box["height"], 60) if box else 9999
    page.context.close()
    assert len(low) > 20
    assert {name: y for name, y in low.items() if y > 640} == {}


def test_a_word_is_explained_where_it_stands(demo: Path, chromium: Browser) -> None:
    page = _open(chromium, demo, "plants/ramsons.html")
    word = page.get_by_role("button", name="umbel").first
    slip = page.locator(f"#{word.get_attribute('popovertarget')}")
    assert not slip.is_visible()
    word.click()
    assert slip.is_visible()
    assert "umbel (inflorescence):" in slip.inner_text()
    page.keyboard.press("Escape")
    assert not slip.is_visible()
    page.context.close()


def test_on_paper_nothing_folded_is_lost(demo: Path, chromium: Browser) -> None:
    """What a page folds away on the screen stands open on paper: answers, the year in words."""
    page = _open(chromium, demo, "plants/ramsons.html")
    page.emulate_media(media="print")
    for details in page.locator("main details").all():
        assert details.locator("> :not(summary)").first.is_visible()
    assert not page.locator("body > header nav").is_visible()
    page.context.close()


def test_on_paper_stands_every_look_alike_caution_and_part_to_remove(
    demo: Path, chromium: Browser, pdf_reader: str, tmp_path: Path
) -> None:
    """Printed by the browser, and read back by poppler's pdftotext."""
    bank = read_path(PROJECT / "lessons", load_vocabulary()).bank
    lost = {}
    for lesson in bank.lessons:
        page = _open(chromium, demo, f"plants/{lesson.slug}.html")
        page.pdf(path=tmp_path / "page.pdf", format="A4", prefer_css_page_size=True)
        page.context.close()
        command = [pdf_reader, "-raw", str(tmp_path / "page.pdf"), "-"]
        read = subprocess.run(command, capture_output=True, text=True, check=True, timeout=60)
        printed = _bare(read.stdout)
        lost[lesson.slug] = [
            words for words in _safety_words(lesson) if _bare(words) not in printed
        ]
    assert len(lost) == 28
    assert {slug: words for slug, words in lost.items() if words} == {}


def _safety_words(lesson: Lesson) -> Iterator[str]:
    """Yield what must not be missing; a long text by its beginning, up to its first citation."""
    for caution in lesson.cautions:
        yield re.split(r"  |[*_`]", caution.text.value)[0]
    for removal in lesson.removals:
        yield removal.name.value
        yield re.split(r"  |[*_`]", removal.reason.value)[0]
    for look_alike in lesson.look_alikes:
        yield look_alike.name.value
        yield look_alike.on_card


def _bare(text: str) -> str:
    return re.sub(r"\W+", "", text).casefold()
