"""A course as frozen values."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from sallet.lesson.values.times import MONTHS
from sallet.source import Source, Span
from sallet.yamltext import Node

if TYPE_CHECKING:
    from collections.abc import Mapping
    from datetime import date, time

    from sallet.course.printing import CardName, Duplex, PaperName
    from sallet.course.series import Series
    from sallet.fields import FieldFault
    from sallet.findings import Severity
    from sallet.units import System
    from sallet.yamltext import YamlFault


@dataclass(frozen=True)
class Place:
    """Where the course meets. Degrees, north and east positive; metres above the sea."""

    name: str = ""
    latitude: float | None = None
    longitude: float | None = None
    elevation: float | None = None


@dataclass(frozen=True)
class Session:
    """One meeting of the class."""

    date: date
    starts: time | None = None
    title: str = ""
    meets_at: str = ""
    plants: tuple[str, ...] = ()
    """The names as written."""
    bring: tuple[str, ...] = ()
    notes: str = ""
    """Markdown."""
    minutes: int | None = None
    """How long it lasts."""
    holds: int | None = None
    """How many plants it can hold; None for any number."""
    listed: int = 0
    """Which entry of the file's list tells of it, counted from 0: one with its date, or a series."""


@dataclass(frozen=True)
class After:
    """A plant that is taught after some others; the names as written."""

    plant: str
    first: tuple[str, ...]


@dataclass(frozen=True)
class SeenOn:
    """A date on which something was seen; the year may be left out."""

    month: int
    day: int
    year: int | None = None

    @property
    def words(self) -> str:
        """Return the date as `2 May 2026`."""
        year = f" {self.year}" if self.year else ""
        return f"{self.day} {MONTHS[self.month - 1]}{year}"


@dataclass(frozen=True)
class Observation:
    """The first days on which a part of a plant was seen where the course meets."""

    words: str
    """The plant and its part as written: `ramsons flowers`."""
    days: tuple[SeenOn, ...]


@dataclass(frozen=True)
class Printing:
    """The size of the field cards, and the printer's paper."""

    size: CardName = "A6"
    paper: PaperName = "A4"
    duplex: Duplex = "long edge"
    """Over which edge the printer turns the sheet for its back."""
    wanted: bool = True
    """Whether there are field cards at all."""


@dataclass(frozen=True)
class Course:
    """What course.yml says. Folders are as written, relative to the file."""

    source: Source
    title: str = ""
    about: str = ""
    """Markdown."""
    teacher: str = ""
    place: Place = field(default_factory=Place)
    language: str = "en"
    lessons: str = "lessons"
    plants: tuple[str, ...] | None = None
    """The names as written; None for every lesson of the folder."""
    sessions: tuple[Session, ...] = ()
    """In the order of their dates, on one day of their starts, then as they stand in the file."""
    series: tuple[Series, ...] = ()
    """Those of the sessions that come regularly, as the file tells them."""
    after: tuple[After, ...] = ()
    seen_here: tuple[Observation, ...] = ()
    time_zone: str = ""
    """A name of the IANA time zone database: `Europe/London`."""
    units_first: System = "metric"
    emergency: tuple[str, ...] = ()
    address: str = ""
    """Where the pages are published."""
    cards: Printing = field(default_factory=Printing)
    licence: str = ""
    into: str = "site_out"
    severities: Mapping[str, Severity] = field(default_factory=dict)
    node: Node = field(default_factory=lambda: Node(Span(0, 0), entries=()), repr=False)
    broken: tuple[YamlFault, ...] = ()
    wrong: tuple[FieldFault, ...] = ()

    def where(self, *path: str | int) -> Span:
        """Return where a value stands, or the nearest one above it that is there."""
        return self.node.reach(path).span
