"""course.yml → Course, with all faults at once; and the JSON Schema of the file for editors."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from sallet.course.entries import (
    entry_faults,
    is_too_long,
    listed_entries,
    series_faults,
    series_of,
)
from sallet.course.keys import CourseFields, NoCards
from sallet.course.meetings import sessions_of
from sallet.course.model import After, Course, Observation, Place, Printing
from sallet.fields import json_schema, read_fields
from sallet.yamltext import read_yaml

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.course.keys import CardFields
    from sallet.source import Source


def read_course(source: Source) -> Course:
    """Return the course of a course.yml; what is wrong with it stands in it as faults."""
    node, broken = read_yaml(source.text)
    fields, wrong = read_fields(CourseFields, node)
    entries = listed_entries(node, fields.sessions, wrong)
    series = tuple(series_of(entries))
    too_long = is_too_long(node, series)
    place = fields.place
    return Course(
        source=source,
        title=fields.title.strip(),
        about=fields.about,
        teacher=fields.teacher.strip(),
        place=Place(place.name, place.latitude, place.longitude, place.elevation),
        time_zone=fields.time_zone,
        language=fields.language,
        lessons=fields.lessons,
        plants=tuple(fields.plants) if fields.plants is not None else None,
        sessions=() if too_long else sessions_of(entries, series),
        series=() if too_long else series,
        after=tuple(After(plant, tuple(first)) for plant, first in fields.after.items()),
        seen_here=tuple(_observations(fields)),
        units_first=fields.units_first,
        emergency=tuple(fields.emergency),
        address=fields.address,
        cards=_printing(fields.cards),
        licence=fields.licence.strip(),
        into=fields.into,
        severities=fields.raise_,
        node=node,
        broken=broken,
        wrong=(*wrong, *entry_faults(node), *series_faults(node, series)),
    )


def _printing(cards: CardFields) -> Printing:
    wanted = not isinstance(cards, NoCards)
    return Printing(cards.size, cards.paper, cards.duplex, wanted)


def _observations(fields: CourseFields) -> Iterator[Observation]:
    for words, days in fields.seen_here.items():
        yield Observation(words, tuple(days))


def course_schema() -> dict[str, Any]:
    """Return the JSON Schema of course.yml, for editors that complete and check as one types."""
    return json_schema(CourseFields)
