"""How the Code spells the words of a scientific name: no marks on letters, no ligatures.

Article 60.7: ä, ö, ü become ae, oe, ue; é, è, ê become e; ñ becomes n; ø becomes oe; å
becomes ao; æ and œ become ae and oe. A diaeresis, which says that a vowel is spoken apart
from the one before it (Cephaëlis, Isoëtes), may stay.
"""

from __future__ import annotations

import unicodedata
from typing import Final

_WRITTEN: Final = {
    "ä": "ae", "ö": "oe", "ü": "ue", "ø": "oe", "å": "ao", "æ": "ae", "œ": "oe", "ß": "ss",
    "ł": "l", "đ": "d", "ð": "d", "þ": "th", "ı": "i",
}  # fmt: skip
"""The Code names those up to œ; the rest follow common practice, from memory."""
_VOWELS: Final = "aeiouy"
_DIAERESES: Final = "äëïöüÿ"


def letters_only(word: str) -> bool:
    """Return whether a word is of letters, with hyphens inside at most."""
    pieces = word.split("-")
    return all(piece.isalpha() for piece in pieces)


def without_marks(word: str) -> str:
    """Return a word with its marked letters written as the Code asks; a diaeresis may stay."""
    word = unicodedata.normalize("NFC", word)
    return "".join(_plain(word[i - 1 : i], char) for i, char in enumerate(word))


def mended(word: str) -> str:
    """Return a word in lower case and without marks."""
    return without_marks(unicodedata.normalize("NFC", word).lower())


def _plain(before: str, char: str) -> str:
    lower = char.lower()
    if lower.isascii() or (lower in _DIAERESES and before and before.lower() in _VOWELS):
        return char
    bare = unicodedata.normalize("NFD", lower)[0]
    plain = _WRITTEN.get(lower, bare)
    return plain.capitalize() if char.isupper() else plain
