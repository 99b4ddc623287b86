"""course.yml, read whole and with all its faults at once."""

from __future__ import annotations

from datetime import date, time
from pathlib import Path
from typing import Any

import jsonschema  # type: ignore[import-untyped]
import pytest
import yaml
from hypothesis import given
from hypothesis import strategies as st

from sallet.course.model import After, Course, Observation, Place, Printing, SeenOn, Session
from sallet.course.reading import course_schema, read_course
from sallet.course.series import Series
from sallet.findings import Severity
from sallet.source import Source

WHOLE = """\
title: Hedge, wood and beck
teacher: Maren Holloway
about: |
  Twelve walks.

  Good boots.
place:
  name: Askerby Bridge
  latitude: 54.4
  longitude: -2.6
  elevation: 150 m
time zone: Europe/London
language: en-GB
lessons: ../lessons
plants: [Ramsons, Elder]
after:
  Elder: Ramsons
  Sweet cicely: [Hemlock, Ramsons]
seen here: {ramsons flowers: 2 May 2026, elder flowers: [30 May, 2027-06-02]}
units first: imperial
emergency:
  - "999"
  - "111"
address: https://example.org/hedge/
cards: {size: a7, paper: letter, duplex: Short edge}
licence: CC BY-SA 4.0
into: ../out
raise: {few-organs: stop}
sessions:
  - date: 2027-04-03
    starts: "10:00"
    title: Under the beeches
    meets at: by the pump
    plants: [Ramsons]
    bring: [a hand lens, boots]
    notes: We fill no basket.
    length: 90 min
    holds: 3
  - date: 2027-03-06
    starts: 9:30
  - first: 2027-03-05
    every: week
    count: 2
"""


def course(text: str) -> Course:
    """Return the course of a text."""
    return read_course(Source("course.yml", text))


def faults(text: str) -> list[tuple[str, str, str]]:
    """Return each value at fault as `line:column`, its words and what was expected."""
    source = Source("course.yml", text)
    at = [(source.position(f.span.start), f) for f in read_course(source).wrong]
    return [(f"{p.line}:{p.column}", f.words, f.expected) for p, f in at]


def test_a_course_is_read_whole() -> None:
    found = course(WHOLE)
    assert found == Course(
        source=Source("course.yml", WHOLE),
        title="Hedge, wood and beck",
        about="Twelve walks.\n\nGood boots.\n",
        teacher="Maren Holloway",
        place=Place("Askerby Bridge", 54.4, -2.6, 150.0),
        language="en-GB",
        lessons="../lessons",
        plants=("Ramsons", "Elder"),
        sessions=(
            Session(date(2027, 3, 5), listed=2),
            Session(date(2027, 3, 6), time(9, 30), listed=1),
            Session(date(2027, 3, 12), listed=2),
            Session(date(2027, 4, 3), time(10), "Under the beeches", "by the pump", ("Ramsons",),
                    ("a hand lens", "boots"), "We fill no basket.", 90, 3),
        ),
        series=(Series(date(2027, 3, 5), 7, 2, listed=2),),
        after=(After("Elder", ("Ramsons",)), After("Sweet cicely", ("Hemlock", "Ramsons"))),
        seen_here=(
            Observation("ramsons flowers", (SeenOn(5, 2, 2026),)),
            Observation("elder flowers", (SeenOn(5, 30), SeenOn(6, 2, 2027))),
        ),
        time_zone="Europe/London",
        units_first="imperial",
        emergency=("999", "111"),
        address="https://example.org/hedge/",
        cards=Printing("A7", "Letter", "short edge"),
        licence="CC BY-SA 4.0",
        into="../out",
        severities={"few-organs": Severity.STOP},
        node=found.node,
    )  # fmt: skip


@pytest.mark.parametrize("text", ["", "\n", "# nothing yet\n", "title:\nplants:\nsessions:\n"])
def test_what_is_not_there_has_its_usual_value(text: str) -> None:
    found = course(text)
    assert found == Course(Source("course.yml", text), node=found.node)


@pytest.mark.parametrize(
    "word",
    ["no", "on", "yes", "null", "~", "1:30", "4-9", "4.0", "0x1F", "2027-03-06", "1e3", ".5"],
)
def test_strings_stay_strings(word: str) -> None:
    found = course(f"title: {word}\nplants: [{word}]\nemergency: {word}\nplace: {{name: {word}}}\n")
    assert (found.title, found.plants, found.emergency) == (word, (word,), (word,))
    assert found.place.name == word
    assert found.wrong == ()


@pytest.mark.parametrize(
    ("words", "plants"),
    [("all", None), ("All", None), ("Ramsons", ("Ramsons",)), ("[]", ()), ("[all]", ("all",))],
)
def test_plants_are_a_list_or_one_or_all(words: str, plants: Any) -> None:
    assert course(f"plants: {words}\n").plants == plants


@pytest.mark.parametrize(
    ("words", "metres"),
    [("150 m", 150.0), ("150m", 150.0), ("590 ft", 179.832), ("590'", 179.832), ("-2.5 m", -2.5),
     ("0 m", 0.0)],
)  # fmt: skip
def test_the_height_above_the_sea_is_given_in_metres_or_feet(words: str, metres: float) -> None:
    """A foot is 0.3048 m exactly (international yard and pound agreement, 1 July 1959)."""
    assert course(f'place: {{elevation: "{words}"}}\n').place.elevation == pytest.approx(metres)


@pytest.mark.parametrize("words", ["150", "150 cm", "high", "150 m 3", "1,000 m"])
def test_a_height_without_metres_or_feet_is_no_height(words: str) -> None:
    found = faults(f'place: {{elevation: "{words}"}}\n')
    assert found == [("1:20", words, "a height such as `180 m` or `590 ft`")]


@pytest.mark.parametrize(
    "words", ["6 March 2027", "2027-3-6", "2027-02-30", "20270306", "86400", "2027-03-06T00:00"]
)
def test_a_date_is_year_month_and_day(words: str) -> None:
    """A bare number is no count of seconds since 1970."""
    text = f"sessions:\n  - date: {words}\n  - date: 2027-03-06\n"
    assert faults(text) == [("2:11", words, "a date such as 2027-03-06")]
    assert course(text).sessions == (Session(date(2027, 3, 6), listed=1),)


@pytest.mark.parametrize("words", ["10.30", "1030", "25:00", "9:5", "10:30Z", "noon"])
def test_a_time_is_hours_and_minutes(words: str) -> None:
    text = f"sessions:\n  - date: 2027-03-06\n    starts: {words}\n"
    assert faults(text) == [("3:13", words, "a time such as 10:30")]
    assert course(text).sessions == (Session(date(2027, 3, 6)),)


def test_all_faults_are_told_at_once_with_their_places() -> None:
    text = """\
titel: Hedge
teacher: [Maren, Holloway]
place: {latitude: 540, longitude: west, heigth: 3 m}
language: en_GB
units first: inches
raise: {few-organs: halt}
sessions:
  - date: tomorrow
    starts: 10
  - starts: "10:00"
  - date: 2027-03-06
    plants: {ramsons: yes}
"""
    assert sorted(faults(text), key=lambda fault: [int(n) for n in fault[0].split(":")]) == [
        ("1:1", "titel", "Extra inputs are not permitted"),
        ("2:10", "", "words"),
        ("3:19", "540", "a number of at most 90"),
        ("3:35", "west", "a number"),
        ("3:41", "heigth", "Extra inputs are not permitted"),
        ("4:11", "en_GB", "a language's tag such as `en` or `en-GB`"),
        ("5:14", "inches", "one of `metric` or `imperial`"),
        ("6:21", "halt", "one of `note`, `warn` or `stop`"),
        ("8:11", "tomorrow", "a date such as 2027-03-06"),
        ("9:13", "10", "a time such as 10:30"),
        ("10:5", "", "a `date`, or `first`, `every` and `count`"),
        ("12:13", "", "a list"),
    ]


def test_what_is_unknown_and_what_is_missing_are_marked_so() -> None:
    found = course("titel: Hedge\nsessions:\n  - title: First\n")
    assert [(f.path, f.key, f.unknown, f.missing) for f in found.wrong] == [
        (("titel",), "titel", True, False),
        (("sessions", 0, "date"), "date", False, True),
    ]


def test_far_too_many_meetings_are_none() -> None:
    one = "  - {first: 2027-04-03, every: day, count: 400}\n"
    assert len(course("sessions:\n" + 2 * one).sessions) == 800
    assert (course("sessions:\n" + 3 * one).sessions, course("sessions:\n" + 3 * one).series) == (
        (),
        (),
    )


def test_a_bad_value_of_a_session_is_set_aside_alone() -> None:
    text = "sessions:\n  - {date: 2027-03-06, holds: many, length: long, title: Woods}\n"
    assert course(text).sessions == (Session(date(2027, 3, 6), title="Woods"),)


def test_a_bad_item_of_another_list_moves_no_session() -> None:
    text = "plants: [[Elder], Hazel]\nsessions:\n  - date: 2027-03-06\n"
    assert [session.listed for session in course(text).sessions] == [0]


def test_the_good_values_beside_the_faults_are_kept() -> None:
    found = course("title: Hedge\nlanguage: en_GB\nplace: {name: Wood, latitude: 540}\n")
    assert (found.title, found.language) == ("Hedge", "en")
    assert found.place == Place("Wood")


def test_a_line_that_is_no_yaml_hides_none_of_the_others() -> None:
    text = 'title: Hedge\nteacher: "Maren\nlicence: : :\nlanguage: en_GB\ninto: out\n'
    source = Source("course.yml", text)
    found = read_course(source)
    assert found.broken
    assert (found.title, found.into) == ("Hedge", "out")
    assert [f.words for f in found.wrong] == ["en_GB"]


@pytest.mark.parametrize("text", ["- title\n- teacher\n", "Hedge and wood\n"])
def test_a_file_without_keys_is_an_empty_course_with_a_fault(text: str) -> None:
    found = course(text)
    assert [f.message for f in found.broken] == ["expected lines of the form `key: value`"]
    assert found.title == ""


def test_a_value_is_found_in_the_text() -> None:
    found = course(WHOLE)
    spans = [found.where("place", "name"), found.where("sessions", 0, "plants", 0),
             found.where("sessions", 1, "title")]  # fmt: skip
    assert [found.source.words(span).split("\n")[0] for span in spans] == [
        "Askerby Bridge", "Ramsons", "date: 2027-03-06",
    ]  # fmt: skip


VALUES = st.sampled_from(
    ["", "2027-04-03", "2027-04-17", "9999-12-31", "week", "0 days", "3", "-3", "400", "2 h", "999 h",
     "[2027-04-17, x]", "[]", "[[]]", "{a: b}", "{}", "Elder", "'10:00'", "29 February", "~"]
)  # fmt: skip
ENTRY = st.dictionaries(
    st.sampled_from(["date", "first", "every", "count", "skip", "starts", "length", "holds",
                     "plants", "bring", "title", "weather"]), VALUES)  # fmt: skip
OTHERS = st.sampled_from(["after", "seen here", "time zone", "sessions", "place"])


def mapping(entry: dict[str, str]) -> str:
    """Return a mapping on one line."""
    return "{" + ", ".join(f"{key}: {value}" for key, value in entry.items()) + "}"


@given(st.lists(ENTRY, max_size=4), st.dictionaries(OTHERS, VALUES, max_size=2))
def test_whatever_stands_in_a_list_of_sessions_it_is_read_in_order_or_told_as_a_fault(
    entries: list[dict[str, str]], others: dict[str, str]
) -> None:
    lines = [f"{key}: {value}" for key, value in others.items() if key != "sessions"]
    found = course("\n".join([*lines, "sessions:", *(f"  - {mapping(e)}" for e in entries)]))
    assert [s.date for s in found.sessions] == sorted(s.date for s in found.sessions)
    whole = {fault.path[1] for fault in found.wrong if fault.path[0] == "sessions"}
    assert whole | {session.listed for session in found.sessions} == set(range(len(entries)))


@pytest.mark.parametrize("word", ["none", "None"])
def test_a_course_may_want_no_cards(word: str) -> None:
    read = course(f"cards: {word}\n")
    assert (read.cards, read.wrong) == (Printing(wanted=False), ())


def test_a_bad_value_of_the_cards_is_set_aside_alone() -> None:
    text = "address: example.org\ncards:\n  size: A5\n  paper: letter\n  sides: 2\n"
    assert (course(text).address, course(text).cards) == ("", Printing("A6", "Letter", "long edge"))
    assert sorted(faults(text)) == [
        ("1:10", "example.org", "an address such as https://example.org/course/"),
        ("3:9", "A5", "one of `A6`, `A7`, `4×6 in` or `3×5 in`"),
        ("5:3", "sides", "Extra inputs are not permitted"),
    ]


# ---- the schema for editors ---------------------------------------------------------------

DEMO = Path(__file__).parents[2] / "demo_course" / "course.yml"


class AsEditorsRead(yaml.SafeLoader):
    """YAML 1.2's core schema, in which a date is a string."""


AsEditorsRead.yaml_implicit_resolvers = {
    first: [(tag, words) for tag, words in pairs if not tag.endswith(":timestamp")]
    for first, pairs in yaml.SafeLoader.yaml_implicit_resolvers.items()
}


def objections(text: str) -> list[tuple[str, str]]:
    """Return what an editor marks in a course.yml: where, and why."""
    plain = yaml.load(text, AsEditorsRead)  # noqa: S506 - a SafeLoader
    found = jsonschema.Draft202012Validator(course_schema()).iter_errors(plain)
    return sorted((error.json_path, str(error.validator)) for error in found)


def test_the_schema_is_one_by_the_standard() -> None:
    """Source: JSON Schema, draft 2020-12, as the library jsonschema holds it."""
    jsonschema.Draft202012Validator.check_schema(course_schema())
    assert course_schema()["$schema"] == "https://json-schema.org/draft/2020-12/schema"


def test_the_schema_has_no_words_that_the_standard_lacks() -> None:
    known = {"$defs", "$ref", "$schema", "additionalProperties", "anyOf", "const", "default", "description",
             "enum", "items", "maximum", "minimum", "oneOf", "pattern", "properties", "required", "title",
             "type"}  # fmt: skip
    assert set(keywords(course_schema())) - known == set()


def keywords(schema: Any) -> list[str]:
    """Return every keyword that a schema uses, at any depth."""
    if not isinstance(schema, dict):
        return []
    inner = [
        *schema.get("anyOf", ()),
        *schema.get("oneOf", ()),
        schema.get("items"),
        schema.get("additionalProperties"),
    ]
    inner += [v for key in ("properties", "$defs") for v in schema.get(key, {}).values()]
    return [*schema, *(word for part in inner for word in keywords(part))]


def test_the_demo_course_fits_the_schema() -> None:
    assert objections(DEMO.read_text("utf-8")) == []


def test_an_empty_key_fits_the_schema() -> None:
    assert objections("title:\nplace:\n  elevation:\nsessions:\nemergency:\n") == []


def test_the_schema_marks_what_the_reader_refuses() -> None:
    text = """\
titel: Hedge
language: en_GB
units first: inches
place: {latitude: 540}
raise: {few-organs: halt}
sessions:
  - starts: "10.30"
  - date: 6 March
"""
    assert objections(text) == [
        ("$", "additionalProperties"),
        ("$.language", "anyOf"),
        ("$.place", "anyOf"),
        ("$.raise", "anyOf"),
        ("$.sessions", "anyOf"),
        ("$['units first']", "anyOf"),
    ]


WHOLE_SERIES = """\
time zone: Europe/London
after: {Sweet cicely: Hemlock, Elder: [Hemlock, Hazel]}
seen here: {ramsons flowers: 2 May 2026, elder flowers: [30 May, 2027-06-02, June 3 2025]}
sessions:
  - first: 2027-04-03
    every: 2 weeks
    count: 12
    skip: [2027-05-01]
    length: 2 h 30 min
    holds: 3
  - {first: 2027-04-03, every: fortnight, count: 1, skip: 2027-05-01, date:}
  - {date: 2027-04-03, length: 1.5 hours, holds: 0, plants: Elder, first:}
"""


def test_series_orders_and_days_seen_fit_the_schema_and_the_reader() -> None:
    assert objections(WHOLE_SERIES) == []
    assert faults(WHOLE_SERIES) == []


@pytest.mark.parametrize(
    "entry",
    ["{title: no date}", "{first: 2027-04-03}", "{first: 2027-04-03, every: week}",
     "{first: 2027-04-03, every: week, count: 3, date: 2027-04-03}",
     "{first: 2027-04-03, every: week, count: 3, plants: [Elder]}",
     "{date: 2027-04-03, skip: [2027-04-03]}", "{date: 2027-04-03, holds: many}",
     "{date: 2027-04-03, holds: -1}", "{date: 2027-04-03, length: half a day}",
     "{first: 2027-04-03, every: often, count: 3}", "{first: 2027-04-03, every: week, count: 0}",
     "{first: 2027-04-03, every: week, count: 3, skip: [May Day]}"],
)  # fmt: skip
def test_the_schema_marks_each_entry_that_the_reader_refuses(entry: str) -> None:
    text = f"sessions: [{entry}]\n"
    assert objections(text) == [("$.sessions", "anyOf")]
    assert len(faults(text)) >= 1


@pytest.mark.parametrize(
    "line", ["seen here: {ramsons flowers: soon}", "seen here: [ramsons]", "after: Hemlock"]
)
def test_the_schema_marks_orders_and_days_that_the_reader_refuses(line: str) -> None:
    assert [why for _, why in objections(line)] == ["anyOf"]
    assert len(faults(line)) == 1


SIZES = ("A6", "A7", "4×6 in", "3×5 in")


@pytest.mark.parametrize("size", SIZES)
def test_cards_and_an_address_fit_the_schema_and_the_reader(size: str) -> None:
    text = (
        "address: https://example.org/hedge/\n"
        f"cards: {{size: {size}, paper: Letter, duplex: short edge}}\n"
    )
    assert (objections(text), faults(text)) == ([], [])
    assert course(text).cards == Printing(size, "Letter", "short edge")  # type: ignore[arg-type]


@pytest.mark.parametrize(
    "line",
    ["address: example.org", "address: https://example.org/?a=1", "cards: A6", "cards: {size: A5}",
     "cards: {paper: Legal}", "cards: {duplex: both}", "cards: {size: [A6]}"],
)  # fmt: skip
def test_the_schema_marks_cards_and_addresses_that_the_reader_refuses(line: str) -> None:
    assert [why for _, why in objections(line)] == ["anyOf"]
    assert len(faults(line)) == 1


# ---- what teachers copy -------------------------------------------------------------------

ROOT = Path(__file__).parents[2]


def test_the_series_of_the_readme_is_read_as_it_says_there() -> None:
    readme = (ROOT / "README.md").read_text("utf-8")
    text = readme.split("```yaml\nsessions:")[1].split("```")[0]
    found = course(f"sessions:{text}")
    assert (objections(f"sessions:{text}"), found.wrong) == ([], ())
    assert [(s.meets_at, s.plants) for s in found.sessions if s.date == date(2027, 5, 29)] == [
        ("Beckfoot ford", ("Hemlock",))
    ]
    assert len(found.sessions) == 12
    assert date(2027, 5, 1) not in {s.date for s in found.sessions}


def test_the_examples_of_a_new_course_are_read_once_they_are_no_comments_any_more() -> None:
    starter = (ROOT / "templates" / "starter" / "course.yml").read_text("utf-8")
    text = starter.replace("{{ title }}", "Hedge").replace("\n#  ", "\n  ")
    found = course(text)
    assert (objections(text), found.wrong, found.broken) == ([], (), ())
    assert (len(found.sessions), len(found.after), len(found.seen_here)) == (12, 1, 1)
