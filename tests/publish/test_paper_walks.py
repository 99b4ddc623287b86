"""The walk sheets."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

import pytest

from helpers.courses import site_of
from helpers.papers import (
    HOSTILE,
    WRITTEN,
    assert_is_sound,
    bare,
    demo_site,
    info_of,
    pages_of,
    pdfs_of,
    sizes_of,
    text_of,
    words_of,
)
from sallet.cards.plain import runs
from sallet.publish.briefing import OUTDOORS, STANDING
from sallet.publish.paper_walks import NAMES, walk_data, walk_papers

if TYPE_CHECKING:
    from sallet.publish.site import Site

COURSE = """title: Hedge and beck
teacher: Maren Holloway
cards: {paper: PAPER}
emergency: [Ring 999 at once]
sessions:
  - date: 2027-05-01
    title: Under the beeches
    starts: "10:00"
    length: 2 h
    meets at: the pump
    bring: [boots, a hand lens]
    plants: [Ramsons]
    holds: 1
    notes: |
      We look at *ten* leaves.

      No dogs.
"""
RAMSONS = """---
name: Ramsons
---
## Identification
### Leaves
- **venation**: parallel
## Look-alikes
### Lily of the valley
Two leaves.
- danger: poisonous
## Cautions
- skin: a **rash**.[^f]
  Wash at once.
  - on the card: rash
- pregnancy: not in large amounts.
- Never alone.
- first aid: ring 999.
## Season
- leaves: March to June
## Edible parts
- leaves: March to May; raw

[^f]: A flora.
"""
HEMLOCK = """---
name: Hemlock
taught as: look-alike
danger: deadly
---
## Season
- leaves: all year
"""
CHICKWEED = """---
name: Chickweed
---
## Season
- leaves: all year
## Edible parts
- leaves: all year; raw
"""
LESSONS = {"ramsons.md": RAMSONS, "hemlock.md": HEMLOCK, "chickweed.md": CHICKWEED}


def site_on(paper: str = "A4", course: str = COURSE, **changed: str) -> Site:
    """Return the site of the course above, or of a changed one."""
    texts = {**LESSONS, **{f"{slug}.md": text for slug, text in changed.items()}}
    return site_of({**texts, "course.yml": course.replace("PAPER", paper)})


def only(site: Site) -> dict[str, Any]:
    """Return the only session as its sheet is given it."""
    (page,) = site.sessions
    return walk_data(page, site)


# ---- what the template is given -----------------------------------------------------------


def test_a_session_as_its_sheet_is_given_it() -> None:
    data = only(site_on())
    plants = data.pop("plants")
    assert [plant["name"] for plant in plants] == ["Ramsons"]
    assert data == {
        "title": "Under the beeches, Saturday 1 May 2027 · Hedge and beck",
        "course": "Hedge and beck",
        "author": ["Maren Holloway"],
        "language": "en",
        "paper": {"width": 210, "height": 297},
        "draft": False,
        "number": 1,
        "heading": "Under the beeches",
        "facts": [
            ["When", "Saturday 1 May 2027, 10:00–12:00"],
            ["Where", "the pump"],
            ["Bring", "boots, a hand lens"],
            ["Plants", "1 plant"],
        ],
        "unread": "Ramsons",
        "notes": [
            [["We look at ", "plain"], ["ten", "emphasis"], [" leaves.", "plain"]],
            [["No dogs.", "plain"]],
        ],
        "emergency": {
            "lines": ["Ring 999 at once"],
            "keep": "Keep the plant: nobody can name one by telephone.",
        },
        "standing": list(STANDING),
        "warned": [
            {
                "food": "Ramsons",
                "name": "Lily of the valley",
                "about": "when it is about is not told",
                "settled": [["Pick none of it.", "plain"]],
                "danger": "poisonous",
                "shape": "▲",
                "word": "poisonous",
            }
        ],
        "told": [
            {
                "plant": "Ramsons",
                "kind": "skin",
                "runs": [["a ", "plain"], ["rash", "strong"], [". Wash at once.", "plain"]],
            },
            {"plant": "Ramsons", "kind": "also", "runs": [["Never alone.", "plain"]]},
        ],
        "first_aid": [{"plant": "Ramsons", "kind": "first aid", "runs": [["ring 999.", "plain"]]}],
        "tasted": "Ramsons",
        "also_food": [
            {
                "name": "Chickweed",
                "scientific": "",
                "danger": "food",
                "shape": "❧",
                "word": "food",
                "perhaps": False,
                "stages": "leaves to eat",
            }
        ],
        "also_harm": [
            {
                "name": "Hemlock",
                "scientific": "",
                "danger": "deadly",
                "shape": "▲▲",
                "word": "deadly",
                "perhaps": False,
                "stages": "leaves",
            }
        ],
        "names": NAMES,
    }


def test_a_plant_of_which_nobody_can_say_whether_it_is_about_is_perhaps_met() -> None:
    data = only(site_on(hemlock=HEMLOCK.replace("all year", "4 May to June")))
    assert [(one["name"], one["perhaps"], one["stages"]) for one in data["also_harm"]] == [
        ("Hemlock", True, "")
    ]


def test_a_session_of_which_only_the_date_is_told_has_a_sheet() -> None:
    data = only(site_of({"course.yml": "sessions:\n  - {date: 2027-05-01}\n"}))
    assert data["title"] == "Session, Saturday 1 May 2027"
    assert data["facts"] == [
        ["When", "Saturday 1 May 2027"],
        ["Plants", "none is taught on this day"],
    ]


def test_every_session_has_a_sheet_and_a_second_one_on_a_day_a_number() -> None:
    dates = ("2027-05-01", "2027-05-02", "2027-05-01", "2027-05-01")
    text = "sessions:\n" + "".join(f"  - {{date: {day}, holds: 0}}\n" for day in dates)
    assert [path for path, _ in walk_papers(site_of({"course.yml": text}))] == [
        "print/walks/2027-05-01.pdf",
        "print/walks/2027-05-01-2.pdf",
        "print/walks/2027-05-01-3.pdf",
        "print/walks/2027-05-02.pdf",
    ]


def test_a_course_without_sessions_has_no_sheets() -> None:
    assert list(walk_papers(site_of({"course.yml": ""}))) == []


# ---- in print -----------------------------------------------------------------------------


@pytest.mark.parametrize(("paper", "size"), [("A4", (210, 297)), ("Letter", (215.9, 279.4))])
def test_the_sheet_is_sound_and_has_the_courses_paper(
    paper: str, size: tuple[float, float]
) -> None:
    (pdf,) = pdfs_of(walk_papers(site_on(paper))).values()
    assert_is_sound(pdf)
    assert set(sizes_of(pdf)) == {size}
    info = info_of(pdf)
    assert info["Title"] == "Under the beeches, Saturday 1 May 2027 · Hedge and beck"
    assert info["Author"] == "Maren Holloway"


def test_each_page_has_the_title_and_its_number() -> None:
    (pdf,) = pdfs_of(walk_papers(site_on())).values()
    words, pages = words_of(pdf), len(pages_of(pdf))
    assert words.count("Under the beeches, Saturday 1 May 2027 · Hedge and beck") == pages
    assert [f"{n} of {pages}" in words for n in range(1, pages + 1)] == [True] * pages


def test_the_names_stand_on_a_page_of_their_own_that_is_to_be_destroyed() -> None:
    (pdf,) = pdfs_of(walk_papers(site_on())).values()
    last = pages_of(pdf)[-1]
    lines = "".join(str(number) for number in range(1, NAMES + 1))
    assert last == bare(
        "The group Destroy this list after the walk. What is told here is told to the teacher "
        "alone. No. Name Telephone in an emergency Allergies and medicines told to the teacher"
        f"{lines}"
    )


def test_a_course_that_names_nobody_to_ring_leaves_room_to_write_the_number() -> None:
    course = COURSE.replace("emergency: [Ring 999 at once]\n", "")
    (pdf,) = pdfs_of(walk_papers(site_on(course=course))).values()
    words = words_of(pdf)
    assert "The course names nobody to ring. Write the number here before you set out:" in words
    assert "Keep the plant: nobody can name one by telephone." in words


def test_the_words_of_a_lesson_and_of_the_course_are_never_read_as_commands() -> None:
    ramsons = RAMSONS.replace("Never alone.", WRITTEN).replace("parallel", f"parallel\n  {WRITTEN}")
    quoted = HOSTILE.replace("'", "''")
    course = COURSE.replace("the pump", f"'{quoted}'").replace("No dogs.", WRITTEN)
    course = course.replace("boots", f"'{quoted}'")
    (pdf,) = pdfs_of(walk_papers(site_on(course=course, ramsons=ramsons))).values()
    assert text_of(pdf).count(bare(HOSTILE)) == 5


def test_a_caution_longer_than_a_page_is_not_cut() -> None:
    long = " ".join(f"word{number}" for number in range(2000))
    ramsons = RAMSONS.replace("Never alone.", long).replace(
        "- danger: poisonous", f"- danger: poisonous\n- settled by: {long}"
    )
    (pdf,) = pdfs_of(walk_papers(site_on(ramsons=ramsons))).values()
    assert text_of(pdf).count(bare(long)) == 3


def test_the_same_course_gives_the_same_bytes() -> None:
    assert pdfs_of(walk_papers(site_on())) == pdfs_of(walk_papers(site_on()))


def test_the_sheets_of_the_demo_course_tell_all_that_the_pages_tell() -> None:
    site = demo_site()
    sheets = pdfs_of(walk_papers(site))
    assert list(sheets) == [f"print/walks/{m.session.date}.pdf" for m in site.plan.meetings]
    for page, pdf in zip(site.sessions, sheets.values(), strict=True):
        assert_is_sound(pdf)
        text = text_of(pdf)
        for words in (*STANDING, *site.course.emergency, *_of_plants(site, page.meeting.day)):
            assert bare(words) in text
        for taught in page.meeting.taught:
            assert bare(f"To expect {', '.join(taught.stages)}").casefold() in text.casefold()
            for caution in taught.lesson.cautions:
                if caution.kind in {"", "first aid", *OUTDOORS}:
                    told = runs(f"{caution.text.value} {caution.note.text}")
                    assert bare("".join(run.text for run in told)) in text
        for warned in page.briefing.warned:
            assert bare(f"{warned.food.name}: not {warned.name}") in text
            for words in warned.look_at:
                assert bare(words) in text


def _of_plants(site: Site, day: int) -> list[str]:
    """Return the names of the plants that may be met on a day."""
    (meeting,) = [meeting for meeting in site.plan.meetings if meeting.day == day]
    taught = [one.lesson.name for one in meeting.taught]
    return [*taught, *(what.year.lesson.name for what in meeting.also)]
