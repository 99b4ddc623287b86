"""What course.yml says of cards and paper: names of sizes, the edge over which sheets turn."""

from __future__ import annotations

import re
from typing import Annotated, Any, Final, Literal

from pydantic import BeforeValidator, Field

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


def _one_of(pattern: str) -> Any:
    return Annotated[str, Field(pattern=pattern)]


CARD: Final = r"^[Aa][67]$|^(4 ?[x×] ?6|3 ?[x×] ?5) ?(in|\"|″|inch|inches)?$"
"""How an editor knows a size of card; the reader takes a few more."""
PAPER: Final = r"^[Aa]4$|^[Ll]etter$"
EDGE: Final = r"^([Ll]ong|[Ss]hort) edge$"
CardField = Annotated[CardName, BeforeValidator(card_name, json_schema_input_type=_one_of(CARD))]
PaperField = Annotated[PaperName, BeforeValidator(_paper, json_schema_input_type=_one_of(PAPER))]
DuplexField = Annotated[Duplex, BeforeValidator(_edge, json_schema_input_type=_one_of(EDGE))]
