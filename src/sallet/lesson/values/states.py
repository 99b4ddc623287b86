"""States: `elliptic to ovate`, `raw, cooked`, `none`, `three-lobed (lower leaves)`."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from sallet.lesson.model import Fault
from sallet.lesson.value import Absent, Item, StateRange, Term, Words
from sallet.lesson.values.pieces import DASH, adverbs, qualified, split
from sallet.lesson.vocabulary import State, normal
from sallet.source import Span, Text

if TYPE_CHECKING:
    from sallet.lesson.value import Value
    from sallet.lesson.values.pieces import Piece
    from sallet.lesson.vocabulary import Label, Vocabulary

NONE: Final = "none"
_RANGE: Final = re.compile(rf"\s+to\s+|\s*[–—−]\s*|\s+{DASH}\s+")


def read_states(
    value: Text, label: Label, vocabulary: Vocabulary
) -> tuple[tuple[Item, ...], list[Fault]]:
    """Return the states of a value; what is not in the vocabulary is kept as Words."""
    faults: list[Fault] = []
    items: list[Item] = []
    for piece in _pieces(value, label):
        bare, often = adverbs(piece.text, vocabulary)
        if label.state(piece.text.value):
            bare, often = piece.text, ()
        read = _value(bare, label, faults)
        qualifiers = (*often, *qualified(piece.qualifiers, vocabulary))
        items.append(Item(read, piece.text.value, piece.span, qualifiers))
    return tuple(items), faults


def _pieces(value: Text, label: Label) -> tuple[Piece, ...]:
    # A state's own name may hold a comma or `and`: the whole value goes first.
    whole = split(value, re.compile(r"(?!)"))
    if whole and label.state(whole[0].text.value):
        return whole
    return split(value)


def _value(text: Text, label: Label, faults: list[Fault]) -> Value:
    if normal(text.value) == NONE and label.state(NONE) is None:
        return Absent()
    state = label.state(text.value)
    if state:
        return StateRange((state.name,), (Term(state.name, text.value),))
    ends = _ends(text)
    states = [label.state(end.value) for end in ends]
    known = [state for state in states if state]
    if len(known) == len(ends) > 1:
        between = label.between(known[0], known[-1])
        terms = (Term(s.name, end.value) for s, end in zip(known, ends, strict=True))
        return StateRange(tuple(state.name for state in between), tuple(terms))
    faults.extend(_faults(ends, states, label))
    return Words(text.value, understood=False)


def _ends(text: Text) -> list[Text]:
    match = _RANGE.search(text.value)
    if match is None:
        return [text]
    start = text.span.start
    return [
        Text(text.value[: match.start()], Span(start, start + match.start())),
        # Counted from the end: qualifiers between the two have been cut out of the words.
        Text(
            text.value[match.end() :],
            Span(text.span.end - len(text.value) + match.end(), text.span.end),
        ),
    ]


def _faults(ends: list[Text], states: list[State | None], label: Label) -> list[Fault]:
    return [
        Fault("unknown-state", end.span, end.value, label.nearest(end.value), label.name)
        for end, state in zip(ends, states, strict=True)
        if state is None
    ]
