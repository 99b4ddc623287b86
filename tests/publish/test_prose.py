"""A lesson's prose as HTML: what becomes of citations and links, and what stays text."""

from __future__ import annotations

import re

import pytest

from sallet.publish.prose import Scribe

PLACES = {
    "ramsons": {
        "leaves": "organs",
        "parts-to-remove": "removed",
        "lords-and-ladies": "double-arum",
    },
    "elder": {"season": "year"},
    "dog-rose": {},
}
SCRIBE = Scribe({"vic": 1, "ages": 2}, places=PLACES, here="ramsons")


@pytest.mark.parametrize(
    ("markdown", "html"),
    [("<script>alert(1)</script>", "&lt;script&gt;alert(1)&lt;/script&gt;"),
     ("a <b onclick='x()'>b</b>", "a &lt;b onclick='x()'&gt;b&lt;/b&gt;"),
     ("<!-- hidden -->", "&lt;!-- hidden --&gt;"),
     ("<img src=x onerror=y>", "&lt;img src=x onerror=y&gt;"),
     ("1 < 2 & 3 > 2", "1 &lt; 2 &amp; 3 &gt; 2"),
     ("`<i>`", "<code>&lt;i&gt;</code>")],
)  # fmt: skip
def test_raw_html_stays_text(markdown: str, html: str) -> None:
    assert SCRIBE.line(markdown) == html
    assert SCRIBE.text(markdown) == f"<p>{html}</p>"


@pytest.mark.parametrize(
    "target", ["javascript:alert(1)", "JavaScript:alert(1)", "vbscript:x", "data:text/html,x",
               "java&#115;cript:alert(1)", "file:///etc/passwd"],
)  # fmt: skip
def test_a_link_that_runs_something_is_no_link(target: str) -> None:
    html = SCRIBE.line(f"[press]({target}) <{target}>")
    assert "<a" not in html
    assert "press" in html


@pytest.mark.parametrize("markdown", ["![a leaf](leaf.jpg)", "![a leaf][1]\n\n[1]: leaf.jpg"])
def test_a_picture_is_never_set_in_the_text(markdown: str) -> None:
    """Pictures have a section of their own, with text, credit and licence."""
    html = SCRIBE.text(markdown)
    assert "<img" not in html
    assert "a leaf" in html


def test_a_link_to_another_host_tells_it_nothing() -> None:
    assert SCRIBE.line("[the society](https://example.org/a?b=1&c)") == (
        '<a href="https://example.org/a?b=1&amp;c" rel="noopener noreferrer">the society</a>'
    )


@pytest.mark.parametrize(
    ("target", "page"),
    [("elder.md", "elder.html"),
     ("elder.html", "elder.html"),
     ("./elder.md", "elder.html"),
     ("../lessons/elder.md", "elder.html"),
     ("<Dog rose.md>", "dog-rose.html"),
     ("Dog%20rose.md", "dog-rose.html")],
)  # fmt: skip
def test_a_link_to_a_lesson_leads_to_its_page(target: str, page: str) -> None:
    assert SCRIBE.line(f"[it]({target})") == f'<a href="{page}">it</a>'


@pytest.mark.parametrize(
    ("target", "page"),
    [("elder.md#season", "elder.html#year"),
     ("elder.md#nowhere", "elder.html"),
     ("#leaves", "#organs"),
     ("#parts-to-remove", "#removed"),
     ("#Lords-and-ladies", "#double-arum"),
     ("#nowhere", "#sheet")],
)  # fmt: skip
def test_a_link_to_a_heading_leads_to_where_the_page_sets_it(target: str, page: str) -> None:
    """A heading without a place of its own is the whole page."""
    assert SCRIBE.line(f"[it]({target})") == f'<a href="{page}">it</a>'


def test_a_lesson_that_is_not_taught_here_is_named_without_a_link() -> None:
    """A course may teach a part of the bank."""
    html = SCRIBE.line("[the *yew*](yew.md), [elder](elder.md)")
    assert html == '<span>the <em>yew</em></span>, <a href="elder.html">elder</a>'


def test_from_another_folder_a_lesson_is_found_among_the_plants() -> None:
    scribe = Scribe(plants="plants/", places=PLACES)
    assert scribe.line("[it](elder.md#season)") == '<a href="plants/elder.html#year">it</a>'


@pytest.mark.parametrize("target", ["safety.html", "../safety.html", "elder.png", "//example.org"])
def test_what_is_no_lesson_is_left_as_it_is(target: str) -> None:
    """Whether it leads anywhere is found out when the links are followed."""
    assert SCRIBE.line(f"[it]({target})") == f'<a href="{target}">it</a>'


def test_a_lesson_on_another_host_is_left_where_it_is() -> None:
    html = SCRIBE.line("[it](https://example.org/elder.md)")
    assert html == '<a href="https://example.org/elder.md" rel="noopener noreferrer">it</a>'


def test_a_citation_leads_to_its_source() -> None:
    assert SCRIBE.line("Six petals.[^ages]") == (
        'Six petals.<sup class="cite"><a href="#source-2">'
        '<span class="unseen">source </span>[2]</a></sup>'
    )


def test_what_is_from_memory_says_so() -> None:
    assert SCRIBE.line("Round.[^memory]") == (
        'Round.<sup class="cite"><a href="#source-memory"><span aria-hidden="true">[m]</span>'
        '<span class="unseen">from memory, not yet checked</span></a></sup>'
    )


def test_on_another_page_the_marks_lead_to_the_plants_own() -> None:
    scribe = Scribe({"vic": 1}, "plants/", PLACES, here="ramsons", page="plants/ramsons.html")
    html = scribe.text("Round.[^vic][^memory] See [leaves](#leaves) and [elder](elder.md#season).")
    assert re.findall(r'href="([^"]+)"', html) == [
        "plants/ramsons.html#source-1", "plants/ramsons.html#source-memory",
        "plants/ramsons.html#organs", "plants/elder.html#year",
    ]  # fmt: skip


def test_on_another_page_a_heading_that_has_no_place_is_the_plants_page() -> None:
    scribe = Scribe(plants="plants/", places=PLACES, here="ramsons", page="plants/ramsons.html")
    assert scribe.line("[it](#nowhere)") == '<a href="plants/ramsons.html#sheet">it</a>'


def test_where_there_is_no_list_of_sources_memory_leads_nowhere() -> None:
    assert Scribe().line("Round.[^memory]") == (
        'Round.<sup class="cite"><span aria-hidden="true">[m]</span>'
        '<span class="unseen">from memory, not yet checked</span></sup>'
    )


def test_a_citation_without_a_source_stands_as_written() -> None:
    assert SCRIBE.line("Round.[^lost<b>]") == 'Round.<sup class="cite">[lost&lt;b&gt;]</sup>'


def test_a_citation_in_code_is_code() -> None:
    assert SCRIBE.line("`[^ages]`") == "<code>[^ages]</code>"


def test_marks_stand_once_each_in_their_order() -> None:
    assert SCRIBE.marks(["ages", "vic", "ages"]) == SCRIBE.mark("ages") + SCRIBE.mark("vic")
    assert SCRIBE.marks([]) == ""


def test_a_line_has_no_paragraph_and_no_line_breaks() -> None:
    assert SCRIBE.line(" Wash *well*,\n leaf by leaf ") == "Wash <em>well</em>, leaf by leaf"
    assert SCRIBE.line("") == ""


def test_lists_and_paragraphs_are_set() -> None:
    assert SCRIBE.text("Wash.\n\n1. Chop.\n2. Stir.\n") == (
        "<p>Wash.</p>\n<ol>\n<li>Chop.</li>\n<li>Stir.</li>\n</ol>"
    )


def test_a_table_is_set_without_a_style_of_its_own() -> None:
    """The pages' security policy lets no style stand inside the text."""
    html = SCRIBE.text("| a | b | c | d |\n|:--|:-:|--:|---|\n| 1 | 2 | 3 | 4 |\n")
    assert "style" not in html
    assert '<th class="ranged-left">a</th>' in html
    assert '<td class="centred">2</td>' in html
    assert '<td class="ranged-right">3</td>' in html
    assert "<td>4</td>" in html
