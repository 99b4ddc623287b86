"""What may stand anywhere in a lesson: sources, links, pictures in the text, raw HTML."""

from __future__ import annotations

import pytest

from sallet.lesson.markup import Markup
from sallet.source import Source

TEXT = """Garlic.[^a] See [Elder](elder.md) and [Elder](elder.md).

[^a]: Hess, Landolt
  and Hirzel.

- bullet: [^b]
  [^b]: Stace.

| t |
|---|
| [web](https://example.org/) <br> |

> [^c]: Quoted.

[![small](s.png)](big.md) ![p](<a b.png>)
<https://example.org/x>
"""


def markup(text: str) -> Markup:
    """Return the blocks of a text."""
    return Markup(Source("a.md", text), 0)


def test_sources_are_found_wherever_they_are_defined() -> None:
    notes = list(markup(TEXT).footnotes())
    assert [(n.key, n.text) for n in notes] == [
        ("a", "Hess, Landolt and Hirzel."), ("b", "Stace."), ("c", "Quoted."),
    ]  # fmt: skip
    assert [TEXT[n.span.start : n.span.start + 5] for n in notes[:2]] == ["[^a]:", "[^b]:"]


def test_a_key_that_is_defined_twice_is_found_twice() -> None:
    notes = list(markup("x[^a]\n\n[^a]: One.\n[^a]: Two.\n").footnotes())
    assert [note.text for note in notes] == ["One.", "Two."]


def test_links_and_pictures_are_found_in_their_order_each_at_its_own_place() -> None:
    links = list(markup(TEXT).links())
    assert [(link.target, link.is_picture) for link in links] == [
        ("elder.md", False), ("elder.md", False), ("https://example.org/", False),
        ("s.png", True), ("big.md", False), ("a b.png", True), ("https://example.org/x", False),
    ]  # fmt: skip
    assert all(TEXT[link.span.start : link.span.end] == link.target for link in links)
    assert links[0].span.start < links[1].span.start


@pytest.mark.parametrize(
    "target", ["javascript:alert(1)", "data:text/html,x", "//x", "é.md", "a%20b"]
)
def test_every_target_is_kept_as_it_was_written(target: str) -> None:
    (link,) = markup(f"[x]({target})").links()
    assert (link.target, link.span.start) == (target, 4)


def test_a_target_that_is_defined_elsewhere_is_shown_where_the_link_stands() -> None:
    (link,) = markup("One.\n\nSee [x].\n\n[x]: elder.md\n").links()
    assert (link.target, link.span.start) == ("elder.md", 6)


def test_an_empty_target_is_a_link() -> None:
    (link,) = markup("See [x]().").links()
    assert (link.target, link.span.start) == ("", 6)


def test_raw_html_is_found_at_its_place() -> None:
    text = "a <b>c</b> <b>\n\n<div>\nx\n</div>\n\n- y <!-- z -->\n"
    found = list(markup(text).raw_html())
    assert sorted(html.value for html in found) == [
        "<!-- z -->", "</b>", "<b>", "<b>", "<div>\nx\n</div>",
    ]  # fmt: skip
    assert all(text[html.span.start : html.span.end] == html.value for html in found)
    assert len({html.span for html in found}) == 5
