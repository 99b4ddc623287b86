"""What a plant at the end of a key must still be held against before anybody eats of it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Final

from sallet.lesson.dangers import danger_of
from sallet.lesson.model import GRAVE
from sallet.publish.anchors import double_idents
from sallet.publish.prose import PAGE_END
from sallet.publish.sheets import PLANTS

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.model import Lesson
    from sallet.publish.sheets import Setting

_FEARED: Final = frozenset({*GRAVE, "unknown"})
"""Dangers of a look-alike that a key must not be silent about; what is not told may be any."""


@dataclass(frozen=True)
class Against:
    """A plant that may be taken for another."""

    name: str
    danger: str
    way: str
    """From the site's root to where the two are told apart, or to its page; empty if there is none."""


def harms(lesson: Lesson) -> bool:
    """Return whether nothing of a group may be eaten in which this plant is."""
    return danger_of(lesson) not in {"food", "harmless"} or lesson.front.danger in GRAVE


def look_alikes(lesson: Lesson, setting: Setting) -> tuple[Against, ...]:
    """Return what a food plant is taken for and may kill, whichever lesson says so."""
    return tuple(_look_alikes(lesson, setting)) if lesson.is_food else ()


def _look_alikes(lesson: Lesson, setting: Setting) -> Iterator[Against]:
    named = {lesson.slug}
    for number, look in enumerate(lesson.look_alikes):
        other = setting.bank.lesson_of(look)
        named |= {other.slug} if other else set()
        danger = setting.bank.danger_of(look) or _untold(other)
        if danger in _FEARED:
            yield Against(look.name.value, danger, _told_apart(lesson, number, setting))
    for other in setting.bank.lessons:
        naming = setting.bank.naming(other, lesson)
        if naming is not None and other.slug not in named and danger_of(other) in _FEARED:
            yield Against(other.name, danger_of(other), _told_apart(other, naming, setting))


def _untold(other: Lesson | None) -> str:
    return danger_of(other) if other else "unknown"


def _told_apart(lesson: Lesson, number: int, setting: Setting) -> str:
    """Return the way to the page of both plants, or to the place on the one's own page."""
    path = setting.pair_paths.get((lesson.slug, number))
    return path or _way(lesson, setting, double_idents(lesson)[number])


def page_way(lesson: Lesson, setting: Setting) -> Against:
    """Return a plant with the way to its page."""
    return Against(lesson.name, danger_of(lesson), _way(lesson, setting))


def _way(lesson: Lesson, setting: Setting, ident: str = "") -> str:
    if lesson.slug not in setting.taught:
        return ""
    return f"{PLANTS}{lesson.slug}{PAGE_END}" + (f"#{ident}" if ident else "")
