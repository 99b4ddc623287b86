"""The plate of a plant on its page and as a file."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from helpers.drawings import SVG, facts_of, parsed
from sallet.drawing.figures import figures
from sallet.lesson.vocabulary_file import load_vocabulary
from sallet.publish.plates import plate_figures, plate_file

if TYPE_CHECKING:
    from sallet.drawing.figures import Figure

VOCABULARY = load_vocabulary()
LEAF = (
    "### Leaves\n- division: simple\n- shape: elliptic to ovate\n- margin: entire\n- tip: acute\n"
    "- base: rounded\n- attachment: stalked (lower leaves), stalkless (upper leaves)\n"
)
LONG = LEAF + "- length: 4–6 cm\n"


def drawn(identification: str) -> tuple[Figure, ...]:
    """Return the figures of a plant."""
    return figures(facts_of(identification), VOCABULARY)


def test_a_plate_has_letters_in_order() -> None:
    found = plate_figures("Ramsons", drawn(LONG))
    assert [(f.letter, f.words) for f in found] == [("a", "leaf (lower)"), ("b", "leaf (upper)")]


def test_no_two_ids_on_a_plate_are_the_same() -> None:
    text = "".join(f.svg for f in plate_figures("Ramsons", drawn(LONG)))
    idents = re.findall(r' id="([^"]+)"', text)
    assert len(idents) == len(set(idents)) > 0


def test_a_plate_s_file_stands_by_itself() -> None:
    root = parsed(plate_file("Ramsons", "Allium ursinum L.", drawn(LONG)))
    assert root.tag == f"{SVG}svg"
    assert [e.text for e in root.iter(f"{SVG}desc")] == [
        "a leaf (lower); b leaf (upper). Dotted: not recorded."
    ]
    letters = [e.text for e in root.iter(f"{SVG}text") if e.get("class") == "letter"]
    assert letters == ["a", "b"]
    assert "var(" not in str(plate_file("Ramsons", "", drawn(LONG)))
