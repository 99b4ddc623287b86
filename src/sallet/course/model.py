"""A course as frozen values."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from sallet.source import Source, Span
from sallet.yamltext import Node

if TYPE_CHECKING:
    from collections.abc import Mapping
    from datetime import date, time

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
    units_first: System = "metric"
    emergency: tuple[str, ...] = ()
    licence: str = ""
    into: str = "site_out"
    severities: Mapping[str, Severity] = field(default_factory=dict)
    node: Node = field(default_factory=lambda: Node(Span(0, 0), entries=()), repr=False)
    broken: tuple[YamlFault, ...] = ()
    wrong: tuple[FieldFault, ...] = ()

    def where(self, *path: str | int) -> Span:
        """Return where a value stands, or the nearest one above it that is there."""
        return self.node.reach(path).span
