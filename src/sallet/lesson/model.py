"""One plant's lesson as frozen values: what was written, what it means, where it stands.

Reading cannot fail. What could not be understood stays in the lesson as words, and a
`Fault` beside it says what was expected; checks turn faults into findings.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Final, Literal

from sallet.lesson.value import Item, Measure, StateRange, Window
from sallet.source import Source, Span, Text

if TYPE_CHECKING:
    from collections.abc import Iterator
    from datetime import date

NOWHERE = Span(0, 0)
MEMORY = "memory"
"""The footnote key by which a writer says that a statement comes from memory."""

Danger = Literal["deadly", "poisonous", "harmful", "harmless"]
TaughtAs = Literal["food", "look-alike"]
GRAVE: Final[tuple[Danger, ...]] = ("deadly", "poisonous")
"""The dangers for which a mistaken plant may cost a life or a night in hospital."""


@dataclass(frozen=True)
class Fault:
    """Words that could not be read as the format asks."""

    kind: str
    """The id of the check that words the fault for the writer."""
    span: Span
    words: str
    nearest: tuple[str, ...] = ()
    detail: str = ""


@dataclass(frozen=True)
class Prose:
    """Markdown text as written, without the indent of the bullet it stands in."""

    text: str
    span: Span

    def __bool__(self) -> bool:
        return bool(self.text.strip())


NO_PROSE = Prose("", NOWHERE)


@dataclass(frozen=True)
class Citation:
    """A reference `[^key]` to a source."""

    key: str
    span: Span

    @property
    def from_memory(self) -> bool:
        """Whether the statement is from the writer's memory and has no source yet."""
        return self.key == MEMORY


@dataclass(frozen=True)
class Fact:
    """`- label: value` under an organ or in a section of facts."""

    subject: str
    """The organ or section, by its name in the vocabulary."""
    part: str
    """The kind or piece of the organ its heading names (`bulb`), or an empty string."""
    label: str
    """The label's name in the vocabulary, or as written where it is not known."""
    known: bool
    key: bool
    """Whether the label is bold: a key feature."""
    items: tuple[Item, ...]
    text: str
    """The value as written, without citations."""
    note: Prose
    on_card: str
    citations: tuple[Citation, ...]
    span: Span
    label_span: Span
    value_span: Span
    card_span: Span = NOWHERE
    """Where the wording for the card stands, if there is one."""

    @property
    def states(self) -> frozenset[str]:
        """Return the names of all states recorded, whatever their qualifiers."""
        return frozenset(
            name
            for item in self.items
            if isinstance(item.value, StateRange)
            for name in item.value.names
        )

    @property
    def measures(self) -> tuple[Measure, ...]:
        """Return the lengths recorded."""
        return tuple(item.value for item in self.items if isinstance(item.value, Measure))


@dataclass(frozen=True)
class Timing:
    """`- flowers: mid April to June` in Season: when an organ or a part of it can be met."""

    name: str
    """As written: `green seeds`."""
    organ: str
    """The organ's name in the vocabulary, or an empty string."""
    items: tuple[Item, ...]
    text: str
    note: Prose
    citations: tuple[Citation, ...]
    span: Span
    label_span: Span
    value_span: Span
    part: str = ""

    @property
    def windows(self) -> tuple[Window, ...]:
        """Return the windows that could be read."""
        return tuple(i.value for i in self.items if isinstance(i.value, Window))


@dataclass(frozen=True)
class EdiblePart:
    """`- leaves: March to May; raw, cooked`: what is eaten, when, and how."""

    timing: Timing
    ways: tuple[Item, ...]
    """How it is eaten: states of the label `preparation`."""
    facts: tuple[Fact, ...]
    on_card: str
    card_span: Span = NOWHERE
    """Where the wording for the card stands, if there is one."""


@dataclass(frozen=True)
class Removal:
    """`- leaf stalks: stringy`: what is cut away, and why."""

    name: Text
    reason: Text
    note: Prose
    on_card: str
    citations: tuple[Citation, ...]
    span: Span
    card_span: Span = NOWHERE
    """Where the wording for the card stands, if there is one."""


@dataclass(frozen=True)
class Caution:
    """`- kind: text`; `kind` is empty for free text."""

    kind: str
    text: Text
    note: Prose
    on_card: str
    citations: tuple[Citation, ...]
    span: Span
    card_span: Span = NOWHERE
    """Where the wording for the card stands, if there is one."""


# ---- the parts of a lesson ----------------------------------------------------------------


@dataclass(frozen=True)
class LookAlike:
    """A plant that this one may be taken for, with or without a lesson of its own."""

    name: Text
    prose: Prose
    scientific_name: str
    danger: Danger | None
    settled_by: str
    on_card: str
    facts: tuple[Fact, ...]
    citations: tuple[Citation, ...]
    span: Span
    card_span: Span = NOWHERE
    """Where the wording for the card stands, if there is one."""


@dataclass(frozen=True)
class Recipe:
    """A `###` under Preparation."""

    title: Text
    prose: Prose


@dataclass(frozen=True)
class Option:
    """One answer of a question."""

    text: Text
    right: bool


@dataclass(frozen=True)
class Question:
    """A question with its options and the feedback that follows any answer."""

    prompt: Text
    options: tuple[Option, ...]
    feedback: Prose
    span: Span


@dataclass(frozen=True)
class Pin:
    """A labelled point of a picture, in percent from its left and upper edge."""

    number: int
    x: float
    y: float
    word: str
    span: Span


@dataclass(frozen=True)
class Picture:
    """A photograph or drawing that lies beside the lesson or in the course's pictures."""

    file: Text
    shows: str
    credit: str
    licence: str
    pins: tuple[Pin, ...]
    note: Prose
    span: Span


@dataclass(frozen=True)
class Footnote:
    """The definition of a source."""

    key: str
    text: str
    span: Span


@dataclass(frozen=True)
class Link:
    """A link or inline picture in the prose."""

    target: str
    span: Span
    is_picture: bool = False


@dataclass(frozen=True)
class Section:
    """A `##` of the lesson, known or not; `prose` is all of its text, sub-headings included.

    The wording for the field card is no part of `lead` or `prose`.
    """

    name: str
    """The section's name in the format, or an empty string for one of the writer's own."""
    heading: Text
    lead: Prose
    """The text before the first bullet list or sub-heading."""
    prose: Prose
    citations: tuple[Citation, ...]
    on_card: str = ""
    """The shorter wording of the prose for the field card: Preparation and Harvest may have one."""
    card_span: Span = NOWHERE
    """Where the wording for the card stands, if there is one."""


@dataclass(frozen=True)
class SeenAt:
    """Where the lesson's times of year were observed."""

    latitude: float
    longitude: float
    elevation: float | None
    """Metres above the sea."""


@dataclass(frozen=True)
class FrontMatter:
    """The lines between `---` at the head of the file."""

    name: str = ""
    also_called: tuple[str, ...] = ()
    scientific_name: str = ""
    family: str = ""
    taught_as: TaughtAs = "food"
    danger: Danger | None = None
    seen_at: SeenAt | None = None
    written_by: str = ""
    checked_by: str = ""
    checked_on: date | None = None
    spans: tuple[tuple[str, Span], ...] = ()
    """Where each key's value stands, by key."""
    span: Span = NOWHERE

    @property
    def is_checked(self) -> bool:
        """Whether another than its writer has read it, and on which day is known."""
        same = self.checked_by.casefold() == self.written_by.casefold()
        return bool(self.checked_by) and self.checked_on is not None and not same

    def where(self, key: str) -> Span:
        """Return where a key's value stands, or the whole front matter."""
        return next((span for name, span in self.spans if name == key), self.span)


@dataclass(frozen=True)
class Lesson:
    """One plant."""

    source: Source
    slug: str
    """The file's name without ending: the name of its page."""
    front: FrontMatter
    intro: Prose
    sections: tuple[Section, ...]
    facts: tuple[Fact, ...]
    """Every fact of Identification, Habitat, Range, Uses, Harvest and Growing, in order."""
    look_alikes: tuple[LookAlike, ...]
    season: tuple[Timing, ...]
    edible_parts: tuple[EdiblePart, ...]
    removals: tuple[Removal, ...]
    recipes: tuple[Recipe, ...]
    cautions: tuple[Caution, ...]
    questions: tuple[Question, ...]
    pictures: tuple[Picture, ...]
    footnotes: tuple[Footnote, ...]
    citations: tuple[Citation, ...]
    links: tuple[Link, ...]
    faults: tuple[Fault, ...] = field(repr=False)

    @property
    def name(self) -> str:
        """Return the plant's common name, or the file's where it has none."""
        return self.front.name or self.slug

    @property
    def is_food(self) -> bool:
        """Whether the plant is taught as food."""
        return self.front.taught_as == "food"

    @property
    def key_facts(self) -> tuple[Fact, ...]:
        """Return the key features in the order written."""
        return tuple(fact for fact in self.facts if fact.key)

    def section(self, name: str) -> Section | None:
        """Return a section by its name in the format."""
        return next((s for s in self.sections if s.name == name), None)

    def text_of(self, section: str) -> str:
        """Return all text of a section, sub-headings included; nothing where it is missing."""
        found = self.section(section)
        return found.prose.text if found else ""

    def where(self, section: str) -> Span:
        """Return where a section's heading stands, or the head of the file without it."""
        found = self.section(section)
        return found.heading.span if found else self.front.span

    def facts_of(self, subject: str) -> tuple[Fact, ...]:
        """Return the facts of an organ or section."""
        return tuple(fact for fact in self.facts if fact.subject == subject)

    def faults_of(self, kind: str) -> Iterator[Fault]:
        """Yield the faults of one kind in the order of the text."""
        found = (fault for fault in self.faults if fault.kind == kind)
        yield from sorted(found, key=lambda fault: fault.span)
