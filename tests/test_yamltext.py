"""YAML whose scalars stay strings: what is read, what is refused, and where each stands."""

from __future__ import annotations

import time

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from sallet.source import Span
from sallet.yamltext import DEEPEST, Node, YamlFault, read_yaml


def messages(text: str) -> list[tuple[int, str]]:
    """Return each fault's line, from 1, and message."""
    return [(text.count("\n", 0, f.span.start) + 1, f.message) for f in read_yaml(text)[1]]


@pytest.mark.parametrize(
    "words",
    ["no", "No", "yes", "on", "off", "true", "null", "~", "1:30", "4-9", "1_000", "0x1F", "1e3",
     "2027-03-06", ".inf", "-2.6", "007", "=", "<<"],
)  # fmt: skip
def test_every_scalar_stays_the_letters_that_were_typed(words: str) -> None:
    node, faults = read_yaml(f"key: {words}\nlist: [{words}]\n{words}: value\n")
    assert faults == ()
    assert node.plain() == {"key": words, "list": [words], words: "value"}


def test_an_empty_value_is_an_empty_string_where_it_would_stand() -> None:
    node, faults = read_yaml("checked by:\nname: Ramsons\n")
    assert faults == ()
    assert node.plain() == {"checked by": "", "name": "Ramsons"}
    assert node.reach(["checked by"]).span == Span(11, 11)


def test_comments_quotes_blocks_and_tags_are_read_as_yaml_has_them() -> None:
    text = "a: food   # food | look-alike\nb: 'it''s: so'\nc: |\n  one\n  two\nd: !!int 5\n"
    node, faults = read_yaml(text)
    assert faults == ()
    assert node.plain() == {"a": "food", "b": "it's: so", "c": "one\ntwo\n", "d": "5"}


def test_a_tag_that_would_make_an_object_makes_nothing() -> None:
    node, faults = read_yaml("a: !!python/object/apply:os.system [ls]\n")
    assert faults == ()
    assert node.plain() == {"a": ["ls"]}


@pytest.mark.parametrize("text", ["", "\n\n", "# only a comment\n"])
def test_no_text_is_an_empty_mapping(text: str) -> None:
    node, faults = read_yaml(text)
    assert (node.plain(), faults) == ({}, ())


def test_spans_count_from_where_the_text_begins() -> None:
    text = "name: Ramsons\nseen at: {latitude: 54.4}\n"
    node, _ = read_yaml(text, start=100)
    span = node.reach(["seen at", "latitude"]).span
    assert text[span.start - 100 : span.end - 100] == "54.4"
    key = node.key("seen at")
    assert key is not None
    assert text[key.span.start - 100 : key.span.end - 100] == "seen at"


def test_a_path_that_is_not_there_reaches_the_last_node_on_its_way() -> None:
    node, _ = read_yaml("plants: [Ramsons, Elder]\n")
    assert node.reach(["plants", 1]).text == "Elder"
    assert node.reach(["plants", 7]).plain() == ["Ramsons", "Elder"]
    assert node.reach(["sessions", 0]) == node
    assert node.child("sessions") is None
    assert node.key("sessions") is None


# ---- faults -------------------------------------------------------------------------------

UNREADABLE = "this line cannot be read: "


@pytest.mark.parametrize(
    ("text", "fault", "rest"),
    [("a: b: c\nd: e\n", (1, "it holds a second colon followed by a space"), {"d": "e"}),
     ("a: b\n\tc: d\ne: f\n", (2, "it holds a tab; expected spaces"), {"a": "b", "e": "f"}),
     ("a: [b, c\nd: e\nf: g\n", (1, "its bracket `[` is not closed"), {"d": "e", "f": "g"}),
     ("a: {b: c\nd: e\n", (1, "its bracket `{` is not closed"), {"d": "e"}),
     ("a: 'b\nd: e\n", (1, "its quotation mark is not closed"), {"d": "e"}),
     ("a: b\nc d\ne: f\n", (2, "there is no colon behind its first word"), {"a": "b", "e": "f"}),
     ("c d\ne: f\ng: h\n", (1, "there is no colon behind its first word"), {"e": "f", "g": "h"}),
     ("a: @b\nc: d\n", (1, "its value begins with a sign that needs quotation marks"), {"c": "d"}),
     ("a: b\n- c\nd: e\n", (2, "its value ends too early, or it is indented unlike its neighbours"),
      {"a": "b", "d": "e"}),
     ("a: b\x07\nc: d\n", (1, "it holds a character that is no text"), {"c": "d"}),
     ("%YAML 9\n", (1, "it is not of the form `key: value`"), {})],
)  # fmt: skip
def test_a_broken_line_is_named_and_does_not_hide_the_next(
    text: str, fault: tuple[int, str], rest: dict[str, str]
) -> None:
    node, _ = read_yaml(text)
    assert messages(text) == [(fault[0], UNREADABLE + fault[1])]
    assert node.plain() == rest


def test_several_broken_lines_are_all_named() -> None:
    text = "a: b: c\nd: e\nf: [g\nh: i\nj: 'k\n"
    assert [line for line, _ in messages(text)] == [1, 3, 5]
    assert read_yaml(text)[0].plain() == {"d": "e", "h": "i"}


def test_a_key_that_stands_twice_is_named_at_the_second_and_the_first_holds() -> None:
    node, faults = read_yaml("a: 1\nb: {c: 2, c: 3}\na: 4\nd: [{e: 5, e: 6}]\n")
    assert [f.message for f in faults] == [f"the key `{k}` stands twice" for k in "cae"]
    assert {f.hint for f in faults} == {"keep one of the two lines"}
    assert node.plain() == {"a": "1", "b": {"c": "2"}, "d": [{"e": "5"}]}


@pytest.mark.parametrize("text", ["- a\n- b\n", "only words\n", "[a, b]\n", "'quoted'\n"])
def test_what_is_no_mapping_is_said_to_be_none(text: str) -> None:
    node, faults = read_yaml(text)
    assert node.plain() == {}
    assert [f.message for f in faults] == ["expected lines of the form `key: value`"]


def test_anchors_and_aliases_are_refused_line_by_line() -> None:
    text = "a: &x b\nc: *x\nd: e\n"
    node, faults = read_yaml(text)
    assert node.plain() == {"d": "e"}
    assert [text[f.span.start : f.span.end] for f in faults] == ["&x b", "*x"]
    assert {f.hint for f in faults} == {"put the value in quotation marks, or write it out"}


def test_a_few_lines_that_would_fill_the_memory_are_refused_at_once() -> None:
    """Nine aliases of nine aliases of nine: a thousand million values, had they been followed."""
    lines = ["a: &a [x, x, x, x, x, x, x, x, x]"]
    lines += [f"{n}: &{n} [{', '.join([f'*{p}'] * 9)}]" for p, n in zip("abcdefgh", "bcdefghi")]  # noqa: B905
    started = time.monotonic()
    node, faults = read_yaml("\n".join(lines))
    assert time.monotonic() - started < 5
    assert node.plain() == {}
    assert len(faults) == 9


def test_deep_nesting_is_refused_and_the_next_line_read() -> None:
    node, faults = read_yaml(f"a: {'[' * 5000}\nb: c\n")
    assert node.plain() == {"b": "c"}
    assert [f.message for f in faults] == [f"nested more than {DEEPEST} levels deep"]


def test_as_deep_as_is_allowed() -> None:
    levels = DEEPEST - 2
    node, faults = read_yaml(f"a: {'[' * levels}x{']' * levels}\n")
    assert faults == ()
    assert node.reach(["a", *[0] * levels]).text == "x"


# ---- anything at all ----------------------------------------------------------------------

PIECES = st.sampled_from(
    ["a", "key", ": ", ":", "\n", "  ", "- ", "[", "]", "{", "}", ",", "'", '"', "#", "&", "*",
     "!", "|", ">", "?", "%", "@", "`", "\t", "~", "---", "é", "☘", "\x07", "\ufeff"]
)  # fmt: skip


@settings(max_examples=200, deadline=None)
@given(st.lists(PIECES, max_size=25).map("".join))
def test_no_text_raises_and_every_place_lies_in_the_text(text: str) -> None:
    node, faults = read_yaml(text, start=7)
    assert isinstance(node.plain(), dict)
    for span in [*spans_of(node), *(fault.span for fault in faults)]:
        assert 7 <= span.start <= 7 + len(text)
        assert span.start <= span.end
    for fault in faults:
        assert isinstance(fault, YamlFault)
        assert fault.message
        assert fault.hint


def spans_of(node: Node) -> list[Span]:
    """Return the spans of a node and of all inside it."""
    inner = [*(node.items or ()), *(entry.node for entry in node.entries or ())]
    return [node.span, *(span for child in inner for span in spans_of(child))]


WORDS = st.text("abcdeé -0123456789", min_size=1, max_size=12).map(str.strip).filter(
    lambda words: words and not words.startswith("-")
)  # fmt: skip


@settings(max_examples=60, deadline=None)
@given(st.dictionaries(WORDS, WORDS, max_size=6))
def test_plain_keys_and_values_come_back_as_written(plain: dict[str, str]) -> None:
    text = "".join(f"{key}: {value}\n" for key, value in plain.items())
    node, faults = read_yaml(text)
    assert (node.plain(), faults) == (plain, ())
    for key, value in plain.items():
        span = node.reach([key]).span
        assert text[span.start : span.end] == value
