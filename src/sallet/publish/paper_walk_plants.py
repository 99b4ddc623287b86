"""A plant of the day on the walk sheet: what of it can be met, what to look at, what it is not."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any, Final

from sallet.cards.data import danger_data, runs_data
from sallet.cards.facts import fact_runs
from sallet.cards.plain import Run, joined, plain, runs
from sallet.publish.briefing import look_at
from sallet.publish.paper_parts import plant_data, unread_words
from sallet.season.dates import short_date
from sallet.season.reasons import taken_for_words
from sallet.season.visible import Visible
from sallet.study.contrast import NEVER_A_TEST, told_by_place
from sallet.study.features import organ_words

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.cards.data import Runs
    from sallet.lesson.model import Fact
    from sallet.publish.site import Site
    from sallet.season.plan import Taught
    from sallet.season.telling import Telling

NO_STAGE: Final = "its lesson tells of no part on this day"
"""Said of a plant of which nothing can be met; the page of the sessions says the same."""


def taught_data(taught: Taught, site: Site) -> dict[str, Any]:
    """Return a plant of the day."""
    lesson, seen = taught.lesson, Visible(taught.what.year, site.bank.vocabulary)
    now = [fact for fact in lesson.key_facts if is_on_show(fact, taught.day, seen)]
    return plant_data(lesson) | {
        "food": lesson.is_food,
        "unread": unread_words(lesson),
        "stages": ", ".join(taught.stages) or NO_STAGE,
        "taken_for": taken_for_words(taught.confused_with) if taught.confused_with else "",
        "not_now": _not_now(taught),
        "marks": [runs_data(_mark(fact, site)) for fact in now],
        "no_mark": not lesson.key_facts,
        "hidden": [_called(fact, site) for fact in lesson.key_facts if fact not in now],
        "told": [telling_data(telling, taught.day, site) for telling in tellings_of(taught, site)],
        "doubles": list(_other_doubles(taught, site)),
    }


def tellings_of(taught: Taught, site: Site) -> tuple[Telling, ...]:
    """Return how a plant of the day is told from each plant that harms and is named beside it."""
    return site.plan.tellings.get(taught.lesson.slug, ())


def is_on_show(fact: Fact, day: int, seen: Visible) -> bool:
    """Return whether a feature can be looked at on a day: nobody tastes, and nobody waits for weeks."""
    label = seen.vocabulary.label(fact.subject, fact.label)
    if label and (label.aspect in NEVER_A_TEST or label.watched):
        return False
    places = told_by_place([fact]) or (frozenset[str](),)
    return any(day in seen.days(fact.subject, fact.part, where) for where in places)


def telling_data(telling: Telling, day: int, site: Site) -> dict[str, Any]:
    """Return what tells a food plant from one that harms on a day, and whether it suffices."""
    return danger_data(telling.danger) | {
        "name": telling.name,
        "about": about_words(telling, day, site),
        "look_at": list(look_at(telling, day, site.bank.vocabulary)),
        "sure": telling.is_sure_all_week(day),
        "settled": settled_data(telling),
    }


def about_words(telling: Telling, day: int, site: Site) -> str:
    """Return whether a plant that harms is about on a day; nothing where its own lesson says not."""
    year = site.setting.years.get(telling.other.slug) if telling.other else None
    if year is None:
        return "when it is about is not told"
    return "about now" if year.may_be_seen(day) else ""


def settled_data(telling: Telling) -> Runs:
    """Return what makes it sure where the plants do not show it; without that, none is picked."""
    if not telling.settled_by:
        return runs_data(plain("Pick none of it."))
    return runs_data(joined([plain("Made sure by:"), runs(telling.settled_by)], Run(" ")))


def _not_now(taught: Taught) -> str:
    if taught.in_season:
        return ""
    nearest = f"; nearest date {short_date(taught.nearest)}" if taught.nearest else ""
    return f"not in season to teach{nearest}"


def _called(fact: Fact, site: Site) -> str:
    return f"{organ_words(fact, site.bank.vocabulary)}, {fact.label}"


def _mark(fact: Fact, site: Site) -> tuple[Run, ...]:
    words = fact_runs(fact, site.course.units_first)
    return joined([plain(f"{_called(fact, site)}:", "strong"), words], Run(" "))


def _other_doubles(taught: Taught, site: Site) -> Iterator[dict[str, str]]:
    """Yield the look-alikes besides those that it is told from: nobody should be surprised by one."""
    told = {telling.name for telling in tellings_of(taught, site)}
    sheet = next(sheet for sheet in site.sheets if sheet.lesson.slug == taught.lesson.slug)
    for double in sheet.doubles:
        if double.name not in told:
            yield {"name": double.name} | danger_data(double.danger)
