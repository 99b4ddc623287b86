"""The entries of the list of sessions: each is one meeting or a series, or at fault."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.course.series import Series
from sallet.fields import FieldFault

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from sallet.course.keys import SessionFields
    from sallet.yamltext import Node

Listed = tuple[int, "SessionFields"]
"""An entry with its place in the list."""

MOST: Final = 1000
"""Meetings of a course: more are a slip, and would take minutes to plan."""
_LACKING: Final = {"every": "a step such as `2 weeks`", "count": "the number of meetings"}
_SERIES_ONLY: Final = ("`first` in place of `date`", "write `first` for `date`, or take it out")
_OUT_OF_PLACE: Final = {
    "first": ("no `first` in an entry with a `date`", "make two entries, or keep one of the two"),
    "every": _SERIES_ONLY,
    "count": _SERIES_ONLY,
    "skip": _SERIES_ONLY,
    "plants": ("none in a series", "name plants in an entry with a date"),
}


def listed_entries(
    node: Node, fields: Iterable[SessionFields], wrong: Sequence[FieldFault]
) -> list[Listed]:
    """Return the entries with their places; one that is no mapping was set aside as a whole."""
    whole = [fault.path for fault in wrong if not fault.unknown]
    places = (place for place in range(len(_items(node))) if ("sessions", place) not in whole)
    return list(zip(places, fields, strict=False))


def entry_faults(node: Node) -> Iterator[FieldFault]:
    """Yield what makes an entry neither one meeting nor a series."""
    for place, item in enumerate(_items(node)):
        if item.entries is None:
            continue
        if _has(item, "date"):
            yield from _misplaced(place, item, ("first", "every", "count", "skip"))
        elif _has(item, "first"):
            yield from _misplaced(place, item, ("plants",))
            yield from _lacking(place, item)
        else:
            expected = "a `date`, or `first`, `every` and `count`"
            path = ("sessions", place, "date")
            yield FieldFault(path, "date", "", expected, item.span, missing=True)


def series_of(entries: Iterable[Listed]) -> Iterator[Series]:
    """Yield the series among the entries that are told wholly."""
    for place, entry in entries:
        if entry.first and entry.every and entry.count and not entry.date_:
            yield Series(entry.first, entry.every, entry.count, tuple(entry.skip), place)


def series_faults(node: Node, series: Sequence[Series]) -> Iterator[FieldFault]:
    """Yield each series that runs out of the calendar, and the list if it is far too long."""
    for one in series:
        if len(one.held()) < one.count:
            value = node.reach(("sessions", one.listed, "count"))
            path, expected = ("sessions", one.listed, "count"), "meetings before the year 3000"
            yield FieldFault(path, "count", value.text or "", expected, value.span)
    if is_too_long(node, series):
        span = key.span if (key := node.key("sessions")) else node.span
        hint = "look at the counts of the series"
        expected = f"at most {MOST} meetings in all"
        yield FieldFault(("sessions",), "sessions", "", expected, span, hint=hint)


def is_too_long(node: Node, series: Sequence[Series]) -> bool:
    """Tell whether the list has far too many meetings to make pages or a plan of."""
    singles = len(_items(node)) - len(series)
    return singles + sum(one.count for one in series) > MOST


def _items(node: Node) -> tuple[Node, ...]:
    sessions = node.child("sessions")
    return (sessions.items or ()) if sessions else ()


def _has(item: Node, key: str) -> bool:
    value = item.child(key)
    return value is not None and value.text != ""


def _misplaced(place: int, item: Node, keys: Iterable[str]) -> Iterator[FieldFault]:
    for key in keys:
        if _has(item, key):
            value = item.reach((key,))
            expected, hint = _OUT_OF_PLACE[key]
            path = ("sessions", place, key)
            yield FieldFault(path, key, value.text or "", expected, value.span, hint=hint)


def _lacking(place: int, item: Node) -> Iterator[FieldFault]:
    for key, expected in _LACKING.items():
        if not _has(item, key):
            path = ("sessions", place, key)
            yield FieldFault(path, key, "", expected, item.span, missing=True)
