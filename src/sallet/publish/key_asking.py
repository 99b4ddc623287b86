"""The key that is ticked: what is asked of each organ, and what each answer speaks against."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import groupby
from typing import TYPE_CHECKING, Final, cast

from sallet.lesson.dangers import danger_of
from sallet.publish.key_against import harms, look_alikes
from sallet.publish.key_words import organ_asked, state_asked
from sallet.study.glossary import anchor
from sallet.study.table import CONTRADICTIONS_AGAINST_GRAVE

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from sallet.lesson.model import Lesson
    from sallet.lesson.vocabulary import Label, State, Subject, Vocabulary
    from sallet.publish.key_against import Against
    from sallet.publish.key_words import Explainer
    from sallet.publish.sheets import Setting
    from sallet.study.plant_table import Asked
    from sallet.study.table import Character, Table

WORST_FIRST: Final = ("deadly", "poisonous", "unknown", "harmful", "harmless", "food")
"""Dangers in the order in which plants are listed; what is not told may be any."""


@dataclass(frozen=True)
class Answer:
    """A box to tick."""

    words: str
    fits: str
    """The plants on which it could be met, by their numbers, of those of which anything is told."""
    shows: str
    """The plants of which it is recorded."""


@dataclass(frozen=True)
class Question:
    """A character as a question."""

    number: int
    """Its place in the table."""
    asks: str
    organ: str
    """The organ, and the place on it, as a heading."""
    place: str
    """The same where it is not the whole organ, else nothing."""
    label: Label
    is_reliable: bool
    kind: str
    """What it tells of: two questions of one kind are one piece of evidence."""
    untold: str
    """The plants of which nothing is told, by their numbers."""
    answers: tuple[Answer, ...]
    meaning: str
    """The id of what explains its words."""
    effort: float
    """What it costs to answer, for each plant of which it tells something."""


@dataclass(frozen=True)
class OrganAsked:
    """What is asked of an organ: what may be trusted by itself first, what is seen easily first."""

    subject: Subject
    firm: tuple[Question, ...]
    others: tuple[Question, ...]


@dataclass(frozen=True)
class Meaning:
    """What the words of a question mean."""

    ident: str
    label: Label
    heading: str
    states: tuple[tuple[str, State], ...]
    """The answers as they are worded, and what they mean."""
    way: str
    """The place on the words page, or nothing."""


@dataclass(frozen=True)
class Suspect:
    """A plant that it could be."""

    number: int
    lesson: Lesson
    is_grave: bool
    harms: bool
    against: tuple[Against, ...]


@dataclass(frozen=True)
class Ticking:
    """All that the page to tick on needs."""

    organs: tuple[OrganAsked, ...]
    suspects: tuple[Suspect, ...]
    """The plants of the course, those that harm first."""
    meanings: tuple[Meaning, ...]
    enough: int = CONTRADICTIONS_AGAINST_GRAVE
    """So many reliable characters rule a dangerous plant out."""


def ticking(table: Table, setting: Setting, explain: Explainer) -> Ticking:
    """Return the key that is ticked, for a table whose plants have pages."""
    vocabulary = setting.bank.vocabulary
    questions = [
        _question(number, character, vocabulary)
        for number, character in enumerate(table.characters)
    ]
    suspects = (_suspect(number, table, setting) for number in range(len(table.plants)))
    return Ticking(
        organs=tuple(_organs(questions, vocabulary)),
        suspects=tuple(sorted(suspects, key=_worst_first)),
        meanings=tuple(_meanings(questions, explain, vocabulary)),
    )


def _question(number: int, character: Character, vocabulary: Vocabulary) -> Question:
    asked = cast("Asked", character.name)
    organ = organ_asked(asked, vocabulary)
    return Question(
        number=number,
        asks=asked.label.asks,
        organ=organ,
        place=organ if asked.where or asked.part else "",
        label=asked.label,
        is_reliable=character.is_reliable,
        kind=character.kind,
        untold=_numbers(p for p, told in enumerate(character.shown) if told is None),
        answers=tuple(_answers(character)),
        meaning=f"meaning-{anchor(asked.organ, asked.label.name)}",
        effort=character.cost / sum(told is not None for told in character.shown),
    )


def _answers(character: Character) -> Iterator[Answer]:
    for option, words in enumerate(character.options):
        fits, shows = (
            _numbers(plant for plant, told in enumerate(by_plant) if told and option in told)
            for by_plant in (character.allowed, character.shown)
        )
        yield Answer(words, fits, shows)


def _numbers(plants: Iterable[int]) -> str:
    return " ".join(map(str, plants))


def _organs(questions: list[Question], vocabulary: Vocabulary) -> Iterator[OrganAsked]:
    least: dict[str, float] = {}
    for question in questions:
        effort = least.get(question.meaning, question.effort)
        least[question.meaning] = min(question.effort, effort)

    def easy_first(question: Question) -> tuple[float, str, float]:
        # What is asked of several places stands together.
        return least[question.meaning], question.meaning, question.effort

    for name, group in groupby(questions, key=lambda question: question.label.subject):
        ordered = sorted(group, key=easy_first)
        yield OrganAsked(
            subject=vocabulary.subject(name),
            firm=tuple(q for q in ordered if q.is_reliable),
            others=tuple(q for q in ordered if not q.is_reliable),
        )


def _meanings(
    questions: list[Question], explain: Explainer, vocabulary: Vocabulary
) -> Iterator[Meaning]:
    by_ident: dict[str, list[Question]] = {}
    for question in questions:
        by_ident.setdefault(question.meaning, []).append(question)
    for ident, asking in by_ident.items():
        label = asking[0].label
        words = dict.fromkeys(answer.words for q in asking for answer in q.answers)
        found = ((word, state_asked(word, label)) for word in words)
        yield Meaning(
            ident=ident,
            label=label,
            heading=vocabulary.subject(label.subject).heading,
            states=tuple((word, state) for word, state in found if state),
            way=explain.way(label),
        )


def _worst_first(suspect: Suspect) -> tuple[bool, int, int]:
    danger = WORST_FIRST.index(danger_of(suspect.lesson))
    return not suspect.harms, danger, suspect.number


def _suspect(number: int, table: Table, setting: Setting) -> Suspect:
    lesson = setting.taught[str(table.plants[number])]
    return Suspect(
        number=number,
        lesson=lesson,
        is_grave=number in table.grave,
        harms=harms(lesson),
        against=look_alikes(lesson, setting),
    )
