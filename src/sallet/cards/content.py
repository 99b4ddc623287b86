"""Lesson → field card: what stands on which side, in which words.

Nothing is shortened here. Where the writer gave a wording for the card it is used; everything
else stands whole.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.cards.address import address_of
from sallet.cards.doubles import double_lines
from sallet.cards.facts import caution_runs, fact_runs, value_words
from sallet.cards.model import Block, Card, Line, Side, worded
from sallet.cards.photograph import fine_photograph
from sallet.cards.plain import Run, clauses, joined, paragraphs, plain, runs, sentences
from sallet.cards.sizes import CARD_SIZES
from sallet.lesson.dangers import danger_of
from sallet.season.words import row_words
from sallet.study.features import organ_words

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.cards.setting import CardSetting
    from sallet.lesson.model import Caution, EdiblePart, Fact, Lesson, Removal
    from sallet.season.here import Row
    from sallet.units import System

KNOW_IT: Final = "Know it by"
FOOD_TITLES: Final = {
    "doubles": "Tell it from",
    "eaten": "Eaten",
    "removed": "Cut away",
    "kitchen": "In the kitchen",
    "cautions": "Take care",
    "place": "Where it grows",
    "harvest": "Take and leave",
}
"""The headings of the card of a plant for the pot."""
HARM_TITLES: Final = FOOD_TITLES | {
    "doubles": "It is mistaken for",
    "cautions": "What to do, and what to know",
    "harvest": "In the field",
}
"""Those of a plant to keep away from."""
FOOD_STANDING: Final = (
    "Eat nothing that you have not named with certainty.",
    "This card teaches; it does not replace a teacher beside you.",
    "Of what is surely named eat a little the first time, and wait a day.",
    "The law, the owner and the rules of protected sites come first.",
    "No medical advice: ask a doctor or a pharmacist.",
)
"""Told on the card of every plant for the pot."""
HARM_STANDING: Final = (
    "Do not taste it to find out.",
    "This card teaches; it does not replace a teacher beside you.",
    "The law, the owner and the rules of protected sites come first.",
    "No medical advice: ask a doctor or a pharmacist.",
)
"""Told on the card of every plant to keep away from."""
KEEP: Final = "Keep the plant: nobody can name one by telephone."
"""Told below the lines whom to ring."""
DRAFT: Final = "DRAFT with faults: do not teach or gather by it."
NOT_CHECKED: Final = "Not yet checked by a second reader."
FROM_MEMORY: Final = "Partly from memory."
SPEAKS_FOR_ITSELF: Final = ("setting", "light", "moisture", "lime", "protection")
"""Labels of habitat and range whose values need none."""
FIRST: Final = "first aid"
"""The kind of caution that stands first on the card of a plant that harms."""
AMOUNT: Final = "amount"
OF_TASTE: Final = ("taste", "texture in the mouth", "texture", "stands in for")
"""What is said of an edible part that is no limit to how it is eaten: the page tells it."""


def make_card(lesson: Lesson, setting: CardSetting) -> Card:
    """Return the card of a plant that the course teaches."""
    front, back = (_food if lesson.is_food else _harm)(lesson, setting)
    return Card(
        lesson=lesson,
        danger=danger_of(lesson),
        front=Side("front", tuple(block for block in front if block.lines)),
        back=Side("back", tuple(block for block in back if block.lines)),
        rows=setting.years[lesson.slug].rows,
        photograph=fine_photograph(lesson, setting.bank, CARD_SIZES[setting.course.cards.size]),
        stamps=tuple(_stamps(lesson, draft=setting.draft)),
        standing=FOOD_STANDING if lesson.is_food else HARM_STANDING,
        emergency=(*setting.course.emergency, KEEP),
        course=setting.course.title,
        address=address_of(setting.course.address, lesson.slug),
    )


Sides = tuple[list[Block], list[Block]]


def _food(lesson: Lesson, setting: CardSetting) -> Sides:
    titles = FOOD_TITLES
    year = setting.years[lesson.slug]
    front = [_known_by(lesson, setting), Block(titles["doubles"], double_lines(lesson, setting))]
    eaten = zip(lesson.edible_parts, year.eaten, strict=True)
    back = [
        Block(titles["eaten"], tuple(_eaten(part, row, setting) for part, row in eaten)),
        Block(titles["removed"], tuple(map(_removed, lesson.removals)), run_on=True),
        Block(titles["kitchen"], tuple(_section(lesson, "preparation"))),
        Block(titles["cautions"], tuple(map(_caution, lesson.cautions))),
        Block(titles["place"], tuple(_places(lesson, setting))),
        Block(titles["harvest"], tuple(_harvest(lesson, setting))),
    ]
    return front, back


def _harm(lesson: Lesson, setting: CardSetting) -> Sides:
    titles = HARM_TITLES
    front = [_known_by(lesson, setting), Block(titles["doubles"], double_lines(lesson, setting))]
    first = sorted(lesson.cautions, key=lambda caution: caution.kind != FIRST)
    back = [
        Block(titles["cautions"], tuple(map(_caution, first))),
        Block(titles["place"], tuple(_places(lesson, setting))),
        Block(titles["harvest"], tuple(_harvest(lesson, setting))),
    ]
    return front, back


def _known_by(lesson: Lesson, setting: CardSetting) -> Block:
    return Block(KNOW_IT, tuple(_key_feature(fact, setting) for fact in lesson.key_facts))


def _key_feature(fact: Fact, setting: CardSetting) -> Line:
    organ = organ_words(fact, setting.bank.vocabulary)
    told = fact_runs(fact, setting.course.units_first)
    what = f"the key feature `{fact.label}`"
    return worded(fact, told, fact.value_span, label=f"{organ}, {fact.label}", what=what)


def _eaten(part: EdiblePart, row: Row, setting: CardSetting) -> Line:
    first = setting.course.units_first
    ways = value_words(part.ways, first)
    told = runs(part.on_card) if part.on_card else _limits(part, first)
    told = clauses(plain(row_words(row)), plain(ways), told)
    name = part.timing.name
    return worded(part, told, part.timing.span, label=name, what=f"the edible part `{name}`")


def _limits(part: EdiblePart, first: System) -> tuple[Run, ...]:
    """Return what is said of an edible part, but for how it tastes."""
    facts = [
        joined(
            [plain("" if fact.label == AMOUNT else fact.label), fact_runs(fact, first)], Run(" ")
        )
        for fact in part.facts
        if fact.label not in OF_TASTE
    ]
    return clauses(*facts, runs(part.timing.note.text))


def _removed(removal: Removal) -> Line:
    told = sentences(runs(removal.reason.value), runs(removal.note.text))
    name = removal.name.value
    what = f"the part to remove `{name}`"
    return worded(
        removal, runs(removal.on_card) or told, removal.reason.span, label=name, what=what
    )


def _caution(caution: Caution) -> Line:
    kind = caution.kind
    what = f"the caution on {kind}" if kind else "the caution"
    return worded(
        caution,
        runs(caution.on_card) or caution_runs(caution),
        caution.text.span,
        label=kind,
        what=what,
    )


def _section(lesson: Lesson, name: str) -> Iterator[Line]:
    """Yield a section's wording for the card, or without one its prose before any heading."""
    section = lesson.section(name)
    if section is None:
        return
    words = section.heading.value
    if section.on_card:
        yield Line(
            runs(section.on_card), what=f"the card's wording of {words}", span=section.card_span
        )
        return
    for paragraph in paragraphs(_before_headings(section.prose.text)):
        yield Line(paragraph, what=words, span=section.heading.span, can_be_worded=True)


def _before_headings(text: str) -> str:
    """Return a section's own words: what stands below its inner headings are recipes."""
    return text.split("\n### ", 1)[0] if not text.startswith("### ") else ""


def _places(lesson: Lesson, setting: CardSetting) -> Iterator[Line]:
    """Yield a line of the habitat and one of the range: the values of their facts."""
    for name in ("habitat", "range"):
        yield from _in_a_row(lesson, name, setting)


def _in_a_row(lesson: Lesson, name: str, setting: CardSetting) -> Iterator[Line]:
    """Yield the facts of a section as one line; the notes of habitat and range are the page's."""
    facts = lesson.facts_of(name)
    if facts:
        yield Line(
            clauses(*(_short(fact, setting) for fact in facts)),
            label=name,
            what=f"the facts of {name}",
            span=lesson.where(name),
            can_be_worded=not all(fact.on_card for fact in facts),
        )


def _short(fact: Fact, setting: CardSetting) -> tuple[Run, ...]:
    first = setting.course.units_first
    keeps_note = fact.on_card or fact.subject == "harvest"
    told = fact_runs(fact, first) if keeps_note else plain(value_words(fact.items, first))
    label = "" if fact.on_card or fact.label in SPEAKS_FOR_ITSELF else fact.label
    return joined([plain(label), told], Run(" "))


def _harvest(lesson: Lesson, setting: CardSetting) -> Iterator[Line]:
    section = lesson.section("harvest")
    if section and section.on_card:
        yield from _section(lesson, "harvest")
    elif section:
        yield from _in_a_row(lesson, "harvest", setting)
        for paragraph in paragraphs(section.lead.text):
            yield Line(paragraph, what="Harvest", span=section.lead.span, can_be_worded=True)


def _stamps(lesson: Lesson, *, draft: bool) -> Iterator[str]:
    if draft:
        yield DRAFT
    if not lesson.front.is_checked:
        yield NOT_CHECKED
    if any(citation.from_memory for citation in lesson.citations):
        yield FROM_MEMORY
