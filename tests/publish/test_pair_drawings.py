"""Two plants in one drawing."""

from __future__ import annotations

import re

import pytest

from helpers.drawings import SVG, facts_of, parsed
from sallet.drawing.figures import figures
from sallet.drawing.pairs import Plant
from sallet.lesson.vocabulary_file import load_vocabulary
from sallet.publish.pair_drawings import PairFigure, pair_figures

VOCABULARY = load_vocabulary()
LEAF = (
    "### Leaves\n- division: simple\n- shape: elliptic to ovate\n- margin: entire\n- tip: acute\n"
    "- base: rounded\n- attachment: stalked (lower leaves), stalkless (upper leaves)\n"
)
ARUM = LEAF.replace("stalked (lower leaves), stalkless (upper leaves)", "stalked")


def beside(this: str, that: str) -> tuple[PairFigure, ...]:
    """Return the drawings in which two plants differ."""
    ours, theirs = (
        (name, Plant(facts, figures(facts, VOCABULARY)))
        for name, facts in (("Ramsons", facts_of(this)), ("Arum & co", facts_of(that)))
    )
    return pair_figures(ours, theirs, VOCABULARY, "x")


def test_pins_stand_on_both_plants_with_the_same_numbers() -> None:
    (found,) = beside(LEAF + "- venation: parallel\n", ARUM + "- venation: net-veined\n")
    assert [d.label for d in found.differences] == ["venation"]
    texts = parsed(found.svg).iter(f"{SVG}text")
    assert [e.text for e in texts if e.get("class") == "pin"] == ["1", "1"]


def test_both_plants_are_named_below_and_in_the_title() -> None:
    (found,) = beside(LEAF + "- venation: parallel\n", ARUM + "- venation: net-veined\n")
    root = parsed(found.svg)
    names = [e.text for e in root.iter(f"{SVG}text") if e.get("class") == "plant"]
    assert names == ["Ramsons", "Arum & co"]
    assert [e.text for e in root.iter(f"{SVG}title")] == ["Ramsons and Arum & co: leaf"]
    (desc,) = root.iter(f"{SVG}desc")
    assert "Ramsons: Drawn from what is recorded: " in (desc.text or "")
    assert "Arum & co: Drawn from what is recorded: " in (desc.text or "")


def test_no_two_ids_are_the_same() -> None:
    found = beside(
        "### Leaves\n- arrangement: alternate\n", "### Leaves\n- arrangement: opposite\n"
    )
    idents = re.findall(r' id="([^"]+)"', "".join(f.svg for f in found))
    assert len(idents) == len(set(idents)) > 3


@pytest.mark.parametrize(("ours", "theirs"), [("5 cm", "5 cm"), ("10 cm", "5 cm")])
def test_at_one_scale_the_bars_are_equally_long(ours: str, theirs: str) -> None:
    (found,) = beside(
        LEAF + f"- venation: parallel\n- length: {ours}\n",
        ARUM + f"- venation: net-veined\n- length: {theirs}\n",
    )
    assert found.one_scale
    root = parsed(found.svg)
    bars = [
        e.get("d", "").split("h")[1] for e in root.iter(f"{SVG}path") if e.get("class") == "bar"
    ]
    words = [e.text for e in root.iter(f"{SVG}text") if e.get("class") == "bar"]
    assert len(bars) == 2
    assert len(set(bars)) == len(set(words)) == 1


def test_everything_lies_within_the_drawing() -> None:
    (found,) = beside(
        LEAF + "- venation: parallel\n- length: 5 cm\n",
        ARUM + "- venation: net-veined\n- length: 1 cm\n",
    )
    root = parsed(found.svg)
    left, top, width, height = map(float, (root.get("viewBox") or "").split())
    for text in root.iter(f"{SVG}text"):
        x, y = float(text.get("x", 0)), float(text.get("y", 0))
        assert left <= x
        assert (
            x + 6 * len(text.text or "") / (2 if text.get("class") == "pin" else 1) <= left + width
        )
        assert top <= y <= top + height
