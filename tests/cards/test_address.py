"""The page's address on a card, and the code that a telephone reads."""

from __future__ import annotations

from string import ascii_lowercase

import pytest
from hypothesis import given
from hypothesis import strategies as st

from helpers.courses import pages_of
from helpers.keys import HEDGE
from helpers.qr import level_and_mask, read_qr
from sallet.cards.address import address_of


def test_a_course_without_an_address_has_none_on_its_cards() -> None:
    assert address_of("", "ramsons") is None


@pytest.mark.parametrize("course", ["https://example.org/course/", "https://example.org/course"])
def test_a_plant_s_page_lies_below_the_course_s_address(course: str) -> None:
    address = address_of(course, "dog-rose")
    assert address is not None
    assert address.url == "https://example.org/course/plants/dog-rose.html"


def test_every_address_is_that_of_a_page_of_the_course() -> None:
    pages = pages_of(HEDGE)
    slugs = [path.removesuffix(".md") for path in HEDGE if path.endswith(".md")]
    addresses = [address_of("https://example.org/", slug) for slug in slugs]
    paths = [a.url.removeprefix("https://example.org/") for a in addresses if a]
    assert set(paths) == {path for path in pages if path.startswith("plants/") and "html" in path}


def test_the_squares_are_those_that_a_reader_expects() -> None:
    """A finder in three corners; error correction M, which stands a scratch (ISO/IEC 18004)."""
    address = address_of("https://example.org", "ramsons")
    assert address is not None
    squares = address.squares
    assert {len(row) for row in squares} == {len(squares)}
    finder = ("1111111", "1000001", "1011101", "1011101", "1011101", "1000001", "1111111")
    assert tuple(row[:7] for row in squares[:7]) == finder
    assert tuple(row[-7:] for row in squares[:7]) == finder
    assert tuple(row[:7] for row in squares[-7:]) == finder
    assert level_and_mask(squares)[0] == "M"


SLUGS = st.text(ascii_lowercase + "-", min_size=1, max_size=40)


@given(SLUGS, st.sampled_from(["https://a.de", "http://example.org:8080/hedge,wood/and~beck/"]))
def test_the_code_says_the_address(slug: str, course: str) -> None:
    address = address_of(course, slug)
    assert address is not None
    assert read_qr(address.squares) == address.url
    assert address_of(course, slug) == address
