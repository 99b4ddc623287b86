"""Which letters the fonts of print lack: the engine is asked, it alone knows."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING, Final
from unicodedata import normalize

from sallet.typesetting.engine import typeset
from sallet.typesetting.jobs import Job, Untypeset
from sallet.typesetting.words import in_all_words, is_dropped, printable

if TYPE_CHECKING:
    from collections.abc import Iterable

LOST: Final = "\ufffd"
"""Stands for a letter that cannot be shown (Unicode's replacement character); the fonts have it."""
_REFUSED: Final = re.compile(r"the text `\"(.*?)\"` could not be displayed")
_ESCAPED: Final = re.compile(r"\\u\{([0-9a-fA-F]+)\}|\\(.)")


def missing_letters(words: Iterable[str]) -> frozenset[str]:
    """Return the letters of some words that no font of print has, in any of its styles."""
    asked = {letter for text in words for letter in normalize("NFC", text)}
    letters = sorted(letter for letter in asked if not letter.isascii() and not is_dropped(letter))
    found: set[str] = set()
    while left := [letter for letter in letters if letter not in found]:
        refused = _refused(left) - found
        if not refused:
            break
        found |= refused
    return frozenset(found)


def legible(job: Job, missing: frozenset[str]) -> Job:
    """Return a document with the sign of a lost letter for each that no font has, as drafts need it."""
    lost = dict.fromkeys(map(ord, missing), LOST)

    def change(words: str) -> str:
        return printable(words).translate(lost)

    drawings = {
        name: change(data.decode()).encode() if name.endswith(".svg") else data
        for name, data in job.pictures.items()
    }
    return replace(job, data=in_all_words(job.data, change), pictures=drawings)


def _refused(letters: list[str]) -> set[str]:
    try:
        next(typeset([Job("letters", {"letters": letters})]))
    except Untypeset as refusal:
        named = {_plain(words) for words in _REFUSED.findall(refusal.details)}
        if not named:
            raise
        return {letter for letter in letters if any(letter in words for words in named)}
    return set()


def _plain(words: str) -> str:
    return _ESCAPED.sub(lambda m: chr(int(m[1], 16)) if m[1] else m[2], words)
