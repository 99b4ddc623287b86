"""What a check yields, and the shape of a check module."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal, Protocol

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Mapping

    from sallet.cards.fitting import Fitted
    from sallet.course.model import Course
    from sallet.findings import Severity
    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson
    from sallet.source import Span


@dataclass(frozen=True)
class Problem:
    """What is wrong and where; the runner adds the file, the check's id and its severity."""

    span: Span
    message: str
    """Lower case, no full stop, the words at fault in backticks, what was expected."""
    hint: str
    """What to do."""


class _Module(Protocol):
    @property
    def ID(self) -> str: ...  # noqa: N802
    @property
    def SEVERITY(self) -> Severity: ...  # noqa: N802
    @property
    def GOOD(self) -> str | Mapping[str, str]:  # noqa: N802
        """A snippet in which the check finds nothing: a lesson, or files by name."""

    @property
    def BAD(self) -> str | Mapping[str, str]:  # noqa: N802
        """A snippet in which it finds something."""


class LessonCheck(_Module, Protocol):
    """A module that checks one lesson. Its docstring is what its users read."""

    @property
    def LOOKS_AT(self) -> Literal["lesson"]:  # noqa: N802
        """What `check` is given first."""

    @property
    def check(self) -> Callable[[Lesson, Bank], Iterator[Problem]]:
        """The function that yields the problems of a lesson."""


class CourseCheck(_Module, Protocol):
    """A module that checks course.yml against the lessons."""

    @property
    def LOOKS_AT(self) -> Literal["course"]:  # noqa: N802
        """What `check` is given first."""

    @property
    def check(self) -> Callable[[Course, Bank], Iterator[Problem]]:
        """The function that yields the problems of a course."""


class CardCheck(_Module, Protocol):
    """A module that checks a field card that has been measured."""

    @property
    def LOOKS_AT(self) -> Literal["card"]:  # noqa: N802
        """What `check` is given first."""

    @property
    def check(self) -> Callable[[Fitted, Bank], Iterator[Problem]]:
        """The function that yields the problems of a card."""


class PrintCheck(_Module, Protocol):
    """A module that checks a text that may come into print."""

    @property
    def LOOKS_AT(self) -> Literal["print"]:  # noqa: N802
        """What `check` is given first."""

    @property
    def check(self) -> Callable[[str, frozenset[str]], Iterator[Problem]]:
        """The function that yields the problems of a text; with it go the letters that fonts lack."""


Check = LessonCheck | CourseCheck | CardCheck | PrintCheck
