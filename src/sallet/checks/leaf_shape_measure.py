"""A shape of leaves or leaflets that does not fit the length and width beside it.

`Lanceolate` means three to six times as long as wide. Where a lesson says lanceolate and
gives a length of 6 cm and a width of 5 cm, one of the three is wrong, and the drawing made
from them will be too. The middle length is divided by the middle width; `at most` and `at
least` are left out. The classes are those of Radford and others (1974). They leave gaps, so
a class is taken to reach to the middle of the gap beside it, and at the least a quarter past
its own end; several shapes allow everything between them. Leaves of one kind (lower, young …)
are compared with the measures of that kind.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import shown
from sallet.findings import Severity
from sallet.lesson.leaf_shape import Ratio, hull, ratio_measured, shape_for, widened
from sallet.lesson.value import Measure, StateRange

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Fact, Lesson
    from sallet.lesson.value import Item
    from sallet.lesson.vocabulary import Label, State

ID: Final = "leaf-shape-measure"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = """
## Identification
### Leaves
- shape: lanceolate
- length: 8–12 cm
- width: 2–3 cm
"""
BAD = """
## Identification
### Leaves
- shape: lanceolate
- length: 8–12 cm
- width: 6–8 cm
"""

LABELS: Final = (
    ("shape", "length", "width"),
    ("leaflet shape", "leaflet length", "leaflet width"),
)
Items = dict[frozenset[str], list["Item"]]


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:
    """Yield each shape that its own measures contradict."""
    for facts in (lesson.facts, *(look.facts for look in lesson.look_alikes)):
        of_leaves = [fact for fact in facts if fact.subject == "leaves"]
        for names in LABELS:
            label = bank.vocabulary.label("leaves", names[0])
            if label:
                yield from _of_one_kind(of_leaves, names, label)


def _of_one_kind(
    facts: Iterable[Fact], names: tuple[str, str, str], label: Label
) -> Iterator[Problem]:
    shapes, lengths, widths = (_by_place(facts, name) for name in names)
    for where, items in shapes.items():
        length, width = _measure(lengths.get(where)), _measure(widths.get(where))
        ratio = ratio_measured(length, width) if length and width else None
        if ratio is not None:
            yield from _compared(items, ratio, label)


def _by_place(facts: Iterable[Fact], name: str) -> Items:
    found: Items = {}
    for fact in facts:
        if fact.label == name and not fact.part:
            for item in fact.items:
                found.setdefault(item.where, []).append(item)
    return found


def _measure(items: Iterable[Item] | None) -> Measure | None:
    """Return the first length that has two ends: `at most 5 cm` tells no middle."""
    measures = (item.value for item in items or () if isinstance(item.value, Measure))
    return next((measure for measure in measures if measure.low), None)


def _compared(items: list[Item], ratio: float, label: Label) -> Iterator[Problem]:
    states = list(_states(items, label))
    allowed = hull(states)
    # A word that is no known shape may allow anything.
    all_known = all(isinstance(item.value, StateRange) for item in items)
    if not all_known or allowed is None or widened(allowed).holds(ratio):
        return
    words = ", ".join(item.text for item in items)
    message = (
        f"{shown(words)} means a length of {_told(allowed)} widths, but here it is {ratio:.2g}"
    )
    better = shape_for(ratio, states[0], label)
    hint = f"write `{better}`, or look" if better else "look"
    yield Problem(items[0].span, message, f"{hint} at the length and the width again")


def _states(items: Iterable[Item], label: Label) -> Iterator[State]:
    for item in items:
        if isinstance(item.value, StateRange):
            found = (label.state(name) for name in item.value.names)
            yield from (state for state in found if state)


def _told(ratio: Ratio) -> str:
    if ratio.high is None:
        return f"more than {ratio.low:g}"
    return f"{ratio.low:g}" if ratio.low == ratio.high else f"{ratio.low:g}–{ratio.high:g}"
