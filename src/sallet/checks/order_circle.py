"""Rules of order that run in a circle.

Under `after:` a plant is taught behind another. If that one is to come behind the first again,
by one rule or by way of several, no order fits, and the rules would be set aside. Take one out.
"""

from __future__ import annotations

from dataclasses import dataclass
from graphlib import CycleError, TopologicalSorter
from itertools import pairwise
from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import listed
from sallet.course.teaching import plant_key
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from sallet.course.model import Course
    from sallet.lesson.bank import Bank
    from sallet.source import Span

ID: Final = "order-circle"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "course"
_LESSONS: Final = {
    "hemlock.md": "---\nname: Hemlock\n---\n",
    "sweet-cicely.md": "---\nname: Sweet cicely\n---\n",
}
GOOD = {"course.yml": "after: {Sweet cicely: Hemlock}\n", **_LESSONS}
BAD = {"course.yml": "after: {Sweet cicely: Hemlock, Hemlock: Sweet cicely}\n", **_LESSONS}

_HINT: Final = "take one of the rules out"
_Edge = tuple[str, str]
"""What comes then and what first, each told apart by its lesson: a plant has several names."""


@dataclass(frozen=True)
class _Rule:
    then: str
    first: str
    """Both names as written."""
    span: Span


def check(course: Course, bank: Bank) -> Iterator[Problem]:
    """Yield circles until none would be left if the rules pointed at were taken out."""
    rules = dict(_rules(course, bank))
    while circle := _circle(rules):
        last = max(circle, key=list(rules).index)
        turned = circle[circle.index(last) :] + circle[: circle.index(last)]
        yield Problem(rules[last].span, _message([rules[edge] for edge in turned]), _HINT)
        del rules[last]


def _rules(course: Course, bank: Bank) -> Iterator[tuple[_Edge, _Rule]]:
    for rule in course.after:
        for index, first in enumerate(rule.first):
            span = course.where("after", rule.plant, index)
            edge = (plant_key(rule.plant, bank), plant_key(first, bank))
            yield edge, _Rule(rule.plant, first, span)


def _circle(rules: Iterable[_Edge]) -> list[_Edge]:
    sorter: TopologicalSorter[str] = TopologicalSorter()
    for then, first in rules:
        sorter.add(then, first)
    try:
        sorter.prepare()
    except CycleError as error:
        # Each is to come before the next one; the last is the first again.
        names: list[str] = error.args[1]
        return [(then, first) for first, then in pairwise(names)][::-1]
    return []


def _message(circle: list[_Rule]) -> str:
    if len(circle) == 1:
        return f"`{circle[0].then}` cannot be taught after itself"
    names = listed([f"{rule.then}` after `{rule.first}" for rule in circle], "and")
    return f"the order runs in a circle: {names}"
