"""Runs the checks over lessons and a course, and stamps what they find."""

from __future__ import annotations

from typing import TYPE_CHECKING

from sallet.checks import CHECKS
from sallet.findings import Finding, Severity, in_order

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Mapping

    from sallet.cards.printed import Printed
    from sallet.checks.problem import Check, Problem
    from sallet.course.model import Course
    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson
    from sallet.source import Source


def run_checks(
    bank: Bank, lessons: Iterable[Lesson], course: Course | None = None
) -> list[Finding]:
    """Return what is found in some lessons of a bank, and in the course, in order of place."""
    raised = course.severities if course else {}
    found = [finding for lesson in lessons for finding in _lesson_findings(lesson, bank, raised)]
    if course:
        found += _course_findings(course, bank, raised)
    return in_order(found)


def run_print_checks(printed: Printed, course: Course, bank: Bank) -> list[Finding]:
    """Return what is found in the measured cards of a course, and in the letters of its texts."""
    raised = course.severities
    return in_order([*_card_findings(printed, bank, raised), *_text_findings(printed, raised)])


def _card_findings(
    printed: Printed, bank: Bank, raised: Mapping[str, Severity]
) -> Iterator[Finding]:
    for module in CHECKS:
        if module.LOOKS_AT == "card":
            for fitted in printed.fitted:
                for problem in module.check(fitted, bank):
                    yield _stamped(problem, module, fitted.card.lesson.source, raised)


def _text_findings(printed: Printed, raised: Mapping[str, Severity]) -> Iterator[Finding]:
    for module in CHECKS:
        if module.LOOKS_AT == "print":
            for source, text in printed.texts:
                for problem in module.check(text, printed.missing):
                    yield _stamped(problem, module, source, raised)


def _lesson_findings(
    lesson: Lesson, bank: Bank, raised: Mapping[str, Severity]
) -> Iterator[Finding]:
    for module in CHECKS:
        if module.LOOKS_AT == "lesson":
            for problem in module.check(lesson, bank):
                yield _stamped(problem, module, lesson.source, raised)


def _course_findings(
    course: Course, bank: Bank, raised: Mapping[str, Severity]
) -> Iterator[Finding]:
    for module in CHECKS:
        if module.LOOKS_AT == "course":
            for problem in module.check(course, bank):
                yield _stamped(problem, module, course.source, raised)


def _stamped(
    problem: Problem, module: Check, source: Source, raised: Mapping[str, Severity]
) -> Finding:
    position = source.position(problem.span.start)
    severity = max(module.SEVERITY, raised.get(module.ID, Severity.NOTE), key=lambda s: s.rank)
    return Finding(
        file=source.path,
        line=position.line,
        column=position.column,
        check=module.ID,
        severity=severity,
        message=problem.message,
        hint=problem.hint,
    )
