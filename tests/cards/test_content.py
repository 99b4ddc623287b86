"""What stands on a card: whole cards of small lessons, and that nothing is ever left out."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from helpers.cards import card_of, cards_of
from sallet.cards.content import (
    DRAFT,
    FOOD_STANDING,
    FROM_MEMORY,
    HARM_STANDING,
    KEEP,
    NOT_CHECKED,
)
from sallet.cards.facts import value_words
from sallet.cards.plain import Run, runs

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.cards.model import Card, Line, Side
    from sallet.lesson.model import Lesson

COURSE = """\
title: Walks
address: https://example.org/walks/
emergency: ["Collapse: ring 999", "Anything else: ring 111"]
"""


def line_words(line: Line) -> str:
    """Return a line as it is read: what it is about, then its words."""
    about = (f"<{line.danger}>" if line.danger else "", line.label, line.scientific)
    head = " ".join(filter(None, about))
    return f"{head}: {line.text}" if head else line.text


def told(side: Side) -> list[str]:
    """Return a side as it is read from top to bottom, headings marked."""
    found = []
    for block in side.blocks:
        found += [f"# {block.title}", *map(line_words, block.lines)]
    return [words.replace("\u00a0", " ") for words in found]


FOOD = """\
---
name: Ramsons
also called: [wild garlic]
scientific name: Allium ursinum L.
family: Amaryllidaceae
taught as: food
---
An introduction that stays on the page.

## Identification
### Leaves
- **margin**: entire[^memory]
  Smooth *all* round.
- **length**: 10–25 cm
- shape: elliptic
### Bulb
- **length**: 2–4 cm (first year)

## Look-alikes
### Grass
Grass is narrow.[^a]
- danger: harmless

## Season
- leaves: March to June

## Edible parts
- leaves: March to May; raw, cooked[^memory]
  Only *young* ones.
  - amount: a handful
    Never more than ten.[^memory]
  - cooking time: ten minutes
  - taste: sour
- flowers: May; raw

## Parts to remove
- leaf stalks: stringy[^a]
  Cut well below.
- bulbs

## Preparation
Wash *leaf by leaf*.[^a]

1. Dry.
2. Chop.

### Green oil
Pound.

## Cautions
- allergy: Not with an onion allergy.[^memory]
  Nor with one to leek.
- **medicines**: Ask first.

Free words, *whole*.

- milkmaids: They taint the milk.

## Habitat
- setting: wood, hedge bank[^memory]
- soil: rich

## Range
- native: Europe
- hardiness zones: 5–8

## Harvest
Cut, never pull.

- how much to take: one leaf in ten
  Never all.
- where not to gather: reserves

Leave the patch whole.

## Questions
1. Which?
   - [x] This.
   - [ ] That.
   > So it is.

## Sources
[^a]: A book.
[^memory]: From memory.
"""
FRONT = [
    "# Know it by",
    "Leaves, margin: entire. Smooth all round.",
    "Leaves, length: 10–25 cm (4–10 in)",
    "Bulb, length: 2–4 cm (3/4–1 1/2 in) (first year)",
    "# Tell it from",
    "<harmless> Grass: Grass is narrow.",
]
BACK = [
    "# Eaten",
    "leaves: March to May; raw, cooked; a handful. Never more than ten; cooking time ten minutes; Only young ones.",
    "flowers: May; raw",
    "# Cut away",
    "leaf stalks: stringy. Cut well below.",
    "bulbs: ",
    "# In the kitchen",
    "Wash leaf by leaf.",
    "Dry.",
    "Chop.",
    "# Take care",
    "allergy: Not with an onion allergy. Nor with one to leek.",
    "medicines: Ask first.",
    "Free words, whole.",
    "milkmaids: They taint the milk.",
    "# Where it grows",
    "habitat: wood, hedge bank; soil rich",
    "range: native Europe; hardiness zones 5–8",
    "# Take and leave",
    "harvest: how much to take one leaf in ten. Never all; where not to gather reserves",
    "Cut, never pull.",
    "Leave the patch whole.",
]


def test_the_card_of_a_food_tells_on_its_front_how_it_is_known_and_on_its_back_what_to_do() -> None:
    card = card_of(FOOD, COURSE)
    assert told(card.front) == FRONT
    assert told(card.back) == BACK


def test_around_its_words_stand_what_every_card_has() -> None:
    card = card_of(FOOD, COURSE)
    assert (card.danger, card.course) == ("food", "Walks")
    assert card.standing == FOOD_STANDING
    assert card.emergency == ("Collapse: ring 999", "Anything else: ring 111", KEEP)
    assert [(row.name, row.kind) for row in card.rows] == [
        ("leaves", "eaten"), ("flowers", "eaten"), ("leaves", "seen"),
    ]  # fmt: skip
    assert card.address is not None
    assert card.address.url == "https://example.org/walks/plants/lesson.html"
    assert card.photograph is None


def test_a_course_without_an_address_and_without_numbers_to_ring_leaves_them_out() -> None:
    card = card_of(FOOD, "title: Walks\n")
    assert card.address is None
    assert card.emergency == (KEEP,)


def test_lengths_stand_first_in_the_course_s_own_units() -> None:
    card = card_of(FOOD, COURSE + "units first: imperial\n")
    assert told(card.front)[2:4] == [
        "Leaves, length: 4–10 in (10–25 cm)",
        "Bulb, length: 3/4–1 1/2 in (2–4 cm) (first year)",
    ]


WORDED = """\
---
name: Ramsons
---
## Identification
### Leaves
- **margin**: entire
  Smooth all round, from the base to the tip.
  - on the card: smooth all round[^memory]

## Look-alikes
### Grass
Grass is narrow, and long, and grows everywhere.
- danger: harmless
- on the card: narrow

## Edible parts
- leaves: March to May; raw
  Only young ones, and of those the tenderest.
  - amount: a handful
  - on the card: young ones, *ten* at most

## Parts to remove
- leaf stalks: stringy and apt to catch between the teeth
  - on the card: stringy

## Preparation
Wash them leaf by leaf, in two waters.

- on the card: Wash leaf by leaf.

## Cautions
- allergy: Not with an allergy to onions.
  Nor with one to leek.
  - on the card: Not with an **onion** or leek allergy.

## Habitat
- setting: wood, hedge bank, beck side
  - on the card: damp woods
- soil: rich

## Harvest
Cut, never pull.

- how much to take: one leaf in ten
- on the card: Cut one leaf in ten.
"""


def test_where_there_is_a_wording_for_the_card_it_stands_alone_and_keeps_its_label() -> None:
    """Season and way of an edible part stand beside it: they are computed."""
    card = card_of(WORDED)
    assert told(card.front) == [
        "# Know it by", "Leaves, margin: smooth all round",
        "# Tell it from", "<harmless> Grass: narrow",
    ]  # fmt: skip
    assert told(card.back) == [
        "# Eaten", "leaves: March to May; raw; young ones, ten at most",
        "# Cut away", "leaf stalks: stringy",
        "# In the kitchen", "Wash leaf by leaf.",
        "# Take care", "allergy: Not with an onion or leek allergy.",
        "# Where it grows", "habitat: damp woods; soil rich",
        "# Take and leave", "Cut one leaf in ten.",
    ]  # fmt: skip


def test_weight_and_slant_of_a_wording_are_kept() -> None:
    lines = {line.label: line.runs for line in card_of(WORDED).back.lines}
    assert lines["allergy"] == (
        Run("Not with an "), Run("onion", "strong"), Run(" or leek allergy."),
    )  # fmt: skip
    assert lines["leaves"][-2:] == (Run("ten", "emphasis"), Run(" at most"))


def places(text: str, card: Card) -> list[tuple[str, str]]:
    """Return what each line is called, and the words of the lesson at its place."""
    lines = [line for side in card.sides for line in side.lines]
    return [(line.what, " ".join(text[line.span.start : line.span.end].split())) for line in lines]


def test_every_line_says_what_it_is_and_leads_to_its_wording() -> None:
    assert places(WORDED, card_of(WORDED)) == [
        ("the key feature `margin`", "smooth all round[^memory]"),
        ("the look-alike `Grass`", "narrow"),
        ("the edible part `leaves`", "young ones, *ten* at most"),
        ("the part to remove `leaf stalks`", "stringy"),
        ("the card's wording of Preparation", "Wash leaf by leaf."),
        ("the caution on allergy", "Not with an **onion** or leek allergy."),
        ("the facts of habitat", "Habitat"),
        ("the card's wording of Harvest", "Cut one leaf in ten."),
    ]


def test_without_a_wording_a_line_leads_to_the_words_themselves_and_can_be_worded() -> None:
    card = card_of(FOOD, COURSE)
    found = dict(places(FOOD, card))
    assert {what: found[what] for what in (
        "the key feature `margin`", "the look-alike `Grass`", "the part to remove `leaf stalks`",
        "the caution on allergy", "Preparation",
    )} == {
        "the key feature `margin`": "entire[^memory]",
        "the look-alike `Grass`": "Grass is narrow.[^a]",
        "the part to remove `leaf stalks`": "stringy[^a]",
        "the caution on allergy": "Not with an onion allergy.[^memory]",
        "Preparation": "Preparation",
    }  # fmt: skip
    assert all(line.can_be_worded for side in card.sides for line in side.lines)
    assert [x.can_be_worded for side in card_of(WORDED).sides for x in side.lines] == [
        False, False, False, False, False, False, True, False,
    ]  # fmt: skip


# ---- plants that harm ---------------------------------------------------------------------

HARM = """\
---
name: Hemlock
taught as: look-alike
{danger}
---
## Identification
### Stem
- **surface**: hairless

## Look-alikes
### Cow parsley
Hairy.
- danger: harmless

## Edible parts
- leaves: May; raw

## Parts to remove
- roots: thick

## Preparation
Do not.

## Cautions
- symptoms: Weakness.
- first aid: Ring 999.
- law: Leave it.

## Habitat
- setting: ditch

## Harvest
Nothing is gathered.
"""


@pytest.mark.parametrize("danger", ["deadly", "poisonous", "harmful", "harmless", ""])
def test_the_card_of_a_plant_that_harms_begins_with_first_aid_and_has_nothing_to_eat(
    danger: str,
) -> None:
    card = card_of(HARM.format(danger=f"danger: {danger}" if danger else ""))
    assert card.danger == (danger or "unknown")
    assert card.standing == HARM_STANDING
    assert told(card.front) == [
        "# Know it by", "Stem, surface: hairless",
        "# It is mistaken for", "<harmless> Cow parsley: Hairy.",
    ]  # fmt: skip
    assert told(card.back) == [
        "# What to do, and what to know", "first aid: Ring 999.", "symptoms: Weakness.",
        "law: Leave it.",
        "# Where it grows", "habitat: ditch",
        "# In the field", "Nothing is gathered.",
    ]  # fmt: skip


def test_no_card_says_that_a_plant_is_safe() -> None:
    standing = " ".join((*FOOD_STANDING, *HARM_STANDING)).casefold()
    assert "safe" not in standing
    assert "Eat nothing that you have not named with certainty." in FOOD_STANDING
    assert "Do not taste it to find out." in HARM_STANDING
    both = set(FOOD_STANDING) & set(HARM_STANDING)
    assert "No medical advice: ask a doctor or a pharmacist." in both
    assert "The law, the owner and the rules of protected sites come first." in both


def test_an_empty_lesson_has_a_card_with_its_name_and_what_every_card_has() -> None:
    card = card_of("---\nname: Ramsons\n---\n")
    assert (card.front.blocks, card.back.blocks) == ((), ())
    assert card.standing == FOOD_STANDING


# ---- stamps -------------------------------------------------------------------------------

CHECKED = "written by: Maren\nchecked by: Joe, 2027-01-02\n"


@pytest.mark.parametrize(
    ("head", "body", "stamps"),
    [(CHECKED, "", ()),
     (CHECKED, "## Cautions\n- law: Ask.[^memory]\n", (FROM_MEMORY,)),
     (CHECKED, "## Cautions\n- law: Ask.[^book]\n", ()),
     (CHECKED.replace("Joe", "maren"), "", (NOT_CHECKED,)),
     ("checked by: Joe\n", "", (NOT_CHECKED,)),
     ("checked by: 2027-01-02\n", "", (NOT_CHECKED,)),
     ("checked by:\n", "", (NOT_CHECKED,)),
     ("", "Text.[^memory]\n", (NOT_CHECKED, FROM_MEMORY))],
)  # fmt: skip
def test_a_card_is_stamped_with_what_a_reader_must_know_of_its_words(
    head: str, body: str, stamps: tuple[str, ...]
) -> None:
    """The writer's own second look is no second reader's."""
    assert card_of(f"---\nname: Ramsons\n{head}---\n{body}").stamps == stamps


def test_a_draft_says_so_before_all_else() -> None:
    (card,) = cards_of({"a.md": f"---\nname: Ramsons\n{CHECKED}---\n"}, draft=True)
    assert card.stamps == (DRAFT,)


# ---- nothing is left out ------------------------------------------------------------------

WORDS = st.lists(
    st.sampled_from(["wash", "never", "raw", "the", "leaf", "of", "each", "plant", "twice", "well",
                     "*slowly*", "**always**", "5\u00a0cm", "[elder](elder.md)", "é", "and"]),
    min_size=1, max_size=12,
).map(" ".join)  # fmt: skip
CITED = st.sampled_from(["", "[^memory]", "[^a]", " [^memory]"])
KINDS = st.sampled_from(["allergy: ", "law: ", "first aid: ", "medicines: ", "", "milkmaids: "])
NOTE = st.one_of(st.just(""), WORDS.map(lambda w: f"\n  {w}"), WORDS.map(lambda w: f"\n\n  {w}"))
WORDING = st.one_of(st.just(""), WORDS.map(lambda w: f"\n  - on the card: {w}"))
BULLETS = st.tuples(WORDS, CITED, NOTE, WORDING).map("".join)
PARTS = st.sampled_from(["leaf stalks", "bulbs", "roots", "old leaves"])
LABELS = st.sampled_from(["shape", "margin", "tip", "surface", "sparkle", "smell when crushed"])
DANGERS = st.sampled_from(["deadly", "poisonous", "harmful", "harmless"])
HEADS = st.sampled_from(["taught as: food", "taught as: look-alike\ndanger: deadly"])


@st.composite
def lessons(draw: st.DrawFn) -> str:
    """Return a lesson with cautions, parts to remove, look-alikes and key features of any words."""
    cautions = draw(st.lists(st.tuples(KINDS, BULLETS).map("".join), max_size=5))
    removals = draw(st.lists(st.tuples(PARTS, st.just(": "), BULLETS).map("".join), max_size=4))
    features = draw(st.lists(st.tuples(LABELS, BULLETS), max_size=4, unique_by=lambda f: f[0]))
    looks = draw(st.lists(st.tuples(WORDS, DANGERS, st.booleans(), WORDS), max_size=4))
    doubles = "".join(
        f"### Twin {number}\n{words}\n- danger: {danger}\n" + f"- on the card: {short}\n" * worded
        for number, (words, danger, worded, short) in enumerate(looks)
    )
    return (
        f"---\nname: Ramsons\n{draw(HEADS)}\n---\n## Identification\n### Leaves\n"
        + "".join(f"- **{label}**: {bullet}\n" for label, bullet in features)
        + "\n## Cautions\n" + "".join(f"- {bullet}\n" for bullet in cautions)
        + "\n## Parts to remove\n" + "".join(f"- {bullet}\n" for bullet in removals)
        + "\n## Look-alikes\n" + doubles
    )  # fmt: skip


def words_in(markdown: str) -> str:
    """Return the words of a text as a card has them."""
    return "".join(run.text for run in runs(markdown))


def must_stand(lesson: Lesson) -> Iterator[tuple[str, list[str]]]:
    """Yield each label with the words that must stand behind it: the wording, or all there is."""
    for caution in lesson.cautions:
        yield (
            caution.kind,
            [caution.on_card] if caution.on_card else [caution.text.value, caution.note.text],
        )
    for look in lesson.look_alikes:
        yield look.name.value, [look.on_card or look.prose.text]
    for removal in lesson.removals if lesson.is_food else ():
        told = [removal.on_card] if removal.on_card else [removal.reason.value, removal.note.text]
        yield removal.name.value, told
    for fact in lesson.key_facts:
        value = value_words(fact.items, "metric").replace("*", r"\*").replace("[", r"\[")
        yield f"Leaves, {fact.label}", [fact.on_card] if fact.on_card else [value, fact.note.text]


def stands(label: str, told: list[str], line: Line) -> bool:
    """Return whether a line says these words in their order, and nothing else but a full stop."""
    pieces = [re.escape(words) for words in map(words_in, told) if words]
    return line.label == label and re.fullmatch(r"[.!?]? ".join(pieces), line.text) is not None


@settings(max_examples=60)
@given(lessons())
def test_every_caution_removal_look_alike_and_key_feature_stands_whole_or_as_it_is_worded(
    text: str,
) -> None:
    card = card_of(text)
    lines = [line for side in card.sides for line in side.lines]
    wanted = list(must_stand(card.lesson))
    assert [one for one in wanted if not any(stands(*one, line) for line in lines)] == []
    assert len(lines) >= len(wanted)
    assert sum("caution" in line.what for line in lines) == len(card.lesson.cautions)


@settings(max_examples=60)
@given(lessons())
def test_no_mark_of_markdown_and_no_citation_is_on_a_card(text: str) -> None:
    card = card_of(text)
    for line in (line for side in card.sides for line in side.lines):
        if not line.what.startswith("the key feature"):
            assert not {"*", "[", "]", "^", "`"} & set(line.text)
