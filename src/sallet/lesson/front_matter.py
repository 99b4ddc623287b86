"""The lines between `---`: YAML with the format's keys and no others."""

from __future__ import annotations

import re
from datetime import date
from typing import TYPE_CHECKING, Annotated, Any, Final

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field

from sallet.fields import json_schema, nearest_key, read_fields
from sallet.lesson.model import Danger, Fault, FrontMatter, SeenAt, TaughtAs
from sallet.source import Source, Span
from sallet.units import unit_named
from sallet.yamltext import Node, read_yaml

if TYPE_CHECKING:
    from sallet.fields import FieldFault

_FENCE: Final = re.compile(r"^---[ \t]*$", re.MULTILINE)
_HEADING: Final = re.compile(r"^#{2,6} ", re.MULTILINE)
"""A heading between two fences: the second is a rule in the text. One `#` begins a comment."""
_ELEVATION: Final = re.compile(r"^(-?\d{1,5}(?:\.\d+)?)\s*([a-zA-Z'′]+)$")
_NO_KEY: Final = re.compile(r"^[ \t]*$|^#", re.MULTILINE)
_ON: Final = re.compile(r"^(?P<who>.*?)[,;]? ?(?:on )?\(?(?P<date>\d{4}-\d{2}-\d{2})\)?$")


def elevation(value: Any) -> Any:
    """Return metres for `180 m` or `590 ft`."""
    match = _ELEVATION.match(str(value).strip())
    unit = unit_named(match[2]) if match else None
    if match is None or unit is None or unit.name not in {"m", "ft"}:
        raise ValueError("expected a height such as `180 m` or `590 ft`")
    return float(match[1]) * float(unit.millimetres) / 1000


def _one_or_more(value: Any) -> Any:
    return [value] if isinstance(value, str) and value else value or []


Elevation = Annotated[
    float,
    Field(ge=-450, le=9000),
    BeforeValidator(elevation, json_schema_input_type=str),
    Field(description="Height above the sea, such as `180 m` or `590 ft`."),
]


class SeenAtFields(BaseModel):
    """Where the plant's times of year were observed."""

    model_config = ConfigDict(extra="forbid")

    latitude: float = Field(ge=-90, le=90, description="Degrees, north positive.")
    longitude: float = Field(ge=-180, le=180, description="Degrees, east positive.")
    elevation: Elevation | None = None


class FrontMatterFields(BaseModel):
    """The keys at the head of a lesson file."""

    model_config = ConfigDict(
        extra="forbid", populate_by_name=True, title="Head of a sallet lesson"
    )

    name: str = Field("", description="The plant's common name.")
    also_called: Annotated[
        list[str], BeforeValidator(_one_or_more, json_schema_input_type=str | list[str])
    ] = Field(default_factory=list, alias="also called", description="Other common names.")
    scientific_name: str = Field(
        "", alias="scientific name", description="Genus, epithet and author: `Allium ursinum L.`"
    )
    family: str = Field("", description="The family's scientific name, ending in -aceae.")
    taught_as: TaughtAs = Field(
        "food",
        alias="taught as",
        description="`food`, or `look-alike` for a plant to keep away from.",
    )
    danger: Danger | None = Field(None, description="How dangerous a look-alike is.")
    seen_at: SeenAtFields | None = Field(
        None, alias="seen at", description="Where its times of year were observed."
    )
    written_by: str = Field("", alias="written by", description="Who wrote the lesson.")
    checked_by: str = Field(
        "",
        alias="checked by",
        description="Second reader and date; empty while nobody has checked.",
    )


def read_front_matter(source: Source) -> tuple[FrontMatter, int, list[Fault]]:
    """Return the front matter, the offset at which the body begins, and the faults."""
    fences = list(_FENCE.finditer(source.text))
    opening = fences[0] if fences and not source.text[: fences[0].start()].strip() else None
    if opening is None:
        return FrontMatter(), 0, [Fault("front-matter", Span(0, 0), "", detail="missing")]
    closing = fences[1] if len(fences) > 1 else None
    heading = _HEADING.search(source.text, opening.end())
    if closing is None or (heading and heading.start() < closing.start()):
        # Without the second fence only the lines that look like keys are taken for it.
        end = _end_of_keys(source.text, opening.end())
        fault = Fault("front-matter", Span(*opening.span()), "---", detail="unclosed")
        front, faults = _read(source, opening.end(), end)
        return front, end, [fault, *faults]
    front, faults = _read(source, opening.end(), closing.start())
    return front, _after(source.text, closing.end()), faults


def _after(text: str, offset: int) -> int:
    return min(offset + 1, len(text))


def _end_of_keys(text: str, start: int) -> int:
    match = _NO_KEY.search(text, start + 1)
    return match.start() if match else len(text)


def _read(source: Source, start: int, end: int) -> tuple[FrontMatter, list[Fault]]:
    node, broken = read_yaml(source.text[start:end], start)
    faults = [Fault("front-matter", f.span, f.message, (f.hint,), "yaml") for f in broken]
    fields, wrong = read_fields(FrontMatterFields, node)
    faults += [_fault(fault) for fault in wrong]
    return _front_matter(fields, node), faults


def _fault(fault: FieldFault) -> Fault:
    if fault.unknown:
        names = nearest_key(fault.words, FrontMatterFields, fault.path)
        return Fault("unknown-key", fault.span, fault.words, names)
    kind = "missing value" if fault.missing else "value"
    return Fault("front-matter", fault.span, fault.words, (fault.expected, fault.key), kind)


def _front_matter(fields: FrontMatterFields, node: Node) -> FrontMatter:
    who, when = _who_and_when(fields.checked_by.strip())
    at = fields.seen_at
    return FrontMatter(
        name=fields.name.strip(),
        also_called=tuple(fields.also_called),
        scientific_name=" ".join(fields.scientific_name.split()),
        family=fields.family.strip(),
        taught_as=fields.taught_as,
        danger=fields.danger,
        seen_at=SeenAt(at.latitude, at.longitude, at.elevation) if at else None,
        written_by=fields.written_by.strip(),
        checked_by=who,
        checked_on=when,
        spans=tuple((e.key.value, e.node.span) for e in node.entries or ()),
        span=Span(node.span.start, node.span.start + 1),
    )


def _who_and_when(words: str) -> tuple[str, date | None]:
    match = _ON.match(" ".join(words.split()))
    if match is None:
        return words, None
    try:
        return match["who"].strip(), date.fromisoformat(match["date"])
    except ValueError:
        return words, None


def front_matter_schema() -> dict[str, Any]:
    """Return the JSON Schema of a lesson's head, for editors that complete and check it."""
    return json_schema(FrontMatterFields)
