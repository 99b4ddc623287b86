"""Links are followed before the site is written."""

from __future__ import annotations

import pytest

from sallet.publish.links import LostLink, lost_links
from sallet.publish.pages import Page

INDEX = '<p id="top">x</p><div popover id="word-a"></div>'
PLANT = '<h2 id="year">x</h2><h2 id="größe">x</h2>'
FILES = ["style.css", "pictures/leaf-480.jpg", "pictures/leaf-960.jpg"]


def lost(html: str, path: str = "plants/elder.html") -> list[str]:
    """Return the targets of a page that lead nowhere."""
    pages = [Page("index.html", INDEX), Page("plants/ramsons.html", PLANT), Page(path, html)]
    found = list(lost_links(pages, FILES))
    assert {link.page for link in found} <= {path}
    return [link.target for link in found]


@pytest.mark.parametrize(
    "html",
    ['<a href="ramsons.html">x</a>', '<a href="ramsons.html#year">x</a>', '<a href="#">x</a>',
     '<a href="../index.html#top">x</a>', '<link href="../style.css">', '<i id="a"></i><a href="#a">',
     '<a href="ramsons.html#gr%C3%B6%C3%9Fe">x</a>', '<a href="./ramsons.html">x</a>',
     '<a href="https://example.org/">x</a>', '<a href="mailto:a@example.org">x</a>',
     '<a href="tel:999">x</a>', '<img src="../pictures/leaf-480.jpg">', "<a>x</a>",
     '<img srcset="../pictures/leaf-480.jpg 480w, ../pictures/leaf-960.jpg 960w">',
     '<div id="s"></div><button popovertarget="s">'],
)  # fmt: skip
def test_a_link_that_leads_somewhere_is_not_lost(html: str) -> None:
    assert lost(html) == []


@pytest.mark.parametrize(
    ("html", "target"),
    [('<a href="yew.html">x</a>', "yew.html"),
     ('<a href="ramsons.html#lost">x</a>', "ramsons.html#lost"),
     ('<a href="#lost">x</a>', "#lost"),
     ('<a href="index.html">x</a>', "index.html"),
     ('<a href="/index.html">x</a>', "/index.html"),
     ('<a href="../../index.html">x</a>', "../../index.html"),
     ('<a href="Ramsons.html">x</a>', "Ramsons.html"),
     ('<link href="style.css">', "style.css"),
     ('<img src="../pictures/leaf.jpg">', "../pictures/leaf.jpg"),
     ('<source srcset="../pictures/leaf-480.jpg 480w, ../pictures/no.jpg 960w">',
      "../pictures/no.jpg"),
     ('<button popovertarget="lost">', "#lost"),
     ('<a href="javascript:alert(1)">x</a>', "javascript:alert(1)"),
     ('<a href="file:///etc/passwd">x</a>', "file:///etc/passwd"),
     ('<a href="//example.org/">x</a>', "//example.org/")],
)  # fmt: skip
def test_a_link_that_leads_nowhere_is_lost(html: str, target: str) -> None:
    assert lost(html) == [target]


def test_every_lost_link_is_told_with_its_page() -> None:
    pages = [Page("a.html", '<a href="b.html"><a href="c.html">'), Page("d.html", '<a href="#e">'),
             Page("style.css", '<a href="lost.html">')]  # fmt: skip
    assert list(lost_links(pages, [])) == [
        LostLink("a.html", "b.html"), LostLink("a.html", "c.html"), LostLink("d.html", "#e"),
    ]  # fmt: skip
