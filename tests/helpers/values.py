"""Values as they stand behind a colon, and what is asked of every reader of them."""

from __future__ import annotations

from typing import TYPE_CHECKING

from hypothesis import strategies as st

from sallet.lesson.vocabulary_file import load_vocabulary
from sallet.source import Span, Text

if TYPE_CHECKING:
    from collections.abc import Callable

    from sallet.lesson.model import Fault
    from sallet.lesson.value import Item, Value
    from sallet.lesson.vocabulary import Vocabulary

    Reader = Callable[[Text, Vocabulary], tuple[tuple[Item, ...], list[Fault]]]

VOCABULARY = load_vocabulary()
START = 40
"""Where the value begins: offsets are never by chance those within it."""
PIECES = st.sampled_from(
    ["1", "10", "25", "1/2", "½", "2.5", " ", "  ", "–", "-", "—", ",", ";", "(", ")", "cm", "in",
     "'", '"', " to ", " or ", " and ", "about ", "at most ", "usually ", "none", "many", "more",
     "March", "mid ", "early ", "31", "June", "all year", "7a", "ovate", "toothed", "lower leaves",
     "x", "é", "+", "USDA ", "(2–)", "(–30)"]
)  # fmt: skip
VALUES = st.lists(PIECES, max_size=14).map("".join).map(str.strip)


def text_of(words: str) -> Text:
    """Return words as they stand behind a colon."""
    return Text(words, Span(START, START + len(words)))


def values_of(reader: Reader, words: str) -> list[Value]:
    """Return the values read, without their places."""
    return [item.value for item in reader(text_of(words), VOCABULARY)[0]]


def faults_of(reader: Reader, words: str) -> list[tuple[str, str]]:
    """Return each fault's kind and the words at its place."""
    faults = reader(text_of(words), VOCABULARY)[1]
    return [(f.kind, words[f.span.start - START : f.span.end - START]) for f in faults]


def qualifiers_of(reader: Reader, words: str) -> list[list[str]]:
    """Return the words of each item's qualifiers."""
    return [[q.words for q in i.qualifiers] for i in reader(text_of(words), VOCABULARY)[0]]


def hold_to_the_text(reader: Reader, words: str) -> None:
    """Assert that every place lies in the text and that no letter of it is dropped."""
    items, faults = reader(text_of(words), VOCABULARY)
    for span in [*(item.span for item in items), *(fault.span for fault in faults)]:
        assert START <= span.start <= span.end <= START + len(words)
    kept = "".join(
        word for item in items for word in (item.text, *(q.words for q in item.qualifiers))
    )
    for letter in "é½+":
        assert words.count(letter) <= kept.count(letter)
