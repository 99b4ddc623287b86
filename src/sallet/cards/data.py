"""A card as the values that its template is given."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from sallet.cards.strip import strip_data
from sallet.lesson.dangers import DANGERS

if TYPE_CHECKING:
    from sallet.cards.model import Block, Card, Line, Side
    from sallet.cards.sizes import CardSize


def card_data(card: Card) -> dict[str, Any]:
    """Return a card as JSON holds it."""
    front = card.lesson.front
    shape, word = DANGERS[card.danger]
    return {
        "name": card.lesson.name,
        "scientific": front.scientific_name,
        "family": front.family,
        "also": list(front.also_called),
        "food": card.lesson.is_food,
        "danger": card.danger,
        "shape": shape,
        "word": word,
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
    shape, word = DANGERS[line.danger] if line.danger else ("", "")
    return {
        "label": line.label,
        "danger": line.danger,
        "shape": shape,
        "word": word,
        "scientific": line.scientific,
        "runs": [[run.text, run.style] for run in line.runs],
    }


def size_data(size: CardSize) -> dict[str, float]:
    """Return a card's size in millimetres."""
    return {
        "width": size.trim.width,
        "height": size.trim.height,
        "margin": size.margin,
        "picture": size.picture,
    }
