"""Which section each heading opens, and which headings stand where their facts would be lost."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.lesson.blocks import joined
from sallet.lesson.model import Fault
from sallet.lesson.sections import nearest_sections, section_named

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from sallet.lesson.blocks import Bullet, Part
    from sallet.lesson.model import Prose
    from sallet.lesson.vocabulary import Vocabulary

BULLETS_ONLY: Final = ("season", "edible parts", "parts to remove", "cautions")
"""Sections that are lists of facts from end to end; their numbered lists count as bullets."""
_PARTS_INSIDE: Final = ("look-alikes", "preparation", "pictures")
"""Sections whose inner headings are things of their own."""
_READ: Final = ("identification", "look-alikes", *BULLETS_ONLY)
"""Sections whose bullets must not end as prose."""


def name_parts(
    parts: Iterable[Part], vocabulary: Vocabulary, faults: list[Fault]
) -> list[tuple[str, Part]]:
    """Return the parts, each with the section it is, or an empty name for the writer's own.

    A heading that is a slip of the pen is reported, and read as what it was meant to be: the
    slip must not hide what is wrong below it.
    """
    parts = tuple(parts)
    spelt_right = {section_named(part.heading.value) for part in parts}
    named: list[tuple[str, Part]] = []
    for part in parts:
        name = section_named(part.heading.value)
        if not name:
            found = tuple(_own_heading(part, vocabulary))
            faults.extend(found)
            name = _meant(found, spelt_right | {known for known, _ in named})
        elif name in {known for known, _ in named}:
            faults.append(_fault("section-twice", part, (name,)))
            name = ""
        faults.extend(_inner_headings(name, part))
        named.append((name, part))
    return named


def _own_heading(part: Part, vocabulary: Vocabulary) -> Iterator[Fault]:
    nearest = nearest_sections(part.heading.value)
    if part.listed and vocabulary.organ(part.heading.value):
        yield _fault("misplaced-heading", part, (), "organ")
    elif nearest:
        yield _fault("unknown-section", part, nearest)


def _meant(found: Iterable[Fault], taken: set[str]) -> str:
    slips = (name for f in found if f.kind == "unknown-section" for name in f.nearest)
    return next((name for name in slips if name not in taken), "")


def _inner_headings(name: str, part: Part) -> Iterator[Fault]:
    if name == "identification":
        return  # the reader of organs reports what is none
    for inner in part.inner:
        if _is_misplaced(inner, name):
            yield _fault("misplaced-heading", inner, (section_named(inner.heading.value),))
        elif name in BULLETS_ONLY:
            yield _fault("inner-heading", inner, (), part.heading.value)
        if name != "look-alikes":
            yield from _inner_headings(name, inner)


def _is_misplaced(part: Part, inside: str) -> bool:
    name = section_named(part.heading.value)
    holds_facts = bool(part.listed or part.inner) or name == "cautions"
    return name in _READ and name != inside and holds_facts


def _fault(kind: str, part: Part, nearest: tuple[str, ...], detail: str = "") -> Fault:
    return Fault(kind, part.heading.span, part.heading.value, nearest, detail)


def bullets_of(name: str, part: Part) -> Iterator[Bullet]:
    """Yield a section's bullets, those below inner headings too."""
    yield from part.listed if name in BULLETS_ONLY else part.bullets
    for inner in part.inner:
        if not _is_misplaced(inner, name):
            yield from bullets_of(name, inner)


def text_of(name: str, part: Part) -> Prose:
    """Return a section's text without what is read as bullets or as things of their own."""
    steps = name not in {*BULLETS_ONLY, "identification", "questions"}
    if name in _PARTS_INSIDE:
        return part.lead
    return joined(part.every_text(steps=steps), part.heading.span.end)
