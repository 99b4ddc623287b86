"""The walk sheet of a session: what the teacher carries, one PDF for each session.

Nothing is cut: it flows over as many pages as it needs. The names of the group stand on a page of
their own, for that page is destroyed after the walk.
"""

from __future__ import annotations

from collections import Counter
from itertools import chain
from typing import TYPE_CHECKING, Any, Final

from sallet.cards.content import FIRST
from sallet.cards.data import danger_data, runs_data
from sallet.cards.facts import caution_runs
from sallet.cards.plain import paragraphs
from sallet.publish.briefing import STANDING, is_for_outdoors
from sallet.publish.paper_parts import emergency_data, head_data, plant_data, unread_words
from sallet.publish.paper_walk_plants import (
    about_words,
    settled_data,
    taught_data,
    tellings_of,
)
from sallet.season.dates import clock_words, date_words
from sallet.season.reasons import names_of
from sallet.typesetting.jobs import Job

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.model import Caution, Lesson
    from sallet.publish.site import SessionPage, Site
    from sallet.season.plan import Meeting, Taught
    from sallet.season.teachable import Teachable

FOLDER: Final = "print/walks/"
NAMES: Final = 14
"""Empty lines in the list of names."""


def walk_papers(site: Site) -> Iterator[tuple[str, Job]]:
    """Yield the walk sheet of every session, in the order of their dates."""
    held: Counter[str] = Counter()
    for page in site.sessions:
        day = page.meeting.session.date.isoformat()
        held[day] += 1
        again = f"-{held[day]}" if held[day] > 1 else ""
        yield f"{FOLDER}{day}{again}.pdf", Job("walk", walk_data(page, site))


def walk_data(page: SessionPage, site: Site) -> dict[str, Any]:
    """Return a session as its walk sheet is given it."""
    meeting, session = page.meeting, page.meeting.session
    heading, lessons = session.title or "Session", [t.lesson for t in meeting.taught]
    unread = [lesson for lesson in lessons if unread_words(lesson)]
    return head_data(site, f"{heading}, {date_words(session.date)}") | {
        "number": meeting.number,
        "heading": heading,
        "facts": [list(fact) for fact in _facts(meeting) if fact[1]],
        "unread": names_of(unread),
        "notes": [runs_data(part) for part in paragraphs(session.notes)],
        "emergency": emergency_data(site),
        "standing": list(STANDING),
        "warned": list(chain.from_iterable(_warned(taught, site) for taught in meeting.taught)),
        "told": [_told(x, c) for x in lessons for c in x.cautions if is_for_outdoors(c.kind)],
        "first_aid": [_told(x, c) for x in lessons for c in x.cautions if c.kind == FIRST],
        "tasted": names_of(page.food),
        "plants": [taught_data(taught, site) for taught in meeting.taught],
        "also_food": [_met(what, meeting.day) for what in meeting.also if what.year.lesson.is_food],
        "also_harm": [
            _met(what, meeting.day) for what in meeting.also if not what.year.lesson.is_food
        ],
        "names": NAMES,
    }


def _facts(meeting: Meeting) -> Iterator[tuple[str, str]]:
    session, count = meeting.session, len(meeting.taught)
    yield "When", ", ".join(filter(None, [date_words(session.date), clock_words(session)]))
    yield "Where", session.meets_at
    yield "Bring", ", ".join(session.bring)
    yield "Plants", {0: "none is taught on this day", 1: "1 plant"}.get(count, f"{count} plants")


def _told(lesson: Lesson, caution: Caution) -> dict[str, Any]:
    """Return a caution whole, as the lesson has it: no shorter wording is taken."""
    words = runs_data(caution_runs(caution))
    return {"plant": lesson.name, "kind": caution.kind or "also", "runs": words}


def _warned(taught: Taught, site: Site) -> Iterator[dict[str, Any]]:
    """Yield the grave look-alikes of a food plant in brief; what tells them apart stands with it."""
    for telling in tellings_of(taught, site):
        sure = telling.is_sure_all_week(taught.day)
        yield {
            "food": taught.lesson.name,
            "name": telling.name,
            "about": about_words(telling, taught.day, site),
            "settled": [] if sure else settled_data(telling),
        } | danger_data(telling.danger)


def _met(what: Teachable, day: int) -> dict[str, Any]:
    """Return a further plant of the course that may be met; `perhaps` where nobody can say."""
    lesson = what.year.lesson
    return plant_data(lesson) | {
        "perhaps": what.is_unsure_on(day),
        "stages": ", ".join(what.stages(day)),
    }
