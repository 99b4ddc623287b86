"""The names of plant families, each by its standard one.

Names of families end in -aceae and begin with a capital (Article 18.1 of the Code of
nomenclature). Eight old names, such as Umbelliferae, are allowed beside the standard ones
(Article 18.5), and Papilionaceae for the peas alone (18.6, from memory).
"""

from __future__ import annotations

from typing import Final

from sallet.lesson.latin import letters_only, mended

STANDARD: Final = {
    "compositae": "Asteraceae", "cruciferae": "Brassicaceae", "gramineae": "Poaceae",
    "guttiferae": "Clusiaceae", "labiatae": "Lamiaceae", "leguminosae": "Fabaceae",
    "palmae": "Arecaceae", "umbelliferae": "Apiaceae", "papilionaceae": "Fabaceae",
}  # fmt: skip
"""The standard name by the old one, which stands in small letters."""
ENDING: Final = "aceae"


def is_family_name(word: str) -> bool:
    """Return whether a word is built as the name of a family, whatever its capitals."""
    return letters_only(word) and mended(word).endswith(ENDING)


def standard_family(words: str) -> str:
    """Return a family's standard name, without its author; other words as they stand."""
    word = words.split(maxsplit=1)[0] if words.strip() else ""
    plain = mended(word)
    if plain in STANDARD:
        return STANDARD[plain]
    # Of words that are no scientific name it is not known which of them could be left out.
    return plain.capitalize() if is_family_name(word) else " ".join(words.split())
