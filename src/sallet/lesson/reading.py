"""A lesson file → a Lesson. Reading cannot fail: faults stand in the lesson, beside its facts."""

from __future__ import annotations

import re
from pathlib import PurePosixPath
from typing import TYPE_CHECKING, Final

from sallet.lesson.cautions import not_told, read_cautions, read_look_alikes
from sallet.lesson.citations import citations_in
from sallet.lesson.facts import read_facts
from sallet.lesson.front_matter import read_front_matter
from sallet.lesson.headings import bullets_of, name_parts, text_of
from sallet.lesson.identification import read_organs
from sallet.lesson.kitchen import read_edible_parts, read_removals, read_season
from sallet.lesson.model import Fault, Lesson, Recipe, Section
from sallet.lesson.outline import Outline
from sallet.lesson.questions import read_pictures, read_questions
from sallet.lesson.wording import card_text, section_wordings
from sallet.source import Source, Span

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.blocks import Bullet, Part
    from sallet.lesson.model import Caution, Fact, LookAlike, Picture, Question
    from sallet.lesson.vocabulary import Vocabulary

FACT_SECTIONS: Final = ("habitat", "range", "uses", "harvest", "growing")
"""Sections that hold facts beside their prose."""


def read_lesson(source: Source, vocabulary: Vocabulary) -> Lesson:
    """Return the lesson that a file's text holds."""
    front, body, faults = read_front_matter(source)
    outline = Outline(source, body)
    parts = name_parts(outline.parts(), vocabulary, faults)
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
        look_alikes=_look_alikes(named, vocabulary, faults),
        season=tuple(read_season(_bullets(named, "season"), vocabulary, faults)),
        edible_parts=tuple(read_edible_parts(_bullets(named, "edible parts"), vocabulary, faults)),
        removals=tuple(read_removals(_bullets(named, "parts to remove"), faults)),
        recipes=tuple(Recipe(p.heading, p.rest) for p in _inner(named, "preparation")),
        cautions=_cautions(source, named, vocabulary, faults),
        questions=tuple(_questions(named, faults)),
        pictures=_pictures(named, faults),
        footnotes=footnotes,
        citations=tuple(citations_in(source, Span(0, len(source.text)))),
        links=tuple(outline.links()),
        faults=tuple(faults),
    )


def slug_of(path: str) -> str:
    """Return a file's name, without its ending, as the name of its page."""
    return hyphened(PurePosixPath(path).stem)


def hyphened(words: str) -> str:
    """Return words as the name of a file: lower case, hyphens, nothing else."""
    return re.sub(r"[^a-z0-9]+", "-", words.casefold()).strip("-") or "lesson"


def _section(source: Source, name: str, part: Part) -> Section:
    wordings = section_wordings(name, part)
    on_card = card_text(wordings)
    return Section(
        name=name,
        heading=part.heading,
        lead=text_of(name, part),
        prose=part.rest_without(wordings),
        citations=tuple(citations_in(source, part.span)),
        on_card=on_card.value,
        card_span=on_card.span,
    )


def _bullets(named: dict[str, Part], name: str) -> Iterator[Bullet]:
    if name in named:
        wordings = section_wordings(name, named[name])
        yield from (b for b in bullets_of(name, named[name]) if b not in wordings)


def _cautions(
    source: Source, named: dict[str, Part], vocabulary: Vocabulary, faults: list[Fault]
) -> tuple[Caution, ...]:
    part = named.get("cautions")
    texts = part.every_text(steps=False) if part else ()
    cited = [(text, tuple(citations_in(source, text.span))) for text in texts]
    return read_cautions(_bullets(named, "cautions"), cited, vocabulary, faults)


def _inner(named: dict[str, Part], name: str) -> tuple[Part, ...]:
    return named[name].inner if name in named else ()


def _facts(named: dict[str, Part], vocabulary: Vocabulary, faults: list[Fault]) -> Iterator[Fact]:
    if "identification" in named:
        part = named["identification"]
        whole = vocabulary.subject("whole plant")
        # Facts before the first organ heading are about the plant as a whole.
        yield from read_facts(part.listed, whole, "", vocabulary, faults)
        yield from read_organs(part.inner, vocabulary, faults)
    for name in FACT_SECTIONS:
        subject = vocabulary.subject(name)
        yield from read_facts(_bullets(named, name), subject, "", vocabulary, faults)


def _look_alikes(
    named: dict[str, Part], vocabulary: Vocabulary, faults: list[Fault]
) -> tuple[LookAlike, ...]:
    part = named.get("look-alikes")
    if part is None:
        return ()
    faults.extend(not_told(bullet) for bullet in part.bullets)
    return tuple(read_look_alikes(part.inner, vocabulary, faults))


def _questions(named: dict[str, Part], faults: list[Fault]) -> Iterator[Question]:
    for part in _with_inner(named.get("questions")):
        yield from read_questions(part.numbered, faults)
        faults.extend(
            Fault("question-not-numbered", bullet.line.span, bullet.line.value)
            for bullet in part.bullets
        )


def _with_inner(part: Part | None) -> Iterator[Part]:
    if part:
        yield part
        for inner in part.inner:
            yield from _with_inner(inner)


def _pictures(named: dict[str, Part], faults: list[Fault]) -> tuple[Picture, ...]:
    part = named.get("pictures")
    if part is None:
        return ()
    faults.extend(
        Fault("picture-bullet", bullet.line.span, bullet.line.value, (), "no picture")
        for bullet in part.bullets
    )
    return tuple(read_pictures(part.inner, faults))
