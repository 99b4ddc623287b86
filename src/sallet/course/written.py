"""The values of course.yml as a teacher writes them: times, lengths, steps and numbers."""

from __future__ import annotations

import re
from datetime import time
from typing import Annotated, Any, Final

from pydantic import BeforeValidator, Field

from sallet.course.days import flat, one_or_more

TIME: Final = r"^([01]?[0-9]|2[0-3]):[0-5][0-9]$"
LANGUAGE: Final = r"^[a-zA-Z]{2,3}(-[a-zA-Z0-9]{2,8})*$"
LENGTH: Final = (
    r"^(?=[0-9])(([0-9]{1,2}(\.[0-9]{1,2})?) ?(h|hrs?|hours?))? ?(and )?"
    r"(([0-9]{1,4}) ?(mins?|minutes?))?$"
)
STEP: Final = r"^(day|week|fortnight|([1-9][0-9]{0,2}) (day|week|fortnight)s?)$"
ADDRESS: Final = (
    r"^https?://[A-Za-z0-9][A-Za-z0-9.-]*(:[0-9]{1,5})?(/[A-Za-z0-9._~!$&'()*+,;=:@%/-]*)?$"
)
"""A web address in ASCII (RFC 3986), without a query or a fragment: file names are put behind it."""
LONGEST: Final = 24 * 60
"""Minutes of a session."""
LONGEST_STEP: Final = 366
"""Days between two meetings of a series."""
_STEPS: Final = {"day": 1, "week": 7, "fortnight": 14}
_NO_LENGTH: Final = "expected a length such as `2 h 30 min`, of at most 24 h"
_NO_STEP: Final = "expected a step such as `week`, `2 weeks` or `10 days`, of at most a year"


def _clock(value: Any) -> time:
    match = re.fullmatch(TIME, str(value))
    if match is None:
        raise ValueError("expected a time such as 10:30")
    hour, minute = match[0].split(":")
    return time(int(hour), int(minute))


def _language(value: Any) -> Any:
    if not re.fullmatch(LANGUAGE, str(value)):
        raise ValueError("expected a language's tag such as `en` or `en-GB`")
    return value


def _length(value: Any) -> int:
    match = re.fullmatch(LENGTH, flat(value))
    if match is None or (match[3] and match[6]):
        raise ValueError(_NO_LENGTH)
    hundredths = 60 * round(float(match[2] or 0) * 100) + 100 * int(match[7] or 0)
    minutes, rest = divmod(hundredths, 100)
    if rest or not 1 <= minutes <= LONGEST:
        raise ValueError(_NO_LENGTH)
    return minutes


def _step(value: Any) -> int:
    match = re.fullmatch(STEP, flat(value))
    days = int(match[2] or 1) * _STEPS[match[3] or match[1]] if match else 0
    if not 1 <= days <= LONGEST_STEP:
        raise ValueError(_NO_STEP)
    return days


def _address(value: Any) -> str:
    if not re.fullmatch(ADDRESS, str(value)):
        raise ValueError("expected an address such as https://example.org/course/")
    return str(value)


def _whole(value: Any) -> int:
    if not re.fullmatch(r"-?[0-9]{1,9}", str(value)):
        raise ValueError("expected a whole number")
    return int(value)


Address = Annotated[
    str,
    BeforeValidator(_address, json_schema_input_type=Annotated[str, Field(pattern=ADDRESS)]),
]
Clock = Annotated[
    time, BeforeValidator(_clock, json_schema_input_type=Annotated[str, Field(pattern=TIME)])
]
Language = Annotated[
    str,
    BeforeValidator(_language, json_schema_input_type=Annotated[str, Field(pattern=LANGUAGE)]),
]
Lines = Annotated[list[str], BeforeValidator(one_or_more, json_schema_input_type=str | list[str])]
Length = Annotated[
    int, BeforeValidator(_length, json_schema_input_type=Annotated[str, Field(pattern=LENGTH)])
]
Step = Annotated[
    int, BeforeValidator(_step, json_schema_input_type=Annotated[str, Field(pattern=STEP)])
]
Count = Annotated[
    int,
    Field(ge=1, le=400),
    BeforeValidator(_whole, json_schema_input_type=Annotated[int, Field(ge=1, le=400)]),
]
Room = Annotated[
    int,
    Field(ge=0, le=1000),
    BeforeValidator(_whole, json_schema_input_type=Annotated[int, Field(ge=0, le=1000)]),
]
