"""The safety briefing: every grave look-alike of the day, every caution that matters outdoors."""

from __future__ import annotations

import re

import pytest
from markupsafe import Markup

from helpers.courses import pages_of, seen, site_of
from sallet.lesson.vocabulary_file import load_vocabulary
from sallet.publish.briefing import OUTDOORS, STANDING, Briefing, Warned

RAMSONS = """---
name: Ramsons
---
## Edible parts
- leaves: March to May; raw

## Look-alikes
### Lily of the valley
Two leaves from one shoot.
### Meadow saffron
Three leaves.
### Arum
Net veins.
- danger: poisonous
### Few-flowered garlic
Narrow.
- danger: harmless
### Daffodil
Blunt.
- danger: harmful

## Cautions
- skin: a *rash*, see [all](#cautions).[^f]
  Wash at once.
- mixed picking: leaf by leaf.
- pregnancy: not in large amounts.
- storage: eat it fresh.
- Never alone.

[^f]: A flora.
"""
LILY = """---
name: Lily of the valley
taught as: look-alike
danger: poisonous
---
## Season
- leaves: April to August

## Look-alikes
### Foxglove
Both deadly to the heart.
- danger: deadly

## Cautions
- all parts: every part is poisonous.
- dogs: poisonous to them.
"""
SAFFRON = """---
name: Meadow saffron
taught as: look-alike
danger: deadly
---
## Season
- leaves: April to June
- flowers: August to October
"""
LESSONS = {"ramsons.md": RAMSONS, "lily.md": LILY, "saffron.md": SAFFRON}


def briefing_on(day: str, plants: str, course: str = "all", **changed: str) -> Briefing:
    """Return the briefing of a session that teaches some plants on a day."""
    session = f"{{date: {day}, plants: [{plants}], holds: 0}}"
    texts = {**LESSONS, **{f"{slug}.md": text for slug, text in changed.items()}}
    text = f"plants: {course}\nsessions:\n  - {session}\n"
    return site_of({**texts, "course.yml": text}).sessions[0].briefing


def warned(briefing: Briefing) -> list[tuple[str, str, str, bool]]:
    """Return of what is warned: the food, its look-alike, the danger, whether it is about."""
    return [(w.food.name, w.name, w.danger, w.is_about) for w in briefing.warned]


def told(briefing: Briefing) -> list[tuple[str, str]]:
    """Return the cautions told, as plant and kind."""
    return [(t.plant.name, t.caution.kind) for t in briefing.told]


# ---- look-alikes --------------------------------------------------------------------------


def test_every_deadly_or_poisonous_look_alike_of_the_days_food_is_named() -> None:
    """With a lesson of its own or without; what is harmful or harmless is not."""
    assert warned(briefing_on("2027-05-01", "Ramsons")) == [
        ("Ramsons", "Lily of the valley", "poisonous", True),
        ("Ramsons", "Meadow saffron", "deadly", True),
        ("Ramsons", "Arum", "poisonous", False),
    ]


def test_a_look_alike_is_about_while_it_can_be_seen_and_on_days_that_are_uncertain() -> None:
    both = ["Lily of the valley", "Meadow saffron"]
    about = {
        day: [w.name for w in briefing_on(day, "Ramsons").warned if w.is_about]
        for day in (
            "2027-03-20",
            "2027-03-31",
            "2027-04-01",
            "2027-07-20",
            "2027-09-20",
            "2027-11-15",
        )
    }
    assert about == {
        "2027-03-20": [],
        "2027-03-31": both,
        "2027-04-01": both,
        "2027-07-20": ["Lily of the valley"],
        "2027-09-20": ["Meadow saffron"],
        "2027-11-15": [],
    }


def test_a_look_alike_that_is_taught_on_the_day_is_about_too() -> None:
    briefing = briefing_on("2027-05-01", "Ramsons, Lily of the valley")
    assert [w.is_about for w in briefing.warned] == [True, True, False]


def test_a_look_alike_that_the_course_does_not_teach_is_named_all_the_same() -> None:
    briefing = briefing_on("2027-05-01", "Ramsons", course="[ramsons]")
    assert [w.name for w in briefing.warned] == [
        "Lily of the valley", "Meadow saffron", "Arum",
    ]  # fmt: skip


def test_what_a_plant_to_keep_away_from_is_mistaken_for_is_no_warning() -> None:
    assert warned(briefing_on("2027-05-01", "Lily of the valley")) == []


def test_a_session_without_plants_has_nothing_to_tell_of_them() -> None:
    assert briefing_on("2027-05-01", "") == Briefing((), ())


# ---- cautions -----------------------------------------------------------------------------


def test_all_outdoor_cautions_of_the_days_plants_are_told_in_their_order() -> None:
    """Of plants that harm too. One of no known kind is told: it may matter."""
    assert told(briefing_on("2027-05-01", "Lily of the valley, Ramsons")) == [
        ("Lily of the valley", "all parts"),
        ("Ramsons", "skin"),
        ("Ramsons", "mixed picking"),
        ("Ramsons", ""),
    ]


def test_a_caution_is_told_word_for_word_and_leads_to_its_plants_page() -> None:
    skin = briefing_on("2027-05-01", "Ramsons").told[0].caution.text
    assert re.sub(r"<sup.*?</sup>", "", skin) == (
        'a <em>rash</em>, see <a href="plants/ramsons.html#cautions">all</a>. Wash at once.'
    )
    assert '<a href="plants/ramsons.html#source-1">' in skin


@pytest.mark.parametrize("kind", OUTDOORS)
def test_every_outdoor_kind_is_a_kind_of_caution_and_is_told(kind: str) -> None:
    assert kind in {label.name for label in load_vocabulary().subject("cautions").labels}
    text = f"---\nname: Ramsons\n---\n## Cautions\n- {kind}: beware.\n"
    (only,) = briefing_on("2027-05-01", "Ramsons", ramsons=text).told
    assert (only.caution.kind, only.caution.text) == (kind, "beware.")


def test_another_name_of_a_kind_is_that_kind() -> None:
    labels = {label.name: label for label in load_vocabulary().subject("cautions").labels}
    name = labels["ticks"].also[0]
    text = f"---\nname: Ramsons\n---\n## Cautions\n- {name}: beware.\n"
    assert told(briefing_on("2027-05-01", "Ramsons", ramsons=text)) == [("Ramsons", "ticks")]


def test_what_is_told_every_time_forbids_tasting_first_of_all() -> None:
    assert STANDING[0].startswith("Nobody eats anything before the teacher has named")
    assert any("tastes to find out" in line for line in STANDING)


def test_the_look_alikes_lead_to_the_page_of_their_food_plant() -> None:
    briefing = briefing_on("2027-05-01", "Ramsons")
    assert [w.page for w in briefing.warned] == [
        "plants/ramsons.html#double-lily-of-the-valley",
        "plants/ramsons.html#double-meadow-saffron",
        "plants/ramsons.html#double-arum",
    ]


HEMLOCK = """---
name: Hemlock
taught as: look-alike
danger: deadly
---
## Look-alikes
### Ramsons
- settled by: *never* picking where it stands[^one]
## Season
- leaves: all year
## Sources
[^one]: A flora.
"""


@pytest.mark.parametrize(
    ("course", "page", "has_times"),
    [("all", "plants/hemlock.html", True), ("[ramsons]", "", False)],
)
def test_a_plant_that_harms_is_warned_of_even_if_only_its_own_lesson_names_the_food(
    course: str,
    page: str,
    has_times: bool,  # noqa: FBT001
) -> None:
    briefing = briefing_on("2027-05-01", "Ramsons", course=course, hemlock=HEMLOCK)
    assert briefing.warned[-1] == Warned(
        food=briefing.warned[0].food,
        name="Hemlock",
        danger="deadly",
        page=page,
        is_about=has_times,
        has_times=has_times,
        look_at=(),
        is_sure=False,
        settled_by=Markup("never picking where it stands"),
    )


# ---- what to look at ----------------------------------------------------------------------

TOLD = """---
name: Ramsons
---
## Identification
### Leaves
- gloss: glossy above matt beneath
- length: 10–20 cm
### Flowers
- inflorescence: umbel
- petals fused or free: free
- colour: white
## Look-alikes
### Lily of the valley
- danger: poisonous
- settled by: marked in *flower* the year before
#### Leaves
- gloss: matt above glossy beneath
- length: 30–50 cm
#### Flowers
- inflorescence: one-sided raceme
- petals fused or free: joined into a tube
- colour: white
### Meadow saffron
- danger: deadly
## Season
- leaves: March to June
- flowers: mid April to mid June
## Edible parts
- leaves: March to May; raw
"""
GLOSS = "Leaves, gloss: glossy above matt beneath; Lily of the valley: matt above glossy beneath"
LENGTH = "Leaves, length: 10–20 cm; Lily of the valley: 30–50 cm"
CLUSTER = "Flowers, inflorescence: umbel; Lily of the valley: one-sided raceme"
PETALS = "Flowers, petals fused or free: free; Lily of the valley: joined into a tube"


def looked_at(day: str) -> list[tuple[str, tuple[str, ...], bool]]:
    """Return of each look-alike what is to be looked at on a day, and whether that suffices."""
    files = {"ramsons.md": TOLD}
    course = f"plants: all\nsessions:\n  - {{date: {day}, plants: [Ramsons], holds: 0}}\n"
    warned = site_of({**files, "course.yml": course}).sessions[0].briefing.warned
    return [(w.name, w.look_at, w.is_sure) for w in warned]


@pytest.mark.parametrize(
    ("day", "features", "sure"),
    [("2027-03-20", (GLOSS, LENGTH), False), ("2027-05-01", (CLUSTER, PETALS, GLOSS, LENGTH), True)],
)  # fmt: skip
def test_the_group_is_told_what_to_look_at_on_the_day_what_is_reliable_first(
    day: str, features: tuple[str, ...], *, sure: bool
) -> None:
    lily, saffron = looked_at(day)
    assert lily == ("Lily of the valley", features, sure)
    assert saffron == ("Meadow saffron", (), False)


def test_the_syllabus_says_when_it_is_not_sure_and_how_it_is_settled() -> None:
    course = "title: Walks\nsessions:\n  - {date: 2027-03-20, plants: [Ramsons], holds: 0}\n"
    page = pages_of({"ramsons.md": TOLD, "course.yml": course})["syllabus.html"]
    text = seen(page).text
    assert f"To be seen on the day {GLOSS} {LENGTH} Not yet sure on this day." in text
    assert "Made sure by: marked in flower the year before" in text
    assert "nothing that can be seen tells them apart. Pick none of it." in text


def test_two_features_of_one_kind_are_told_once() -> None:
    """Milk in the sap and in the leaf: a group that stands waiting hears of it once."""
    text = TOLD
    for old, new in (
        ("- gloss: glossy above matt beneath", "- latex: clear juice"),
        ("- length: 10–20 cm", "- length: 10–20 cm\n### Sap\n- kind: watery"),
        ("- gloss: matt above glossy beneath", "- latex: white milk"),
        ("- length: 30–50 cm", "- length: 30–50 cm\n#### Sap\n- kind: milk"),
    ):
        text = text.replace(old, new)
    course = "plants: all\nsessions:\n  - {date: 2027-03-20, plants: [Ramsons], holds: 0}\n"
    briefing = site_of({"ramsons.md": text, "course.yml": course}).sessions[0].briefing
    assert briefing.warned[0].look_at == (
        "Leaves, latex: clear juice; Lily of the valley: white milk",
        LENGTH,
    )
