"""A field card as frozen values: two sides of blocks, whose lines know where they were written."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal, Protocol

from sallet.lesson.model import NOWHERE

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.cards.plain import Run
    from sallet.lesson.bank import PictureFile
    from sallet.lesson.model import Lesson, Picture
    from sallet.season.here import Row
    from sallet.source import Span

SideName = Literal["front", "back"]
SIDES: tuple[SideName, ...] = ("front", "back")


@dataclass(frozen=True)
class Line:
    """A paragraph of a card."""

    runs: tuple[Run, ...]
    label: str = ""
    """Set before it."""
    danger: str = ""
    """The danger of the plant that it is about, where it is about another plant."""
    scientific: str = ""
    """The scientific name of that plant."""
    what: str = ""
    """What its writer calls it: `the caution on allergy`. Empty for words that are not the lesson's."""
    span: Span = NOWHERE
    """Where the words stand that the card shows."""
    can_be_worded: bool = False
    """Whether it may carry a wording for the card and has none."""

    @property
    def text(self) -> str:
        """Return its words without the label."""
        return "".join(run.text for run in self.runs)


class Wordable(Protocol):
    """Something of a lesson that may carry a wording for the card."""

    @property
    def on_card(self) -> str:
        """Return the wording, or an empty string."""

    @property
    def card_span(self) -> Span:
        """Return where the wording stands."""


def worded(source: Wordable, told: tuple[Run, ...], span: Span, *, label: str, what: str) -> Line:
    """Return a line of something that may be worded for the card; `span` is where its own words stand."""
    at = source.card_span if source.on_card else span
    return Line(told, label=label, what=what, span=at, can_be_worded=not source.on_card)


@dataclass(frozen=True)
class Block:
    """Lines below a heading."""

    title: str
    lines: tuple[Line, ...]
    run_on: bool = False
    """Whether its lines follow each other in one paragraph."""


@dataclass(frozen=True)
class Side:
    """One side of a card."""

    name: SideName
    blocks: tuple[Block, ...]

    @property
    def lines(self) -> Iterator[Line]:
        """Yield every line of the side."""
        return (line for block in self.blocks for line in block.lines)

    @property
    def letters(self) -> int:
        """Return how many letters stand on it, labels included."""
        return sum(len(line.label) + len(line.text) for line in self.lines)


@dataclass(frozen=True)
class Address:
    """The page of a plant on the web, and the squares of its QR code."""

    url: str
    squares: tuple[str, ...]
    """Rows of `1` for dark and `0` for light, without the quiet zone."""


@dataclass(frozen=True)
class Photograph:
    """A picture of the lesson and its file."""

    picture: Picture
    file: PictureFile

    @property
    def credit(self) -> str:
        """Return whose it is and how it may be used."""
        return ", ".join(filter(None, (self.picture.credit, self.picture.licence)))


@dataclass(frozen=True)
class Card:
    """A plant's field card."""

    lesson: Lesson
    danger: str
    """Its danger, or `food`."""
    front: Side
    back: Side
    rows: tuple[Row, ...]
    """The year at the course's place, for the strip."""
    photograph: Photograph | None = None
    """What stands on the front in the place of the drawing."""
    stamps: tuple[str, ...] = ()
    """What a reader must know of the words: not yet checked, from memory."""
    standing: tuple[str, ...] = ()
    """The cautions that hold for every plant of its kind."""
    emergency: tuple[str, ...] = ()
    course: str = ""
    address: Address | None = None

    @property
    def sides(self) -> tuple[Side, Side]:
        """Return front and back."""
        return self.front, self.back
