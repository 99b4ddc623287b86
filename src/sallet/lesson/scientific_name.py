"""The scientific name of a plant, taken apart by the rules of its Code.

The rules are those of the International Code of Nomenclature for algae, fungi, and plants
(Shenzhen Code, 2018). Names are data for people: what is odd is kept and reported, never
refused, and what the Code leaves free (author abbreviations, `agg.`, cultivars) is let pass.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal

from sallet.lesson.latin import letters_only, mended, without_marks
from sallet.lesson.name_words import (
    MISSPELT_RANKS,
    RANKS,
    RANKS_ABOVE,
    UNNAMED,
    is_author,
    is_bare_epithet,
    is_capital,
    is_shortened,
    is_sign,
    words_of,
)

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.source import Text

Role = Literal["sign", "genus", "epithet", "rank", "author"]
FaultKind = Literal[
    "genus capital", "genus short", "no epithet", "epithet capital", "letters", "marks",
    "no rank", "two epithets", "rank spelling", "rank alone", "tautonym", "no genus",
]  # fmt: skip


@dataclass(frozen=True)
class NamePart:
    """A word of a name and what it is."""

    role: Role
    text: Text
    """Its place is counted from the start of the name."""


@dataclass(frozen=True)
class NameFault:
    """A word that is not as the Code asks, and what to write in its place, where that is known."""

    kind: FaultKind
    text: Text
    offer: str = ""


@dataclass(frozen=True)
class ScientificName:
    """A name in its parts, with what is wrong with it."""

    parts: tuple[NamePart, ...]
    faults: tuple[NameFault, ...]

    @property
    def genus(self) -> str:
        """Return the genus, or an empty string."""
        return next(self._all("genus"), "")

    @property
    def epithets(self) -> tuple[str, ...]:
        """Return the epithets, that of the species first."""
        return tuple(self._all("epithet"))

    @property
    def ranks(self) -> tuple[str, ...]:
        """Return the ranks below the species, as written."""
        return tuple(self._all("rank"))

    @property
    def authors(self) -> str:
        """Return the author names, in their order."""
        return " ".join(self._all("author"))

    @property
    def is_hybrid(self) -> bool:
        """Return whether a hybrid sign, or the letter x in its place, stands in the name."""
        return any(part.role == "sign" for part in self.parts)

    def _all(self, role: Role) -> Iterator[str]:
        return (part.text.value for part in self.parts if part.role == role)


def read_scientific_name(name: str) -> ScientificName:
    """Return a name taken apart; one plant, or a formula of two parents joined by `×`."""
    reader = _Reader(name)
    reader.read_name()
    while reader.here:
        reader.read_next_parent()
    return ScientificName(tuple(reader.parts), tuple(reader.faults))


class _Reader:
    """Walks over the words of a name from left to right, once."""

    def __init__(self, name: str) -> None:
        self.words = list(words_of(name))
        self.at = 0
        self.parts: list[NamePart] = []
        self.faults: list[NameFault] = []

    @property
    def here(self) -> str:
        return self._ahead(0)

    def _ahead(self, by: int) -> str:
        at = self.at + by
        return self.words[at].value if at < len(self.words) else ""

    def _take(self, role: Role) -> Text:
        text = self.words[self.at]
        self.parts.append(NamePart(role, text))
        self.at += 1
        return text

    def _fault(self, kind: FaultKind, text: Text, offer: str = "") -> None:
        self.faults.append(NameFault(kind, text, offer))

    # -- a whole name ------------------------------------------------------------------------

    def read_name(self, *, parent: bool = False) -> None:
        """Read genus, epithet, authors and ranks, up to the sign before another parent."""
        if is_sign(self.here):
            self._take("sign")
        if not self.here:
            return
        genus = self._read_genus(parent=parent)
        if self.here in RANKS_ABOVE:
            self._take("rank")
            if self.here:
                self._take("epithet")
        elif not self._is_before_parent():
            self._read_species(genus, in_formula=parent or self._has_parents_ahead())
        self._read_rest()

    def read_next_parent(self) -> None:
        """Read the sign and the name behind it: `× S. caprea`."""
        if is_capital(self._ahead(1)):
            self._take("sign")
            self.read_name(parent=True)
            return
        self._take("sign")
        if self.here:
            text = self._take("epithet")
            offer = f"{self.parts[0].text.value[:1]}. {text.value}"
            self._fault("no genus", text, offer)
        self._read_rest()

    def _is_before_parent(self) -> bool:
        # `Agrostis × Polypogon monspeliensis`; but `Mentha × Piperita` is a slip of the pen.
        return is_sign(self.here) and is_capital(self._ahead(1)) and is_bare_epithet(self._ahead(2))

    def _has_parents_ahead(self) -> bool:
        return any(is_sign(word.value) for word in self.words[self.at + 1 :])

    def _read_genus(self, *, parent: bool) -> Text:
        text = self._take("genus")
        word = text.value
        if is_shortened(word):
            if not parent:
                self._fault("genus short", text)
        elif not letters_only(word):
            self._fault("letters", text)
        elif word != word.capitalize():
            self._fault("genus capital", text, mended(word).capitalize())
        elif without_marks(word) != word:
            self._fault("marks", text, without_marks(word))
        return text

    def _read_species(self, genus: Text, *, in_formula: bool) -> None:
        if is_sign(self.here):
            self._take("sign")
        word = self.here
        if word.casefold() in UNNAMED:
            self._fault("no epithet", self._take("author"))
        elif not word or is_author(word):
            # `Agrostis L. × Polypogon Desf.` is a formula of two genera: none is wanted there.
            if not in_formula:
                self._fault("no epithet", genus)
        elif self._read_epithet().value.casefold() == genus.value.casefold():
            self._fault("tautonym", self.parts[-1].text)

    def _read_epithet(self) -> Text:
        text = self._take("epithet")
        word = text.value
        if not letters_only(word):
            self._fault("letters", text)
        elif word != word.lower():
            self._fault("epithet capital", text, mended(word))
        elif without_marks(word) != word:
            self._fault("marks", text, without_marks(word))
        return text

    # -- what follows the species --------------------------------------------------------------

    def _read_rest(self) -> None:
        depth = 0
        while self.here and not (is_sign(self.here) and depth <= 0):
            outside = depth <= 0
            depth += self.here.count("(") - self.here.count(")")
            if outside and self._is_rank():
                self._read_rank()
            elif outside and is_bare_epithet(self.here):
                self._read_unranked()
            else:
                self._take("author")

    def _is_rank(self) -> bool:
        word, following = self.here, self._ahead(1)
        if word in RANKS and word != "f.":
            return True
        if word == "f.":
            # `Hook. f.` is the younger Hooker; `f. alba` is a form.
            return is_bare_epithet(following) or is_sign(following) or not self._after_author()
        return word in MISSPELT_RANKS

    def _after_author(self) -> bool:
        return self.parts[-1].role == "author"

    def _read_rank(self) -> None:
        text = self._take("rank")
        if text.value in MISSPELT_RANKS:
            self._fault("rank spelling", text, MISSPELT_RANKS[text.value])
        if is_sign(self.here) and not is_capital(self._ahead(1)):
            self._take("sign")
        if self.here and not is_author(self.here) and not self._is_rank():
            self._read_epithet()
        else:
            self._fault("rank alone", text)

    def _read_unranked(self) -> None:
        directly = self.parts[-1]
        text = self._take("epithet")
        if directly.role == "epithet" and directly.text.value != text.value:
            self._fault("two epithets", text, f"{directly.text.value}-{text.value}")
        else:
            self._fault("no rank", text)
