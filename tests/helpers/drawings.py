"""Drawings in the tests: plants from their facts, SVG as it is drawn."""

from __future__ import annotations

import xml.etree.ElementTree as ET
from collections import Counter
from typing import TYPE_CHECKING

from helpers.workshop import lesson_of
from sallet.drawing.ink import plain
from sallet.drawing.svg import ink_svg

if TYPE_CHECKING:
    from sallet.drawing.ink import Ink
    from sallet.lesson.model import Fact

SVG = "{http://www.w3.org/2000/svg}"


def facts_of(identification: str) -> tuple[Fact, ...]:
    """Return the facts that stand under Identification."""
    text = f"---\nname: Ramsons\n---\n## Identification\n{identification}\n"
    return lesson_of(text).facts


def elements_of(ink: Ink, ident: str = "x") -> ET.Element:
    """Return a drawing's SVG, parsed."""
    return parsed(f'<svg xmlns="http://www.w3.org/2000/svg">{ink_svg(ink, ident)}</svg>')


def parsed(text: str) -> ET.Element:
    """Return SVG as it stands in a page, parsed."""
    text = str(text)
    if "xmlns" not in text[:200]:
        text = text.replace("<svg ", '<svg xmlns="http://www.w3.org/2000/svg" ', 1)
    return ET.fromstring(text)  # noqa: S314 - our own SVG


def parts_of(ink: Ink) -> Counter[str]:
    """Return how often each part is drawn, counted from the SVG, its copies resolved."""
    root = elements_of(ink)
    defined = {e.get("id"): e for e in root.iter() if e.get("id")}
    counts: Counter[str] = Counter()

    def visit(element: ET.Element) -> None:
        counts.update((element.get("class") or "").split())
        if element.tag == f"{SVG}use":
            visit(defined[(element.get("href") or "")[1:]])
        for child in element:
            if child.tag != f"{SVG}defs":
                visit(child)

    visit(root)
    return counts


def points_of(ink: Ink) -> list[complex]:
    """Return every point of a drawing."""
    return [point for mark in plain(ink) for point in mark.path.points()]
