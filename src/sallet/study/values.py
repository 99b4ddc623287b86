"""Whether two recorded values of one character can be met on the same plant."""

from __future__ import annotations

from fractions import Fraction
from typing import TYPE_CHECKING, Final

from sallet.lesson.value import Absent, Count, Measure, StateRange

if TYPE_CHECKING:
    from sallet.lesson.value import Value
    from sallet.lesson.vocabulary import Label

ABOUT: Final = Fraction(1, 4)
"""How far `about` reaches: a quarter to either side. No flora says; ours, and generous."""
_SAY_ABSENT: Final = ("absent", "none", "no ", "not ", "un", "without ")
_SAY_ABSENT_LAST: Final = "less"


def can_both_hold(one: Value, other: Value, label: Label) -> bool:
    """Return False only where the values of a label are known to exclude each other."""
    match one, other:
        case (Absent(), _) | (_, Absent()):
            return _can_be_nothing(one) and _can_be_nothing(other)
        case StateRange(), StateRange():
            return _states_overlap(one, other, label)
        case Measure(), Measure():
            return _measures_overlap(one, other)
        case Count(), Count():
            return _counts_overlap(one, other)
    # Words that could not be read may mean anything.
    return True


def _can_be_nothing(value: Value) -> bool:
    match value:
        case StateRange(names):
            return any(_says_absent(name) for name in names)
        case Count(low):
            return low == 0
        case Measure():
            return False
    return True


def _says_absent(name: str) -> bool:
    """Return whether a state is itself a word for nothing: `unlobed`, `no sheath`, `hairless`."""
    return name.startswith(_SAY_ABSENT) or name.endswith(_SAY_ABSENT_LAST)


def _states_overlap(one: StateRange, other: StateRange, label: Label) -> bool:
    return any(
        not _exclude(a, b, label) for a in states_of(one, label) for b in states_of(other, label)
    )


def _exclude(a: str, b: str, label: Label) -> bool:
    first, second = label.state(a), label.state(b)
    if a == b or first is None or second is None:
        return False
    return b in first.excludes or a in second.excludes


def states_of(value: StateRange, label: Label) -> tuple[str, ...]:
    """Return the states of a range with those between ends that exclude each other.

    From `three-lobed` to `seven-lobed` there is `five-lobed`, also where the states are not
    said to be in order; from `ovate` to `elliptic`, which may meet on one leaf, is nothing.
    """
    first, last = label.state(value.names[0]), label.state(value.names[-1])
    if not (value.is_range and first and last and _exclude(first.name, last.name, label)):
        return value.names
    begin, end = sorted((label.states.index(first), label.states.index(last)))
    return tuple(state.name for state in label.states[begin : end + 1])


def _measures_overlap(one: Measure, other: Measure) -> bool:
    (low, high), (least, most) = _reach(one), _reach(other)
    return low <= most and least <= high


def _reach(measure: Measure) -> tuple[Fraction, Fraction]:
    margin = ABOUT if measure.about else Fraction(0)
    return measure.smallest * (1 - margin), measure.largest * (1 + margin)


def _counts_overlap(one: Count, other: Count) -> bool:
    (low, high), (least, most) = _extent(one), _extent(other)
    return (most is None or low <= most) and (high is None or least <= high)


def _extent(count: Count) -> tuple[Fraction, Fraction | None]:
    margin = ABOUT if count.about else Fraction(0)
    high = None if count.high is None else count.high * (1 + margin)
    return count.low * (1 - margin), high
