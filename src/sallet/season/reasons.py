"""Why a plant's dates are what they are, in words for a page or a terminal."""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.season.words import in_a_row

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from sallet.lesson.model import Lesson
    from sallet.season.here import PlantYear
    from sallet.season.hopkins import LeftOut, Shift, Spot
    from sallet.season.observed import Observed

CARE: Final = (
    "It is an estimate: the weather of a year, a warm slope or a frost hollow can move a date by "
    "weeks."
)
"""What stands beside every moved date."""
LAW: Final = (
    "By Hopkins' law: 4 days for each degree of latitude, each 5 degrees of longitude and each "
    "122 metres (400 feet) of height."
)
"""How a date is moved of which nothing was seen here."""
GUESS: Final = "So far away the times are no more than a guess."
"""What stands beside dates that are too far from home to be moved."""
BY_SIGHT: Final = (
    "The plant's other parts are moved by as many days, in autumn the other way than in spring."
)
"""How the other parts of a plant are moved of which one was seen here."""
LEFT_OUT: Final[dict[LeftOut, str]] = {
    "no place seen": "the lesson does not say where its times were seen, so they stand as written",
    "no place here": "the course does not say where it meets, so the times stand as written",
    "elevation": "the height of one of the two places is not told and is left out",
    "other continent": "the two places lie on different continents, so longitude is left out",
    "no continent": "one of the two places lies on no continent, so longitude is left out",
    "too far": (
        "the two places are too far apart to estimate one from the other, "
        "so the times stand as written"
    ),
}
"""What is said where the law, or a part of it, is not used."""
OTHER_HALF: Final = "the two places lie in different halves of the earth: half a year is added"
_LEAST: Final = 0.05
"""A part of less than a tenth of a day, rounded, is not worth a word."""


def place_words(spot: Spot) -> str:
    """Return a place as `54.4° N, 2.6° W, 150 m above the sea`."""
    north = f"{abs(spot.latitude):.1f}° {'S' if spot.is_southern else 'N'}"
    east = f"{abs(spot.longitude):.1f}° {'W' if spot.longitude < 0 else 'E'}"
    if spot.elevation is None:
        return f"{north}, {east}"
    return f"{north}, {east}, {metres(spot.elevation)} above the sea"


def metres(height: float) -> str:
    """Return a height in whole metres, with a proper minus sign."""
    return f"{round(height)} m".replace("-", "\u2212")


def shift_words(shift: Shift) -> str:
    """Return by how much the year differs here: `spring about 22 days later, autumn earlier`."""
    days = round(abs(shift.days))
    if not days:
        return "the year runs as where it was seen"
    late, early = ("later", "earlier") if shift.days > 0 else ("earlier", "later")
    return f"spring about {_days(days)} {late}, autumn about {_days(days)} {early}"


def parts_words(shift: Shift) -> str:
    """Return what each part of the law adds: `12.0 days for 3.0° further north`."""
    if shift.origin is None or shift.here is None:
        return ""
    return "; ".join(_parts(shift, shift.origin, shift.here))


def _parts(shift: Shift, origin: Spot, here: Spot) -> Iterator[str]:
    if abs(shift.latitude) >= _LEAST:
        degrees = abs(abs(here.latitude) - abs(origin.latitude))
        way = "nearer the pole" if shift.latitude > 0 else "nearer the equator"
        yield f"{_signed(shift.latitude)} for {degrees:.1f}° of latitude {way}"
    if abs(shift.longitude) >= _LEAST:
        degrees = abs((here.longitude - origin.longitude + 180) % 360 - 180)
        way = "east" if shift.longitude > 0 else "west"
        yield f"{_signed(shift.longitude)} for {degrees:.1f}° of longitude further {way}"
    if abs(shift.elevation) >= _LEAST:
        height = abs((here.elevation or 0) - (origin.elevation or 0))
        yield f"{_signed(shift.elevation)} for {metres(height)} {_up(shift.elevation)}"


def _up(days: float) -> str:
    return "higher" if days > 0 else "lower"


def _signed(days: float) -> str:
    return f"{days:+.1f} days".replace("-", "\u2212")


def _days(days: int) -> str:
    return "1 day" if days == 1 else f"{days} days"


def left_out_words(shift: Shift) -> tuple[str, ...]:
    """Return what of the law is not used, and why."""
    too_far = "too far" in shift.left_out
    words = [LEFT_OUT[kind] for kind in shift.left_out if kind == "too far" or not too_far]
    if shift.origin and shift.here and shift.origin.is_southern != shift.here.is_southern:
        words.append(OTHER_HALF)
    return tuple(words)


def year_words(year: PlantYear) -> str:
    """Return why a plant's dates are what they are, in a sentence or two."""
    shift = year.shift
    seen = f"seen at {place_words(shift.origin)}" if shift.origin else ""
    if year.observed:
        return _sentences([seen, *_moved_here(year)])
    if shift.origin is None or shift.here is None:
        return _sentences(left_out_words(shift))
    if year.move.is_none and ("too far" in shift.left_out or not shift.left_out):
        return _sentences([f"as {seen}", *left_out_words(shift)])
    moved = () if "too far" in shift.left_out else (_moved(shift),)
    return _sentences([f"estimated from what was {seen}", *moved, *left_out_words(shift)])


def _moved(shift: Shift) -> str:
    parts = parts_words(shift)
    return shift_words(shift) + (f" ({parts})" if parts else "")


def _moved_here(year: PlantYear) -> tuple[str, ...]:
    told = " and ".join(map(observed_words, year.observed))
    half = (OTHER_HALF,) if year.move.to_other_half else ()
    return (f"moved by what was seen here: {told}", *half)


def year_notes(years: Sequence[PlantYear]) -> tuple[str, ...]:
    """Return why dates are what they are: what is true of most plants, the others, the rule."""
    by_note: dict[str, list[Lesson]] = {}
    for year in years:
        by_note.setdefault(year_words(year), []).append(year.lesson)
    first, *others = sorted(by_note, key=lambda note: -len(by_note[note])) or [""]
    told = [first, *(_of_some(by_note[note], note) for note in others), rule_words(years)]
    return tuple(note for note in told if note)


def _of_some(lessons: Sequence[Lesson], note: str) -> str:
    return f"{names_of(lessons)}: {note[:1].lower()}{note[1:]}"


def rule_words(years: Iterable[PlantYear]) -> str:
    """Return by what rule the dates of some plants are estimated; nothing where none is."""
    moved = [year for year in years if year.is_estimate]
    seen = [year for year in moved if year.observed]
    far = [year for year in moved if not year.observed and "too far" in year.shift.left_out]
    rules = [
        LAW if len(seen) + len(far) < len(moved) else "",
        BY_SIGHT if seen else "",
        CARE if len(far) < len(moved) else "",
        GUESS if far else "",
    ]
    return " ".join(rule for rule in rules if rule)


def observed_words(observed: Observed) -> str:
    """Return what was seen here: `flowers from 2 May 2026`."""
    dates = ", ".join(on.words for on in observed.seen_on)
    return f"{observed.timing.name} from {dates}"


def taken_for_words(lessons: Sequence[Lesson]) -> str:
    """Return for which plants it may be taken: `taken for Elder, gathered at the same time`."""
    return f"taken for {names_of(lessons)}, gathered at the same time"


def names_of(lessons: Sequence[Lesson]) -> str:
    """Return some plants as `Elder, Hazel and Yew`."""
    return in_a_row([lesson.name for lesson in lessons])


def _sentences(parts: list[str] | tuple[str, ...]) -> str:
    joined = "; ".join(part for part in parts if part)
    return f"{joined[:1].upper()}{joined[1:]}." if joined else ""
