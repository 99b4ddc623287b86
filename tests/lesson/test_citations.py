"""References to sources, and what only looks like one."""

from __future__ import annotations

import pytest

from sallet.lesson.citations import citations_in, without_citations
from sallet.source import Source, Span


def keys(text: str) -> list[str]:
    """Return the keys cited in a text."""
    source = Source("a.md", text)
    found = list(citations_in(source, Span(0, len(text))))
    assert all(source.words(c.span) == f"[^{c.key}]" for c in found)
    return [c.key for c in found]


@pytest.mark.parametrize(
    ("text", "expected"),
    [("Garlic.[^flora]", ["flora"]), ("Garlic[^a][^b-2].", ["a", "b-2"]),
     ("As told[^a]: garlic.", ["a"]), ("| x[^a] |", ["a"]), ("none", []), ("[a] [^ b] [^]", [])],
)  # fmt: skip
def test_references_are_found_with_their_keys(text: str, expected: list[str]) -> None:
    assert keys(text) == expected


@pytest.mark.parametrize("before", ["", "  ", "> ", "- ", "12. ", "* > "])
def test_a_definition_is_no_reference_but_those_inside_it_are(before: str) -> None:
    assert keys(f"{before}[^a]: Hess.[^b]") == ["b"]


def test_only_the_run_asked_for_is_looked_at() -> None:
    source = Source("a.md", "[^a] [^b] [^c]")
    assert [c.key for c in citations_in(source, Span(4, 9))] == ["b"]


def test_citations_give_way_to_blanks_so_that_places_hold() -> None:
    assert without_citations("raw[^a], cooked[^b]") == "raw    , cooked"
