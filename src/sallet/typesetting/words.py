"""Words as they are typeset: composed, and without what is not seen."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any, Final
from unicodedata import category, normalize

if TYPE_CHECKING:
    from collections.abc import Callable

TURNING: Final = frozenset(
    "\u061c\u200e\u200f\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069"
)
"""Letters that are not seen and turn the direction of the words behind them (Unicode, UAX 9)."""
_CONTROLS: Final = ("Cc", "Cs", "Co", "Cn")


def printable(words: str) -> str:
    """Return words as they are typeset: composed, without controls, without turns of direction."""
    return "".join(letter for letter in normalize("NFC", words) if not is_dropped(letter))


def is_dropped(letter: str) -> bool:
    """Return whether a letter is no part of printed words."""
    return letter in TURNING or (category(letter) in _CONTROLS and letter not in "\n\t")


def all_printable(data: Any) -> Any:
    """Return values as JSON holds them, with every run of words in them printable."""
    return in_all_words(data, printable)


def in_all_words(data: Any, change: Callable[[str], str]) -> Any:
    """Return values as JSON holds them, with every run of words in them changed."""
    if isinstance(data, str):
        return change(data)
    if isinstance(data, dict):
        return {key: in_all_words(value, change) for key, value in data.items()}
    if isinstance(data, list | tuple):
        return [in_all_words(value, change) for value in data]
    return data
