"""States: the format's examples, ranges, absence, and words that are not known."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from helpers.values import (
    VALUES,
    VOCABULARY,
    faults_of,
    hold_to_the_text,
    text_of,
    values_of,
)
from sallet.lesson.value import Absent, Item, StateRange, Term, Value, Words
from sallet.lesson.values.states import read_states
from sallet.lesson.vocabulary import Label, State, Vocabulary

if TYPE_CHECKING:
    from sallet.lesson.model import Fault
    from sallet.source import Text


def label(*names: str, ordered: bool = False) -> Label:
    """Return a label of some states."""
    states = tuple(State(name, "an invented state") for name in names)
    return Label("leaves", "edge", "states", "an invented label", "form",
                 states=states, ordered=ordered)  # fmt: skip


EDGE = label("entire", "serrate", "crenate", "three-lobed", "elliptic", "ovate")
WET = label("dry", "damp", "wet", "under water", ordered=True)
PHRASES = label("soft, then hard", "black and white", "black", "to the point")


def read(value: Text, vocabulary: Vocabulary) -> tuple[tuple[Item, ...], list[Fault]]:
    """Return the states of a value, by the label EDGE."""
    return read_states(value, EDGE, vocabulary)


def states(words: str, of: Label = EDGE) -> list[Value]:
    """Return the values read."""
    return [item.value for item in read_states(text_of(words), of, VOCABULARY)[0]]


def one(name: str, words: str = "") -> StateRange:
    """Return a single state."""
    return StateRange((name,), (Term(name, words or name),))


@pytest.mark.parametrize(
    ("words", "values"),
    [("entire", [one("entire")]),
     ("Entire", [one("entire", "Entire")]),
     ("three lobed", [one("three-lobed", "three lobed")]),
     ("serrate, crenate", [one("serrate"), one("crenate")]),
     ("serrate or crenate", [one("serrate"), one("crenate")]),
     ("none", [Absent()]),
     ("three-lobed (lower leaves), none (upper leaves)", [one("three-lobed"), Absent()])],
)  # fmt: skip
def test_the_states_of_the_format_page(words: str, values: list[Value]) -> None:
    assert states(words) == values
    assert faults_of(read, words) == []


@pytest.mark.parametrize("words", ["elliptic to ovate", "elliptic–ovate", "elliptic - ovate"])
def test_a_range_without_an_order_holds_its_two_ends(words: str) -> None:
    ends = (Term("elliptic", "elliptic"), Term("ovate", "ovate"))
    assert states(words) == [StateRange(("elliptic", "ovate"), ends)]


@pytest.mark.parametrize(("words", "ends"), [("dry to wet", "dry wet"), ("wet to dry", "wet dry")])
def test_a_range_of_an_ordered_label_holds_all_between(words: str, ends: str) -> None:
    terms = tuple(Term(end, end) for end in ends.split())
    assert states(words, WET) == [StateRange(("dry", "damp", "wet"), terms)]


@pytest.mark.parametrize("words", ["soft, then hard", "black and white", "to the point"])
def test_a_state_whose_name_holds_a_comma_or_a_small_word_is_found_whole(words: str) -> None:
    assert states(words, PHRASES) == [one(words)]


def test_absence_is_a_state_where_the_vocabulary_says_so() -> None:
    assert states("none", label("none", "many")) == [one("none")]


def test_words_of_frequency_are_qualifiers_unless_they_belong_to_the_state() -> None:
    (item,) = read_states(text_of("usually serrate"), EDGE, VOCABULARY)[0]
    assert (item.value, [q.name for q in item.qualifiers]) == (one("serrate"), ["usually"])
    (item,) = read_states(text_of("usually serrate"), label("usually serrate"), VOCABULARY)[0]
    assert (item.value, item.qualifiers) == (one("usually serrate"), ())


@pytest.mark.parametrize(
    ("words", "wrong"),
    [("entyre", ["entyre"]),
     ("entyre to serrrate", ["entyre", "serrrate"]),
     ("entire to serrrate", ["serrrate"]),
     ("entire, zzz, crenate", ["zzz"]),
     ("entire (old) to zzz", ["zzz"]),
     ("none to zzz", ["none", "zzz"])],
)  # fmt: skip
def test_words_that_are_not_known_are_kept_and_each_is_named_at_its_place(
    words: str, wrong: list[str]
) -> None:
    assert faults_of(read, words) == [("unknown-state", each) for each in wrong]
    kept = [value for value in values_of(read, words) if isinstance(value, Words)]
    assert len(kept) == 1
    assert not kept[0].understood


def test_the_nearest_terms_and_the_label_stand_in_the_fault() -> None:
    (fault,) = read_states(text_of("entyre"), EDGE, VOCABULARY)[1]
    assert (fault.nearest, fault.detail) == (("entire",), "edge")


def test_an_empty_value_has_no_states() -> None:
    assert states("") == []


ALL = [(lab, state) for subject in VOCABULARY.subjects for lab in subject.labels
       for state in lab.states]  # fmt: skip


@settings(max_examples=200, deadline=None)
@given(st.sampled_from(ALL))
def test_every_state_of_the_vocabulary_is_read_back_by_its_name(pair: tuple[Label, State]) -> None:
    of, state = pair
    assert states(state.name, of) == [one(state.name)]
    for word in state.also:
        assert states(word, of) == [one(state.name, word)]


@settings(max_examples=150, deadline=None)
@given(VALUES)
def test_no_value_raises_or_loses_its_words(words: str) -> None:
    hold_to_the_text(read, words)
