"""What stands on the page of one plant."""

from __future__ import annotations

import re
from dataclasses import astuple, replace
from typing import TYPE_CHECKING, Any

import pytest

from helpers.courses import site_of
from sallet.publish.sheets import cautions_elsewhere, doubles_elsewhere
from sallet.publish.values import explained
from sallet.season.reasons import CARE, LAW

if TYPE_CHECKING:
    from collections.abc import Iterable

    from sallet.publish.sheet import Sheet


MEMORY = (
    '<sup class="cite"><a href="#source-memory"><span aria-hidden="true">[m]</span>'
    '<span class="unseen">from memory, not yet checked</span></a></sup>'
)


def cite(number: int) -> str:
    """Return the mark of a source."""
    return (
        f'<sup class="cite"><a href="#source-{number}">'
        f'<span class="unseen">source </span>[{number}]</a></sup>'
    )


def word(words: str, *names: str) -> str:
    """Return a word that shows its meaning when it is pressed."""
    return str(explained(words, *names))


def plain(things: Iterable[Any]) -> list[tuple[Any, ...]]:
    """Return parts of a sheet as their fields in order."""
    return [astuple(thing) for thing in things]


def sheet_of(text: str, **others: str) -> Sheet:
    """Return the sheet of a lesson in a course that teaches it with others, by file name."""
    files = {f"{name}.md": other for name, other in others.items()}
    site = site_of({"course.yml": "", "a.md": text, **files})
    return next(sheet for sheet in site.sheets if sheet.lesson.slug == "a")


# ---- facts --------------------------------------------------------------------------------

FACTS = sheet_of("""---
name: Ramsons
---
Broad *leaves*.[^vic]

## Identification
Look twice.

### Leaves
- **margin**: entire[^vic]
  Smooth all round.[^ages]
- sparkle: some

### Bulb
- width: 1–2 cm

### Flowers
- **colour**: white[^memory]

[^ages]: Second source.
[^vic]: First source.
[^memory]: From memory.
""")
MARGIN = word("margin", "leaves", "margin")
ENTIRE = word("entire", "leaves", "margin", "entire")


def test_the_introduction_is_set() -> None:
    assert FACTS.intro == f"<p>Broad <em>leaves</em>.{cite(2)}</p>"


def test_the_facts_stand_organ_by_organ_and_a_kind_of_organ_by_its_name() -> None:
    assert [organ.heading for organ in FACTS.organs] == ["Leaves", "Roots: bulb", "Flowers"]
    assert plain(FACTS.organs[0].rows) == [
        (MARGIN, ENTIRE + cite(2), f"<p>Smooth all round.{cite(1)}</p>", True, ""),
        ("sparkle", "some", "", False, ""),
    ]


def test_the_key_features_name_their_organ() -> None:
    assert [(row.organ, row.label) for row in FACTS.key_rows] == [
        ("Leaves", MARGIN),
        ("Flowers", word("colour", "flowers", "colour")),
    ]


def test_a_source_is_numbered_as_the_lesson_lists_it_and_memory_comes_last() -> None:
    assert plain(FACTS.sources) == [
        ("source-1", "1", "Second source."),
        ("source-2", "2", "First source."),
        ("source-memory", "m", "From memory."),
    ]


def test_a_sections_own_text_stands_above_its_tables() -> None:
    assert FACTS.leads["identification"] == "<p>Look twice.</p>"
    assert FACTS.leads["season"] == ""


LILY = """---
name: Lily of the valley
scientific name: Convallaria majalis L.
taught as: look-alike
danger: poisonous
---
"""
DOUBLES = """## Look-alikes
### Lily of the valley
Two leaves from one shoot.
- settled by: marked *in flower*
- on the card: Lily: two leaves.

### Few-flowered garlic
Narrow leaves.
- scientific name: Allium paradoxum (M.Bieb.) G.Don
- danger: harmless
#### Leaves
- margin: entire

### Elder
### Nobody knows
"""


DRAWN = """## Identification
### Leaves
- division: simple
- shape: ovate
- margin: entire
- venation: {venation}
"""


def test_what_can_be_drawn_stands_on_the_plate() -> None:
    sheet = sheet_of(DRAWN.format(venation="parallel"))
    assert [(figure.letter, figure.words) for figure in sheet.plate] == [("a", "leaf")]
    assert [figure.words for figure in FACTS.plate] == ["under the soil"]


def test_the_same_organ_of_a_look_alike_stands_beside_it() -> None:
    lily = LILY + DRAWN.format(venation="net-veined")
    sheet = sheet_of(DRAWN.format(venation="parallel") + DOUBLES, lily=lily)
    assert [[f.words for f in double.figures] for double in sheet.doubles] == [
        ["leaf"], [], [], [],
    ]  # fmt: skip


def test_a_look_alike_without_a_lesson_is_drawn_from_what_is_told_of_it_here() -> None:
    doubles = DOUBLES.replace(
        "- margin: entire\n", "- division: simple\n- shape: ovate\n- venation: net-veined\n"
    )
    sheet = sheet_of(DRAWN.format(venation="parallel") + doubles, lily=LILY)
    assert [[f.words for f in double.figures] for double in sheet.doubles] == [
        [], ["leaf"], [], [],
    ]  # fmt: skip


def test_the_words_are_those_of_this_lesson() -> None:
    used = {u.subject.name: [x.label.name for x in u.labels] for u in FACTS.words}
    assert used == {"leaves": ["margin"], "roots": ["width"], "flowers": ["colour"]}


# ---- what may be mistaken -----------------------------------------------------------------


def test_a_look_alike_is_told_with_its_danger_and_what_tells_it_apart() -> None:
    sheet = sheet_of(DOUBLES, lily=LILY, elder="---\nname: Elder\n---\n")
    entire = (MARGIN, ENTIRE, "", False, "")
    assert plain(sheet.doubles) == [
        ("Lily of the valley", "double-lily-of-the-valley", "Convallaria majalis L.",
         "poisonous", "lily.html", "Lily: two leaves.", "<p>Two leaves from one shoot.</p>",
         "marked <em>in flower</em>", "", (), (), "../pairs/a-and-lily.html", ()),
        ("Few-flowered garlic", "double-few-flowered-garlic",
         "Allium paradoxum (M.Bieb.) G.Don", "harmless", "", "Narrow leaves.",
         "<p>Narrow leaves.</p>", "", "", (("Leaves", (entire,)),), (),
         "../pairs/a-and-few-flowered-garlic.html", ()),
        ("Elder", "double-elder", "", "food", "elder.html", "", "", "", "", (), (),
         "../pairs/a-and-elder.html", ()),
        ("Nobody knows", "double-nobody-knows", "", "unknown", "", "", "", "", "", (), (),
         "../pairs/a-and-nobody-knows.html", ()),
    ]  # fmt: skip


def test_a_look_alike_that_the_course_does_not_teach_has_no_page_but_its_danger() -> None:
    site = site_of({"course.yml": "plants: [a]", "a.md": DOUBLES, "lily.md": LILY})
    lily = site.sheets[0].doubles[0]
    assert (lily.page, lily.danger, lily.scientific_name) == (
        "",
        "poisonous",
        "Convallaria majalis L.",
    )


def test_a_look_alikes_words_below_its_organs_are_kept() -> None:
    text = "## Look-alikes\n### Yew\nDark.\n#### Leaves\nFlat, in two rows.\n- margin: entire\n"
    assert sheet_of(text).doubles[0].prose == "<p>Dark.</p>\n<p>Flat, in two rows.</p>"


def test_how_a_look_alike_is_settled_keeps_its_marks() -> None:
    text = (
        "## Look-alikes\n### Yew\nDark.[^flora]\n- settled by: marked in May[^memory]\n\n"
        "[^flora]: A flora.\n[^memory]: From memory.\n"
    )
    (yew,) = sheet_of(text).doubles
    assert (yew.settled_by, yew.marks) == ("marked in May", MEMORY)


def test_a_source_cited_for_the_value_and_in_the_note_is_marked_at_both() -> None:
    text = (
        "## Identification\n### Leaves\n- margin: entire[^memory]\n  Look closely.[^memory]\n\n"
        "[^memory]: From memory.\n"
    )
    ((row,),) = (organ.rows for organ in sheet_of(text).organs)
    assert row.value == f"{ENTIRE}{MEMORY}"
    assert row.note == f"<p>Look closely.{MEMORY}</p>"


# ---- season and kitchen -------------------------------------------------------------------

KITCHEN = sheet_of("""## Season
- leaves: March to May[^vic]
  Early in the south.
- flowers: usually late April, when warm (in sun)

## Edible parts
- leaves: March; raw, cooked (young)[^vic]
  Wash them.
  - taste: garlic
- seeds: soon

## Parts to remove
- stalks: *tough*[^vic]
  Pull them out.
- roots

## Cautions
- dogs: poisonous to them.[^vic]
  Cats too.
- Never alone.

[^vic]: A source.
""")


def test_the_year_in_words_tells_what_is_eaten_first() -> None:
    assert plain(KITCHEN.season) == [
        ("eat leaves", "March", "", "", ""),
        ("eat seeds", "soon", "", "", ""),
        ("leaves", "March to May", "", cite(1), "<p>Early in the south.</p>"),
        ("flowers", "usually late April, when warm (in sun)", "", "", ""),
    ]


def test_an_edible_part_says_when_and_how_and_what_else_is_known_of_it() -> None:
    ways = [word(way, "edible parts", "preparation", way) for way in ("raw", "cooked")]
    taste = word("taste", "edible parts", "taste")
    garlic = word("garlic", "edible parts", "taste", "garlic")
    assert plain(KITCHEN.eaten) == [
        ("leaves", "March", "", f"{ways[0]}\u2060, {ways[1]} (young)", "<p>Wash them.</p>",
         ((taste, garlic, "", False, ""),), cite(1)),
        ("seeds", "soon", "", "", "", (), ""),
    ]  # fmt: skip


def test_a_part_to_remove_stands_with_its_reason() -> None:
    assert plain(KITCHEN.removed) == [
        ("stalks", "<em>tough</em>", "<p>Pull them out.</p>", cite(1)),
        ("roots", "", "", ""),
    ]


def test_a_caution_is_whole_with_its_note_and_its_source() -> None:
    assert plain(KITCHEN.cautions) == [
        ("dogs", f"poisonous to them. Cats too.{cite(1)}"),
        ("", "Never alone."),
    ]


@pytest.mark.parametrize(
    ("written", "words"),
    [("March to May", "March to May"),
     ("1 March – 31 May", "March to May"),
     ("March, October to December", "March, October to December"),
     ("usually March", "usually March"),
     ("March (in shade)", "March (in shade)"),
     ("March (rarely, in shade)", "rarely March (in shade)"),
     ("usually when warm", "usually when warm"),
     ("all year", "all year"),
     ("none", "none")],
)  # fmt: skip
def test_a_time_is_said_with_its_qualifiers(written: str, words: str) -> None:
    (row,) = sheet_of(f"## Season\n- leaves: {written}\n").season
    assert (row.words, row.seen) == (words, "")


# ---- the year where the course meets ------------------------------------------------------

SEEN = """---
name: Ramsons
seen at: {latitude: 54.4, longitude: -2.6, elevation: 150 m}
---
## Season
- leaves: March to May (in woods)
- bulbs: all year
- seeds: when ripe

## Edible parts
- leaves: March to May; raw
"""


def sheet_at(place: str) -> Sheet:
    """Return the sheet of ramsons in a course that meets at a place."""
    return site_of({"course.yml": f"place: {{{place}}}\n", "a.md": SEEN}).sheets[0]


def test_elsewhere_every_time_is_about_and_what_was_written_stands_beside_it() -> None:
    """Three degrees to the north: 12 days later in spring, by Hopkins' 4 days a degree."""
    sheet = sheet_at("latitude: 57.4, longitude: -2.6, elevation: 150 m")
    assert [(row.name, row.words, row.seen) for row in sheet.season] == [
        ("eat leaves", "about mid March to mid June", "March to May"),
        ("leaves", "about mid March to mid June (in woods)", "March to May (in woods)"),
        ("bulbs", "all year", ""),
        ("seeds", "when ripe", ""),
    ]
    assert [(part.when, part.seen) for part in sheet.eaten] == [
        ("about mid March to mid June", "March to May")
    ]


def test_elsewhere_the_page_says_why_and_by_how_many_days() -> None:
    sheet = sheet_at("latitude: 57.4, longitude: -2.6, elevation: 150 m")
    assert sheet.year_note == (
        "Estimated from what was seen at 54.4° N, 2.6° W, 150 m above the sea; spring about 12 "
        "days later, autumn about 12 days earlier (+12.0 days for 3.0° of latitude nearer the pole)."
    )
    assert sheet.rule == f"{LAW} {CARE}"


def test_at_the_lessons_own_place_nothing_is_estimated() -> None:
    sheet = sheet_at("latitude: 54.4, longitude: -2.6, elevation: 150 m")
    assert sheet.year_note == "As seen at 54.4° N, 2.6° W, 150 m above the sea."
    assert sheet.rule == ""
    assert [(row.words, row.seen) for row in sheet.season] == [
        ("March to May", ""), ("March to May (in woods)", ""), ("all year", ""), ("when ripe", ""),
    ]  # fmt: skip
    assert [(part.when, part.seen) for part in sheet.eaten] == [("March to May", "")]


# ---- what is set on another page ----------------------------------------------------------


def test_a_plants_cautions_elsewhere_lead_to_its_own_page() -> None:
    text = (
        "## Cautions\n- skin: burns, see [who](#cautions) and [b](b.md).[^f]\n  At once.[^memory]\n"
        "\n[^f]: Flora.\n[^memory]: From memory.\n"
    )
    site = site_of({"course.yml": "", "a.md": text, "b.md": LILY})
    lesson = next(lesson for lesson in site.ordered if lesson.slug == "a")
    (caution,) = cautions_elsewhere(lesson, site.setting, "plants/")
    assert re.findall(r'href="([^"]+)"', caution.text) == [
        "plants/a.html#cautions", "plants/b.html", "plants/a.html#source-memory",
        "plants/a.html#source-1",
    ]  # fmt: skip
    assert caution.kind == "skin"


def test_a_plants_look_alikes_elsewhere_are_those_of_its_page() -> None:
    site = site_of({"course.yml": "", "a.md": DOUBLES, "lily.md": LILY})
    sheet = next(sheet for sheet in site.sheets if sheet.lesson.slug == "a")
    lily, *others = doubles_elsewhere(sheet.lesson, site.setting, "plants/")
    assert lily == replace(sheet.doubles[0], page="plants/lily.html", pair="pairs/a-and-lily.html")
    assert others == [replace(double, pair=double.pair[3:]) for double in sheet.doubles[1:]]


# ---- prose, questions, stamps -------------------------------------------------------------


def test_sections_of_prose_stand_in_the_pages_order_then_the_writers_own() -> None:
    text = """## Songs
La la.
## Harvest
Take little.
- share: a tenth

More words.
## Habitat
- setting: woodland
## Preparation
### Soup
Boil.
"""
    found = {p.ident: (p.heading, len(p.rows), str(p.prose)) for p in sheet_of(text).passages}
    assert list(found.items()) == [
        ("preparation", ("Preparation", 0, "<h3>Soup</h3>\n<p>Boil.</p>")),
        ("habitat", ("Habitat", 1, "")),
        ("harvest", ("Harvest", 1, "<p>Take little.</p>\n<p>More words.</p>")),
        ("section-1", ("Songs", 0, "<p>La la.</p>")),
    ]


def test_a_question_has_its_options_and_its_feedback() -> None:
    text = "## Questions\n1. Which *leaf*?\n   - [ ] this\n   - [x] that\n   > Look.[^memory]\n"
    assert plain(sheet_of(text).questions) == [
        ("Which <em>leaf</em>?", (("this", False), ("that", True)), f"<p>Look.{MEMORY}</p>")
    ]


def test_the_page_is_stamped_with_what_is_not_yet_settled() -> None:
    unread = sheet_of("---\nname: A\n---\n")
    read = sheet_of("---\nname: A\nchecked by: Ann Wright, 2026-05-01\n---\n")
    assert "Not yet checked by a second reader" in unread.stamps
    assert "Not yet checked by a second reader" not in read.stamps


def test_a_page_is_not_stamped_with_what_another_lesson_lacks() -> None:
    sheet = sheet_of(
        "---\nname: A\nchecked by: Ann Wright, 2026-05-01\n---\n", b="---\nname: B\n---\n"
    )
    assert "Not yet checked by a second reader" not in sheet.stamps


def test_what_is_said_below_a_picture_stands_by_its_file() -> None:
    text = "## Pictures\n### leaf.jpg\nTaken in *May*.\n- shows: a leaf\n"
    assert sheet_of(text).picture_notes == {"leaf.jpg": "<p>Taken in <em>May</em>.</p>"}
