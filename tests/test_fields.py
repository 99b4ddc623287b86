"""YAML nodes → pydantic models: all faults at once, each at its place, the good fields kept."""

from __future__ import annotations

from datetime import date
from typing import Literal

import pytest
from pydantic import BaseModel, ConfigDict, Field

from sallet.fields import FieldFault, nearest_key, read_fields
from sallet.yamltext import read_yaml


class Meeting(BaseModel):
    """One meeting of an invented class."""

    model_config = ConfigDict(extra="forbid")

    on: date
    plants: list[str] = Field(default_factory=list)


class Club(BaseModel):
    """An invented club."""

    model_config = ConfigDict(extra="forbid", populate_by_name=True)

    name: str = ""
    members: int = Field(0, ge=0, le=500)
    kind: Literal["indoor", "outdoor"] = "outdoor"
    meets_at: str = Field("", alias="meets at")
    meetings: list[Meeting] = Field(default_factory=list)
    place: Meeting | None = None


def read(text: str) -> tuple[Club, list[FieldFault]]:
    """Return the club of a text."""
    return read_fields(Club, read_yaml(text)[0])


def told(text: str) -> list[tuple[str, str, str, str]]:
    """Return each fault's key, words, expectation, and the text at its place."""
    found = read(text)[1]
    return [(f.key, f.words, f.expected, text[f.span.start : f.span.end]) for f in found]


def test_values_become_what_their_fields_hold() -> None:
    club, faults = read("name: 'No'\nmembers: 12\nmeetings: [{on: 2027-03-06, plants: [Elder]}]\n")
    assert faults == []
    assert (club.name, club.members) == ("No", 12)
    assert club.meetings == [Meeting(on=date(2027, 3, 6), plants=["Elder"])]


def test_a_key_with_nothing_behind_it_has_not_been_filled_in() -> None:
    club, faults = read("members:\nkind:\nmeetings:\n")
    assert (club, faults) == (Club(), [])


def test_every_value_that_does_not_fit_is_named_at_its_place_and_the_others_kept() -> None:
    text = "name: [a]\nmembers: many\nkind: both\nmeets at: the gate\n"
    assert told(text) == [
        ("name", "", "words", "[a]"),
        ("members", "many", "a whole number", "many"),
        ("kind", "both", "one of `indoor` or `outdoor`", "both"),
    ]
    assert read(text)[0] == Club(**{"meets at": "the gate"})


@pytest.mark.parametrize(
    ("text", "expected"),
    [("members: -1", "a number of at least 0"),
     ("members: 501", "a number of at most 500"),
     ("meetings: soon", "a list"),
     ("meetings: [soon]", "lines of the form `key: value`"),
     ("meetings: [{on: soon}]", "a date such as 2027-03-06"),
     ("meetings: [{on: 2027-13-01}]", "a date such as 2027-03-06")],
)  # fmt: skip
def test_what_is_expected_is_said_in_plain_words(text: str, expected: str) -> None:
    assert [fault[2] for fault in told(text)] == [expected]
    assert read(text)[0].meetings == []


def test_an_unknown_key_is_named_where_the_key_stands() -> None:
    text = "nam: Hedge\nmeetings: [{on: 2027-03-06, plant: x}]\n"
    _, faults = read(text)
    assert {(f.words, f.unknown, text[f.span.start : f.span.end]) for f in faults} == {
        ("nam", True, "nam"),
        ("plant", True, "plant"),
    }
    assert read(text)[0].meetings == [Meeting(on=date(2027, 3, 6))]


def test_a_missing_key_takes_only_its_own_mapping_with_it() -> None:
    text = "meetings: [{plants: [Elder]}, {on: 2027-03-06}]\n"
    club, faults = read(text)
    assert [(f.key, f.missing, text[f.span.start : f.span.end]) for f in faults] == [
        ("on", True, "{plants: [Elder]}")
    ]
    assert club.meetings == [Meeting(on=date(2027, 3, 6))]


def test_one_bad_item_of_a_list_is_left_out_alone() -> None:
    club, faults = read("meetings: [{on: 2027-03-06, plants: [Elder, [x], Beech]}]\n")
    assert len(faults) == 1
    assert club.meetings[0].plants == ["Elder", "Beech"]


def test_near_keys_are_those_of_the_mapping_in_question() -> None:
    assert nearest_key("nme", Club) == ("name",)
    assert nearest_key("meets_at", Club)[0] == "meets at"
    assert nearest_key("plant", Club, ("meetings", 0, "plant")) == ("plants",)
    assert nearest_key("zzz", Club, ("place", "zzz")) == ("on", "plants")
