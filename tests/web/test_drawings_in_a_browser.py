"""The drawings as a browser lays them down: ink, paper, scale, words."""

from __future__ import annotations

import io
from typing import TYPE_CHECKING, Any

import pytest
from PIL import Image, ImageChops

if TYPE_CHECKING:
    from pathlib import Path

    from playwright.sync_api import Browser, Page

PLANTS = ["sweet-cicely", "hemlock", "ramsons"]
"""Plants whose drawings copy pieces, with thin and fine lines and dots."""


def opened(browser: Browser, demo: Path, path: str, **how: Any) -> Page:
    """Return a page of the demo, opened."""
    page = browser.new_context(**how).new_page()
    page.goto((demo / path).as_uri())
    return page


@pytest.mark.parametrize("plant", PLANTS)
def test_copies_are_drawn_in_the_paper_s_colours(demo: Path, chromium: Browser, plant: str) -> None:
    """A rule that does not reach into a copy leaves it black: no colour of the dark page is."""
    page = opened(chromium, demo, f"plants/{plant}.html", color_scheme="dark")
    shots = [
        page.locator(".plate-figures svg").nth(number).screenshot()
        for number in range(page.locator(".plate-figures svg").count())
    ]
    page.context.close()
    assert len(shots) > 5
    assert [shot for shot in map(_darkest, shots) if shot < 10] == []


def _darkest(shot: bytes) -> int:
    """Return the least of the lightest channel of any pixel: 0 where one is black."""
    red, green, blue = Image.open(io.BytesIO(shot)).convert("RGB").split()
    lightest = ImageChops.lighter(ImageChops.lighter(red, green), blue)
    return next(level for level, count in enumerate(lightest.histogram()) if count)


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_ink_stands_out_from_the_paper(demo: Path, chromium: Browser, scheme: Any) -> None:
    """3:1 for what is drawn (WCAG 2.2, 1.4.11), whatever the pen."""
    page = opened(chromium, demo, "plants/hemlock.html", color_scheme=scheme)
    colours = page.evaluate(
        """() => [...document.querySelectorAll('.plate-figures path')].map(path => {
            const style = getComputedStyle(path);
            return style.stroke === 'none' ? style.fill : style.stroke;
        })"""
    )
    paper = page.evaluate("getComputedStyle(document.querySelector('main')).backgroundColor")
    page.context.close()
    drawn = {colour for colour in colours if colour != "none"}
    assert len(colours) > 100
    assert min(_contrast(colour, paper) for colour in drawn - {paper}) >= 3


def _contrast(one: str, other: str) -> float:
    """Source: WCAG 2.2, relative luminance and contrast ratio."""
    lights = sorted((_luminance(one), _luminance(other)), reverse=True)
    return (lights[0] + 0.05) / (lights[1] + 0.05)


def _luminance(colour: str) -> float:
    parts = [float(part) / 255 for part in colour[colour.index("(") + 1 : -1].split(",")[:3]]
    linear = [p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


@pytest.mark.parametrize("width", [320, 360, 1280])
def test_no_drawing_is_wider_than_its_page(demo: Path, chromium: Browser, width: int) -> None:
    page = opened(
        chromium, demo, "plants/white-dead-nettle.html", viewport={"width": width, "height": 740}
    )
    boxes = page.evaluate(
        """() => [...document.querySelectorAll('svg.drawing')].map(
            svg => [svg.getBoundingClientRect().left, svg.getBoundingClientRect().right])"""
    )
    page.context.close()
    assert len(boxes) > 10
    assert [box for box in boxes if box[0] < 0 or box[1] > width] == []


def test_what_stands_beside_what_keeps_one_scale_on_a_telephone(
    demo: Path, chromium: Browser
) -> None:
    """Both bars of a pair at one scale are equally long on the screen too."""
    page = opened(
        chromium, demo, "plants/white-dead-nettle.html", viewport={"width": 320, "height": 740}
    )
    pairs = page.evaluate(
        """() => [...document.querySelectorAll('.beside')]
            .filter(figure => figure.querySelector('figcaption').textContent.includes('at one scale')
                && !figure.querySelector('figcaption').textContent.includes('not at'))
            .map(figure => [...figure.querySelectorAll('path.bar')]
                .map(bar => Math.round(bar.getBoundingClientRect().width * 10)))"""
    )
    page.context.close()
    assert len(pairs) > 0
    assert [bars for bars in pairs if len(bars) != 2 or bars[0] != bars[1]] == []


def test_a_word_leads_to_its_drawing(demo: Path, chromium: Browser) -> None:
    page = opened(chromium, demo, "plants/ramsons.html")
    word = page.get_by_role("button", name="umbel").first
    slip = page.locator(f"#{word.get_attribute('popovertarget')}")
    word.click()
    slip.get_by_role("link", name="Its drawing").click()
    page.wait_for_url("**/words.html#flowers-inflorescence-umbel")
    assert page.locator("#flowers-inflorescence-umbel svg").count() == 1
    page.context.close()


def test_every_drawing_says_what_it_is(demo: Path, chromium: Browser) -> None:
    """A drawing has a name and a description for those who cannot see it."""
    page = opened(chromium, demo, "plants/ramsons.html")
    names = page.evaluate(
        """() => [...document.querySelectorAll('svg.drawing')].map(svg =>
            svg.getAttribute('aria-labelledby').split(' ').map(
                id => document.getElementById(id).textContent))"""
    )
    page.context.close()
    assert len(names) > 8
    for title, words in names:
        assert title.startswith("Ramsons")
        assert "Drawn from what is recorded: " in words


@pytest.mark.parametrize("plant", PLANTS)
def test_a_plate_s_file_is_drawn_by_itself(demo: Path, chromium: Browser, plant: str) -> None:
    page = opened(chromium, demo, f"plates/{plant}.svg", viewport={"width": 800, "height": 1000})
    image = Image.open(io.BytesIO(page.screenshot())).convert("L")
    page.context.close()
    ink = sum(image.histogram()[:128]) / (image.width * image.height)
    assert 0.005 < ink < 0.2
