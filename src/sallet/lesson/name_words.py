"""The words that stand beside the Latin ones in a scientific name: ranks, signs, authors."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from sallet.source import Span, Text

if TYPE_CHECKING:
    from collections.abc import Iterator

SIGN: Final = "×"
"""The hybrid sign of Article H.3; the letter x, which many keyboards have instead, is let pass."""
RANKS: Final = (
    "subsp.", "var.", "subvar.", "f.", "subf.",
    "nothosubsp.", "nothovar.", "nothosubvar.", "nothof.", "nothosubf.",
)  # fmt: skip
"""The ranks below the species, as Recommendation 5A shortens them, and those of hybrids."""
RANKS_ABOVE: Final = ("subg.", "sect.", "subsect.", "ser.", "nothosubg.", "nothosect.")
"""Ranks between genus and species: `Taraxacum sect. Taraxacum` is no species, but a name."""
MISSPELT_RANKS: Final = {
    "ssp.": "subsp.", "ssp": "subsp.", "subsp": "subsp.", "subspec.": "subsp.",
    "subspecies": "subsp.", "nothossp.": "nothosubsp.", "nothosubsp": "nothosubsp.",
    "var": "var.", "variety": "var.", "varietas": "var.", "nothovar": "nothovar.",
    "subvar": "subvar.", "subvariety": "subvar.", "forma": "f.", "form": "f.", "fo.": "f.",
    "fma.": "f.", "subforma": "subf.", "subf": "subf.", "nothof": "nothof.",
}  # fmt: skip
UNNAMED: Final = ("sp.", "spp.", "sp", "spp", "cf.", "aff.", "species")
"""What stands where the epithet is not known."""

_BETWEEN_AUTHORS: Final = frozenset({
    "and", "apud", "auct", "auctorum", "bis", "comb", "das", "dei", "del", "della", "den", "der",
    "des", "dos", "emend", "et", "ex", "hort", "in", "lato", "nec", "nom", "non", "nov", "parte",
    "pro", "sensu", "stat", "stricto", "ten", "ter", "und", "van", "vel", "von", "zum", "zur",
})  # fmt: skip
_WORD: Final = re.compile(r"×|(?<!\S)x(?=\s|[A-Z])|[^\s×]+")
_SHORTENED: Final = re.compile(r"^[A-Z][a-z]{0,2}\.$")
_LONGEST_INITIALS: Final = 3
_SHORTEST_EPITHET: Final = 3


def words_of(name: str) -> Iterator[Text]:
    """Yield the words of a name with their places in it; a hybrid sign is a word of its own."""
    for match in _WORD.finditer(name):
        yield Text(match[0], Span(*match.span()))


def is_sign(word: str) -> bool:
    """Return whether a word is the hybrid sign, or the letter x in its place."""
    return word in {SIGN, "x"}


def is_capital(word: str) -> bool:
    """Return whether a word begins with a capital letter."""
    return word[:1].isupper()


def is_shortened(word: str) -> bool:
    """Return whether a genus is given by its initial: `A.`."""
    return bool(_SHORTENED.match(word))


def is_author(word: str) -> bool:
    """Return whether a word cannot be an epithet: `L.`, `(Poir.)`, `DC.`, `ex`, `'Alba'`."""
    if word.endswith(".") or word[:1] in "('‘\"&[":
        return True
    return word in _BETWEEN_AUTHORS or (word.isupper() and len(word) <= _LONGEST_INITIALS)


def is_bare_epithet(word: str) -> bool:
    """Return whether a word can hardly be anything but an epithet."""
    letters = word.replace("-", "")
    return (
        len(word) >= _SHORTEST_EPITHET
        and letters.isalpha()
        and word == word.lower()
        and word not in _BETWEEN_AUTHORS
    )
