"""How checks put words together."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

if TYPE_CHECKING:
    from collections.abc import Sequence


LONGEST: Final = 60
"""Characters of a passage that a message quotes."""


def shown(words: str) -> str:
    """Return words at fault in backticks, on one line, a long passage cut short."""
    line = " ".join(words.split()).replace("`", "'")
    return f"`{line}`" if len(line) <= LONGEST else f"`{line[:LONGEST].rstrip()}…`"


def listed(words: Sequence[str], last: str = "or") -> str:
    """Return `a`, `b` or `c`, each in backticks."""
    quoted = [f"`{word}`" for word in words]
    if len(quoted) < 2:  # noqa: PLR2004 - one word needs no comma
        return "".join(quoted)
    return f"{', '.join(quoted[:-1])} {last} {quoted[-1]}"


def did_you_mean(nearest: Sequence[str], otherwise: str) -> str:
    """Return a hint that names the nearest terms, or another where there are none."""
    return f"did you mean {listed(nearest)}?" if nearest else otherwise
