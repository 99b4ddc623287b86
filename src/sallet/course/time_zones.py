"""The time zone of course.yml, by its name in the IANA time zone database."""

from __future__ import annotations

from difflib import get_close_matches
from functools import lru_cache
from typing import Annotated, Any, Final
from zoneinfo import available_timezones

from pydantic import BeforeValidator

_NOWHERE: Final = {"Factory", "localtime"}
"""Names of the zone that a machine stands in, which is another on the next machine."""


def _time_zone(value: Any) -> str:
    zones = _zones()
    if str(value) not in zones:
        near = _near_zones(str(value), zones) or ["Europe/London"]
        raise ValueError("expected a time zone such as " + " or ".join(f"`{z}`" for z in near))
    return str(value)


@lru_cache(maxsize=1)
def _zones() -> frozenset[str]:
    return frozenset(available_timezones() - _NOWHERE)


def _near_zones(words: str, zones: frozenset[str]) -> list[str]:
    # Most people write the town alone, or a blank where the name has a low line.
    by_end = {zone.rsplit("/", maxsplit=1)[-1].casefold(): zone for zone in sorted(zones)}
    names = by_end | {zone.casefold(): zone for zone in zones}
    lower = words.casefold().replace(" ", "_")
    near = [lower] if lower in names else get_close_matches(lower, names, n=2, cutoff=0.7)
    return list(dict.fromkeys(names[name] for name in near))


TimeZone = Annotated[str, BeforeValidator(_time_zone, json_schema_input_type=str)]
