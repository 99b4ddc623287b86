"""Whether a text speaks of a part of the plant: by its noun, one or many, or another word for it.

Only what a teacher would hear is looked for. `Wash leaf by leaf` speaks of the leaves and
`trim the stalks` of the leaf stalks; `wash the leaves` does not speak of the old ones.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from sallet.lesson.citations import without_citations

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from sallet.lesson.vocabulary import Part, Vocabulary

_WORD: Final = re.compile(r"[^\W\d_]+(?:'[^\W\d_]+)?")
_AND: Final = re.compile(r"\s*[,;&]\s*|\s+and\s+|\s+or\s+")
_BEHIND_THE_NOUN: Final = re.compile(
    r"\s*\(|\s+(?:of|in|inside|with|without|from|on|round|under|at|after|before|when|while|"
    r"that|which|to)\s+"
)
_IRREGULAR: Final = {"leaves": "leaf", "halves": "half", "loaves": "loaf", "calyces": "calyx"}


def singular(word: str) -> str:
    """Return a noun as of one thing; what is no plural stays as it is."""
    if word in _IRREGULAR:
        return _IRREGULAR[word]
    short = 4
    if word.endswith("ies") and len(word) > short:
        return word[:-3] + "y"
    if word.endswith(("ches", "shes", "sses", "xes", "zes", "toes")):
        return word[:-2]
    if word.endswith("s") and not word.endswith(("ss", "us", "is")):
        return word[:-1]
    return word


def is_mentioned(phrases: Iterable[str], text: str) -> bool:
    """Return whether one of some phrases stands in a text, in the singular or plural."""
    spoken = f" {_plain(without_citations(text))} "
    return any(f" {_plain(phrase)} " in spoken for phrase in phrases if _plain(phrase))


def _plain(text: str) -> str:
    return " ".join(singular(word) for word in _WORD.findall(text.casefold().replace("’", "'")))


def named_parts(name: str, vocabulary: Vocabulary) -> tuple[str, ...]:
    """Return the parts that a name such as `stems and old leaves` names, each by itself."""
    pieces = [piece for piece in _AND.split(name) if piece.strip()]
    if vocabulary.organ(name) or len(pieces) < 2:  # noqa: PLR2004 - one is no list
        return (name,)
    # In `green or shrivelled berries` only the last piece holds a noun.
    known = [piece for piece in pieces[:-1] if vocabulary.organ(_noun_phrase(piece))]
    return (*known, pieces[-1])


def words_for(name: str, vocabulary: Vocabulary, *, organ_too: bool = False) -> frozenset[str]:
    """Return the phrases that speak of a part; with `organ_too` its organ's name is enough."""
    phrase = _noun_phrase(name)
    found = vocabulary.organ(phrase) or vocabulary.organ(singular(phrase.casefold()))
    phrases = frozenset((name, phrase))
    if found is None:
        return phrases | frozenset(phrase.split()[-1:])
    organ, part = found
    if part:
        phrases |= frozenset(_part_words(part, vocabulary))
    if part is None or organ_too:
        phrases |= frozenset((organ.name, organ.heading, *organ.also))
    return phrases


def _part_words(part: Part, vocabulary: Vocabulary) -> Iterator[str]:
    """Yield the words for a part, and their last nouns: a leaf stalk may be called a stalk."""
    for words in (part.name, *part.also):
        yield words
        noun = words.split()[-1]
        named = vocabulary.organ(noun) or vocabulary.organ(singular(noun))
        # `Leaves` does not speak of the old leaves alone, nor `berries` of the unripe ones.
        if named is None or named[0].name != part.subject:
            yield noun


def _noun_phrase(name: str) -> str:
    """Return a name up to what is said behind the noun: `stones` of `stones inside the haw`."""
    return _BEHIND_THE_NOUN.split(name.strip(), maxsplit=1)[0].strip()
