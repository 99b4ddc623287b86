"""The lines between `---`: what each becomes, what is refused, and where the body begins."""

from __future__ import annotations

from datetime import date

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from helpers.workshop import findings_of
from sallet.lesson.front_matter import elevation, front_matter_schema, read_front_matter
from sallet.lesson.model import FrontMatter, SeenAt
from sallet.source import Source

EXAMPLE = """---
name: Bramble
also called: [blackberry, brummel]
scientific name: Rubus fruticosus   L. agg.
family: Rosaceae
taught as: food                # food | look-alike
danger:
seen at: {latitude: 54.4, longitude: -2.6, elevation: 180 m}
written by: A Teacher
checked by:                    # nobody yet
---
Body.
"""


def front(text: str) -> FrontMatter:
    """Return the front matter of a text in which nothing is wrong."""
    found, _, faults = read_front_matter(Source("a.md", text))
    assert faults == []
    return found


def faults(text: str) -> list[tuple[str, str, str]]:
    """Return each fault's kind, detail, and the text at its place."""
    found = read_front_matter(Source("a.md", text))[2]
    return [(f.kind, f.detail, text[f.span.start : f.span.end]) for f in found]


def body(text: str) -> str:
    """Return the text behind the front matter."""
    return text[read_front_matter(Source("a.md", text))[1] :]


def test_every_key_of_the_format() -> None:
    found = front(EXAMPLE)
    assert (found.name, found.also_called) == ("Bramble", ("blackberry", "brummel"))
    assert (found.scientific_name, found.family) == ("Rubus fruticosus L. agg.", "Rosaceae")
    assert (found.taught_as, found.danger) == ("food", None)
    assert found.seen_at == SeenAt(54.4, -2.6, 180)
    assert (found.written_by, found.checked_by, found.checked_on) == ("A Teacher", "", None)
    assert body(EXAMPLE) == "Body.\n"


def test_a_look_alike_carries_its_danger() -> None:
    found = front("---\ntaught as: look-alike\ndanger: deadly\n---\n")
    assert (found.taught_as, found.danger) == ("look-alike", "deadly")


@pytest.mark.parametrize("word", ["no", "on", "1:30", "4-9", "null", "2027-03-06"])
def test_strings_stay_strings(word: str) -> None:
    assert front(f"---\nname: {word}\nalso called: [{word}]\n---\n").also_called == (word,)


@pytest.mark.parametrize(
    ("words", "who", "when"),
    [("A Reader, 2027-03-06", "A Reader", date(2027, 3, 6)),
     ("A Reader on 2027-03-06", "A Reader", date(2027, 3, 6)),
     ("A Reader (2027-03-06)", "A Reader", date(2027, 3, 6)),
     ("2027-03-06", "", date(2027, 3, 6)),
     ("A Reader", "A Reader", None),
     ("A Reader, 2027-13-06", "A Reader, 2027-13-06", None),
     ("A Reader, last spring", "A Reader, last spring", None)],
)  # fmt: skip
def test_the_second_reader_and_the_date(words: str, who: str, when: date | None) -> None:
    found = front(f"---\nchecked by: {words}\n---\n")
    assert (found.checked_by, found.checked_on) == (who, when)


@pytest.mark.parametrize(
    ("words", "checked"),
    [("A Reader, 2027-03-06", True), ("A Reader", False), ("2027-03-06", False), ("", False),
     ("A Teacher, 2027-03-06", False), ("a teacher, 2027-03-06", False)],
)  # fmt: skip
def test_a_lesson_is_checked_if_another_than_its_writer_has_read_it_on_a_day(
    words: str,
    checked: bool,  # noqa: FBT001
) -> None:
    text = f"---\nwritten by: A Teacher\nchecked by: {words}\n---\n"
    assert front(text).is_checked == checked
    assert (findings_of({"a.md": text}, "unreviewed") == []) == checked


@pytest.mark.parametrize(
    ("words", "metres"), [("180 m", 180), ("0 m", 0), ("-3m", -3), ("590 ft", 179.832)]
)
def test_a_height_above_the_sea(words: str, metres: float) -> None:
    """590 ft is 590 × 0.3048 m exactly (international yard and pound agreement, 1959)."""
    assert elevation(words) == pytest.approx(metres)


@pytest.mark.parametrize("words", ["180", "high", "180 cm", "", "m"])
def test_a_height_needs_a_number_and_metres_or_feet(words: str) -> None:
    with pytest.raises(ValueError, match="expected a height such as `180 m` or `590 ft`"):
        elevation(words)


@pytest.mark.parametrize(
    ("text", "rest"),
    [("---\nname: x\n---\nBody\n", "Body\n"), ("\n\n---\nname: x\n---\n", ""),
     ("---\nname: x\n---", ""), ("---  \nname: x\n---\t\nBody", "Body"),
     ("---\n---\nBody", "Body"), ("---\nname: x\n# a comment\n---\nBody\n\n---\n", "Body\n\n---\n")],
)  # fmt: skip
def test_the_body_begins_behind_the_second_fence(text: str, rest: str) -> None:
    assert faults(text) == []
    assert body(text) == rest


@pytest.mark.parametrize("text", ["", "Body", "Body\n\n---\n\nMore\n\n---\n", " ---\nname: x\n"])
def test_without_a_fence_at_the_top_all_is_body(text: str) -> None:
    assert faults(text) == [("front-matter", "missing", "")]
    assert body(text) == text


@pytest.mark.parametrize(
    ("text", "rest"),
    [("---\nname: x\n\n## Cautions\n", "\n## Cautions\n"), ("---\nname: x\n## C\n", "## C\n"),
     ("---\nname: x\n", ""), ("---", ""), ("---\nname: x\n\n## C\n\n---\n", "\n## C\n\n---\n")],
)  # fmt: skip
def test_an_open_head_ends_where_the_text_begins(text: str, rest: str) -> None:
    assert faults(text) == [("front-matter", "unclosed", "---")]
    assert body(text) == rest


def test_an_open_head_is_read_as_far_as_it_goes() -> None:
    found, _, _ = read_front_matter(Source("a.md", "---\nname: Ramsons\n\n## Cautions\n"))
    assert found.name == "Ramsons"


def test_each_fault_stands_at_its_words() -> None:
    text = "---\nnmae: x\ntaught as: salad\nseen at: {latitude: 99, lon: 2}\nname: a: b\n---\n"
    assert sorted(faults(text)) == [
        ("front-matter", "missing value", "{latitude: 99, lon: 2}"),
        ("front-matter", "value", "99"),
        ("front-matter", "value", "salad"),
        ("front-matter", "yaml", ":"),
        ("unknown-key", "", "lon"),
        ("unknown-key", "", "nmae"),
    ]


def test_a_value_at_fault_takes_no_other_with_it() -> None:
    found, _, _ = read_front_matter(Source("a.md", "---\nname: x\ndanger: nasty\nfamily: y\n---\n"))
    assert (found.name, found.danger, found.family) == ("x", None, "y")


def test_values_know_their_places_and_of_two_the_first_holds() -> None:
    text = "---\nname: one\nname: two\n---\n"
    found, _, _ = read_front_matter(Source("a.md", text))
    assert found.name == "one"
    span = found.where("name")
    assert text[span.start : span.end] == "one"
    assert found.where("family") == found.span


def test_the_schema_for_editors_knows_every_key_and_no_other() -> None:
    schema = front_matter_schema()
    assert schema["$schema"] == "https://json-schema.org/draft/2020-12/schema"
    assert list(schema["properties"]) == [
        "name", "also called", "scientific name", "family", "taught as", "danger", "seen at",
        "written by", "checked by",
    ]  # fmt: skip
    assert schema["additionalProperties"] is False


PIECES = st.sampled_from(
    ["---\n", "name: ", "seen at: ", "{latitude: 1", "}", "x", "\n", "## A\n", "danger: deadly\n",
     "checked by: x, 2027-03-06\n", "[", "'", ": ", "#", "é", "&a ", "also called: [a, b]\n"]
)  # fmt: skip


@settings(max_examples=200, deadline=None)
@given(st.lists(PIECES, max_size=20).map("".join))
def test_no_text_raises_and_every_place_lies_in_the_text(text: str) -> None:
    found, start, wrong = read_front_matter(Source("a.md", text))
    assert 0 <= start <= len(text)
    for span in [*(fault.span for fault in wrong), *(span for _, span in found.spans)]:
        assert 0 <= span.start <= span.end <= len(text)
