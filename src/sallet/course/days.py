"""The days of course.yml: a date of a session, and a day on which something was seen."""

from __future__ import annotations

import re
from datetime import date
from typing import Annotated, Any, Final

from pydantic import BeforeValidator, Field

from sallet.course.model import SeenOn
from sallet.course.series import YEARS
from sallet.lesson.values.times import LENGTHS, MONTHS

DAY: Final = r"^[0-9]{4}-[0-9]{2}-[0-9]{2}$"
SEEN: Final = (
    r"^([0-9]{1,2} [A-Za-z]{3,9}( [0-9]{4})?|[A-Za-z]{3,9} [0-9]{1,2}(,? [0-9]{4})?"
    r"|[0-9]{4}-[0-9]{2}-[0-9]{2})$"
)

_NO_DAY: Final = "expected a date such as 2027-03-06"
_NO_SEEN: Final = "expected a day such as `2 May 2026` or `2 May`"


def one_or_more(value: Any) -> Any:
    """Return a list, of one where a word stands alone."""
    return [value] if isinstance(value, str) else value


def flat(value: Any) -> str:
    """Return words with single blanks between them."""
    return " ".join(str(value).split())


def _day(value: Any) -> date:
    # Left to itself pydantic takes a bare number for seconds since 1970.
    if not re.fullmatch(DAY, str(value)):
        raise ValueError(_NO_DAY)
    year, month, day = map(int, str(value).split("-"))
    if year not in YEARS:
        raise ValueError(f"expected a date from {YEARS[0]} to {YEARS[-1]}")
    if not _is_day(day, month, year):
        raise ValueError(_NO_DAY)
    return date(year, month, day)


def _seen(value: Any) -> SeenOn:
    words = flat(value)
    if not re.fullmatch(SEEN, words):
        raise ValueError(_NO_SEEN)
    if "-" in words:
        year, month, day = map(int, words.split("-"))
        return _seen_on(day, month, year)
    *first, last = words.replace(",", "").split()
    told = int(last) if len(last) == 4 and last.isdigit() else None  # noqa: PLR2004 - a year
    one, other = first if told else (*first, last)
    number, name = (one, other) if one.isdigit() else (other, one)
    return _seen_on(int(number), _month(name), told)


def _seen_on(day: int, month: int, year: int | None) -> SeenOn:
    if not _is_day(day, month, year):
        raise ValueError(_NO_SEEN)
    return SeenOn(month, day, year)


def _month(name: str) -> int:
    # The pattern asks for three letters, by which every month is told apart.
    starts = [m.casefold().startswith(name.casefold()) for m in MONTHS]
    return starts.index(True) + 1 if any(starts) else 0


def _is_day(day: int, month: int, year: int | None) -> bool:
    """Tell whether there is such a day; 29 February is one where no year is told."""
    if not 1 <= month <= len(MONTHS) or (year is not None and year not in YEARS):
        return False
    leap = year is None or (year % 4 == 0 and (year % 100 != 0 or year % 400 == 0))
    longest = LENGTHS[month - 1] + (leap and month == 2)  # noqa: PLR2004 - February
    return 1 <= day <= longest


Day = Annotated[
    date, BeforeValidator(_day, json_schema_input_type=Annotated[str, Field(pattern=DAY)])
]
Days = Annotated[
    list[Day],
    BeforeValidator(
        one_or_more,
        json_schema_input_type=Annotated[str, Field(pattern=DAY)]
        | list[Annotated[str, Field(pattern=DAY)]],
    ),
]
_Seen = Annotated[
    SeenOn, BeforeValidator(_seen, json_schema_input_type=Annotated[str, Field(pattern=SEEN)])
]
SeenDays = Annotated[
    list[_Seen],
    BeforeValidator(
        one_or_more,
        json_schema_input_type=Annotated[str, Field(pattern=SEEN)]
        | list[Annotated[str, Field(pattern=SEEN)]],
    ),
]
