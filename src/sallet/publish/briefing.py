"""What a group is told before it sets out: the safety briefing of a session, from the lessons."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from markupsafe import Markup, escape

from sallet.cards.plain import runs, text_of
from sallet.publish.prose import PAGE_END
from sallet.publish.sheets import PLANTS, cautions_elsewhere
from sallet.study.contrast import one_of_each_kind
from sallet.study.features import feature_of, feature_words

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Mapping

    from sallet.lesson.model import Lesson
    from sallet.lesson.vocabulary import Vocabulary
    from sallet.publish.sheet import CautionText, Double, Sheet
    from sallet.publish.sheets import Setting
    from sallet.season.plan import Meeting
    from sallet.season.telling import Telling

STANDING: Final = (
    "Nobody eats anything before the teacher has named that very plant, leaf by leaf.",
    "Nobody tastes to find out what a plant is.",
    "Look at several parts of each plant. If one mark does not fit, leave it.",
    "One kind into one bag; nothing goes into a bag unlooked at.",
    "Children stay beside a grown-up. Wash hands before eating or touching the face.",
)
"""Told at every session. Common practice of teachers, without a published source."""
OUTDOORS: Final = (
    "confusion", "season of danger", "taste tests", "skin", "sunlight", "eyes", "stings", "thorns",
    "hairs", "gloves", "polluted ground", "sprayed ground", "roads", "dogs' mess", "dirty water",
    "water parasites", "livestock ground", "blue-green scum", "floods", "unsafe places", "ticks",
    "mixed picking", "all parts",
)  # fmt: skip
"""The kinds of caution that matter as soon as one stands beside the plant.

A caution without a kind is told too: nobody can know that it does not matter there.
"""
MOST_LOOKED_AT: Final = 4
"""So many features a group is told of each look-alike; the others are on the page of both plants."""


@dataclass(frozen=True)
class Warned:
    """A look-alike that costs a life or a night in hospital, and the food it is taken for."""

    food: Lesson
    name: str
    danger: str
    page: str
    """The way to where the pages of plants tell of it, or an empty string."""
    is_about: bool
    """Whether its own lesson says that it can be seen on the day, or may be."""
    has_times: bool
    """Whether it is taught, so that anything is known of its times."""
    look_at: tuple[str, ...]
    """What can be seen on the day that tells the two apart, what is reliable first."""
    is_sure: bool
    """Whether that suffices to tell them surely apart."""
    settled_by: Markup
    """How the teacher makes sure where it does not."""


@dataclass(frozen=True)
class Told:
    """A caution of one of the day's plants."""

    plant: Lesson
    caution: CautionText


@dataclass(frozen=True)
class Briefing:
    """What is told of the day's plants, besides what is told every time."""

    warned: tuple[Warned, ...]
    told: tuple[Told, ...]


def briefing_of(meeting: Meeting, sheets: Mapping[str, Sheet], setting: Setting) -> Briefing:
    """Return a session's briefing; `sheets` are the course's pages by plant."""
    taught = [taught.lesson for taught in meeting.taught]
    food = [sheets[lesson.slug] for lesson in taught if lesson.is_food]
    return Briefing(tuple(_warned(food, meeting.day, setting)), tuple(_told(taught, setting)))


def _warned(sheets: Iterable[Sheet], day: int, setting: Setting) -> Iterator[Warned]:
    about = {slug for slug, year in setting.years.items() if year.may_be_seen(day)}
    for sheet in sheets:
        lesson, doubles = sheet.lesson, {double.name: double for double in sheet.doubles}
        # A plant that harms and that only its own lesson names is warned of too.
        for telling in setting.tellings.get(lesson.slug, ()):
            other = telling.other.slug if telling.other else ""
            double = doubles.get(telling.name) if telling.look else None
            yield Warned(
                food=lesson,
                name=telling.name,
                danger=telling.danger,
                page=_page(telling, lesson, double, setting),
                is_about=other in about,
                has_times=other in setting.years,
                look_at=look_at(telling, day, setting.bank.vocabulary),
                is_sure=telling.is_sure_all_week(day),
                settled_by=double.settled_by
                if double
                else escape(text_of(runs(telling.settled_by))),
            )


def _page(telling: Telling, food: Lesson, double: Double | None, setting: Setting) -> str:
    if double:
        return f"{PLANTS}{food.slug}{PAGE_END}#{double.ident}"
    slug = telling.other.slug if telling.other else ""
    return f"{PLANTS}{slug}{PAGE_END}" if slug in setting.taught else ""


def look_at(telling: Telling, day: int, vocabulary: Vocabulary) -> tuple[str, ...]:
    """Return what can be seen on a day that tells two plants apart, one of a kind."""
    # What tells of the same thing says nothing more to a group that stands waiting.
    signs = one_of_each_kind(telling.on(day))[:MOST_LOOKED_AT]
    return tuple(feature_words(feature_of(sign, vocabulary), telling.name) for sign in signs)


def is_for_outdoors(kind: str) -> bool:
    """Return whether a caution of a kind matters beside the plant; of one without a kind it may."""
    return not kind or kind in OUTDOORS


def _told(lessons: Iterable[Lesson], setting: Setting) -> Iterator[Told]:
    for lesson in lessons:
        for caution in cautions_elsewhere(lesson, setting, PLANTS):
            if is_for_outdoors(caution.kind):
                yield Told(lesson, caution)
