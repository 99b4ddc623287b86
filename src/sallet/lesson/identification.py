"""Identification: the organs of the plant, each a heading with its facts below."""

from __future__ import annotations

from typing import TYPE_CHECKING

from sallet.lesson.facts import read_facts
from sallet.lesson.model import Fact, Fault
from sallet.lesson.sections import section_named

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from sallet.lesson.blocks import Part
    from sallet.lesson.vocabulary import Vocabulary


def read_organs(
    parts: Iterable[Part], vocabulary: Vocabulary, faults: list[Fault]
) -> Iterator[Fact]:
    """Yield the facts below organ headings; a heading that names no organ is a fault.

    A slip of the pen is read as the organ it comes nearest to, so that it does not hide what
    is wrong with the facts below it.
    """
    for part in parts:
        found = vocabulary.organ(part.heading.value)
        if found is None:
            words, section = part.heading.value, section_named(part.heading.value)
            nearest = () if section else vocabulary.nearest_organs(words)
            faults.append(Fault("unknown-organ", part.heading.span, words, nearest, section))
            found = vocabulary.organ(nearest[0]) if nearest else None
        if found is None:
            continue
        organ, kind = found
        name = kind.name if kind else ""
        yield from read_facts(part.listed, organ, name, vocabulary, faults)
        yield from read_organs(part.inner, vocabulary, faults)
