"""The format's section headings and the words that mean the same."""

from __future__ import annotations

from difflib import get_close_matches
from typing import Final

from sallet.lesson.vocabulary import normal

SECTIONS: Final[dict[str, tuple[str, ...]]] = {
    "identification": ("identifying features", "identify", "description", "how to know it"),
    "look-alikes": ("look alike", "lookalikes", "lookalike", "confusions", "mistaken for"),
    "season": ("seasons", "when", "times of year"),
    "edible parts": ("edible part", "parts eaten", "parts to eat"),
    "parts to remove": ("part to remove", "remove", "parts to cut away"),
    "preparation": ("preparations", "cooking", "in the kitchen", "recipes"),
    "uses": ("use", "traditional uses", "traditional use"),
    "cautions": ("caution", "warnings", "warning", "safety"),
    "habitat": ("habitats", "where it grows"),
    "range": ("ranges", "distribution"),
    "harvest": ("harvesting", "harvests", "gathering"),
    "growing": ("cultivation", "in the garden"),
    "questions": ("question",),
    "pictures": ("picture", "photographs", "photograph", "images"),
    "sources": ("source", "references", "reference", "literature"),
}
"""Each section by its name in the format, with other headings that mean the same."""

_FOUND: Final = {normal(w): name for name, also in SECTIONS.items() for w in (name, *also)}


def section_named(heading: str) -> str:
    """Return the section that a heading names, or an empty string."""
    return _FOUND.get(normal(heading.rstrip(":")), "")


def nearest_sections(heading: str) -> tuple[str, ...]:
    """Return the sections whose headings are spelt almost like this one: a slip of the pen."""
    close = get_close_matches(normal(heading), list(_FOUND), n=3, cutoff=0.75)
    return tuple(dict.fromkeys(_FOUND[word] for word in close))
