"""Times of year: `March to June`, `late February to mid June`, `all year`, `12 March – 5 June`.

early is the days 1–10 of a month, mid 11–20, late 21 to its end. A year has 365 days here;
29 February counts as the 28th.
"""

from __future__ import annotations

import re
from difflib import get_close_matches
from typing import TYPE_CHECKING, Final

from sallet.lesson.model import Fault
from sallet.lesson.value import Absent, Item, Window, Words
from sallet.lesson.values.pieces import COMMAS_AND_OR, DASH, adverbs, qualified, split

if TYPE_CHECKING:
    from sallet.lesson.vocabulary import Vocabulary
    from sallet.source import Text

MONTHS: Final = (
    "January", "February", "March", "April", "May", "June",
    "July", "August", "September", "October", "November", "December",
)  # fmt: skip
LENGTHS: Final = (31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)
YEAR: Final = sum(LENGTHS)
_THIRDS: Final = {"early": (1, 10), "mid": (11, 20), "middle": (11, 20), "late": (21, 31)}
_POINT: Final = re.compile(
    r"""^(?:the\s+)?(?:(?P<third>early|mid|middle|late)(?:\s+|-)(?:of\s+)?)?
         (?:(?P<day>\d{1,2})(?:st|nd|rd|th)?\s+)?(?P<month>[a-z]+)\.?(?:\s+(?P<after>\d{1,2}))?$""",
    re.VERBOSE | re.IGNORECASE,
)
_RANGE: Final = re.compile(
    rf"""\s+(?:to|until|till|through)\s+
         |\s*[–—−]\s*|\s+{DASH}\s+|(?<=\d){DASH}(?=\d)
         |(?<=[a-z])(?<!\bmid)(?<!\bearly)(?<!\blate)-(?=[a-z])   # `mid-June` is no range""",
    re.VERBOSE | re.IGNORECASE,
)
_FROM: Final = re.compile(r"^from\s+", re.IGNORECASE)
_ALL_YEAR: Final = {"all year", "all year round", "the whole year", "throughout the year"}


def day_of_year(month: int, day: int) -> int:
    """Return the day of a 365-day year for a month (1–12) and a day; 29 February is the 28th."""
    return sum(LENGTHS[: month - 1]) + min(day, LENGTHS[month - 1])


def month_and_day(day: int) -> tuple[int, int]:
    """Return the month (1–12) and the day of the month for a day of a 365-day year (1–365)."""
    month = 1
    while day > LENGTHS[month - 1]:
        day -= LENGTHS[month - 1]
        month += 1
    return month, day


def read_times(value: Text, vocabulary: Vocabulary) -> tuple[tuple[Item, ...], list[Fault]]:
    """Return the windows of a value; what cannot be read is kept as Words."""
    items: list[Item] = []
    faults: list[Fault] = []
    for piece in split(value, COMMAS_AND_OR):
        text, often = adverbs(piece.text, vocabulary)
        read = _window(text)
        if isinstance(read, Words):
            faults.append(Fault("unreadable-time", text.span, text.value, _near_months(text)))
        elif isinstance(read, Window) and _turns_back(read):
            faults.append(Fault("range-upside-down", text.span, text.value, (), "time"))
        qualifiers = (*often, *qualified(piece.qualifiers, vocabulary))
        items.append(Item(read, piece.text.value, piece.span, qualifiers))
    return tuple(items), faults


def _window(text: Text) -> Absent | Window | Words:
    words = _FROM.sub("", text.value.strip())
    if words.casefold() in _ALL_YEAR:
        return Window(1, YEAR)
    if words.casefold() in {"none", "never"}:
        return Absent()
    match = _RANGE.search(words)
    first, last = (words[: match.start()], words[match.end() :]) if match else (words, words)
    begin, end = _point(first), _point(last)
    if match and begin is None and end is not None:
        begin = _part_of_same_month(first, last)
    if begin is None or end is None:
        return Words(text.value, understood=False)
    return Window(begin[0], end[1])


def _near_months(text: Text) -> tuple[str, ...]:
    words = [word for word in re.findall(r"[a-z]{3,12}", text.value.casefold()) if not _month(word)]
    lower = [month.casefold() for month in MONTHS]
    near = [near for word in words for near in get_close_matches(word, lower, n=1, cutoff=0.7)]
    return tuple(dict.fromkeys(month.capitalize() for month in near))


def _turns_back(window: Window) -> bool:
    # `20 June to 5 June` would be all year but a fortnight: two ends have changed places.
    same_month = month_and_day(window.first)[0] == month_and_day(window.last)[0]
    return window.first > window.last and same_month


def _point(words: str) -> tuple[int, int] | None:
    """Return the first and last day that `mid June`, `June` or `5 June` may mean."""
    match = _POINT.match(words.strip())
    month = _month(match["month"]) if match else None
    if match is None or month is None:
        return None
    day = match["day"] or match["after"]
    if day:
        # 29 February is a date that a teacher may write, though the year here has none.
        longest = 29 if month == 2 else LENGTHS[month - 1]  # noqa: PLR2004
        at = day_of_year(month, int(day))
        return (at, at) if 1 <= int(day) <= longest and not match["third"] else None
    low, high = _THIRDS[match["third"].lower()] if match["third"] else (1, 31)
    return day_of_year(month, low), day_of_year(month, high)


def _part_of_same_month(first: str, last: str) -> tuple[int, int] | None:
    # `early to mid June`, `3–5 June`: the first half borrows the month of the second.
    return _point(f"{first} {last.rsplit(maxsplit=1)[-1] if last else last}")


def _month(word: str) -> int | None:
    name = word.casefold()
    shortest = 3
    for number, month in enumerate(MONTHS, 1):
        if month.casefold() == name or (
            len(name) >= shortest and month.casefold().startswith(name)
        ):
            return number
    return None
