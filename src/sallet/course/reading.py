"""course.yml → Course, with all faults at once; and the JSON Schema of the file for editors."""

from __future__ import annotations

import re
from datetime import date, time
from typing import TYPE_CHECKING, Annotated, Any, Final, Literal

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field

from sallet.course.model import Course, Place, Session
from sallet.fields import json_schema, read_fields
from sallet.findings import Severity
from sallet.lesson.front_matter import Elevation
from sallet.yamltext import read_yaml

if TYPE_CHECKING:
    from sallet.source import Source

_DAY: Final = r"^\d{4}-\d{2}-\d{2}$"
_TIME: Final = r"^([01]?\d|2[0-3]):[0-5]\d$"
_LANGUAGE: Final = r"^[a-zA-Z]{2,3}(-[a-zA-Z0-9]{2,8})*$"


def _day(value: Any) -> Any:
    # Left to itself pydantic takes a bare number for seconds since 1970.
    if not re.match(_DAY, str(value)):
        raise ValueError("expected a date such as 2027-03-06")
    return value


def _clock(value: Any) -> time:
    match = re.match(_TIME, str(value))
    if match is None:
        raise ValueError("expected a time such as 10:30")
    hour, minute = match[0].split(":")
    return time(int(hour), int(minute))


def _language(value: Any) -> Any:
    if not re.match(_LANGUAGE, str(value)):
        raise ValueError("expected a language's tag such as `en` or `en-GB`")
    return value


def _one_or_more(value: Any) -> Any:
    return [value] if isinstance(value, str) else value


def _all_or_list(value: Any) -> Any:
    return None if isinstance(value, str) and value.casefold() == "all" else _one_or_more(value)


Day = Annotated[
    date, BeforeValidator(_day, json_schema_input_type=Annotated[str, Field(pattern=_DAY)])
]
Clock = Annotated[
    time, BeforeValidator(_clock, json_schema_input_type=Annotated[str, Field(pattern=_TIME)])
]
Language = Annotated[
    str,
    BeforeValidator(_language, json_schema_input_type=Annotated[str, Field(pattern=_LANGUAGE)]),
]
Lines = Annotated[list[str], BeforeValidator(_one_or_more, json_schema_input_type=str | list[str])]


class _Strict(BaseModel):
    model_config = ConfigDict(extra="forbid", populate_by_name=True)


class PlaceFields(_Strict):
    """Where the course meets."""

    name: str = Field("", description="The place's name, as on an invitation.")
    latitude: float | None = Field(None, ge=-90, le=90, description="Degrees, north positive.")
    longitude: float | None = Field(None, ge=-180, le=180, description="Degrees, east positive.")
    elevation: Elevation | None = None


class SessionFields(_Strict):
    """One meeting of the class."""

    date_: Day = Field(alias="date", description="Year, month and day: 2027-03-06.")
    starts: Clock | None = Field(None, description="The time of day at which it starts: 10:30.")
    title: str = Field("", description="What the session is about.")
    meets_at: str = Field("", alias="meets at", description="The place to meet.")
    plants: Lines = Field(default_factory=list, description="Plants taught, by name.")
    bring: Lines = Field(default_factory=list, description="What the students bring.")
    notes: str = Field("", description="Notes for the students, in Markdown.")


class CourseFields(_Strict):
    """The keys of course.yml."""

    model_config = ConfigDict(title="sallet course")

    title: str = Field("", description="The course's title.")
    about: str = Field("", description="What the course is, in Markdown, for its first page.")
    teacher: str = Field("", description="Who teaches it.")
    place: PlaceFields = Field(default_factory=PlaceFields)
    language: Language = Field("en", description="The language of the lessons, as a tag of BCP 47.")
    lessons: str = Field("lessons", description="The folder of lessons, relative to this file.")
    plants: Annotated[
        list[str] | None,
        BeforeValidator(_all_or_list, json_schema_input_type=str | list[str]),
    ] = Field(None, description="Which plants the course teaches, by name, or `all`.")
    sessions: list[SessionFields] = Field(default_factory=list)
    units_first: Literal["metric", "imperial"] = Field(
        "metric", alias="units first", description="Which units stand first on a page."
    )
    emergency: Lines = Field(
        default_factory=list, description="Whom to ring after a poisoning, one line each."
    )
    licence: str = Field("", description="The licence under which the pages may be used.")
    into: str = Field("site_out", description="The output folder, relative to this file.")
    raise_: dict[str, Severity] = Field(
        default_factory=dict, alias="raise", description="Checks to take more seriously."
    )


def read_course(source: Source) -> Course:
    """Return the course of a course.yml; what is wrong with it stands in it as faults."""
    node, broken = read_yaml(source.text)
    fields, wrong = read_fields(CourseFields, node)
    place = fields.place
    return Course(
        source=source,
        title=fields.title.strip(),
        about=fields.about,
        teacher=fields.teacher.strip(),
        place=Place(place.name, place.latitude, place.longitude, place.elevation),
        language=fields.language,
        lessons=fields.lessons,
        plants=tuple(fields.plants) if fields.plants is not None else None,
        sessions=tuple(_session(session) for session in fields.sessions),
        units_first=fields.units_first,
        emergency=tuple(fields.emergency),
        licence=fields.licence.strip(),
        into=fields.into,
        severities=fields.raise_,
        node=node,
        broken=broken,
        wrong=tuple(wrong),
    )


def _session(fields: SessionFields) -> Session:
    return Session(
        date=fields.date_,
        starts=fields.starts,
        title=fields.title.strip(),
        meets_at=fields.meets_at.strip(),
        plants=tuple(fields.plants),
        bring=tuple(fields.bring),
        notes=fields.notes,
    )


def course_schema() -> dict[str, Any]:
    """Return the JSON Schema of course.yml, for editors that complete and check as one types."""
    return json_schema(CourseFields)
