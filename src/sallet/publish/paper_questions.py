"""The test paper of a course and its answers: the questions of the lessons, numbered through.

The two are two documents, made from different values: nothing of an answer is in the paper.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import count, groupby
from string import ascii_uppercase
from typing import TYPE_CHECKING, Any, Final

from sallet.cards.data import runs_data
from sallet.cards.plain import runs
from sallet.publish.paper_parts import head_data, unread_words
from sallet.season.reasons import names_of
from sallet.typesetting.jobs import Job

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Iterator, Sequence

    from sallet.cards.plain import Run
    from sallet.lesson.model import Lesson, Question
    from sallet.publish.site import Site

PAPER: Final = "print/test-paper.pdf"
ANSWERS: Final = "print/test-answers.pdf"
Words = tuple["Run", ...]


@dataclass(frozen=True)
class PaperQuestion:
    """A question as it stands on paper."""

    number: int
    """Counted from 1 through the whole paper."""
    plant: str
    """The heading under which it stands."""
    prompt: Words
    options: tuple[Words, ...]
    right: tuple[str, ...]
    """The letter of the right option: of a draft there may be none, or several."""
    feedback: Words = ()

    @property
    def letters(self) -> tuple[str, ...]:
        """Return the letters of the options."""
        return tuple(map(letter, range(len(self.options))))


def question_papers(site: Site) -> Iterator[tuple[str, Job]]:
    """Yield the test paper and its answers; nothing for a course without questions."""
    questions = paper_questions(site.ordered)
    if questions:
        yield PAPER, Job("questions", paper_data(questions, site))
        yield ANSWERS, Job("answers", answers_data(questions, site))


def paper_questions(lessons: Iterable[Lesson]) -> tuple[PaperQuestion, ...]:
    """Return the questions of some lessons in their order."""
    numbers = count(1)
    return tuple(_question(next(numbers), x.name, q) for x in lessons for q in x.questions)


def letter(at: int) -> str:
    """Return the letter of an option by its place from 0: A to Z, then AA and so on."""
    return ascii_uppercase[at % 26] * (at // 26 + 1)


def paper_data(questions: Sequence[PaperQuestion], site: Site) -> dict[str, Any]:
    """Return the test paper as its template is given it: no answer is among it."""
    return head_data(site, "Test paper") | {
        "count": len(questions),
        "plants": _by_plant(questions, _asked),
    }


def answers_data(questions: Sequence[PaperQuestion], site: Site) -> dict[str, Any]:
    """Return the answers as their template is given them."""
    unread = [x for x in site.ordered if x.questions and unread_words(x)]
    return head_data(site, "Answers to the test paper") | {
        "unread": names_of(unread),
        "plants": _by_plant(questions, _answered),
    }


def _question(number: int, plant: str, question: Question) -> PaperQuestion:
    options = question.options
    return PaperQuestion(
        number=number,
        plant=plant,
        prompt=runs(question.prompt.value),
        options=tuple(runs(option.text.value) for option in options),
        right=tuple(letter(at) for at, option in enumerate(options) if option.right),
        feedback=runs(question.feedback.text),
    )


def _by_plant(
    questions: Iterable[PaperQuestion], told: Callable[[PaperQuestion], dict[str, Any]]
) -> list[dict[str, Any]]:
    grouped = groupby(questions, key=lambda question: question.plant)
    return [{"name": name, "questions": [told(q) for q in group]} for name, group in grouped]


def _asked(question: PaperQuestion) -> dict[str, Any]:
    return {
        "number": question.number,
        "prompt": runs_data(question.prompt),
        "letters": list(question.letters),
        "options": [runs_data(option) for option in question.options],
    }


def _answered(question: PaperQuestion) -> dict[str, Any]:
    options = zip(question.letters, question.options, strict=True)
    return {
        "number": question.number,
        "right": [[a, runs_data(words)] for a, words in options if a in question.right],
        "feedback": runs_data(question.feedback),
    }
