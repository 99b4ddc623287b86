"""Why dates are what they are, in words."""

from __future__ import annotations

import pytest

from helpers.workshop import lesson_of
from helpers.years import plan_of, year_at, year_of
from sallet.season.hopkins import Spot, shift_between
from sallet.season.reasons import (
    left_out_words,
    parts_words,
    place_words,
    shift_words,
    taken_for_words,
    year_words,
)

HERE = Spot(54.4, -2.6, 150)
SEEN_AT = "seen at: {latitude: 54.4, longitude: -2.6, elevation: 150 m}\n"
LESSON = f"""---
name: Ramsons
{SEEN_AT}---
## Season
- leaves: March to June
"""


@pytest.mark.parametrize(
    ("spot", "words"),
    [(HERE, "54.4° N, 2.6° W, 150 m above the sea"), (Spot(-33.87, 151.2), "33.9° S, 151.2° E"),
     (Spot(52, 5, -3.4), "52.0° N, 5.0° E, −3 m above the sea"), (Spot(0, 0, 0), "0.0° N, 0.0° E, 0 m above the sea")],
)  # fmt: skip
def test_a_place_in_words(spot: Spot, words: str) -> None:
    assert place_words(spot) == words


@pytest.mark.parametrize(
    ("here", "words"),
    [(Spot(57.4, -2.6, 150), "spring about 12 days later, autumn about 12 days earlier"),
     (Spot(54.65, -2.6, 150), "spring about 1 day later, autumn about 1 day earlier"),
     (Spot(51.4, -2.6, 150), "spring about 12 days earlier, autumn about 12 days later"),
     (HERE, "the year runs as where it was seen")],
)  # fmt: skip
def test_a_shift_in_words(here: Spot, words: str) -> None:
    assert shift_words(shift_between(HERE, here)) == words


def test_each_part_of_the_law_is_told_with_its_days() -> None:
    shift = shift_between(HERE, Spot(57.4, 2.4, 60))
    assert parts_words(shift) == (
        "+12.0 days for 3.0° of latitude nearer the pole; "
        "+4.0 days for 5.0° of longitude further east; −3.0 days for 90 m lower"
    )
    assert parts_words(shift_between(HERE, HERE)) == ""
    assert parts_words(shift_between(None, HERE)) == ""


@pytest.mark.parametrize(
    ("origin", "here", "words"),
    [(None, HERE, ("the lesson does not say where its times were seen, so they stand as written",)),
     (HERE, None, ("the course does not say where it meets, so the times stand as written",)),
     (HERE, Spot(54.4, -2.6), ("the height of one of the two places is not told and is left out",)),
     (HERE, Spot(54.4, -100, 150),
      ("the two places lie on different continents, so longitude is left out",)),
     (HERE, Spot(54.4, -30, 150),
      ("one of the two places lies on no continent, so longitude is left out",)),
     (HERE, Spot(30, -2.6, 150),
      ("the two places are too far apart to estimate one from the other, so the times stand as written",)),
     (HERE, Spot(-54.4, -2.6, 150),
      ("the two places lie in different halves of the earth: half a year is added",)),
     (HERE, HERE, ())],
)  # fmt: skip
def test_what_is_left_out_is_told(
    origin: Spot | None, here: Spot | None, words: tuple[str, ...]
) -> None:
    assert left_out_words(shift_between(origin, here)) == words


@pytest.mark.parametrize(
    ("here", "words"),
    [(HERE, "As seen at 54.4° N, 2.6° W, 150 m above the sea."),
     (Spot(57.4, -2.6, 150),
      ("Estimated from what was seen at 54.4° N, 2.6° W, 150 m above the sea; spring about 12 days "
      "later, autumn about 12 days earlier (+12.0 days for 3.0° of latitude nearer the pole).")),
     (None, "The course does not say where it meets, so the times stand as written."),
     (Spot(54.4, -2.6),
      ("Estimated from what was seen at 54.4° N, 2.6° W, 150 m above the sea; the year runs as where "
      "it was seen; the height of one of the two places is not told and is left out."))],
)  # fmt: skip
def test_the_reason_of_a_plants_dates(here: Spot | None, words: str) -> None:
    assert year_words(year_at(LESSON, here)) == words


def test_places_too_far_apart_are_not_said_to_have_the_same_year() -> None:
    """What else is left out does not matter then."""
    for here in (Spot(30, -2.6, 150), Spot(0, 0)):
        assert year_words(year_at(LESSON, here)) == (
            "As seen at 54.4° N, 2.6° W, 150 m above the sea; the two places are too far apart to "
            "estimate one from the other, so the times stand as written."
        )
    assert year_words(year_at(LESSON, Spot(-30, -2.6, 150))) == (
        "Estimated from what was seen at 54.4° N, 2.6° W, 150 m above the sea; the two places are "
        "too far apart to estimate one from the other, so the times stand as written; the two "
        "places lie in different halves of the earth: half a year is added."
    )


@pytest.mark.parametrize(
    ("at", "words"),
    [(SEEN_AT, ("Seen at 54.4° N, 2.6° W, 150 m above the sea; moved by what was seen here: "
      "leaves from 9 March 2026, 11 March.")),
     ("", "Moved by what was seen here: leaves from 9 March 2026, 11 March.")],
)  # fmt: skip
def test_what_was_seen_here_is_the_reason_in_the_laws_place(at: str, words: str) -> None:
    """Also where the lesson does not say where it was seen: its times are moved all the same."""
    course = "seen here: {Ramsons leaves: [9 March 2026, 11 March]}\n"
    here = "place: {latitude: 57.4, longitude: -2.6, elevation: 150 m}\n"
    plan = plan_of({"course.yml": course + here, "a.md": LESSON.replace(SEEN_AT, at)})
    assert [year_words(year) for year in plan.years] == [words]


def test_what_a_plant_is_taken_for_in_words() -> None:
    lessons = [lesson_of(f"---\nname: {name}\n---\n") for name in ("Elder", "Hazel", "Yew")]
    assert taken_for_words(lessons[:1]) == "taken for Elder, gathered at the same time"
    assert taken_for_words(lessons) == "taken for Elder, Hazel and Yew, gathered at the same time"


def test_a_lesson_without_a_place_says_so() -> None:
    assert year_words(year_of("---\nname: Yew\n---\n")) == (
        "The lesson does not say where its times were seen, so they stand as written."
    )
