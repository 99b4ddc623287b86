"""A lesson file → a Lesson. Reading cannot fail: faults stand in the lesson, beside its facts."""

from __future__ import annotations

import re
from pathlib import PurePosixPath
from typing import TYPE_CHECKING, Final

from sallet.lesson.cautions import read_cautions, read_look_alikes
from sallet.lesson.facts import read_facts
from sallet.lesson.front_matter import read_front_matter
from sallet.lesson.identification import read_organs
from sallet.lesson.kitchen import read_edible_parts, read_removals, read_season
from sallet.lesson.model import Fact, Fault, Lesson, Question, Recipe, Section
from sallet.lesson.outline import Bullet, Outline, Part, citations_in
from sallet.lesson.questions import read_pictures, read_questions
from sallet.lesson.sections import nearest_sections, section_named
from sallet.source import Source, Span

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from sallet.lesson.vocabulary import Vocabulary

FACT_SECTIONS: Final = ("habitat", "range", "uses", "harvest", "growing")
"""Sections that hold facts beside their prose."""


def read_lesson(source: Source, vocabulary: Vocabulary) -> Lesson:
    """Return the lesson that a file's text holds."""
    front, body, faults = read_front_matter(source)
    outline = Outline(source, body)
    parts = _by_name(outline.parts(), faults)
    named = {name: part for name, part in parts if name}
    faults += [Fault("raw-html", html.span, html.value) for html in outline.raw_html()]
    footnotes = tuple(outline.footnotes())
    facts = tuple(_facts(named, vocabulary, faults))
    return Lesson(
        source=source,
        slug=slug_of(source.path),
        front=front,
        intro=outline.intro(),
        sections=tuple(_section(source, name, part) for name, part in parts),
        facts=facts,
        look_alikes=tuple(read_look_alikes(_inner(named, "look-alikes"), vocabulary, faults)),
        season=tuple(read_season(_bullets(named, "season"), vocabulary, faults)),
        edible_parts=tuple(read_edible_parts(_bullets(named, "edible parts"), vocabulary, faults)),
        removals=tuple(read_removals(_bullets(named, "parts to remove"), faults)),
        recipes=tuple(Recipe(p.heading, p.rest) for p in _inner(named, "preparation")),
        cautions=tuple(read_cautions(_bullets(named, "cautions"), vocabulary, faults)),
        questions=tuple(_questions(named, faults)),
        pictures=tuple(read_pictures(_inner(named, "pictures"), faults)),
        footnotes=footnotes,
        citations=tuple(citations_in(source, Span(0, len(source.text)))),
        links=tuple(outline.links()),
        faults=tuple(faults),
    )


def slug_of(path: str) -> str:
    """Return a file's name as the name of its page: lower case, hyphens, nothing else."""
    stem = PurePosixPath(path).stem.casefold()
    return re.sub(r"[^a-z0-9]+", "-", stem).strip("-") or "lesson"


def _by_name(parts: Iterable[Part], faults: list[Fault]) -> list[tuple[str, Part]]:
    named: list[tuple[str, Part]] = []
    for part in parts:
        name = section_named(part.heading.value)
        if name in {known for known, _ in named if known}:
            faults.append(Fault("section-twice", part.heading.span, part.heading.value, (name,)))
            name = ""
        nearest = nearest_sections(part.heading.value)
        if not name and nearest and not section_named(part.heading.value):
            faults.append(Fault("unknown-section", part.heading.span, part.heading.value, nearest))
        named.append((name, part))
    return named


def _section(source: Source, name: str, part: Part) -> Section:
    citations = tuple(citations_in(source, part.span))
    return Section(name, part.heading, part.lead, part.rest, citations)


def _bullets(named: dict[str, Part], name: str) -> Iterable[Bullet]:
    return named[name].bullets if name in named else ()


def _inner(named: dict[str, Part], name: str) -> tuple[Part, ...]:
    return named[name].inner if name in named else ()


def _facts(named: dict[str, Part], vocabulary: Vocabulary, faults: list[Fault]) -> Iterator[Fact]:
    if "identification" in named:
        part = named["identification"]
        whole = vocabulary.subject("whole plant")
        # Facts before the first organ heading are about the plant as a whole.
        yield from read_facts(part.bullets, whole, "", vocabulary, faults)
        yield from read_organs(part.inner, vocabulary, faults)
    for name in FACT_SECTIONS:
        subject = vocabulary.subject(name)
        yield from read_facts(_bullets(named, name), subject, "", vocabulary, faults)


def _questions(named: dict[str, Part], faults: list[Fault]) -> Iterator[Question]:
    part = named.get("questions")
    if part:
        yield from read_questions(part.numbered, faults)
        faults.extend(
            Fault("question-not-numbered", bullet.span, bullet.value.value)
            for bullet in part.bullets
        )
