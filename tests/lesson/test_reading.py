"""A whole lesson: what it becomes, and that nothing a writer can type makes reading fail."""

from __future__ import annotations

from fractions import Fraction
from typing import TYPE_CHECKING

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from helpers.workshop import lesson_of
from sallet.lesson.reading import slug_of
from sallet.lesson.value import Absent, Count, Measure, StateRange, Window, Zones
from sallet.source import Source

if TYPE_CHECKING:
    from sallet.lesson.model import Lesson

RAMSONS = """---
name: Ramsons
also called: [wild garlic, bear's garlic]
scientific name: Allium ursinum L.
family: Amaryllidaceae
taught as: food
seen at: {latitude: 54.4, longitude: -2.6, elevation: 180 m}
written by: A Teacher
checked by:
---

It carpets wet woods in spring, and all of it above the ground tastes of garlic.

## Identification

### Whole plant
- habit: perennial herb
- height: 20–45 cm

### Leaves
- **arrangement**: basal
- shape: elliptic to ovate
- **attachment**: stalked
  Follow each stalk down: every leaf has its own.
- length: 10–25 cm[^memory]
- hairs: none

### Flowers
- **inflorescence**: umbel
- petals: 6
- width: 12–20 mm, at most 25 mm

### Bulb
- colour: white

## Look-alikes
Each leaf is looked at by itself.

### Lily of the valley
Both stand in leaf at once, often side by side.[^poison]
- settled by: marked while in flower
- on the card: Lily: two leaves in one sheath.

### Few-flowered garlic
Narrower, with bulbils in the flower head.
- scientific name: Allium paradoxum (M.Bieb.) G.Don
- danger: harmless

#### Leaves
- attachment: stalkless

## Season
- leaves: late February to mid June
- flowers: mid April to early June

## Edible parts
- leaves: March to May; raw, cooked[^memory]
  - taste: garlic
- flowers: mid April to May; raw

## Parts to remove
- leaf stalks: stringy once the flower buds show

## Preparation
Turn over every leaf before you wash it. Cut off the leaf stalks.

### Green oil
1. Chop the leaves.
2. Cover them with oil, and freeze.

## Uses
Eaten as a potherb for as long as anyone remembers.

## Cautions
Nothing here is to be tasted to find out what it is.

- confusion: one leaf at a time[^poison]
  - on the card: One leaf at a time.
- dogs: keep it from them
- not by the handful

## Habitat
- setting: woodland, stream bank
- moisture: damp

## Range
- native: Europe
- hardiness zones: 4–8

## Harvest
Leave more than you take.

## Our own walk
By the stream, see [nettle](stinging-nettle.md).

## Questions
1. Two leaves share one sheath: what do you do?
   - [ ] Pick them, because they smell of garlic.
   - [x] Leave them, because each leaf needs its own stalk.
   > The smell may come from your fingers.

## Pictures
### ramsons-leaf.jpg
- shows: one leaf, both its sides
- credit: A Teacher
- licence: CC BY 4.0
- pin 1: 42% 18%, blade

## Sources
[^poison]: A study of poisonings.
[^memory]: From memory.
"""


@pytest.fixture(name="lesson", scope="module")
def _lesson() -> Lesson:
    return lesson_of(RAMSONS, "lessons/Ramsons.md")


def test_the_example_has_no_faults(lesson: Lesson) -> None:
    assert lesson.faults == ()


def test_its_names(lesson: Lesson) -> None:
    assert (lesson.slug, lesson.name, lesson.is_food) == ("ramsons", "Ramsons", True)
    assert lesson.intro.text.startswith("It carpets wet woods")


def test_its_sections_in_their_order_the_writers_own_without_a_name(lesson: Lesson) -> None:
    assert [section.name for section in lesson.sections] == [
        "identification", "look-alikes", "season", "edible parts", "parts to remove",
        "preparation", "uses", "cautions", "habitat", "range", "harvest", "", "questions",
        "pictures", "sources",
    ]  # fmt: skip
    look_alikes = lesson.section("look-alikes")
    assert look_alikes is not None
    assert look_alikes.lead.text == "Each leaf is looked at by itself."
    assert lesson.section("growing") is None


def test_its_facts_with_subject_part_label_and_value(lesson: Lesson) -> None:
    facts = {(f.subject, f.part, f.label): f for f in lesson.facts}
    shape = facts["leaves", "", "shape"].items[0].value
    assert isinstance(shape, StateRange)
    assert [end.name for end in shape.ends] == ["elliptic", "ovate"]
    length = facts["leaves", "", "length"]
    assert length.measures == (Measure(Fraction(100), Fraction(250), "cm", step=Fraction(10)),)
    assert [citation.from_memory for citation in length.citations] == [True]
    assert facts["flowers", "", "petals"].items[0].value == Count(6, 6)
    assert facts["roots", "bulb", "colour outside"].states == {"white"}
    assert facts["range", "", "hardiness zones"].items[0].value == Zones("4", "8")
    assert facts["habitat", "", "setting"].text == "woodland, stream bank"


def test_none_is_an_absence_and_a_synonym_of_a_label_is_that_label(lesson: Lesson) -> None:
    (hairs,) = [fact for fact in lesson.facts_of("leaves") if fact.label == "surface"]
    assert lesson.source.words(hairs.label_span) == "hairs"
    assert hairs.items[0].value == Absent()


def test_bold_labels_are_its_key_features(lesson: Lesson) -> None:
    assert [fact.label for fact in lesson.key_facts] == [
        "arrangement", "attachment", "inflorescence",
    ]  # fmt: skip
    assert lesson.key_facts[1].note.text == "Follow each stalk down: every leaf has its own."


def test_its_look_alikes(lesson: Lesson) -> None:
    lily, garlic = lesson.look_alikes
    assert lily.name.value == "Lily of the valley"
    assert lily.prose.text == "Both stand in leaf at once, often side by side.[^poison]"
    assert lily.settled_by == "marked while in flower"
    assert lily.on_card == "Lily: two leaves in one sheath."
    assert (lily.danger, lily.facts) == (None, ())
    assert garlic.danger == "harmless"
    assert garlic.scientific_name == "Allium paradoxum (M.Bieb.) G.Don"
    assert [(f.subject, f.label) for f in garlic.facts] == [("leaves", "attachment")]


def test_its_season_and_its_edible_parts(lesson: Lesson) -> None:
    assert [(t.organ, t.windows) for t in lesson.season] == [
        ("leaves", (Window(52, 171),)), ("flowers", (Window(101, 161),)),
    ]  # fmt: skip
    leaves, flowers = lesson.edible_parts
    assert leaves.timing.windows == (Window(60, 151),)
    assert [way.text for way in leaves.ways] == ["raw", "cooked"]
    assert [(f.label, sorted(f.states)) for f in leaves.facts] == [("taste", ["garlic"])]
    assert [way.text for way in flowers.ways] == ["raw"]


def test_what_is_removed_and_how_it_is_prepared(lesson: Lesson) -> None:
    (stalks,) = lesson.removals
    assert (stalks.name.value, stalks.reason.value) == (
        "leaf stalks", "stringy once the flower buds show",
    )  # fmt: skip
    (oil,) = lesson.recipes
    assert oil.title.value == "Green oil"
    assert oil.prose.text.startswith("1. Chop the leaves.\n2. Cover")


def test_every_caution_is_kept_in_its_order_the_paragraph_too(lesson: Lesson) -> None:
    assert [(c.kind, c.text.value, c.on_card) for c in lesson.cautions] == [
        ("", "Nothing here is to be tasted to find out what it is.", ""),
        ("confusion", "one leaf at a time", "One leaf at a time."),
        ("dogs", "keep it from them", ""),
        ("", "not by the handful", ""),
    ]
    assert [c.key for c in lesson.cautions[1].citations] == ["poison"]


def test_its_question(lesson: Lesson) -> None:
    (question,) = lesson.questions
    assert question.prompt.value == "Two leaves share one sheath: what do you do?"
    assert [(o.text.value, o.right) for o in question.options] == [
        ("Pick them, because they smell of garlic.", False),
        ("Leave them, because each leaf needs its own stalk.", True),
    ]
    assert question.feedback.text == "The smell may come from your fingers."


def test_its_picture_sources_and_links(lesson: Lesson) -> None:
    (picture,) = lesson.pictures
    assert (picture.file.value, picture.shows) == ("ramsons-leaf.jpg", "one leaf, both its sides")
    assert (picture.credit, picture.licence) == ("A Teacher", "CC BY 4.0")
    assert [(p.number, p.x, p.y, p.word) for p in picture.pins] == [(1, 42, 18, "blade")]
    assert [note.key for note in lesson.footnotes] == ["poison", "memory"]
    assert [c.key for c in lesson.citations] == ["memory", "poison", "memory", "poison"]
    assert [link.target for link in lesson.links] == ["stinging-nettle.md"]


def test_places_lead_back_to_the_words(lesson: Lesson) -> None:
    words = lesson.source.words
    for fact in lesson.facts:
        assert words(fact.label_span).casefold()
        assert words(fact.value_span).startswith(fact.text.split()[0])
        for item in fact.items:
            assert words(item.span).startswith(item.text.split()[0])
    for caution in lesson.cautions:
        assert words(caution.text.span).startswith(caution.text.value)
    for option in lesson.questions[0].options:
        assert words(option.text.span) == option.text.value


# ---- nothing is lost ----------------------------------------------------------------------


def test_words_inside_a_caution_are_kept_whatever_their_form() -> None:
    text = "## Cautions\n- children: none[^a]\n  - not the berries\n  > ever\n\n  nor the bark\n"
    (caution,) = lesson_of(text).cautions
    for words in ("not the berries", "ever", "nor the bark"):
        assert words in caution.note.text


def test_cautions_below_a_heading_in_numbers_and_in_paragraphs_are_kept() -> None:
    text = "## Cautions\n### Dogs\n1. dogs: no\n\nNor cats.\n\n| a |\n|---|\n| b |\n"
    found = [caution.text.value for caution in lesson_of(text).cautions]
    assert found == ["### Dogs", "no", "Nor cats.", "| a |\n|---|\n| b |"]


def test_text_of_a_look_alike_is_kept_wherever_it_stands() -> None:
    text = "## Look-alikes\n### Hemlock\nOne.\n- danger: deadly\n- stem: spots\n\nTwo.\n"
    (hemlock,) = lesson_of(text).look_alikes
    assert hemlock.prose.text == "One.\n\n- stem: spots\n\nTwo."


def test_a_lesson_with_faults_is_still_a_lesson() -> None:
    text = RAMSONS.replace("20–45 cm", "45–20 cm").replace("umbel", "umbrella")
    text = text.replace("taught as: food", "taught as: salad").replace("mid June", "mid Jun3")
    lesson = lesson_of(text)
    assert {fault.kind for fault in lesson.faults} == {
        "front-matter", "range-upside-down", "unknown-state", "unreadable-time",
    }  # fmt: skip
    assert (lesson.name, len(lesson.facts), len(lesson.cautions)) == ("Ramsons", 15, 4)
    assert [fault.words for fault in lesson.faults_of("unknown-state")] == ["umbrella"]


def test_an_empty_file_is_a_lesson_with_nothing_in_it() -> None:
    lesson = lesson_of("", "lessons/x.md")
    assert (lesson.name, lesson.sections, lesson.facts) == ("x", (), ())
    assert [fault.detail for fault in lesson.faults] == ["missing"]


@pytest.mark.parametrize(
    ("path", "slug"),
    [("lessons/ramsons.md", "ramsons"), ("Lily of the Valley.md", "lily-of-the-valley"),
     ("a/b/Dog's-mercury.md", "dog-s-mercury"), ("….md", "lesson")],
)  # fmt: skip
def test_the_page_is_named_after_the_file(path: str, slug: str) -> None:
    assert slug_of(path) == slug


# ---- anything at all ----------------------------------------------------------------------

LINES = st.sampled_from([f"{line}\n" for line in RAMSONS.split("\n")])
PIECES = st.sampled_from(
    ["---\n", "## Cautions\n", "## Season\n", "### ", "- ", "  - ", "1. ", "[x] ", ": ", "; ",
     "on the card: ", "pin 1: ", "%", " to ", "March", "\n", "\t", "> ", "[^a]", "**", "(", "é",
     "<b>", "](", "|", "`"]
)  # fmt: skip


@settings(max_examples=120, deadline=None)
@given(st.lists(LINES | PIECES, max_size=40).map("".join))
def test_no_text_raises_and_every_fault_stands_in_the_text(text: str) -> None:
    lesson = lesson_of(text)
    for fault in lesson.faults:
        assert 0 <= fault.span.start <= fault.span.end <= len(text)
    spans = [caution.text.span for caution in lesson.cautions]
    spans += [fact.value_span for fact in lesson.facts]
    spans += [option.text.span for q in lesson.questions for option in q.options]
    spans += [pin.span for picture in lesson.pictures for pin in picture.pins]
    assert all(0 <= span.start <= span.end <= len(text) for span in spans)


@settings(max_examples=80, deadline=None)
@given(st.lists(LINES | PIECES, max_size=25).map("".join))
def test_no_word_of_the_cautions_is_lost(text: str) -> None:
    """Whatever stands below the heading: each of its words is in some caution or on its card."""
    lesson = lesson_of(f"## Cautions\n{text.replace('#', '').replace('---', '')}")
    section = lesson.section("cautions")
    assert isinstance(lesson.source, Source)
    if section is None or len(lesson.sections) > 1:
        return
    kept = " ".join(
        f"{c.kind} {c.text} {c.note.text} {c.on_card}" for c in lesson.cautions
    ).casefold()
    for word in ("handful", "tasted", "stringy", "chop", "umbel"):
        assert (word in section.prose.text.casefold()) <= (word in kept)
