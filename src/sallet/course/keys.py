"""The keys of course.yml, with what an editor tells of each."""

from __future__ import annotations

from typing import Annotated, Any, Final, Literal

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field

from sallet.course.days import Day, Days, SeenDays, one_or_more
from sallet.course.printing import CardField, DuplexField, PaperField
from sallet.course.time_zones import TimeZone
from sallet.course.written import Address, Clock, Count, Language, Length, Lines, Room, Step
from sallet.findings import Severity
from sallet.lesson.front_matter import Elevation

_NOTHING: Final = {"type": "null"}
_ONE_FORM: Final[dict[str, Any]] = {
    "oneOf": [
        {
            "required": ["date"],
            "properties": dict.fromkeys(("first", "every", "count", "skip"), _NOTHING),
        },
        {
            "required": ["first", "every", "count"],
            "properties": dict.fromkeys(("date", "plants"), _NOTHING),
        },
    ]
}
"""For editors: an entry is one session or a series. The reader tells more exactly what lacks."""


def _all_or_list(value: Any) -> Any:
    return None if isinstance(value, str) and value.casefold() == "all" else one_or_more(value)


class _Strict(BaseModel):
    model_config = ConfigDict(extra="forbid", populate_by_name=True)


class PlaceFields(_Strict):
    """Where the course meets."""

    name: str = Field("", description="The place's name, as on an invitation.")
    latitude: float | None = Field(None, ge=-90, le=90, description="Degrees, north positive.")
    longitude: float | None = Field(None, ge=-180, le=180, description="Degrees, east positive.")
    elevation: Elevation | None = None


class SessionFields(_Strict):
    """One meeting of the class, with a `date`; or a series, with `first`, `every` and `count`."""

    model_config = ConfigDict(json_schema_extra=_ONE_FORM)

    date_: Day | None = Field(
        None, alias="date", description="Year, month and day of one session: 2027-03-06."
    )
    first: Day | None = Field(None, description="The day on which a series begins: 2027-03-06.")
    every: Step | None = Field(
        None, description="How far the meetings of a series are apart: `2 weeks`, `10 days`."
    )
    count: Count | None = Field(
        None, description="How many meetings a series has; a skipped date is not counted."
    )
    skip: Days = Field(default_factory=list, description="Dates of a series on which nobody meets.")
    starts: Clock | None = Field(None, description="The time of day at which it starts: 10:30.")
    length: Length | None = Field(None, description="How long it lasts: `2 h 30 min`.")
    title: str = Field("", description="What the session is about.")
    meets_at: str = Field("", alias="meets at", description="The place to meet.")
    plants: Lines = Field(default_factory=list, description="Plants taught, by name.")
    holds: Room | None = Field(
        None, description="How many plants can be taught in it; 0 for none but those named."
    )
    bring: Lines = Field(default_factory=list, description="What the students bring.")
    notes: str = Field("", description="Notes for the students, in Markdown.")


class CardFields(_Strict):
    """The field cards and the paper they are printed on."""

    size: CardField = Field("A6", description="The size of a card.")
    paper: PaperField = Field("A4", description="The paper of the printer.")
    duplex: DuplexField = Field(
        "long edge", description="Over which edge the printer turns the sheet for its back."
    )


class NoCards(CardFields):
    """`cards: none`: the course has no field cards."""


def _none_or_fields(value: Any) -> Any:
    return NoCards() if isinstance(value, str) and value.casefold() == "none" else value


class CourseFields(_Strict):
    """The keys of course.yml."""

    model_config = ConfigDict(title="sallet course")

    title: str = Field("", description="The course's title.")
    about: str = Field("", description="What the course is, in Markdown, for its first page.")
    teacher: str = Field("", description="Who teaches it.")
    place: PlaceFields = Field(default_factory=PlaceFields)
    time_zone: TimeZone = Field(
        "", alias="time zone", description="The time zone of the sessions: `Europe/London`."
    )
    language: Language = Field("en", description="The language of the lessons, as a tag of BCP 47.")
    lessons: str = Field("lessons", description="The folder of lessons, relative to this file.")
    plants: Annotated[
        list[str] | None,
        BeforeValidator(_all_or_list, json_schema_input_type=str | list[str]),
    ] = Field(None, description="Which plants the course teaches, by name, or `all`.")
    sessions: list[SessionFields] = Field(
        default_factory=list, description="The meetings of the class, alone or in series."
    )
    after: dict[str, Lines] = Field(
        default_factory=dict,
        description="For a plant, by name, the plant or plants that are taught before it.",
    )
    seen_here: dict[str, SeenDays] = Field(
        default_factory=dict,
        alias="seen here",
        description="For a plant and its part, `ramsons flowers`, the first day of a year on "
        "which it was seen where the course meets: `2 May 2026`, or a list of such days.",
    )
    units_first: Literal["metric", "imperial"] = Field(
        "metric", alias="units first", description="Which units stand first on a page."
    )
    emergency: Lines = Field(
        default_factory=list, description="Whom to ring after a poisoning, one line each."
    )
    address: Address = Field(
        "", description="Where the pages are published, for the cards: https://example.org/course/."
    )
    cards: Annotated[
        CardFields,
        BeforeValidator(_none_or_fields, json_schema_input_type=CardFields | Literal["none"]),
    ] = Field(default_factory=CardFields, description="The field cards, or `none` for no cards.")
    licence: str = Field("", description="The licence under which the pages may be used.")
    into: str = Field("site_out", description="The output folder, relative to this file.")
    raise_: dict[str, Severity] = Field(
        default_factory=dict, alias="raise", description="Checks to take more seriously."
    )
