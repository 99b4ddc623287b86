"""What course.yml says of cards and paper: names of sizes, the edge over which sheets turn."""

from __future__ import annotations

import re
from typing import Annotated, Any, Final, Literal

from pydantic import BeforeValidator

CardName = Literal["A6", "A7", "4×6 in", "3×5 in"]
PaperName = Literal["A4", "Letter"]
Duplex = Literal["long edge", "short edge"]
EDGES: Final[tuple[Duplex, ...]] = ("long edge", "short edge")


def card_name(value: Any) -> Any:
    """Return the size of a card as it is named here: `4x6 in`, `4 x 6"` and `a6` will do."""
    if not isinstance(value, str):
        return value
    inches = re.fullmatch(
        r"\s*([0-9])\s*[x×]\s*([0-9])\s*(?:in|\"|″|inch|inches)?\s*", value, re.IGNORECASE
    )
    return f"{inches[1]}×{inches[2]} in" if inches else value.strip().upper()


def _paper(value: Any) -> Any:
    return value.strip().capitalize() if isinstance(value, str) else value


def _edge(value: Any) -> Any:
    return " ".join(value.split()).casefold() if isinstance(value, str) else value


CardField = Annotated[CardName, BeforeValidator(card_name)]
PaperField = Annotated[PaperName, BeforeValidator(_paper)]
DuplexField = Annotated[Duplex, BeforeValidator(_edge)]
