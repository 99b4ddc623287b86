"""A scientific name that is not written as the Code of nomenclature asks.

The name of a species is a genus with a capital and one epithet without: `Allium ursinum L.`;
the author may follow. Below the species a rank stands before the further epithet: `subsp.`,
`var.`, `f.`. A hybrid has the sign `×`, for which the letter x is let pass. Letters carry no
accents, though two dots may part two vowels. A misspelt name finds nothing in any book or
database, or finds another plant. Each finding quotes the word at fault. Of a look-alike the
genus alone may be given.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.findings import Severity
from sallet.lesson.name_words import SIGN
from sallet.lesson.scientific_name import read_scientific_name
from sallet.source import Span

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson, LookAlike
    from sallet.lesson.scientific_name import FaultKind, NameFault, ScientificName
    from sallet.source import Source

ID: Final = "scientific-name"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = "---\nscientific name: Brassica nigra (L.) W. D. J. Koch\n---\n"
BAD = "---\nscientific name: brassica Nigra\n---\n"

_WORDS: Final[dict[FaultKind, tuple[str, str]]] = {
    "genus capital": ("`{word}` is the genus, expected a capital first letter and no other",
                      "write `{offer}`"),
    "genus short": ("`{word}` is a genus cut short, expected it in full",
                    "write the genus out"),
    "no epithet": ("`{word}` names no species, expected a genus and an epithet",
                   "write both words, as in `Allium ursinum`"),
    "epithet capital": ("`{word}` is an epithet, expected small letters only", "write `{offer}`"),
    "letters": ("`{word}` holds a sign that no name has, expected letters and hyphens only",
                "write the name without stars, quotation marks or figures"),
    "marks": ("`{word}` carries a mark on a letter, expected plain letters", "write `{offer}`"),
    "no rank": ("`{word}` follows without its rank, expected `subsp.`, `var.` or `f.` before it",
                "write `subsp. {word}`, or whichever rank it has"),
    "two epithets": ("`{word}` is a second epithet, expected one, or a rank before this one",
                     "write `{offer}` if both are one epithet, or `subsp. {word}`"),
    "rank spelling": ("`{word}` is not how the rank is written, expected `{offer}`",
                      "write `{offer}`"),
    "rank alone": ("`{word}` is a rank with no epithet behind it",
                   "write the epithet, or take `{word}` out"),
    "tautonym": ("`{word}` repeats the genus, which no plant's name does",
                 "look the name up again: animals are named so, plants never"),
    "no genus": ("`{word}` is the second parent of a hybrid, expected its genus too",
                 "write `{offer}`"),
}  # fmt: skip


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each faulty word of the names in the head and under the look-alikes."""
    front = lesson.front
    yield from _problems(front.scientific_name, front.where("scientific name"), lesson.source)
    for look in lesson.look_alikes:
        place = _place(look, lesson.source)
        yield from _problems(look.scientific_name, place, lesson.source, passed="no epithet")


def _place(look: LookAlike, source: Source) -> Span:
    at = source.text.find(look.scientific_name, look.name.span.end, look.span.end)
    return Span(at, at + len(look.scientific_name)) if at >= 0 else look.name.span


def _problems(name: str, at: Span, source: Source, passed: str = "") -> Iterator[Problem]:
    read = read_scientific_name(name)
    for fault in read.faults:
        if fault.kind == passed:
            continue
        message, hint = _WORDS[fault.kind]
        told = {"word": fault.text.value, "offer": fault.offer}
        yield Problem(
            _span(fault, at, source), message.format(**told), hint.format(**told) + _sign(read)
        )


def _span(fault: NameFault, at: Span, source: Source) -> Span:
    # The name was read without the quotation marks and double spaces of the file.
    word = fault.text.value
    start = source.text.find(word, at.start + fault.text.span.start, at.end)
    return Span(start, start + len(word)) if start >= 0 else at


def _sign(name: ScientificName) -> str:
    by_letter = name.is_hybrid and all(
        part.text.value != SIGN for part in name.parts if part.role == "sign"
    )
    return f"; the sign of a hybrid is `{SIGN}`" if by_letter else ""
