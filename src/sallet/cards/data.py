"""A card as the values that its template is given."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from sallet.cards.strip import strip_data
from sallet.lesson.dangers import DANGERS

if TYPE_CHECKING:
    from collections.abc import Iterable

    from sallet.cards.model import Block, Card, Line, Side
    from sallet.cards.plain import Run
    from sallet.cards.sizes import CardSize


Runs = list[list[str]]
"""Words with their style, as JSON holds them."""


def card_data(card: Card) -> dict[str, Any]:
    """Return a card as JSON holds it."""
    front = card.lesson.front
    return danger_data(card.danger) | {
        "name": card.lesson.name,
        "scientific": front.scientific_name,
        "family": front.family,
        "also": list(front.also_called),
        "food": card.lesson.is_food,
        "front": side_data(card.front),
        "back": side_data(card.back),
        "strip": strip_data(card.rows),
        "credit": f"Photograph: {card.photograph.credit}" if card.photograph else "",
        "stamps": list(card.stamps),
        "standing": " ".join(card.standing),
        "emergency": list(card.emergency),
        "course": card.course,
        "address": card.address and {"url": card.address.url, "squares": card.address.squares},
    }


def side_data(side: Side) -> list[dict[str, Any]]:
    """Return the blocks of a side."""
    return [_block(block) for block in side.blocks]


def _block(block: Block) -> dict[str, Any]:
    lines = [_line(line) for line in block.lines]
    return {"title": block.title, "lines": lines, "run-on": block.run_on}


def _line(line: Line) -> dict[str, Any]:
    return danger_data(line.danger) | {
        "label": line.label,
        "scientific": line.scientific,
        "runs": runs_data(line.runs),
    }


def runs_data(runs: Iterable[Run]) -> Runs:
    """Return words as JSON holds them."""
    return [[run.text, run.style] for run in runs]


def danger_data(danger: str) -> dict[str, str]:
    """Return a danger with its shape and its word; all of them empty for none."""
    shape, word = DANGERS[danger] if danger else ("", "")
    return {"danger": danger, "shape": shape, "word": word}


def size_data(size: CardSize) -> dict[str, float]:
    """Return a card's size in millimetres."""
    return {
        "width": size.trim.width,
        "height": size.trim.height,
        "margin": size.margin,
        "picture": size.picture,
    }
