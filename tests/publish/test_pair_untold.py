"""The pairs of which too little is written: which they are, and what is said of them."""

from __future__ import annotations

from typing import TYPE_CHECKING

from helpers.courses import pages_of, seen, site_of
from helpers.pairs import FILES

if TYPE_CHECKING:
    from collections.abc import Mapping

DEADLY = "taught as: look-alike\ndanger: deadly"
EATEN = "## Season\n- leaves: April to June\n\n## Edible parts\n- leaves: May; raw\n"
OURS = "- attachment: stalked\n- division: simple"
THEIRS = "- attachment: stalkless\n- division: pinnate"


def lesson(name: str, facts: str, head: str = "taught as: food", more: str = "") -> str:
    """Return the text of a lesson with facts of the leaves."""
    return f"---\nname: {name}\n{head}\n---\n## Identification\n### Leaves\n{facts}\n{more}"


def untold_of(
    ours: str, theirs: Mapping[str, str], more: str = EATEN
) -> list[tuple[str, list[str]]]:
    """Return what is not told apart of one food plant and of plants that harm, by name."""
    files = {f"{name}.md": lesson(name, facts, DEADLY) for name, facts in theirs.items()}
    site = site_of({"course.yml": "", "a.md": lesson("A", ours, more=more), **files})
    return [(r.words, [o.name for o in r.others]) for one in site.untold for r in one.reasons]


def test_pairs_that_no_lesson_names_and_nothing_tells_apart_are_listed_by_their_months() -> None:
    others = {"X": "- margin: entire", "Y": "- margin: entire", "Z": THEIRS,
              "W": "- attachment: stalkless"}  # fmt: skip
    assert untold_of(OURS, others) == [
        ("May: only leaves: attachment tells it from", ["W"]),
        ("May: nothing recorded tells it from", ["X", "Y"]),
    ]


def test_two_that_do_not_suffice_are_both_named() -> None:
    weak = "- gloss: glossy above matt beneath\n- length: 2 cm"
    others = {"X": "- gloss: matt above glossy beneath\n- length: 20 cm"}
    assert untold_of(weak, others) == [("May: only leaves: gloss, length tell it from", ["X"])]


def test_named_pairs_and_plants_that_do_no_grave_harm_are_not_listed() -> None:
    assert site_of(FILES).untold == ()
    harmful = lesson("H", "- margin: entire", "taught as: look-alike\ndanger: harmful")
    files = {"course.yml": "", "a.md": lesson("A", OURS, more=EATEN), "h.md": harmful}
    assert site_of(files).untold == ()


def test_months_in_which_nothing_is_gathered_or_the_other_is_not_about_are_not_listed() -> None:
    assert untold_of(OURS, {"X": "- tip: acute\n\n## Season\n- leaves: October"}) == []
    assert untold_of(OURS, {"X": "- tip: acute"}, more="") == []


def test_a_list_of_too_little_says_why_it_is_there() -> None:
    files = {"a.md": lesson("A", OURS, more=EATEN), "x.md": lesson("X", "- tip: acute", DEADLY)}
    text = seen(pages_of({"course.yml": "", **files})["look-alikes.html"]).text
    assert "they stand here because too little is written of one of the two" in text
    assert "A ❧ food May: nothing recorded tells it from X ▲▲ deadly." in text
